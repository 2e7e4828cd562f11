// The lines and marks that tell the clubs of a pattern picture apart, also without their colours, and its
// style.
#pragma once

#include <cstddef>
#include <string>

#include "geometry/point.hpp"

namespace landwidth {

// There are so many line patterns and marks; more patterns would hide each other.
inline constexpr std::size_t most_pictured = 4;

// A recorded shot, in SVG: circle, square, triangle or diamond by the number of the club (below
// most_pictured); a mishit is hollow and crossed.
std::string pattern_mark(std::size_t club, Point at, bool mishit);

// Line and mark of a club for a legend, as an SVG of its own.
std::string pattern_swatch(std::size_t club);

// CSS of the picture, for the page's style sheet: classes outer and inner for the ellipses, tie for the line
// to a label, each with p0, p1, ... for the club.
std::string pattern_picture_style();

}  // namespace landwidth
