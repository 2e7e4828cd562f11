#include "courses/assembly/fairway_owners.hpp"

#include <algorithm>
#include <limits>

#include "courses/assembly/hole_refs.hpp"
#include "courses/assembly/reach_of_play.hpp"

namespace landwidth {

namespace {

constexpr double share_to_own = 0.25;

using Paths = std::vector<std::vector<Point>>;

struct HoleLines {
    const MapFeature* feature;
    std::string number;
    Paths paths;
};

double run_through(const Region& region, const Paths& paths) {
    double longest = 0.0;
    for (const std::vector<Point>& path : paths) {
        double run = 0.0;
        for (std::size_t i = 1; i < path.size(); ++i) {
            if (path[i - 1] == path[i]) continue;
            for (const Stretch& stretch : region.stretches(path[i - 1], path[i]))
                run += stretch.to_m - stretch.from_m;
        }
        longest = std::max(longest, run);
    }
    return longest;
}

double distance_to(const Paths& paths, Point place) {
    double nearest = std::numeric_limits<double>::infinity();
    for (const std::vector<Point>& path : paths) {
        for (std::size_t i = 1; i < path.size(); ++i) {
            const Point step = path[i] - path[i - 1];
            const double square = dot(step, step);
            const double along =
                square > 0.0 ? std::clamp(dot(place - path[i - 1], step) / square, 0.0, 1.0) : 0.0;
            nearest = std::min(nearest, distance(place, path[i - 1] + along * step));
        }
    }
    return nearest;
}

std::set<const MapFeature*> owners_of(const Region& fairway, const std::vector<std::string>& numbers,
                                      const std::vector<HoleLines>& holes) {
    std::set<const MapFeature*> numbered;
    for (const HoleLines& hole : holes) {
        const bool bears_it = std::ranges::find(numbers, hole.number) != numbers.end();
        if (bears_it && distance_to(hole.paths, middle_of(fairway)) <= reach_of_play_m)
            numbered.insert(hole.feature);
    }
    if (!numbered.empty()) return numbered;
    std::vector<double> runs;
    for (const HoleLines& hole : holes)
        runs.push_back(run_through(fairway, hole.paths));
    const double longest = runs.empty() ? 0.0 : *std::max_element(runs.begin(), runs.end());
    std::set<const MapFeature*> owners;
    if (longest > 0.0) {
        for (std::size_t i = 0; i < holes.size(); ++i) {
            if (runs[i] >= share_to_own * longest) owners.insert(holes[i].feature);
        }
        return owners;
    }
    const Point middle = middle_of(fairway);
    const auto nearest =
        std::min_element(holes.begin(), holes.end(), [middle](const HoleLines& a, const HoleLines& b) {
            return distance_to(a.paths, middle) < distance_to(b.paths, middle);
        });
    if (nearest != holes.end()) owners.insert(nearest->feature);
    return owners;
}

const std::vector<LonLatPolygon>* polygons_of(const MapFeature& feature) {
    return std::get_if<std::vector<LonLatPolygon>>(&feature.shape);
}

}  // namespace

FairwayOwners::FairwayOwners(const std::vector<const IndexedFeature*>& features,
                             const std::vector<const HoleDraft*>& holes, const PlaneFrame& frame,
                             RepairLog& repairs) {
    const PlaneDrawing drawing(frame, repairs);
    std::vector<HoleLines> lines;
    for (const HoleDraft* hole : holes) {
        HoleLines& hole_lines =
            lines.emplace_back(HoleLines{hole->feature, hole->number, {drawing.path(hole->path)}});
        for (const LonLatPath& alternative : hole->alternatives)
            hole_lines.paths.push_back(drawing.path(alternative));
    }
    for (const IndexedFeature* indexed : features) {
        const auto* polygons = polygons_of(*indexed->feature);
        if (indexed->feature->role() != Role::fairway || polygons == nullptr) continue;
        for (std::size_t part = 0; part < polygons->size(); ++part) {
            const Region region = drawing.area(*indexed->feature, (*polygons)[part]);
            if (region.empty()) continue;
            owners_[{indexed->feature, part}] =
                owners_of(region, refs_in(indexed->feature->tag("ref")), lines);
        }
    }
}

bool FairwayOwners::owns(const MapFeature* hole, const MapFeature* fairway, std::size_t part) const {
    const auto found = owners_.find({fairway, part});
    return found != owners_.end() && found->second.contains(hole);
}

FairwayGround fairways_of(const MapFeature& hole, const FairwayOwners& owners,
                          const std::vector<const IndexedFeature*>& near, const MapFeature& green,
                          std::size_t green_part, const PlaneDrawing& drawing) {
    std::vector<Region> own;
    std::vector<Region> others;
    for (const IndexedFeature* indexed : near) {
        const MapFeature& feature = *indexed->feature;
        const auto* polygons = polygons_of(feature);
        const bool mown =
            indexed->feature->role() == Role::fairway || indexed->feature->role() == Role::green;
        if (!mown || polygons == nullptr) continue;
        for (std::size_t part = 0; part < polygons->size(); ++part) {
            if (&feature == &green && part == green_part) continue;
            const bool is_own =
                indexed->feature->role() == Role::fairway && owners.owns(&hole, &feature, part);
            (is_own ? own : others).push_back(drawing.area(feature, (*polygons)[part]));
        }
    }
    FairwayGround ground{Region::united(own), {}};
    ground.others = Region::united(others).without(ground.own);
    return ground;
}

}  // namespace landwidth
