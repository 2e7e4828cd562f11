#include "courses/assembly/hole_ends.hpp"

#include <algorithm>
#include <limits>

#include "courses/assembly/hole_refs.hpp"

namespace landwidth {

namespace {

// Prices, metres; see the header.
constexpr double price_of_crossing = 40.0, price_of_number = 50.0, price_of_turning = 40.0,
                 price_of_anothers_green = 100.0;
constexpr double price_of_gap = 2.0, price_of_going_on = 0.25, price_of_tee_distance = 0.5,
                 dearest_tee = 30.0;
constexpr double furthest_past_m = 150.0, reach_by_number = 3.0;
// A line starts at a tee, and in a green, within this.
constexpr double at_tee_m = 10.0, in_green_m = 1.0;
// Of choices that cost the same the smaller green: a price for a square metre.
constexpr double price_of_area = 1e-6;

// Where a path passes a green, metres along it.
struct Passage {
    double enters_m, leaves_m;
};

// Its last one. The path is as often asked for greens far from it as for near ones: boxes first.
std::optional<Passage> passage_of(const std::vector<Point>& path, const Region& green) {
    const Box box = green.bounds();
    std::optional<Passage> passage;
    double before_m = 0.0;
    for (std::size_t i = 1; i < path.size(); ++i) {
        const Point a = path[i - 1], b = path[i];
        const double leg_m = distance(a, b);
        const bool apart = std::max(a.x, b.x) < box.min.x || std::min(a.x, b.x) > box.max.x ||
                           std::max(a.y, b.y) < box.min.y || std::min(a.y, b.y) > box.max.y;
        if (!apart) {
            for (const Stretch& stretch : green.stretches(a, b)) {
                constexpr double joined_m = 1e-3;
                const double enters = before_m + stretch.from_m;
                if (passage && enters <= passage->leaves_m + joined_m) {
                    passage->leaves_m = before_m + stretch.to_m;
                } else {
                    passage = {enters, before_m + stretch.to_m};
                }
            }
        }
        before_m += leg_m;
    }
    return passage;
}

class Direction {
  public:
    Direction(const MapFeature& hole, std::vector<Point> path, bool turned,
              const std::vector<std::string>& numbers, const CourseGround& ground, double snap_m)
        : hole_(hole),
          path_(std::move(path)),
          turned_(turned),
          numbers_(numbers),
          ground_(ground),
          snap_m_(snap_m) {
        for (std::size_t i = 1; i < path_.size(); ++i)
            length_m_ += distance(path_[i - 1], path_[i]);
        for (const GreenGround& green : ground.greens())
            passages_.push_back(green.practice ? std::nullopt : passage_of(path_, green.region));
        const auto tee = ground.nearest_tee(path_.front());
        price_ = std::min(dearest_tee, price_of_tee_distance * (tee ? tee->distance_m : 2.0 * dearest_tee));
        if (turned) price_ += price_of_turning;
    }

    // Adds the choices of this direction to the best so far.
    void choose(std::optional<HoleEnds>& best, double& least) const {
        if (turned_ && starts_at_tee(path_.back()) && !starts_at_tee(path_.front())) return;
        for (std::size_t i = 0; i < ground_.greens().size(); ++i) {
            if (ground_.greens()[i].practice) continue;
            const HoleEnds ends = ending_in(i);
            const double reach = snap_m_ * (ends.bears_number ? reach_by_number : 1.0);
            const bool in_reach = passages_[i] ? ends.past_by_m <= furthest_past_m : ends.short_by_m <= reach;
            const bool starts_in_it = ends.past_by_m > 0.0 && passages_[i]->enters_m <= in_green_m;
            const bool anothers = ends_another(ground_.greens()[i]);
            if (!in_reach || starts_in_it || (turned_ && anothers && !ends.bears_number)) continue;
            double price = price_ + price_of(ends);
            if (anothers && ends.past_by_m > 0.0 && ends_in_a_green()) price += price_of_anothers_green;
            if (price < least) {
                least = price;
                best = ends;
            }
        }
    }

  private:
    bool starts_at_tee(Point place) const {
        const auto tee = ground_.nearest_tee(place);
        return tee && tee->distance_m <= at_tee_m;
    }

    bool ends_another(const GreenGround& green) const {
        return std::ranges::any_of(green.lines, [&](const MapFeature* line) { return line != &hole_; });
    }

    bool ends_in_a_green() const {
        return std::ranges::any_of(ground_.greens(), [&](const GreenGround& green) {
            return !green.practice && green.region.contains(path_.back());
        });
    }

    HoleEnds ending_in(std::size_t green) const {
        const GreenGround& own = ground_.greens()[green];
        const std::vector<std::string> refs = refs_in(own.part.feature->tag("ref"));
        const bool agrees = std::ranges::any_of(
            refs, [&](const std::string& ref) { return std::ranges::find(numbers_, ref) != numbers_.end(); });
        const bool is_number =
            std::ranges::any_of(refs, [](const std::string& ref) { return number_of_ref(ref).has_value(); });
        const double gap = own.region.distance_to(path_.back());
        const bool past = passages_[green].has_value() && gap > 0.0;
        return {green,
                turned_,
                past ? 0.0 : gap,
                past ? length_m_ - passages_[green]->leaves_m : 0.0,
                agrees,
                is_number && !agrees && !numbers_.empty()};
    }

    double price_of(const HoleEnds& ends) const {
        const double end_m = passages_[ends.green] ? passages_[ends.green]->enters_m : length_m_;
        double price = price_of_gap * ends.short_by_m + price_of_going_on * ends.past_by_m +
                       price_of_area * ground_.greens()[ends.green].region.area();
        for (std::size_t i = 0; i < passages_.size(); ++i) {
            const bool crossed_before = passages_[i] && i != ends.green && passages_[i]->leaves_m < end_m &&
                                        passages_[i]->enters_m > 0.0;
            if (crossed_before) price += price_of_crossing;
        }
        if (ends.bears_number) price -= price_of_number;
        if (ends.bears_other_number) price += price_of_number;
        return price;
    }

    const MapFeature& hole_;
    std::vector<Point> path_;
    bool turned_;
    const std::vector<std::string>& numbers_;
    const CourseGround& ground_;
    double snap_m_;
    double length_m_ = 0.0;
    double price_ = 0.0;
    std::vector<std::optional<Passage>> passages_;
};

}  // namespace

std::optional<HoleEnds> ends_of(const MapFeature& hole, const LonLatPath& path,
                                const std::vector<std::string>& numbers, const CourseGround& ground,
                                double snap_m) {
    std::vector<Point> points;
    for (const LonLat& place : path)
        points.push_back(ground.frame().to_plane(place));
    std::optional<HoleEnds> best;
    double least = std::numeric_limits<double>::infinity();
    Direction(hole, points, false, numbers, ground, snap_m).choose(best, least);
    std::ranges::reverse(points);
    Direction(hole, points, true, numbers, ground, snap_m).choose(best, least);
    return best;
}

LonLatPath ended_in_green(const LonLatPath& path, const Region& green, const PlaneFrame& frame) {
    std::vector<Point> points;
    for (const LonLat& place : path)
        points.push_back(frame.to_plane(place));
    const std::optional<Passage> passage = passage_of(points, green);
    if (!passage) return path;
    const double middle_m = 0.5 * (passage->enters_m + passage->leaves_m);
    LonLatPath ended;
    double before_m = 0.0;
    for (std::size_t i = 0; i + 1 < points.size(); ++i) {
        ended.push_back(path[i]);
        const double leg_m = distance(points[i], points[i + 1]);
        if (before_m + leg_m >= middle_m) {
            const double share = leg_m > 0.0 ? (middle_m - before_m) / leg_m : 0.0;
            ended.push_back(frame.to_lonlat(points[i] + share * (points[i + 1] - points[i])));
            return ended;
        }
        before_m += leg_m;
    }
    return path;
}

}  // namespace landwidth
