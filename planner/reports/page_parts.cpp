#include "planner/reports/page_parts.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "planner/reports/display_length.hpp"
#include "planner/reports/html_table.hpp"
#include "planner/reports/html_text.hpp"
#include "planner/reports/page_style.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

std::string side_cell(const Spread& usual, DisplayUnits units) {
    const double side = usual.centre.side_m;
    const std::string size = length_number(std::abs(side), units);
    return fmt::format("{}{}\u00A0±\u00A0{}", size,
                       size == "0"  ? ""
                       : side < 0.0 ? " left"
                                    : " right",
                       length_number(usual.side_sd_m, units));
}

std::string map_words(const Course& course) {
    std::string html = isolated(name_text(course.source, 120));
    if (!course.attribution.empty())
        html += fmt::format(". {}", isolated(name_text(course.attribution, 400)));
    return html;
}

}  // namespace

std::string page_head(std::string_view title, std::string_view more_style) {
    return fmt::format(
        "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n"
        "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n<title>{}</title>\n"
        "<style>{}{}</style>\n</head>\n",
        escaped(title), page_style(), more_style);
}

std::string bullet_list(const std::vector<std::string>& sentences) {
    std::string html = "<ul>\n";
    for (const std::string& words : sentences)
        html += fmt::format("<li>{}</li>\n", sentence(words));
    return html + "</ul>\n";
}

std::string details(std::string_view summary, const std::string& inside) {
    return fmt::format("<details>\n<summary>{}</summary>\n{}</details>\n", summary, inside);
}

std::string cautions_section(const std::vector<std::string>& warnings, std::string_view setting) {
    std::string html = "<section class=\"part\">\n<h2>Before you swing</h2>\n";
    html += bullet_list(standing_cautions(setting));
    if (!warnings.empty()) html += "<h2>Warnings</h2>\n" + bullet_list(warnings);
    return html + "</section>\n";
}

std::string pattern_table(const std::vector<const Club*>& clubs, DisplayUnits units,
                          const std::vector<const Club*>& supposed) {
    HtmlTable table("pattern-list", {{"Club"},
                                     {"Carry", true},
                                     {"Side", true},
                                     {"Run", true},
                                     {"Mishits", true},
                                     {"Recorded shots", true}});
    table.set_caption(
        fmt::format("± is one standard deviation of the usual shot, from a good lie. Lengths in {}.",
                    units == DisplayUnits::yards ? "yards" : "metres"));
    for (const Club* club : clubs) {
        if (!club->pattern) continue;
        const ShotPattern& pattern = *club->pattern;
        const bool is_supposed = std::ranges::find(supposed, club) != supposed.end();
        table.add_row({isolated(name_text(club->name)),
                       fmt::format("{}\u00A0±\u00A0{}", length_number(pattern.usual.centre.carry_m, units),
                                   length_number(pattern.usual.carry_sd_m, units)),
                       side_cell(pattern.usual, units), length_number(pattern.run_m, units),
                       pattern.mishit ? sentence(share_text(pattern.mishit->share)) : "none",
                       is_supposed          ? "none: supposed, not hit"
                       : pattern.shots == 0 ? "none: typical, not measured"
                                            : std::to_string(pattern.shots)});
    }
    return table.html();
}

std::string patterns_details(const Golfer& golfer, DisplayUnits units) {
    std::vector<const Club*> clubs;
    for (const Club& club : golfer.clubs)
        clubs.push_back(&club);
    return details("The shot patterns behind it", pattern_table(clubs, units));
}

std::string assumptions_table(const Assumptions& assumptions) {
    return assumptions_table(list_assumptions(assumptions));
}

std::string assumptions_table(const std::vector<AssumptionEntry>& entries) {
    HtmlTable table("assumptions", {{"Name"}, {"Value", true}, {"Unit"}, {"Meaning"}, {"Source"}});
    for (const AssumptionEntry& entry : entries) {
        table.add_row({escaped(entry.name), fmt::format("{:g}", entry.value), escaped(entry.unit),
                       escaped(entry.meaning),
                       escaped(entry.source) + (entry.overridden ? " (changed)" : "")});
    }
    return table.html();
}

std::string page_footer(const std::vector<const Course*>& courses) {
    std::string html = "<footer>\n";
    for (const Course* course : courses)
        html += fmt::format("<p>Map: {}.</p>\n", map_words(*course));
    return html + "<p>Made with Landwidth.</p>\n</footer>\n";
}

}  // namespace landwidth
