// What was learnt from recorded shots, for people: a table of clubs, the recorded shots by themselves beside
// what the model makes of them, then what was taken for a mishit and why.
#pragma once

#include <string>
#include <vector>

#include "golfer-profiles/learnt_golfer.hpp"
#include "planner/reports/plan_view.hpp"

namespace landwidth {

struct LearnView {
    const LearntGolfer& learnt;
    const std::vector<NamedLog>& logs;
    DisplayUnits units = DisplayUnits::yards;
};

std::string learn_text(const LearnView& view);

}  // namespace landwidth
