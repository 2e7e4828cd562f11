#include "golfer-profiles/logs/carry_doubts.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "geometry/units.hpp"
#include "golfer-profiles/club_flight.hpp"
#include "golfer-profiles/club_names.hpp"
#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/order_statistics.hpp"
#include "golfer-profiles/run_by_kind.hpp"
#include "golfer-profiles/typical_club.hpp"

namespace landwidth {
namespace {

constexpr std::size_t fewest_shots = 5;
constexpr double with_launch_sd = 0.03, by_speed_sd = 0.04, shared_sd = 0.015;
const double log_odds_to_say = std::log(12.0);
constexpr double least_mps = 15.0;   // of a ball that is fully hit
constexpr double least_run_m = 0.5;  // a total that is hardly longer says nothing of the run

// What one club shows: its middle carry over the usual one of its ball speed.
struct Told {
    std::string name;
    ClubKind kind;
    double log_ratio;
    double sd;
};

std::optional<double> loft_of(ClubKind kind, const std::string& name) {
    const GolferRequest anyone{.name = "anyone",
                               .handicap_index = 10.0,
                               .drive_total_yd = {},
                               .reference = Reference::men,
                               .hand = Hand::right};
    return typical_club(anyone, kind, name).loft_rad;
}

std::optional<Told> told_by(const std::vector<const LoggedShot*>& shots) {
    const std::string& name = shots.front()->club;
    const auto kind = kind_by_name(name);
    if (!kind || *kind == ClubKind::putter) return std::nullopt;
    struct Middle {
        std::vector<double> carry, speed, launch, spin;
    } by_speed, full;
    for (const LoggedShot* shot : shots) {
        if (shot->lost || !shot->carry_m || !shot->ball_speed_mps) continue;
        by_speed.carry.push_back(*shot->carry_m);
        by_speed.speed.push_back(*shot->ball_speed_mps);
        if (!shot->launch_rad || !shot->spin_rad_per_s) continue;
        full.carry.push_back(*shot->carry_m);
        full.speed.push_back(*shot->ball_speed_mps);
        full.launch.push_back(*shot->launch_rad);
        full.spin.push_back(*shot->spin_rad_per_s);
    }
    const bool has_launch = full.carry.size() >= fewest_shots;
    const Middle& told = has_launch ? full : by_speed;
    if (told.carry.size() < fewest_shots) return std::nullopt;
    const double carry_m = median(told.carry), speed_mps = median(told.speed);
    if (!(carry_m > 0.0) || speed_mps < least_mps || speed_mps > fastest_ball_mps) return std::nullopt;
    const std::optional<double> loft = loft_of(*kind, name);
    if (!has_launch)
        return Told{name, *kind, std::log(carry_m / usual_carry(*kind, speed_mps, loft)), by_speed_sd};
    const Launch launch{speed_mps, median(told.launch), median(told.spin)};
    if (!(launch.launch_rad > 0.0)) return std::nullopt;
    return Told{name, *kind, std::log(carry_m / usual_carry(*kind, launch, loft)), with_launch_sd};
}

// The log of the likelihood that carries are as much too long as `log_factor` says of each club; what clubs
// share (ball, air) is a normal of its own.
template <typename LogFactor>
double log_likelihood(const std::vector<Told>& told, const LogFactor& log_factor) {
    double weights = 0.0, sum = 0.0, squares = 0.0;
    for (const Told& club : told) {
        const double weight = 1.0 / (club.sd * club.sd), off = club.log_ratio - log_factor(club);
        weights += weight;
        sum += weight * off;
        squares += weight * off * off;
    }
    return -0.5 * (squares - sum * sum / (weights + 1.0 / (shared_sd * shared_sd)));
}

// The run is known, and not as short as when totals stand under both headings.
bool run_is_told(const std::vector<LoggedShot>& shots) {
    std::vector<double> runs;
    for (const LoggedShot& shot : shots)
        if (shot.carry_m && shot.total_m) runs.push_back(*shot.total_m - *shot.carry_m);
    return !runs.empty() && std::abs(median(std::move(runs))) > least_run_m;
}

}  // namespace

std::optional<std::string> carry_doubt(const std::vector<LoggedShot>& shots, const LogColumn& column) {
    std::map<std::string, std::vector<const LoggedShot*>> clubs;
    for (const LoggedShot& shot : shots)
        clubs[shot.club].push_back(&shot);
    std::map<std::string, std::vector<const LoggedShot*>> by_key;
    for (const auto& [name, members] : clubs) {
        auto& all = by_key[club_key(name)];
        all.insert(all.end(), members.begin(), members.end());
    }
    std::vector<Told> told;
    for (const auto& [key, members] : by_key)
        if (auto club = told_by(members)) told.push_back(std::move(*club));
    if (told.empty() || !column.unit) return std::nullopt;

    const bool in_yards = column.unit->suffix == "yd";
    const double other_unit = std::log(in_yards ? metres_per_yard : 1.0 / metres_per_yard);
    const double as_carries = log_likelihood(told, [](const Told&) { return 0.0; });
    const double as_other_unit = log_likelihood(told, [&](const Told&) { return other_unit; });
    const double as_totals =
        log_likelihood(told, [](const Told& c) { return std::log1p(run_share_of_carry(c.kind)); });
    const bool may_be_totals = !run_is_told(shots) && as_totals >= as_other_unit;
    const double best = may_be_totals ? as_totals : as_other_unit;
    if (best - as_carries < log_odds_to_say) return std::nullopt;

    std::vector<std::string> names;
    std::vector<double> ratios;
    for (const Told& club : told) {
        names.push_back(in_quotes(club.name));
        ratios.push_back(club.log_ratio);
    }
    const double off = std::expm1(median(std::move(ratios)));
    const std::string_view unit = column.unit->suffix, other = in_yards ? "m" : "yd";
    const std::string what =
        may_be_totals ? fmt::format("they may be totals, run included: then say --column total_{}=\"{}\"",
                                    unit, column.heading)
                      : fmt::format("they may be {} read as {}: then say --column carry_{}=\"{}\"",
                                    in_yards ? "metres" : "yards", in_yards ? "yards" : "metres", other,
                                    column.heading);
    return fmt::format(
        "column {}: carries of {} are {:.0f} % {} than their ball speeds usually give; {}{}",
        in_quotes(column.heading), fmt::join(names, ", "), 100.0 * std::abs(off),
        off < 0.0 ? "shorter" : "longer", what,
        off < 0.0 ? " (range balls and cold air fall short too)" : " (thin air carries further too)");
}

}  // namespace landwidth
