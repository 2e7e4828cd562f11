#include "planner/engine/aim_search.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <tuple>
#include <utility>

namespace landwidth {

namespace {

// Local optima of the coarse fan that are looked at again: the best and any within this of it.
constexpr std::size_t most_optima = 3;
constexpr double optimum_slack = 0.03;
constexpr int most_rounds = 8;
// Clubs this much dearer than the best are not weighed again in the draws of the patterns.
constexpr double out_of_contention = 0.4;
constexpr int drawn_aim_steps = 3;

struct Aim {
    int ray;
    Outcome outcome;
};

std::vector<Aim> coarse_fan(TeeFan& fan, const Contender& contender, int step) {
    std::vector<Aim> aims;
    for (int ray = contender.range.first_ray; ray <= contender.range.last_ray; ray += step)
        aims.push_back({ray, fan.outcome(contender.shots->coarse, ray)});
    return aims;
}

// Rays of the coarse fan no dearer than their neighbours, the best first.
std::vector<int> optima(const std::vector<Aim>& aims, double replay_cost) {
    const auto cost = [&](std::size_t i) { return aims[i].outcome.total(replay_cost); };
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < aims.size(); ++i) {
        const bool below_left = i == 0 || cost(i) <= cost(i - 1);
        const bool below_right = i + 1 == aims.size() || cost(i) <= cost(i + 1);
        if (below_left && below_right) found.push_back(i);
    }
    std::ranges::stable_sort(found, {}, cost);
    std::vector<int> rays;
    for (const std::size_t i : found)
        if (rays.size() < most_optima && cost(i) <= cost(found.front()) + optimum_slack)
            rays.push_back(aims[i].ray);
    return rays;
}

// The lowest point of the parabola that fits the costs around an optimum best, within the rays given: the
// noise of single rays averages out. The cheapest ray itself where the costs do not curve upward.
int lowest_point(const std::vector<Aim>& aims, double replay_cost) {
    const double middle = 0.5 * (aims.front().ray + aims.back().ray);
    const double half_width = std::max(0.5 * (aims.back().ray - aims.front().ray), 1.0);
    // Evenly spaced rays make the fit's odd and even parts independent.
    double n = 0.0, x2 = 0.0, x4 = 0.0, y = 0.0, xy = 0.0, x2y = 0.0;
    for (const Aim& aim : aims) {
        const double x = (aim.ray - middle) / half_width;
        const double cost = aim.outcome.total(replay_cost);
        n += 1.0;
        x2 += x * x;
        x4 += x * x * x * x;
        y += cost;
        xy += x * cost;
        x2y += x * x * cost;
    }
    const double curvature = (n * x2y - x2 * y) / (n * x4 - x2 * x2);
    if (aims.size() < 4 || !(curvature > 0.0))
        return std::ranges::min_element(aims, {}, [&](const Aim& a) { return a.outcome.total(replay_cost); })
            ->ray;
    const double lowest = std::clamp(-0.5 * (xy / x2) / curvature, -1.0, 1.0);
    return static_cast<int>(std::lround(middle + half_width * lowest));
}

int refined_ray(TeeFan& fan, const Contender& contender, const std::vector<int>& rays, int step,
                double replay_cost) {
    const auto [first, last] = contender.range;
    int best = rays.front();
    double least = std::numeric_limits<double>::infinity();
    for (const int centre : rays) {
        std::vector<Aim> around;
        for (int ray = std::max(first, centre - step); ray <= std::min(last, centre + step); ++ray)
            around.push_back({ray, fan.outcome(contender.shots->fine, ray)});
        const int lowest = lowest_point(around, replay_cost);
        const double cost = fan.outcome(contender.shots->fine, lowest).total(replay_cost);
        if (cost < least) {
            least = cost;
            best = lowest;
        }
    }
    return best;
}

double cost_from_tee(const Outcome& outcome, ReplayCost replay_cost) {
    return replay_cost ? outcome.total(*replay_cost) : outcome.solved();
}

}  // namespace

AimedClub aimed_club(TeeFan& fan, const ClubShots& club, int ray, double replay_cost) {
    AimedClub result{club.club, ray, {}, 0.0};
    const auto n = static_cast<double>(club.replicates.size());
    double squares = 0.0;
    std::vector<double> totals;
    for (const FanShots& shots : club.replicates) {
        const Outcome outcome = fan.outcome(shots, ray);
        result.outcome.cost += outcome.cost / n;
        result.outcome.replay += outcome.replay / n;
        totals.push_back(outcome.total(replay_cost));
    }
    const double mean = result.outcome.total(replay_cost);
    for (const double total : totals)
        squares += (total - mean) * (total - mean);
    result.standard_error = std::sqrt(squares / (n * (n - 1.0)));
    return result;
}

double tee_cost(std::span<const AimedClub> clubs, ReplayCost replay_cost) {
    double least = std::numeric_limits<double>::infinity();
    for (const AimedClub& club : clubs)
        least = std::min(least, cost_from_tee(club.outcome, replay_cost));
    return least;
}

AimSearch search_aims(TeeFan& fan, std::span<const Contender> contenders, int coarse_rays,
                      ReplayCost replay_cost) {
    std::vector<std::vector<Aim>> fans;
    double cost = std::numeric_limits<double>::infinity();
    for (const Contender& contender : contenders) {
        fans.push_back(coarse_fan(fan, contender, coarse_rays));
        for (const Aim& aim : fans.back())
            cost = std::min(cost, cost_from_tee(aim.outcome, replay_cost));
    }
    // Playing again counts the stroke and the penalty.
    const auto again = [&](double tee) { return replay_cost.value_or(2.0 + tee); };
    AimSearch search{{}, again(cost)};
    // A change of V can change which penalty-area balls go back to the tee, and that the aims; it settles at
    // once unless a drop and the tee are worth nearly the same.
    for (int round = 0; round < most_rounds; ++round) {
        fan.settle(search.replay_cost);
        search.clubs.clear();
        for (std::size_t i = 0; i < contenders.size(); ++i) {
            const std::vector<int> rays = optima(fans[i], search.replay_cost);
            const int ray = refined_ray(fan, contenders[i], rays, coarse_rays, search.replay_cost);
            search.clubs.push_back(aimed_club(fan, *contenders[i].shots, ray, search.replay_cost));
        }
        search.replay_cost = again(tee_cost(search.clubs, replay_cost));
        if (!fan.settle(search.replay_cost)) break;
    }
    return search;
}

std::vector<std::size_t> by_cost(const AimSearch& search) {
    std::vector<std::size_t> order(search.clubs.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        order[i] = i;
    std::ranges::stable_sort(
        order, {}, [&](std::size_t i) { return search.clubs[i].outcome.total(search.replay_cost); });
    return order;
}

Outcome drawn_outcome(TeeFan& fan, const FanShots& drawn, int ray, int coarse_rays, double replay_cost) {
    // Downhill to either side: what a drawn pattern costs has one valley so close to the best aim.
    const Outcome middle = fan.outcome(drawn, ray);
    Outcome best = middle;
    for (const int side : {-1, 1}) {
        Outcome last = middle;
        for (int step = 1; step <= drawn_aim_steps; ++step) {
            const Outcome aimed = fan.outcome(drawn, ray + side * step * coarse_rays);
            if (aimed.total(replay_cost) >= last.total(replay_cost)) break;
            last = aimed;
        }
        if (last.total(replay_cost) < best.total(replay_cost)) best = last;
    }
    return best;
}

Confidence confidence_in(TeeFan& fan, std::span<const Contender> contenders, std::span<const AimedClub> aimed,
                         std::size_t best, double replay_cost, int coarse_rays) {
    const std::size_t draws = contenders[best].shots->draws.size();
    const double best_cost = aimed[best].outcome.total(replay_cost);
    std::size_t next = best;
    double next_cost = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < aimed.size(); ++i) {
        const double cost = aimed[i].outcome.total(replay_cost);
        if (i != best && cost < next_cost) std::tie(next, next_cost) = std::pair(i, cost);
    }
    const double margin = next == best ? 0.0 : next_cost - best_cost;
    if (draws == 0) return {1.0, {margin, margin}};
    const double limit = best_cost + out_of_contention;
    std::size_t held = 0;
    std::vector<double> margins;
    for (std::size_t draw = 0; draw < draws; ++draw) {
        std::vector<double> costs(contenders.size(), std::numeric_limits<double>::infinity());
        for (std::size_t i = 0; i < contenders.size(); ++i) {
            if (aimed[i].outcome.total(replay_cost) > limit) continue;
            costs[i] =
                drawn_outcome(fan, contenders[i].shots->draws[draw], aimed[i].ray, coarse_rays, replay_cost)
                    .total(replay_cost);
        }
        if (std::ranges::min_element(costs) - costs.begin() == static_cast<std::ptrdiff_t>(best)) ++held;
        if (next != best && next_cost <= limit) margins.push_back(costs[next] - costs[best]);
    }
    return {static_cast<double>(held) / static_cast<double>(draws),
            margins.empty() ? Interval{margin, margin} : middle_of(std::move(margins))};
}

}  // namespace landwidth
