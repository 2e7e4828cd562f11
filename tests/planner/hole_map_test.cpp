// The drawn map of a hole: where things stand on the sheet, and labels that can be read.
#include "planner/reports/hole_map.hpp"

#include <cmath>
#include <regex>
#include <string>
#include <vector>

#include "planner/reports/map_arcs.hpp"
#include "planner/reports/map_sheet.hpp"
#include "planner/reports/svg_writing.hpp"
#include "tests/catch.hpp"
#include "tests/planner/plan_fixture.hpp"

using namespace landwidth;
using Catch::Matchers::WithinAbs;

namespace {

Ring ellipse(Point centre, double half_wide, double half_long) {
    Ring ring;
    for (int i = 0; i < 36; ++i) {
        const double angle = i * 10.0 * radians_per_degree;
        ring.push_back(centre + Point{half_wide * std::cos(angle), half_long * std::sin(angle)});
    }
    return ring;
}

// The fixture's first hole on another line of play, on open ground with a fairway, or without one.
fixture::PlanFixture played_along(std::vector<Point> vertices, bool fairway = true) {
    fixture::PlanFixture made = fixture::two_holes();
    Hole& hole = made.course.holes[0];
    hole.line = LineOfPlay(std::move(vertices));
    std::vector<LieLayer> layers{{Lie::green, Region::disc(hole.line.pin(), 12.0)}};
    if (fairway) layers.push_back({Lie::fairway, Region::around(hole.line.vertices(), 15.0)});
    Box extent{hole.line.tee(), hole.line.tee()};
    for (const Point p : hole.line.vertices()) {
        extent.min = {std::min(extent.min.x, p.x), std::min(extent.min.y, p.y)};
        extent.max = {std::max(extent.max.x, p.x), std::max(extent.max.y, p.y)};
    }
    hole.lies = LiePartition(extent.grown(120.0), layers, std::nullopt);
    for (TeeChoice& choice : made.plan.holes[0].choices) {
        choice.aim = plane_bearing(hole.line.direction_at(0.0));
        choice.aim_point = hole.line.tee() + length(choice.aim_point) * along_bearing(choice.aim);
        if (!fairway) choice.landing.reset();
    }
    return made;
}

struct NamedHole {
    std::string name;
    fixture::PlanFixture made;
};

std::vector<NamedHole> holes_of_all_kinds() {
    std::vector<NamedHole> holes{
        {"short", played_along({{0, 0}, {0, 119}})},
        {"very short", played_along({{0, 0}, {15, -12}})},
        {"long", played_along({{0, 0}, {20, 250}, {-40, 420}, {0, 560}})},
        {"no fairway", played_along({{0, 0}, {-330, 10}}, false)},
        {"dogleg left", played_along({{0, 0}, {0, 220}, {-170, 240}})},
        {"dogleg right", played_along({{0, 0}, {210, 0}, {230, -180}})},
        {"hairpin", played_along({{0, 0}, {30, 200}, {160, 300}, {150, 180}})},
        {"there and back", played_along({{0, 0}, {0, 200}, {80, 200}, {80, 0}, {0, 0}})},
        {"two bends", played_along({{0, 0}, {0, 180}, {150, 260}, {330, 200}, {420, 300}})},
    };
    NamedHole wide{"huge pattern", played_along({{0, 0}, {0, 350}})};
    for (Club& club : wide.made.golfer.clubs) {
        if (club.pattern) club.pattern->usual.side_sd_m = 60.0;
        if (club.pattern) club.pattern->usual.carry_sd_m = 35.0;
        club.name = "a club with a very long name, " + club.name;
    }
    holes.push_back(std::move(wide));
    return holes;
}

struct Label {
    std::string text;
    LabelBox box;
};

// The labels of a map as drawn, with the boxes a reader's font may need.
std::vector<Label> labels_of(const std::string& svg) {
    static const std::regex label(R"re(<text class="([^"]*)" x="([^"]*)" y="([^"]*)"[^>]*>([^<]*)</text>)re");
    std::vector<Label> labels;
    for (auto it = std::sregex_iterator(svg.begin(), svg.end(), label); it != std::sregex_iterator(); ++it) {
        const std::string classes = " " + (*it)[1].str() + " ";
        const Anchor anchor = classes.find(" e ") != std::string::npos   ? Anchor::end
                              : classes.find(" m ") != std::string::npos ? Anchor::middle
                                                                         : Anchor::start;
        const LabelSpot spot{{std::stod((*it)[2]), std::stod((*it)[3])}, anchor};
        const bool large =
            classes.find("yd") == std::string::npos && classes.find("then") == std::string::npos;
        labels.push_back({(*it)[4], LabelPlacer::box_of((*it)[4], large ? 10.5 : 9.5, spot)});
    }
    return labels;
}

}  // namespace

TEST_CASE("play goes up the sheet", "[map]") {
    for (const NamedHole& hole : holes_of_all_kinds()) {
        INFO(hole.name);
        const LineOfPlay& line = hole.made.course.holes[0].line;
        if (distance(line.tee(), line.pin()) < 1.0) continue;  // there and back
        const MapSheet sheet(hole.made.course.holes[0], {}, line.vertices());
        const Point tee = sheet.to_sheet(line.tee());
        const Point pin = sheet.to_sheet(line.pin());
        CHECK_THAT(pin.x, WithinAbs(tee.x, 1e-9));
        CHECK(pin.y < tee.y);
        CHECK_THAT(distance(tee, pin), WithinAbs(sheet.px_per_m() * distance(line.tee(), line.pin()), 1e-9));
        // What lies right of someone who looks from the tee to the pin is right on the sheet.
        const Point right = line.tee() + 10.0 * to_the_right(unit(line.pin() - line.tee()));
        CHECK_THAT(sheet.to_sheet(right).x, WithinAbs(tee.x + 10.0 * sheet.px_per_m(), 1e-9));
    }
}

TEST_CASE("the whole line of play and the ellipses are on the sheet, and two sheets fit a page", "[map]") {
    const Ring landing = ellipse({0.0, 200.0}, 40.0, 25.0);
    for (const NamedHole& hole : holes_of_all_kinds()) {
        INFO(hole.name);
        const Hole& drawn = hole.made.course.holes[0];
        const MapSheet sheet(drawn, {landing}, {drawn.line.tee(), {0.0, 200.0}});
        CHECK(sheet.height_px() <= 500.0);
        CHECK(sheet.width_px() <= 300.0);
        std::vector<Point> points = drawn.line.vertices();
        if (drawn.line.length() > 250.0 && hole.name != "dogleg right" && hole.name != "no fairway") {
            points.insert(points.end(), landing.begin(), landing.end());
        }
        for (const Point p : points) {
            const Point at = sheet.to_sheet(p);
            CHECK(at.x > 0.0);
            CHECK(at.x < sheet.width_px());
            CHECK(at.y > 0.0);
            CHECK(at.y < sheet.ground_height_px());
        }
    }
}

TEST_CASE("an arc keeps its distance from the tee and stays on the ground", "[map]") {
    const LineOfPlay line({{0.0, 0.0}, {0.0, 230.0}, {70.0, 353.0}});
    const Region ground = Region::around(line.vertices(), 40.0);
    const auto arcs = distance_arcs(line, ground, DisplayUnits::yards);
    REQUIRE(arcs.size() == 7);  // the pin is 394 yd from the tee as the crow flies
    double number = 0.0;
    for (const DistanceArc& arc : arcs) {
        number += 50.0;
        CHECK_THAT(arc.distance, WithinAbs(number, 1e-12));
        for (const Point p : arc.points) {
            CHECK_THAT(distance(line.tee(), p), WithinAbs(Yards{number}.metres(), 1e-6));
            CHECK(ground.distance_to(p) < 0.5);
        }
        // Left to right, as seen from the tee.
        CHECK(cross(arc.points.front() - line.tee(), arc.points.back() - line.tee()) < 0.0);
    }
    CHECK(distance_arcs(line, ground, DisplayUnits::metres).size() == 7);
    CHECK(distance_arcs(LineOfPlay({{0, 0}, {0, 45}}), ground, DisplayUnits::yards).empty());
}

TEST_CASE("a label takes the first free spot on the sheet, or none", "[map]") {
    LabelPlacer placer(100.0, 50.0);
    const LabelSpot outside{{99.0, 25.0}, Anchor::start};
    const LabelSpot inside{{50.0, 25.0}, Anchor::middle};
    const LabelSpot above{{50.0, 10.0}, Anchor::middle};
    const auto first = placer.place("100", 10.0, {outside, inside});
    REQUIRE(first);
    CHECK_THAT(first->at.x, WithinAbs(50.0, 1e-12));
    const auto second = placer.place("200", 10.0, {inside, above});
    REQUIRE(second);
    CHECK_THAT(second->at.y, WithinAbs(10.0, 1e-12));
    CHECK_FALSE(placer.place("300", 10.0, {outside, inside, above}));
    placer.reserve({0.0, 30.0, 100.0, 50.0});
    CHECK_FALSE(placer.place("300", 10.0, {{{50.0, 40.0}, Anchor::middle}}));
}

TEST_CASE("labels neither overlap nor run off the map", "[map]") {
    for (const NamedHole& hole : holes_of_all_kinds()) {
        for (const DisplayUnits units : {DisplayUnits::yards, DisplayUnits::metres}) {
            INFO(hole.name);
            fixture::PlanFixture made = hole.made;
            const LineOfPlay& line = made.course.holes[0].line;
            // Some play on from where the tee shot lies, as a club with a long name.
            if (line.length() > 300.0) {
                made.plan.holes[0].next = fixture::own_field().plan.holes[0].next;
                for (PlannedShot& shot : made.plan.holes[0].next) {
                    shot.club = 0;
                    shot.from = line.point_at(0.6 * line.length());
                    shot.leave = line.pin();
                }
            }
            const std::string svg = hole_map(made.view(units), 0, "h").svg;
            static const std::regex view_box(R"re(viewBox="0 0 ([0-9.]+) ([0-9.]+)")re");
            std::smatch size;
            REQUIRE(std::regex_search(svg, size, view_box));
            const auto labels = labels_of(svg);
            for (std::size_t i = 0; i < labels.size(); ++i) {
                INFO(labels[i].text);
                CHECK(labels[i].box.left >= 0.0);
                CHECK(labels[i].box.top >= 0.0);
                CHECK(labels[i].box.right <= std::stod(size[1]));
                CHECK(labels[i].box.bottom <= std::stod(size[2]));
                for (std::size_t j = 0; j < i; ++j) {
                    INFO(labels[j].text);
                    CHECK_FALSE(labels[i].box.overlaps(labels[j].box));
                }
            }
        }
    }
}

TEST_CASE("the shots that follow are drawn from ball to ball and stay on the sheet", "[map]") {
    fixture::PlanFixture made = fixture::own_field();
    const HoleMap map = hole_map(made.view(), 0, "h");
    CHECK(map.legend.find("the shots that follow") != std::string::npos);
    static const std::regex ball(R"re(<circle class="ball" cx="([0-9.]+)" cy="([0-9.]+)")re");
    std::vector<Point> balls;
    for (auto it = std::sregex_iterator(map.svg.begin(), map.svg.end(), ball); it != std::sregex_iterator();
         ++it)
        balls.push_back({std::stod((*it)[1]), std::stod((*it)[2])});
    REQUIRE(balls.size() == 3);
    // Up the sheet, ball by ball; steps of 120.3 and 45.5 m, hypot(25, 38).
    CHECK(balls[0].y > balls[1].y);
    CHECK(balls[1].y > balls[2].y);
    CHECK_THAT(distance(balls[0], balls[1]) / distance(balls[1], balls[2]), WithinAbs(120.3 / 45.49, 0.02));
    // A ball far off the line of play widens the ground that is drawn.
    made.plan.holes[0].next[0].leave = {-140.0, 300.0};
    made.plan.holes[0].next[1].from = {-140.0, 300.0};
    const std::string wide = hole_map(made.view(), 0, "h").svg;
    static const std::regex view_box(R"re(viewBox="0 0 ([0-9.]+) ([0-9.]+)")re");
    std::smatch size;
    REQUIRE(std::regex_search(wide, size, view_box));
    for (auto it = std::sregex_iterator(wide.begin(), wide.end(), ball); it != std::sregex_iterator(); ++it) {
        CHECK(std::stod((*it)[1]) < std::stod(size[1]));
        CHECK(std::stod((*it)[2]) < std::stod(size[2]));
    }
    CHECK(hole_map(fixture::two_holes().view(), 0, "h").legend.find("follow") == std::string::npos);
}

TEST_CASE("both clubs, the landing width and every arc are labelled on an ordinary hole", "[map]") {
    const fixture::PlanFixture made = fixture::two_holes();
    std::string texts;
    for (const Label& label : labels_of(hole_map(made.view(), 0, "h").svg))
        texts += label.text + "|";
    for (const char* wanted : {"3-wood|", "driver|", "37 yd|", "50|", "100|", "150|", "200|", "250|", "300|",
                               "350|", "50 yd|", "N|"}) {
        INFO(wanted << " in " << texts);
        CHECK(texts.find(wanted) != std::string::npos);
    }
}

TEST_CASE("the legend names what is on the map and nothing else", "[map]") {
    const fixture::PlanFixture made = fixture::two_holes();
    const auto holds = [](const std::string& text, const char* part) {
        return text.find(part) != std::string::npos;
    };
    const std::string first = hole_map(made.view(), 0, "h").legend;
    CHECK(holds(first, "red penalty area"));
    CHECK_FALSE(holds(first, "yellow penalty area"));
    CHECK(holds(first, "trees"));
    CHECK(holds(first, "path"));
    CHECK(holds(first, "(next)"));
    const std::string second = hole_map(made.view(), 1, "h").legend;
    CHECK(holds(second, "yellow penalty area"));
    CHECK_FALSE(holds(second, "red penalty area"));
    CHECK_FALSE(holds(second, "trees"));
    CHECK_FALSE(holds(second, "landing width"));
}

TEST_CASE("a par 3 has no landing width on its map", "[map]") {
    fixture::PlanFixture made = fixture::two_holes();
    made.plan.holes[1].choices[0].landing = FairwayCut{-5.0, 4.0};
    const HoleMap map = hole_map(made.view(), 1, "h");
    CHECK(map.svg.find("10 yd") == std::string::npos);
    CHECK(map.legend.find("landing width") == std::string::npos);
}

TEST_CASE("coordinates have one decimal at most", "[map]") {
    CHECK(px(0.0) == "0");
    CHECK(px(-0.04) == "0");
    CHECK(px(0.26) == ".3");
    CHECK(px(-0.26) == "-.3");
    CHECK(px(12.0) == "12");
    CHECK(px(-12.34) == "-12.3");
    CHECK(path_data({}, false).empty());
    CHECK(path_data({{1.0, 2.0}, {3.04, 1.0}, {3.0, 0.5}}, true) == "M1 2l2 -1 0 -.5z");
    const fixture::PlanFixture made = fixture::two_holes();
    const std::string svg = hole_map(made.view(), 0, "h").svg;
    static const std::regex data("d=\"([^\"]*)\"");
    static const std::regex long_number(R"re(\.\d\d)re");
    for (auto it = std::sregex_iterator(svg.begin(), svg.end(), data); it != std::sregex_iterator(); ++it) {
        CHECK_FALSE(std::regex_search((*it)[1].str(), long_number));
    }
    CHECK(svg.size() < 20'000);
}
