// A raster of ground heights as it lies in its file: which cell is where on earth, and how high its ground.
//
// Cell coordinates count columns and rows from the outer corner of the first cell, so that (0.5, 0.5) is its
// middle. What the file does not know is NaN.
#pragma once

#include <gdal_priv.h>
#include <ogr_spatialref.h>

#include <filesystem>
#include <memory>
#include <span>
#include <string>
#include <vector>

#include "geometry/plane_frame.hpp"
#include "geometry/point.hpp"

namespace landwidth {

// Heights read from a piece of a raster, in metres.
class HeightWindow {
  public:
    // Nothing is known anywhere.
    HeightWindow() = default;
    // Squares of `block` cells a side from the cell `first` on, row by row.
    HeightWindow(Point first, int block, int columns, int rows, std::vector<double> heights_m);

    // Bilinear between the middles of the squares, among those that are known; NaN where the square around
    // the cell is not.
    double at(Point cell) const;

  private:
    double square(int column, int row) const;

    Point first_{};
    double block_ = 1.0;
    int columns_ = 0;
    int rows_ = 0;
    std::vector<double> heights_m_;
};

class GroundRaster {
  public:
    // Throws InputError when the file is missing, no raster, has no reference system, no place in it or no
    // band of heights in metres or feet.
    explicit GroundRaster(const std::filesystem::path& file);

    // For messages: the file's name.
    const std::string& name() const { return name_; }
    // More than one: the first is read.
    int bands() const { return dataset_->GetRasterCount(); }
    // The longer side of a cell near a place, metres; NaN where the reference system does not reach.
    double cell_size_m(LonLat place) const;
    // Cell coordinates of places, which may lie outside; NaN where the reference system does not reach. All
    // within half a turn of `near`, so that cells of neighbours are neighbours across the antimeridian too.
    std::vector<Point> cells_of(std::vector<LonLat> places, LonLat near) const;
    bool covers(Point cell) const;
    // The heights of a box of cells and a little around it, averaged over squares of block x block cells
    // (block >= 1). Throws InputError when the file cannot be read there.
    HeightWindow read(const Box& cells, int block) const;

  private:
    void check_bands();
    void place_on_earth();
    void take_scale();

    std::string name_;
    GDALDatasetUniquePtr dataset_;
    GDALRasterBand* band_ = nullptr;  // of the dataset
    OGRSpatialReference system_;
    std::unique_ptr<OGRCoordinateTransformation> from_lonlat_;
    double from_cell_[6] = {};
    double to_cell_[6] = {};
    double metres_per_step_ = 1.0;
    double lowest_step_m_ = 0.0;
};

}  // namespace landwidth
