#include "planner/reports/map_palette.hpp"

#include <array>

namespace landwidth {

const LieStyle& lie_style(Lie lie) {
    // In the order of enum Lie.
    static constexpr std::array<LieStyle, lie_count> styles{{
        {"teeing area", "#cfe3a6", "#cfe3a6", MapPattern::none, "#33491c", 1.0, MapEdge::solid},
        {"fairway", "#d3e7ae", "#d3e7ae", MapPattern::none, "#5f7f3a", 0.6, MapEdge::solid},
        {"rough", "#b4c98c", "#8aa25f", MapPattern::tufts, "#8aa25f", 0.0, MapEdge::solid},
        {"bunker", "#f0dcae", "#5e4413", MapPattern::stipple, "#5e4413", 0.9, MapEdge::solid},
        {"trees", "#7d9c66", "#2d4a22", MapPattern::crowns, "#2d4a22", 0.6, MapEdge::solid},
        {"green", "#eef8d2", "#eef8d2", MapPattern::none, "#2f6b1f", 1.2, MapEdge::solid},
        {"yellow penalty area", "#a9cfe6", "#174a70", MapPattern::horizontal, "#b07a00", 1.3,
         MapEdge::dashed},
        {"red penalty area", "#a9cfe6", "#174a70", MapPattern::waves, "#b3201b", 1.3, MapEdge::dotted},
        {"out of bounds", "#e4e1dc", "#6f6a63", MapPattern::diagonal, "#1e1e1e", 1.0, MapEdge::dashed},
    }};
    return styles[index_of(lie)];
}

}  // namespace landwidth
