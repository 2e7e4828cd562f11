#include "planner/reports/hole_section.hpp"

#include <fmt/format.h>

#include <cstdlib>
#include <vector>

#include "planner/reports/break_even_words.hpp"
#include "planner/reports/day_words.hpp"
#include "planner/reports/display_length.hpp"
#include "planner/reports/hole_map.hpp"
#include "planner/reports/html_table.hpp"
#include "planner/reports/html_text.hpp"
#include "planner/reports/next_shot_words.hpp"
#include "planner/reports/score_bars.hpp"
#include "planner/reports/score_words.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

// More rows than this would not fit beside a map; a driver further down is shown all the same.
constexpr std::size_t most_rows = 7;

std::string facts(const PlanView& view, const Hole& hole, const HolePlan& plan) {
    std::string text = fmt::format("Par {}{}, {}", hole.par, hole.par_inferred ? " (from the length)" : "",
                                   length_text(hole.line.length(), view.units));
    if (!hole.tee.empty()) text += fmt::format(", from the tee “{}”", name_text(hole.tee, 24));
    if (hole.stroke_index) text += fmt::format(", stroke index {}", *hole.stroke_index);
    const int received = plan.strokes_received;
    if (received != 0) {
        // A plus handicap gives strokes back.
        text += fmt::format(", {} {} {}", std::abs(received), std::abs(received) == 1 ? "stroke" : "strokes",
                            received > 0 ? "received" : "given back");
    }
    return text;
}

std::vector<std::string> choice_row(const PlanView& view, const Hole& hole, const TeeChoice& choice,
                                    const TeeChoice& best) {
    const AimFor aim = view.plan.aim_for;
    const std::string strokes = fmt::format("{:.2f}", choice.expected_strokes);
    const Lie wanted = hole.par == 3 ? Lie::green : Lie::fairway;
    std::vector<std::string> cells{
        isolated(name_text(view.golfer.clubs.at(choice.club).name, 15)),
        aim == AimFor::strokes ? strokes : sentence(aim_value_text(aim, choice.aim_value)),
        &choice == &best ? std::string("best") : sentence(loss_change_text(aim, loss(aim, choice, best))),
        lie_bar(choice),
        sentence(share_text(choice.lies[index_of(wanted)])),
        sentence(share_text(trouble_share(choice))),
        fmt::format("{}\u00A0±\u00A0{}", length_number(choice.leave_mean_m, view.units),
                    length_number(choice.leave_sd_m, view.units)),
    };
    if (hole.par > 3) {
        cells.push_back(choice.landing ? length_number(choice.landing->width_m(), view.units) : "none");
    }
    if (shows_day(view.plan)) cells.push_back(sentence(flight_cell(choice.day, view.units)));
    if (aim != AimFor::strokes) cells.push_back(strokes);
    return cells;
}

std::vector<HtmlColumn> choice_columns(const PlanView& view, const Hole& hole) {
    const std::string_view unit = display_unit(view.units);
    std::vector<HtmlColumn> columns{{"Club"},
                                    {std::string(aim_heading(view.plan.aim_for)), true},
                                    {view.plan.aim_for == AimFor::strokes ? "Costs" : "Change", true},
                                    {"The ball finishes"},
                                    {hole.par == 3 ? "Green" : "Fairway", true},
                                    {"Trouble", true},
                                    {fmt::format("Leaves, {}", unit), true}};
    if (hole.par > 3) columns.push_back({fmt::format("Width, {}", unit), true});
    if (shows_day(view.plan)) columns.push_back({fmt::format("Carries, {}", unit)});
    if (view.plan.aim_for != AimFor::strokes) columns.push_back({"Strokes", true});
    return columns;
}

std::string choices_table(const PlanView& view, std::size_t index) {
    const Hole& hole = view.course.holes.at(index);
    const HolePlan& plan = view.plan.holes.at(index);
    const TeeChoice& best = plan.choices.at(plan.verdict.best);
    HtmlTable table("choices", choice_columns(view, hole));
    std::size_t left_out = 0;
    for (std::size_t i = 0; i < plan.choices.size(); ++i) {
        const TeeChoice& choice = plan.choices[i];
        const bool driver = view.golfer.clubs.at(choice.club).kind == ClubKind::driver;
        if (i >= most_rows && !driver) {
            ++left_out;
            continue;
        }
        table.add_row(choice_row(view, hole, choice, best), &choice == &best ? "chosen" : "");
    }
    if (left_out == 0) return table.html();
    return table.html() + fmt::format("<p class=\"more\">{} more {} compared and {} more.</p>\n", left_out,
                                      left_out == 1 ? "club was" : "clubs were",
                                      left_out == 1 ? "costs" : "cost");
}

std::string next_shots(const PlanView& view, std::size_t index) {
    const std::vector<std::string> sentences = next_shot_words(view, index);
    if (sentences.empty()) return {};
    std::string html = "<div>\n<h3>After the tee shot</h3>\n<ol class=\"next\">\n";
    for (const std::string& words : sentences)
        html += fmt::format("<li>{}.</li>\n", sentence(capitalised(words)));
    return html + "</ol>\n</div>\n";
}

// What comes after the tee shot: the shots to the green and the scores.
std::string ahead(const PlanView& view, std::size_t index) {
    const HolePlan& plan = view.plan.holes.at(index);
    const std::string shots = next_shots(view, index);
    const std::string scores =
        score_bars(plan.choices.at(plan.verdict.best).score, view.course.holes.at(index).par);
    if (shots.empty() && scores.empty()) return {};
    return fmt::format("<div class=\"ahead\">\n{}{}</div>\n", shots, scores);
}

// The map and, where it can be shaded, the switch before it: what the style sheet shows and hides must follow
// the switch as a sibling.
std::string figure(const HoleMap& map, const std::string& id) {
    if (map.cost_key.empty()) return fmt::format("<figure>\n{}</figure>", map.svg);
    return fmt::format(
        "<figure>\n<input type=\"checkbox\" class=\"shade-one\" id=\"{0}-shade\"/><label class=\"switch\" "
        "for=\"{0}-shade\">Shade by strokes still to play</label>\n{1}{2}</figure>",
        id, map.svg, map.cost_key);
}

std::string cautions(const PlanView& view, std::size_t index) {
    const std::vector<std::string> sentences = caution_words(view, index);
    if (sentences.empty()) return {};
    std::string html = "<ul class=\"caution\" aria-label=\"Cautions\">\n";
    for (const std::string& words : sentences)
        html += fmt::format("<li>{}</li>\n", sentence(words));
    return html + "</ul>\n";
}

std::string paragraph(std::string_view css_class, const std::string& words) {
    return words.empty() ? std::string()
                         : fmt::format("<p class=\"{}\">{}</p>\n", css_class, sentence(words));
}

std::string plays_as(const PlanView& view, std::size_t index) {
    const std::string words = plays_as_words(view, index);
    return words.empty() ? words : paragraph("plays", capitalised(words) + ".");
}

std::string flips(const PlanView& view, std::size_t index) {
    const std::string words = break_even_words(view, index);
    if (words.empty()) return {};
    return paragraph("flips", capitalised(words) +
                                  "; each moved alone, for the tee shot. The side spread is a standard "
                                  "deviation.");
}

}  // namespace

std::string hole_section(const PlanView& view, std::size_t index) {
    const Hole& hole = view.course.holes.at(index);
    const std::string id = fmt::format("hole-{}", index + 1);
    const HoleMap map = hole_map(view, index, id);
    const std::string name = hole.name.empty() ? std::string() : " " + isolated(name_text(hole.name, 60));
    return fmt::format(
        "<section class=\"hole\" id=\"{0}\" aria-labelledby=\"{0}-h\">\n{1}\n<div>\n"
        "<h2 id=\"{0}-h\">Hole {2}{3}</h2>\n<p "
        "class=\"facts\">{4}</p>\n{5}{6}{7}{8}{9}{10}{11}{12}{13}</div>\n</section>\n",
        id, figure(map, id), isolated(name_text(hole.ref, 20)), name,
        sentence(facts(view, hole, view.plan.holes.at(index))), plays_as(view, index),
        paragraph("verdict", verdict_words(view, index)),
        hole.par == 3 ? std::string() : paragraph("why", why_not_driver_words(view, index)),
        paragraph("sure", certainty_words(view.plan.holes.at(index))), flips(view, index),
        choices_table(view, index), ahead(view, index), cautions(view, index), map.legend);
}

}  // namespace landwidth
