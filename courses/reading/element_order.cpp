#include "courses/reading/element_order.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdint>
#include <string_view>
#include <utility>

namespace landwidth {

namespace {

constexpr std::array<std::string_view, 3> kinds{"node/", "way/", "relation/"};

struct Keyed {
    std::size_t kind;  // an index of `kinds`; its size: no element
    std::int64_t number;
    MapFeature feature;
};

Keyed keyed(MapFeature&& feature) {
    const std::string_view id = feature.id;
    const auto found =
        std::find_if(kinds.begin(), kinds.end(), [&](std::string_view kind) { return id.starts_with(kind); });
    if (found == kinds.end()) return {kinds.size(), 0, std::move(feature)};
    std::int64_t number = 0;
    std::from_chars(id.data() + found->size(), id.data() + id.size(), number);
    return {static_cast<std::size_t>(found - kinds.begin()), number, std::move(feature)};
}

}  // namespace

void put_in_order_of_elements(std::vector<MapFeature>& features) {
    std::vector<Keyed> order;
    order.reserve(features.size());
    for (MapFeature& feature : features)
        order.push_back(keyed(std::move(feature)));
    std::stable_sort(order.begin(), order.end(), [](const Keyed& a, const Keyed& b) {
        return std::pair(a.kind, a.number) < std::pair(b.kind, b.number);
    });
    std::transform(order.begin(), order.end(), features.begin(),
                   [](Keyed& entry) { return std::move(entry.feature); });
}

}  // namespace landwidth
