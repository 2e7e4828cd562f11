#include "planner/engine/driver_chart_hole.hpp"

#include <algorithm>

#include "courses/assembly/scorecard.hpp"
#include "geometry/units.hpp"

namespace landwidth {

namespace {

constexpr double canopy_cell_m = 1.0;
constexpr double half_a_tee_m = Yards{5.0}.metres();

// A driver is compared with other clubs where both are asked for.
int chart_par(double length_m, const MapAssumptions& assumptions) {
    return std::max(4, par_for_length(length_m, assumptions));
}

Region strip(double from_x, double to_x, double from_y, double to_y) {
    return Region::box({{from_x, from_y}, {to_x, to_y}});
}

std::vector<LieLayer> trouble_layers(ChartTrouble trouble, double offset_m, const Box& extent) {
    const Region left = strip(extent.min.x, -offset_m, extent.min.y, extent.max.y);
    const Region right = strip(offset_m, extent.max.x, extent.min.y, extent.max.y);
    switch (trouble) {
        case ChartTrouble::rough:
            return {};
        case ChartTrouble::trees:
            return {{Lie::trees, left}, {Lie::trees, right}};
        case ChartTrouble::water_left:
            return {{Lie::penalty_red, left}};
        case ChartTrouble::water_right:
            return {{Lie::penalty_red, right}};
        case ChartTrouble::out_left:
            return {{Lie::out_of_bounds, left}};
        case ChartTrouble::out_right:
            return {{Lie::out_of_bounds, right}};
    }
    return {};
}

}  // namespace

std::string_view chart_trouble_name(ChartTrouble trouble) {
    switch (trouble) {
        case ChartTrouble::rough:
            break;
        case ChartTrouble::trees:
            return "trees";
        case ChartTrouble::water_left:
            return "water-left";
        case ChartTrouble::water_right:
            return "water-right";
        case ChartTrouble::out_left:
            return "out-left";
        case ChartTrouble::out_right:
            return "out-right";
    }
    return "rough";
}

std::vector<std::string> chart_trouble_names() {
    std::vector<std::string> names;
    for (const ChartTrouble trouble : all_chart_troubles)
        names.emplace_back(chart_trouble_name(trouble));
    return names;
}

std::optional<ChartTrouble> chart_trouble_named(std::string_view name) {
    const auto* const found = std::ranges::find(all_chart_troubles, name, chart_trouble_name);
    if (found == all_chart_troubles.end()) return std::nullopt;
    return *found;
}

Hole chart_hole(double width_m, double length_m, ChartTrouble trouble, const Assumptions& assumptions) {
    const ChartHole& shape = assumptions.engine.chart_hole;
    const Point tee{0.0, 0.0};
    const Point pin{0.0, length_m};
    const Box extent = Box{tee, pin}.grown(assumptions.map.hole_margin_m);
    const double half_width_m = 0.5 * width_m;
    std::vector<LieLayer> layers = trouble_layers(trouble, half_width_m + shape.trouble_from_edge_m, extent);
    layers.push_back({Lie::teeing_area, Region::box(Box{tee, tee}.grown(half_a_tee_m))});
    layers.push_back({Lie::fairway, strip(-half_width_m, half_width_m, shape.fairway_from_m,
                                          length_m - shape.green_radius_m)});
    layers.push_back({Lie::green, Region::disc(pin, shape.green_radius_m)});
    LiePartition lies(extent, layers, std::nullopt);
    CanopyRaster canopy(lies, {}, assumptions.map.tree_height_m, canopy_cell_m);
    return {.ref = "1",
            .name = "",
            .feature = "",
            .par = chart_par(length_m, assumptions.map),
            .par_inferred = true,
            .stroke_index = std::nullopt,
            .tee = "",
            .frame = PlaneFrame({0.0, 0.0}),
            .line = LineOfPlay({tee, pin}),
            .lies = std::move(lies),
            .surroundings = {},
            .canopy = std::move(canopy)};
}

Hole chart_hole_shortened(const Hole& hole, double length_m, const Assumptions& assumptions) {
    Hole shortened = hole;
    shortened.line = hole.line.from_tee(hole.line.point_at(hole.line.length() - length_m));
    shortened.par = chart_par(length_m, assumptions.map);
    return shortened;
}

}  // namespace landwidth
