// Parts that the HTML pages share; each returns HTML.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "planner/engine/assumptions.hpp"
#include "planner/reports/plan_view.hpp"

namespace landwidth {

// From the doctype to </head>; `title` is escaped here, `more_style` is CSS beside page_style(), without '<'
// and '&'.
std::string page_head(std::string_view title, std::string_view more_style = "");

// A bullet a sentence; the words are escaped here.
std::string bullet_list(const std::vector<std::string>& sentences);

// Folded away until it is asked for, and left out of print; `summary` is plain text without markup, `inside`
// HTML.
std::string details(std::string_view summary, const std::string& inside);

// The standing cautions for a setting (see setting_words), and the warnings where there are some.
std::string cautions_section(const std::vector<std::string>& warnings, std::string_view setting);

// Club by club: carry and side with one standard deviation of the usual shot, run, mishits, shots behind it.
// Clubs without a pattern are left out; of those that are `supposed`, no shots are behind it.
std::string pattern_table(const std::vector<const Club*>& clubs, DisplayUnits units,
                          const std::vector<const Club*>& supposed = {});

// All of the golfer's clubs in a pattern_table, folded away.
std::string patterns_details(const Golfer& golfer, DisplayUnits units);

// Every assumption with its value and source.
std::string assumptions_table(const std::vector<AssumptionEntry>& entries);
std::string assumptions_table(const Assumptions& assumptions);

// Source and attribution of every map; none for a page without a map.
std::string page_footer(const std::vector<const Course*>& courses);

}  // namespace landwidth
