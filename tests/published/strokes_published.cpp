// The strokes tables and the handicap adjustment against what is published.
#include <fstream>
#include <sstream>
#include <string>

#include "planner/engine/assumptions.hpp"
#include "planner/engine/handicap_adjustment.hpp"
#include "planner/engine/published_field.hpp"
#include "planner/engine/tour_table.hpp"
#include "tests/catch.hpp"

using namespace landwidth;
using Catch::Matchers::WithinAbs;

namespace {

Golfer golfer_of(double handicap) {
    Golfer golfer;
    golfer.handicap_index = handicap;
    return golfer;
}

}  // namespace

// Source: M. Broadie, Assessing Golfer Performance on the PGA TOUR, Interfaces 42(2), 2012, table 9.
TEST_CASE("tour strokes at every node of the published table", "[published][strokes]") {
    std::ifstream file(LANDWIDTH_TESTS_DIR "/published/data/tour_strokes.csv");
    std::string line;
    REQUIRE(std::getline(file, line));
    REQUIRE(line == "distance_yd,tee,fairway,rough,sand,recovery");
    int nodes = 0;
    while (std::getline(file, line)) {
        std::istringstream cells(line);
        std::string cell;
        std::getline(cells, cell, ',');
        const Yards distance{std::stod(cell)};
        for (const TourLie lie :
             {TourLie::tee, TourLie::fairway, TourLie::rough, TourLie::sand, TourLie::recovery}) {
            std::getline(cells, cell, ',');
            if (cell.empty()) continue;
            CHECK_THAT(tour_strokes(lie, distance), WithinAbs(std::stod(cell), 1e-12));
            ++nodes;
        }
    }
    CHECK(nodes == 35 * 4 + 26);
}

// The published field of a golfer at tour level is the table, whatever the way it is tabulated inside.
TEST_CASE("the published field of a tour player is the table", "[published][strokes]") {
    const EngineAssumptions constants = default_assumptions().engine;
    Golfer golfer = golfer_of(constants.tour_handicap);
    const StrokesByDistance field(golfer, constants);
    for (const TourRow& row : tour_table()) {
        const double metres = Yards{row.distance_yd}.metres();
        CHECK_THAT(field.strokes(Lie::fairway, metres), WithinAbs(row.strokes[1], 2e-3));
        CHECK_THAT(field.strokes(Lie::rough, metres), WithinAbs(row.strokes[2], 2e-3));
        CHECK_THAT(field.strokes(Lie::bunker, metres), WithinAbs(row.strokes[3], 2e-3));
        CHECK_THAT(field.strokes(Lie::trees, metres), WithinAbs(row.strokes[4], 2e-3));
    }
}

// Source: M. Broadie, Assessing Golfer Performance on the PGA TOUR, 2012: worked examples, about 1.1 strokes
// from 4 ft and 1.8 from 16 ft ("about": to the digit printed).
TEST_CASE("tour putts: the paper's worked examples", "[published][strokes]") {
    CHECK_THAT(tour_putts(4.0), WithinAbs(1.1, 0.05));
    CHECK_THAT(tour_putts(16.0), WithinAbs(1.8, 0.05));
}

// Source: M. Broadie, Every Shot Counts, 2014: half the putts holed from 8 ft on tour, from 5 ft by a golfer
// who scores about 90 (taken as an 18 handicap). Holing half, with hardly a three-putt, is 1.5 putts.
TEST_CASE("half the putts holed: 8 ft on tour, 5 ft for a 90-shooter", "[published][strokes]") {
    const EngineAssumptions constants = default_assumptions().engine;
    CHECK_THAT(tour_putts(8.0), WithinAbs(1.5, 0.01));
    const StrokesByDistance field(golfer_of(18.0), constants);
    CHECK_THAT(field.strokes(Lie::green, 5.0 * metres_per_foot), WithinAbs(1.5, 0.01));
}

// Source: USGA Course Rating System, yardage ratings L/220 + 40.9 (scratch men) and L/160 + 50.7 (bogey men),
// both from memory: the bogey golfer's extra strokes over 18 holes of a total length L.
TEST_CASE("bogey golfer against scratch golfer: the yardage ratings' difference", "[published][strokes]") {
    const EngineAssumptions constants = default_assumptions().engine;
    const HandicapAdjustment scratch(golfer_of(0.0), constants);
    const HandicapAdjustment bogey(golfer_of(constants.bogey_handicap), constants);
    for (const double total_yd : {5400.0, 6000.0, 6500.0, 7000.0}) {
        const double hole_m = Yards{total_yd / 18.0}.metres();
        const double ours = 18.0 * (bogey.extra_strokes(hole_m) - scratch.extra_strokes(hole_m));
        const double published = (total_yd / 160.0 + 50.7) - (total_yd / 220.0 + 40.9);
        CHECK_THAT(ours, WithinAbs(published, 0.05));
    }
}
