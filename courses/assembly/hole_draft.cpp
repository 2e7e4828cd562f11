#include "courses/assembly/hole_draft.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <tuple>

#include "courses/assembly/hole_refs.hpp"
#include "courses/text.hpp"

namespace landwidth {

namespace {

// Ends this near are the same point drawn twice.
constexpr double touching_m = 1.0;
// A pin counts as in a green up to this far beyond its edge: greens are drawn by eye.
constexpr double pin_slack_m = 1.0;

std::string metres(double value) {
    return std::to_string(static_cast<long>(std::lround(value))) + " m";
}

double gap_between(const LonLatPath& a, const LonLatPath& b) {
    return geodesic_distance(a.back(), b.front());
}

// Puts the part that fits best at either end of the chain; turned round where that fits better. Returns the
// gap.
double attach(LonLatPath& chain, LonLatPath part) {
    LonLatPath turned(part.rbegin(), part.rend());
    const double gaps[] = {gap_between(chain, part), gap_between(chain, turned), gap_between(part, chain),
                           gap_between(turned, chain)};
    const auto best = std::min_element(std::begin(gaps), std::end(gaps)) - std::begin(gaps);
    if (best == 1 || best == 3) part.swap(turned);
    if (best < 2) {
        chain.insert(chain.end(), part.begin(), part.end());
    } else {
        chain.insert(chain.begin(), part.begin(), part.end());
    }
    return gaps[best];
}

// The parts of a line in one; absent when they lie too far apart.
std::optional<LonLatPath> chained(HoleDraft& draft, std::vector<LonLatPath> parts, double snap_m) {
    std::erase_if(parts, [](const LonLatPath& part) { return part.empty(); });
    if (parts.empty()) return LonLatPath{};
    LonLatPath chain = parts.front();
    parts.erase(parts.begin());
    double widest = 0.0;
    while (!parts.empty()) {
        const auto nearest =
            std::min_element(parts.begin(), parts.end(), [&chain](const LonLatPath& a, const LonLatPath& b) {
                LonLatPath with_a = chain;
                LonLatPath with_b = chain;
                return attach(with_a, a) < attach(with_b, b);
            });
        widest = std::max(widest, attach(chain, *nearest));
        parts.erase(nearest);
    }
    if (widest > snap_m) return std::nullopt;
    if (widest > touching_m) {
        draft.report(Severity::warning, "line-in-parts", chain.front(),
                     "the hole's line is in parts up to " + metres(widest) + " apart, taken as one",
                     "draw it as one line from tee to pin");
    }
    return chain;
}

void refuse(HoleDraft& draft, const char* code, std::optional<LonLat> place, std::string message,
            std::string advice) {
    draft.playable = false;
    draft.report(Severity::error, code, place, std::move(message), std::move(advice));
}

void read_line(HoleDraft& draft, double snap_m) {
    const MapShape& shape = draft.feature->shape;
    const char* draw_it = "draw golf=hole as one line from tee to pin";
    if (const std::size_t missing = draft.feature->points_missing; missing > 0) {
        return refuse(draft, "hole-points-missing", place_of(shape),
                      std::to_string(missing) + (missing == 1 ? " point" : " points") +
                          " of the hole's line " + (missing == 1 ? "is" : "are") + " not in the file",
                      "export a larger area, with all points of the hole's line in it");
    }
    if (const auto* polygons = std::get_if<std::vector<LonLatPolygon>>(&shape)) {
        return refuse(draft, "hole-not-a-line", polygons->front().outer.front(),
                      "the hole is drawn as an area, not as a line from tee to pin", draw_it);
    }
    if (const auto* point = std::get_if<LonLat>(&shape)) {
        return refuse(draft, "hole-not-a-line", *point,
                      "the hole is drawn as a point, not as a line from tee to pin", draw_it);
    }
    std::optional<LonLatPath> path = chained(draft, std::get<std::vector<LonLatPath>>(shape), snap_m);
    if (!path) {
        return refuse(draft, "line-in-parts", std::nullopt,
                      "the hole's line is in parts that lie too far apart", draw_it);
    }
    draft.path = std::move(*path);
    const std::optional<LonLat> place = draft.path.empty() ? std::nullopt : std::optional(draft.path.front());
    const bool one_point = std::all_of(draft.path.begin(), draft.path.end(),
                                       [&](const LonLat& point) { return point == draft.path.front(); });
    if (one_point) {
        return refuse(draft, "hole-line-point", place,
                      draft.path.empty() ? "the hole's line has no point in the file"
                                         : "the hole's line has only one point",
                      draw_it);
    }
    if (draft.path.front() == draft.path.back()) {
        return refuse(draft, "hole-not-a-line", place, "the hole's line is closed: it ends where it starts",
                      draw_it);
    }
    const double length = length_of(draft.path);
    if (length < shortest_hole_m || length > longest_hole_m) {
        refuse(draft, "hole-length", place,
               "the hole's line is " + metres(length) + " long, which no golf hole is",
               "check the line and the coordinate reference system of the map");
    }
}

double distance_or_far(const std::optional<CourseGround::Near>& near) {
    return near ? near->distance_m : std::numeric_limits<double>::infinity();
}

void orient(HoleDraft& draft, const CourseGround& ground, double snap_m) {
    const Point start = ground.frame().to_plane(draft.path.front());
    const Point end = ground.frame().to_plane(draft.path.back());
    const double green_at_start = distance_or_far(ground.nearest_green(start));
    const double green_at_end = distance_or_far(ground.nearest_green(end));
    const double tee_at_start = distance_or_far(ground.nearest_tee(start));
    const double tee_at_end = distance_or_far(ground.nearest_tee(end));
    const bool from_green_to_tee = green_at_start <= snap_m && tee_at_end <= snap_m &&
                                   green_at_start < green_at_end && tee_at_end < tee_at_start;
    const bool from_green_to_nowhere = green_at_start == 0.0 && green_at_end > snap_m;
    if (!from_green_to_tee && !from_green_to_nowhere) return;
    std::reverse(draft.path.begin(), draft.path.end());
    draft.report(Severity::warning, "line-turned-round", draft.path.front(),
                 "the hole's line runs from green to tee and is turned round", "draw it from tee to pin");
}

void find_green(HoleDraft& draft, const CourseGround& ground, double snap_m) {
    const LonLat end = draft.path.back();
    const auto near = ground.nearest_green(ground.frame().to_plane(end));
    if (!near || near->distance_m > snap_m) {
        return refuse(draft, "green-missing", end,
                      "no golf=green lies within " + metres(snap_m) + " of the end of the hole's line",
                      "map the green as an area, or draw the line to it");
    }
    draft.green = near->index;
    if (near->distance_m > 0.0) {
        draft.report(Severity::note, "green-snapped", end,
                     "the hole's line ends " + metres(near->distance_m) + " short of its green, " +
                         ground.greens()[near->index].part.feature->label(),
                     "draw the line to the pin");
    }
}

const PinPlace* pin_in_green(const HoleDraft& draft, const CourseGround& ground) {
    const Region& green = ground.greens()[*draft.green].region;
    const Point end = ground.frame().to_plane(draft.path.back());
    const auto rank = [&](const PinPlace& pin) {
        const std::vector<std::string> refs = refs_in(pin.feature->tag("ref"));
        const bool own = std::find(refs.begin(), refs.end(), plain_ref(draft.ref)) != refs.end();
        return std::tuple(pin.tagged_as_hole, !own, distance(pin.place, end));
    };
    const PinPlace* best = nullptr;
    for (const PinPlace& pin : ground.pins()) {
        if (green.distance_to(pin.place) > pin_slack_m) continue;
        if (best == nullptr || rank(pin) < rank(*best)) best = &pin;
    }
    return best;
}

}  // namespace

double length_of(const LonLatPath& path) {
    double length = 0.0;
    for (std::size_t i = 1; i < path.size(); ++i)
        length += geodesic_distance(path[i - 1], path[i]);
    return length;
}

HoleDraft draft_hole(const MapFeature& feature, const CourseGround& ground,
                     const MapAssumptions& assumptions) {
    HoleDraft draft;
    draft.feature = &feature;
    draft.ref = trimmed(feature.tag("ref"));
    read_line(draft, assumptions.snap_m);
    if (!draft.playable) return draft;
    orient(draft, ground, assumptions.snap_m);
    find_green(draft, ground, assumptions.snap_m);
    return draft;
}

LonLat pin_of(HoleDraft& draft, const CourseGround& ground) {
    if (const PinPlace* pin = pin_in_green(draft, ground)) {
        if (pin->tagged_as_hole) {
            draft.report(
                Severity::note, "pin-inferred", pin->lonlat,
                "no golf=pin in the green; the point " + pin->feature->label() + " tagged golf=hole is taken",
                "tag it golf=pin");
        }
        return pin->lonlat;
    }
    const Region& green = ground.greens()[*draft.green].region;
    const bool ends_in_green = green.contains(ground.frame().to_plane(draft.path.back()));
    const LonLat place = ends_in_green ? draft.path.back() : ground.frame().to_lonlat(middle_of(green));
    draft.report(Severity::note, "pin-inferred", place,
                 std::string("no golf=pin in the green; the ") +
                     (ends_in_green ? "end of the hole's line" : "middle of the green") + " is taken",
                 "map the pin, or aim for the middle of the green");
    return place;
}

}  // namespace landwidth
