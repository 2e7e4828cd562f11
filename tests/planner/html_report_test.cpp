// The HTML report: one self-contained, well-formed page that says what the plan says.
#include <fmt/format.h>

#include <set>
#include <stdexcept>
#include <string>

#include "planner/reports/break_even_words.hpp"
#include "planner/reports/html_table.hpp"
#include "planner/reports/html_text.hpp"
#include "planner/reports/map_palette.hpp"
#include "planner/reports/plan_reports.hpp"
#include "planner/reports/words.hpp"
#include "tests/catch.hpp"
#include "tests/planner/page_checks.hpp"
#include "tests/planner/plan_fixture.hpp"

using namespace landwidth;

namespace {

std::size_t count(const std::string& text, const std::string& part) {
    std::size_t found = 0;
    for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + part.size()))
        ++found;
    return found;
}

// The section of a hole, counted from 1.
std::string section(const std::string& html, int hole) {
    const auto from = html.find(fmt::format("<section class=\"hole\" id=\"hole-{}\"", hole));
    REQUIRE(from != std::string::npos);
    return html.substr(from, html.find("</section>", from) - from);
}

}  // namespace

TEST_CASE("the page is well-formed and needs nothing from elsewhere", "[html]") {
    const auto units = GENERATE(DisplayUnits::yards, DisplayUnits::metres);
    const std::string html = plan_html(fixture::two_holes().view(units));
    check_self_contained(html);
    check_identifiers(html);
    CHECK_FALSE(holds(html, "http:"));
    CHECK_FALSE(holds(html, "https:"));
    CHECK(holds(html, "<html lang=\"en\">"));
    CHECK(holds(html, "<title>Tee shot plan: Example Holm</title>"));
}

TEST_CASE("scores and next shots are text on the page, the bars only repeat them", "[html]") {
    const std::string html = plan_html(fixture::own_field().view());
    check_self_contained(html);
    check_identifiers(html);
    const std::string first = section(html, 1);
    CHECK(holds(first,
                "<li>7-iron 132\u00A0yd, laying up to 52\u00A0yd (going for it with the 3-wood costs 0.12 "
                "more).</li>"));
    CHECK(holds(first, "<li>Sand wedge, 60\u00A0% swing, from 52\u00A0yd to the green.</li>"));
    CHECK(holds(first, "par</th><td>4</td><td><span>38\u00A0%</span>"));
    CHECK(holds(first, "triple bogey or worse</th><td>≥7</td><td><span>5\u00A0%</span>"));
    CHECK(count(first, "class=\"share-bar\"") == 6);
    CHECK(holds(first, "<rect width=\"38.0\" height=\"10\"/>"));
    CHECK(count(first, "<circle class=\"ball\"") == 3 + 1);  // two shots, and the legend's
    CHECK(holds(first, ">7-iron</text>"));
    CHECK_FALSE(holds(section(html, 2), "After the tee shot"));
    CHECK(holds(html, "one takes 6 strokes or fewer"));
    CHECK(holds(html, "Strokes: valued for this golfer&#39;s own clubs"));

    const std::string published = plan_html(fixture::two_holes().view());
    for (const char* part :
         {"After the tee shot", "share-bar\"", "class=\"ball\"", "type=\"checkbox\"", "Of ten such rounds"}) {
        INFO(part);
        CHECK_FALSE(holds(published, part));
    }
}

TEST_CASE("the shading is switched on without a script, and only where there is one", "[html]") {
    const std::string html = plan_html(fixture::own_field().view());
    const std::string first = section(html, 1);
    // What the style sheet shows and hides follows the switch: it must come first among its siblings.
    const auto box = first.find("<input type=\"checkbox\" class=\"shade-one\" id=\"hole-1-shade\"/>");
    REQUIRE(box != std::string::npos);
    CHECK(box < first.find("<svg class=\"hole-map\""));
    CHECK(first.find("<svg class=\"hole-map\"") < first.find("class=\"cost-key\""));
    CHECK(holds(first, "for=\"hole-1-shade\""));
    CHECK_FALSE(holds(section(html, 2), "checkbox"));
    CHECK(html.find("id=\"shade-all\"") < html.find("id=\"hole-1\""));
    CHECK(holds(html, ".shade, .cost-key { display: none; }"));
    CHECK(holds(html, ".shade-one:checked ~ .hole-map .shade"));
}

TEST_CASE("another aim leads the tables, and strokes stay on the page", "[html]") {
    const std::string points = plan_html(fixture::own_field_for_points().view());
    check_self_contained(points);
    CHECK(holds(points, "Expected Stableford points for the round"));
    CHECK(holds(points, "This plan</th><td class=\"n\">3.6</td>"));
    CHECK(holds(points, "Expected strokes: 8.0."));
    CHECK(holds(points, "0.11 over <bdi>driver</bdi>"));
    CHECK(holds(section(points, 1),
                "<bdi>driver</bdi></th><td class=\"n\">1.85</td><td class=\"n\">-0.11</td>"));
    CHECK(holds(section(points, 1), "driver costs 0.11 points."));
    CHECK(holds(section(points, 1), "it costs 0.11 points against 3-wood."));
    CHECK(holds(section(points, 1), "1 stroke received"));
    CHECK_FALSE(holds(section(points, 2), "received"));
    const std::string par = plan_html(fixture::own_field_for_par().view());
    check_self_contained(par);
    CHECK(holds(par, "Par or better"));
    CHECK(holds(section(par, 1), "<td class=\"n\">50.0\u00A0%</td>"));
    CHECK(holds(section(par, 1), "driver costs par or better on 2.1\u00A0% of the holes."));
    CHECK(holds(par, "1.1 holes"));
}

TEST_CASE("the same plan makes the same page", "[html]") {
    CHECK(plan_html(fixture::two_holes().view()) == plan_html(fixture::two_holes().view()));
}

TEST_CASE("names that try to break the page do not", "[html]") {
    const fixture::PlanFixture made = fixture::hostile_names();
    const std::string html = plan_html(made.view());
    check_self_contained(html);
    check_identifiers(html);
    CHECK_FALSE(holds(html, "<script"));
    CHECK_FALSE(holds(html, "<img"));
    CHECK_FALSE(holds(html, "<driver>"));
    CHECK_FALSE(holds(html, "<i>"));
    CHECK(holds(html, "&lt;script&gt;"));
    CHECK(holds(html, "&lt;driver&gt;"));
    CHECK(holds(html, "O&#39;Neil"));
    // The overriding direction mark is gone, the letters it stood before are not.
    CHECK_FALSE(holds(html, "\u202E"));
    CHECK(holds(html, "גולף"));
    CHECK(holds(html, "\U0001F3CC"));
    // A name of 5000 letters is cut.
    CHECK_FALSE(holds(html, std::string(200, 'W')));
    CHECK(html.size() < 400'000);
}

TEST_CASE("text is made safe character by character", "[html]") {
    CHECK(escaped("") == "");
    CHECK(escaped("<a href=\"x\">&'</a>") == "&lt;a href=&quot;x&quot;&gt;&amp;&#39;&lt;/a&gt;");
    CHECK(escaped("a\x01\tb\n") == "a  b ");
    CHECK(escaped("\xff") == "\uFFFD");
    CHECK(escaped("a\xc3") == "a\uFFFD");                    // cut short
    CHECK(escaped("\xc0\x80") == "\uFFFD\uFFFD");            // overlong
    CHECK(escaped("\xed\xa0\x80") == "\uFFFD\uFFFD\uFFFD");  // a surrogate
    CHECK(escaped("\uFFFE") == "\uFFFD");                    // not allowed in XML
    CHECK(escaped("é ד \U0001F3CC") == "é ד \U0001F3CC");
    CHECK(isolated("<") == "<bdi>&lt;</bdi>");
}

TEST_CASE("numbers and their units stay on one line", "[html]") {
    CHECK(sentence("7 yd left, 58 % fairway") == "7\u00A0yd left, 58\u00A0% fairway");
    CHECK(sentence("252 m out") == "252\u00A0m out");
    CHECK(sentence("1 more") == "1 more");
}

TEST_CASE("a table has a header for every column and every row", "[html]") {
    HtmlTable table("small", {{"Club"}, {"Strokes", true}});
    CHECK(table.empty());
    table.add_row({"driver", "4.6"}, "chosen");
    table.set_foot({"All", "4.6"});
    CHECK(holds(table.html(), "<th scope=\"col\">Club</th><th scope=\"col\" class=\"n\">Strokes</th>"));
    CHECK(holds(table.html(),
                "<tr class=\"chosen\"><th scope=\"row\">driver</th><td class=\"n\">4.6</td></tr>"));
    CHECK(holds(table.html(), "<tfoot>\n<tr><th scope=\"row\">All</th>"));
    CHECK_THROWS_AS(table.add_row({"driver"}), std::logic_error);
}

TEST_CASE("every hole is there once, with its map", "[html]") {
    const std::string html = plan_html(fixture::two_holes().view());
    CHECK(count(html, "<section class=\"hole\"") == 2);
    CHECK(count(html, "class=\"hole-map\"") == 2);
    for (const int hole : {1, 2}) {
        CHECK(count(html, fmt::format(" id=\"hole-{}\"", hole)) == 1);
        const std::string part = section(html, hole);
        CHECK(holds(part, fmt::format("Map of hole {}</title>", hole)));
        CHECK(count(part, "<desc") == 1);
        CHECK(count(part, "class=\"legend\"") == 1);
    }
    CHECK(holds(section(html, 1), "Long Ness"));
}

TEST_CASE("the page says the numbers of the plan", "[html]") {
    const fixture::PlanFixture made = fixture::two_holes();
    const PlanView view = made.view();
    const std::string html = plan_html(view);
    for (const int hole : {1, 2}) {
        const std::string part = section(html, hole);
        const HolePlan& plan = made.plan.holes[static_cast<std::size_t>(hole) - 1];
        CHECK(holds(part, sentence(verdict_words(view, static_cast<std::size_t>(hole) - 1))));
        CHECK(holds(part, sentence(certainty_words(plan))));
        CHECK(holds(part, sentence(capitalised(break_even_words(view, static_cast<std::size_t>(hole) - 1)))));
        for (const TeeChoice& choice : plan.choices) {
            CHECK(holds(part, fmt::format("<th scope=\"row\"><bdi>{}</bdi></th><td class=\"n\">{:.2f}</td>",
                                          made.golfer.clubs[choice.club].name, choice.expected_strokes)));
        }
    }
    // The round: 8.03 strokes, 0.08 more with the driver always, the same without it.
    CHECK(holds(html, "This plan</th><td class=\"n\">8.0</td>"));
    CHECK(holds(html, "longer</th><td class=\"n\">8.1</td><td class=\"n\">+0.08</td>"));
    CHECK(holds(html, "Never the driver</th><td class=\"n\">8.0</td><td class=\"n\">the same</td>"));
    CHECK(holds(html, "0.08 over <bdi>driver</bdi>"));
    CHECK(holds(html, sentence(why_not_driver_words(view, 0))));
    CHECK(holds(html, "toss-up"));
}

TEST_CASE("lengths are in the units asked for", "[html]") {
    const fixture::PlanFixture made = fixture::two_holes();
    const std::string yards = plan_html(made.view(DisplayUnits::yards));
    const std::string metres = plan_html(made.view(DisplayUnits::metres));
    CHECK(holds(section(yards, 1), "406\u00A0yd"));  // 371.5 m
    CHECK(holds(section(metres, 1), "372\u00A0m"));
    CHECK(holds(section(yards, 1), ">37 yd</text>"));  // landing width of 34 m, on the map
    CHECK(holds(section(metres, 1), ">34 m</text>"));
    CHECK_FALSE(holds(section(metres, 1), " yd"));
    CHECK_FALSE(holds(section(metres, 1), "\u00A0yd"));
    // Arcs every 50: the pin is 360 m or 394 yd from the tee as the crow flies.
    CHECK(holds(section(yards, 1), ">350</text>"));
    CHECK_FALSE(holds(section(yards, 1), ">400</text>"));
    CHECK(holds(section(metres, 1), ">350</text>"));
}

TEST_CASE("cautions, findings, assumptions and attribution are on the page", "[html]") {
    const fixture::PlanFixture made = fixture::two_holes();
    const std::string html = plan_html(made.view());
    for (const std::string& words : standing_cautions())
        CHECK(holds(html, sentence(words)));
    for (const Finding& finding : made.course.findings)
        CHECK(holds(html, sentence(finding.message)));
    for (const std::string& warning : made.plan.warnings)
        CHECK(holds(html, sentence(warning)));
    for (const AssumptionEntry& entry : list_assumptions(made.plan.assumptions)) {
        CHECK(holds(html, ">" + escaped(entry.name) + "<"));
    }
    CHECK(holds(html, made.course.attribution));
    CHECK(holds(html, "holm.osm"));
}

TEST_CASE("totals without a driver are left out, not invented", "[html]") {
    fixture::PlanFixture made = fixture::two_holes();
    made.plan.always_driver.reset();
    made.plan.never_driver.reset();
    made.golfer.clubs[0].kind = ClubKind::mini_driver;
    const std::string html = plan_html(made.view());
    CHECK_FALSE(holds(html, "Driver on every par 4"));
    CHECK_FALSE(holds(html, "Never the driver"));
    CHECK(holds(html, "no driver in this bag"));
    CHECK_FALSE(holds(html, "nan"));
}

TEST_CASE("lies are told apart without their colours", "[html]") {
    // Every lie that costs strokes has a pattern that no other lie has.
    std::set<MapPattern> patterns;
    for (const Lie lie :
         {Lie::bunker, Lie::trees, Lie::penalty_yellow, Lie::penalty_red, Lie::out_of_bounds}) {
        CHECK(lie_style(lie).pattern != MapPattern::none);
        CHECK(patterns.insert(lie_style(lie).pattern).second);
    }
    // Mown ground has edges.
    for (const Lie lie : {Lie::fairway, Lie::green, Lie::teeing_area})
        CHECK(lie_style(lie).stroke_px > 0.0);
}
