// Heights of the ground from a raster (a digital elevation model) in any format and reference system that
// GDAL reads.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "courses/course.hpp"
#include "geometry/height_raster.hpp"

namespace landwidth {

// Lays the heights of a raster under every hole of a course (Hole::heights). Cells without data are filled
// from their neighbours with a warning. Returns warnings, one sentence each.
//
// Throws InputError, naming the file and the hole, when the raster cannot be read, has no reference system,
// no band of numbers, is not in metres or feet, does not cover a hole's line of play from tee to pin, or has
// no data under the line; when heights differ over a hole by more than a mountain (300 m): a wrong unit.
std::vector<std::string> lay_ground_heights(Course& course, const std::filesystem::path& raster);

}  // namespace landwidth
