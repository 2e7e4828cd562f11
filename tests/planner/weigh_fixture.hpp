// A comparison of bags made by hand, for tests of its reports: no engine has touched its numbers.
#pragma once

#include "planner/reports/weigh_reports.hpp"
#include "tests/planner/plan_fixture.hpp"

namespace landwidth::fixture {

struct WeighFixture {
    std::vector<Course> courses;
    Golfer golfer;
    Weighing weighing;

    WeighView view(DisplayUnits units = DisplayUnits::yards) const {
        return {courses, golfer, weighing, units};
    }
};

// The two holes and the golfer of plan_fixture, with a "driver, 44 in" on trial, 200 m (219 yd) of carry,
// learnt from four shots, the last of them, at 120 m and 30 m right, taken for a mishit (chance 0.97).
// - "driver, 44 in for driver": 8.03 to 7.88 strokes, +0.15, interval -0.04 to +0.31, chance 0.91, open; nine
//   more shots would make it 95 % sure, worth 0.02. Hole 1: 3-wood to the new driver, +0.15, sure 0.88,
//   fairway 58 to 49 %, out of bounds 1 to 4 %, 10 m less to go. Hole 2 as today.
// - "without 5-iron": nothing changes at all.
WeighFixture two_changes();

// The supposed 44 in driver against the 44 in driver, which is on trial.
WeighFixture builds_compared();
// The two changes as if the two holes were straight ones.
WeighFixture without_course();

// The same with names that try to break a report.
WeighFixture hostile_weighing();

// The same, on the course twice.
WeighFixture two_courses();

}  // namespace landwidth::fixture
