// How likely each score on a hole is, as a table with a bar a row for the HTML report.
#pragma once

#include <string>

#include "planner/engine/score_distribution.hpp"

namespace landwidth {

// Empty for an empty distribution. The bars only repeat the numbers: a screen reader passes them over.
std::string score_bars(const ScoreDistribution& scores, int par);

}  // namespace landwidth
