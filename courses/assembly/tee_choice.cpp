#include "courses/assembly/tee_choice.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "courses/assembly/hole_refs.hpp"
#include "courses/text.hpp"
#include "geometry/line_of_play.hpp"

namespace landwidth {

namespace {

constexpr double behind_the_start_m = 100.0;
constexpr double ahead_of_the_start_m = 200.0;
constexpr double ahead_share = 0.6;
// How much further a tee may be from the hole whose number it bears.
constexpr double reach_by_ref = 3.0;
// Lines this near to each other at a tee share it: both loops of nine, a hole played twice.
constexpr double as_near_m = 3.0;

bool lists(const std::string& text, const std::string& name, std::string_view separators) {
    const std::vector<std::string> items = list_items(folded(text), separators);
    return std::find(items.begin(), items.end(), name) != items.end();
}

// The distance of a point from the first part of a line.
double distance_from_first_part(const LineOfPlay& line, Point place) {
    const double ahead = std::min(ahead_of_the_start_m, ahead_share * line.length());
    const LineOfPlay::Place on_line = line.place_of(place);
    const double station = std::min(on_line.station_m, ahead);
    double best = distance(place, line.point_at(station));
    // Behind the start the first leg goes on straight.
    const Point back = (-1.0) * unit(line.vertices()[1] - line.vertices()[0]);
    const double behind = std::clamp(dot(place - line.tee(), back), 0.0, behind_the_start_m);
    return std::min(best, distance(place, line.tee() + behind * back));
}

struct Reach {
    std::size_t hole;  // index of its draft
    const std::string& number;
    std::vector<LineOfPlay> lines;

    double distance_m(Point place) const {
        double best = std::numeric_limits<double>::infinity();
        for (const LineOfPlay& line : lines)
            best = std::min(best, distance_from_first_part(line, place));
        return best;
    }
};

std::vector<Reach> reaches_of(const std::vector<HoleDraft>& drafts, const PlaneFrame& frame) {
    std::vector<Reach> reaches;
    for (std::size_t hole = 0; hole < drafts.size(); ++hole) {
        const HoleDraft& draft = drafts[hole];
        if (!draft.playable) continue;
        Reach& reach = reaches.emplace_back(Reach{hole, draft.number, {}});
        std::vector<LonLatPath> paths = draft.alternatives;
        paths.push_back(draft.path);
        for (const LonLatPath& path : paths) {
            std::vector<Point> points;
            for (const LonLat& place : path)
                points.push_back(frame.to_plane(place));
            reach.lines.emplace_back(std::move(points));
        }
    }
    return reaches;
}

bool bears_number(const std::vector<std::string>& refs, const Reach& reach, double distance_m,
                  double snap_m) {
    return std::ranges::find(refs, reach.number) != refs.end() && distance_m <= reach_by_ref * snap_m;
}

std::string name_of_tee(const MapFeature& tee, const HoleDraft& draft) {
    for (const char* key : {"tee", "colour", "color", "name"}) {
        if (const std::string& value = tee.tag(key); !value.empty()) return trimmed(value);
    }
    const std::string ref = plain_ref(tee.tag("ref"));
    return ref == draft.number || is_plain_number(ref) ? std::string() : ref;
}

}  // namespace

bool goes_by_tee(const MapFeature& feature, const std::string& name) {
    const std::string wanted = folded(name);
    if (wanted.empty()) return false;
    for (const char* key : {"tee", "colour", "color"}) {
        if (lists(feature.tag(key), wanted, ";,/")) return true;
    }
    const std::string own = folded(feature.tag("name"));
    return own == wanted || lists(own, wanted, " ;,/()") || folded(feature.tag("ref")) == wanted;
}

std::vector<std::vector<std::size_t>> tees_of(const std::vector<HoleDraft>& drafts,
                                              const CourseGround& ground, double snap_m) {
    std::vector<std::vector<std::size_t>> tees(drafts.size());
    const std::vector<Reach> reaches = reaches_of(drafts, ground.frame());
    for (std::size_t i = 0; i < ground.tees().size(); ++i) {
        const TeeGround& tee = ground.tees()[i];
        const std::vector<std::string> refs = refs_in(tee.part.feature->tag("ref"));
        std::vector<double> distances;
        bool has_number = false;
        double nearest = snap_m;
        for (const Reach& reach : reaches) {
            distances.push_back(reach.distance_m(tee.middle));
            has_number = has_number || bears_number(refs, reach, distances.back(), snap_m);
            nearest = std::min(nearest, distances.back());
        }
        for (std::size_t k = 0; k < reaches.size(); ++k) {
            const bool serves = has_number ? bears_number(refs, reaches[k], distances[k], snap_m)
                                           : distances[k] <= snap_m && distances[k] <= nearest + as_near_m;
            if (serves) tees[reaches[k].hole].push_back(i);
        }
    }
    return tees;
}

std::vector<std::string> tee_names(const HoleDraft& draft, const CourseGround& ground) {
    std::vector<std::string> names;
    for (const std::size_t tee : draft.tees) {
        const std::string name = name_of_tee(*ground.tees()[tee].part.feature, draft);
        for (std::string& item : list_items(name)) {
            if (std::find(names.begin(), names.end(), item) == names.end()) names.push_back(std::move(item));
        }
    }
    return names;
}

TeePlayed choose_tee(HoleDraft& draft, const CourseGround& ground, const std::string& wish, double snap_m) {
    const Point start = ground.frame().to_plane(draft.path.front());
    if (!wish.empty()) {
        const TeeGround* best = nullptr;
        for (const std::size_t index : draft.tees) {
            const TeeGround& tee = ground.tees()[index];
            if (!goes_by_tee(*tee.part.feature, wish)) continue;
            if (best == nullptr || distance(tee.middle, start) < distance(best->middle, start)) best = &tee;
        }
        // A line that starts in the tee asked for, or says that it is its line, is played as drawn.
        if (best != nullptr && !best->region.contains(start))
            return {folded(wish), ground.frame().to_lonlat(best->middle)};
        if (best != nullptr || goes_by_tee(*draft.feature, wish)) return {folded(wish), std::nullopt};
        const std::vector<std::string> names = tee_names(draft, ground);
        draft.report<"tee-missing">(draft.path.front(), wish,
                                    names.empty() ? "" : " (there is " + enumeration(names) + ")");
    }
    const auto near = ground.nearest_tee(start);
    if (!near || near->distance_m > snap_m) {
        draft.report<"tee-unmapped">(draft.path.front());
        return {};
    }
    const TeeGround& tee = ground.tees()[near->index];
    const std::string name = name_of_tee(*tee.part.feature, draft);
    if (near->distance_m == 0.0) return {name, std::nullopt};
    draft.report<"tee-snapped">(draft.path.front(), std::lround(near->distance_m), tee.part.feature->label());
    return {name, ground.frame().to_lonlat(tee.middle)};
}

}  // namespace landwidth
