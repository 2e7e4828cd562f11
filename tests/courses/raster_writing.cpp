#include "tests/courses/raster_writing.hpp"

#include <gdal_priv.h>
#include <ogr_spatialref.h>

#include <cmath>
#include <memory>
#include <stdexcept>
#include <vector>

#include "courses/gdal_session.hpp"

namespace landwidth::test {
namespace {

OGRSpatialReference system_of(const std::string& text) {
    OGRSpatialReference system;
    if (system.SetFromUserInput(text.c_str()) != OGRERR_NONE) throw std::runtime_error("no CRS " + text);
    system.SetAxisMappingStrategy(OAMS_TRADITIONAL_GIS_ORDER);
    return system;
}

}  // namespace

std::filesystem::path write_raster(const std::filesystem::path& file, const RasterRecipe& recipe,
                                   const std::function<double(LonLat)>& raw) {
    prepare_gdal();
    const GdalMessages quiet;
    GDALDriverManager& drivers = *GetGDALDriverManager();
    const GDALDatasetUniquePtr made(drivers.GetDriverByName("MEM")->Create(
        "", recipe.columns, recipe.rows, recipe.bands, GDALGetDataTypeByName(recipe.type.c_str()), nullptr));
    const OGRSpatialReference system = system_of(recipe.crs.empty() ? "EPSG:32624" : recipe.crs);
    const OGRSpatialReference lonlat = system_of("EPSG:4326");
    const std::unique_ptr<OGRCoordinateTransformation> to_raster(
        OGRCreateCoordinateTransformation(&lonlat, &system));
    const std::unique_ptr<OGRCoordinateTransformation> to_lonlat(
        OGRCreateCoordinateTransformation(&system, &lonlat));

    double x = recipe.centre.lon_deg;
    double y = recipe.centre.lat_deg;
    if (!to_raster->Transform(1, &x, &y)) throw std::runtime_error("the centre is not in the CRS");
    const double c = std::cos(recipe.turn_rad);
    const double s = std::sin(recipe.turn_rad);
    std::array<double, 6> place{0.0, recipe.cell_width * c, recipe.cell_height * s,
                                0.0, recipe.cell_width * s, -recipe.cell_height * c};
    place[0] = x - 0.5 * (place[1] * recipe.columns + place[2] * recipe.rows);
    place[3] = y - 0.5 * (place[4] * recipe.columns + place[5] * recipe.rows);
    made->SetGeoTransform(place.data());
    if (!recipe.crs.empty()) made->SetSpatialRef(&system);

    GDALRasterBand& band = *made->GetRasterBand(1);
    std::vector<double> row(static_cast<std::size_t>(recipe.columns));
    for (int r = 0; r < recipe.rows; ++r) {
        for (int column = 0; column < recipe.columns; ++column) {
            double lon = place[0] + place[1] * (column + 0.5) + place[2] * (r + 0.5);
            double lat = place[3] + place[4] * (column + 0.5) + place[5] * (r + 0.5);
            if (!to_lonlat->Transform(1, &lon, &lat)) throw std::runtime_error("a cell is not on earth");
            row[static_cast<std::size_t>(column)] = raw({lon, lat});
        }
        if (band.RasterIO(GF_Write, 0, r, recipe.columns, 1, row.data(), recipe.columns, 1, GDT_Float64, 0, 0,
                          nullptr) != CE_None)
            throw std::runtime_error("a row cannot be written");
    }
    if (!recipe.unit.empty()) band.SetUnitType(recipe.unit.c_str());
    if (recipe.no_data) band.SetNoDataValue(*recipe.no_data);
    if (recipe.scale != 1.0 || recipe.offset != 0.0) {
        band.SetScale(recipe.scale);
        band.SetOffset(recipe.offset);
    }
    const GDALDatasetUniquePtr written(
        drivers.GetDriverByName(recipe.driver.c_str())
            ->CreateCopy(file.c_str(), made.get(), FALSE, nullptr, nullptr, nullptr));
    if (!written) throw std::runtime_error("GDAL cannot write " + file.string());
    return file;
}

}  // namespace landwidth::test
