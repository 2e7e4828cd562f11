#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>

#include "planner/reports/day_words.hpp"
#include "planner/reports/display_length.hpp"
#include "planner/reports/hole_map.hpp"
#include "planner/reports/hole_section.hpp"
#include "planner/reports/html_table.hpp"
#include "planner/reports/html_text.hpp"
#include "planner/reports/page_parts.hpp"
#include "planner/reports/plan_appendix.hpp"
#include "planner/reports/plan_reports.hpp"
#include "planner/reports/score_words.hpp"
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

// Signs and lines that a plan for the reference day does not have.
constexpr std::string_view day_style = R"css(
.day { font-weight: 600; margin-bottom: 0; }
.plays { margin: .1rem 0 .5rem; }
.wind { fill: #fff; stroke: #000; stroke-width: 1.3; stroke-linejoin: miter; }
)css";

std::string day_line(const PlanView& view) {
    const std::string day = day_words(view.plan.conditions, view.plan.has_heights, view.units);
    return day.empty() ? day : fmt::format("<p class=\"day\">{}.</p>\n", sentence(capitalised(day)));
}

std::string page_header(const PlanView& view) {
    const std::string course =
        view.course.name.empty() ? std::string("Unnamed course") : name_text(view.course.name, 120);
    return fmt::format(
        "<header>\n<h1>{}</h1>\n<p class=\"sub\">Tee shot plan for {}, handicap index {:.1f}, {}-handed. {}, "
        "par {}. "
        "Lengths in {}.</p>\n{}</header>\n",
        isolated(course), isolated(name_text(view.golfer.name, 80)), view.golfer.handicap_index,
        view.golfer.hand == Hand::left ? "left" : "right", hole_word(view.plan.holes.size()), view.plan.par,
        view.units == DisplayUnits::yards ? "yards" : "metres", day_line(view));
}

std::string difference_text(double value) {
    return std::abs(value) < 0.005 ? std::string("the same") : fmt::format("{:+.2f}", value);
}

std::string_view totals_caption(AimFor aim) {
    switch (aim) {
        case AimFor::strokes:
            break;
        case AimFor::stableford:
            return "Expected Stableford points for the round";
        case AimFor::par_or_better:
            return "Holes of the round played in par or better, on average";
    }
    return "Expected strokes for the round";
}

std::string totals(const PlanView& view) {
    const RoundPlan& plan = view.plan;
    const bool strokes_only = plan.aim_for == AimFor::strokes;
    const double planned = strokes_only ? plan.expected_strokes : plan.aim_value;
    const std::string unit(plan.aim_for == AimFor::par_or_better ? "Holes" : aim_heading(plan.aim_for));
    HtmlTable table("totals", {{"Off the tee"}, {unit, true}, {"Against the plan", true}});
    table.set_caption(std::string(totals_caption(plan.aim_for)));
    table.add_row({"This plan", fmt::format("{:.1f}", planned), ""}, "chosen");
    const auto add = [&](const char* name, const std::optional<double>& value) {
        if (!value) return;
        table.add_row({name, fmt::format("{:.1f}", *value), difference_text(*value - planned)});
    };
    add("Driver on every par 4 and longer", plan.always_driver);
    add("Never the driver", plan.never_driver);
    std::string html = table.html();
    if (!strokes_only) html += fmt::format("<p>Expected strokes: {:.1f}.</p>\n", plan.expected_strokes);
    const std::string scores = round_score_words(plan);
    return scores.empty() ? html : html + fmt::format("<p>{}</p>\n", sentence(scores));
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
                        tossed ? fmt::format(" <em>A toss-up</em>, {}.", undecided_words(plan.verdict.alike))
                               : std::string());
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

std::string club_cell(const PlanView& view, const TeeChoice& choice) {
    return isolated(name_text(view.golfer.clubs.at(choice.club).name, 16));
}

std::string margin_cell(const PlanView& view, const HolePlan& plan) {
    if (!plan.verdict.over || !plan.verdict.margin) return "only club";
    return fmt::format("{} over {}", sentence(loss_size_text(view.plan.aim_for, *plan.verdict.margin)),
                       club_cell(view, plan.choices.at(*plan.verdict.over)));
}

std::string certainty_cell(const HolePlan& plan) {
    if (!plan.verdict.over) return {};
    const std::string share = sentence(share_text(plan.verdict.confidence));
    return plan.verdict.toss_up ? fmt::format("<span class=\"tossup\">toss-up</span> ({})", share) : share;
}

// Where the value aimed for stands in the table of the holes, behind the strokes, when it is another.
constexpr std::ptrdiff_t value_column = 9;

std::vector<std::string> round_row(const PlanView& view, std::size_t i) {
    const Hole& hole = view.course.holes.at(i);
    const HolePlan& plan = view.plan.holes.at(i);
    const TeeChoice& best = best_of(plan);
    const AimFor aim = view.plan.aim_for;
    std::vector<std::string> row{
        fmt::format("<a href=\"#hole-{}\">{}</a>", i + 1, isolated(name_text(hole.ref, 12))),
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
    if (aim != AimFor::strokes) {
        row.insert(row.begin() + value_column, sentence(aim_value_text(aim, best.aim_value)));
    }
    return row;
}

// What the tables of the holes say of the flight, where they do.
std::string flight_key(const PlanView& view) {
    if (!shows_day(view.plan)) return {};
    return " Carries, in the tables of the holes: where the usual shot lands on this day, and how far it "
           "drifts "
           "to the right (R) or left (L) of where it lands otherwise; stopped: share of all balls that trees "
           "or "
           "buildings on their way stop.";
}

std::string round_table(const PlanView& view) {
    std::vector<HtmlColumn> columns{
        {"Hole"},          {"Par", true},     {fmt::format("Length, {}", display_unit(view.units)), true},
        {"Tee"},           {"Club"},          {"Aim"},
        {"Fairway", true}, {"Trouble", true}, {"Strokes", true},
        {"Better by"},     {"How sure"}};
    const AimFor aim = view.plan.aim_for;
    const bool strokes_only = aim == AimFor::strokes;
    if (!strokes_only) columns.insert(columns.begin() + value_column, {std::string(aim_heading(aim)), true});
    HtmlTable table("round", columns);
    double length_m = 0.0;
    for (std::size_t i = 0; i < view.plan.holes.size(); ++i) {
        table.add_row(round_row(view, i));
        length_m += view.course.holes.at(i).line.length();
    }
    std::vector<std::string> foot{"All",
                                  fmt::format("{}", view.plan.par),
                                  length_number(length_m, view.units),
                                  "",
                                  "",
                                  "",
                                  "",
                                  "",
                                  fmt::format("{:.1f}", view.plan.expected_strokes),
                                  "",
                                  ""};
    if (!strokes_only) {
        foot.insert(foot.begin() + value_column, round_value_text(aim, view.plan.aim_value, 1));
    }
    table.set_foot(foot);
    return "<section class=\"part\">\n<h2>The holes</h2>\n<p class=\"note\">Trouble: share of the balls that "
           "finish "
           "in a bunker, among trees, in a penalty area or out of bounds. How sure: share of the plausible "
           "patterns, given how few shots stand behind them, in which the same club stays best. Strokes: " +
           sentence(field_words(view.plan.field)) + "." + flight_key(view) + "</p>\n" + table.html() +
           "</section>\n";
}

// One switch for all maps, so that a whole booklet prints shaded; see hole_section.
std::string shade_switch(const PlanView& view) {
    const auto& holes = view.plan.holes;
    if (std::none_of(holes.begin(), holes.end(), [](const HolePlan& hole) { return hole.cost_map; }))
        return {};
    return "<input type=\"checkbox\" class=\"shade-all\" id=\"shade-all\"/><label class=\"switch\" "
           "for=\"shade-all\">Shade the maps of all holes by the strokes still to play</label>\n";
}

}  // namespace

std::string plan_html(const PlanView& view) {
    std::string style = map_style();
    if (shows_day(view.plan)) style += day_style;
    std::string html =
        page_head(title_of(view), style) + "<body>\n" + map_patterns() + page_header(view) + "<main>\n";
    html += summary(view) + round_table(view) +
            cautions_section(view.plan.warnings, setting_words(view.plan.conditions, view.plan.has_heights)) +
            shade_switch(view);
    for (std::size_t i = 0; i < view.plan.holes.size(); ++i)
        html += hole_section(view, i);
    html += plan_appendix(view) + "</main>\n" + page_footer({&view.course}) + "</body>\n</html>\n";
    return html;
}

}  // namespace landwidth
