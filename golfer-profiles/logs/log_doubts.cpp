#include "golfer-profiles/logs/log_doubts.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <optional>
#include <utility>

#include "geometry/units.hpp"
#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/logs/log_units.hpp"
#include "golfer-profiles/order_statistics.hpp"

namespace landwidth {
namespace {

constexpr std::size_t fewest_to_compare = 5;
constexpr std::size_t most_told = 20;

// Thresholds in robust standard deviations: common practice, no source.
constexpr double far_off = 5.0;  // hardly the same kind of shot
constexpr double fits = 2.0;     // an ordinary shot

// Where the usual shots of a club lie, in one coordinate.
struct Usual {
    double centre, deviation;
    double off(double value) const { return std::abs(value - centre) / deviation; }
};

// Identical shots have no spread; nobody is steadier than this.
Usual usual_of(const std::vector<double>& values, double least_deviation) {
    return {median(values), std::max(robust_deviation(values), least_deviation)};
}

struct ClubGroup {
    std::vector<const LoggedShot*> shots;
    bool by_carry = true;  // else by total
    double length_of(const LoggedShot& shot) const { return by_carry ? *shot.carry_m : *shot.total_m; }
};

// How a length that is far from the usual would fit.
std::optional<std::string> slip_of_length(double length_m, const Usual& usual) {
    struct Slip {
        double factor;
        std::string_view words;
    };
    constexpr std::array<Slip, 4> slips{{
        {10.0, "is a digit lost or the decimal mark misplaced?"},
        {0.1, "is there a digit too many?"},
        {1.0 / metres_per_yard, "it would fit if it were metres read as yards"},
        {metres_per_yard, "it would fit if it were yards read as metres"},
    }};
    if (usual.off(length_m) < far_off) return std::nullopt;
    for (const Slip& slip : slips) {
        // The digit that is lost may be any: 23 for 230 to 239.
        const bool lost_digit = slip.factor == 10.0 && usual.centre >= 10.0 * length_m &&
                                usual.centre < 10.0 * (length_m + metres_per_yard);
        if (lost_digit || usual.off(length_m * slip.factor) < fits) return std::string(slip.words);
    }
    if (length_m > 1.3 * usual.centre) return "so long a shot is hard to believe";
    if (length_m < usual.centre / 3.0) return "is it a full shot?";
    return std::nullopt;
}

void doubt_shot(const LoggedShot& shot, double length_m, const Usual& length, const Usual& side,
                std::map<std::size_t, std::string>& said) {
    const auto say = [&](const std::string& what) {
        said.emplace(shot.row, fmt::format("row {}, {}: {}", shot.row, in_quotes(shot.club), what));
    };
    if (const auto slip = slip_of_length(length_m, length)) {
        say(fmt::format("{:.0f} yd where {:.0f} is usual; {}", to_yards(length_m), to_yards(length.centre),
                        *slip));
    } else if (std::abs(shot.side_m) > std::max(length_m, 10.0)) {
        say(fmt::format("{:.0f} yd to the side of a shot of {:.0f} yd", to_yards(std::abs(shot.side_m)),
                        to_yards(length_m)));
    } else if (side.off(shot.side_m) > far_off && side.off(-shot.side_m) < fits) {
        say(fmt::format("{:.0f} yd {} would fit on the other side; is the sign or letter right?",
                        to_yards(std::abs(shot.side_m)), shot.side_m < 0 ? "left" : "right"));
    } else if (shot.carry_m && shot.total_m && *shot.total_m < *shot.carry_m - Yards{15}.metres()) {
        say(fmt::format("a total of {:.0f} yd is well short of the carry of {:.0f} yd; are they swapped?",
                        to_yards(*shot.total_m), to_yards(*shot.carry_m)));
    } else if (shot.ball_speed_mps && shot.club_speed_mps &&
               *shot.ball_speed_mps > 1.6 * *shot.club_speed_mps) {
        say("the ball leaves over 1.6 times as fast as the club came; are the speeds in one unit?");
    }
}

void doubt_group(const ClubGroup& group, std::map<std::size_t, std::string>& said) {
    if (group.shots.size() < fewest_to_compare) return;
    std::vector<double> lengths, sides;
    for (const LoggedShot* shot : group.shots) {
        lengths.push_back(group.length_of(*shot));
        sides.push_back(shot->side_m);
    }
    const Usual length = usual_of(lengths, 0.01 * std::abs(median(lengths)) + 0.3);
    const Usual side = usual_of(sides, 0.01 * std::abs(median(lengths)) + 0.5);
    for (const LoggedShot* shot : group.shots)
        doubt_shot(*shot, group.length_of(*shot), length, side, said);
}

}  // namespace

std::vector<std::string> log_doubts(const std::vector<LoggedShot>& shots) {
    std::map<std::pair<std::string, std::pair<std::string, bool>>, ClubGroup> groups;
    for (const LoggedShot& shot : shots) {
        if (shot.lost) continue;
        const bool by_carry = shot.carry_m.has_value();
        ClubGroup& group = groups[{in_small_letters(shot.club), {in_small_letters(shot.build), by_carry}}];
        group.by_carry = by_carry;
        group.shots.push_back(&shot);
    }
    std::map<std::size_t, std::string> by_row;
    for (const auto& [name, group] : groups)
        doubt_group(group, by_row);
    std::vector<std::string> said;
    for (const auto& [row, sentence] : by_row) {
        if (said.size() == most_told) {
            said.push_back(fmt::format("and {} more rows like these", by_row.size() - most_told));
            break;
        }
        said.push_back(sentence);
    }
    return said;
}

}  // namespace landwidth
