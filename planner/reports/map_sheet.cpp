#include "planner/reports/map_sheet.hpp"

#include <algorithm>
#include <limits>
#include <numeric>

namespace landwidth {
namespace {

// Two sheets of this height stand on one page of A4; wider ones would leave no room for the words beside.
constexpr double tallest_px = 488.0;
constexpr double widest_px = 254.0;
constexpr double narrowest_px = 168.0;
// A short hole is not blown up beyond this, or a green would fill the page.
constexpr double largest_px_per_m = 2.2;
constexpr double margin_px = 9.0;
constexpr double label_gutter_px = 34.0;
constexpr double strip_below_px = 34.0;

// Half the width of the ground drawn, as a share of the hole's length, and its limits.
constexpr double strip_share = 0.17;
constexpr double narrowest_strip_m = 42.0;
constexpr double widest_strip_m = 72.0;
// Ground drawn around a landing ellipse.
constexpr double ellipse_margin_m = 6.0;
constexpr double aim_margin_m = 20.0;
// Marks further than this from the line of play run off the drawn ground.
constexpr double furthest_mark_m = 170.0;
constexpr double corner_rounding_m = 25.0;

Region strip_of(const Hole& hole, const std::vector<Ring>& shown, const std::vector<Point>& aim) {
    const double half_width = std::clamp(strip_share * hole.line.length(), narrowest_strip_m, widest_strip_m);
    std::vector<Region> parts{Region::around(hole.line.vertices(), half_width),
                              Region::around(aim, aim_margin_m)};
    const Region reach = Region::around(hole.line.vertices(), furthest_mark_m);
    for (const Ring& ring : shown) {
        const Region mark = Region::repaired({.outer = ring, .inners = {}}).region;
        parts.push_back(mark.grown(ellipse_margin_m).common_with(reach));
    }
    return Region::united(parts).grown(corner_rounding_m).grown(-corner_rounding_m);
}

Point up_direction(const LineOfPlay& line) {
    const Point to_pin = line.pin() - line.tee();
    // A line that comes back to its tee has no overall direction.
    return length(to_pin) > 1.0 ? unit(to_pin) : line.direction_at(0.0);
}

}  // namespace

MapSheet::MapSheet(const Hole& hole, const std::vector<Ring>& shown, const std::vector<Point>& aim,
                   double more_below_px)
    : ground_(strip_of(hole, shown, aim)), up_(up_direction(hole.line)), origin_(hole.line.tee()) {
    constexpr double endless = std::numeric_limits<double>::infinity();
    Box turned_bounds{{endless, endless}, {-endless, -endless}};
    for (const PolygonRings& polygon : ground_.polygons()) {
        for (const Point p : polygon.outer) {
            const Point t = turned(p - origin_);
            turned_bounds.min = {std::min(turned_bounds.min.x, t.x), std::min(turned_bounds.min.y, t.y)};
            turned_bounds.max = {std::max(turned_bounds.max.x, t.x), std::max(turned_bounds.max.y, t.y)};
        }
    }
    const double wide = turned_bounds.max.x - turned_bounds.min.x;
    const double high = turned_bounds.max.y - turned_bounds.min.y;
    scale_ =
        std::min({largest_px_per_m, (tallest_px - strip_below_px - more_below_px - 2.0 * margin_px) / high,
                  (widest_px - 2.0 * label_gutter_px) / wide});
    width_px_ = std::max(narrowest_px, wide * scale_ + 2.0 * label_gutter_px);
    ground_height_px_ = high * scale_ + 2.0 * margin_px;
    height_px_ = ground_height_px_ + strip_below_px + more_below_px;
    shift_px_ = {(width_px_ - wide * scale_) / 2.0 - turned_bounds.min.x * scale_,
                 margin_px - turned_bounds.min.y * scale_};
}

Point MapSheet::turned(Point step) const {
    return {dot(step, to_the_right(up_)), -dot(step, up_)};
}

Point MapSheet::to_sheet(Point plane) const {
    return scale_ * turned(plane - origin_) + shift_px_;
}

LabelBox LabelPlacer::box_of(const std::string& text, double font_px, const LabelSpot& spot) {
    // Characters, not bytes; bold figures and letters of common fonts are narrower than this on average.
    const auto characters = std::count_if(
        text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; });
    const double wide = 0.62 * font_px * static_cast<double>(characters) + 2.0;
    const double left = spot.anchor == Anchor::start ? spot.at.x
                        : spot.anchor == Anchor::end ? spot.at.x - wide
                                                     : spot.at.x - wide / 2.0;
    return {left, spot.at.y - 0.6 * font_px, left + wide, spot.at.y + 0.6 * font_px};
}

bool LabelPlacer::free(const LabelBox& box) const {
    if (box.left < 1.0 || box.top < 1.0 || box.right > width_px_ - 1.0 || box.bottom > height_px_ - 1.0) {
        return false;
    }
    return std::none_of(taken_.begin(), taken_.end(),
                        [&](const LabelBox& other) { return box.overlaps(other); });
}

std::optional<LabelSpot> LabelPlacer::place(const std::string& text, double font_px,
                                            const std::vector<LabelSpot>& spots) {
    for (const LabelSpot& spot : spots) {
        const LabelBox box = box_of(text, font_px, spot);
        if (!free(box)) continue;
        taken_.push_back(box);
        return spot;
    }
    return std::nullopt;
}

}  // namespace landwidth
