#include "planner/reports/gain_bar.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "planner/reports/svg_writing.hpp"

namespace landwidth {
namespace {

constexpr double width_px = 150.0;
constexpr double height_px = 16.0;
constexpr double edge_px = 5.0;
// Bars of changes that make no difference stay short.
constexpr double shortest_scale_strokes = 0.2;

}  // namespace

GainScale::GainScale(const std::vector<WeighedChange>& changes)
    : least_(-shortest_scale_strokes / 2.0), most_(shortest_scale_strokes / 2.0) {
    for (const WeighedChange& change : changes) {
        least_ = std::min({least_, change.low, change.gain});
        most_ = std::max({most_, change.high, change.gain});
    }
}

double GainScale::place_px(double strokes) const {
    return edge_px + (width_px - 2.0 * edge_px) * (strokes - least_) / (most_ - least_);
}

std::string GainScale::bar(const WeighedChange& change) const {
    const double low = place_px(change.low);
    const double high = place_px(change.high);
    const double middle = height_px / 2.0;
    return fmt::format(
        "<svg class=\"gain-bar\" viewBox=\"0 0 {0} {1}\" width=\"{0}\" height=\"{1}\" aria-hidden=\"true\">"
        "<rect x=\"{2}\" y=\"{3}\" width=\"{4}\" height=\"6\"/><path d=\"M{5} 0V{1}\"/>"
        "<circle cx=\"{6}\" cy=\"{7}\" r=\"3.6\"/></svg>",
        px(width_px), px(height_px), px(low), px(middle - 3.0), px(high - low), px(place_px(0.0)),
        px(place_px(change.gain)), px(middle));
}

std::string_view gain_bar_style() {
    return R"css(
.gain-bar { display: block; max-width: 100%; }
.gain-bar rect { fill: #b9bdae; stroke: #55594f; stroke-width: .6; }
.gain-bar path { stroke: #14180f; stroke-width: 1.4; }
.gain-bar circle { fill: #14180f; stroke: #fff; stroke-width: 1; }
)css";
}

}  // namespace landwidth
