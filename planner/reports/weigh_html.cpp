#include <fmt/format.h>

#include <algorithm>

#include "planner/reports/build_words.hpp"
#include "planner/reports/day_words.hpp"
#include "planner/reports/display_length.hpp"
#include "planner/reports/evidence_figures.hpp"
#include "planner/reports/gain_bar.hpp"
#include "planner/reports/html_table.hpp"
#include "planner/reports/html_text.hpp"
#include "planner/reports/page_parts.hpp"
#include "planner/reports/pattern_picture.hpp"
#include "planner/reports/weigh_reports.hpp"
#include "planner/reports/weigh_setting_words.hpp"
#include "planner/reports/weigh_words.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

// Where the landing width and the trouble of straight holes stand in the table of holes: behind the length.
constexpr std::ptrdiff_t straight_columns = 3;

constexpr std::string_view weigh_style = R"css(
.question { font-size: 1.1rem; }
.changes td:nth-child(5) { min-width: 9.8rem; }
.changes td:nth-child(2) { font-weight: 650; white-space: nowrap; }
.change { border-top: 2px solid var(--ink); padding-top: .7rem; }
.supposed { border-left: 4px double var(--ink); padding-left: .6rem; font-style: italic; }
.todo { border: 2px solid var(--ink); padding: .5rem .8rem; margin: .7rem 0; }
.todo h3 { margin-bottom: .1rem; }
.holes bdi { white-space: nowrap; }
.holes td:nth-child(2) bdi { white-space: normal; }
.holes td:last-child { min-width: 13rem; }
.fold { margin: .7rem .3rem .7rem 0; }
.fold + label { font-weight: 600; cursor: pointer; }
@media screen { .fold:not(:checked) ~ .folded { display: none; } }
.assumptions { font-size: .85rem; }
.evidence { font-size: .85rem; }
.evidence td, .evidence th[scope=row] { white-space: nowrap; }
.evidence tr:nth-child(odd) td, .evidence tr:nth-child(odd) th[scope=row] { border-bottom: 0; padding-bottom: 0; }
@media (max-width: 44rem) {
  .changes, .holes { font-size: .85rem; min-width: 40rem; }
  .pattern-list { font-size: .8rem; }
}
@media print {
  .fold { display: none; }
  .assumptions { font-size: 6.6pt; line-height: 1.15; }
  .assumptions th, .assumptions td { padding: .08rem .3rem; }
  .appendix { break-before: page; }
  .changes, .holes, .pattern-list, .evidence { font-size: 8.4pt; }
  .holes td:last-child { min-width: 0; }
  .change > .opening, .todo, .pattern-list { break-inside: avoid; }
  .change > .opening { break-after: avoid; }
  .question { font-size: 11pt; }
}
)css";

std::string course_name(const Course& course) {
    return course.name.empty() ? "Unnamed course" : course.name;
}

// Kept on one line, so cut short.
std::string club_cell(const WeighView& view, std::size_t club) {
    return isolated(name_text(view.golfer.clubs.at(club).name, 26));
}

std::string hole_word(std::size_t count) {
    return count == 1 ? "1 hole" : fmt::format("{} holes", count);
}

std::string page_header(const WeighView& view) {
    const std::optional<std::string> straight = straight_title(view);
    std::string courses = straight.value_or("");
    for (const Course& course : straight ? std::vector<Course>{} : view.courses)
        courses += fmt::format("{}{}, {}", courses.empty() ? "" : "; ",
                               isolated(name_text(course_name(course), 120)), hole_word(course.holes.size()));
    const std::string day = day_words(view.weighing.conditions, view.weighing.has_heights, view.units);
    return fmt::format(
        "<header>\n<h1>What changes to the bag are worth</h1>\n<p class=\"sub\">For {}, handicap index "
        "{:.1f}, "
        "{}-handed. {}. Lengths in {}.</p>\n<p class=\"question\">{}</p>\n{}</header>\n",
        isolated(name_text(view.golfer.name, 80)), view.golfer.handicap_index,
        view.golfer.hand == Hand::left ? "left" : "right", courses,
        view.units == DisplayUnits::yards ? "yards" : "metres", sentence(question_words(view)),
        (day.empty() ? day : fmt::format("<p><b>{}.</b></p>\n", sentence(capitalised(day)))) +
            (straight ? fmt::format("<p>{}</p>\n", sentence(straight_words(view))) : std::string()));
}

std::string side_by_side(const WeighView& view) {
    HtmlTable table("changes", {{"Change"},
                                {"So it"},
                                {"Saves", true},
                                {"How sure"},
                                {"90 % between"},
                                {"Strokes", true},
                                {"New club on", true}});
    table.add_row({"The bag of today", "", "", "", "", fmt::format("{:.2f}", view.weighing.strokes), ""});
    const GainScale scale(view.weighing.changes);
    std::string from;
    for (const WeighedChange& change : view.weighing.changes) {
        if (has_baseline(change) && baseline_label(view, change) != from) {
            from = baseline_label(view, change);
            table.add_row({isolated(capitalised(from)), "", "", "", "",
                           fmt::format("{:.2f}", change.baseline_strokes), ""});
        }
        const auto holes = static_cast<std::size_t>(holes_with_new_club(change));
        table.add_row(
            {isolated(name_text(capitalised(change.change.label), 120)), standing_words(change),
             gain_text(change.gain), sentence(chance_words(change)),
             fmt::format("{}{} and {}", scale.bar(change), gain_text(change.low), gain_text(change.high)),
             fmt::format("{:.2f}", change.strokes), change.change.in.empty() ? "" : hole_word(holes)});
    }
    return fmt::format(
        "<section class=\"part\">\n<h2>Side by side</h2>\n{}<p class=\"note\">Strokes: expected for {}. "
        "Saves: "
        "strokes saved, + is better. The bar spans 90 % of what the recorded shots leave possible, the dot "
        "is "
        "expected, the upright line is no difference: right of it strokes are saved. New club on: the tees "
        "it "
        "is hit from.</p>\n</section>\n",
        table.html(), sentence(round_words(view)));
}

std::vector<double> mishit_chance(const WeighView& view, std::size_t club) {
    const auto known = view.weighing.evidence.find(club);
    return known == view.weighing.evidence.end() ? std::vector<double>{} : known->second.mishit_chance;
}

// The clubs that come in, a few at a time, each time over the same others: two of each where there are many
// of both.
std::string pictures(const WeighView& view) {
    std::vector<PicturedPattern> coming;
    std::vector<PicturedPattern> others;
    for (const ComparedClub& club : view.weighing.compared)
        (club.comes_in ? coming : others)
            .push_back({&view.golfer.clubs.at(club.club), mishit_chance(view, club.club),
                        is_supposed(view, club.club)});
    const std::size_t new_in_one = most_pictured - std::min(others.size(), most_pictured / 2);
    std::string html;
    std::size_t shown = 0;
    do {
        std::vector<PicturedPattern> together;
        for (; shown < coming.size() && together.size() < new_in_one; ++shown)
            together.push_back(coming[shown]);
        for (const PicturedPattern& other : others)
            if (together.size() < most_pictured) together.push_back(other);
        html += pattern_picture(together, view.units);
    } while (shown < coming.size());
    return html;
}

// Of the clubs with recorded shots at hand; nothing where there are none.
std::string recorded_shots(const WeighView& view) {
    if (view.weighing.evidence.empty()) return {};
    std::vector<ClubRow> clubs;
    for (const auto& [club, evidence] : view.weighing.evidence)
        clubs.push_back({view.golfer.clubs.at(club).name, evidence});
    return "<div class=\"shots\">\n<h3>The recorded shots and what is made of them</h3>\n" +
           block_html(raw_beside_model(clubs, view.units)) +
           fmt::format("<p class=\"note\">{}</p>\n</div>\n", sentence(raw_beside_model_words()));
}

std::string patterns(const WeighView& view) {
    std::vector<const Club*> clubs;
    std::vector<const Club*> supposed;
    for (const ComparedClub& club : view.weighing.compared) {
        clubs.push_back(&view.golfer.clubs.at(club.club));
        if (is_supposed(view, club.club)) supposed.push_back(clubs.back());
    }
    if (clubs.empty()) return {};
    std::string ways;
    for (const std::string& words : two_way_words(view))
        ways += fmt::format("<p>{}</p>\n", sentence(words));
    return "<section class=\"part\">\n<h2>The shot patterns</h2>\n" + ways + pictures(view) +
           pattern_table(clubs, view.units, supposed) + recorded_shots(view) + "</section>\n";
}

class ChangeSection {
  public:
    ChangeSection(const WeighView& view, const WeighedChange& change)
        : view_(view), change_(change), several_(view.courses.size() > 1) {}

    std::string html() const {
        const std::string home = left_at_home_words(view_, change_);
        std::string html = fmt::format(
            "<section class=\"part change\">\n<div class=\"opening\">\n<h2>{}</h2>\n<p "
            "class=\"verdict\">{}</p>\n",
            isolated(name_text(capitalised(change_.change.label), 120)), sentence(sureness_words(change_)));
        html += setting();
        if (!home.empty()) html += fmt::format("<p>{}</p>\n", sentence(home));
        html += fmt::format("<div class=\"todo\">\n<h3>What to do next</h3>\n<p>{}</p>\n</div>\n</div>\n",
                            sentence(next_step_words(view_, change_)));
        return html + holes() + "</section>\n";
    }

  private:
    // What the comparison stands on.
    std::string setting() const {
        std::string html;
        for (const std::string& words : supposed_words(view_, change_))
            html += fmt::format("<p class=\"supposed\">{}</p>\n", sentence(words));
        if (const std::string from = baseline_words(view_, change_); !from.empty())
            html += fmt::format("<p>{}</p>\n", sentence(from));
        if (const std::string bare = without_shots_words(view_, change_); !bare.empty())
            html += fmt::format("<p><b>{}</b></p>\n", sentence(bare));
        return html;
    }
    HtmlTable table() const {
        std::vector<HtmlColumn> columns{{"Hole"},
                                        {"Par", true},
                                        {fmt::format("Length, {}", display_unit(view_.units)), true},
                                        {"Club " + before_word(change_)},
                                        {"Club then"},
                                        {"Saves", true},
                                        {"Sure", true},
                                        {"What the tee shots find"}};
        if (several_) columns.insert(columns.begin() + 1, {"Course"});
        if (view_.weighing.straight) {
            columns.insert(columns.begin() + straight_columns, {"Trouble"});
            columns.insert(columns.begin() + straight_columns,
                           {fmt::format("Width, {}", display_unit(view_.units)), true});
        }
        return {"holes", columns};
    }
    std::vector<std::string> row(std::size_t c, std::size_t h, const HoleGain& gain) const {
        const Course& course = view_.courses.at(c);
        const Hole& hole = course.holes.at(h);
        const std::string why = why_words(gain, view_.units);
        std::vector<std::string> cells{isolated(name_text(hole.ref, 12)),
                                       fmt::format("{}", hole.par),
                                       length_number(hole.line.length(), view_.units),
                                       club_cell(view_, gain.before.club),
                                       club_cell(view_, gain.after.club),
                                       gain_text(gain.gain),
                                       gain.chance ? sentence(share_text(*gain.chance)) : std::string("-"),
                                       why.empty() ? "the same tee shot; other shots change" : sentence(why)};
        if (several_) cells.insert(cells.begin() + 1, isolated(name_text(course_name(course), 40)));
        if (const auto& straight = view_.weighing.straight) {
            cells.insert(cells.begin() + straight_columns,
                         isolated(trouble_words(straight->holes.at(h).trouble)));
            cells.insert(cells.begin() + straight_columns,
                         length_number(straight->holes[h].width_m, view_.units));
        }
        return cells;
    }
    std::string holes() const {
        HtmlTable rows = table();
        std::size_t same = 0;
        for (std::size_t c = 0; c < view_.courses.size(); ++c)
            for (std::size_t h = 0; h < view_.courses[c].holes.size(); ++h) {
                const HoleGain& gain = change_.courses.at(c).holes.at(h);
                if (shows(gain)) {
                    rows.add_row(row(c, h, gain));
                } else {
                    ++same;
                }
            }
        if (rows.empty()) return "<p>No hole is played otherwise.</p>\n";
        std::string html = rows.html();
        html +=
            "<p class=\"note\">Sure: in how much of what the recorded shots leave possible the hole is "
            "played better.";
        if (same > 0)
            html += fmt::format(" {} {} played as {}.", hole_word(same), same == 1 ? "is" : "are",
                                before_word(change_));
        return html + by_course() + "</p>\n";
    }
    std::string by_course() const {
        if (!several_) return {};
        std::string html = " Saves a round: ";
        for (std::size_t c = 0; c < view_.courses.size(); ++c)
            html += fmt::format("{}{} on {}", c == 0 ? "" : ", ", gain_text(change_.courses.at(c).gain),
                                isolated(name_text(course_name(view_.courses[c]), 40)));
        return html + ".";
    }

    const WeighView& view_;
    const WeighedChange& change_;
    bool several_;
};

std::string on_the_bench() {
    return "<section class=\"part\">\n<h2>Before a club is altered</h2>\n" + bullet_list(build_cautions()) +
           "</section>\n";
}

// Not <details>: a browser would leave out of print what is folded.
std::string assumptions(const WeighView& view) {
    return "<section class=\"part appendix\">\n<input type=\"checkbox\" class=\"fold\" "
           "id=\"show-assumptions\"/><label "
           "for=\"show-assumptions\">Assumptions</label>\n<div class=\"folded\">\n" +
           assumptions_table(view.weighing.assumptions) + "</div>\n</section>\n";
}

std::string title_of(const WeighView& view) {
    return view.golfer.name.empty() ? "What changes to the bag are worth"
                                    : "What changes to the bag are worth: " + name_text(view.golfer.name, 80);
}

}  // namespace

std::string weigh_html(const WeighView& view) {
    std::string style(weigh_style);
    style += gain_bar_style();
    style += pattern_picture_style();
    std::string html = page_head(title_of(view), style) + "<body>\n" + page_header(view) + "<main>\n";
    html += side_by_side(view) + patterns(view);
    for (const WeighedChange& change : view.weighing.changes)
        html += ChangeSection(view, change).html();
    html += cautions_section(view.weighing.warnings,
                             setting_words(view.weighing.conditions, view.weighing.has_heights)) +
            on_the_bench() + assumptions(view);
    std::vector<const Course*> courses;
    if (!view.weighing.straight)
        for (const Course& course : view.courses)
            courses.push_back(&course);
    return html + "</main>\n" + page_footer(courses) + "</body>\n</html>\n";
}

}  // namespace landwidth
