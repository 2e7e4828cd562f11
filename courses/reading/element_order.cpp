#include "courses/reading/element_order.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdint>
#include <string_view>
#include <utility>

#include "courses/reading/tag_reading.hpp"

namespace landwidth {

namespace {

constexpr std::array<std::string_view, 3> kinds{"node/", "way/", "relation/"};

// The kind, an index of `kinds` or its size, and the number of an element by its id.
std::pair<std::size_t, std::int64_t> key_of(std::string_view id) {
    const auto found = std::find_if(kinds.begin(), kinds.end(),
                                    [id](std::string_view kind) { return id.starts_with(kind); });
    if (found == kinds.end()) return {kinds.size(), 0};
    std::int64_t number = 0;
    std::from_chars(id.data() + found->size(), id.data() + id.size(), number);
    return {static_cast<std::size_t>(found - kinds.begin()), number};
}

// In a copy of a course the features that are no elements go by their number in the source.
std::pair<std::size_t, std::int64_t> key_of_feature(std::string_view id) {
    if (!is_source_id(id)) return key_of(id);
    const std::size_t at = id.rfind(' ') + 1;
    std::int64_t number = 0;
    std::from_chars(id.data() + at, id.data() + id.size(), number);
    return {kinds.size(), number};
}

template <typename Thing, typename Key>
void put_in_order(std::vector<Thing>& things, std::string Thing::*id, Key key_of) {
    std::vector<std::pair<std::pair<std::size_t, std::int64_t>, Thing>> keyed;
    keyed.reserve(things.size());
    for (Thing& thing : things) {
        const auto key = key_of(thing.*id);
        keyed.emplace_back(key, std::move(thing));
    }
    std::stable_sort(keyed.begin(), keyed.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    std::transform(keyed.begin(), keyed.end(), things.begin(),
                   [](auto& entry) { return std::move(entry.second); });
}

}  // namespace

void put_in_order_of_elements(std::vector<MapFeature>& features, std::vector<Finding>& findings) {
    put_in_order(features, &MapFeature::id, key_of_feature);
    put_in_order(findings, &Finding::feature, key_of);
}

}  // namespace landwidth
