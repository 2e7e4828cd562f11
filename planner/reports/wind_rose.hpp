// A wind rose of one hole: which winds change the club on its tee, readable in black and white.
//
// Turned as the hole is played: the first leg goes up the page, so that a wind from the sector at the top is
// in the golfer's face. SVG for a page that carries wind_rose_style() and, once in its body,
// wind_rose_patterns().
#pragma once

#include <string>
#include <string_view>

#include "planner/reports/wind_card_reports.hpp"

namespace landwidth {

// `id` makes its identifiers unique in the page: letters, digits and hyphens.
std::string wind_rose(const WindCardView& view, std::size_t hole, const std::string& id);

std::string_view wind_rose_patterns();
std::string_view wind_rose_style();

// What its three fills mean, as an HTML list.
std::string wind_rose_legend();

}  // namespace landwidth
