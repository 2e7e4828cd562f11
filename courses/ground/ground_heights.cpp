#include "courses/ground/ground_heights.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "courses/findings/finding_kinds.hpp"
#include "courses/ground/ground_raster.hpp"
#include "geometry/error.hpp"

namespace landwidth {
namespace {

// Posts are about as far apart as the raster's cells, within these: nearer a ball on the ground does not feel
// a difference, further apart a straight slope would be all there is of a bank.
constexpr double nearest_posts_m = 2.0;
constexpr double furthest_posts_m = 5.0;
// Between places so far apart a map projection is straight to well below a millimetre.
constexpr double knots_m = 50.0;
constexpr double line_step_m = 10.0;
// Slopes of a raster with longer cells than this are those of hillsides, not of fairways.
constexpr double coarse_cell_m = 30.0;
// No hole climbs a mountain, and no ground lies lower or higher than this.
constexpr double most_rise_m = 300.0;
constexpr double lowest_ground_m = -500.0;
constexpr double highest_ground_m = 9000.0;

std::string whole(double value) {
    return fmt::format("{:.0f}", value);
}

// A grid of points over a box, rim included.
struct PostGrid {
    Box box;
    int columns;
    int rows;

    static PostGrid over(const Box& box, double step_m) {
        const Point size = box.max - box.min;
        const auto posts = [&](double side_m) {
            return std::max(2, 1 + static_cast<int>(std::ceil(side_m / step_m)));
        };
        return {box, posts(size.x), posts(size.y)};
    }
    std::size_t size() const { return static_cast<std::size_t>(columns) * static_cast<std::size_t>(rows); }
    std::size_t index(int column, int row) const {
        return static_cast<std::size_t>(row) * static_cast<std::size_t>(columns) +
               static_cast<std::size_t>(column);
    }
    Point post(int column, int row) const {
        const Point size = box.max - box.min;
        return {box.min.x + size.x * column / (columns - 1), box.min.y + size.y * row / (rows - 1)};
    }
};

// The cells under the points of a hole's plane, exact at knots and straight between them.
class CellPlan {
  public:
    CellPlan(const GroundRaster& raster, const PlaneFrame& frame, const Box& extent)
        : knots_(PostGrid::over(extent, knots_m)) {
        std::vector<LonLat> places;
        places.reserve(knots_.size());
        for (int row = 0; row < knots_.rows; ++row) {
            for (int column = 0; column < knots_.columns; ++column)
                places.push_back(frame.to_lonlat(knots_.post(column, row)));
        }
        cells_ = raster.cells_of(std::move(places), frame.origin());
    }

    // The cells of all that can be placed; absent when nothing can.
    std::optional<Box> bounds() const {
        std::optional<Box> box;
        for (const Point cell : cells_) {
            if (!std::isfinite(cell.x) || !std::isfinite(cell.y)) continue;
            if (!box) box = Box{cell, cell};
            box->min = {std::min(box->min.x, cell.x), std::min(box->min.y, cell.y)};
            box->max = {std::max(box->max.x, cell.x), std::max(box->max.y, cell.y)};
        }
        return box;
    }

    Point at(Point p) const {
        const Point size = knots_.box.max - knots_.box.min;
        const double x = std::clamp((p.x - knots_.box.min.x) / size.x, 0.0, 1.0) * (knots_.columns - 1);
        const double y = std::clamp((p.y - knots_.box.min.y) / size.y, 0.0, 1.0) * (knots_.rows - 1);
        const int column = std::min(static_cast<int>(x), knots_.columns - 2);
        const int row = std::min(static_cast<int>(y), knots_.rows - 2);
        const auto along = [&](int r) {
            const Point left = cells_[knots_.index(column, r)];
            return left + (x - column) * (cells_[knots_.index(column + 1, r)] - left);
        };
        const Point low = along(row);
        return low + (y - row) * (along(row + 1) - low);
    }

  private:
    PostGrid knots_;
    std::vector<Point> cells_;
};

// "under the tee", "under the line of play 140 m from the tee", "under the pin".
std::string place_on_line(const LineOfPlay& line, double station_m) {
    if (station_m <= 0.0) return "the tee";
    if (station_m >= line.length()) return "the pin";
    return "the line of play " + whole(station_m) + " m from the tee";
}

void check_line(const Hole& hole, const GroundRaster& raster, const CellPlan& plan,
                const HeightWindow& window) {
    const int steps = std::max(1, static_cast<int>(std::ceil(hole.line.length() / line_step_m)));
    for (int i = 0; i <= steps; ++i) {
        const double station_m = hole.line.length() * i / steps;
        const Point cell = plan.at(hole.line.point_at(station_m));
        const std::string place = place_on_line(hole.line, station_m) + " of hole " + hole.ref;
        if (!raster.covers(cell)) {
            throw InputError(raster.name(), "does not cover " + place +
                                                "; give a raster that covers the course, or leave the hole "
                                                "out with --holes");
        }
        if (!std::isfinite(window.at(cell))) {
            throw InputError(raster.name(), "no data under " + place +
                                                "; fill the gap (gdal_fillnodata.py), or leave the hole out "
                                                "with --holes");
        }
    }
}

void check_range(const Hole& hole, const GroundRaster& raster, const std::vector<float>& heights) {
    float low = std::numeric_limits<float>::infinity();
    float high = -low;
    for (const float height : heights) {
        if (!std::isfinite(height)) continue;
        low = std::min(low, height);
        high = std::max(high, height);
    }
    if (low >= lowest_ground_m && high <= highest_ground_m && high - low <= most_rise_m) return;
    throw InputError(raster.name(), "heights from " + whole(low) + " to " + whole(high) + " m on hole " +
                                        hole.ref +
                                        " are not those of a golf hole; check the unit of the raster and its "
                                        "value for missing data");
}

// Gives every unknown post the height of the known one that is fewest posts away. Some post must be known.
// Returns whether there were any.
bool fill_gaps(const PostGrid& grid, std::vector<float>& heights) {
    struct Post {
        int column;
        int row;
    };
    std::vector<Post> reached;
    for (int row = 0; row < grid.rows; ++row) {
        for (int column = 0; column < grid.columns; ++column)
            if (std::isfinite(heights[grid.index(column, row)])) reached.push_back({column, row});
    }
    if (reached.size() == heights.size()) return false;
    for (std::size_t next = 0; next < reached.size(); ++next) {
        const Post from = reached[next];
        for (const Post step : {Post{-1, 0}, Post{1, 0}, Post{0, -1}, Post{0, 1}}) {
            const Post to{from.column + step.column, from.row + step.row};
            if (to.column < 0 || to.row < 0 || to.column >= grid.columns || to.row >= grid.rows) continue;
            float& height = heights[grid.index(to.column, to.row)];
            if (std::isfinite(height)) continue;
            height = heights[grid.index(from.column, from.row)];
            reached.push_back(to);
        }
    }
    return true;
}

struct LaidHeights {
    std::shared_ptr<const HeightRaster> heights;
    bool filled;  // some of it from neighbours
};

LaidHeights heights_under(const Hole& hole, const GroundRaster& raster) {
    const double cell_m = raster.cell_size_m(hole.frame.origin());
    // NaN, where the reference system does not reach, is told as the tee not covered.
    const double step_m =
        std::isfinite(cell_m) ? std::clamp(cell_m, nearest_posts_m, furthest_posts_m) : furthest_posts_m;
    const int block = std::isfinite(cell_m) ? std::max(1, static_cast<int>(step_m / cell_m)) : 1;
    const PostGrid grid = PostGrid::over(hole.lies.extent(), step_m);
    const CellPlan plan(raster, hole.frame, grid.box);
    const std::optional<Box> cells = plan.bounds();
    const HeightWindow window = cells ? raster.read(*cells, block) : HeightWindow();
    check_line(hole, raster, plan, window);

    std::vector<float> heights;
    heights.reserve(grid.size());
    for (int row = 0; row < grid.rows; ++row) {
        for (int column = 0; column < grid.columns; ++column) {
            const Point cell = plan.at(grid.post(column, row));
            heights.push_back(raster.covers(cell) ? static_cast<float>(window.at(cell))
                                                  : std::numeric_limits<float>::quiet_NaN());
        }
    }
    check_range(hole, raster, heights);
    const bool filled = fill_gaps(grid, heights);
    return {std::make_shared<HeightRaster>(grid.box, grid.columns, grid.rows, std::move(heights)), filled};
}

}  // namespace

void lay_ground_heights(Course& course, const std::filesystem::path& file) {
    const GroundRaster raster(file);
    int filled = 0;
    double coarsest_m = 0.0;
    for (Hole& hole : course.holes) {
        LaidHeights laid = heights_under(hole, raster);
        hole.heights = std::move(laid.heights);
        if (laid.filled) ++filled;
        coarsest_m = std::max(coarsest_m, raster.cell_size_m(hole.frame.origin()));
    }
    const auto tell = [&](Finding finding) { course.findings.push_back(std::move(finding)); };
    if (raster.bands() > 1) tell(finding_about<"heights-several-bands">(raster.name(), raster.bands()));
    if (coarsest_m > coarse_cell_m) tell(finding_about<"heights-coarse">(raster.name(), whole(coarsest_m)));
    if (filled > 0)
        tell(finding_about<"heights-filled">(raster.name(), filled, filled == 1 ? "hole" : "holes"));
    sort_findings(course.findings);
}

}  // namespace landwidth
