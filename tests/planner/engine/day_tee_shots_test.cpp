// Tee shots in wind and over ground that is not flat against balls flown one by one: the flight itself in the
// wind (ball_flight.hpp), followed down its path to the ground and into what stands on it. What the two share
// is the pattern's run on level fairway and what a place costs.
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <random>

#include "planner/engine/published_field.hpp"
#include "tests/catch.hpp"
#include "tests/planner/engine/ball_walk.hpp"
#include "tests/planner/engine/day_plan.hpp"

using namespace landwidth;
using namespace landwidth::fixture;
using Catch::Matchers::WithinAbs;

namespace {

constexpr int balls = 40'000;
constexpr double trees_m = 12.0;

class FlownTeeShots {
  public:
    FlownTeeShots(const Hole& hole, const Club& club, const Conditions& day, double aim)
        : hole_(hole),
          pattern_(*club.pattern),
          day_(day),
          aim_(aim),
          a_(default_assumptions().engine),
          balls_(ClubFlight(club), day, pattern_.run_m, pattern_.usual.centre.carry_m, a_.curve_share),
          straight_(ClubFlight(club), day, pattern_.run_m, pattern_.usual.centre.carry_m, 0.0) {}

    struct Shares {
        std::array<double, lie_count> lies{};
        double stopped = 0.0, strokes = 0.0, carry_m = 0.0, side_m = 0.0;
    };
    Shares flown(double tee_value) const {
        const StrokesByDistance strokes(club_golfer(), a_);
        const PublishedField field(strokes, hole_.line, hole_.lies.extent());
        CounterRandom random(4711);
        std::mt19937_64 gusts(3);
        Shares sums;
        for (int ball = 0; ball < balls; ++ball) {
            const ShotOffset shot = drawn_shot(pattern_, random);
            const Rest rest = rest_of(shot, gust(gusts));
            const Lie lie = hole_.lies.lie_at(rest.place);
            sums.lies[index_of(lie)] += 1.0 / balls;
            sums.stopped += rest.stopped ? 1.0 / balls : 0.0;
            const double again = lie == Lie::out_of_bounds ? 1.0
                                 : lie == Lie::trees       ? a_.trees_lost_share
                                                           : 0.0;
            sums.strokes += again * (2.0 + tee_value) / balls;
            if (again < 1.0) sums.strokes += (1.0 - again) * (1.0 + field.cost(rest.place, lie, 0)) / balls;
        }
        return sums;
    }

  private:
    struct Rest {
        Point place;
        bool stopped;
    };
    double ground_m(Point place) const {
        return hole_.heights ? hole_.heights->at(place) - hole_.heights->at(hole_.line.tee()) : 0.0;
    }
    double wind_to() const { return day_.wind ? day_.wind->from.radians + std::numbers::pi - aim_ : 0.0; }
    // Of the mean wind: gusts are two standard deviations over it, and no wind is stronger or weaker by more.
    double gust(std::mt19937_64& random) const {
        if (!day_.wind || !day_.wind->gusts_mps) return 1.0;
        std::normal_distribution<double> normal;
        const double sd = 0.5 * (*day_.wind->gusts_mps / day_.wind->speed_mps - 1.0);
        return std::max(0.0, 1.0 + sd * std::clamp(normal(random), -2.0, 2.0));
    }

    Rest rest_of(const ShotOffset& shot, double strength) const {
        constexpr double lowest_m = -40.0, step_m = 0.5, tee_is_clear_m = 5.0;
        const Point tee = hole_.line.tee();
        const Point ahead = along_bearing(aim_);
        const double off = std::atan2(shot.side_m, shot.carry_m);
        const double carry_m = std::hypot(shot.carry_m, shot.side_m);
        const Flight flight = balls_.flown(carry_m, off, wind_to(), strength, hole_.heights ? lowest_m : 0.0);
        // In a pattern a ball runs straight away from the tee, whatever its curve: what the wind adds to that
        // is how far it turns the travel of a straight ball.
        const double heading = straight_.flown(carry_m, off, wind_to(), strength).landing_heading_rad;
        Point before = tee;
        for (std::size_t i = 1; i < flight.path.size(); ++i) {
            const FlightPoint& a = flight.path[i - 1];
            const FlightPoint& b = flight.path[i];
            const int steps =
                1 + static_cast<int>(std::hypot(b.along_m - a.along_m, b.right_m - a.right_m) / step_m);
            for (int step = 1; step <= steps; ++step) {
                const double share = static_cast<double>(step) / steps;
                const Point at = tee + (a.along_m + share * (b.along_m - a.along_m)) * ahead +
                                 (a.right_m + share * (b.right_m - a.right_m)) * to_the_right(ahead);
                const double height = a.height_m + share * (b.height_m - a.height_m);
                // Where trees end to the inch, not on the cells of the canopies.
                if (height < ground_m(at) + trees_m && distance(tee, at) > tee_is_clear_m &&
                    hole_.lies.lie_at(at) == Lie::trees)
                    return {at, true};
                const bool is_down = height <= ground_m(at) && (i > 8 || height < -1.0);
                if (is_down || (i + 1 == flight.path.size() && step == steps))
                    return {run_from(at, along_bearing(aim_ + heading), off), false};
                before = at;
            }
        }
        return {before, false};
    }

    Point run_from(Point landing, Point way, double off) const {
        const Lie lie = hole_.lies.lie_at(landing);
        const bool is_mown = lie == Lie::fairway || lie == Lie::teeing_area;
        double share = is_mown ? 1.0 : 0.0;
        if (lie == Lie::rough) share = a_.run_share_rough;
        if (lie == Lie::green) share = a_.run_share_green;
        if (lie == Lie::trees) share = a_.run_share_trees;
        Slope slope;
        if (hole_.heights) {
            const Point rise = hole_.heights->gradient(landing);
            slope = {dot(rise, way), dot(rise, to_the_right(way))};
        }
        const Firmness firmness = is_mown ? day_.fairway : day_.rough;
        const double run =
            std::max(0.0, share * (pattern_.run_m + balls_.more_run_m(firmness, wind_to() - off, slope)));
        for (double on = 0.0; on < run; on += 0.5)
            if (hole_.lies.lie_at(landing + on * way) == Lie::bunker) return landing + on * way;
        const double aside = share * balls_.aside_m(firmness, wind_to() - off, slope);
        return landing + run * way + aside * to_the_right(way);
    }

    const Hole& hole_;
    const ShotPattern& pattern_;
    Conditions day_;
    double aim_;
    EngineAssumptions a_;
    DayBalls balls_;
    DayBalls straight_;
};

// No water: what a drop costs is checked elsewhere.
HoleParts dry_hole() {
    HoleParts parts = straight_hole(405, 34);
    parts.layers.push_back({Lie::out_of_bounds, beyond(45)});
    parts.layers.push_back({Lie::trees, Region::box({yd(-60, 90), yd(-22, 260)})});
    parts.layers.push_back({Lie::bunker, Region::disc(yd(15, 240), yd(8, 0).x)});
    return parts;
}

void check(const HoleParts& parts, const Conditions& day, double strokes, double share) {
    const Hole hole = invented_hole(parts);
    const Golfer golfer = slicer();
    const HolePlan plan = planned(parts, golfer, day, FieldKind::published);
    const TeeChoice& best = plan.choices.front();
    const FlownTeeShots simulation(hole, golfer.clubs[best.club], day, best.aim);
    const FlownTeeShots::Shares flown = simulation.flown(best.expected_strokes);
    double largest = 0.0;
    for (const Lie lie : all_lies) {
        INFO(lie_name(lie));
        CHECK_THAT(best.lies[index_of(lie)], WithinAbs(flown.lies[index_of(lie)], share));
        largest = std::max(largest, std::abs(best.lies[index_of(lie)] - flown.lies[index_of(lie)]));
    }
    CHECK_THAT(best.day.stopped_share, WithinAbs(flown.stopped, share));
    CHECK_THAT(best.expected_strokes, WithinAbs(flown.strokes, strokes));
    WARN(golfer.clubs[best.club].name << ": strokes " << best.expected_strokes - flown.strokes
                                      << ", shares up to " << largest << ", stopped "
                                      << best.day.stopped_share - flown.stopped << " of " << flown.stopped);
}

}  // namespace

// Measured: on the reference day shares within 0.0015 and 0.001 strokes, the noise of the simulation; in wind
// and on slopes shares within 0.025 and 0.021 strokes. The fan runs balls straight away from the tee where
// the wind has turned their travel, takes heights off the carry in proportion, and all balls grow in the same
// share of their curve.
TEST_CASE("tee shots in a wind are where balls flown one by one are", "[day]") {
    SECTION("on the reference day") {
        check(dry_hole(), {}, 0.008, 0.006);
    }
    SECTION("across") {
        check(dry_hole(), windy(15.0, 270.0), 0.025, 0.03);
    }
    SECTION("against and across") {
        check(dry_hole(), windy(15.0, 40.0), 0.025, 0.03);
    }
    SECTION("from behind, in gusts") {
        Conditions day = windy(12.0, 200.0);
        day.wind->gusts_mps = 1.6 * day.wind->speed_mps;
        check(dry_hole(), day, 0.025, 0.03);
    }
}

TEST_CASE("tee shots over sloping ground are where balls flown one by one are", "[day]") {
    HoleParts parts = dry_hole();
    SECTION("uphill, falling to the right") {
        parts.height_m = [](Point p) { return 0.04 * p.y - 0.05 * p.x; };
        check(parts, {}, 0.025, 0.03);
    }
    SECTION("from a high tee, over rolling ground, in a wind") {
        parts.height_m = [](Point p) {
            return (p.y < 40.0 ? 8.0 * (1.0 - p.y / 40.0) : 0.0) + 2.0 * std::sin(p.y / 30.0);
        };
        check(parts, windy(10.0, 100.0), 0.025, 0.03);
    }
}
