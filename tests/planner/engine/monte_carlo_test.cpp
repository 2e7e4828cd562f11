// Expected strokes against plain Monte Carlo: ball by ball, on the exact ground, with none of the engine's
// rasters, fans or quadrature. What the two share is the strokes field and the search for the best drop,
// whose own checks stand elsewhere.
#include <algorithm>
#include <cmath>
#include <optional>
#include <random>
#include <span>
#include <thread>

#include "geometry/edge_crossing.hpp"
#include "planner/engine/published_field.hpp"
#include "planner/engine/relief.hpp"
#include "tests/catch.hpp"
#include "tests/planner/engine/flown_heights.hpp"
#include "tests/planner/engine/invented_hole.hpp"

using namespace landwidth;
using namespace landwidth::fixture;
using Catch::Matchers::WithinAbs;

namespace {

constexpr int threads = 2;
constexpr double woods_m = 12.0;
constexpr int balls_per_thread = 2'000'000;

class Simulation {
  public:
    // woods: all trees of the hole, woods_m high.
    Simulation(const Hole& hole, std::span<const Box> woods, const Club& club, double aim, double tee_value)
        : hole_(hole),
          woods_(woods),
          pattern_(*club.pattern),
          heights_(club),
          aim_(aim),
          tee_value_(tee_value),
          constants_(default_assumptions().engine),
          strokes_(club_golfer_of_the_test(), constants_),
          field_(strokes_, hole.line, hole.lies.extent()),
          raster_(hole.lies, yd(0.25, 0).x),
          ground_{raster_, field_, hole.line.pin(), constants_.club_length_m,
                  constants_.back_on_line_reach_m} {}

    static Golfer club_golfer_of_the_test() { return club_golfer(); }

    double mean_strokes() const {
        std::vector<double> sums(threads, 0.0);
        std::vector<std::thread> workers;
        for (int worker = 0; worker < threads; ++worker)
            workers.emplace_back([&, worker] {
                std::mt19937_64 random(20261125U + static_cast<unsigned>(worker));
                for (int ball = 0; ball < balls_per_thread; ++ball)
                    sums[static_cast<std::size_t>(worker)] += strokes_of_a_ball(random);
            });
        double sum = 0.0;
        for (int worker = 0; worker < threads; ++worker) {
            workers[static_cast<std::size_t>(worker)].join();
            sum += sums[static_cast<std::size_t>(worker)];
        }
        return sum / threads / balls_per_thread;
    }

  private:
    // A t vector the textbook way: a normal vector over the root of a chi-squared.
    Point landing(std::mt19937_64& random) const {
        std::normal_distribution<double> normal;
        std::uniform_real_distribution<double> uniform;
        const bool missed = pattern_.mishit && uniform(random) < pattern_.mishit->share;
        const Spread& spread = missed ? pattern_.mishit->spread : pattern_.usual;
        double widening = 1.0;
        if (!missed && std::isfinite(pattern_.tail_dof)) {
            std::chi_squared_distribution<double> chi_squared(pattern_.tail_dof);
            widening = std::sqrt((pattern_.tail_dof - 2.0) / chi_squared(random));
        }
        const double a = normal(random);
        const double b = normal(random);
        const double rho = spread.correlation;
        const double carry = spread.centre.carry_m + widening * spread.carry_sd_m * a;
        const double side =
            spread.centre.side_m + widening * spread.side_sd_m * (rho * a + std::sqrt(1.0 - rho * rho) * b);
        const Point along = along_bearing(aim_);
        return hole_.line.tee() + carry * along + side * to_the_right(along);
    }

    Point rest(Point landed) const {
        const Lie lie = hole_.lies.lie_at(landed);
        double run = pattern_.run_m;
        if (lie == Lie::rough) run *= constants_.run_share_rough;
        if (lie == Lie::green) run *= constants_.run_share_green;
        if (lie == Lie::trees) run *= constants_.run_share_trees;
        if (lie == Lie::bunker || is_penalty_area(lie) || lie == Lie::out_of_bounds) return landed;
        const Point along = unit(landed - hole_.line.tee());
        const double step = yd(0.5, 0).x;
        for (double rolled = step; rolled < run; rolled += step) {
            const Point place = landed + rolled * along;
            const Lie there = hole_.lies.lie_at(place);
            if (there == Lie::bunker || is_penalty_area(there)) return place;
        }
        return landed + run * along;
    }

    // The stretch of the way from the tee that lies in a box, by its four sides; nothing when it misses it.
    struct Stretch {
        double from, to;
    };
    static std::optional<Stretch> stretch_in(const Box& box, Point tee, Point direction, double carry) {
        Stretch stretch{0.0, carry};
        const auto cut = [&](double low, double high, double at, double step) {
            if (step == 0.0) return low <= at && at <= high;
            const double one = (low - at) / step;
            const double other = (high - at) / step;
            stretch.from = std::max(stretch.from, std::min(one, other));
            stretch.to = std::min(stretch.to, std::max(one, other));
            return stretch.from < stretch.to;
        };
        const bool meets =
            cut(box.min.x, box.max.x, tee.x, direction.x) && cut(box.min.y, box.max.y, tee.y, direction.y);
        return meets ? std::optional(stretch) : std::nullopt;
    }

    // Where woods stop the ball, if they do: the first place on its way that is in them and where it is
    // below their tops.
    std::optional<Point> stopped_at(Point landed) const {
        const Point tee = hole_.line.tee();
        const double carry = distance(tee, landed);
        const Point direction = unit(landed - tee);
        std::optional<double> first;
        for (const Box& box : woods_)
            if (const auto stretch = stretch_in(box, tee, direction, carry)) {
                const auto stop = heights_.first_below(woods_m, stretch->from, stretch->to, carry);
                if (stop && (!first || *stop < *first)) first = stop;
            }
        constexpr double just_inside_m = 1e-6;
        return first ? std::optional(tee + (*first + just_inside_m) * direction) : std::nullopt;
    }

    double strokes_of_a_ball(std::mt19937_64& random) const {
        std::uniform_real_distribution<double> uniform;
        for (double played = 1.0;; played += 2.0) {
            const Point landed = landing(random);
            const std::optional<Point> stopped = stopped_at(landed);
            const Point place = stopped ? *stopped : rest(landed);
            const Lie lie = hole_.lies.lie_at(place);
            if (lie == Lie::out_of_bounds) continue;
            if (lie == Lie::trees && uniform(random) < constants_.trees_lost_share) continue;
            if (!is_penalty_area(lie)) return field_.cost(place, lie, 0) + played;
            const auto crossing = last_crossing(hole_.lies.region(lie), hole_.line.tee(), place);
            const auto drop = penalty_area_relief(ground_, lie, crossing.value_or(place), 0);
            if (drop && drop->cost < tee_value_) return played + 1.0 + drop->cost;
        }
    }

    const Hole& hole_;
    std::span<const Box> woods_;
    const ShotPattern& pattern_;
    FlownHeights heights_;
    double aim_;
    double tee_value_;
    EngineAssumptions constants_;
    StrokesByDistance strokes_;
    PublishedField field_;
    LieRaster raster_;
    ReliefGround ground_;
};

Golfer with_tails_and_mishits() {
    Golfer golfer = club_golfer();
    for (Club& club : golfer.clubs) {
        club.pattern->usual.correlation = -0.25;
        club.pattern->usual.centre.side_m = yd(3, 0).x;
        club.pattern->tail_dof = 6.0;
        club.pattern->mishit =
            Mishit{0.07, {{0.7 * club.pattern->usual.centre.carry_m, yd(6, 0).x}, 20.0, 24.0, 0.0}};
    }
    return golfer;
}

// The boxes are the hole's trees, all of them.
void check_woods(const Hole& hole, std::span<const Box> woods) {
    std::mt19937_64 random(7);
    std::uniform_real_distribution<double> x(-60.0, 110.0);
    std::uniform_real_distribution<double> y(-20.0, 450.0);
    for (int i = 0; i < 20'000; ++i) {
        const Point place = yd(x(random), y(random));
        const bool in_a_box = std::ranges::any_of(woods, [&](const Box& box) { return box.contains(place); });
        REQUIRE(in_a_box == (hole.lies.lie_at(place) == Lie::trees));
    }
}

void check_against_simulation(const HoleParts& parts, const Golfer& golfer, const std::vector<Box>& woods) {
    const Hole hole = invented_hole(parts);
    check_woods(hole, woods);
    const PlanRequest request{.field = FieldKind::published};
    const HolePlan plan = plan_round(course_of({hole}), golfer, request).holes.front();
    const TeeChoice& best = plan.choices.front();
    const Simulation simulation(hole, woods, golfer.clubs[best.club], best.aim, best.expected_strokes);
    const double simulated = simulation.mean_strokes();
    CHECK_THAT(best.expected_strokes, WithinAbs(simulated, 0.003));
    WARN("difference " << best.expected_strokes - simulated);
}

}  // namespace

TEST_CASE("Monte Carlo: a par 4 between water, trees and out of bounds", "[monte-carlo]") {
    HoleParts parts = straight_hole(405, 34);
    parts.layers.push_back({Lie::out_of_bounds, beyond(42)});
    parts.layers.push_back({Lie::penalty_red, Region::box({yd(-70, 190), yd(-22, 290)})});
    parts.layers.push_back({Lie::trees, Region::box({yd(20, 80), yd(42, 230)})});
    parts.layers.push_back({Lie::bunker, Region::disc(yd(15, 262), yd(8, 0).x)});
    check_against_simulation(parts, with_tails_and_mishits(), {{yd(20, 80), yd(42, 230)}});
}

TEST_CASE("Monte Carlo: a dogleg with a carry over yellow water", "[monte-carlo]") {
    HoleParts parts;
    parts.line = {yd(0, 0), yd(0, 235), yd(90, 390)};
    parts.layers = {{Lie::teeing_area, Region::disc(yd(0, 0), yd(6, 0).x)},
                    {Lie::fairway, Region::around({yd(0, 150), yd(0, 235), yd(80, 373)}, yd(19, 0).x)},
                    {Lie::green, Region::disc(yd(90, 390), yd(13, 0).x)},
                    {Lie::penalty_yellow, band(150, 172)},
                    {Lie::trees, Region::box({yd(30, 100), yd(90, 240)})},
                    {Lie::bunker, Region::disc(yd(-18, 250), yd(7, 0).x)}};
    // The water lies over the woods.
    check_against_simulation(parts, with_tails_and_mishits(),
                             {{yd(30, 100), yd(90, 150)}, {yd(30, 172), yd(90, 240)}});
}

TEST_CASE("Monte Carlo: through a gap in woods close to the tee", "[monte-carlo]") {
    HoleParts parts = straight_hole(390, 40);
    parts.layers.push_back({Lie::trees, Region::box({yd(9, 12), yd(45, 40)})});
    parts.layers.push_back({Lie::trees, Region::box({yd(-60, 205), yd(-24, 225)})});
    check_against_simulation(parts, with_tails_and_mishits(),
                             {{yd(9, 12), yd(45, 40)}, {yd(-60, 205), yd(-24, 225)}});
}

TEST_CASE("Monte Carlo: a par 3 with sand and a pond", "[monte-carlo]") {
    HoleParts parts = straight_hole(172, 20);
    parts.par = 3;
    parts.layers.push_back({Lie::penalty_red, Region::disc(yd(-26, 165), yd(15, 0).x)});
    parts.layers.push_back({Lie::bunker, Region::disc(yd(17, 168), yd(6, 0).x)});
    parts.layers.push_back({Lie::bunker, Region::disc(yd(3, 152), yd(5, 0).x)});
    check_against_simulation(parts, with_tails_and_mishits(), {});
}
