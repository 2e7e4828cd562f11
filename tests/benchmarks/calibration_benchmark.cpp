// Is what is learnt from shots as sure as it says? Golfers with known patterns play sessions.
//
//   landwidth_calibration [golfers] [numbers|builds]      default 300 golfers of each kind
//
// numbers: how often the 90 % intervals of a driver's carry, side, spreads and share of mishits hold the
// truth. builds: two builds of the driver, equal or truly different, hit equally often or not; on a hole the
// expected strokes between them are taken in every draw and compared with the truth. The hole's field is held
// fixed (solved once, for a typical golfer of handicap 14), so that the tee clubs alone are judged; the best
// aim is found again in every draw, as for the truth. Each golfer plays one of three invented holes.

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <memory>
#include <string_view>

#include "golfer-profiles/evidence/bag_draws.hpp"
#include "golfer-profiles/evidence/club_figures.hpp"
#include "golfer-profiles/evidence/pattern_middle.hpp"
#include "golfer-profiles/evidence/usual_ways.hpp"
#include "golfer-profiles/presets.hpp"
#include "planner/engine/hole_study.hpp"
#include "tests/benchmarks/simulated_golfers.hpp"
#include "tests/golfer-profiles/simulated_shots.hpp"
#include "tests/planner/engine/solved_hole.hpp"

namespace landwidth::bench {
namespace {

constexpr int draw_count = 200;
constexpr int shot_log2_points = 7;  // the same points for draws and truth, so their error is no error here

// 410 yd with a lake to the right where drives come down.
fixture::HoleParts lake_par_4() {
    fixture::HoleParts parts = fixture::straight_hole(410, 38);
    parts.layers.push_back({Lie::penalty_red, Region::box({fixture::yd(26, 190), fixture::yd(80, 300)})});
    parts.layers.push_back({Lie::bunker, Region::disc(fixture::yd(-24, 225), fixture::yd(8, 0).x)});
    return parts;
}

// 380 yd, open, wide, rough only.
fixture::HoleParts open_par_4() {
    return fixture::straight_hole(380, 45);
}

// A hole with its field, for any pattern from the tee.
class TeeCost {
  public:
    explicit TeeCost(const fixture::HoleParts& parts)
        : golfer_(typical_golfer({"typical", 14.0, 230.0})),
          hole_(fixture::invented_hole(parts)),
          game_(golfer_,
                std::make_shared<const BagFlights>(golfer_, request_.conditions, request_.assumptions.engine),
                request_.assumptions.engine),
          study_(hole_, golfer_, game_, bag_, request_, 0) {}

    // Expected strokes at the best of seven aims 1.2 degrees apart, about the one that brings the usual shot
    // back to the middle.
    double best(const ShotPattern& pattern) {
        const FanShots shots = fan_shots(pattern, shot_log2_points, 0, request_.assumptions.engine);
        const ShotOffset& centre = pattern.usual.centre;
        const int middle =
            study_.fan().ray_near(study_.fan().bearing_of(0) - std::atan2(centre.side_m, centre.carry_m));
        double least = std::numeric_limits<double>::infinity();
        for (int aim = -24; aim <= 24; aim += 8)
            least = std::min(least, study_.fan().outcome(shots, middle + aim).solved());
        return least;
    }

  private:
    PlanRequest request_;
    Golfer golfer_;
    Hole hole_;
    GolferGame game_;
    BagShots bag_;
    HoleStudy study_;
};

// As profile learn does: the shape is looked for and the draws are made again where one is found.
BagDraws learnt_draws(Golfer golfer) {
    const GolferPrior prior;
    BagDraws draws = posterior_draws(golfer, prior, draw_count);
    for (std::size_t club = 0; club < draws.size(); ++club)
        if (!draws[club].empty()) {
            const int shots = golfer.clubs[club].pattern->shots;
            golfer.clubs[club].pattern = middle_of(draws[club]);
            golfer.clubs[club].pattern->shots = shots;
        }
    const std::vector<ShapeFound> shapes = shapes_found(golfer);
    if (shapes.empty()) return draws;
    for (Club& club : golfer.clubs)
        if (club.pattern && same_name(family_of(club), shapes.front().club))
            club.pattern->ways = shapes.front().ways;
    return posterior_draws(golfer, prior, draw_count);
}

void print_numbers(int golfers) {
    fmt::print("90 % intervals hold the truth, {} golfers of each kind, standard error {:.1f} %\n", golfers,
               100.0 * std::sqrt(0.09 / golfers));
    fmt::print("{:>12} {:>6} {:>7} {:>7} {:>9} {:>8} {:>8}\n", "golfer", "shots", "carry", "side", "carry sd",
               "side sd", "mishits");
    for (const SimulatedGolfer& simulated : simulated_golfers())
        for (const int shots : {8, 15, 30, 60}) {
            std::array<int, 5> held{};
            for (int i = 0; i < golfers; ++i) {
                const auto key = static_cast<std::uint64_t>(1000 * i + shots);
                const BagDraws draws = learnt_draws(
                    measured(simulated, fixture::simulated_shots(simulated.driver, shots, key), {}));
                const OpenPattern open = open_pattern(middle_of(draws.front()), draws.front());
                const Spread& usual = simulated.driver.usual;
                const auto hold = [&](std::size_t number, const OpenFigure& figure, double truth) {
                    held[number] += truth >= figure.low && truth <= figure.high ? 1 : 0;
                };
                hold(0, open.carry, usual.centre.carry_m);
                hold(1, open.side, usual.centre.side_m);
                hold(2, open.carry_sd, usual.carry_sd_m);
                hold(3, open.side_sd, usual.side_sd_m);
                hold(4, open.mishit_share, simulated.driver.mishit->share);
            }
            fmt::print("{:>12} {:>6} {:>5.0f} % {:>5.0f} % {:>7.0f} % {:>6.0f} % {:>6.0f} %\n",
                       simulated.name, shots, 100.0 * held[0] / golfers, 100.0 * held[1] / golfers,
                       100.0 * held[2] / golfers, 100.0 * held[3] / golfers, 100.0 * held[4] / golfers);
        }
}

// How the build truly differs from the driver.
struct Difference {
    std::string_view name;
    double spread, carry_yd;
};

struct BuildTally {
    int few_better = 0, few_worse = 0, said = 0, right = 0, held = 0;
};

void judge(TeeCost& hole, const SimulatedGolfer& simulated, const Difference& difference,
           std::array<int, 2> shots, int number, BuildTally& tally) {
    // The difference falls on either of them, in turn.
    std::array<ShotPattern, 2> truth{simulated.driver, simulated.driver};
    ShotPattern& changed = truth[static_cast<std::size_t>(number % 2)];
    changed.usual.carry_sd_m *= difference.spread;
    changed.usual.side_sd_m *= difference.spread;
    changed.usual.centre.carry_m += Yards{difference.carry_yd}.metres();
    const auto key = static_cast<std::uint64_t>(number) * 2;
    const BagDraws draws = learnt_draws(measured(simulated, fixture::simulated_shots(truth[0], shots[0], key),
                                                 fixture::simulated_shots(truth[1], shots[1], key + 1)));
    std::vector<double> saved;  // by the build that was hit less often, or the second of two
    for (std::size_t draw = 0; draw < draw_count; ++draw)
        saved.push_back(hole.best(draws.front()[draw]) - hole.best(draws.back()[draw]));
    std::ranges::sort(saved);
    const auto worse = std::ranges::lower_bound(saved, 0.0) - saved.begin();
    const double better = 1.0 - static_cast<double>(worse) / draw_count;
    const double true_saved = hole.best(truth[0]) - hole.best(truth[1]);
    constexpr std::size_t tail = draw_count / 20;
    tally.held += true_saved >= saved[tail - 1] && true_saved <= saved[draw_count - tail] ? 1 : 0;
    tally.few_better += better >= 0.8 ? 1 : 0;
    tally.few_worse += better <= 0.2 ? 1 : 0;
    if (std::max(better, 1.0 - better) < 0.75 || std::max(better, 1.0 - better) > 0.85) return;
    ++tally.said;
    tally.right += (better > 0.5) == (true_saved > 0.0) ? 1 : 0;
}

void print_builds(int golfers) {
    std::array<std::unique_ptr<TeeCost>, 3> holes{std::make_unique<TeeCost>(open_par_4()),
                                                  std::make_unique<TeeCost>(lake_par_4()),
                                                  std::make_unique<TeeCost>(fixture::narrow_par_4())};
    fmt::print(
        "two builds, {} golfers of each kind: the one with fewer shots said to be better or worse at 80 % or "
        "more; 90 %\nintervals of strokes saved that hold the truth; right when 75 to 85 % sure\n",
        golfers);
    fmt::print("{:>12} {:>12} {:>8} {:>7} {:>7} {:>9} {:>16}\n", "golfer", "truth", "shots", "better",
               "worse", "held", "right");
    const std::vector<SimulatedGolfer> kinds = simulated_golfers();
    for (const std::size_t kind : {std::size_t{0}, std::size_t{2}, std::size_t{3}})
        for (const Difference& difference :
             {Difference{"equal", 1.0, 0.0}, Difference{"15 % wider", 1.15, 0.0},
              Difference{"4 yd longer", 1.0, 4.0}})
            for (const std::array<int, 2> shots :
                 {std::array{40, 8}, std::array{24, 24}, std::array{60, 12}}) {
                BuildTally tally;
                for (int i = 0; i < golfers; ++i)
                    judge(*holes[static_cast<std::size_t>(i / 2 % 3)], kinds[kind], difference, shots, i,
                          tally);
                const auto percent = [&](int count, int of) { return of > 0 ? 100.0 * count / of : 0.0; };
                fmt::print("{:>12} {:>12} {:>8} {:>5.0f} % {:>5.0f} % {:>7.0f} %", kinds[kind].name,
                           difference.name, fmt::format("{}, {}", shots[0], shots[1]),
                           percent(tally.few_better, golfers), percent(tally.few_worse, golfers),
                           percent(tally.held, golfers));
                if (difference.spread == 1.0 && difference.carry_yd == 0.0)
                    fmt::print("\n");
                else
                    fmt::print(" {:>5.0f} % of {:>4}\n", percent(tally.right, tally.said), tally.said);
            }
}

}  // namespace
}  // namespace landwidth::bench

int main(int argc, char** argv) {
    using namespace landwidth::bench;
    int golfers = 300;
    if (argc > 1) {
        const std::string_view text = argv[1];
        std::from_chars(text.data(), text.data() + text.size(), golfers);
    }
    const std::string_view only = argc > 2 ? argv[2] : "";
    if (only != "builds") print_numbers(golfers);
    if (only != "numbers") print_builds(golfers);
    return 0;
}
