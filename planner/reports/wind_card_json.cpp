#include "planner/reports/json_assumptions.hpp"
#include "planner/reports/json_day.hpp"
#include "planner/reports/json_pieces.hpp"
#include "planner/reports/rounded.hpp"
#include "planner/reports/wind_card_words.hpp"

namespace landwidth {
namespace {

Json json_verdict(const WindCardView& view, const WindCardVerdict& verdict) {
    Json over = nullptr;
    if (verdict.over != verdict.club) over = view.golfer.clubs.at(verdict.over).name;
    return {{"club", wind_card_club(view, verdict)},
            {"aim_bearing_deg", rounded_direction(verdict.aim_bearing.degrees(), 2)},
            {"expected_strokes", rounded(verdict.expected_strokes, stroke_decimals)},
            {"margin_strokes", rounded(verdict.margin, stroke_decimals)},
            {"over", over},
            {"toss_up", verdict.toss_up},
            {"tail_wind_mph", json_mph(verdict.tail_wind_mps)},
            {"cross_wind_mph", json_mph(verdict.cross_wind_mps)},
            {"carry_yd", json_yards(verdict.carry_m)},
            {"drift_yd", json_yards(verdict.drift_m)}};
}

// Starts an object with where the wind is from.
Json json_from(std::size_t direction) {
    return {{"from", wind_card_direction(direction)},
            {"from_deg", rounded_direction(wind_card_bearing(direction).degrees(), 1)}};
}

Json json_hole(const WindCardView& view, std::size_t index) {
    const Hole& hole = view.course.holes.at(index);
    const WindCardHole& card = view.card.holes.at(index);
    Json winds = Json::array();
    for (std::size_t direction = 0; direction < wind_card_directions; ++direction) {
        Json wind = json_from(direction);
        wind.update(json_verdict(view, card.wind_from.at(direction)));
        winds.push_back(std::move(wind));
    }
    Json flips = Json::array();
    for (const std::size_t direction : card.flips)
        flips.push_back(wind_card_direction(direction));
    return {{"ref", hole.ref},
            {"par", hole.par},
            {"length_yd", json_yards(hole.line.length())},
            {"tee", hole.tee},
            {"still", json_verdict(view, card.still)},
            {"wind_from", std::move(winds)},
            {"flips", std::move(flips)}};
}

Json json_round(const WindCard& card) {
    Json winds = Json::array();
    for (std::size_t direction = 0; direction < wind_card_directions; ++direction) {
        Json wind = json_from(direction);
        wind["expected_strokes"] = rounded(card.strokes.at(direction), stroke_decimals);
        winds.push_back(std::move(wind));
    }
    return {{"still", rounded(card.still_strokes, stroke_decimals)}, {"wind_from", std::move(winds)}};
}

}  // namespace

std::string wind_card_json(const WindCardView& view) {
    const WindCard& card = view.card;
    Json holes = Json::array();
    for (std::size_t i = 0; i < card.holes.size(); ++i)
        holes.push_back(json_hole(view, i));
    Json gusts = nullptr;
    if (card.gusts_mps) gusts = json_mph(*card.gusts_mps);
    const Json json{
        {"format", "landwidth-wind-card/1"},
        {"course",
         {{"name", view.course.name},
          {"source", view.course.source},
          {"attribution", view.course.attribution}}},
        {"golfer", {{"name", view.golfer.name}}},
        {"wind", {{"speed_mph", json_mph(card.speed_mps)}, {"gusts_mph", gusts}}},
        {"day", json_day(card.conditions)},
        {"assumptions", json_assumptions(list_assumptions(card.assumptions))},
        {"warnings", card.warnings},
        {"holes", std::move(holes)},
        {"round", json_round(card)},
        {"cautions", wind_card_cautions()},
    };
    return json_text(json);
}

}  // namespace landwidth
