#include "golfer-profiles/pattern_reader.hpp"

#include <fmt/format.h>

#include <array>
#include <limits>

#include "geometry/units.hpp"
#include "golfer-profiles/run_by_kind.hpp"

namespace landwidth {
namespace {

using Json = nlohmann::json;
using Words = std::string_view;

constexpr std::array<Words, 9> pattern_keys{"carry_yd", "carry_sd_yd", "side_yd", "side_sd_yd", "correlation",
                                            "run_yd",   "tail_dof",    "mishit",  "shots"};
constexpr std::array<Words, 5> mishit_keys{"share", "carry_yd", "carry_sd_yd", "side_yd", "side_sd_yd"};
constexpr std::array<Words, 2> learnt_keys{"prior", "shots_yd"};

// Wide enough for any golfer who ever lived, narrow enough to catch a slip of the keyboard or of the unit.
constexpr NumberRule carry_rule{"a carry in yards", 1, 450};
constexpr NumberRule sd_rule{"a standard deviation", 0, to_yards(largest_sd_m), true};
constexpr NumberRule side_rule{"a mean side offset in yards (right positive)", -150, 150};
constexpr NumberRule shot_side_rule{"a side offset in yards (right positive)", -150, 150};
constexpr NumberRule correlation_rule{"a correlation", -1, 1, true, true};
constexpr NumberRule run_rule{"a run-out in yards", 0, 120};
constexpr NumberRule dof_rule{"the number of degrees of freedom (absent: a normal)", 2, 1e6, true};
constexpr NumberRule shots_rule{"the number of recorded shots (0: a preset)", 0, 1e6};
constexpr NumberRule share_rule{"a share of shots (0.08 for 8 %)", 0, 1, false, true};
constexpr NumberRule mishit_carry_rule{"a carry in yards", 0, 450};

double metres(std::optional<double> yards) {
    return Yards{yards.value_or(0.0)}.metres();
}

Mishit mishit_of(JsonFields& mishit) {
    Mishit result{};
    result.share = mishit.number("share", share_rule).value_or(0.0);
    result.spread.centre.carry_m = metres(mishit.number("carry_yd", mishit_carry_rule));
    result.spread.carry_sd_m = metres(mishit.number("carry_sd_yd", sd_rule));
    result.spread.centre.side_m = metres(mishit.number("side_yd", side_rule));
    result.spread.side_sd_m = metres(mishit.number("side_sd_yd", sd_rule));
    return result;
}

std::optional<ShotOffset> shot_of(JsonFields& learnt, const Json& pair, const std::string& name) {
    if (!pair.is_array() || pair.size() != 2) {
        learnt.error(name,
                     fmt::format(" is {}; a shot is [carry, side] in yards",
                                 pair.is_array() ? fmt::format("a list of {}", pair.size()) : shown(pair)));
        return std::nullopt;
    }
    const auto carry = learnt.listed_number(pair[0], name, mishit_carry_rule);
    const auto side = learnt.listed_number(pair[1], name, shot_side_rule);
    if (!carry || !side) return std::nullopt;
    return ShotOffset{metres(carry), metres(side)};
}

std::vector<ShotOffset> shots_of(JsonFields& learnt) {
    std::vector<ShotOffset> shots;
    const Json* list = learnt.list("shots_yd", "the shots learnt from are expected: [[carry, side], ...]");
    if (list == nullptr) return shots;
    if (list->size() > most_learnt_shots) {
        learnt.error("shots_yd",
                     fmt::format(" has {} shots; at most {} are kept", list->size(), most_learnt_shots));
        return shots;
    }
    for (std::size_t i = 0; i < list->size(); ++i)
        if (const auto shot = shot_of(learnt, (*list)[i], fmt::format("shots_yd[{}]", i)))
            shots.push_back(*shot);
    return shots;
}

}  // namespace

ShotPattern pattern_of_json(const Json& object, const FieldPlace& place, ClubKind kind, FieldNotes& notes) {
    JsonFields pattern(object, place, pattern_keys, notes);
    ShotPattern result{};
    Spread& usual = result.usual;
    usual.centre.carry_m = metres(pattern.number("carry_yd", carry_rule));
    usual.carry_sd_m = metres(pattern.number("carry_sd_yd", sd_rule));
    usual.centre.side_m = metres(pattern.number("side_yd", side_rule));
    usual.side_sd_m = metres(pattern.number("side_sd_yd", sd_rule));
    usual.correlation = pattern.optional_number("correlation", correlation_rule).value_or(0.0);
    result.run_m = pattern.has("run_yd") ? metres(pattern.optional_number("run_yd", run_rule))
                                         : run_share_of_carry(kind) * usual.centre.carry_m;
    result.tail_dof =
        pattern.optional_number("tail_dof", dof_rule).value_or(std::numeric_limits<double>::infinity());
    if (const Json* mishits = pattern.optional_object("mishit")) {
        JsonFields mishit(*mishits, pattern.place().inside("mishit"), mishit_keys, notes);
        result.mishit = mishit_of(mishit);
    }
    result.shots = pattern.whole_number("shots", shots_rule).value_or(0);
    return result;
}

LearntFrom learnt_from_json(const Json& object, const FieldPlace& place, ClubKind kind, FieldNotes& notes) {
    JsonFields learnt(object, place, learnt_keys, notes);
    LearntFrom result{};
    if (const Json* prior = learnt.object("prior", "the pattern known before the shots is expected"))
        result.prior = pattern_of_json(*prior, learnt.place().inside("prior"), kind, notes);
    result.shots = shots_of(learnt);
    return result;
}

}  // namespace landwidth
