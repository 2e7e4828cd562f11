// How the text reports end: what it rests on, warnings, cautions, and where the map is from.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "courses/course.hpp"

namespace landwidth {

// A blank line, the heading, a line or more for each sentence; empty without sentences.
std::string bulleted(std::string_view heading, const std::vector<std::string>& sentences);

// "Map: ...", with the attribution the map asks for.
std::string map_line(const Course& course);

}  // namespace landwidth
