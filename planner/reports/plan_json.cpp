#include <algorithm>
#include <array>
#include <cmath>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

#include "planner/reports/day_words.hpp"
#include "planner/reports/json_assumptions.hpp"
#include "planner/reports/json_day.hpp"
#include "planner/reports/json_pieces.hpp"
#include "planner/reports/next_shot_words.hpp"
#include "planner/reports/plan_reports.hpp"
#include "planner/reports/rounded.hpp"
#include "planner/reports/score_words.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

std::string score_key(ScoreToPar score) {
    std::string key(score_name(score));
    std::replace(key.begin(), key.end(), ' ', '_');
    return key;
}

// From the fewest strokes that ever happen; the scores to par are sums of the rounded shares of strokes, so
// that the two agree to the last digit.
Json json_score(const ScoreDistribution& score, int par) {
    const ScoreDistribution counted{parts_of_shares(score.shares)};
    Json strokes = Json::object();
    const std::size_t last = counted.shares.size() - 1;
    for (std::size_t n = 0; n <= last; ++n) {
        if (strokes.empty() && counted.shares[n] == 0.0) continue;
        strokes[std::to_string(n) + (n == last ? "+" : "")] = counted.shares[n] / share_parts + 0.0;
    }
    Json to_par = Json::object();
    for (const ScoreToPar name : all_scores_to_par)
        to_par[score_key(name)] = share_of(counted, name, par) / share_parts + 0.0;
    return {{"strokes", std::move(strokes)}, {"to_par", std::move(to_par)}};
}

const char* value_key(AimFor aim) {
    switch (aim) {
        case AimFor::strokes:
            break;
        case AimFor::stableford:
            return "expected_points";
        case AimFor::par_or_better:
            return "par_or_better";
    }
    return "expected_strokes";
}

// The margin in strokes stays in the contract: null when it is in another unit, which has a key of its own.
void add_margin(Json& json, AimFor aim, const std::optional<double>& margin) {
    const Json value = json_optional(margin, stroke_decimals);
    json["margin_strokes"] = aim == AimFor::strokes ? value : Json(nullptr);
    if (aim == AimFor::stableford) json["margin_points"] = value;
    if (aim == AimFor::par_or_better) json["margin_share"] = value;
}

// Today's values stand beside those at which the verdict flips; null is what does not flip within the range
// searched, or is not known today.
Json json_break_evens(const std::optional<BreakEvens>& found, const Json& over) {
    if (!found) return nullptr;
    const auto flip = [](const std::optional<BreakEven>& value) -> Json {
        if (!value || !value->flips_at_m) return nullptr;
        return json_yards(*value->flips_at_m);
    };
    Json landing_today = nullptr;
    if (found->landing_width) landing_today = json_yards(found->landing_width->today_m);
    Json tail_wind = nullptr;
    if (found->wind && found->wind->flips_at_mps)
        tail_wind = rounded(*found->wind->flips_at_mps / metres_per_second_per_mph, 1);
    return {
        {"over", over},
        {"landing_width_yd", flip(found->landing_width)},
        {"side_sd_yd", flip(found->side_sd)},
        {"carry_yd", flip(found->carry)},
        {"tail_wind_mph", tail_wind},
        {"today",
         {{"landing_width_yd", landing_today},
          {"side_sd_yd", json_yards(found->side_sd.today_m)},
          {"carry_yd", json_yards(found->carry.today_m)}}},
    };
}

Json json_verdict(const PlanView& view, const Hole& hole, const HolePlan& plan) {
    const TeeChoice& best = plan.choices.at(plan.verdict.best);
    Json over = nullptr;
    if (plan.verdict.over) over = view.golfer.clubs.at(plan.choices.at(*plan.verdict.over).club).name;
    const AimFor aim = view.plan.aim_for;
    Json json{
        {"club", view.golfer.clubs.at(best.club).name},
        {"aim_bearing_deg", rounded_direction(best.aim_bearing.degrees(), 2)},
        {"aim_point", json_place(hole.frame, best.aim_point)},
        {"aim_text", aim_words(best, DisplayUnits::yards)},
        {"expected_strokes", rounded(best.expected_strokes, stroke_decimals)},
    };
    if (aim != AimFor::strokes) json[value_key(aim)] = rounded(best.aim_value, stroke_decimals);
    add_margin(json, aim, plan.verdict.margin);
    json["over"] = over;
    json["confidence"] = rounded(plan.verdict.confidence, 4);
    json["toss_up"] = plan.verdict.toss_up;
    json["toss_up_because"] = nullptr;
    if (plan.verdict.toss_up) json["toss_up_because"] = plan.verdict.alike ? "alike" : "not-known";
    json["break_evens"] = json_break_evens(plan.break_evens, over);
    return json;
}

// Beside the reference day too, where they tell what the profile's shots do.
void add_flight(Json& json, const ShotOfTheDay& shot) {
    json["carry_yd"] = json_yards(shot.carry_m);
    json["drift_yd"] = json_yards(shot.drift_m);
    json["run_yd"] = json_yards(shot.run_m);
    json["peak_yd"] = json_yards(shot.peak_m);
    json["landing_angle_deg"] = rounded(shot.landing_angle_rad / radians_per_degree, 1);
    json["stopped_share"] = rounded(shot.stopped_share, 4);
}

Json json_choice(const PlanView& view, const Hole& hole, const TeeChoice& choice) {
    Json landing_width = nullptr;
    if (choice.landing) landing_width = json_yards(choice.landing->width_m());
    const AimFor aim = view.plan.aim_for;
    Json json{
        {"club", view.golfer.clubs.at(choice.club).name},
        {"aim_bearing_deg", rounded_direction(choice.aim_bearing.degrees(), 2)},
        {"expected_strokes", rounded(choice.expected_strokes, stroke_decimals)},
    };
    if (aim != AimFor::strokes) json[value_key(aim)] = rounded(choice.aim_value, stroke_decimals);
    // Two decimals more than the strokes: it is there to be compared with margins.
    json["standard_error"] = rounded(choice.standard_error, 6);
    json["lies"] = json_shares(choice.lies);
    json["leave_yd"] = {{"mean", json_yards(choice.leave_mean_m)}, {"sd", json_yards(choice.leave_sd_m)}};
    json["landing_width_yd"] = landing_width;
    add_flight(json, choice.day);
    if (!choice.score.empty()) json["score"] = json_score(choice.score, hole.par);
    return json;
}

Json json_alternative(const PlanView& view, const std::optional<PlannedShot::Alternative>& other) {
    if (!other) return nullptr;
    return {
        {"club", view.golfer.clubs.at(other->club).name},    {"swing", rounded(other->swing, 3)},
        {"purpose", purpose_name(other->purpose)},           {"leave_yd", json_yards(other->leave_m)},
        {"margin", rounded(other->margin, stroke_decimals)},
    };
}

Json json_next_shot(const PlanView& view, const Hole& hole, const PlannedShot& shot) {
    const Bearing aim = hole.frame.true_bearing(shot.from, shot.aim_point);
    return {
        {"club", view.golfer.clubs.at(shot.club).name},
        {"swing", rounded(shot.swing, 3)},
        {"purpose", purpose_name(shot.purpose)},
        {"from", json_place(hole.frame, shot.from)},
        {"lie", json_lie(shot.lie)},
        {"to_hole_yd", json_yards(shot.to_hole_m)},
        {"aim_bearing_deg", rounded_direction(aim.degrees(), 2)},
        {"aim_point", json_place(hole.frame, shot.aim_point)},
        {"leave", json_place(hole.frame, shot.leave)},
        {"leave_lie", json_lie(shot.leave_lie)},
        {"leave_yd", json_yards(shot.leave_m)},
        {value_key(view.plan.aim_for), rounded(shot.aim_value, stroke_decimals)},
        {"alternative", json_alternative(view, shot.alternative)},
    };
}

Json json_hole(const PlanView& view, std::size_t index) {
    const Hole& hole = view.course.holes.at(index);
    const HolePlan& plan = view.plan.holes.at(index);
    Json choices = Json::array();
    for (const TeeChoice& choice : plan.choices)
        choices.push_back(json_choice(view, hole, choice));
    Json cautions = Json::array();
    for (const std::string& sentence : caution_words(view, index))
        cautions.push_back(sentence);
    Json json{
        {"ref", hole.ref},
        {"par", hole.par},
        {"length_yd", json_yards(hole.line.length())},
        {"tee", hole.tee},
        {"plays_as_yd", json_yards(plan.plays_as_m)},
        {"rise_yd", json_yards(plan.rise_m)},
        {"tail_wind_mph", json_mph(plan.tail_wind_mps)},
        {"cross_wind_mph", json_mph(plan.cross_wind_mps)},
        {"verdict", json_verdict(view, hole, plan)},
        {"choices", std::move(choices)},
    };
    if (view.plan.field == FieldKind::personal) {
        Json next = Json::array();
        for (const PlannedShot& shot : plan.next)
            next.push_back(json_next_shot(view, hole, shot));
        json["next"] = std::move(next);
    }
    if (view.plan.aim_for == AimFor::stableford) json["strokes_received"] = plan.strokes_received;
    // Beyond the contract, for whoever wants it.
    json["name"] = hole.name;
    json["par_inferred"] = hole.par_inferred;
    json["cautions"] = std::move(cautions);
    return json;
}

Json json_round(const RoundPlan& plan) {
    Json json{{"par", plan.par}, {"expected_strokes", rounded(plan.expected_strokes, stroke_decimals)}};
    const double aim_value = rounded(plan.aim_value, stroke_decimals);
    if (plan.aim_for == AimFor::stableford) json["expected_points"] = aim_value;
    if (plan.aim_for == AimFor::par_or_better) json["holes_par_or_better"] = aim_value;
    json["always_driver"] = json_optional(plan.always_driver, stroke_decimals);
    json["never_driver"] = json_optional(plan.never_driver, stroke_decimals);
    if (!plan.score.empty()) {
        json["score"] = {{"mean", rounded(plan.score.mean(), stroke_decimals)},
                         {"sd", rounded(std::sqrt(plan.score.variance()), stroke_decimals)},
                         {"p10", strokes_within(plan.score, 0.1)},
                         {"p50", strokes_within(plan.score, 0.5)},
                         {"p90", strokes_within(plan.score, 0.9)}};
    }
    return json;
}

const char* aim_key(AimFor aim) {
    switch (aim) {
        case AimFor::strokes:
            break;
        case AimFor::stableford:
            return "stableford";
        case AimFor::par_or_better:
            return "par-or-better";
    }
    return "strokes";
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
    for (const std::string& caution :
         standing_cautions(setting_words(view.plan.conditions, view.plan.has_heights)))
        cautions.push_back(caution);

    const Json plan{
        {"format", "landwidth-plan/1"},
        {"course",
         {{"name", view.course.name},
          {"source", view.course.source},
          {"attribution", view.course.attribution}}},
        {"golfer", {{"name", view.golfer.name}}},
        {"field", view.plan.field == FieldKind::personal ? "personal" : "published"},
        {"aim_for", aim_key(view.plan.aim_for)},
        {"day", json_day(view.plan.conditions)},
        {"has_heights", view.plan.has_heights},
        {"assumptions", json_assumptions(list_assumptions(view.plan.assumptions))},
        {"warnings", std::move(warnings)},
        {"holes", std::move(holes)},
        {"round", json_round(view.plan)},
        {"cautions", std::move(cautions)},
    };
    return json_text(plan);
}

}  // namespace landwidth
