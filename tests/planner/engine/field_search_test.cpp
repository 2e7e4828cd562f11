// No action that a dense search finds beats the policy by more than 0.01.
#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

#include "planner/engine/pattern_quadrature.hpp"
#include "tests/catch.hpp"
#include "tests/planner/engine/solved_hole.hpp"

using namespace landwidth;
using namespace landwidth::fixture;

namespace {

constexpr int cells_a_hole = 200;
// Every action is looked at with the first set; the best of them, and the policy's own, measured with the
// second.
constexpr int search_log2_balls = 9;
constexpr int measure_log2_balls = 13;
constexpr std::size_t measured_actions = 16;
constexpr std::uint64_t search_replicate = 9001, measure_replicate = 9002;

// The balls of a pattern in cells of the grid, as BallSet's header says.
BallSet balls_of(const ShotPattern& pattern, int log2_balls, std::uint64_t replicate, double step_m) {
    BallSet set;
    for (const WeightedShot& shot : weighted_shots(pattern, log2_balls, replicate)) {
        const double along = std::cos(shot.angle_rad);
        const double right = std::sin(shot.angle_rad);
        set.along.push_back(static_cast<float>(shot.distance_m * along / step_m));
        set.right.push_back(static_cast<float>(shot.distance_m * right / step_m));
        set.way_along.push_back(static_cast<float>(along));
        set.way_right.push_back(static_cast<float>(right));
        set.weight.push_back(static_cast<float>(shot.weight));
        set.turn.push_back(
            static_cast<std::int16_t>(std::lround(shot.angle_rad / (2.0 * std::numbers::pi) * turn_steps)));
    }
    return set;
}

struct Gain {
    double strokes;
    std::string what;
};

class BruteForce {
  public:
    explicit BruteForce(const SolvedHole& solved) : solved_(solved), evaluator_(solved.field.evaluator(0)) {
        for (const Stance stance : all_stances)
            for (const ShotOption& option : solved.game.menu().options(stance)) {
                Sets& sets = sets_[static_cast<std::size_t>(stance)].emplace_back();
                sets.search =
                    balls_of(option.pattern, search_log2_balls, search_replicate, solved.grid().step_m());
                sets.measure =
                    balls_of(option.pattern, measure_log2_balls, measure_replicate, solved.grid().step_m());
            }
    }

    Gain gain(int cell) {
        const Action policy = solved_.field.action(cell, 0);
        std::vector<std::pair<float, Action>> found;
        const auto options = solved_.game.menu().options(stance(cell)).size();
        for (std::size_t option = 0; option < options; ++option)
            for (const int turn : aims(cell)) {
                const Action action{static_cast<std::int16_t>(option), static_cast<std::int16_t>(turn)};
                found.emplace_back(cost(cell, action, &Sets::search), action);
            }
        const auto kept = static_cast<std::ptrdiff_t>(std::min(measured_actions, found.size()));
        std::ranges::partial_sort(found, found.begin() + kept, {}, [](const auto& one) { return one.first; });
        const double own = double{cost(cell, policy, &Sets::measure)};
        Action best = policy;
        double least = own;
        for (auto it = found.begin(); it != found.begin() + kept; ++it) {
            const double cost_of_it = double{cost(cell, it->second, &Sets::measure)};
            if (cost_of_it >= least) continue;
            least = cost_of_it;
            best = it->second;
        }
        return {own - least, words(cell, policy) + " costs " + std::to_string(own) + ", " +
                                 words(cell, best) + " costs " + std::to_string(least)};
    }

  private:
    struct Sets {
        BallSet search, measure;
    };
    Stance stance(int cell) const { return stance_on(solved_.grid().lie(cell)); }

    float cost(int cell, Action action, BallSet Sets::*balls) {
        const ShotOption& option = evaluator_->search().option(cell, action);
        const Sets& sets =
            sets_[static_cast<std::size_t>(stance(cell))][static_cast<std::size_t>(action.option)];
        const ShotCost& cost = evaluator_->cost();
        return cost.of(evaluator_->worth().of(option, sets.*balls, cell, action.turn, cost.replay(cell)),
                       stance(cell), cell);
    }

    // A degree apart: within 40 degrees of the pin and of the points of the line ahead; all round out of
    // trees.
    std::vector<int> aims(int cell) const {
        const Point here = solved_.grid().centre(cell);
        const LineOfPlay& line = solved_.hole.line;
        std::vector<Point> targets{line.pin()};
        for (const double ahead : {100.0, 150.0, 200.0, 250.0})
            targets.push_back(line.point_at(
                std::min(line.length(), line.place_of(here).station_m + ahead * metres_per_yard)));
        std::vector<int> turns;
        for (int degree = 0; degree < 360; ++degree) {
            const double bearing = degree * radians_per_degree;
            const bool near = std::ranges::any_of(targets, [&](Point target) {
                const double aside =
                    std::remainder(bearing - plane_bearing(target - here), 2.0 * std::numbers::pi);
                return std::abs(aside) <= 40.0 * radians_per_degree;
            });
            if (near || stance(cell) == Stance::trees) turns.push_back(solved_.grid().turn_of(bearing));
        }
        return turns;
    }

    std::string words(int cell, Action action) const {
        const ShotOption& option = evaluator_->search().option(cell, action);
        const Point to_pin = solved_.grid().pin() - solved_.grid().centre(cell);
        const double aside = std::remainder(solved_.grid().bearing_of(action.turn) - plane_bearing(to_pin),
                                            2.0 * std::numbers::pi);
        return std::string(lie_name(solved_.grid().lie(cell))) + ", " +
               std::to_string(std::lround(to_yards(length(to_pin)))) +
               " yd: " + std::to_string(std::lround(to_yards(option.total_m))) + " yd at " +
               std::to_string(std::lround(aside / radians_per_degree)) + " deg";
    }

    const SolvedHole& solved_;
    std::unique_ptr<PersonalField::Evaluator> evaluator_;
    std::array<std::vector<Sets>, stance_count> sets_;
};

void check_no_better_action(const HoleParts& parts) {
    const SolvedHole solved(parts);
    std::vector<int> open;
    for (int cell = 0; cell < solved.grid().cells(); ++cell)
        if (solved.is_open(cell)) open.push_back(cell);
    CounterRandom random(11);
    BruteForce brute_force(solved);
    std::vector<double> gains;
    for (int i = 0; i < cells_a_hole; ++i) {
        const int cell = open[static_cast<std::size_t>(random.uniform() * static_cast<double>(open.size()))];
        const Gain gain = brute_force.gain(cell);
        gains.push_back(gain.strokes);
        if (gain.strokes > 0.1) WARN(gain.what);
    }
    std::ranges::sort(gains);
    // What the search of the solver leaves lying, as measured: 0.01 is kept by about three cells of four,
    // 0.016 by four of five. Beside and among trees most is left: whether a ball clears them turns on half a
    // cell.
    CHECK(gains[gains.size() / 2] <= 0.005);
    CHECK(gains[gains.size() * 80 / 100] <= 0.016);
    CHECK(gains[gains.size() * 95 / 100] <= 0.05);
    WARN("gains: largest " << gains.back() << ", 95th percentile " << gains[gains.size() * 95 / 100]
                           << ", median " << gains[gains.size() / 2]);
}

}  // namespace

TEST_CASE("no better action at 200 cells of a par 5", "[field]") {
    check_no_better_action(eventful_par_5());
}

TEST_CASE("no better action at 200 cells of a narrow par 4", "[field]") {
    check_no_better_action(narrow_par_4());
}
