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
#include "golfer-profiles/logs/other_rows.hpp"
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

// What is said of a shot, and of several shots of a club for the same reason.
struct Doubt {
    std::string one;
    std::string several;  // "{}" stands for the numbers, from the least to the most
    double number = 0.0;
};

std::optional<Doubt> doubt_of(const LoggedShot& shot, double length_m, const Usual& length,
                              const Usual& side) {
    // Alike for one shot and for several.
    const auto with_number = [](const std::string& words, double number) {
        return Doubt{fmt::format("{:.0f}{}", number, words), "{}" + words, number};
    };
    if (const auto slip = slip_of_length(length_m, length))
        return with_number(fmt::format(" yd where {:.0f} is usual; {}", to_yards(length.centre), *slip),
                           to_yards(length_m));
    const double side_yd = to_yards(std::abs(shot.side_m));
    if (std::abs(shot.side_m) > std::max(length_m, 10.0))
        return Doubt{fmt::format("{:.0f} yd to the side of a shot of {:.0f} yd", side_yd, to_yards(length_m)),
                     "{} yd to the side of shots that are shorter than that", side_yd};
    if (side.off(shot.side_m) > far_off && side.off(-shot.side_m) < fits)
        return with_number(fmt::format(" yd {} would fit on the other side; is the sign or letter right?",
                                       shot.side_m < 0 ? "left" : "right"),
                           side_yd);
    if (shot.carry_m && shot.total_m && *shot.total_m < *shot.carry_m - Yards{15}.metres())
        return Doubt{fmt::format("a total of {:.0f} yd is well short of the carry of {:.0f} yd; are they "
                                 "swapped?",
                                 to_yards(*shot.total_m), to_yards(*shot.carry_m)),
                     "totals of {} yd are well short of the carries; are they swapped?",
                     to_yards(*shot.total_m)};
    const std::string speeds =
        "the ball leaves over 1.6 times as fast as the club came; are the speeds in one unit?";
    if (shot.ball_speed_mps && shot.club_speed_mps && *shot.ball_speed_mps > 1.6 * *shot.club_speed_mps)
        return Doubt{speeds, speeds};
    return std::nullopt;
}

// Rows of one club that are doubted for one reason.
struct DoubtedRows {
    std::string club;
    Doubt first;
    std::vector<std::size_t> rows;
    double least, most;  // of the numbers

    std::string sentence() const {
        if (rows.size() == 1) return fmt::format("row {}, {}: {}", rows[0], in_quotes(club), first.one);
        std::string words = first.several;
        const std::string low = fmt::format("{:.0f}", least), high = fmt::format("{:.0f}", most);
        if (const std::size_t at = words.find("{}"); at != std::string::npos)
            words.replace(at, 2, low == high ? low : low + " to " + high);
        return fmt::format("{}, {}: {}", row_words(rows), in_quotes(club), words);
    }
};

void doubt_group(const ClubGroup& group, std::vector<DoubtedRows>& doubted) {
    if (group.shots.size() < fewest_to_compare) return;
    std::vector<double> lengths, sides;
    for (const LoggedShot* shot : group.shots) {
        lengths.push_back(group.length_of(*shot));
        sides.push_back(shot->side_m);
    }
    const Usual length = usual_of(lengths, 0.01 * std::abs(median(lengths)) + 0.3);
    const Usual side = usual_of(sides, 0.01 * std::abs(median(lengths)) + 0.5);
    const std::size_t before = doubted.size();
    for (const LoggedShot* shot : group.shots) {
        auto doubt = doubt_of(*shot, group.length_of(*shot), length, side);
        if (!doubt) continue;
        const auto known =
            std::find_if(doubted.begin() + static_cast<std::ptrdiff_t>(before), doubted.end(),
                         [&](const DoubtedRows& d) { return d.first.several == doubt->several; });
        if (known == doubted.end()) {
            doubted.push_back({shot->club, *doubt, {shot->row}, doubt->number, doubt->number});
            continue;
        }
        known->rows.push_back(shot->row);
        known->least = std::min(known->least, doubt->number);
        known->most = std::max(known->most, doubt->number);
    }
}

// The value that most of a club's shots share to the last digit, where more do than any golfer's would.
// Assumption: of a spread of some yards, written in whole yards, one in four at most.
std::optional<std::string> shared_value(const std::vector<double>& values) {
    constexpr double hardly_honest = 0.6, exact_m = 1e-6;
    std::vector<double> sorted = values;
    std::ranges::sort(sorted);
    std::size_t most = 0;
    double shared = 0.0;
    for (std::size_t i = 0, start = 0; i < sorted.size(); ++i) {
        if (sorted[i] - sorted[start] > exact_m) start = i;
        if (i - start + 1 <= most) continue;
        most = i - start + 1;
        shared = sorted[start];
    }
    if (static_cast<double>(most) <= hardly_honest * static_cast<double>(values.size())) return std::nullopt;
    return fmt::format("{} of {} are {:.4g} yd", most, values.size(), to_yards(shared) + 0.0);
}

}  // namespace

std::optional<std::string> same_values_doubt(const std::vector<LoggedShot>& shots) {
    std::map<std::string, std::pair<std::vector<double>, std::vector<double>>> clubs;
    std::vector<std::string> in_order;
    for (const LoggedShot& shot : shots) {
        if (shot.lost) continue;
        const std::string club = in_small_letters(shot.club);
        if (!clubs.contains(club)) in_order.push_back(club);
        auto& [lengths, sides] = clubs[club];
        lengths.push_back(shot.carry_m ? *shot.carry_m : *shot.total_m);
        sides.push_back(shot.side_m);
    }
    std::string said;
    for (const std::string& club : in_order) {
        const auto& [lengths, sides] = clubs[club];
        if (lengths.size() < fewest_to_compare) continue;
        if (const auto same = shared_value(sides))
            said += fmt::format("{}sides of {}: {}", said.empty() ? "" : "; ", in_quotes(club), *same);
        if (const auto same = shared_value(lengths))
            said += fmt::format("{}carries of {}: {}", said.empty() ? "" : "; ", in_quotes(club), *same);
    }
    if (said.empty()) return std::nullopt;
    return said + "; are they recorded? A spread is learnt from them as they stand";
}

std::optional<std::string> leave_out_totals_that_are_carries(std::vector<LoggedShot>& shots) {
    constexpr double exact_m = 1e-6;
    std::size_t both = 0;
    for (const LoggedShot& shot : shots) {
        if (!shot.carry_m || !shot.total_m) continue;
        if (std::abs(*shot.total_m - *shot.carry_m) > exact_m) return std::nullopt;
        ++both;
    }
    if (both < fewest_to_compare) return std::nullopt;
    for (LoggedShot& shot : shots)
        if (shot.carry_m) shot.total_m.reset();
    return fmt::format(
        "total and carry are the same in all {} rows that have both: are the carries totals, or the totals "
        "carries? No run is learnt from them, runs stay typical",
        both);
}

std::vector<std::string> log_doubts(const std::vector<LoggedShot>& shots) {
    std::map<std::pair<std::string, std::pair<std::string, bool>>, ClubGroup> groups;
    for (const LoggedShot& shot : shots) {
        if (shot.lost) continue;
        const bool by_carry = shot.carry_m.has_value();
        ClubGroup& group = groups[{in_small_letters(shot.club), {in_small_letters(shot.build), by_carry}}];
        group.by_carry = by_carry;
        group.shots.push_back(&shot);
    }
    std::vector<DoubtedRows> doubted;
    for (const auto& [name, group] : groups)
        doubt_group(group, doubted);
    std::ranges::stable_sort(doubted, {}, [](const DoubtedRows& doubt) { return doubt.rows.front(); });
    std::vector<std::string> said;
    for (const DoubtedRows& doubt : doubted) {
        if (said.size() == most_told) {
            said.push_back(fmt::format("and {} more like these", doubted.size() - most_told));
            break;
        }
        said.push_back(doubt.sentence());
    }
    return said;
}

}  // namespace landwidth
