// The parts that every HTML page of the program has in common.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "planner/engine/assumptions.hpp"
#include "planner/reports/plan_view.hpp"

namespace landwidth {

// From the doctype to </head>; `more_style` is CSS beside page_style(), without '<' and '&'.
std::string page_head(std::string_view title, std::string_view more_style);

// An unordered list, one sentence an item.
std::string list_of_sentences(const std::vector<std::string>& sentences);

// The standing cautions, and warnings where there are some.
std::string cautions_section(const std::vector<std::string>& warnings);

// Club by club: carry and side with one standard deviation of the usual shot, run, mishits, shots behind it.
// Clubs without a pattern are left out.
std::string pattern_table(const std::vector<const Club*>& clubs, DisplayUnits units);

// Every assumption; a changed one says so: "changed for this plan" where `page` is "plan".
std::string assumption_table(const Assumptions& assumptions, std::string_view page);

// Source and attribution of every map.
std::string page_footer(const std::vector<const Course*>& courses);

}  // namespace landwidth
