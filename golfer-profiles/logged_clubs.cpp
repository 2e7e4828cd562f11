#include "golfer-profiles/logged_clubs.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <unordered_map>
#include <utility>

#include "geometry/error.hpp"
#include "geometry/units.hpp"
#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/logs/build_in_name.hpp"
#include "golfer-profiles/logs/log_units.hpp"
#include "golfer-profiles/order_statistics.hpp"
#include "golfer-profiles/run_by_kind.hpp"

namespace landwidth {
namespace {

std::optional<double> median_of(std::vector<double> values) {
    return values.empty() ? std::nullopt : std::optional(median(std::move(values)));
}

std::optional<double> learnt_run(const ShotGroup& group) {
    std::vector<double> runs;
    for (const auto& [shot, log] : group.members)
        if (shot->carry_m && shot->total_m) runs.push_back(*shot->total_m - *shot->carry_m);
    const auto run = median_of(std::move(runs));
    // A ball that spins back ends short of where it landed; a pattern's run does not go back.
    return run ? std::optional(std::max(*run, 0.0)) : std::nullopt;
}

// Nothing when no shot has all three, or when the middle one is no full shot's.
std::optional<Launch> learnt_launch(const ShotGroup& group) {
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
double run_share(const ShotGroup& group, ClubKind kind, std::optional<double> run_m) {
    std::vector<double> carries;
    for (const auto& [shot, log] : group.members)
        if (shot->carry_m && shot->total_m) carries.push_back(*shot->carry_m);
    const auto carry = median_of(std::move(carries));
    return run_m && carry && *carry > 0.0 ? *run_m / *carry : run_share_of_carry(kind);
}

// "2026-05-01 10:31" and "2026-05-01T10:31:07" are of the day 2026-05-01.
std::string_view day_of(std::string_view date) {
    date = trimmed(date);
    const std::size_t colon = date.find(':');
    if (colon == std::string_view::npos) return date;
    const std::size_t gap = date.find_last_of(" T", colon);
    return gap == std::string_view::npos || gap == 0 ? date : trimmed(date.substr(0, gap));
}

// Numbers the sessions as they come; a session is worked out once for each spelling.
class Sessions {
  public:
    std::optional<std::size_t> of(const LoggedShot& shot) {
        const std::string spelling = shot.date + '\n' + shot.session;
        const auto known = by_spelling_.find(spelling);
        if (known != by_spelling_.end()) return known->second;
        const std::string_view day = day_of(shot.date), place = trimmed(shot.session);
        const std::string label = fmt::format("{}{}{}", day, day.empty() || place.empty() ? "" : ", ", place);
        std::optional<std::size_t> session;
        if (!label.empty()) {
            const auto same = std::find_if(sessions_.begin(), sessions_.end(),
                                           [&](const Session& s) { return same_name(s.label, label); });
            session = static_cast<std::size_t>(same - sessions_.begin());
            if (same == sessions_.end()) sessions_.push_back({label});
        }
        by_spelling_.emplace(spelling, session);
        return session;
    }
    std::vector<Session> take() { return std::move(sessions_); }

  private:
    std::unordered_map<std::string, std::optional<std::size_t>> by_spelling_;
    std::vector<Session> sessions_;
};

LoggedClub club_of(const ShotGroup& group, Sessions& sessions, std::vector<std::string>& warnings) {
    LoggedClub club{.name = group.name(),
                    .club = group.club,
                    .build = group.build,
                    .kind = group.kind,
                    .length_m = build_length(group.build),
                    .shots = {},
                    .is_the_one_carried = group.is_the_one_carried,
                    .run_m = learnt_run(group),
                    .launch = learnt_launch(group)};
    const double share = run_share(group, group.kind, club.run_m);
    std::size_t without_carry = 0;
    for (const auto& [shot, log] : group.members) {
        if (shot->lost) {
            ++club.lost;
            continue;
        }
        ShotOffset landing{shot->carry_m.value_or(0.0), shot->side_m};
        if (!shot->carry_m) {
            ++without_carry;
            landing = {*shot->total_m / (1.0 + share), shot->side_m / (1.0 + share)};
        }
        club.shots.push_back({landing, log, shot->row, sessions.of(*shot)});
    }
    if (without_carry > 0) {
        warnings.push_back(fmt::format(
            "{}: {} of {} shots have no carry; they are taken to have landed {:.0f} % of the carry before "
            "their end, {}",
            in_quotes(club.name), without_carry, club.shots.size(), 100.0 * share,
            club.run_m ? "as its other shots ran" : "as such clubs run by assumption"));
    }
    if (club.lost > 0) {
        warnings.push_back(fmt::format("{}: {} of {} shots were lost or not finished", in_quotes(club.name),
                                       club.lost, group.members.size()));
    }
    return club;
}

// Quantities that are read and that no pattern is learnt from.
void tell_unused(const std::vector<ShotGroup>& groups, std::vector<std::string>& warnings) {
    std::size_t peaks = 0, speeds = 0, notes = 0;
    for (const ShotGroup& group : groups) {
        for (const auto& [shot, log] : group.members) {
            peaks += shot->peak_m ? 1 : 0;
            speeds += shot->club_speed_mps ? 1 : 0;
            notes += shot->note.empty() || shot->lost ? 0 : 1;
        }
    }
    if (peaks > 0) warnings.push_back("peak heights are read and not used");
    if (speeds > 0)
        warnings.push_back("club speeds are read for checking ball speeds and not used otherwise");
    if (notes > 0) {
        warnings.push_back(
            fmt::format("notes are read for lost balls and not used otherwise ({} of them): a "
                        "shot noted as a mishit is judged by where it came down, as any other",
                        notes));
    }
}

void check_count(const std::vector<ShotGroup>& groups, const std::vector<NamedLog>& logs) {
    const auto clubs = static_cast<std::size_t>(std::count_if(
        groups.begin(), groups.end(), [](const ShotGroup& g) { return g.kind != ClubKind::putter; }));
    if (clubs <= most_known_clubs) return;
    throw InputError(logs.front().file,
                     fmt::format("{} clubs and builds{}, and a profile holds {}; leave some out, or is the "
                                 "column of the club the right one?",
                                 clubs, logs.size() > 1 ? " in all logs" : "", most_known_clubs));
}

}  // namespace

LoggedClubs logged_clubs(const std::vector<NamedLog>& logs, const std::vector<KindOfClub>& kinds,
                         const std::vector<std::string>& carried) {
    LoggedClubs result;
    RepeatedRows repeated = repeated_rows(logs);
    result.warnings = std::move(repeated.warnings);
    const std::vector<ShotGroup> groups = shot_groups(logs, repeated, kinds, carried, result.warnings);
    check_count(groups, logs);
    Sessions sessions;
    std::size_t putts = 0;
    for (const ShotGroup& group : groups) {
        if (group.kind == ClubKind::putter) {
            putts += group.members.size();
            continue;
        }
        if (const std::string problem = name_problem(group.name()); !problem.empty()) {
            throw InputError(place_of(group, logs), fmt::format("club and build: the name {}", problem));
        }
        result.clubs.push_back(club_of(group, sessions, result.warnings));
    }
    result.sessions = sessions.take();
    if (putts > 0) result.warnings.push_back(fmt::format("{} putts are left aside", putts));
    if (result.clubs.empty()) throw InputError(logs.front().file, "no shot but putts");
    tell_unused(groups, result.warnings);
    return result;
}

}  // namespace landwidth
