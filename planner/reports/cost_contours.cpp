#include "planner/reports/cost_contours.hpp"

#include <gdal_alg.h>
#include <gdal_priv.h>
#include <ogrsf_frmts.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <stdexcept>

#include "courses/gdal_session.hpp"

namespace landwidth {
namespace {

// Costs further from the level than this are taken as this far, so that a jump is drawn where it is, half way
// between two cells, however high it is.
constexpr double reach = 0.1;

// A raster one cell larger on every side, the rim outside: every contour is a closed line.
struct PaddedRaster {
    int columns;
    int rows;
    std::vector<float> values;
};

PaddedRaster padded(const CostMap& map, double level) {
    const auto outside = static_cast<float>(level - reach);
    const auto inside = static_cast<float>(level + reach);
    PaddedRaster raster{map.columns + 2, map.rows + 2, {}};
    raster.values.assign(static_cast<std::size_t>(raster.columns) * static_cast<std::size_t>(raster.rows),
                         outside);
    for (int row = 0; row < map.rows; ++row) {
        for (int column = 0; column < map.columns; ++column) {
            const float cost =
                map.strokes[static_cast<std::size_t>(row) * static_cast<std::size_t>(map.columns) +
                            static_cast<std::size_t>(column)];
            if (std::isnan(cost)) continue;
            raster.values[static_cast<std::size_t>(row + 1) * static_cast<std::size_t>(raster.columns) +
                          static_cast<std::size_t>(column + 1)] = std::clamp(cost, outside, inside);
        }
    }
    return raster;
}

GDALDatasetUniquePtr raster_dataset(PaddedRaster& raster) {
    GDALDriver* driver = GetGDALDriverManager()->GetDriverByName("MEM");
    GDALDatasetUniquePtr dataset(
        driver == nullptr ? nullptr
                          : driver->Create("", raster.columns, raster.rows, 1, GDT_Float32, nullptr));
    if (!dataset) throw std::runtime_error("this GDAL cannot hold a raster in memory");
    std::array<double, 6> one_a_cell{0.0, 1.0, 0.0, 0.0, 0.0, 1.0};
    dataset->SetGeoTransform(one_a_cell.data());
    if (dataset->GetRasterBand(1)->RasterIO(GF_Write, 0, 0, raster.columns, raster.rows, raster.values.data(),
                                            raster.columns, raster.rows, GDT_Float32, 0, 0,
                                            nullptr) != CE_None) {
        throw std::runtime_error("GDAL could not take over a cost map");
    }
    return dataset;
}

Ring to_plane(const CostMap& map, const OGRLineString& line) {
    Ring ring;
    for (const OGRPoint& cell : line) {
        ring.push_back(map.corner + (cell.getX() - 1.0) * map.along_row +
                       (cell.getY() - 1.0) * map.along_rows);
    }
    return ring;
}

}  // namespace

std::vector<Ring> edges_of_cost(const CostMap& map, double level, double tolerance_m) {
    prepare_gdal();
    PaddedRaster raster = padded(map, level);
    const GDALDatasetUniquePtr cells = raster_dataset(raster);
    GDALDriver* driver = GetGDALDriverManager()->GetDriverByName("Memory");
    const GDALDatasetUniquePtr store(driver == nullptr ? nullptr
                                                       : driver->Create("", 0, 0, 0, GDT_Unknown, nullptr));
    OGRLayer* lines = store ? store->CreateLayer("edges", nullptr, wkbLineString, nullptr) : nullptr;
    if (lines == nullptr) throw std::runtime_error("this GDAL cannot hold lines in memory");
    if (GDALContourGenerate(cells->GetRasterBand(1), 0.0, 0.0, 1, &level, FALSE, 0.0, lines, -1, -1, nullptr,
                            nullptr) != CE_None) {
        throw std::runtime_error("GDAL could not draw lines of equal cost");
    }
    const double tolerance_cells = tolerance_m / length(map.along_row);
    std::vector<Ring> rings;
    for (const OGRFeatureUniquePtr& feature : *lines) {
        const OGRGeometryUniquePtr simple(feature->GetGeometryRef()->Simplify(tolerance_cells));
        if (simple == nullptr || simple->IsEmpty()) continue;
        rings.push_back(to_plane(map, *simple->toLineString()));
    }
    return rings;
}

}  // namespace landwidth
