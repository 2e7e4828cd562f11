#include "courses/assembly/hole_draft.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "courses/assembly/hole_ends.hpp"
#include "courses/assembly/hole_refs.hpp"
#include "courses/text.hpp"

namespace landwidth {

namespace {

// Ends this near are the same point drawn twice.
constexpr double touching_m = 1.0;
// A pin counts as in a green up to this far beyond its edge: greens are drawn by eye.
constexpr double pin_slack_m = 1.0;

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
        draft.report<"line-in-parts/gap">(chain.front(), std::lround(widest));
    }
    return chain;
}

template <KindName kind, typename... Args>
void refuse(HoleDraft& draft, std::optional<LonLat> place, const Args&... args) {
    draft.playable = false;
    draft.report<kind>(place, args...);
}

void read_line(HoleDraft& draft, double snap_m) {
    const MapShape& shape = draft.feature->shape;
    if (const std::size_t missing = draft.feature->points_missing; missing > 0) {
        const bool one = missing == 1;
        return refuse<"hole-points-missing">(draft, place_of(shape), missing, one ? "point" : "points",
                                             one ? "is" : "are");
    }
    if (const auto* polygons = std::get_if<std::vector<LonLatPolygon>>(&shape)) {
        // A closed way of OpenStreetMap data is an area in an export of it.
        return refuse<"hole-not-a-line/closed">(draft, polygons->front().outer.front());
    }
    if (const auto* point = std::get_if<LonLat>(&shape)) {
        return refuse<"hole-not-a-line/point">(draft, *point);
    }
    std::optional<LonLatPath> path = chained(draft, std::get<std::vector<LonLatPath>>(shape), snap_m);
    if (!path) {
        return refuse<"line-in-parts/too-far">(draft, std::nullopt);
    }
    draft.path = std::move(*path);
    const std::optional<LonLat> place = draft.path.empty() ? std::nullopt : std::optional(draft.path.front());
    const bool one_point = std::all_of(draft.path.begin(), draft.path.end(),
                                       [&](const LonLat& point) { return point == draft.path.front(); });
    if (one_point) {
        return draft.path.empty() ? refuse<"hole-line-point/none">(draft, place)
                                  : refuse<"hole-line-point/one">(draft, place);
    }
    if (draft.path.front() == draft.path.back()) {
        return refuse<"hole-not-a-line/closed">(draft, place);
    }
    const double length = length_of(draft.path);
    if (length < shortest_hole_m || length > longest_hole_m) {
        refuse<"hole-length/line">(draft, place, std::lround(length));
    }
}

// The numbers of a hole, as its ref says or else its name.
std::vector<std::string> numbers_of(const HoleDraft& draft) {
    std::vector<std::string> refs = refs_in(draft.mapped_ref);
    if (!refs.empty()) return refs;
    const std::optional<std::string> named = number_in_name(draft.feature->tag("name"));
    return named ? std::vector<std::string>{*named} : std::vector<std::string>{};
}

void find_ends(HoleDraft& draft, const CourseGround& ground, double snap_m) {
    const std::optional<HoleEnds> ends =
        ends_of(*draft.feature, draft.path, numbers_of(draft), ground, snap_m);
    if (!ends) {
        return refuse<"green-missing">(draft, draft.path.back(), std::lround(snap_m));
    }
    if (ends->turned) {
        std::reverse(draft.path.begin(), draft.path.end());
        draft.report<"line-turned-round">(draft.path.front());
    }
    draft.green = ends->green;
    const GreenGround& green = ground.greens()[ends->green];
    const std::string label = green.part.feature->label();
    const LonLat end = draft.path.back();
    if (ends->bears_other_number) {
        draft.report<"green-of-another">(end, label, green.part.feature->tag("ref"));
    }
    if (ends->past_by_m > touching_m) {
        draft.path = ended_in_green(draft.path, green.region, ground.frame());
        draft.report<"line-past-green">(end, std::lround(ends->past_by_m), label);
    } else if (ends->short_by_m > snap_m) {
        draft.report<"green-snapped/by-number">(end, std::lround(ends->short_by_m), label);
    } else if (ends->short_by_m > 0.0) {
        draft.report<"green-snapped/near">(end, std::lround(ends->short_by_m), label);
    }
}

const PinPlace* pin_in_green(const HoleDraft& draft, const CourseGround& ground) {
    const Region& green = ground.greens()[*draft.green].region;
    const Point end = ground.frame().to_plane(draft.path.back());
    const auto rank = [&](const PinPlace& pin) {
        const std::vector<std::string> refs = refs_in(pin.feature->tag("ref"));
        const bool own = std::find(refs.begin(), refs.end(), draft.number) != refs.end();
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
    draft.mapped_ref = trimmed(feature.tag("ref"));
    draft.number = draft.ref = draft.mapped_ref;
    read_line(draft, assumptions.snap_m);
    if (!draft.playable) return draft;
    find_ends(draft, ground, assumptions.snap_m);
    return draft;
}

LonLat pin_of(HoleDraft& draft, const CourseGround& ground) {
    if (const PinPlace* pin = pin_in_green(draft, ground)) {
        if (pin->tagged_as_hole) draft.report<"pin-inferred/hole-point">(pin->lonlat, pin->feature->label());
        return pin->lonlat;
    }
    const Region& green = ground.greens()[*draft.green].region;
    const bool ends_in_green = green.contains(ground.frame().to_plane(draft.path.back()));
    const LonLat place = ends_in_green ? draft.path.back() : ground.frame().to_lonlat(middle_of(green));
    draft.report<"pin-inferred">(place, ends_in_green ? "end of the hole's line" : "middle of the green");
    return place;
}

}  // namespace landwidth
