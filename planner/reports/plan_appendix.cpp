#include "planner/reports/plan_appendix.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "planner/reports/display_length.hpp"
#include "planner/reports/html_table.hpp"
#include "planner/reports/html_text.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

std::string list_of(const std::vector<std::string>& sentences) {
    std::string html = "<ul>\n";
    for (const std::string& words : sentences)
        html += fmt::format("<li>{}</li>\n", sentence(words));
    return html + "</ul>\n";
}

std::string details(std::string_view summary, const std::string& inside) {
    return fmt::format("<details>\n<summary>{}</summary>\n{}</details>\n", summary, inside);
}

std::string findings_table(const std::vector<Finding>& findings, bool notes) {
    HtmlTable table("", {{"Weight"}, {"Hole"}, {"What the map has"}, {"What to do"}, {"Feature"}});
    for (const Finding& finding : findings) {
        if ((finding.severity == Severity::note) != notes) continue;
        table.add_row({std::string(severity_name(finding.severity)), isolated(name_text(finding.hole, 12)),
                       sentence(finding.message), sentence(finding.advice),
                       isolated(name_text(finding.feature, 60))});
    }
    return table.empty() ? std::string() : table.html();
}

std::string findings(const PlanView& view) {
    const std::vector<Finding>& all = view.course.findings;
    std::string html = findings_table(all, false);
    if (!html.empty()) {
        html = "<section class=\"part\">\n<h2>What is wrong with the map</h2>\n" + html + "</section>\n";
    }
    const auto notes =
        std::count_if(all.begin(), all.end(), [](const Finding& f) { return f.severity == Severity::note; });
    if (notes == 0) return html;
    return html +
           details(fmt::format("What was inferred from the map: {} {}", notes, notes == 1 ? "note" : "notes"),
                   findings_table(all, true));
}

std::string side_cell(const Spread& usual, DisplayUnits units) {
    const double side = usual.centre.side_m;
    const std::string size = length_number(std::abs(side), units);
    return fmt::format("{}{}\u00A0±\u00A0{}", size,
                       size == "0"  ? ""
                       : side < 0.0 ? " left"
                                    : " right",
                       length_number(usual.side_sd_m, units));
}

std::string patterns(const PlanView& view) {
    HtmlTable table("", {{"Club"},
                         {"Carry", true},
                         {"Side", true},
                         {"Run", true},
                         {"Mishits", true},
                         {"Recorded shots", true}});
    table.set_caption(
        fmt::format("± is one standard deviation of the usual shot, from a good lie. Lengths in {}.",
                    view.units == DisplayUnits::yards ? "yards" : "metres"));
    for (const Club& club : view.golfer.clubs) {
        if (!club.pattern) continue;
        const ShotPattern& pattern = *club.pattern;
        table.add_row(
            {isolated(name_text(club.name)),
             fmt::format("{}\u00A0±\u00A0{}", length_number(pattern.usual.centre.carry_m, view.units),
                         length_number(pattern.usual.carry_sd_m, view.units)),
             side_cell(pattern.usual, view.units), length_number(pattern.run_m, view.units),
             pattern.mishit ? sentence(share_text(pattern.mishit->share)) : "none",
             pattern.shots == 0 ? std::string("preset") : fmt::format("{}", pattern.shots)});
    }
    return details("The shot patterns behind the plan", table.html());
}

std::string assumptions(const PlanView& view) {
    HtmlTable table("", {{"Name"}, {"Value", true}, {"Unit"}, {"Meaning"}, {"Source"}});
    for (const AssumptionEntry& entry : list_assumptions(view.plan.assumptions)) {
        table.add_row({escaped(entry.name), fmt::format("{:g}", entry.value), escaped(entry.unit),
                       escaped(entry.meaning),
                       escaped(entry.source) + (entry.overridden ? " (changed for this plan)" : "")});
    }
    const char* field = view.plan.field == FieldKind::published
                            ? "the published tour table by lie and distance, adjusted to the handicap"
                            : "valued for this golfer's own clubs, shot by shot to the hole";
    return details("Assumptions",
                   fmt::format("<p>Strokes from where the ball lies: {}.</p>\n{}", field, table.html()));
}

}  // namespace

std::string plan_cautions(const PlanView& view) {
    std::string html = "<section class=\"part\">\n<h2>Before you swing</h2>\n" + list_of(standing_cautions());
    if (!view.plan.warnings.empty()) html += "<h2>Warnings</h2>\n" + list_of(view.plan.warnings);
    return html + "</section>\n";
}

std::string plan_appendix(const PlanView& view) {
    return findings(view) + patterns(view) + assumptions(view);
}

std::string page_footer(const PlanView& view) {
    std::string html = fmt::format("<footer>\n<p>Map: {}", isolated(name_text(view.course.source, 120)));
    if (!view.course.attribution.empty()) {
        html += fmt::format(". {}", isolated(name_text(view.course.attribution, 400)));
    }
    return html + ".</p>\n<p>Made with Landwidth.</p>\n</footer>\n";
}

}  // namespace landwidth
