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
// - hole 2: length 146 m; choices 7-iron, 6-iron; best aimed on the centre line.
PlanFixture two_holes();

// The same plan with names that try to break a report: markup, quotes, right-to-left, emoji, very long,
// control characters, bytes that are no UTF-8.
PlanFixture hostile_names();

}  // namespace landwidth::fixture
