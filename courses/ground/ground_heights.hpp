// Heights of the ground from a raster (a digital elevation model) in any format and reference system that
// GDAL reads.
#pragma once

#include <filesystem>

#include "courses/course.hpp"

namespace landwidth {

// Lays the heights of a raster's first band under every hole of a course (Hole::heights), as posts 2 to 5 m
// apart, about as far as the raster's own cells; finer cells are averaged. Places without data, or outside,
// are filled from their neighbours. That, coarse cells and further bands are warnings among the course's
// findings.
//
// Throws InputError, naming the file and the hole, when the raster cannot be read, has no reference system,
// no band of numbers, is not in metres or feet, does not cover a hole's line of play from tee to pin, or has
// no data under the line; when heights differ over a hole by more than a mountain (300 m): a wrong unit.
void lay_ground_heights(Course& course, const std::filesystem::path& raster);

}  // namespace landwidth
