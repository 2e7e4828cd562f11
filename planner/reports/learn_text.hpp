// What was learnt from recorded shots, for people: a table of clubs, then what was taken for a mishit and
// why.
#pragma once

#include <string>
#include <vector>

#include "golfer-profiles/learnt_golfer.hpp"
#include "golfer-profiles/pattern_prior.hpp"
#include "planner/reports/plan_view.hpp"

namespace landwidth {

struct LearnView {
    const LearntGolfer& learnt;
    const std::vector<NamedLog>& logs;
    const PatternPrior& weight;  // that it was learnt with
    DisplayUnits units = DisplayUnits::yards;
};

std::string learn_text(const LearnView& view);

}  // namespace landwidth
