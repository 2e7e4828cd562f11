#include <nlohmann/json.hpp>

#include "geometry/units.hpp"
#include "planner/reports/build_reports.hpp"
#include "planner/reports/build_words.hpp"
#include "planner/reports/display_length.hpp"
#include "planner/reports/json_assumptions.hpp"
#include "planner/reports/rounded.hpp"

namespace landwidth {
namespace {

using Json = nlohmann::ordered_json;

double grams(double kg) {
    return rounded(kg / kilograms_per_gram, 2);
}

double inches(double m) {
    return rounded(m / metres_per_inch, 3);
}

Json json_weights(const ClubWeights& weights) {
    const auto letters = swing_weight_text(weights.swing_weight);
    return {{"total_g", grams(weights.total_kg)},
            {"balance_from_butt_in", inches(weights.balance_m)},
            {"swing_weight", letters ? Json(*letters) : Json(nullptr)},
            {"swing_weight_in_oz", rounded(weights.swing_weight.inch_ounces(), 2)}};
}

Json json_parts(const ClubParts& parts) {
    Json json{{"length_in", inches(parts.length_m)},
              {"head_g", grams(parts.head_kg)},
              {"head_centre_from_end_in", inches(parts.head_centre_from_end_m)},
              {"shaft_g", grams(parts.shaft_kg)},
              {"shaft_length_in", inches(parts.shaft_length_m)},
              {"shaft_balance_share", rounded(parts.shaft_balance_share, 4)},
              {"grip_g", grams(parts.grip_kg)},
              {"grip_balance_in", inches(parts.grip_balance_m)}};
    json.update(json_weights(weights_of(parts)));
    return json;
}

Json json_change(const BuildView& view) {
    const BuildChange& change = *view.parts;
    Json json{{"head_centre", view.head_centre_measured ? "measured" : "assumed"},
              {"as_it_is", json_parts(change.before)}};
    if (!view.wishes.any()) return json;
    json["changed"] = json_parts(change.after);
    json["changed_points"] = rounded(change.points, 2);
    if (change.thumb_points) json["rule_of_thumb_points"] = rounded(*change.thumb_points, 2);
    if (view.wishes.head_kg) return json;
    json["target_swing_weight"] = swing_weight_words(change.target);
    json["head_for_target"] = change.restored ? json_parts(*change.restored) : Json(nullptr);
    return json;
}

Json json_range(Range range, double unit, int decimals) {
    return Json::array({rounded(range.low / unit, decimals), rounded(range.high / unit, decimals)});
}

Json json_flight(const BuildView& view) {
    const LengthChange& flight = *view.flight;
    const double mph = metres_per_second_per_mph;
    const double length = metres_of_display(1.0, view.units);
    const std::string suffix = view.units == DisplayUnits::yards ? "_yd" : "_m";
    Json json{{"smash", json_range(flight.smash, 1.0, 3)},
              {"smash_source", flight.own_smash ? "the golfer's own" : "assumption"},
              {"club_speed_change_mph", json_range(flight.club_speed_mps, mph, 2)},
              {"ball_speed_change_mph", json_range(flight.ball_speed_mps, mph, 2)},
              {"carry_change" + suffix, json_range(flight.carry_m, length, 1)}};
    if (flight.club_speed_after_mps)
        json["club_speed_mph"] = json_range(*flight.club_speed_after_mps, mph, 2);
    if (flight.ball_speed_after_mps)
        json["ball_speed_mph"] = json_range(*flight.ball_speed_after_mps, mph, 2);
    if (flight.carry_after_m) json["carry" + suffix] = json_range(*flight.carry_after_m, length, 1);
    json["notes"] = trial_words();
    return json;
}

Json json_length(const BuildView& view) {
    const double judged_m = view.wishes.length_m.value_or(*view.length_m);
    Json json{{"length_in", inches(judged_m)}, {"verdicts", Json::array()}, {"rules", length_rules_words()}};
    for (const LengthVerdict verdict : view.verdicts)
        json["verdicts"].push_back(length_verdict_words(verdict, judged_m));
    return json;
}

}  // namespace

std::string build_json(const BuildView& view) {
    Json json{{"format", "landwidth-build/1"},
              {"club", {{"name", view.club}, {"kind", std::string(club_kind_name(view.kind))}}}};
    if (view.length_m) json["club"]["length_in"] = inches(*view.length_m);
    if (view.weighed) json["weighed"] = json_weights(*view.weighed);
    if (view.parts) json["build"] = json_change(view);
    if (view.flight) json["flight"] = json_flight(view);
    if (view.length_m) json["length"] = json_length(view);
    json["cautions"] = build_cautions();
    json["assumptions"] = json_assumptions(view.assumptions);
    return json.dump(2) + "\n";
}

}  // namespace landwidth
