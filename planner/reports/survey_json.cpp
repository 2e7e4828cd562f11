#include <nlohmann/json.hpp>
#include <stdexcept>

#include "planner/reports/rounded.hpp"
#include "planner/reports/survey_reports.hpp"
#include "planner/reports/survey_words.hpp"

namespace landwidth {
namespace {

using Json = nlohmann::ordered_json;

double json_yards(double metres) {
    return rounded(to_yards(metres), 1);
}

double json_feet(double metres) {
    return rounded(metres / metres_per_foot, 1);
}

const char* lie_key(Lie lie) {
    switch (lie) {
        case Lie::teeing_area:
            return "teeing_area";
        case Lie::fairway:
            return "fairway";
        case Lie::rough:
            return "rough";
        case Lie::bunker:
            return "bunker";
        case Lie::trees:
            return "trees";
        case Lie::green:
            return "green";
        case Lie::penalty_yellow:
            return "penalty_yellow";
        case Lie::penalty_red:
            return "penalty_red";
        case Lie::out_of_bounds:
            return "out_of_bounds";
    }
    return "rough";
}

Json json_trouble(const std::optional<Trouble>& trouble) {
    if (!trouble) return nullptr;
    return {{"lie", lie_key(trouble->lie)}, {"distance_yd", json_yards(trouble->offset_m)}};
}

Json json_ground(const GroundAtStation& ground) {
    return {{"over_tee_ft", json_feet(ground.over_tee_m)},
            {"rise_along_percent", rounded(100.0 * ground.rise_along, 1)},
            {"rise_to_right_percent", rounded(100.0 * ground.rise_to_right, 1)}};
}

Json json_transect(const Transect& transect) {
    Json width = nullptr;
    Json edges = nullptr;
    if (transect.fairway) {
        width = json_yards(transect.fairway->width_m());
        edges = Json{{"left", json_yards(transect.fairway->left_m)},
                     {"right", json_yards(transect.fairway->right_m)}};
    }
    return {{"station_yd", json_yards(transect.station_m)},
            {"landing_width_yd", width},
            {"edges_yd", edges},
            {"trouble_left", json_trouble(transect.left)},
            {"trouble_right", json_trouble(transect.right)}};
}

Json json_hole(const Hole& hole, const HoleSurvey& survey) {
    Json stroke_index = nullptr;
    if (hole.stroke_index) stroke_index = *hole.stroke_index;
    Json transects = Json::array();
    for (std::size_t i = 0; i < survey.transects.size(); ++i) {
        Json transect = json_transect(survey.transects[i]);
        if (!survey.ground.empty()) transect["ground"] = json_ground(survey.ground[i]);
        transects.push_back(std::move(transect));
    }
    Json json{{"ref", hole.ref},
              {"name", hole.name},
              {"feature", hole.feature},
              {"par", hole.par},
              {"par_inferred", hole.par_inferred},
              {"stroke_index", stroke_index},
              {"length_yd", json_yards(survey.length_m)},
              {"tee", hole.tee}};
    if (!hole.mapped_ref.empty() && hole.mapped_ref != hole.ref) json["mapped_ref"] = hole.mapped_ref;
    if (survey.rise_m) json["rise_ft"] = json_feet(*survey.rise_m);
    json["transects"] = std::move(transects);
    return json;
}

Json json_finding(const Finding& finding) {
    Json place = nullptr;
    if (finding.place) place = Json{rounded(finding.place->lon_deg, 8), rounded(finding.place->lat_deg, 8)};
    return {{"severity", severity_name(finding.severity)},
            {"code", finding.code},
            {"feature", finding.feature},
            {"hole", finding.hole},
            {"place", place},
            {"message", finding.message},
            {"advice", finding.advice}};
}

}  // namespace

std::string survey_json(const Course& course, const std::vector<HoleSurvey>& surveys) {
    if (surveys.size() != course.holes.size())
        throw std::logic_error("a survey for every hole, and no other");
    Json holes = Json::array();
    for (std::size_t i = 0; i < surveys.size(); ++i)
        holes.push_back(json_hole(course.holes[i], surveys[i]));
    Json findings = Json::array();
    for (const Finding& finding : course.findings)
        findings.push_back(json_finding(finding));
    const SurveyTotals totals = survey_totals(course, surveys);
    const Json survey{
        {"format", "landwidth-survey/1"},
        {"course", {{"name", course.name}, {"source", course.source}, {"attribution", course.attribution}}},
        {"summary",
         {{"holes", totals.holes},
          {"par", totals.par},
          {"length_yd", json_yards(totals.length_m)},
          {"errors", totals.errors},
          {"warnings", totals.warnings},
          {"notes", totals.notes}}},
        {"holes", std::move(holes)},
        {"findings", std::move(findings)},
    };
    return survey.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace landwidth
