#include "planner/reports/page_parts.hpp"

#include <fmt/format.h>

#include <cmath>

#include "planner/reports/display_length.hpp"
#include "planner/reports/html_table.hpp"
#include "planner/reports/html_text.hpp"
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

}  // namespace

std::string bullet_list(const std::vector<std::string>& sentences) {
    std::string html = "<ul>\n";
    for (const std::string& words : sentences)
        html += fmt::format("<li>{}</li>\n", sentence(words));
    return html + "</ul>\n";
}

std::string details(std::string_view summary, const std::string& inside) {
    return fmt::format("<details>\n<summary>{}</summary>\n{}</details>\n", summary, inside);
}

std::string patterns_details(const Golfer& golfer, DisplayUnits units) {
    HtmlTable table("", {{"Club"},
                         {"Carry", true},
                         {"Side", true},
                         {"Run", true},
                         {"Mishits", true},
                         {"Recorded shots", true}});
    table.set_caption(
        fmt::format("± is one standard deviation of the usual shot, from a good lie. Lengths in {}.",
                    units == DisplayUnits::yards ? "yards" : "metres"));
    for (const Club& club : golfer.clubs) {
        if (!club.pattern) continue;
        const ShotPattern& pattern = *club.pattern;
        table.add_row({isolated(name_text(club.name)),
                       fmt::format("{}\u00A0±\u00A0{}", length_number(pattern.usual.centre.carry_m, units),
                                   length_number(pattern.usual.carry_sd_m, units)),
                       side_cell(pattern.usual, units), length_number(pattern.run_m, units),
                       pattern.mishit ? sentence(share_text(pattern.mishit->share)) : "none",
                       pattern.shots == 0 ? std::string("preset") : fmt::format("{}", pattern.shots)});
    }
    return details("The shot patterns behind it", table.html());
}

std::string assumptions_table(const Assumptions& assumptions) {
    HtmlTable table("", {{"Name"}, {"Value", true}, {"Unit"}, {"Meaning"}, {"Source"}});
    for (const AssumptionEntry& entry : list_assumptions(assumptions)) {
        table.add_row({escaped(entry.name), fmt::format("{:g}", entry.value), escaped(entry.unit),
                       escaped(entry.meaning),
                       escaped(entry.source) + (entry.overridden ? " (changed)" : "")});
    }
    return table.html();
}

}  // namespace landwidth
