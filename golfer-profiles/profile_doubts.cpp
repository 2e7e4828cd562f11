// What a coach would ask about when looking at a profile. The thresholds are common practice, no source.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "geometry/units.hpp"
#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/profile_format.hpp"

namespace landwidth {
namespace {

class Doubts {
  public:
    Doubts(std::string item, std::vector<std::string>& said) : item_(std::move(item)), said_(said) {}

    void note(bool doubtful, std::string_view field, double value, std::string_view why) {
        if (doubtful) said_.push_back(fmt::format("{}: {} is {:.10g}; {}", item_, field, value, why));
    }

  private:
    std::string item_;
    std::vector<std::string>& said_;
};

// Fast golfers' misses go as far as their usual shots, and wide of them.
bool is_wide(const Spread& mishit, const Spread& usual) {
    constexpr double clearly = 1.25;
    return std::hypot(mishit.centre.side_m - usual.centre.side_m, mishit.side_sd_m) >
           clearly * usual.side_sd_m;
}

void doubt_pattern(const ShotPattern& pattern, Doubts& doubts) {
    const Spread& usual = pattern.usual;
    const double carry = to_yards(usual.centre.carry_m);
    const double carry_sd = to_yards(usual.carry_sd_m);
    const double side = to_yards(usual.centre.side_m);
    const double side_sd = to_yards(usual.side_sd_m);
    const double run = to_yards(pattern.run_m);
    doubts.note(carry > 360, "pattern.carry_yd", carry, "hardly anyone carries a ball that far");
    doubts.note(carry_sd > 0.25 * carry, "pattern.carry_sd_yd", carry_sd,
                "more than a quarter of the carry; is it the spread of the usual shot, without mishits?");
    doubts.note(carry_sd < 0.01 * carry, "pattern.carry_sd_yd", carry_sd,
                "less than a hundredth of the carry is steadier than any golfer");
    doubts.note(side_sd > std::max(0.2 * carry, 10.0), "pattern.side_sd_yd", side_sd,
                "more than a fifth of the carry is wider than most beginners; is it one standard deviation?");
    doubts.note(side_sd < 0.015 * carry, "pattern.side_sd_yd", side_sd,
                "less than a degree either way is straighter than any golfer");
    doubts.note(std::abs(side) > std::max(0.15 * carry, 10.0), "pattern.side_yd", side,
                "a mean that far off line would be aimed away; is it measured from the aim line?");
    doubts.note(std::abs(usual.correlation) > 0.9, "pattern.correlation", usual.correlation,
                "the pattern is almost a line");
    doubts.note(run > std::max(0.35 * carry, 15.0), "pattern.run_yd", run,
                "more than a third of the carry is run on very hard ground only");
    doubts.note(pattern.tail_dof < 3, "pattern.tail_dof", pattern.tail_dof,
                "under 3 the standard deviation is made by a few wild shots");
    if (!pattern.mishit) return;
    const Mishit& mishit = *pattern.mishit;
    const double mishit_carry = to_yards(mishit.spread.centre.carry_m);
    doubts.note(mishit.share > 0.4, "pattern.mishit.share", mishit.share,
                "so many shots are no mishits any more");
    doubts.note(mishit_carry > carry && !is_wide(mishit.spread, usual), "pattern.mishit.carry_yd",
                mishit_carry, "a mishit that carries past the usual shot, and no wider of the line");
}

// Golfers, and logs with two columns swapped, rarely carry another club past the driver.
void doubt_longest(const std::vector<Club>& clubs, std::vector<std::string>& said) {
    const auto driver = std::find_if(clubs.begin(), clubs.end(),
                                     [](const Club& c) { return c.kind == ClubKind::driver && c.pattern; });
    if (driver == clubs.end()) return;
    const double driver_carry = driver->pattern->usual.centre.carry_m;
    for (std::size_t i = 0; i < clubs.size(); ++i) {
        const Club& club = clubs[i];
        if (!club.pattern || club.kind == ClubKind::driver ||
            club.pattern->usual.centre.carry_m <= driver_carry)
            continue;
        said.push_back(fmt::format("clubs[{}] {}: pattern.carry_yd is {:.10g}; that is past {} with {:.10g}",
                                   i, in_quotes(club.name), to_yards(club.pattern->usual.centre.carry_m),
                                   in_quotes(driver->name), to_yards(driver_carry)));
    }
}

}  // namespace

std::vector<std::string> doubts(const Golfer& golfer) {
    std::vector<std::string> said;
    for (std::size_t i = 0; i < golfer.clubs.size(); ++i) {
        const Club& club = golfer.clubs[i];
        Doubts about(fmt::format("clubs[{}] {}", i, in_quotes(club.name)), said);
        if (club.length_m && club.kind != ClubKind::putter) {
            const double inches = *club.length_m / metres_per_inch;
            about.note(inches < 18 || inches > 48, "length_in", inches,
                       "the Equipment Rules allow 18 to 48 in for every club but the putter");
        }
        if (club.pattern) doubt_pattern(*club.pattern, about);
    }
    doubt_longest(golfer.clubs, said);
    return said;
}

}  // namespace landwidth
