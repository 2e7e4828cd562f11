#include <fmt/format.h>

#include <cmath>
#include <stdexcept>

#include "planner/reports/display_length.hpp"
#include "planner/reports/survey_reports.hpp"
#include "planner/reports/survey_words.hpp"
#include "planner/reports/text_table.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

constexpr auto left = TextTable::Align::left;
constexpr auto right = TextTable::Align::right;

std::string counted(int count, std::string_view what) {
    return fmt::format("{} {}{}", count, what, count == 1 ? "" : "s");
}

std::string hole_title(const Hole& hole, double length_m, DisplayUnits units) {
    std::string words = fmt::format("Hole {}", hole.ref);
    if (!hole.name.empty()) words += fmt::format(", {}", name_text(hole.name));
    words += fmt::format(": par {}{}, {}", hole.par, hole.par_inferred ? " (inferred from the length)" : "",
                         length_text(length_m, units));
    if (!hole.tee.empty()) words += fmt::format(", tee {}", name_text(hole.tee));
    if (hole.stroke_index) words += fmt::format(", stroke index {}", *hole.stroke_index);
    return wrapped(words);
}

// An edge of the fairway, seen from the line of play.
std::string edge_text(double offset_m, DisplayUnits units) {
    const std::string number = length_number(std::abs(offset_m), units);
    if (number == "0") return "on the line";
    return fmt::format("{} {}", number, offset_m < 0.0 ? "left" : "right");
}

std::string trouble_text(const std::optional<Trouble>& trouble, DisplayUnits units) {
    if (!trouble) return "-";
    const std::string number = length_number(trouble->offset_m, units);
    if (number == "0") return fmt::format("on the line: {}", lie_name(trouble->lie));
    return fmt::format("{} {}", number, lie_name(trouble->lie));
}

std::string transect_table(const HoleSurvey& survey, DisplayUnits units) {
    TextTable table({{std::string(display_unit(units)), right},
                     {"landing width", right},
                     {"left edge", right},
                     {"right edge", right},
                     {"trouble left", left},
                     {"trouble right", left}});
    for (const Transect& transect : survey.transects) {
        const auto& fairway = transect.fairway;
        table.add_row({length_number(transect.station_m, units),
                       fairway ? length_number(fairway->width_m(), units) : "no fairway",
                       fairway ? edge_text(fairway->left_m, units) : "-",
                       fairway ? edge_text(fairway->right_m, units) : "-", trouble_text(transect.left, units),
                       trouble_text(transect.right, units)});
    }
    return table.text(report_width, 2);
}

// "12 ft above", "level".
std::string over_tee_text(double over_m, DisplayUnits units) {
    const std::string height = height_text(std::abs(over_m), units);
    if (height.starts_with("0 ")) return "level";
    return fmt::format("{} {}", height, over_m < 0.0 ? "below" : "above");
}

// A slope of less than half a percent is level to a golfer.
std::string slope_text(double rise, std::string_view when_above, std::string_view when_below) {
    const std::string percent = fmt::format("{:.0f}", std::abs(100.0 * rise));
    if (percent == "0") return "level";
    return fmt::format("{} % {}", percent, rise > 0.0 ? when_above : when_below);
}

std::string ground_text(const HoleSurvey& survey, DisplayUnits units) {
    if (!survey.rise_m) return {};
    const std::string rise = over_tee_text(*survey.rise_m, units);
    std::string text =
        fmt::format("  The pin lies {}.\n", rise == "level" ? "level with the tee" : rise + " the tee");
    if (survey.ground.empty()) return text;
    TextTable table({{std::string(display_unit(units)), right},
                     {"from the tee", left},
                     {"along the play", left},
                     {"across it", left}});
    for (std::size_t i = 0; i < survey.ground.size(); ++i) {
        const GroundAtStation& ground = survey.ground[i];
        table.add_row({length_number(survey.transects[i].station_m, units),
                       over_tee_text(ground.over_tee_m, units), slope_text(ground.rise_along, "up", "down"),
                       slope_text(ground.rise_to_right, "down to the left", "down to the right")});
    }
    return text + table.text(report_width, 2);
}

std::string place_text(LonLat place) {
    return fmt::format("{:.5f} {} {:.5f} {}", std::abs(place.lat_deg), place.lat_deg < 0.0 ? "S" : "N",
                       std::abs(place.lon_deg), place.lon_deg < 0.0 ? "W" : "E");
}

std::string finding_text(const Finding& finding) {
    std::string words = finding.code;
    if (!finding.hole.empty()) words += fmt::format(", hole {}", finding.hole);
    if (!finding.feature.empty()) words += fmt::format(", {}", finding.feature);
    if (finding.place) words += fmt::format(", at {}", place_text(*finding.place));
    words += fmt::format(": {}.", finding.message);
    std::string text = wrapped(words, fmt::format("{:<9}", severity_name(finding.severity)));
    if (!finding.advice.empty()) text += wrapped(fmt::format("To do: {}.", finding.advice), "         ");
    return text;
}

std::string summary(const SurveyTotals& totals, DisplayUnits units) {
    return wrapped(fmt::format("{}, par {}, {}; {}, {}, {}.", counted(totals.holes, "hole"), totals.par,
                               length_text(totals.length_m, units), counted(totals.errors, "error"),
                               counted(totals.warnings, "warning"), counted(totals.notes, "note")));
}

}  // namespace

SurveyTotals survey_totals(const Course& course, const std::vector<HoleSurvey>& surveys) {
    SurveyTotals totals;
    for (const Hole& hole : course.holes) {
        ++totals.holes;
        totals.par += hole.par;
    }
    for (const HoleSurvey& survey : surveys)
        totals.length_m += survey.length_m;
    for (const Finding& finding : course.findings) {
        switch (finding.severity) {
            case Severity::error:
                ++totals.errors;
                break;
            case Severity::warning:
                ++totals.warnings;
                break;
            case Severity::note:
                ++totals.notes;
                break;
        }
    }
    return totals;
}

std::string survey_text(const Course& course, const std::vector<HoleSurvey>& surveys, DisplayUnits units) {
    if (surveys.size() != course.holes.size())
        throw std::logic_error("a survey for every hole, and no other");
    std::string text = wrapped(
        fmt::format("Survey of {}", course.name.empty() ? name_text(course.source) : name_text(course.name)));
    text +=
        wrapped(fmt::format("Every 10 yd along the line of play, in {}: the landing width, the edges of the "
                            "fairway from the line, "
                            "and how far from the line trouble begins on either side.",
                            units == DisplayUnits::yards ? "yards" : "metres"));
    for (std::size_t i = 0; i < surveys.size(); ++i) {
        text += "\n" + hole_title(course.holes[i], surveys[i].length_m, units);
        text += surveys[i].transects.empty() ? fmt::format("  shorter than {}: nothing to measure\n",
                                                           length_text(Yards{150.0}.metres(), units))
                                             : transect_table(surveys[i], units);
        text += ground_text(surveys[i], units);
    }
    text += course.findings.empty() ? "\nNo findings.\n" : "\nFindings\n";
    for (const Finding& finding : course.findings)
        text += finding_text(finding);
    text += "\n" + summary(survey_totals(course, surveys), units);
    text += wrapped(fmt::format("Map: {}{}{}", course.source, course.attribution.empty() ? "" : ", ",
                                course.attribution));
    return text;
}

}  // namespace landwidth
