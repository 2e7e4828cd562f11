#include "courses/assembly/drawn_ground.hpp"

#include <algorithm>
#include <cmath>

#include "courses/assembly/reach_of_play.hpp"
#include "courses/tags/vocabulary.hpp"

namespace landwidth {

namespace {

// Shares of an area from which on it lies in another one, or in a penalty area (assumptions).
constexpr double inside = 0.5, inside_water = 0.9;
// Branches reach no further over open ground; a wider strip was never cut out of the wood (an assumption).
constexpr double longest_branches_m = 10.0;
// Less is no overlap, square metres.
constexpr double least_overlap_m2 = 0.5;

std::size_t rank_of(Lie lie) {
    return static_cast<std::size_t>(std::ranges::find(lie_priority, lie) - lie_priority.begin());
}

bool is_open_ground(Lie lie) {
    return lie == Lie::fairway || lie == Lie::rough;
}

// Two areas that overlap, and how.
struct Overlap {
    const DrawnGround& a;
    const DrawnGround& b;
    Region common;
    double share_of_a, share_of_b;

    bool lies_in(double share, const DrawnGround& outer) const {
        return share >= (is_penalty_area(outer.lie) ? inside_water : inside);
    }
    // Drawn twice, as two things.
    bool are_alike() const { return std::min(share_of_a, share_of_b) >= inside_water; }
    // The one that lies in the other; null when neither does.
    const DrawnGround* inner() const {
        const bool a_smaller = share_of_a >= share_of_b;
        const double share = a_smaller ? share_of_a : share_of_b;
        if (are_alike()) return nullptr;
        return lies_in(share, a_smaller ? b : a) ? (a_smaller ? &a : &b) : nullptr;
    }
    const DrawnGround& first_in_order() const { return rank_of(a.lie) <= rank_of(b.lie) ? a : b; }
    const DrawnGround& upper() const;
    bool has(bool (*test)(const DrawnGround&)) const { return test(a) || test(b); }
};

const DrawnGround& Overlap::upper() const {
    if (a.evidence == Evidence::object || b.evidence == Evidence::object) {
        const DrawnGround& object = a.evidence == Evidence::object ? a : b;
        const DrawnGround& other = &object == &a ? b : a;
        const bool stands =
            object.lie == Lie::trees && is_open_ground(other.lie) && other.evidence == Evidence::golf_area;
        return stands ? object : first_in_order();
    }
    // A pond in a yellow penalty area is part of it.
    if (is_penalty_area(a.lie) && is_penalty_area(b.lie) && a.evidence != b.evidence)
        return a.evidence == Evidence::golf_area ? a : b;
    if (const DrawnGround* smaller = inner()) return *smaller;
    if (a.evidence != b.evidence) {
        const DrawnGround& golf = a.evidence == Evidence::golf_area ? a : b;
        const DrawnGround& cover = &golf == &a ? b : a;
        if (!is_penalty_area(cover.lie)) return golf;
    }
    return first_in_order();
}

class Settling {
  public:
    Settling(const std::vector<DrawnGround>& drawn, const LineOfPlay& line, const Box& extent,
             const PlaneFrame& frame, FeatureNotes& notes)
        : drawn_(drawn),
          frame_(frame),
          notes_(notes),
          play_(Region::around(line.vertices(), reach_of_play_m)),
          cuts_(drawn.size()) {
        // A wood of a whole county is cut to the hole once and not for every bunker.
        const Region here = Region::box(extent);
        for (const DrawnGround& ground : drawn) {
            const Box box = ground.region.bounds();
            const bool is_here = extent.contains(box.min) && extent.contains(box.max);
            near_.push_back(is_here ? ground.region : ground.region.common_with(here));
            boxes_.push_back(near_.back().empty() ? Box{box.min, box.min} : near_.back().bounds());
        }
    }

    SettledGround settle() {
        for (std::size_t i = 0; i < drawn_.size(); ++i)
            for (std::size_t k = i + 1; k < drawn_.size(); ++k)
                if (drawn_[i].lie != drawn_[k].lie && boxes_meet(boxes_[i], boxes_[k])) compare(i, k);
        for (std::size_t i = 0; i < drawn_.size(); ++i) {
            Region left = cuts_[i].empty() ? drawn_[i].region : near_[i].without(Region::united(cuts_[i]));
            // Rough is what is left over, it needs no layer.
            if (drawn_[i].lie != Lie::rough && !left.empty())
                result_.layers.push_back({drawn_[i].lie, std::move(left)});
        }
        return std::move(result_);
    }

  private:
    static bool boxes_meet(const Box& a, const Box& b) {
        return a.min.x < b.max.x && b.min.x < a.max.x && a.min.y < b.max.y && b.min.y < a.max.y;
    }

    void compare(std::size_t i, std::size_t k) {
        const DrawnGround& a = drawn_[i];
        const DrawnGround& b = drawn_[k];
        Region common = near_[i].common_with(near_[k]);
        const double area = common.area();
        if (area < least_overlap_m2) return;
        const Overlap overlap{a, b, std::move(common), area / a.whole_m2, area / b.whole_m2};
        const DrawnGround& upper = overlap.upper();
        const bool is_marked_water =
            is_penalty_area(a.lie) && is_penalty_area(b.lie) && a.evidence != b.evidence;
        const bool a_is_upper = &upper == &a;
        const DrawnGround& lower = a_is_upper ? b : a;
        if (&upper != &overlap.first_in_order())
            cuts_[a_is_upper ? k : i].push_back(near_[a_is_upper ? i : k]);
        // The one lies in the other; of two drawn alike neither does.
        if (std::max(overlap.share_of_a, overlap.share_of_b) >= inside_water &&
            (!overlap.are_alike() || is_marked_water))
            return;
        if (a.evidence == Evidence::object || b.evidence == Evidence::object) return;
        if (overlap.common.grown(-0.5 * slip_m).empty()) return;
        const bool hangs = lower.lie == Lie::trees && is_open_ground(upper.lie) &&
                           overlap.common.grown(-0.5 * longest_branches_m).empty();
        if (hangs) result_.overhang.push_back({overlap.common, lower.tall_m, false});
        report(overlap, upper, hangs);
    }

    // Golf areas that overlap are no doubt: a bunker cut into the edge of a fairway is drawn so.
    void report(const Overlap& overlap, const DrawnGround& upper, bool hangs) {
        const auto covers = [](const DrawnGround& ground) {
            return ground.lie == Lie::trees || is_penalty_area(ground.lie) ||
                   ground.evidence == Evidence::land_cover;
        };
        const auto golf = [](const DrawnGround& ground) { return ground.evidence == Evidence::golf_area; };
        const auto sand = [](const DrawnGround& ground) { return ground.lie == Lie::bunker; };
        const bool matters = overlap.has(covers) && (overlap.has(golf) || overlap.has(sand));
        if (!matters || !overlap.common.meets(play_)) return;
        const DrawnGround& first = golf(overlap.a) ? overlap.a : overlap.b;
        const DrawnGround& second = &first == &overlap.a ? overlap.b : overlap.a;
        notes_.add_pair<"overlap-unclear">(
            *first.feature, *second.feature, frame_.to_lonlat(middle_of(overlap.common)),
            tag_words(second.feature->tags), second.feature->label(), std::lround(overlap.common.area()),
            lie_name(upper.lie), hangs ? " with branches over it" : "");
    }

    const std::vector<DrawnGround>& drawn_;
    const PlaneFrame& frame_;
    FeatureNotes& notes_;
    Region play_;
    std::vector<std::vector<Region>> cuts_;  // what is cut out of each
    std::vector<Region> near_;               // of each what lies within the extent
    std::vector<Box> boxes_;
    SettledGround result_;
};

}  // namespace

std::vector<GolfGroundIn> golf_ground_in(const Region& region, const std::vector<DrawnGround>& drawn,
                                         const LineOfPlay& line) {
    const Region play = Region::around(line.vertices(), reach_of_play_m);
    std::vector<GolfGroundIn> found;
    for (const DrawnGround& ground : drawn) {
        if (ground.evidence != Evidence::golf_area || is_penalty_area(ground.lie)) continue;
        Region common = ground.region.common_with(region);
        if (common.grown(-0.5 * slip_m).empty() || !common.meets(play)) continue;
        found.push_back({&ground, std::move(common)});
    }
    return found;
}

SettledGround settled(const std::vector<DrawnGround>& drawn, const LineOfPlay& line, const Box& extent,
                      const PlaneFrame& frame, FeatureNotes& notes) {
    return Settling(drawn, line, extent, frame, notes).settle();
}

}  // namespace landwidth
