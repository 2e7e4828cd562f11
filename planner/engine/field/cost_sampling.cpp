#include "planner/engine/field/cost_sampling.hpp"

#include <cmath>
#include <limits>

namespace landwidth {

CostMap sampled_costs(const PersonalField& field, double step_m) {
    const PlayGrid& grid = field.grid();
    const int every = std::max(1, static_cast<int>(std::lround(step_m / grid.step_m())));
    // With the strokes of the mean, whatever else the golfer aims for.
    const auto evaluator = field.evaluator(std::numeric_limits<int>::max() / 2);
    CostMap map{.corner = grid.corner(),
                .along_row = double(every) * grid.step_right(),
                .along_rows = double(every) * grid.step_along(),
                .columns = grid.columns() / every,
                .rows = grid.rows() / every,
                .strokes = {}};
    constexpr float unknown = std::numeric_limits<float>::quiet_NaN();
    for (int row = 0; row < map.rows; ++row)
        for (int column = 0; column < map.columns; ++column) {
            const int cell = (row * every + every / 2) * grid.columns() + column * every + every / 2;
            float strokes = unknown;
            if (grid.is_inside(cell) && grid.lie(cell) != Lie::out_of_bounds) {
                if (is_penalty_area(grid.lie(cell))) {
                    const float dropped = evaluator->worth().drop_cost(evaluator->drops().drop_of(cell, 0));
                    if (std::isfinite(dropped)) strokes = dropped;
                } else {
                    strokes = field.strokes_layer().cost[static_cast<std::size_t>(cell)];
                }
            }
            map.strokes.push_back(strokes);
        }
    return map;
}

}  // namespace landwidth
