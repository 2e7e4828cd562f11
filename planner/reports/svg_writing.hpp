// Short SVG: path data and text of a map sheet with one decimal and steps relative to the point before.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "planner/reports/map_sheet.hpp"

namespace landwidth {

// "12.5", "-3", ".4": at most one decimal, never "-0".
std::string px(double value);

// Path data of an open or closed line of sheet points.
std::string path_data(const std::vector<Point>& sheet_points, bool closed);

// Path data of a region as drawn on the sheet: outer and inner rings, for the even-odd rule. Specks that
// nobody could see are left out.
std::string path_data(const Region& region, const MapSheet& sheet);

// The same of one ring.
std::string ring_data(const Ring& ring, const MapSheet& sheet);

// <path> with a class of the page's style.
std::string path_element(std::string_view css_class, std::string_view data);

// <text>, its content escaped; `css_class` sets the font.
std::string text_element(std::string_view css_class, const LabelSpot& spot, std::string_view text);

}  // namespace landwidth
