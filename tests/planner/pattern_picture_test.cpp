// The picture of shot patterns over each other.
#include "planner/reports/pattern_picture.hpp"

#include <algorithm>
#include <cmath>
#include <regex>
#include <stdexcept>

#include "tests/catch.hpp"
#include "tests/planner/page_checks.hpp"
#include "tests/planner/weigh_fixture.hpp"

using namespace landwidth;

namespace {

std::size_t count(const std::string& text, const std::string& part) {
    std::size_t found = 0;
    for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + part.size()))
        ++found;
    return found;
}

// A round pattern without a tail: its ellipses are circles, and their size is known in closed form.
Club round_club(double sd_m) {
    Club club;
    club.name = "round";
    club.pattern = ShotPattern{};
    club.pattern->usual = {{200.0, 0.0}, sd_m, sd_m, 0.0};
    return club;
}

struct Extent {
    double width, height;
};

// Of the first path of a class, whose data are one start and steps from point to point.
Extent extent_of(const std::string& svg, const std::string& css_class) {
    const std::regex path("<path class=\"" + css_class + "\" d=\"M([^\"]*)z\"");
    std::smatch found;
    REQUIRE(std::regex_search(svg, found, path));
    const std::string data = found[1];
    const std::regex number("-?[0-9]*\\.?[0-9]+");
    std::vector<double> values;
    for (std::sregex_iterator i(data.begin(), data.end(), number), end; i != end; ++i)
        values.push_back(std::stod(i->str()));
    REQUIRE(values.size() > 8);
    double x = 0.0, y = 0.0, left = 1e9, right = -1e9, top = 1e9, bottom = -1e9;
    for (std::size_t i = 0; i + 1 < values.size(); i += 2) {
        x += values[i];
        y += values[i + 1];
        left = std::min(left, x), right = std::max(right, x);
        top = std::min(top, y), bottom = std::max(bottom, y);
    }
    return {right - left, bottom - top};
}

}  // namespace

TEST_CASE("a round pattern is drawn round, and its rims hold half and nine tenths", "[picture]") {
    const Club club = round_club(15.0);
    const std::string html = pattern_picture({{&club, {}}}, DisplayUnits::metres);
    const Extent outer = extent_of(html, "outer p0");
    const Extent inner = extent_of(html, "inner p0");
    CHECK(outer.width == Approx(outer.height).margin(0.3));
    // A bivariate normal holds 1 - exp(-r^2 / 2) within r standard deviations.
    const double ratio = std::sqrt(std::log(1.0 - 0.5) / std::log(1.0 - 0.9));
    CHECK(inner.width / outer.width == Approx(ratio).epsilon(0.01));
    // 2 x 15 m x sqrt(-2 ln 0.1) = 64.4 m.
    CHECK(holds(html, ">200 m carry, 64 m wide</text>"));
}

TEST_CASE("a club that goes two ways has lines for each, and none about the empty middle", "[picture]") {
    Club club = round_club(30.0);
    club.pattern->ways = {Way{0.5, 0.0, -0.95, 1.0, 0.3, 0.0}, Way{0.5, 0.0, 0.95, 1.0, 0.3, 0.0}};
    const std::string html = pattern_picture({{&club, {}}}, DisplayUnits::metres);
    check_self_contained(html);
    const auto lines = [&](const std::string& css_class) {
        return count(html, "<path class=\"" + css_class + " p0\" d=\"M");
    };
    CHECK(lines("outer") == 2);
    CHECK(lines("inner") == 2);
    const Extent outer = extent_of(html, "outer p0");
    CHECK(outer.width == Approx(0.3 * outer.height).epsilon(0.02));
    // 2 x 0.95 x 30 m between the middles, 2 x 9 m x sqrt(-2 ln 0.1) of one way.
    CHECK(holds(html, ">200 m carry, 96 m wide</text>"));
    CHECK(holds(html,
                "goes two ways, 50 % about 29 m left, 50 % about 29 m right: each way has lines of its own"));
}

TEST_CASE("every shot is marked where it landed, mishits crossed", "[picture]") {
    const fixture::WeighFixture made = fixture::two_changes();
    const std::vector<PicturedPattern> patterns{{&made.golfer.clubs[6], {0.01, 0.02, 0.01, 0.97}},
                                                {&made.golfer.clubs[1], {}}};
    const std::string html = pattern_picture(patterns, DisplayUnits::yards);
    check_self_contained(html);
    // Four shots, one mark at the label and one in the legend.
    CHECK(count(html, "class=\"shot p0\"") == 3 + 2);
    CHECK(count(html, "class=\"shot p0 missed\"") == 1);
    CHECK(count(html, "class=\"cross p0\"") == 2);
    CHECK(count(html, "class=\"shot p1\"") == 2);
    CHECK(holds(html, ">driver, 44 in</text>"));
    CHECK(holds(html, ">219 yd carry, "));
    CHECK(holds(html, "<bdi>driver, 44 in</bdi>: 4 shots, 1 taken for a mishit"));
    CHECK(holds(html, "<bdi>3-wood</bdi>: no recorded shots at hand"));
    CHECK_FALSE(holds(html, "not drawn"));
}

TEST_CASE("a shot far outside is told and does not shrink the patterns", "[picture]") {
    Club club = round_club(15.0);
    const std::string without = pattern_picture({{&club, {}}}, DisplayUnits::metres);
    CHECK(holds(without, "No recorded shots: the patterns are typical ones."));
    club.learnt_from = LearntFrom{*club.pattern, {{200.0, 3.0}, {5.0, 0.0}}};
    const std::string with = pattern_picture({{&club, {0.0, 1.0}}}, DisplayUnits::metres);
    CHECK(extent_of(with, "outer p0").width == Approx(extent_of(without, "outer p0").width));
    CHECK(holds(with, "1 shot landed so far from all patterns that it is not drawn."));
}

TEST_CASE("a picture holds one to four patterns", "[picture]") {
    const Club club = round_club(15.0);
    CHECK_THROWS_AS(pattern_picture({}, DisplayUnits::yards), std::logic_error);
    CHECK_THROWS_AS(pattern_picture(std::vector<PicturedPattern>(5, {&club, {}}), DisplayUnits::yards),
                    std::logic_error);
    CHECK_NOTHROW(pattern_picture(std::vector<PicturedPattern>(4, {&club, {}}), DisplayUnits::yards));
}

TEST_CASE("labels of flat patterns stay on the picture, one above the other", "[picture]") {
    Club club = round_club(1.0);
    club.pattern->usual.side_sd_m = 60.0;
    const std::string html =
        pattern_picture(std::vector<PicturedPattern>(4, {&club, {}}), DisplayUnits::metres);
    const std::regex label("<text class=\"club p[0-3]\" x=\"[0-9.]+\" y=\"([0-9.]+)\"");
    double above = 0.0;
    int labels = 0;
    for (std::sregex_iterator i(html.begin(), html.end(), label), end; i != end; ++i, ++labels) {
        CHECK(std::stod((*i)[1]) >= above + 20.0);
        above = std::stod((*i)[1]);
    }
    CHECK(labels == 4);
}
