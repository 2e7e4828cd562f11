#include <nlohmann/json.hpp>

#include "geometry/units.hpp"
#include "planner/reports/build_figures.hpp"
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
    json["inertia_about_butt_kg_cm2"] = rounded(inertia_about_butt(parts) / kg_m2_per_kg_cm2, 1);
    return json;
}

Json json_range(Range range, double unit, int decimals) {
    return Json::array({rounded(range.low / unit, decimals), rounded(range.high / unit, decimals)});
}

// As the text shows it, to the last digit.
Json json_range(Range shown) {
    return Json::array({shown.low, shown.high});
}

Json json_head(const HeadChange& head) {
    Json json{{"more_g", grams(head.more_kg)},
              {"points", rounded(head.points, 2)},
              {"inertia_kg_cm2", rounded(head.inertia_kg_m2 / kg_m2_per_kg_cm2, 1)}};
    json["club_speed_change_mph"] =
        head.club_speed_mps
            ? json_range(
                  shown_range(*head.club_speed_mps, {}, metres_per_second_per_mph, speed_decimals).change)
            : Json(nullptr);
    json["ball_speed_share_at_same_club_speed"] = rounded(head.ball_speed_share, 5);
    return json;
}

Json json_found(const std::optional<ClubParts>& found, const std::optional<HeadChange>& head) {
    if (!found) return nullptr;
    Json json = json_parts(*found);
    if (head) json["head_change"] = json_head(*head);
    return json;
}

Json json_change(const BuildView& view) {
    const BuildChange& change = *view.parts;
    Json json{{"head_centre", view.head_centre_measured ? "measured" : "assumed"},
              {"as_it_is", json_parts(change.before)}};
    if (view.head_step) json["head_step"] = json_head(*view.head_step);
    if (!view.wishes.any()) return json;
    json["changed"] = json_parts(change.after);
    // Differences of the figures as they are shown.
    json["changed_points"] = shown_points_more(change.before, change.after);
    json["changed_inertia_kg_cm2"] = shown_inertia_more(change.before, change.after);
    if (change.thumb_points) json["rule_of_thumb_points"] = rounded(*change.thumb_points, 2);
    if (view.wishes.head_kg) return json;
    json["target_swing_weight"] = swing_weight_words(change.target);
    json["head_for_target"] = json_found(change.restored, view.restored_head);
    json["target_inertia_kg_cm2"] = rounded(change.target_inertia_kg_m2 / kg_m2_per_kg_cm2, 1);
    json["head_for_target_inertia"] = json_found(change.restored_inertia, view.restored_inertia_head);
    return json;
}

Json json_flight(const BuildView& view) {
    const LengthChange& flight = *view.flight;
    const double mph = metres_per_second_per_mph;
    const double length = metres_of_display(1.0, view.units);
    const std::string suffix = view.units == DisplayUnits::yards ? "_yd" : "_m";
    const ShownRange club =
        shown_range(flight.club_speed_mps, view.known.club_speed_mps, mph, speed_decimals);
    const ShownRange ball =
        shown_range(flight.ball_speed_mps, view.known.ball_speed_mps, mph, speed_decimals);
    const ShownRange carry = shown_range(flight.carry_m, view.known.carry_m, length, carry_decimals);
    Json json{{"smash", json_range(flight.smash, 1.0, 3)},
              {"smash_source", flight.own_smash ? "the golfer's own" : "assumption"},
              {"club_speed_change_mph", json_range(club.change)},
              {"ball_speed_change_mph", json_range(ball.change)},
              {"carry_change" + suffix, json_range(carry.change)}};
    if (club.then) json["club_speed_mph"] = json_range(*club.then);
    if (ball.then) json["ball_speed_mph"] = json_range(*ball.then);
    if (carry.then) json["carry" + suffix] = json_range(*carry.then);
    json["notes"] = trial_words();
    return json;
}

Json json_silence(const BuildView& view) {
    return {
        {"silent", *view.silence == LengthSilence::change_too_large ? "change too large" : "no such length"},
        {"reach_in", inches(view.length_reach_m)},
        {"built_in", json_range(built_lengths(view.kind), metres_per_inch, 2)}};
}

Json json_lie(const LieChange& lie) {
    const auto degrees = [](double rad) { return rounded(rad / radians_per_degree, 2); };
    Json json{{"as_built_deg", degrees(lie.as_built_rad)}};
    if (lie.flat_sole_rad) {
        json["flat_sole_deg"] = degrees(*lie.flat_sole_rad);
        json["plays_upright_deg"] = degrees(*lie.plays_upright_rad);
    }
    if (lie.practice_rad)
        json["plays_upright_by_practice_deg"] = json_range(*lie.practice_rad, radians_per_degree, 2);
    if (lie.face_off_line_rad) json["face_to_golfers_side_deg"] = degrees(*lie.face_off_line_rad);
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
    if (view.silence) json["flight"] = json_silence(view);
    if (view.lie) json["lie"] = json_lie(*view.lie);
    if (view.length_m) json["length"] = json_length(view);
    json["cautions"] = build_cautions();
    json["assumptions"] = json_assumptions(view.assumptions);
    return json.dump(2) + "\n";
}

}  // namespace landwidth
