#include "golfer-profiles/pattern_reader.hpp"

#include <fmt/format.h>

#include <array>
#include <cmath>
#include <limits>

#include "geometry/units.hpp"
#include "golfer-profiles/run_by_kind.hpp"

namespace landwidth {
namespace {

using Json = nlohmann::json;
using Words = std::string_view;

constexpr std::array<Words, 10> pattern_keys{"carry_yd",    "carry_sd_yd", "side_yd",  "side_sd_yd",
                                             "correlation", "run_yd",      "tail_dof", "mishit",
                                             "shots",       "ways"};
constexpr std::array<Words, 6> way_keys{"share",        "carry_sds",   "side_sds",
                                        "carry_spread", "side_spread", "correlation"};
constexpr std::array<Words, 5> mishit_keys{"share", "carry_yd", "carry_sd_yd", "side_yd", "side_sd_yd"};
constexpr std::array<Words, 3> learnt_keys{"prior", "shots_yd", "lost"};

// Wide enough for any golfer who ever lived, narrow enough to catch a slip of the keyboard or of the unit.
constexpr NumberRule carry_rule{"a carry in yards", 1, 450};
constexpr NumberRule sd_rule{"a standard deviation", 0, to_yards(largest_sd_m), true};
constexpr NumberRule side_rule{"a mean side offset in yards (right positive)", -150, 150};
constexpr NumberRule shot_side_rule{"a side offset in yards (right positive)", -300, 300};
constexpr NumberRule correlation_rule{"a correlation", -1, 1, true, true};
constexpr NumberRule run_rule{"a run-out in yards", 0, 120};
constexpr NumberRule dof_rule{"the number of degrees of freedom (absent: a normal)", 2, 1e6, true};
constexpr NumberRule shots_rule{"the number of recorded shots (0: a preset)", 0, 1e6};
constexpr NumberRule share_rule{"a share of shots (0.08 for 8 %)", 0, 1, false, true};
constexpr NumberRule way_share_rule{"a share of the usual shots", 0, 1, true, true};
constexpr NumberRule offset_rule{"an offset in standard deviations of the usual shot", -5, 5};
constexpr NumberRule spread_rule{"a spread in standard deviations of the usual shot", 0, 5, true};
constexpr NumberRule session_rule{"the number of a session, counted from 0", 0, 1e6};
constexpr NumberRule when_rule{"a share of the session gone by", 0, 1};
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

Way way_of(JsonFields& way) {
    Way result{};
    result.share = way.number("share", way_share_rule).value_or(0.0);
    result.carry_sds = way.number("carry_sds", offset_rule).value_or(0.0);
    result.side_sds = way.number("side_sds", offset_rule).value_or(0.0);
    result.carry_spread = way.number("carry_spread", spread_rule).value_or(0.0);
    result.side_spread = way.number("side_spread", spread_rule).value_or(0.0);
    result.correlation = way.optional_number("correlation", correlation_rule).value_or(0.0);
    return result;
}

// Their offsets and spreads are told in those of the usual shot, so that they must add up to it.
bool add_up(const std::array<Way, 2>& ways) {
    constexpr double near = 0.02;
    double share = 0.0, carry = 0.0, side = 0.0, carry_variance = 0.0, side_variance = 0.0;
    for (const Way& way : ways) {
        share += way.share;
        carry += way.share * way.carry_sds;
        side += way.share * way.side_sds;
        carry_variance += way.share * (way.carry_sds * way.carry_sds + way.carry_spread * way.carry_spread);
        side_variance += way.share * (way.side_sds * way.side_sds + way.side_spread * way.side_spread);
    }
    return std::abs(share - 1.0) < near && std::abs(carry) < near && std::abs(side) < near &&
           std::abs(carry_variance - 1.0) < near && std::abs(side_variance - 1.0) < near;
}

std::optional<std::array<Way, 2>> ways_of(JsonFields& pattern, FieldNotes& notes) {
    const Json* list = pattern.list("ways", "a list of two ways is expected");
    if (list == nullptr) return std::nullopt;
    std::array<Way, 2> ways{};
    if (list->size() != ways.size() || !(*list)[0].is_object() || !(*list)[1].is_object()) {
        pattern.error("ways", " is no list of two objects; leave it out for a pattern of one usual shot");
        return std::nullopt;
    }
    const std::size_t errors = notes.errors.size();
    for (std::size_t i = 0; i < ways.size(); ++i) {
        JsonFields way((*list)[i], pattern.place().inside(fmt::format("ways[{}]", i)), way_keys, notes);
        ways[i] = way_of(way);
    }
    if (notes.errors.size() == errors && !add_up(ways))
        pattern.error(
            "ways",
            " do not add up: shares to 1, offsets to 0 and spreads to 1, in standard deviations of the "
            "usual shot");
    return ways;
}

// [carry, side] or [carry, side, session, when].
void add_shot(JsonFields& learnt, const Json& shot, const std::string& name, std::size_t sessions,
              LearntFrom& result) {
    const bool timed = shot.is_array() && shot.size() == 4;
    if (!timed && (!shot.is_array() || shot.size() != 2)) {
        learnt.error(name,
                     fmt::format(" is {}; a shot is [carry, side] in yards, or [carry, side, session, when]",
                                 shot.is_array() ? fmt::format("a list of {}", shot.size()) : shown(shot)));
        return;
    }
    const auto carry = learnt.listed_number(shot[0], name, mishit_carry_rule);
    const auto side = learnt.listed_number(shot[1], name, shot_side_rule);
    if (carry && side) result.shots.push_back({metres(carry), metres(side)});
    if (!timed) return;
    const auto session = learnt.listed_number(shot[2], name, session_rule);
    const auto when = learnt.listed_number(shot[3], name, when_rule);
    if (!session || !when) return;
    const auto number = static_cast<std::size_t>(*session);
    if (static_cast<double>(number) != *session || number >= sessions) {
        learnt.error(name, fmt::format(": session {:g} is none of the {} under \"sessions\" (counted from 0)",
                                       *session, sessions));
        return;
    }
    result.times.push_back({number, *when});
}

void read_shots(JsonFields& learnt, std::size_t sessions, LearntFrom& result) {
    const Json* list = learnt.list("shots_yd", "the shots learnt from are expected: [[carry, side], ...]");
    if (list == nullptr) return;
    if (list->size() > most_learnt_shots) {
        learnt.error("shots_yd",
                     fmt::format(" has {} shots; at most {} are kept", list->size(), most_learnt_shots));
        return;
    }
    for (std::size_t i = 0; i < list->size(); ++i)
        add_shot(learnt, (*list)[i], fmt::format("shots_yd[{}]", i), sessions, result);
    if (!result.times.empty() && result.times.size() != result.shots.size())
        learnt.error("shots_yd", ": some shots tell their session and some do not; all do or none");
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
    if (pattern.has("ways")) result.ways = ways_of(pattern, notes);
    result.shots = pattern.whole_number("shots", shots_rule).value_or(0);
    return result;
}

LearntFrom learnt_from_json(const Json& object, const FieldPlace& place, ClubKind kind, std::size_t sessions,
                            FieldNotes& notes) {
    JsonFields learnt(object, place, learnt_keys, notes);
    LearntFrom result{};
    if (const Json* prior = learnt.object("prior", "the pattern known before the shots is expected"))
        result.prior = pattern_of_json(*prior, learnt.place().inside("prior"), kind, notes);
    read_shots(learnt, sessions, result);
    result.lost = learnt.optional_whole_number("lost", shots_rule).value_or(0);
    return result;
}

}  // namespace landwidth
