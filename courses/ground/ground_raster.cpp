#include "courses/ground/ground_raster.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <system_error>

#include "courses/gdal_session.hpp"
#include "courses/ground/ground_units.hpp"
#include "courses/text.hpp"
#include "geometry/error.hpp"

namespace landwidth {
namespace {

namespace fs = std::filesystem;

constexpr double unknown = std::numeric_limits<double>::quiet_NaN();

std::string name_of(const fs::path& path) {
    return path.filename().empty() ? path.parent_path().filename().string() : path.filename().string();
}

GDALDatasetUniquePtr opened(const fs::path& path, const std::string& name) {
    // GDAL's own names of parts of files ("NETCDF:heights.nc:z", "/vsizip/...") are no paths.
    const std::string text = path.string();
    const bool plain_path = text.find(':') == std::string::npos && !text.starts_with("/vsi");
    std::error_code trouble;
    if (plain_path && !fs::exists(path, trouble)) throw InputError(text, "there is no such file");
    const GdalMessages messages;
    GDALDatasetUniquePtr dataset(
        GDALDataset::Open(text.c_str(), GDAL_OF_RASTER | GDAL_OF_READONLY | GDAL_OF_VERBOSE_ERROR));
    if (dataset) return dataset;
    if (GDALIdentifyDriverEx(text.c_str(), GDAL_OF_VECTOR, nullptr, nullptr) != nullptr) {
        throw InputError(name,
                         "is a file of shapes and no raster of heights; give a grid of ground heights, e.g. "
                         "a GeoTIFF");
    }
    throw InputError(name, "is no raster of heights that can be opened" +
                               (messages.failure() ? " (" + *messages.failure() + ")" : std::string()) +
                               "; give a grid of ground heights, e.g. a GeoTIFF");
}

OGRSpatialReference wgs84() {
    OGRSpatialReference system;
    system.SetWellKnownGeogCS("WGS84");
    system.SetAxisMappingStrategy(OAMS_TRADITIONAL_GIS_ORDER);
    return system;
}

Point applied(const double (&transform)[6], Point p) {
    return {transform[0] + transform[1] * p.x + transform[2] * p.y,
            transform[3] + transform[4] * p.x + transform[5] * p.y};
}

}  // namespace

HeightWindow::HeightWindow(Point first, int block, int columns, int rows, std::vector<double> heights_m)
    : first_(first), block_(block), columns_(columns), rows_(rows), heights_m_(std::move(heights_m)) {}

double HeightWindow::square(int column, int row) const {
    return heights_m_[static_cast<std::size_t>(row) * static_cast<std::size_t>(columns_) +
                      static_cast<std::size_t>(column)];
}

double HeightWindow::at(Point cell) const {
    if (heights_m_.empty() || !std::isfinite(cell.x) || !std::isfinite(cell.y)) return unknown;
    // Beyond the middle of the last square its height goes on to the rim.
    const double x = std::clamp((cell.x - first_.x) / block_ - 0.5, 0.0, columns_ - 1.0);
    const double y = std::clamp((cell.y - first_.y) / block_ - 0.5, 0.0, rows_ - 1.0);
    if (!std::isfinite(square(static_cast<int>(std::lround(x)), static_cast<int>(std::lround(y)))))
        return unknown;
    const int left = static_cast<int>(x);
    const int top = static_cast<int>(y);
    double sum = 0.0;
    double weights = 0.0;
    for (const int column : {left, std::min(left + 1, columns_ - 1)}) {
        for (const int row : {top, std::min(top + 1, rows_ - 1)}) {
            const double weight =
                (1.0 - std::min(std::abs(x - column), 1.0)) * (1.0 - std::min(std::abs(y - row), 1.0));
            const double height = square(column, row);
            if (!std::isfinite(height)) continue;
            sum += weight * height;
            weights += weight;
        }
    }
    return sum / weights;
}

GroundRaster::GroundRaster(const fs::path& file) : name_(name_of(file)) {
    prepare_gdal();
    dataset_ = opened(file, name_);
    const GdalMessages messages;
    check_bands();
    place_on_earth();
    take_scale();
}

void GroundRaster::check_bands() {
    if (dataset_->GetRasterCount() == 0) {
        char** const parts = dataset_->GetMetadata("SUBDATASETS");
        const char* const part = CSLFetchNameValue(parts, "SUBDATASET_1_NAME");
        throw InputError(
            name_, part != nullptr
                       ? "holds several rasters; name the one with the heights, e.g. " + std::string(part)
                       : "has no band of heights; give a grid of ground heights");
    }
    band_ = dataset_->GetRasterBand(1);
    const GDALColorInterp colour = band_->GetColorInterpretation();
    if (colour == GCI_PaletteIndex || (colour >= GCI_RedBand && colour != GCI_AlphaBand)) {
        throw InputError(name_, "is a picture: its colours are no heights; give a grid of ground heights");
    }
    if (GDALDataTypeIsComplex(band_->GetRasterDataType()) != 0) {
        throw InputError(name_, "its band holds complex numbers and no heights; give a grid of heights");
    }
}

void GroundRaster::place_on_earth() {
    const OGRSpatialReference* const system = dataset_->GetSpatialRef();
    if (system == nullptr || system->IsLocal()) {
        throw InputError(name_,
                         "has no reference system, so nobody knows where it lies; state it with "
                         "gdal_translate -a_srs EPSG:NUMBER, or put its .prj file beside it");
    }
    if (dataset_->GetGeoTransform(from_cell_) != CE_None || !GDALInvGeoTransform(from_cell_, to_cell_)) {
        throw InputError(name_, "does not say where its cells lie; put it into place with gdalwarp");
    }
    system_ = *system;
    // Heights are compared with each other only; a change of the vertical datum would move them all alike.
    if (system_.IsCompound()) system_.StripVertical();
    system_.SetAxisMappingStrategy(OAMS_TRADITIONAL_GIS_ORDER);
    const OGRSpatialReference lonlat = wgs84();
    from_lonlat_.reset(OGRCreateCoordinateTransformation(&lonlat, &system_));
    if (!from_lonlat_) {
        throw InputError(name_,
                         "its reference system cannot be transformed to longitude and latitude; put it into "
                         "another with gdalwarp -t_srs EPSG:4326");
    }
}

void GroundRaster::take_scale() {
    const std::string unit = trimmed(band_->GetUnitType());
    const OGRSpatialReference* const system = dataset_->GetSpatialRef();
    const double vertical_m =
        system->IsCompound() ? system->GetTargetLinearUnits("COMPD_CS|VERT_CS", nullptr) : 1.0;
    const std::optional<double> metres = unit.empty() ? vertical_m : metres_per_height_unit(unit);
    if (!metres || !(*metres > 0.0)) {
        throw InputError(name_, "its heights are in \"" + unit +
                                    "\", not in metres or feet; convert them, or state their unit with "
                                    "gdal_edit.py -units m");
    }
    const double scale = band_->GetScale();
    const double offset = band_->GetOffset();
    if (!std::isfinite(scale) || scale == 0.0 || !std::isfinite(offset)) {
        throw InputError(name_,
                         "the scale or offset of its heights makes no number of them; export it again");
    }
    metres_per_step_ = *metres * scale;
    lowest_step_m_ = *metres * offset;
}

double GroundRaster::cell_size_m(LonLat place) const {
    // A step of about 10 m north and one east, in cells.
    const PlaneFrame frame(place);
    constexpr double step_m = 10.0;
    const std::vector<Point> cells =
        cells_of({place, frame.to_lonlat({step_m, 0.0}), frame.to_lonlat({0.0, step_m})}, place);
    const Point east = (1.0 / step_m) * (cells[1] - cells[0]);
    const Point north = (1.0 / step_m) * (cells[2] - cells[0]);
    // The sides of a cell in metres: the inverse of the steps.
    const double determinant = cross(east, north);
    return std::max(length({north.y, east.y}), length({north.x, east.x})) / std::abs(determinant);
}

std::vector<Point> GroundRaster::cells_of(std::vector<LonLat> places, LonLat near) const {
    const GdalMessages quiet;
    places.push_back(near);
    std::vector<double> x;
    std::vector<double> y;
    for (const LonLat& place : places) {
        x.push_back(place.lon_deg);
        y.push_back(place.lat_deg);
    }
    std::vector<int> reached(places.size(), 0);
    from_lonlat_->Transform(static_cast<int>(places.size()), x.data(), y.data(), nullptr, reached.data());
    if (system_.IsGeographic()) {
        const double turn = 2.0 * std::numbers::pi / system_.GetAngularUnits(nullptr);
        const Point middle =
            applied(from_cell_, {0.5 * dataset_->GetRasterXSize(), 0.5 * dataset_->GetRasterYSize()});
        const double near_x = x.back() + turn * std::round((middle.x - x.back()) / turn);
        for (double& longitude : x)
            longitude += turn * std::round((near_x - longitude) / turn);
    }
    std::vector<Point> cells;
    for (std::size_t i = 0; i + 1 < places.size(); ++i) {
        const bool known = reached[i] != 0 && std::isfinite(x[i]) && std::isfinite(y[i]);
        cells.push_back(known ? applied(to_cell_, {x[i], y[i]}) : Point{unknown, unknown});
    }
    return cells;
}

bool GroundRaster::covers(Point cell) const {
    return cell.x >= 0.0 && cell.y >= 0.0 && cell.x <= dataset_->GetRasterXSize() &&
           cell.y <= dataset_->GetRasterYSize();
}

HeightWindow GroundRaster::read(const Box& cells, int block) const {
    // First cell and number of squares of an axis; the last square may reach over the wanted box.
    struct Axis {
        int first;
        int squares;
        int cells;
    };
    const auto axis_of = [&](double low, double high, int size) {
        const int first = static_cast<int>(std::clamp(std::floor(low) - block, 0.0, size * 1.0));
        const int end = static_cast<int>(std::clamp(std::ceil(high) + block, 0.0, size * 1.0));
        const int squares = std::max(1, (end - first) / block);
        return Axis{first, squares, std::min(end - first, squares * block)};
    };
    const Axis x = axis_of(cells.min.x, cells.max.x, dataset_->GetRasterXSize());
    const Axis y = axis_of(cells.min.y, cells.max.y, dataset_->GetRasterYSize());
    if (x.cells == 0 || y.cells == 0) return {};

    const GdalMessages messages;
    GDALRasterIOExtraArg averaging;
    INIT_RASTERIO_EXTRA_ARG(averaging);
    averaging.eResampleAlg = block > 1 ? GRIORA_Average : GRIORA_NearestNeighbour;
    const auto count = static_cast<std::size_t>(x.squares) * static_cast<std::size_t>(y.squares);
    const auto read_band = [&](GDALRasterBand& band, void* values, GDALDataType type) {
        const CPLErr result = band.RasterIO(GF_Read, x.first, y.first, x.cells, y.cells, values, x.squares,
                                            y.squares, type, 0, 0, &averaging);
        if (result == CE_None) return;
        throw InputError(name_, "is damaged and cannot be read (" +
                                    messages.failure().value_or("no reason given") +
                                    "); export or download it again");
    };
    std::vector<double> heights(count);
    read_band(*band_, heights.data(), GDT_Float64);
    if ((band_->GetMaskFlags() & GMF_ALL_VALID) == 0) {
        std::vector<GByte> known(count);
        read_band(*band_->GetMaskBand(), known.data(), GDT_Byte);
        for (std::size_t i = 0; i < count; ++i)
            if (known[i] == 0) heights[i] = unknown;
    }
    for (double& height : heights)
        height = height * metres_per_step_ + lowest_step_m_;
    return HeightWindow({x.first * 1.0, y.first * 1.0}, block, x.squares, y.squares, std::move(heights));
}

}  // namespace landwidth
