// Small rasters of heights for tests, written by GDAL.
#pragma once

#include <array>
#include <filesystem>
#include <functional>
#include <optional>
#include <string>

#include "geometry/plane_frame.hpp"

namespace landwidth::test {

struct RasterRecipe {
    std::string driver = "GTiff";
    std::string crs = "EPSG:32624";  // empty: none
    // Around this place, in the raster's own reference system: cell size, turn and size. A height below 0 of
    // a cell: rows run from the south.
    LonLat centre{-33.0, 46.0};
    double cell_width = 5.0;
    double cell_height = 5.0;
    double turn_rad = 0.0;
    int columns = 240;
    int rows = 240;
    std::string unit = {};
    std::optional<double> no_data = {};
    double scale = 1.0;
    double offset = 0.0;
    std::string type = "Float32";
    int bands = 1;
};

// A raster whose raw cells hold `raw` of their middle's place. Returns the file.
std::filesystem::path write_raster(const std::filesystem::path& file, const RasterRecipe& recipe,
                                   const std::function<double(LonLat)>& raw);

}  // namespace landwidth::test
