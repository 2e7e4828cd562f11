#include <algorithm>
#include <array>
#include <cmath>
#include <nlohmann/json.hpp>
#include <optional>

#include "planner/reports/plan_reports.hpp"
#include "planner/reports/rounded.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

using Json = nlohmann::ordered_json;

constexpr int stroke_decimals = 4;

double json_yards(double metres) {
    return rounded(to_yards(metres), 1);
}

Json json_place(const PlaneFrame& frame, Point point) {
    const LonLat place = frame.to_lonlat(point);
    return {rounded(place.lon_deg, 8), rounded(place.lat_deg, 8)};
}

Json json_optional(const std::optional<double>& value, int decimals) {
    if (!value) return nullptr;
    return rounded(*value, decimals);
}

// The contract's keys. A teeing area is closely mown and plays as fairway; it does not tell red from yellow.
constexpr std::array<const char*, 7> share_keys{"fairway", "rough",   "bunker",       "trees",
                                                "green",   "penalty", "out_of_bounds"};

std::size_t share_key_of(Lie lie) {
    switch (lie) {
        case Lie::teeing_area:
        case Lie::fairway:
            return 0;
        case Lie::rough:
            return 1;
        case Lie::bunker:
            return 2;
        case Lie::trees:
            return 3;
        case Lie::green:
            return 4;
        case Lie::penalty_yellow:
        case Lie::penalty_red:
            return 5;
        case Lie::out_of_bounds:
            return 6;
    }
    return 1;
}

// Counted in ten-thousandths, so that what is written adds to 1 exactly: the largest share takes up what
// rounding leaves over, where it shows least.
Json json_shares(const std::array<double, lie_count>& lies) {
    constexpr double whole = 10000.0;
    std::array<double, share_keys.size()> shares{};
    for (const Lie lie : all_lies)
        shares[share_key_of(lie)] += lies[index_of(lie)];
    double left_over = whole;
    for (double& share : shares) {
        share = std::round(whole * share);
        left_over -= share;
    }
    *std::max_element(shares.begin(), shares.end()) += left_over;

    Json json = Json::object();
    for (std::size_t i = 0; i < shares.size(); ++i)
        json[share_keys[i]] = shares[i] / whole + 0.0;
    return json;
}

Json json_verdict(const PlanView& view, const Hole& hole, const HolePlan& plan) {
    const TeeChoice& best = plan.choices.at(plan.verdict.best);
    Json over = nullptr;
    if (plan.verdict.over) over = view.golfer.clubs.at(plan.choices.at(*plan.verdict.over).club).name;
    return {
        {"club", view.golfer.clubs.at(best.club).name},
        {"aim_bearing_deg", rounded_direction(best.aim_bearing.degrees(), 2)},
        {"aim_point", json_place(hole.frame, best.aim_point)},
        {"aim_text", aim_words(best, DisplayUnits::yards)},
        {"expected_strokes", rounded(best.expected_strokes, stroke_decimals)},
        {"margin_strokes", json_optional(plan.verdict.margin, stroke_decimals)},
        {"over", over},
        {"confidence", rounded(plan.verdict.confidence, 4)},
        {"toss_up", plan.verdict.toss_up},
    };
}

Json json_choice(const PlanView& view, const TeeChoice& choice) {
    Json landing_width = nullptr;
    if (choice.landing) landing_width = json_yards(choice.landing->width_m());
    return {
        {"club", view.golfer.clubs.at(choice.club).name},
        {"aim_bearing_deg", rounded_direction(choice.aim_bearing.degrees(), 2)},
        {"expected_strokes", rounded(choice.expected_strokes, stroke_decimals)},
        // Two decimals more than the strokes: it is there to be compared with margins.
        {"standard_error", rounded(choice.standard_error, 6)},
        {"lies", json_shares(choice.lies)},
        {"leave_yd", {{"mean", json_yards(choice.leave_mean_m)}, {"sd", json_yards(choice.leave_sd_m)}}},
        {"landing_width_yd", landing_width},
    };
}

Json json_hole(const PlanView& view, std::size_t index) {
    const Hole& hole = view.course.holes.at(index);
    const HolePlan& plan = view.plan.holes.at(index);
    Json choices = Json::array();
    for (const TeeChoice& choice : plan.choices)
        choices.push_back(json_choice(view, choice));
    Json cautions = Json::array();
    for (const std::string& sentence : caution_words(view, index))
        cautions.push_back(sentence);
    return {
        {"ref", hole.ref},
        {"par", hole.par},
        {"length_yd", json_yards(hole.line.length())},
        {"tee", hole.tee},
        {"verdict", json_verdict(view, hole, plan)},
        {"choices", std::move(choices)},
        // Beyond the contract, for whoever wants it.
        {"name", hole.name},
        {"par_inferred", hole.par_inferred},
        {"cautions", std::move(cautions)},
    };
}

Json json_assumptions(const Assumptions& assumptions) {
    Json json = Json::object();
    for (const AssumptionEntry& entry : list_assumptions(assumptions)) {
        // Nine decimals take off the traces of converting units and nothing of the value.
        Json one{{"value", rounded(entry.value, 9)},
                 {"unit", entry.unit},
                 {"source", entry.source},
                 {"meaning", entry.meaning}};
        if (entry.overridden) one["overridden"] = true;
        json[entry.name] = std::move(one);
    }
    return json;
}

}  // namespace

std::string plan_json(const PlanView& view) {
    Json holes = Json::array();
    for (std::size_t i = 0; i < view.plan.holes.size(); ++i)
        holes.push_back(json_hole(view, i));
    Json warnings = Json::array();
    for (const std::string& warning : view.plan.warnings)
        warnings.push_back(warning);
    Json cautions = Json::array();
    for (const std::string& caution : standing_cautions())
        cautions.push_back(caution);

    const Json plan{
        {"format", "landwidth-plan/1"},
        {"course",
         {{"name", view.course.name},
          {"source", view.course.source},
          {"attribution", view.course.attribution}}},
        {"golfer", {{"name", view.golfer.name}}},
        {"field", view.plan.field == FieldKind::personal ? "personal" : "published"},
        {"assumptions", json_assumptions(view.plan.assumptions)},
        {"warnings", std::move(warnings)},
        {"holes", std::move(holes)},
        {"round",
         {{"par", view.plan.par},
          {"expected_strokes", rounded(view.plan.expected_strokes, stroke_decimals)},
          {"always_driver", json_optional(view.plan.always_driver, stroke_decimals)},
          {"never_driver", json_optional(view.plan.never_driver, stroke_decimals)}}},
        {"cautions", std::move(cautions)},
    };
    // Names of maps and profiles may hold bytes that are no UTF-8; the file is valid JSON all the same.
    return plan.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace landwidth
