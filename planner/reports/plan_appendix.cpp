#include "planner/reports/plan_appendix.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "planner/reports/html_table.hpp"
#include "planner/reports/html_text.hpp"
#include "planner/reports/page_parts.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

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

std::string assumptions(const PlanView& view) {
    const char* field = view.plan.field == FieldKind::published
                            ? "the published tour table by lie and distance, adjusted to the handicap"
                            : "valued for this golfer's own clubs, shot by shot to the hole";
    return details("Assumptions", fmt::format("<p>Strokes from where the ball lies: {}.</p>\n{}", field,
                                              assumptions_table(view.plan.assumptions)));
}

}  // namespace

std::string plan_appendix(const PlanView& view) {
    return findings(view) + patterns_details(view.golfer, view.units) + assumptions(view);
}

}  // namespace landwidth
