#include "golfer-profiles/sessions/prepare_sessions.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <map>
#include <optional>
#include <stdexcept>
#include <utility>

#include "geometry/units.hpp"
#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/order_statistics.hpp"
#include "golfer-profiles/sessions/bay_widening.hpp"
#include "golfer-profiles/sessions/session_dates.hpp"
#include "golfer-profiles/sessions/session_labels.hpp"
#include "golfer-profiles/sessions/to_reference.hpp"

namespace landwidth {
namespace {

const LoggedShot& row_of(const LandedShot& shot, const std::vector<NamedLog>& logs) {
    const std::vector<LoggedShot>& rows = logs.at(shot.log).log.shots;
    const auto found = std::lower_bound(rows.begin(), rows.end(), shot.row,
                                        [](const LoggedShot& row, std::size_t at) { return row.row < at; });
    if (found == rows.end() || found->row != shot.row) throw std::logic_error("a shot of no log");
    return *found;
}

std::optional<Launch> launch_of(const LoggedShot& row) {
    if (!row.ball_speed_mps || !row.launch_rad || !row.spin_rad_per_s) return std::nullopt;
    return Launch{*row.ball_speed_mps, *row.launch_rad, *row.spin_rad_per_s};
}

std::string shots_words(std::size_t count) {
    return fmt::format("{} shot{}", count, count == 1 ? "" : "s");
}

// What was done to the shots of one log that were hit in the same conditions.
struct Moved {
    std::string words;  // of the conditions; empty when they differ from row to row
    std::size_t shots = 0;
    std::size_t not_found = 0;           // no ball of the club lands there in such a wind
    double carry_m = 0.0, side_m = 0.0;  // sums
};

class Preparation {
  public:
    Preparation(LoggedClubs& clubs, const std::vector<NamedLog>& logs, const SessionAssumptions& assumptions)
        : clubs_(clubs), logs_(logs), assumptions_(assumptions) {}

    std::vector<std::string> done() {
        label_sessions(clubs_, logs_, said_);
        std::size_t moved = 0;
        for (LoggedClub& club : clubs_.clubs)
            moved += bring_to_reference(club);
        if (moved > 0) tell_moved();
        widen_bays();
        for (std::string& sentence : weigh_sessions(clubs_.sessions, assumptions_.half_life_days))
            said_.push_back(std::move(sentence));
        clubs_.sessions_prepared = true;
        return std::move(said_);
    }

  private:
    struct Shot {
        LandedShot* landed;
        const LoggedShot* row;
        ShotOffset course_ball;  // where a course ball would have landed
        std::optional<AirFlow> flow;
    };

    Shot shot_of(LandedShot& landed) const {
        const LoggedShot& row = row_of(landed, logs_);
        ShotOffset place = landed.landing;
        if (row.conditions.ball == BallUsed::range) {
            place.carry_m /= 1.0 - assumptions_.range_ball_loss;
            place.side_m /= 1.0 - assumptions_.range_ball_loss;
        }
        return {&landed, &row, place, flow_of(row.conditions)};
    }

    // The club's flight needs its carry on the reference day, which is what is looked for: a few of the shots
    // settle it first.
    ToReference flight_of(const LoggedClub& club, const std::vector<Shot>& shots) const {
        constexpr std::size_t settling_shots = 31;
        constexpr int rounds = 3;
        constexpr double shortest_m = 1.0, longest_m = Yards{450.0}.metres();  // as a log may hold
        const std::size_t step = shots.size() / settling_shots + 1;
        std::vector<double> carries;
        for (const Shot& shot : shots)
            carries.push_back(shot.course_ball.carry_m);
        double carry_m = std::clamp(median(carries), shortest_m, longest_m);
        const auto flight = [&] {
            Club usual{.name = club.name, .kind = club.kind, .pattern = ShotPattern{}, .launch = club.launch};
            usual.pattern->usual.centre.carry_m = carry_m;
            return ToReference(ClubFlight(usual), assumptions_.curve_share);
        };
        for (int round = 0; round < rounds; ++round) {
            const ToReference now = flight();
            std::vector<double> changes;
            for (std::size_t i = 0; i < shots.size(); i += step) {
                const Shot& shot = shots[i];
                const auto place = shot.flow ? now.landing(shot.course_ball, *shot.flow, launch_of(*shot.row))
                                             : shot.course_ball;
                if (place && shot.course_ball.carry_m > 0.0) changes.push_back(place->carry_m / carries[i]);
            }
            if (changes.empty()) break;
            carry_m = std::clamp(median(carries) * median(changes), shortest_m, longest_m);
        }
        return flight();
    }

    std::size_t bring_to_reference(LoggedClub& club) {
        std::vector<Shot> shots;
        bool any_flow = false;
        for (LandedShot& landed : club.shots) {
            shots.push_back(shot_of(landed));
            any_flow = any_flow || shots.back().flow;
        }
        std::optional<ToReference> flight;
        if (any_flow) flight = flight_of(club, shots);
        std::size_t moved = 0;
        for (const Shot& shot : shots) {
            if (!shot.flow && shot.row->conditions.ball != BallUsed::range) continue;
            ++moved;
            bring(shot, flight);
        }
        if (moved > 0) club.session_note = fmt::format("{} of them brought to the reference day", moved);
        return moved;
    }

    void bring(const Shot& shot, const std::optional<ToReference>& flight) {
        std::optional<ShotOffset> place = shot.course_ball;
        if (shot.flow) place = flight->landing(shot.course_ball, *shot.flow, launch_of(*shot.row));
        ShotOffset& landing = shot.landed->landing;
        const std::string words = conditions_words(shot.row->conditions);
        Moved& sum = moved_[{shot.landed->log, shot.landed->session}];
        if (sum.shots == 0) sum.words = words;
        if (sum.words != words) sum.words.clear();
        ++sum.shots;
        if (!place) {
            ++sum.not_found;
            return;
        }
        sum.carry_m += place->carry_m - landing.carry_m;
        sum.side_m += place->side_m - landing.side_m;
        landing = *place;
    }

    // Of the sums.
    static std::string change_words(const Moved& sum) {
        const double shots = static_cast<double>(sum.shots);
        const double carry_yd = to_yards(sum.carry_m / shots);
        const double side_yd = to_yards(sum.side_m / shots);
        return fmt::format("carries {:.1f} yd {}, sides {:.1f} yd further {}", std::abs(carry_yd),
                           carry_yd < 0.0 ? "shorter" : "longer", std::abs(side_yd),
                           side_yd < 0.0 ? "left" : "right");
    }

    void tell_moved() {
        constexpr std::size_t most_told = 12;
        std::size_t told = 0;
        for (const auto& [key, sum] : moved_) {
            if (++told > most_told) continue;
            std::string place = logs_[key.first].file;
            if (key.second) place += ", " + clubs_.sessions[*key.second].label;
            said_.push_back(fmt::format(
                "{}: {} ({}) brought to the reference day: on average {}", place, shots_words(sum.shots),
                sum.words.empty() ? "conditions by row" : sum.words, change_words(sum)));
            if (sum.not_found > 0) {
                said_.push_back(fmt::format(
                    "{}: {} of these shots could not be: no ball of their club lands there in such a wind; "
                    "they stay as they are",
                    place, sum.not_found));
            }
        }
        if (told > most_told) said_.push_back(fmt::format("and {} more sessions likewise", told - most_told));
        if (has_range_balls()) {
            said_.push_back(
                fmt::format("range balls are taken to lose {:.3g} % of their carry (assumption "
                            "range_ball_loss)",
                            100.0 * assumptions_.range_ball_loss));
        }
    }

    bool has_range_balls() const {
        return std::any_of(logs_.begin(), logs_.end(), [](const NamedLog& log) {
            return std::any_of(log.log.shots.begin(), log.log.shots.end(), [](const LoggedShot& shot) {
                return shot.conditions.ball == BallUsed::range;
            });
        });
    }

    void widen_bays() {
        const double factor = assumptions_.bay_widening;
        std::size_t from_bays = 0;
        for (LoggedClub& club : clubs_.clubs) {
            std::vector<ShotOffset*> shots;
            for (LandedShot& shot : club.shots)
                if (is_from_bay(row_of(shot, logs_).conditions)) shots.push_back(&shot.landing);
            from_bays += shots.size();
            if (factor == 1.0 || shots.empty()) continue;
            widen(shots, factor);
            club.session_note += fmt::format("{}spread of {} from a bay widened by {:g}",
                                             club.session_note.empty() ? "" : "; ", shots.size(), factor);
        }
        if (from_bays == 0) return;
        const std::string mats = "; carries off a mat are taken for those off grass (assumption)";
        if (factor == 1.0) {
            said_.push_back(
                shots_words(from_bays) +
                " from a bay or a mat: the spread of the course is understated by a fifth to a third, "
                "as commonly said; to allow for it say --assume bay_widening=1.25" +
                mats);
        } else {
            said_.push_back(
                fmt::format("{} from a bay or a mat: spread widened by a factor of {:g} about the "
                            "middle of their club's (assumption bay_widening)",
                            shots_words(from_bays), factor) +
                mats);
        }
    }

    LoggedClubs& clubs_;
    const std::vector<NamedLog>& logs_;
    const SessionAssumptions& assumptions_;
    std::vector<std::string> said_;
    std::map<std::pair<std::size_t, std::optional<std::size_t>>, Moved> moved_;
};

}  // namespace

std::vector<std::string> prepare_sessions(LoggedClubs& clubs, const std::vector<NamedLog>& logs,
                                          const SessionAssumptions& assumptions) {
    if (clubs.sessions_prepared) throw std::logic_error("shots brought to the reference day twice");
    return Preparation(clubs, logs, assumptions).done();
}

}  // namespace landwidth
