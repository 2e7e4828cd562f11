// A small plan made by hand, for tests of the reports: no engine has touched its numbers.
//
// An invented course in the open sea with two holes. Hole "1" is a par 4 that bends right, with water on the
// left, woods and a boundary on the right and bunkers at the bend: the 3-wood, by 0.08 over the driver. Hole
// "2" is a par 3 over water: a toss-up of 7-iron and 6-iron.
#pragma once

#include "planner/reports/plan_view.hpp"

namespace landwidth::fixture {

struct PlanFixture {
    Course course;
    Golfer golfer;
    RoundPlan plan;

    PlanView view(DisplayUnits units = DisplayUnits::yards) const { return {course, golfer, plan, units}; }
};

// Numbers worth asserting on; every one of them is set in plan_fixture.cpp.
// - hole 1: length 371.5 m along the line of play; choices 3-wood, driver, 5-iron; best aimed 6.4 m (7 yd)
//   left of the centre line, at the left edge of a bunker 210.3 m (230 yd) out.
//   Flips below a landing width of 26 m (28 yd; 34 m now, 37 yd), above a side spread of 20.1 m (22 yd; 15 m,
//   16 yd) and below a carry of 183 m (200 yd; 189 m, 207 yd).
// - hole 2: length 146 m; choices 7-iron, 6-iron; best aimed on the centre line. Flips above a carry of 141.1
//   m (154.3 yd; 141 m, 154.2 yd) and at no side spread; no landing width.
PlanFixture two_holes();

// The same plan valued for the golfer's own clubs, a sand wedge among them:
// - hole 1: then a 7-iron of 120.3 m (132 yd) that lays up to 48 m (52 yd), 0.12 better than the 3-wood at
// the
//   green, and 60 % of a sand wedge; scores from 2 to 8 of shares 1, 11, 38, 32, 13, 4, 1 %, mean 4.61; a
//   cost map of 50 x 110 cells.
// - hole 2: scores from 2 to 6 of shares 12, 44, 35, 8, 1 %, mean 3.42.
// - the round: 8.03, standard deviation 1.357 = sqrt(1.1379 + 0.7036).
PlanFixture own_field();

// The same on a day: 12 mph from 240 with gusts of 18, 8 C, 1002 hPa, humidity 60 %, soft fairways, heights
// known.
// - hole 1: plays as 362.1 m (396 yd), 5.5 m (6 yd) up, wind 6 mph behind and 10 from the left; the 3-wood
//   carries 194 m (212 yd), drifts 8.2 m (9 yd) right, runs 11 m (12 yd), and 3 % of its balls are stopped.
// - hole 2: plays as 158 m (173 yd), level, wind 10 mph against and 6 from the left; the 7-iron carries 130 m
//   (142 yd), drifts 4.6 m (5 yd) right; the 6-iron carries 138 m (151 yd) without drift.
PlanFixture windy_day();

// The same, aimed at Stableford points: 1.96 and 1.62 on the holes, by 0.11 over the driver on hole 1, where
// a stroke is received; and aimed at par or better: on 50.0 and 56.0 % of such holes, by 2.1 % over the
// driver.
PlanFixture own_field_for_points();
PlanFixture own_field_for_par();

// The same plan with names that try to break a report: markup, quotes, right-to-left, emoji, very long,
// control characters, bytes that are no UTF-8.
PlanFixture hostile_names();

}  // namespace landwidth::fixture
