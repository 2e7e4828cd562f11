#include "courses/reading/osm_points.hpp"

namespace landwidth {

LonLatPath WayPoints::all() const {
    LonLatPath path;
    for (const LonLatPath& run : runs)
        path.insert(path.end(), run.begin(), run.end());
    return path;
}

std::optional<LonLat> WayPoints::any() const {
    return runs.empty() ? std::nullopt : std::optional(runs.front().front());
}

std::vector<LonLatPath> WayPoints::runs_of_ring() const {
    std::vector<LonLatPath> joined = runs;
    if (missing == 0 || joined.size() < 2 || joined.front().front() != joined.back().back()) return joined;
    LonLatPath& last = joined.back();
    last.insert(last.end(), joined.front().begin() + 1, joined.front().end());
    joined.erase(joined.begin());
    return joined;
}

bool is_ring(const OsmWay& way) {
    return way.nodes.size() > 3 && way.nodes.front() == way.nodes.back();
}

WayPoints points_of(const OsmWay& way, const OsmElements& elements) {
    WayPoints points;
    bool goes_on = false;
    for (const std::int64_t id : way.nodes) {
        const OsmNode* node = elements.node(id);
        if (node == nullptr) {
            ++points.missing;
            goes_on = false;
            continue;
        }
        ++points.count;
        if (!goes_on) points.runs.emplace_back();
        points.runs.back().push_back(node->place);
        goes_on = true;
    }
    return points;
}

}  // namespace landwidth
