// Is a verdict as sure as it says? Golfers with known patterns play sessions with two tee clubs; the
// strokes between the clubs on a hole are learnt from the sessions and compared with the truth.
//
//   landwidth_calibration [golfers] [prior|otherwise]      default 600 golfers of each population
//
// The hole's field is held fixed (solved once, for a typical golfer of handicap 14), so that the tee clubs
// alone are judged; the best aim is found again in every draw, as for the truth. Each golfer plays one of
// three invented holes. Every figure comes with its standard error; that of the last line counts the sizes as
// independent, though the same golfers play all of them.

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <memory>
#include <string_view>

#include "golfer-profiles/pattern_draws.hpp"
#include "golfer-profiles/pattern_learning.hpp"
#include "golfer-profiles/presets.hpp"
#include "planner/engine/hole_study.hpp"
#include "tests/benchmarks/simulated_golfers.hpp"
#include "tests/golfer-profiles/simulated_shots.hpp"
#include "tests/planner/engine/solved_hole.hpp"

namespace landwidth::bench {
namespace {

constexpr std::array session_sizes{8, 15, 30, 60};
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

struct Judged {
    bool covered;       // the 90 % interval holds the true difference
    double confidence;  // share of draws in which the favoured club is better: at least half
    bool right;         // it truly is
};

std::vector<ShotPattern> learnt_draws(const Club& club, const ShotPattern& typical,
                                      std::vector<ShotOffset> session, const PatternPrior& prior,
                                      std::uint64_t stream) {
    Club learnt = club;
    learnt.pattern = learnt_pattern(session, typical, prior).pattern;
    learnt.learnt_from = LearntFrom{typical, std::move(session)};
    return drawn_patterns(learnt, prior, stream, draw_count);
}

Judged judged(TeeCost& hole, const ClubPair& golfer, const PatternPrior& prior, int shots,
              std::uint64_t number) {
    const double truth = hole.best(*golfer.control.pattern) - hole.best(*golfer.driver.pattern);
    const auto control =
        learnt_draws(golfer.control, golfer.typical_control,
                     fixture::simulated_shots(*golfer.control.pattern, shots, 2 * number), prior, 2 * number);
    const auto driver = learnt_draws(golfer.driver, golfer.typical_driver,
                                     fixture::simulated_shots(*golfer.driver.pattern, shots, 2 * number + 1),
                                     prior, 2 * number + 1);
    std::vector<double> difference;
    for (std::size_t i = 0; i < control.size(); ++i)
        difference.push_back(hole.best(control[i]) - hole.best(driver[i]));
    std::ranges::sort(difference);
    const auto below = std::ranges::lower_bound(difference, 0.0) - difference.begin();
    const double control_better = static_cast<double>(below) / draw_count;
    const bool favours_control = control_better >= 0.5;
    constexpr std::size_t tail = draw_count / 20;
    return {truth >= difference[tail - 1] && truth <= difference[draw_count - tail],
            std::max(control_better, 1.0 - control_better), favours_control == (truth < 0.0)};
}

struct Share {
    int all = 0;
    int good = 0;
    void add(bool is_good) {
        ++all;
        good += is_good ? 1 : 0;
    }
    std::string text() const {
        if (all == 0) return fmt::format("{:>16}", "none");
        const double share = static_cast<double>(good) / all;
        return fmt::format("{:5.1f} % (+-{:3.1f})", 100.0 * share,
                           100.0 * std::sqrt(share * (1.0 - share) / all));
    }
};

struct Tally {
    Share covered;
    Share about_80;                // of the verdicts stated 75 to 85 % sure
    std::array<Share, 5> deciles;  // of those stated 50 to 60 % sure, 60 to 70 %, ...
    void add(const Judged& judged) {
        covered.add(judged.covered);
        if (judged.confidence >= 0.75 && judged.confidence <= 0.85) about_80.add(judged.right);
        const auto decile = static_cast<std::size_t>(10.0 * judged.confidence - 5.0 + 1e-9);
        deciles[std::min(decile, deciles.size() - 1)].add(judged.right);
    }
};

void print_line(std::string_view name, const Tally& tally) {
    fmt::print("{:>6}  {}  {} of {:4}  ", name, tally.covered.text(), tally.about_80.text(),
               tally.about_80.all);
    for (const Share& decile : tally.deciles)
        fmt::print("  {:3.0f} % of {:4}", decile.all > 0 ? 100.0 * decile.good / decile.all : 0.0,
                   decile.all);
    fmt::print("\n");
}

void print_table(Population population, std::string_view name, int golfers) {
    const PatternPrior prior = default_assumptions().engine.prior;
    std::array<std::unique_ptr<TeeCost>, 3> holes{std::make_unique<TeeCost>(open_par_4()),
                                                  std::make_unique<TeeCost>(lake_par_4()),
                                                  std::make_unique<TeeCost>(fixture::narrow_par_4())};
    std::array<Tally, session_sizes.size()> by_size;
    Tally all;
    for (int i = 0; i < golfers; ++i) {
        const auto number = static_cast<std::uint64_t>(i);
        const ClubPair golfer = simulated_golfer(population, prior, number);
        for (std::size_t size = 0; size < session_sizes.size(); ++size) {
            const Judged one =
                judged(*holes[number / 3 % 3], golfer, prior, session_sizes[size], 4 * number + size);
            by_size[size].add(one);
            all.add(one);
        }
    }
    fmt::print("{}, {} golfers at each size of session\n", name, golfers);
    fmt::print("{:>6}  {:>16}  {:>24}    right when 50-60, 60-70, 70-80, 80-90, 90-100 % sure\n", "shots",
               "90 % cover", "right when 75-85 % sure");
    for (std::size_t size = 0; size < session_sizes.size(); ++size)
        print_line(fmt::format("{}", session_sizes[size]), by_size[size]);
    print_line("all", all);
}

}  // namespace
}  // namespace landwidth::bench

int main(int argc, char** argv) {
    using namespace landwidth::bench;
    int golfers = 600;
    if (argc > 1) {
        const std::string_view text = argv[1];
        std::from_chars(text.data(), text.data() + text.size(), golfers);
    }
    const std::string_view only = argc > 2 ? argv[2] : "";
    if (only != "otherwise")
        print_table(Population::from_the_prior, "Golfers drawn from the stated prior", golfers);
    if (only != "prior") print_table(Population::otherwise, "Golfers unlike the stated prior", golfers);
    return 0;
}
