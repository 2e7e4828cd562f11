#include "planner/commands/typed_supposition.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>
#include <optional>
#include <vector>

#include "geometry/units.hpp"
#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/nearest_word.hpp"
#include "planner/commands/typed_text.hpp"

namespace landwidth {
namespace {

// Beyond these a change is a slip of the keyboard or another golfer. Assumptions.
constexpr double narrowest = -60.0, widest = 150.0;  // per cent
constexpr double most_carry = 25.0;                  // per cent
constexpr double most_ball_speed_mps = 15.0 * metres_per_second_per_mph;
constexpr double most_side_m = Yards{40.0}.metres();
constexpr double most_points = 50.0;
constexpr double fewest_mishits = -100.0, most_mishits = 300.0;  // per cent

constexpr std::string_view example = "\"driver, 44 in: spread -10 %, ball speed +3 mph\"";
constexpr std::string_view minus_sign = "\u2212";

// One change, read.
struct Change {
    const Typed& typed;
    std::string_view quantity;
    std::string_view item;
    TypedQuantity by;

    [[noreturn]] void refuse(std::string_view problem) const {
        typed.refuse(fmt::format("{}: {}", in_quotes(item), problem));
    }

    double within(double value, double least, double most, std::string_view unit) const {
        if (value >= least && value <= most) return value;
        refuse(fmt::format("from {:+g} to {:+g} {} is expected", least, most, unit));
    }

    bool in_percent() const { return by.unit == "%"; }

    double factor(double least, double most) const {
        if (!in_percent())
            refuse(fmt::format("{} is no unit of {} here: write {} -10 %", in_quotes(by.unit), quantity,
                               quantity));
        return 1.0 + within(by.number, least, most, "%") / 100.0;
    }

    double si(Measure measure, std::string_view how) const { return si_of(typed, by, measure, how); }
};

void take_spread(const Change& change, Supposition& supposition) {
    const double factor = change.factor(narrowest, widest);
    if (change.quantity != "side spread") supposition.carry_spread = factor;
    if (change.quantity != "carry spread") supposition.side_spread = factor;
}

void take_carry(const Change& change, Supposition& supposition) {
    if (change.in_percent()) {
        supposition.carry_factor = change.factor(-most_carry, most_carry);
    } else {
        supposition.carry_m = change.si(Measure::length, "carry +5 yd, carry +5 m or carry +2 %");
    }
}

void take_ball_speed(const Change& change, Supposition& supposition) {
    const double mps = change.si(Measure::speed, "ball speed +3 mph (or km/h, m/s)");
    change.within(mps / metres_per_second_per_mph, -most_ball_speed_mps / metres_per_second_per_mph,
                  most_ball_speed_mps / metres_per_second_per_mph, "mph");
    supposition.ball_speed_mps = mps;
}

void take_side(const Change& change, Supposition& supposition) {
    const double side_m = change.si(Measure::length, "side -4 yd (to the left) or side +4 m");
    change.within(to_yards(side_m), -to_yards(most_side_m), to_yards(most_side_m), "yd");
    supposition.side_m = side_m;
}

void take_mishits(const Change& change, Supposition& supposition) {
    if (change.in_percent()) {
        supposition.mishit_factor = change.factor(fewest_mishits, most_mishits);
        return;
    }
    if (change.by.unit != "points" && change.by.unit != "point")
        change.refuse(
            fmt::format("{} is no unit of mishits here: write mishits -3 points (of 100 shots) or mishits "
                        "-30 % (of those "
                        "there are)",
                        in_quotes(change.by.unit)));
    supposition.mishit_share = change.within(change.by.number, -most_points, most_points, "points") / 100.0;
}

struct KnownQuantity {
    std::string_view name;
    void (*take)(const Change&, Supposition&);
};

constexpr std::array quantities{
    KnownQuantity{"spread", take_spread},         KnownQuantity{"carry spread", take_spread},
    KnownQuantity{"side spread", take_spread},    KnownQuantity{"carry", take_carry},
    KnownQuantity{"ball speed", take_ball_speed}, KnownQuantity{"side", take_side},
    KnownQuantity{"mishits", take_mishits}};

// In small letters, one space between words.
std::string plain(std::string_view text) {
    std::string words;
    for (const char c : trimmed(text)) {
        const bool space = c == ' ' || c == '\t';
        if (!space || words.back() != ' ') words += space ? ' ' : c;
    }
    return words;
}

const KnownQuantity& known(const Typed& typed, std::string_view item, std::string_view name) {
    const auto found = std::ranges::find(quantities, name, &KnownQuantity::name);
    if (found != quantities.end()) return *found;
    std::vector<std::string_view> names;
    for (const KnownQuantity& quantity : quantities)
        names.push_back(quantity.name);
    if (name.empty())
        typed.refuse(fmt::format("{}: what changes is missing: write {}", in_quotes(item), example));
    const auto nearest = nearest_word(name, names);
    typed.refuse(fmt::format("{} is none of what can be supposed: {}{}", in_quotes(name),
                             fmt::join(names, ", "),
                             nearest ? fmt::format("; was {} meant?", in_quotes(*nearest)) : ""));
}

// "+3 mph", the sign being asked for: "carry 230 yd" could be the carry itself.
TypedQuantity signed_quantity(const Typed& typed, std::string_view item, std::string_view text) {
    std::string number(text);
    if (text.starts_with(minus_sign)) {
        number = "-" + std::string(text.substr(minus_sign.size()));
    } else if (text.starts_with('+')) {
        number = std::string(trimmed(text.substr(1)));
    } else if (!text.starts_with('-')) {
        typed.refuse(fmt::format("{}: a change has a sign, + for more and - for less: write {}",
                                 in_quotes(item), example));
    } else {
        number = "-" + std::string(trimmed(text.substr(1)));
    }
    return quantity_of(typed, number, fmt::format("{} with a unit, such as {}", text, example));
}

void take(const Typed& typed, std::string_view text, Supposition& supposition,
          std::vector<std::string_view>& taken) {
    const std::string_view item = trimmed(text);
    const std::size_t behind = std::min(item.find_first_of("+-0123456789."), item.find(minus_sign));
    if (behind == std::string_view::npos)
        typed.refuse(item.empty()
                         ? fmt::format("a change is missing: write {}", example)
                         : fmt::format("{}: by how much is missing: write {}", in_quotes(item), example));
    const std::string name = in_small_letters(plain(item.substr(0, behind)));
    const KnownQuantity& quantity = known(typed, item, name);
    // "spread" is both of its kinds.
    const auto overlaps = [&](std::string_view other) {
        return other == quantity.name ||
               (quantity.take == take_spread && (other == "spread" || name == "spread") &&
                other.ends_with("spread"));
    };
    if (std::ranges::any_of(taken, overlaps))
        typed.refuse(fmt::format("{} is changed twice: leave one of them out", quantity.name));
    taken.push_back(quantity.name);
    quantity.take({typed, quantity.name, item, signed_quantity(typed, item, item.substr(behind))},
                  supposition);
}

// "-10,5 %" would be read as two changes.
void refuse_decimal_comma(const Typed& typed, std::string_view changes) {
    const auto is_digit = [](char c) { return c >= '0' && c <= '9'; };
    for (std::size_t i = 1; i + 1 < changes.size(); ++i)
        if (changes[i] == ',' && is_digit(changes[i - 1]) && is_digit(changes[i + 1]))
            typed.refuse("a comma stands between changes: write a decimal point, such as -10.5 %");
}

}  // namespace

TypedSupposition typed_supposition(std::string_view option, std::string_view text) {
    const Typed typed{option, text};
    const std::size_t colon = text.rfind(':');
    if (colon == std::string_view::npos)
        typed.refuse(fmt::format("expected CLUB: CHANGE, CHANGE: write {}", example));
    TypedSupposition result{std::string(trimmed(text.substr(0, colon))), {}, plain(text.substr(colon + 1))};
    if (result.club.empty()) typed.refuse(fmt::format("the club is missing: write {}", example));
    std::vector<std::string_view> taken;
    std::string_view rest = text.substr(colon + 1);
    refuse_decimal_comma(typed, rest);
    while (true) {
        const std::size_t comma = rest.find(',');
        take(typed, rest.substr(0, comma), result.supposition, taken);
        if (comma == std::string_view::npos) return result;
        rest.remove_prefix(comma + 1);
    }
}

}  // namespace landwidth
