// What the golfer's own field costs and how good it is: a table of figures, every ratio from this one run.
//
//   landwidth_field_figures [golfer]       a name of demo/golfers, default bogey

#include <fmt/format.h>
#include <tbb/global_control.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <numbers>
#include <string>

#include "planner/engine/hole_plan.hpp"
#include "tests/benchmarks/demo_round.hpp"
#include "tests/benchmarks/peak_memory.hpp"

namespace landwidth::bench {
namespace {

template <class Work>
double seconds(Work&& work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

// The best of a few, so that another process on the machine counts less.
template <class Work>
double least_seconds(int times, Work&& work) {
    double least = seconds(work);
    for (int i = 1; i < times; ++i)
        least = std::min(least, seconds(work));
    return least;
}

struct Round {
    std::uint64_t look_ups = 0;
    std::uint64_t exhaustive = 0;  // every cell, option and aim of a full fan with the balls that value it
    int cells = 0;                 // with a choice
    int grid_cells = 0;            // of the largest grid
    int grid_columns = 0;
};

// Aims 1.2 degrees apart over 20 degrees to either side of the pin and of the line, all around among trees.
constexpr std::uint64_t full_fan = 67, full_turn = 300;

Round counted(const DemoGolfer& golfer, const GolferGame& game) {
    Round round;
    for (const Hole& hole : demo_course().holes) {
        const HoleStudy study(hole, golfer.golfer, game, golfer.bag, golfer.request, 0);
        const PersonalField& field = *study.personal();
        round.look_ups += field.record().look_ups;
        round.cells += field.record().cells;
        if (field.grid().cells() > round.grid_cells) {
            round.grid_cells = field.grid().cells();
            round.grid_columns = field.grid().columns();
        }
        for (int cell = 0; cell < field.grid().cells(); ++cell) {
            if (field.strokes_layer().action[static_cast<std::size_t>(cell)].option < 0) continue;
            const Stance stance = stance_on(field.grid().lie(cell));
            const auto& options = game.menu().options(stance);
            const std::uint64_t aims = stance == Stance::trees ? full_turn : full_fan;
            round.exhaustive += options.size() * aims * options.front().value_set.size();
        }
    }
    return round;
}

// As many bilinear look-ups in a raster of that size and nothing else, at the landing places of a shot from
// place after place; returns seconds.
double bare_look_ups(const Round& round, const BallSet& balls) {
    const int columns = round.grid_columns;
    const int rows = round.grid_cells / columns;
    std::vector<float> raster(static_cast<std::size_t>(round.grid_cells));
    for (std::size_t i = 0; i < raster.size(); ++i)
        raster[i] = 2.0F + 0.01F * static_cast<float>(i % 97);
    float sum = 0.0F;
    const double time = seconds([&] {
        std::uint64_t done = 0;
        while (done < round.look_ups)
            for (int row = 0; row < rows && done < round.look_ups; ++row)
                for (int column = 0; column < columns && done < round.look_ups; ++column) {
                    const double turn = (column - 0.5 * columns) / columns;
                    const auto sine = static_cast<float>(std::sin(turn));
                    const auto cosine = static_cast<float>(std::cos(turn));
                    float value = 0.0F;
                    for (std::size_t i = 0; i < balls.size(); ++i) {
                        const float x = std::clamp(
                            static_cast<float>(column) + balls.along[i] * sine + balls.right[i] * cosine,
                            0.0F, static_cast<float>(columns) - 1.5F);
                        const float y = std::clamp(
                            static_cast<float>(row) + balls.along[i] * cosine - balls.right[i] * sine, 0.0F,
                            static_cast<float>(rows) - 1.5F);
                        const int left = static_cast<int>(x);
                        const int below = static_cast<int>(y);
                        const float fx = x - static_cast<float>(left);
                        const float fy = y - static_cast<float>(below);
                        const float* at = &raster[static_cast<std::size_t>(below * columns + left)];
                        value += balls.weight[i] * ((1.0F - fy) * ((1.0F - fx) * at[0] + fx * at[1]) +
                                                    fy * ((1.0F - fx) * at[columns] + fx * at[columns + 1]));
                    }
                    sum += value;
                    done += balls.size();
                }
    });
    if (!(sum > 0.0F)) fmt::print("(the look-ups came to nothing)\n");
    return time;
}

// The value of every cell's own shot, once block by block and once cell by cell; seconds for each look-up.
struct PerLookUp {
    double block, cell;
};
PerLookUp per_look_up(const PersonalField& field) {
    const auto evaluator = field.evaluator(0);
    const PlayGrid& grid = field.grid();
    std::uint64_t balls = 0;
    float sum = 0.0F;
    const auto each_block = [&](auto&& visit) {
        balls = 0;
        for (int row = 0; row + block_side <= grid.rows(); row += block_side)
            for (int column = 0; column + block_side <= grid.columns(); column += block_side) {
                const int cell = row * grid.columns() + column;
                const Action action = field.strokes_layer().action[static_cast<std::size_t>(cell)];
                if (action.option >= 0) visit(cell, action, evaluator->search().option(cell, action));
            }
    };
    std::array<float, block_cells> replay;
    replay.fill(4.0F);
    const double block = seconds([&] {
        each_block([&](int cell, Action action, const ShotOption& option) {
            std::array<ShotSums, block_cells> sums;
            evaluator->worth().over_block(option, option.value_set, cell, action.turn, replay.data(), sums);
            sum += sums[0].ordinary;
            balls += block_cells * option.value_set.size();
        });
    });
    const double in_blocks = block / static_cast<double>(balls);
    const double cells = seconds([&] {
        each_block([&](int cell, Action action, const ShotOption& option) {
            for (int i = 0; i < static_cast<int>(block_cells); ++i)
                sum += evaluator->worth()
                           .of(option, option.value_set,
                               cell + i / block_side * grid.columns() + i % block_side, action.turn, 4.0F)
                           .ordinary;
            balls += block_cells * option.value_set.size();
        });
    });
    if (!(sum > 0.0F)) fmt::print("(the look-ups came to nothing)\n");
    return {in_blocks, cells / static_cast<double>(balls)};
}

// The field on steps of so many yards against the finest one, at places on and beside the line of play.
void print_steps(const DemoGolfer& golfer, const Hole& hole) {
    struct Solved {
        double step_yd, seconds, tee;
        std::vector<double> costs;
        int cells;
    };
    std::vector<Solved> solved;
    for (const double step_yd : {0.5, 1.0, 2.0, 4.0}) {
        PlanRequest request;
        request.assumptions.engine.field_step_m = Yards{step_yd}.metres();
        const GolferGame game(golfer.golfer, golfer.flights, request.assumptions.engine);
        Solved one{step_yd, 0.0, 0.0, {}, 0};
        const LieRaster lies(hole.lies, request.assumptions.engine.lie_cell_m);
        std::unique_ptr<HoleStudy> study;
        one.seconds = seconds(
            [&] { study = std::make_unique<HoleStudy>(hole, golfer.golfer, game, golfer.bag, request, 0); });
        one.cells = study->personal()->record().cells;
        one.tee = tee_cost(study->options().search.clubs, std::nullopt);
        for (double station = 0.0; station < hole.line.length(); station += 5.0)
            for (const double aside : {-25.0, -12.0, 0.0, 12.0, 25.0}) {
                const Point along = hole.line.direction_at(station);
                const Point place = hole.line.point_at(station) + aside * Point{along.y, -along.x};
                const Lie lie = lies.at(place);
                if (is_penalty_area(lie) || lie == Lie::out_of_bounds) continue;
                one.costs.push_back(study->field().cost(place, lie, 0));
            }
        solved.push_back(std::move(one));
    }
    const Solved& finest = solved.front();
    for (const Solved& one : solved) {
        double most = 0.0, squares = 0.0, mean = 0.0;
        const auto n = static_cast<double>(one.costs.size());
        for (std::size_t i = 0; i < one.costs.size(); ++i) {
            const double difference = one.costs[i] - finest.costs[i];
            most = std::max(most, std::abs(difference));
            squares += difference * difference / n;
            mean += difference / n;
        }
        fmt::print(
            "hole {:>2}, step {:.1f} yd: {:7d} cells, {:6.3f} s, {:4.1f} us a cell; from the tee {:+.4f}, "
            "places {:+.4f} mean, {:.4f} rms, {:.3f} at most\n",
            hole.ref, one.step_yd, one.cells, one.seconds, 1e6 * one.seconds / one.cells,
            one.tee - finest.tee, mean, std::sqrt(squares), most);
    }
}

void print_figures(std::size_t number) {
    const DemoGolfer& golfer = demo_golfer(number);
    const Course& course = demo_course();
    const auto plan = [&] { return plan_round(course, golfer.golfer, golfer.request).expected_strokes; };
    double strokes = 0.0;
    const PeakMemory peak;
    const double many = least_seconds(3, [&] { strokes = plan(); });
    const std::optional<double> megabytes = peak.megabytes();
    double one_thread_strokes = 0.0;
    double one = 0.0;
    {
        const tbb::global_control single(tbb::global_control::max_allowed_parallelism, 1);
        one = least_seconds(2, [&] { one_thread_strokes = plan(); });
    }
    const GolferGame game(golfer.golfer, golfer.flights, golfer.request.assumptions.engine);
    const Round round = counted(golfer, game);
    const ShotOption& shot = game.menu().options(Stance::fairway)[2];
    const double bare = bare_look_ups(round, shot.value_set);
    fmt::print("{}: 18 holes, {:.2f} strokes\n", golfer_names.at(number), strokes);
    fmt::print("whole plan {:.2f} s on all cores, {:.2f} s on one ({:.2f} times); same result: {}\n", many,
               one, one / many, strokes == one_thread_strokes ? "to the last bit" : "NO");
    fmt::print(
        "look-ups {:.0f} million for {} cells; bare bilinear look-ups, one core: {:.2f} s; the plan takes "
        "{:.2f} times that\n",
        1e-6 * static_cast<double>(round.look_ups), round.cells, bare, one / bare);
    if (megabytes) fmt::print("peak memory {:.0f} MB\n", *megabytes);
    fmt::print("doing less: every option and aim at every cell would be {:.0f} times as many look-ups\n",
               static_cast<double>(round.exhaustive) / static_cast<double>(round.look_ups));

    HoleStudy study(course.holes.front(), golfer.golfer, game, golfer.bag, golfer.request, 0);
    const PerLookUp speed = per_look_up(*study.personal());
    fmt::print("doing it faster: {:.2f} ns a look-up in blocks, {:.2f} ns cell by cell ({:.1f} times)\n",
               1e9 * speed.block, 1e9 * speed.cell, speed.cell / speed.block);
    const HoleStudy::Options options = study.options();
    const AimedClub& best = options.search.clubs.front();
    const ClubShots& shots = *options.contenders.front().shots;
    const ShotPattern& pattern = *golfer.golfer.clubs[best.club].pattern;
    constexpr int aims = 40;
    const double again = seconds([&] {
        for (int i = 0; i < aims; ++i)
            study.choice(shots, pattern, study.fan().bearing_of(best.ray + i - aims / 2),
                         options.search.replay_cost);
    });
    const double scores = seconds([&] { study.score(shots, study.fan().bearing_of(best.ray)); });
    fmt::print("field in hand: another aim {:.2f} ms, its score distribution {:.1f} ms more\n",
               1e3 * again / aims, 1e3 * scores);
    print_steps(golfer, course.holes[0]);
    print_steps(golfer, course.holes[6]);
}

}  // namespace
}  // namespace landwidth::bench

int main(int argc, char** argv) {
    using namespace landwidth::bench;
    const std::string wanted = argc > 1 ? argv[1] : "bogey";
    const auto found = std::ranges::find(golfer_names, wanted);
    if (found == golfer_names.end()) {
        fmt::print(stderr, "no golfer {} in demo/golfers\n", wanted);
        return 2;
    }
    print_figures(static_cast<std::size_t>(found - golfer_names.begin()));
    return 0;
}
