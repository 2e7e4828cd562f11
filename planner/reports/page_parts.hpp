// Parts that the HTML pages share; each returns HTML.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "planner/engine/assumptions.hpp"
#include "planner/reports/plan_view.hpp"

namespace landwidth {

// A bullet a sentence; the words are escaped here.
std::string bullet_list(const std::vector<std::string>& sentences);

// Folded away until it is asked for; `summary` is plain text without markup, `inside` HTML.
std::string details(std::string_view summary, const std::string& inside);

// The golfer's clubs with a pattern, folded away.
std::string patterns_details(const Golfer& golfer, DisplayUnits units);

// Every assumption with its value and source.
std::string assumptions_table(const Assumptions& assumptions);

}  // namespace landwidth
