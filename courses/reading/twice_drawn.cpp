#include "courses/reading/twice_drawn.hpp"

#include <algorithm>
#include <map>
#include <string>
#include <tuple>

#include "courses/tags/feature_findings.hpp"

namespace landwidth {

namespace {

bool west_of(const LonLat& a, const LonLat& b) {
    return std::tie(a.lon_deg, a.lat_deg) < std::tie(b.lon_deg, b.lat_deg);
}

// The same for rings that start elsewhere or run the other way round.
LonLatPath canonical(LonLatPath ring) {
    if (ring.size() > 1 && ring.front() == ring.back()) ring.pop_back();
    std::sort(ring.begin(), ring.end(), west_of);
    return ring;
}

struct ByPlaces {
    bool operator()(const LonLatPath& a, const LonLatPath& b) const {
        return std::lexicographical_compare(a.begin(), a.end(), b.begin(), b.end(), west_of);
    }
};

struct Drawn {
    Role role;
    std::string name;  // what it is called
    std::vector<LonLatPath> outlines;

    bool operator<(const Drawn& other) const {
        if (std::tie(role, name) != std::tie(other.role, other.name))
            return std::tie(role, name) < std::tie(other.role, other.name);
        return std::lexicographical_compare(outlines.begin(), outlines.end(), other.outlines.begin(),
                                            other.outlines.end(), ByPlaces());
    }
};

Drawn drawn(const MapFeature& feature) {
    // One outline may be drawn once for each tee it serves, one line for each hole it is.
    Drawn result{feature.role(), "", {}};
    for (const char* key : {"name", "tee", "ref"})
        result.name += feature.tag(key) + "|";
    if (const auto* polygons = std::get_if<std::vector<LonLatPolygon>>(&feature.shape)) {
        for (const LonLatPolygon& polygon : *polygons)
            result.outlines.push_back(canonical(polygon.outer));
    } else if (const auto* paths = std::get_if<std::vector<LonLatPath>>(&feature.shape)) {
        result.name += feature.tag("par") + "|" + feature.tag("golf:course:name");
        result.outlines = *paths;
    } else {
        result.outlines = {{std::get<LonLat>(feature.shape)}};
    }
    return result;
}

std::size_t inner_rings(const MapFeature& feature) {
    std::size_t count = 0;
    if (const auto* polygons = std::get_if<std::vector<LonLatPolygon>>(&feature.shape)) {
        for (const LonLatPolygon& polygon : *polygons)
            count += polygon.inners.size();
    }
    return count;
}

}  // namespace

void cut_out_inner_rings(const std::vector<MapFeature>& bare, std::vector<MapFeature>& features) {
    std::map<LonLatPath, const LonLatPolygon*, ByPlaces> lenders;
    for (const MapFeature& feature : bare) {
        for (const LonLatPolygon& polygon : std::get<std::vector<LonLatPolygon>>(feature.shape))
            lenders.emplace(canonical(polygon.outer), &polygon);
    }
    if (lenders.empty()) return;
    for (MapFeature& feature : features) {
        auto* polygons = std::get_if<std::vector<LonLatPolygon>>(&feature.shape);
        if (polygons == nullptr) continue;
        for (LonLatPolygon& polygon : *polygons) {
            if (!polygon.inners.empty()) continue;
            const auto lender = lenders.find(canonical(polygon.outer));
            if (lender != lenders.end()) polygon.inners = lender->second->inners;
        }
    }
}

void drop_what_is_drawn_twice(std::vector<MapFeature>& features, std::vector<Finding>& findings) {
    std::map<Drawn, std::size_t> first;
    std::vector<bool> dropped(features.size(), false);
    for (std::size_t i = 0; i < features.size(); ++i) {
        if (!place_of(features[i].shape)) continue;  // a hole's line without points: each is to be told
        const auto [entry, is_new] = first.try_emplace(drawn(features[i]), i);
        if (is_new) continue;
        const bool better = inner_rings(features[i]) > inner_rings(features[entry->second]);
        const std::size_t loser = better ? entry->second : i;
        const std::size_t winner = better ? i : entry->second;
        entry->second = winner;
        dropped[loser] = true;
        findings.push_back(finding_on<"drawn-twice">(features[loser], place_of(features[loser].shape),
                                                     features[winner].label()));
    }
    std::size_t index = 0;
    std::erase_if(features, [&](const MapFeature&) { return dropped[index++]; });
}

}  // namespace landwidth
