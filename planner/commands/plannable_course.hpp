// Whether a course read from a map can be planned, and what to tell about it.
#pragma once

#include <string>
#include <vector>

#include "courses/course.hpp"

namespace landwidth {

// A plan that silently lacks a hole would be taken for the whole round. Throws InputError naming the first
// finding that keeps a hole from being planned.
void refuse_unplannable(const Course& course);

// The map's findings that a reader of the result should know, one sentence each.
std::vector<std::string> map_warnings(const Course& course);

}  // namespace landwidth
