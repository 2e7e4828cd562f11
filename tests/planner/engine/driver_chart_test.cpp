// The driver chart: against holes solved on their own, in the mirror, against a closed form and common
// practice.
#include "planner/engine/driver_chart.hpp"

#include <tbb/global_control.h>

#include <cstring>
#include <string>

#include "geometry/error.hpp"
#include "golfer-profiles/profile_file.hpp"
#include "tests/catch.hpp"
#include "tests/planner/engine/solved_hole.hpp"

using namespace landwidth;
using namespace landwidth::fixture;
using Catch::Matchers::WithinAbs;

namespace {

std::vector<double> metres_of(const std::vector<double>& yards) {
    std::vector<double> metres;
    for (const double value : yards)
        metres.push_back(Yards{value}.metres());
    return metres;
}

DriverChart chart_of(const Golfer& golfer, ChartTrouble trouble, const std::vector<double>& widths_yd,
                     const std::vector<double>& lengths_yd) {
    ChartRequest request;
    request.trouble = trouble;
    request.widths_m = metres_of(widths_yd);
    request.lengths_m = metres_of(lengths_yd);
    return driver_chart(golfer, request);
}

Golfer demo_golfer(const std::string& name) {
    return read_profile(std::string(LANDWIDTH_TESTS_DIR) + "/../demo/golfers/" + name + ".json").golfer;
}

// The driver's side spread so many times as large.
Golfer with_driver_spread(Golfer golfer, double factor) {
    golfer.clubs[0].pattern->usual.side_sd_m *= factor;
    return golfer;
}

Golfer with_clubs(std::initializer_list<std::size_t> kept) {
    Golfer golfer = club_golfer();
    std::vector<Club> clubs;
    for (const std::size_t club : kept)
        clubs.push_back(golfer.clubs[club]);
    golfer.clubs = clubs;
    return golfer;
}

// The share of balls that land within half a width of the usual shot, in closed form.
double share_on(const ShotPattern& pattern, double width_m) {
    const double centre = pattern.usual.centre.side_m;
    return share_left_of(pattern, centre + 0.5 * width_m) - share_left_of(pattern, centre - 0.5 * width_m);
}

}  // namespace

TEST_CASE("the hole of a chart: one width of fairway, rough, then the trouble", "[chart]") {
    const Assumptions assumptions = default_assumptions();
    const auto lie_at = [&](ChartTrouble trouble, double x_yd, double y_yd) {
        return chart_hole(Yards{30}.metres(), Yards{400}.metres(), trouble, assumptions)
            .lies.lie_at(yd(x_yd, y_yd));
    };
    for (const ChartTrouble trouble : all_chart_troubles) {
        CAPTURE(chart_trouble_name(trouble));
        for (const double side : {-1.0, 1.0}) {
            CHECK(lie_at(trouble, side * 14.9, 200) == Lie::fairway);
            CHECK(lie_at(trouble, side * 15.1, 200) == Lie::rough);
            CHECK(lie_at(trouble, side * 29.9, 200) == Lie::rough);
        }
        CHECK(lie_at(trouble, 0, 50) == Lie::rough);
        CHECK(lie_at(trouble, 0, 390) == Lie::green);
        CHECK(lie_at(trouble, 11.9, 400) == Lie::green);
    }
    CHECK(lie_at(ChartTrouble::rough, 30.1, 200) == Lie::rough);
    CHECK(lie_at(ChartTrouble::trees, 30.1, 200) == Lie::trees);
    CHECK(lie_at(ChartTrouble::trees, -30.1, 200) == Lie::trees);
    CHECK(lie_at(ChartTrouble::water_left, -30.1, 200) == Lie::penalty_red);
    CHECK(lie_at(ChartTrouble::water_left, 30.1, 200) == Lie::rough);
    CHECK(lie_at(ChartTrouble::out_right, 30.1, 200) == Lie::out_of_bounds);
    CHECK(lie_at(ChartTrouble::out_right, -30.1, 200) == Lie::rough);

    const Hole longest =
        chart_hole(Yards{30}.metres(), Yards{560}.metres(), ChartTrouble::rough, assumptions);
    const Hole shorter = chart_hole_shortened(longest, Yards{300}.metres(), assumptions);
    CHECK_THAT(shorter.line.length(), WithinAbs(Yards{300}.metres(), 1e-9));
    CHECK(shorter.line.pin() == longest.line.pin());
    CHECK(longest.par == 5);
    CHECK(shorter.par == 4);
    // Even where the length would make a par 3.
    CHECK(chart_hole_shortened(longest, Yards{210}.metres(), assumptions).par == 4);
}

TEST_CASE("a shorter hole is the longest one's ground: as if it were solved on its own", "[chart]") {
    const std::vector<double> lengths{300, 380, 460, 540};
    for (const ChartTrouble trouble : {ChartTrouble::rough, ChartTrouble::trees, ChartTrouble::out_left}) {
        const DriverChart shared = chart_of(uneven_golfer(), trouble, {30}, lengths);
        for (std::size_t i = 0; i < lengths.size(); ++i) {
            const DriverChart alone = chart_of(uneven_golfer(), trouble, {30}, {lengths[i]});
            const ChartCell& a = shared.cell(0, i);
            const ChartCell& b = alone.cell(0, 0);
            CAPTURE(chart_trouble_name(trouble), lengths[i], a.driver_saves - b.driver_saves);
            CHECK(shared.pars[i] == alone.pars[0]);
            CHECK(a.control.club == b.control.club);
            // Measured up to 0.0010 and 0.0004: the few balls topped to where the fairway starts. Between
            // trees up to 0.0017 and 0.0012: their cells begin with the ground of the longest hole.
            const bool trees = trouble == ChartTrouble::trees;
            const double strokes = trees ? 0.0025 : 0.0015;
            CHECK_THAT(a.driver.expected_strokes, WithinAbs(b.driver.expected_strokes, strokes));
            CHECK_THAT(a.control.expected_strokes, WithinAbs(b.control.expected_strokes, strokes));
            CHECK_THAT(a.driver_saves, WithinAbs(b.driver_saves, trees ? 0.0018 : 0.0008));
        }
    }
}

TEST_CASE("a mirrored golfer with the trouble on the other side: the same chart", "[chart]") {
    const std::vector<double> lengths{340, 420, 520};
    for (const auto& [here, there] : {std::pair{ChartTrouble::water_left, ChartTrouble::water_right},
                                      std::pair{ChartTrouble::out_left, ChartTrouble::out_right}}) {
        const DriverChart a = chart_of(uneven_golfer(), here, {24, 44}, lengths);
        const DriverChart b = chart_of(mirrored(uneven_golfer()), there, {24, 44}, lengths);
        for (std::size_t i = 0; i < a.cells.size(); ++i) {
            CAPTURE(i, a.cells[i].driver_saves, b.cells[i].driver_saves);
            // As in symmetry_test.cpp, the blocks of the grid do not lie the same in the mirror: measured up
            // to 0.0070 and 0.0014.
            CHECK_THAT(b.cells[i].driver.expected_strokes,
                       WithinAbs(a.cells[i].driver.expected_strokes, 0.008));
            CHECK_THAT(b.cells[i].driver_saves, WithinAbs(a.cells[i].driver_saves, 0.003));
        }
    }
}

TEST_CASE("a wilder driver needs a wider landing", "[chart]") {
    const std::vector<double> widths{16, 24, 32, 40, 48, 56, 64, 72, 80, 88, 96};
    const std::vector<double> lengths{360, 440};
    double last = 0.0;
    for (const double factor : {1.0, 1.3, 1.6}) {
        const DriverChart chart =
            chart_of(with_driver_spread(club_golfer(), factor), ChartTrouble::trees, widths, lengths);
        // The widest turn; the driver pays at every width: 0; at none: beyond the chart.
        const std::optional<EvenWidth>& turn = chart.break_evens[0];
        const double width = turn ? turn->width_m : chart.cell(0, 0).driver_saves >= 0.0 ? 0.0 : 1e3;
        CAPTURE(factor, to_yards(width));
        CHECK(width >= last);
        if (turn) CHECK(turn->driver_pays_beyond);
        last = width;
        // And at every place of the chart it saves less than a straighter one would.
        if (factor == 1.0) continue;
        const DriverChart straighter = chart_of(club_golfer(), ChartTrouble::trees, {24, 48}, lengths);
        const DriverChart wilder =
            chart_of(with_driver_spread(club_golfer(), factor), ChartTrouble::trees, {24, 48}, lengths);
        for (std::size_t i = 0; i < wilder.cells.size(); ++i)
            CHECK(wilder.cells[i].driver_saves < straighter.cells[i].driver_saves - 0.01);
    }
    CHECK(last > Yards{40}.metres());
}

// A yard more of fairway helps the club that lands more balls on that yard: at first the straighter one, from
// some width on the wilder. Between the two the driver is least worth its length.
TEST_CASE("rough only: the driver is least attractive where the patterns say, in closed form", "[chart]") {
    const Golfer golfer = demo_golfer("long-wild");
    const std::vector<double> widths{16, 24, 32, 40, 48, 56, 64, 72, 80, 90, 100};
    const DriverChart chart = chart_of(golfer, ChartTrouble::rough, widths, {420, 460});
    for (std::size_t length = 0; length < 2; ++length) {
        std::size_t worst = 0, closed = 0;
        double most = 0.0;
        for (std::size_t i = 0; i < widths.size(); ++i) {
            if (chart.cell(i, length).driver_saves < chart.cell(worst, length).driver_saves) worst = i;
            const double advantage = share_on(*golfer.club("mini-driver")->pattern, chart.widths_m[i]) -
                                     share_on(*golfer.club("driver")->pattern, chart.widths_m[i]);
            if (advantage > most) {
                most = advantage;
                closed = i;
            }
        }
        CAPTURE(chart.lengths_m[length], widths[worst], widths[closed]);
        CHECK(std::abs(widths[worst] - widths[closed]) <= 8.0);
        // Beyond it, wider never makes the driver less attractive; before it, never more (0.004: the noise).
        for (std::size_t i = 1; i < widths.size(); ++i) {
            const double step = chart.cell(i, length).driver_saves - chart.cell(i - 1, length).driver_saves;
            CAPTURE(widths[i], step);
            if (i > worst)
                CHECK(step > -0.004);
            else
                CHECK(step < 0.004);
        }
    }
}

TEST_CASE("common practice, no source: who gains from a control club", "[chart]") {
    const std::vector<double> widths{20, 32, 44, 60};
    const std::vector<double> lengths{320, 400, 460};
    const DriverChart wild = chart_of(demo_golfer("long-wild"), ChartTrouble::trees, widths, lengths);
    const DriverChart straight =
        chart_of(demo_golfer("short-straight"), ChartTrouble::trees, widths, lengths);
    for (std::size_t length = 0; length < lengths.size(); ++length) {
        CAPTURE(lengths[length]);
        // The wild, fast golfer does, and the more the narrower the hole.
        for (std::size_t i = 0; i < widths.size(); ++i) {
            CAPTURE(widths[i]);
            CHECK(wild.cell(i, length).driver_saves < 0.0);
            CHECK(wild.cell(i, length).confidence > 0.65);
            if (i > 0)
                CHECK(wild.cell(i, length).driver_saves > wild.cell(i - 1, length).driver_saves - 0.004);
            // The short, straight golfer does better with the driver.
            CHECK(straight.cell(i, length).driver_saves > 0.0);
        }
        CHECK(wild.cell(3, length).driver_saves > wild.cell(0, length).driver_saves + 0.03);
    }
}

TEST_CASE("break-evens lie where the difference crosses zero", "[chart]") {
    const DriverChart chart =
        chart_of(with_driver_spread(club_golfer(), 1.6), ChartTrouble::trees, {16, 40, 64, 88}, {360, 440});
    for (std::size_t length = 0; length < chart.lengths_m.size(); ++length) {
        const auto saves = [&](std::size_t width) { return chart.cell(width, length).driver_saves; };
        const std::optional<EvenWidth>& turn = chart.break_evens[length];
        const bool one_sign = (saves(0) < 0) == (saves(1) < 0) && (saves(1) < 0) == (saves(2) < 0) &&
                              (saves(2) < 0) == (saves(3) < 0);
        CHECK(turn.has_value() != one_sign);
        if (!turn) continue;
        std::size_t above = 1;
        while (chart.widths_m[above] < turn->width_m)
            ++above;
        CHECK((saves(above) >= 0.0) == turn->driver_pays_beyond);
        CHECK((saves(above) < 0.0) != (saves(above - 1) < 0.0));
        const double share =
            (turn->width_m - chart.widths_m[above - 1]) / (chart.widths_m[above] - chart.widths_m[above - 1]);
        CHECK_THAT(saves(above - 1) + share * (saves(above) - saves(above - 1)), WithinAbs(0.0, 1e-9));
    }
}

TEST_CASE("a chart needs a driver and something else", "[chart]") {
    const auto message = [](const Golfer& golfer) {
        try {
            chart_of(golfer, ChartTrouble::rough, {30}, {400});
        } catch (const InputError& error) {
            return std::string(error.what());
        }
        return std::string();
    };
    CHECK(message(with_clubs({1, 2, 3, 6})).find("has none with a shot pattern") != std::string::npos);
    CHECK(message(with_clubs({0})).find("another tee club") != std::string::npos);
    // A wedge is no tee club on a hole of 400 yd.
    CHECK(message(with_clubs({0, 6})).find("long enough") != std::string::npos);
}

TEST_CASE("a chart is the same on one thread or many", "[chart]") {
    const auto numbers = [](std::size_t threads) {
        const tbb::global_control limit(tbb::global_control::max_allowed_parallelism, threads);
        std::vector<double> all;
        for (const ChartCell& cell :
             chart_of(uneven_golfer(), ChartTrouble::water_right, {20, 28, 36, 44}, {330, 470}).cells)
            for (const double value : {cell.driver.expected_strokes, cell.control.expected_strokes,
                                       cell.driver_saves, cell.confidence})
                all.push_back(value);
        return all;
    };
    const std::vector<double> one = numbers(1);
    const std::vector<double> many = numbers(4);
    REQUIRE(one.size() == many.size());
    CHECK(std::memcmp(one.data(), many.data(), one.size() * sizeof(double)) == 0);
}
