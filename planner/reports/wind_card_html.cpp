#include <fmt/format.h>

#include "planner/reports/display_length.hpp"
#include "planner/reports/html_table.hpp"
#include "planner/reports/html_text.hpp"
#include "planner/reports/page_parts.hpp"
#include "planner/reports/wind_card_words.hpp"
#include "planner/reports/wind_rose.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

constexpr std::string_view card_style = R"css(
.day { font-weight: 600; margin-bottom: 0; }
.roses { list-style: none; padding: 0; display: grid; gap: .5rem .9rem;
  grid-template-columns: repeat(auto-fill, minmax(17rem, 1fr)); }
.roses > li { display: flex; gap: .5rem; align-items: center; border-top: 1px solid var(--ink);
  padding-top: .3rem; break-inside: avoid; }
.roses h3 { margin: 0; }
.roses p { margin: .15rem 0; font-size: .88rem; line-height: 1.3; }
.roses .chosen { font-weight: 650; }
.winds { font-size: .82rem; min-width: 44rem; }
.winds th, .winds td { padding: .18rem .3rem; }
.winds .changed { font-weight: 650; }
.winds .same { color: var(--soft); }
.tossup { white-space: nowrap; }
@media (max-width: 44rem) { .roses { grid-template-columns: minmax(0, 1fr); } }
@media print {
  .roses { grid-template-columns: repeat(3, minmax(0, 1fr)); gap: 1mm 4mm; }
  .wind-rose { width: 27mm; height: 27mm; }
  .roses p { font-size: 7.6pt; }
  .winds { font-size: 7.2pt; min-width: 0; }
  .winds th, .winds td { padding: .1rem .18rem; }
  .sheet { break-before: page; }
}
)css";

std::string course_title(const WindCardView& view) {
    return view.course.name.empty() ? std::string("Unnamed course") : name_text(view.course.name, 120);
}

std::string page_header(const WindCardView& view) {
    return fmt::format(
        "<header>\n<h1>{}</h1>\n<p class=\"sub\">Wind card for {}, handicap index {:.1f}, {}-handed. Lengths "
        "in "
        "{}.</p>\n<p class=\"day\">{}.</p>\n</header>\n",
        isolated(course_title(view)), isolated(name_text(view.golfer.name, 80)), view.golfer.handicap_index,
        view.golfer.hand == Hand::left ? "left" : "right",
        view.units == DisplayUnits::yards ? "yards" : "metres",
        sentence(capitalised(wind_card_day_words(view))));
}

std::string club_cell(const WindCardView& view, const WindCardVerdict& verdict) {
    return isolated(name_text(wind_card_club(view, verdict), 16));
}

std::string hole_card(const WindCardView& view, std::size_t index) {
    const Hole& hole = view.course.holes.at(index);
    const WindCardHole& card = view.card.holes.at(index);
    std::string words =
        fmt::format("<p class=\"chosen\">{} in still air{}</p>\n", club_cell(view, card.still),
                    card.still.toss_up ? ", <span class=\"tossup\">a toss-up</span>" : "");
    for (const std::string& change : change_words(view, card))
        words += fmt::format("<p>{}</p>\n", sentence(change));
    return fmt::format("<li>\n{}<div>\n<h3>Hole {}</h3>\n<p>Par {}, {}</p>\n{}</div>\n</li>\n",
                       wind_rose(view, index, fmt::format("rose-{}", index + 1)),
                       isolated(name_text(hole.ref, 20)), hole.par,
                       sentence(length_text(hole.line.length(), view.units)), words);
}

std::string hole_cards(const WindCardView& view) {
    std::string items;
    for (std::size_t i = 0; i < view.card.holes.size(); ++i)
        items += hole_card(view, i);
    return "<section class=\"part\">\n<h2>Hole by hole</h2>\n<p class=\"note\">Every rose is turned as its "
           "hole "
           "is played, from the tee up the page: a wind from the sector at the top is in your face.</p>\n" +
           wind_rose_legend() + "<ul class=\"roses\">\n" + items + "</ul>\n</section>\n";
}

std::string wind_cell(const WindCardView& view, const WindCardHole& hole, std::size_t direction) {
    const std::string club = club_cell(view, hole.wind_from.at(direction));
    switch (wind_effect(hole, direction)) {
        case WindEffect::none:
            break;
        case WindEffect::toss_up:
            return "<span class=\"tossup\">toss-up</span>";
        case WindEffect::change:
            return fmt::format("<span class=\"changed\">{}</span>", club);
        case WindEffect::settles:
            return club;
        case WindEffect::toss_up_of_other:
            return fmt::format("{}, <span class=\"tossup\">toss-up</span>", club);
    }
    return "<span class=\"same\">as still</span>";
}

std::string winds_table(const WindCardView& view) {
    std::vector<HtmlColumn> columns{{"Hole"}, {"Still air"}};
    std::vector<std::string> strokes{"Strokes", fmt::format("{:.1f}", view.card.still_strokes)};
    for (std::size_t direction = 0; direction < wind_card_directions; ++direction) {
        columns.push_back({std::string(wind_card_direction(direction))});
        strokes.push_back(fmt::format("{:.1f} ({})", view.card.strokes.at(direction),
                                      against_still_text(view.card, direction)));
    }
    HtmlTable table("winds", columns);
    for (std::size_t i = 0; i < view.card.holes.size(); ++i) {
        const WindCardHole& hole = view.card.holes[i];
        std::vector<std::string> row{
            isolated(name_text(view.course.holes.at(i).ref, 12)),
            club_cell(view, hole.still) +
                (hole.still.toss_up ? ", <span class=\"tossup\">toss-up</span>" : "")};
        for (std::size_t direction = 0; direction < wind_card_directions; ++direction)
            row.push_back(wind_cell(view, hole, direction));
        table.add_row(row);
    }
    table.set_foot(strokes);
    return "<section class=\"part\">\n<h2>By the wind</h2>\n<p class=\"note\">A column is a wind from "
           "there. "
           "Strokes: expected for the round, and against still air.</p>\n" +
           table.html() + "</section>\n";
}

std::string changes(const WindCardView& view) {
    std::vector<std::string> sentences;
    for (const std::string& words : flip_words(view))
        sentences.push_back(capitalised(words) + ".");
    return "<section class=\"part sheet\">\n<h2>Where the wind changes the club</h2>\n" +
           (sentences.empty() ? "<p>No wind of this card changes the club on a tee, toss-ups aside.</p>\n"
                              : bullet_list(sentences)) +
           "</section>\n";
}

}  // namespace

std::string wind_card_html(const WindCardView& view) {
    std::string style(wind_rose_style());
    style += card_style;
    std::string html = page_head("Wind card: " + course_title(view), style) + "<body>\n";
    html += wind_rose_patterns();
    html += page_header(view) + "<main>\n" + hole_cards(view) + changes(view) + winds_table(view);
    html += "<section class=\"part\">\n<h2>Before you swing</h2>\n" + bullet_list(wind_card_cautions());
    if (!view.card.warnings.empty()) html += "<h2>Warnings</h2>\n" + bullet_list(view.card.warnings);
    html += "</section>\n" + patterns_details(view.golfer, view.units) +
            details("Assumptions", assumptions_table(view.card.assumptions));
    return html + "</main>\n" + page_footer({&view.course}) + "</body>\n</html>\n";
}

}  // namespace landwidth
