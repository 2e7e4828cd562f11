#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>

#include "planner/reports/display_length.hpp"
#include "planner/reports/hole_map.hpp"
#include "planner/reports/hole_section.hpp"
#include "planner/reports/html_table.hpp"
#include "planner/reports/html_text.hpp"
#include "planner/reports/page_style.hpp"
#include "planner/reports/plan_appendix.hpp"
#include "planner/reports/plan_reports.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

bool plays_driver(const PlanView& view, const TeeChoice& choice) {
    return view.golfer.clubs.at(choice.club).kind == ClubKind::driver;
}

const TeeChoice& best_of(const HolePlan& hole) {
    return hole.choices.at(hole.verdict.best);
}

std::string hole_word(std::size_t count) {
    return count == 1 ? "1 hole" : fmt::format("{} holes", count);
}

std::string title_of(const PlanView& view) {
    return view.course.name.empty() ? "Tee shot plan" : "Tee shot plan: " + name_text(view.course.name, 80);
}

std::string head(const PlanView& view) {
    return fmt::format(
        "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n"
        "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n<title>{}</title>\n"
        "<style>{}{}</style>\n</head>\n",
        escaped(title_of(view)), page_style(), map_style());
}

std::string page_header(const PlanView& view) {
    const std::string course =
        view.course.name.empty() ? std::string("Unnamed course") : name_text(view.course.name, 120);
    return fmt::format(
        "<header>\n<h1>{}</h1>\n<p class=\"sub\">Tee shot plan for {}, handicap index {:.1f}, {}-handed. {}, "
        "par {}. "
        "Lengths in {}.</p>\n</header>\n",
        isolated(course), isolated(name_text(view.golfer.name, 80)), view.golfer.handicap_index,
        view.golfer.hand == Hand::left ? "left" : "right", hole_word(view.plan.holes.size()), view.plan.par,
        view.units == DisplayUnits::yards ? "yards" : "metres");
}

std::string difference_text(double strokes) {
    return std::abs(strokes) < 0.005 ? std::string("the same") : fmt::format("{:+.2f}", strokes);
}

std::string totals(const PlanView& view) {
    const RoundPlan& plan = view.plan;
    HtmlTable table("totals", {{"Off the tee"}, {"Strokes", true}, {"Against the plan", true}});
    table.set_caption("Expected strokes for the round");
    table.add_row({"This plan", fmt::format("{:.1f}", plan.expected_strokes), ""}, "chosen");
    const auto add = [&](const char* name, const std::optional<double>& strokes) {
        if (!strokes) return;
        table.add_row(
            {name, fmt::format("{:.1f}", *strokes), difference_text(*strokes - plan.expected_strokes)});
    };
    add("Driver on every par 4 and longer", plan.always_driver);
    add("Never the driver", plan.never_driver);
    return table.html();
}

// Which clubs the plan plays off the tees of par 4 and longer, the commonest first.
std::string club_tally(const PlanView& view) {
    std::map<std::size_t, std::size_t> holes_of_club;
    for (std::size_t i = 0; i < view.plan.holes.size(); ++i) {
        if (view.course.holes.at(i).par < 4) continue;
        ++holes_of_club[best_of(view.plan.holes[i]).club];
    }
    if (holes_of_club.empty()) return {};
    std::vector<std::pair<std::size_t, std::size_t>> order(holes_of_club.begin(), holes_of_club.end());
    std::stable_sort(order.begin(), order.end(),
                     [](const auto& a, const auto& b) { return a.second > b.second; });
    std::string html = "<p>Clubs of this plan on the tees of par 4 and longer: ";
    for (std::size_t i = 0; i < order.size(); ++i) {
        html += fmt::format("{}{} on {}", i == 0 ? "" : ", ",
                            isolated(name_text(view.golfer.clubs.at(order[i].first).name)),
                            hole_word(order[i].second));
    }
    return html + ".</p>\n";
}

std::string not_driver_holes(const PlanView& view) {
    std::string items;
    for (std::size_t i = 0; i < view.plan.holes.size(); ++i) {
        const HolePlan& plan = view.plan.holes[i];
        if (view.course.holes.at(i).par < 4 || plays_driver(view, best_of(plan))) continue;
        std::string why = why_not_driver_words(view, i);
        if (why.empty()) why = "The driver was not among the clubs compared here.";
        const bool tossed = plan.verdict.toss_up && plan.verdict.over &&
                            plays_driver(view, plan.choices.at(*plan.verdict.over));
        items +=
            fmt::format("<li><a href=\"#hole-{}\">Hole {}</a>: {}. {}{}</li>\n", i + 1,
                        isolated(name_text(view.course.holes[i].ref, 20)),
                        isolated(name_text(view.golfer.clubs.at(best_of(plan).club).name)), sentence(why),
                        tossed ? " The two are within the noise: <em>a toss-up</em>." : "");
    }
    if (items.empty()) return "<p>No hole of par 4 or longer asks for another club than the driver.</p>\n";
    return "<h2>Not driver holes</h2>\n<ul>\n" + items + "</ul>\n";
}

bool has_driver(const PlanView& view) {
    return std::any_of(view.golfer.clubs.begin(), view.golfer.clubs.end(), [](const Club& club) {
        return club.kind == ClubKind::driver && club.pattern.has_value();
    });
}

std::string summary(const PlanView& view) {
    std::string html =
        "<section class=\"part\" aria-label=\"The round\">\n" + totals(view) + club_tally(view);
    html += has_driver(view) ? not_driver_holes(view) : "<p>There is no driver in this bag.</p>\n";
    return html + "</section>\n";
}

std::string fairway_cell(const Hole& hole, const TeeChoice& best) {
    if (hole.par == 3) return share_text(best.lies[index_of(Lie::green)]) + " green";
    const std::string fairway = share_text(best.lies[index_of(Lie::fairway)]);
    const double green = best.lies[index_of(Lie::green)];
    // A green that can be driven is half of the story.
    return green < 0.05 ? fairway : fmt::format("{}, {} green", fairway, share_text(green));
}

std::string margin_text(double strokes) {
    return strokes < 0.005 ? "&lt;0.01" : fmt::format("{:.2f}", strokes);
}

std::string club_cell(const PlanView& view, const TeeChoice& choice) {
    return isolated(name_text(view.golfer.clubs.at(choice.club).name, 16));
}

std::string margin_cell(const PlanView& view, const HolePlan& plan) {
    if (!plan.verdict.over || !plan.verdict.margin) return "only club";
    return fmt::format("{} over {}", margin_text(*plan.verdict.margin),
                       club_cell(view, plan.choices.at(*plan.verdict.over)));
}

std::string certainty_cell(const HolePlan& plan) {
    if (!plan.verdict.over) return {};
    const std::string share = sentence(share_text(plan.verdict.confidence));
    return plan.verdict.toss_up ? fmt::format("<span class=\"tossup\">toss-up</span> ({})", share) : share;
}

std::vector<std::string> round_row(const PlanView& view, std::size_t i) {
    const Hole& hole = view.course.holes.at(i);
    const HolePlan& plan = view.plan.holes.at(i);
    const TeeChoice& best = best_of(plan);
    return {fmt::format("<a href=\"#hole-{}\">{}</a>", i + 1, isolated(name_text(hole.ref, 12))),
            fmt::format("{}", hole.par),
            length_number(hole.line.length(), view.units),
            isolated(name_text(hole.tee, 16)),
            club_cell(view, best),
            short_aim_words(best, view.units),
            sentence(fairway_cell(hole, best)),
            sentence(share_text(trouble_share(best))),
            fmt::format("{:.2f}", best.expected_strokes),
            margin_cell(view, plan),
            certainty_cell(plan)};
}

std::string round_table(const PlanView& view) {
    HtmlTable table("round", {{"Hole"},
                              {"Par", true},
                              {fmt::format("Length, {}", display_unit(view.units)), true},
                              {"Tee"},
                              {"Club"},
                              {"Aim"},
                              {"Fairway", true},
                              {"Trouble", true},
                              {"Strokes", true},
                              {"Better by"},
                              {"How sure"}});
    double length_m = 0.0;
    for (std::size_t i = 0; i < view.plan.holes.size(); ++i) {
        table.add_row(round_row(view, i));
        length_m += view.course.holes.at(i).line.length();
    }
    table.set_foot({"All", fmt::format("{}", view.plan.par), length_number(length_m, view.units), "", "", "",
                    "", "", fmt::format("{:.1f}", view.plan.expected_strokes), "", ""});
    return "<section class=\"part\">\n<h2>The holes</h2>\n<p class=\"note\">Trouble: share of the balls that "
           "finish "
           "in a bunker, among trees, in a penalty area or out of bounds. How sure: share of the plausible "
           "patterns, given how few shots stand behind them, in which the same club stays best.</p>\n" +
           table.html() + "</section>\n";
}

}  // namespace

std::string plan_html(const PlanView& view) {
    std::string html = head(view) + "<body>\n" + map_patterns() + page_header(view) + "<main>\n";
    html += summary(view) + round_table(view) + plan_cautions(view);
    for (std::size_t i = 0; i < view.plan.holes.size(); ++i)
        html += hole_section(view, i);
    html += plan_appendix(view) + "</main>\n" + page_footer(view) + "</body>\n</html>\n";
    return html;
}

}  // namespace landwidth
