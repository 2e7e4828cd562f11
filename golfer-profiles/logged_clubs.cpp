#include "golfer-profiles/logged_clubs.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <iterator>

#include "geometry/error.hpp"
#include "geometry/units.hpp"
#include "golfer-profiles/club_names.hpp"
#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/logs/decimal_marks.hpp"
#include "golfer-profiles/logs/log_units.hpp"
#include "golfer-profiles/nearest_word.hpp"
#include "golfer-profiles/order_statistics.hpp"
#include "golfer-profiles/run_by_kind.hpp"

namespace landwidth {
namespace {

struct Group {
    std::string club, build;
    struct Member {
        const LoggedShot* shot;
        std::size_t log;
    };
    std::vector<Member> members;
};

std::string name_of(const Group& group) {
    return group.build.empty() ? group.club : fmt::format("{}, {}", group.club, group.build);
}

std::vector<Group> groups_of(const std::vector<NamedLog>& logs) {
    std::vector<Group> groups;
    for (std::size_t log = 0; log < logs.size(); ++log) {
        for (const LoggedShot& shot : logs[log].log.shots) {
            auto group = std::find_if(groups.begin(), groups.end(), [&](const Group& g) {
                return same_name(g.club, shot.club) && same_name(g.build, shot.build);
            });
            if (group == groups.end()) group = groups.insert(group, {shot.club, shot.build, {}});
            group->members.push_back({&shot, log});
        }
    }
    return groups;
}

std::string place_of(const Group& group, const std::vector<NamedLog>& logs) {
    const Group::Member& first = group.members.front();
    return fmt::format("{}: row {}", logs[first.log].file, first.shot->row);
}

ClubKind kind_of(const Group& group, const std::vector<KindOfClub>& kinds,
                 const std::vector<NamedLog>& logs) {
    for (const KindOfClub& said : kinds)
        if (same_name(said.club, group.club) || same_name(said.club, name_of(group))) return said.kind;
    if (const auto kind = kind_by_name(group.club)) return *kind;
    throw InputError(place_of(group, logs),
                     fmt::format("the name {} does not tell what kind of club it is; say so with --kind "
                                 "\"{}=hybrid\" (driver, mini-driver, fairway-wood, hybrid, driving-iron, "
                                 "iron, wedge)",
                                 in_quotes(group.club), group.club));
}

void check_kinds(const std::vector<KindOfClub>& kinds, const std::vector<Group>& groups) {
    for (const KindOfClub& said : kinds) {
        const bool known = std::any_of(groups.begin(), groups.end(), [&](const Group& g) {
            return same_name(said.club, g.club) || same_name(said.club, name_of(g));
        });
        if (known) continue;
        std::vector<std::string_view> names;
        std::transform(groups.begin(), groups.end(), std::back_inserter(names),
                       [](const Group& g) { return std::string_view(g.club); });
        const auto nearest = nearest_word(said.club, names);
        throw UsageError(fmt::format("--kind {}: no shot is of such a club{}", in_quotes(said.club),
                                     nearest ? fmt::format("; did you mean {}?", in_quotes(*nearest)) : ""));
    }
}

// "44.5 in", "44.5\"", "113 cm"; only what can be the length of a club.
std::optional<double> length_in(const std::string& build) {
    const std::string text = in_small_letters(trimmed(build));
    const std::size_t end = std::min(text.find_first_not_of("0123456789.,"), text.size());
    const auto number = DecimalMarks().value(std::string_view(text).substr(0, end));
    const std::string_view unit = trimmed(std::string_view(text).substr(end));
    if (!number) return std::nullopt;
    const bool inches =
        unit == "in" || unit == "inch" || unit == "inches" || unit == "\"" || unit == "\u2033";
    const double length = inches ? *number * metres_per_inch : unit == "cm" ? *number / 100.0 : 0.0;
    constexpr double shortest = 18 * metres_per_inch, longest = 60 * metres_per_inch;
    return length >= shortest && length <= longest ? std::optional(length) : std::nullopt;
}

std::optional<double> median_of(std::vector<double> values) {
    return values.empty() ? std::nullopt : std::optional(median(std::move(values)));
}

std::optional<double> learnt_run(const Group& group) {
    std::vector<double> runs;
    for (const auto& [shot, log] : group.members)
        if (shot->carry_m && shot->total_m) runs.push_back(*shot->total_m - *shot->carry_m);
    const auto run = median_of(std::move(runs));
    // A ball that spins back ends short of where it landed; a pattern's run does not go back.
    return run ? std::optional(std::max(*run, 0.0)) : std::nullopt;
}

// Nothing when no shot has all three, or when the middle one is no full shot's.
std::optional<Launch> learnt_launch(const Group& group) {
    std::vector<double> speeds, angles, spins;
    for (const auto& [shot, log] : group.members) {
        if (!shot->ball_speed_mps || !shot->launch_rad || !shot->spin_rad_per_s) continue;
        speeds.push_back(*shot->ball_speed_mps);
        angles.push_back(*shot->launch_rad);
        spins.push_back(*shot->spin_rad_per_s);
    }
    if (speeds.empty()) return std::nullopt;
    const Launch launch{median(speeds), median(angles), median(spins)};
    constexpr double slowest_mps = 5.0, lowest_rad = -10.0 * radians_per_degree;
    return launch.ball_speed_mps >= slowest_mps && launch.launch_rad >= lowest_rad ? std::optional(launch)
                                                                                   : std::nullopt;
}

// The share of a shot's carry that it runs.
double run_share(const Group& group, ClubKind kind, std::optional<double> run_m) {
    std::vector<double> carries;
    for (const auto& [shot, log] : group.members)
        if (shot->carry_m && shot->total_m) carries.push_back(*shot->carry_m);
    const auto carry = median_of(std::move(carries));
    return run_m && carry && *carry > 0.0 ? *run_m / *carry : run_share_of_carry(kind);
}

LoggedClub club_of(const Group& group, ClubKind kind, std::vector<std::string>& warnings) {
    LoggedClub club{.name = name_of(group),
                    .club = group.club,
                    .build = group.build,
                    .kind = kind,
                    .length_m = length_in(group.build),
                    .shots = {},
                    .run_m = learnt_run(group),
                    .launch = learnt_launch(group)};
    const double share = run_share(group, kind, club.run_m);
    std::size_t without_carry = 0;
    for (const auto& [shot, log] : group.members) {
        ShotOffset landing{shot->carry_m.value_or(0.0), shot->side_m};
        if (!shot->carry_m) {
            ++without_carry;
            landing = {*shot->total_m / (1.0 + share), shot->side_m / (1.0 + share)};
        }
        club.shots.push_back({landing, log, shot->row});
    }
    if (without_carry > 0) {
        warnings.push_back(
            fmt::format("{}: {} of {} shots have no carry; they are taken to have landed {:.0f} % of the "
                        "carry before their "
                        "end, {}",
                        in_quotes(club.name), without_carry, club.shots.size(), 100.0 * share,
                        club.run_m ? "as its other shots ran" : "as such clubs run by assumption"));
    }
    return club;
}

}  // namespace

LoggedClubs logged_clubs(const std::vector<NamedLog>& logs, const std::vector<KindOfClub>& kinds) {
    const std::vector<Group> groups = groups_of(logs);
    check_kinds(kinds, groups);
    LoggedClubs result;
    std::size_t putts = 0;
    for (const Group& group : groups) {
        const ClubKind kind = kind_of(group, kinds, logs);
        if (kind == ClubKind::putter) {
            putts += group.members.size();
            continue;
        }
        if (const std::string problem = name_problem(name_of(group)); !problem.empty()) {
            throw InputError(place_of(group, logs), fmt::format("club and build: the name {}", problem));
        }
        result.clubs.push_back(club_of(group, kind, result.warnings));
    }
    if (putts > 0) result.warnings.push_back(fmt::format("{} putts are left aside", putts));
    if (result.clubs.empty()) throw InputError(logs.front().file, "no shot but putts");
    return result;
}

}  // namespace landwidth
