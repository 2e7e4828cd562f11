#include "courses/reading/osm_elements.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>

#include "courses/text.hpp"
#include "geometry/error.hpp"

namespace landwidth {

namespace {

// How much an element says, to choose among doubles.
std::size_t weight(const OsmNode& node) {
    return node.tags.size();
}
std::size_t weight(const OsmWay& way) {
    return way.tags.size() + way.nodes.size();
}
std::size_t weight(const OsmRelation& relation) {
    return relation.tags.size() + relation.members.size();
}

template <typename Element>
int keep_one_each(std::vector<Element>& elements) {
    const auto ahead = [](const Element& a, const Element& b) {
        return a.id != b.id ? a.id < b.id : weight(a) > weight(b);
    };
    if (!std::is_sorted(elements.begin(), elements.end(), ahead))
        std::stable_sort(elements.begin(), elements.end(), ahead);
    const auto end = std::unique(elements.begin(), elements.end(),
                                 [](const Element& a, const Element& b) { return a.id == b.id; });
    const auto doubles = static_cast<int>(elements.end() - end);
    elements.erase(end, elements.end());
    return doubles;
}

// Elements in full go before what stands inside others; neither is a double to report.
template <typename Element>
void add_where_absent(std::vector<Element>& elements, std::vector<Element>& more) {
    if (more.empty()) return;
    std::move(more.begin(), more.end(), std::back_inserter(elements));
    more.clear();
    keep_one_each(elements);
}

template <typename Element>
const Element* found(const std::vector<Element>& elements, std::int64_t id) {
    const auto at =
        std::lower_bound(elements.begin(), elements.end(), id,
                         [](const Element& element, std::int64_t wanted) { return element.id < wanted; });
    return at != elements.end() && at->id == id ? &*at : nullptr;
}

}  // namespace

const OsmNode* OsmElements::node(std::int64_t id) const {
    return found(nodes, id);
}

const OsmWay* OsmElements::way(std::int64_t id) const {
    return found(ways, id);
}

void OsmCollector::add_inline(std::int64_t node, LonLat place) {
    OsmNode& added = inline_nodes_.emplace_back();
    added.id = node;
    added.place = place;
}

std::int64_t OsmCollector::add_inline(LonLat place) {
    const std::int64_t id = made_up_id();
    add_inline(id, place);
    return id;
}

OsmWay& OsmCollector::add_inline_way(std::int64_t id) {
    OsmWay& way = inline_ways_.emplace_back();
    way.id = id;
    return way;
}

void OsmCollector::add_box(const MapExtent& box) {
    if (!elements.box) {
        elements.box = box;
        return;
    }
    elements.box->add({box.west, box.south});
    elements.box->add({box.east, box.north});
}

OsmElements OsmCollector::finish() {
    elements.doubled =
        keep_one_each(elements.nodes) + keep_one_each(elements.ways) + keep_one_each(elements.relations);
    add_where_absent(elements.nodes, inline_nodes_);
    add_where_absent(elements.ways, inline_ways_);
    return std::move(elements);
}

LonLat in_steps(LonLat place) {
    constexpr double steps = 1e7;
    return {std::round(place.lon_deg * steps) / steps, std::round(place.lat_deg * steps) / steps};
}

MapExtent box_between(LonLat south_west, LonLat north_east) {
    const double turn = north_east.lon_deg < south_west.lon_deg ? 360.0 : 0.0;
    return {south_west.lon_deg, south_west.lat_deg, north_east.lon_deg + turn, north_east.lat_deg, true};
}

LonLat place_in(const std::string& lon, const std::string& lat, const std::string& where) {
    const auto coordinate = [&where](const char* name, const std::string& text, double limit) {
        const std::optional<double> value = number_in(text);
        if (value && std::abs(*value) <= limit) return *value;
        throw InputError(where, std::string(name) + "=\"" + in_one_line(text) + "\" is no " +
                                    (limit > 90.0 ? "longitude" : "latitude") +
                                    " in degrees; correct or remove it");
    };
    return in_steps({coordinate("lon", lon, 180.0), coordinate("lat", lat, 90.0)});
}

Tags tags_of(const OsmElement& element) {
    Tags tags;
    for (const auto& [key, value] : element.tags) {
        if (!trimmed(value).empty()) tags.emplace(folded(key), trimmed(value));
    }
    return tags;
}

}  // namespace landwidth
