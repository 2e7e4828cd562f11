#include "planner/engine/break_even_search.hpp"

#include <algorithm>
#include <cmath>
#include <functional>

#include "geometry/units.hpp"

namespace landwidth {

namespace {

constexpr int trial_log2_points = 9;
// Aims of a trial: so many steps of the coarse fan to either side of today's.
constexpr int aim_steps = 6;
constexpr int halvings = 6;

constexpr double widest_side_factor = 2.5;
constexpr double narrowest_side_factor = 0.4;
constexpr double side_factor_step = 1.05;
constexpr double carry_reach = 0.15;
constexpr double carry_step = 0.01;
constexpr double edge_reach_m = Yards{15.0}.metres();
constexpr double edge_step_m = Yards{1.0}.metres();
constexpr double most_wind_mps = 30.0 * metres_per_second_per_mph;
constexpr double wind_step_mps = 2.0 * metres_per_second_per_mph;

// One club's aims around today's, from left to right.
using Aims = std::vector<Outcome>;

// What the best of evenly spaced aims costs: the bottom of the parabola through the cheapest and its
// neighbours, so that the cost moves smoothly while the best aim moves between two of them.
double least_total(const Aims& aims, double replay_cost) {
    std::size_t least = 0;
    for (std::size_t i = 1; i < aims.size(); ++i)
        if (aims[i].total(replay_cost) < aims[least].total(replay_cost)) least = i;
    const double bottom = aims[least].total(replay_cost);
    if (least == 0 || least + 1 == aims.size()) return bottom;
    const double left = aims[least - 1].total(replay_cost) - bottom;
    const double right = aims[least + 1].total(replay_cost) - bottom;
    if (!(left + right > 0.0)) return bottom;
    return bottom - (left - right) * (left - right) / (8.0 * (left + right));
}

double least_solved(const Aims& aims) {
    return std::ranges::min_element(aims, {}, &Outcome::solved)->solved();
}

// What `next` costs more than `best`.
double margin_between(const Aims& best, const Aims& next, ReplayCost replay_cost) {
    const double again = replay_cost.value_or(2.0 + std::min(least_solved(best), least_solved(next)));
    return least_total(next, again) - least_total(best, again);
}

// Where a margin that is above 0 at 0 first falls below it, looked for in steps to both sides and then
// halved down.
struct Reach {
    double down;  // <= 0
    double up;    // >= 0
    double step;  // > 0
};

std::optional<double> nearest_flip(const std::function<double(double)>& margin_at, const Reach& reach) {
    const auto halved = [&](double holds, double flips) {
        for (int i = 0; i < halvings; ++i) {
            const double middle = 0.5 * (holds + flips);
            (margin_at(middle) > 0.0 ? holds : flips) = middle;
        }
        return 0.5 * (holds + flips);
    };
    const auto most_steps = static_cast<int>(std::ceil(std::max(-reach.down, reach.up) / reach.step));
    for (int step = 1; step <= most_steps; ++step) {
        std::optional<double> found;
        for (const double side : {-1.0, 1.0}) {
            const auto moved = [&](int steps) {
                return std::clamp(side * steps * reach.step, reach.down, reach.up);
            };
            if (moved(step) == moved(step - 1) || margin_at(moved(step)) > 0.0) continue;
            const double flip = halved(moved(step - 1), moved(step));
            if (!found || std::abs(flip) < std::abs(*found)) found = flip;
        }
        if (found) return found;
    }
    return std::nullopt;
}

ShotPattern with_side_spread(ShotPattern pattern, double factor) {
    pattern.usual.side_sd_m *= factor;
    if (pattern.mishit) pattern.mishit->spread.side_sd_m *= factor;
    return pattern;
}

ShotPattern with_carry(ShotPattern pattern, double factor) {
    pattern.usual.centre.carry_m *= factor;
    if (pattern.mishit) pattern.mishit->spread.centre.carry_m *= factor;
    return pattern;
}

class Trials {
  public:
    Trials(HoleStudy& study, const Rival& best, const Rival& next, double margin)
        : study_(study),
          best_(best),
          next_(next),
          margin_(margin),
          best_shots_(shots_of(best, best.pattern)),
          next_shots_(shots_of(next, next.pattern)),
          next_aims_(aims(next, next_shots_)) {
        bias_ = margin - margin_between(aims(best, best_shots_), next_aims_, study.replay_cost());
    }

    std::optional<double> flip(const std::function<ShotPattern(double)>& best_pattern_at,
                               const Reach& reach) {
        return flip_of(
            [&](double move) {
                return margin_between(aims(best_, shots_of(best_, best_pattern_at(move))), next_aims_,
                                      study_.replay_cost());
            },
            reach);
    }

    std::optional<double> flip_of_edges(const Reach& reach) {
        const MovingFairway fairway(study_.hole().lies, study_.hole().other_fairways, study_.field(),
                                    edge_reach_m);
        return flip_of(
            [&](double move) {
                const auto moved_aims = [&](const Rival& rival, const FanShots& shots) {
                    return over_aims(rival, [&](int ray) {
                        return study_.fan().outcome_with_edges_moved(shots, ray, fairway,
                                                                     static_cast<float>(move));
                    });
                };
                return margin_between(moved_aims(best_, best_shots_), moved_aims(next_, next_shots_),
                                      study_.replay_cost());
            },
            reach);
    }

    // A wind with the best club's aim, m/s.
    std::optional<double> flip_of_wind(const Reach& reach) {
        const double with_it = study_.fan().bearing_of(best_.ray);
        const auto in_wind = [&](const Rival& rival, double speed_mps) {
            FanShots shots = fan_shots(rival.pattern, trial_log2_points, 0, study_.assumptions(),
                                       study_.flights().in_trial_wind(rival.club));
            shots.other_wind = {with_it, speed_mps / BagFlights::trial_wind_mps};
            return aims(rival, shots);
        };
        return flip_of(
            [&](double speed_mps) {
                return margin_between(in_wind(best_, speed_mps), in_wind(next_, speed_mps),
                                      study_.replay_cost());
            },
            reach);
    }

  private:
    FanShots shots_of(const Rival& rival, const ShotPattern& pattern) const {
        return fan_shots(pattern, trial_log2_points, 0, study_.assumptions(),
                         study_.flights().full(rival.club), study_.flights().day().wind);
    }

    template <class OutcomeAt>
    Aims over_aims(const Rival& rival, const OutcomeAt& outcome_at) const {
        const int step = study_.coarse_rays();
        Aims aims;
        for (int i = -aim_steps; i <= aim_steps; ++i) {
            const int ray = rival.ray + i * step;
            if (ray >= rival.aims.first_ray && ray <= rival.aims.last_ray) aims.push_back(outcome_at(ray));
        }
        return aims;
    }
    Aims aims(const Rival& rival, const FanShots& shots) {
        return over_aims(rival, [&](int ray) { return study_.fan().outcome(shots, ray); });
    }

    std::optional<double> flip_of(const std::function<double(double)>& raw_margin_at, const Reach& reach) {
        // Even today: nothing has to move.
        if (!(margin_ > 0.0)) return 0.0;
        return nearest_flip([&](double move) { return raw_margin_at(move) + bias_; }, reach);
    }

    HoleStudy& study_;
    const Rival& best_;
    const Rival& next_;
    double margin_;
    FanShots best_shots_;
    FanShots next_shots_;
    Aims next_aims_;
    double bias_ = 0.0;
};

}  // namespace

BreakEvens find_break_evens(HoleStudy& study, const Rival& best, const Rival& next, double margin,
                            const std::optional<FairwayCut>& landing) {
    Trials trials(study, best, next, margin);
    const Spread& usual = best.pattern.usual;
    BreakEvens found{std::nullopt, {usual.side_sd_m, {}}, {usual.centre.carry_m, {}}, {}};
    const auto side = trials.flip(
        [&](double log_factor) { return with_side_spread(best.pattern, std::exp(log_factor)); },
        {std::log(narrowest_side_factor), std::log(widest_side_factor), std::log(side_factor_step)});
    if (side) found.side_sd.flips_at_m = usual.side_sd_m * std::exp(*side);
    const auto carry = trials.flip([&](double change) { return with_carry(best.pattern, 1.0 + change); },
                                   {-carry_reach, carry_reach, carry_step});
    if (carry) found.carry.flips_at_m = usual.centre.carry_m * (1.0 + *carry);
    if (!study.day().wind_to)
        found.wind = WindBreakEven{trials.flip_of_wind({-most_wind_mps, most_wind_mps, wind_step_mps})};
    if (landing && study.aim_for().is_strokes()) {
        const double width = landing->width_m();
        found.landing_width = BreakEven{width, {}};
        const auto edge =
            trials.flip_of_edges({-std::min(edge_reach_m, 0.5 * width), edge_reach_m, edge_step_m});
        if (edge) found.landing_width->flips_at_m = width + 2.0 * *edge;
    }
    return found;
}

}  // namespace landwidth
