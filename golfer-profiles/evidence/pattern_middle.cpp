#include "golfer-profiles/evidence/pattern_middle.hpp"

#include <algorithm>
#include <cmath>

#include "golfer-profiles/evidence/log_odds.hpp"
#include "golfer-profiles/evidence/usual_ways.hpp"
#include "golfer-profiles/order_statistics.hpp"

namespace landwidth {

namespace {

constexpr double least_share = 1e-4, most_share = 0.995;
constexpr double most_correlation = 0.9999;
constexpr double least_sd_m = 1e-3;
constexpr double shortest_carry_m = Yards{1.0}.metres();

double bounded_log_odds(double share) {
    return log_odds_of(std::clamp(share, least_share, most_share));
}

// Short mishits come down well before the usual shot does.
bool is_short(const ShotPattern& pattern) {
    constexpr double halfway = 0.8;
    return pattern.mishit->spread.centre.carry_m < halfway * pattern.usual.centre.carry_m;
}

double twist(const Spread& spread) {
    return std::atanh(std::clamp(spread.correlation, -most_correlation, most_correlation));
}

// A spread in numbers of which means are meaningful.
struct Middle {
    double carry = 0.0, side = 0.0, log_carry_sd = 0.0, log_side_sd = 0.0, twist = 0.0;

    void add(const Spread& spread, double share) {
        carry += share * spread.centre.carry_m;
        side += share * spread.centre.side_m;
        log_carry_sd += share * std::log(std::max(spread.carry_sd_m, least_sd_m));
        log_side_sd += share * std::log(std::max(spread.side_sd_m, least_sd_m));
        twist += share * landwidth::twist(spread);
    }
    Spread spread() const {
        return {{carry, side}, std::exp(log_carry_sd), std::exp(log_side_sd), std::tanh(twist)};
    }
};

Middle middle_of(const Spread& spread) {
    Middle middle;
    middle.add(spread, 1.0);
    return middle;
}

Spread moved(const Spread& spread, const Spread& from, const Spread& to) {
    Middle middle = middle_of(spread);
    const Middle before = middle_of(from), after = middle_of(to);
    middle.carry += after.carry - before.carry;
    middle.side += after.side - before.side;
    middle.log_carry_sd += after.log_carry_sd - before.log_carry_sd;
    middle.log_side_sd += after.log_side_sd - before.log_side_sd;
    middle.twist += after.twist - before.twist;
    Spread result = middle.spread();
    result.carry_sd_m = std::min(result.carry_sd_m, largest_sd_m);
    result.side_sd_m = std::min(result.side_sd_m, largest_sd_m);
    result.correlation = std::clamp(result.correlation, -most_correlation, most_correlation);
    return result;
}

void move_mishits(const ShotPattern& from, const ShotPattern& to, bool same_kind, ShotPattern& draw) {
    if (!to.mishit || !(to.mishit->share > 0.0)) {
        draw.mishit = to.mishit;
        return;
    }
    if (!from.mishit || !draw.mishit) return;
    Mishit& mishit = *draw.mishit;
    mishit.share = share_of_log_odds(bounded_log_odds(mishit.share) + bounded_log_odds(to.mishit->share) -
                                     bounded_log_odds(from.mishit->share));
    if (!same_kind) return;
    mishit.spread = moved(mishit.spread, from.mishit->spread, to.mishit->spread);
    mishit.spread.centre.carry_m = std::max(mishit.spread.centre.carry_m, 0.0);
    mishit.spread.correlation = 0.0;
}

}  // namespace

ShotPattern middle_of(std::span<const ShotPattern> draws) {
    const auto count = static_cast<double>(draws.size());
    ShotPattern result = draws.front();
    Middle usual, mishits;
    std::vector<double> tails;
    double log_odds = 0.0, second_way = 0.0;
    const auto short_ones =
        std::ranges::count_if(draws, [](const ShotPattern& draw) { return draw.mishit && is_short(draw); });
    const bool are_short = 2.0 * static_cast<double>(short_ones) >= count;
    const double of_kind =
        are_short ? static_cast<double>(short_ones) : count - static_cast<double>(short_ones);
    for (const ShotPattern& draw : draws) {
        usual.add(draw.usual, 1.0 / count);
        tails.push_back(draw.tail_dof);
        if (draw.ways) second_way += (*draw.ways)[1].share / count;
        if (!draw.mishit) continue;
        log_odds += bounded_log_odds(draw.mishit->share) / count;
        if (is_short(draw) == are_short) mishits.add(draw.mishit->spread, 1.0 / of_kind);
    }
    result.usual = usual.spread();
    if (result.ways) result.ways = with_share(*result.ways, second_way);
    std::ranges::nth_element(tails, tails.begin() + static_cast<std::ptrdiff_t>(tails.size() / 2));
    result.tail_dof = tails[tails.size() / 2];
    if (result.mishit) {
        result.mishit = {share_of_log_odds(log_odds), mishits.spread()};
        result.mishit->spread.correlation = 0.0;
    }
    return result;
}

void move_about(const ShotPattern& from, const ShotPattern& to, std::span<ShotPattern> draws) {
    for (ShotPattern& draw : draws) {
        const bool same_kind = draw.mishit && from.mishit && is_short(draw) == is_short(from);
        move_mishits(from, to, same_kind, draw);
        draw.usual = moved(draw.usual, from.usual, to.usual);
        draw.usual.centre.carry_m = std::max(draw.usual.centre.carry_m, shortest_carry_m);
    }
}

}  // namespace landwidth
