#include "planner/engine/field/drop_places.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/units.hpp"

namespace landwidth {

namespace {

constexpr double e5_reach_m = Yards{150.0}.metres();
// Centres of cells count as no nearer the hole when they are so to this.
constexpr double no_nearer_slack_m = 0.1;

}  // namespace

DropPlaces::DropPlaces(const PlayGrid& grid, const ReliefRules& rules)
    : grid_(grid), rules_(rules), pin_(grid.pin()), slot_(static_cast<std::size_t>(grid.cells()), -1) {
    int slots = 0;
    for (int cell = 0; cell < grid.cells(); ++cell) {
        const Lie lie = grid.lie(cell);
        if (is_penalty_area(lie) || (rules.local_rule_e5 && lie == Lie::out_of_bounds))
            slot_[static_cast<std::size_t>(cell)] = slots++;
    }
    by_direction_.assign(static_cast<std::size_t>(slots) * travel_directions, -1);
}

bool DropPlaces::may_drop(int cell) const {
    return grid_.is_inside(cell) && is_in_play(grid_.lie(cell));
}

std::size_t DropPlaces::drop_of(int cell, int direction) {
    int& known =
        by_direction_[static_cast<std::size_t>(slot_[static_cast<std::size_t>(cell)]) * travel_directions +
                      static_cast<std::size_t>(direction)];
    if (known >= 0) return static_cast<std::size_t>(known);
    const Lie lie = grid_.lie(cell);
    const int back = (direction + travel_directions / 2) % travel_directions;
    // Back along the way it came, far_away cells at a time, to the first cell outside.
    int crossing = cell;
    for (int from = cell, k = 1;; ++k) {
        if (k == PlayGrid::far_away) {
            if (crossing == from) break;  // the edge of the grid
            from = crossing;
            k = 1;
        }
        crossing = grid_.moved(from, back, k);
        if (grid_.lie(crossing) != lie) break;
    }
    const Rule rule = lie == Lie::out_of_bounds ? Rule::e5
                      : lie == Lie::penalty_red ? Rule::red
                                                : Rule::yellow;
    const std::size_t index = drop_at(crossing, rule);
    known = static_cast<int>(index);
    return index;
}

std::size_t DropPlaces::drop_for_lost(int cell) {
    return drop_at(cell, Rule::e5);
}

std::size_t DropPlaces::drop_at(int crossing, Rule rule) {
    const auto [entry, is_new] = known_.try_emplace({crossing, rule}, drops_.size());
    if (is_new) drops_.push_back(made(crossing, rule));
    return entry->second;
}

DropPlaces::Drop DropPlaces::made(int crossing, Rule rule) const {
    Drop drop{rule == Rule::e5 ? 2 : 1, {}};
    if (rule == Rule::e5) {
        add_fairway(crossing, drop);
        return drop;
    }
    add_back_on_the_line(crossing, drop);
    if (rule == Rule::red) add_lateral(crossing, drop);
    std::ranges::sort(drop.cells);
    drop.cells.erase(std::unique(drop.cells.begin(), drop.cells.end()), drop.cells.end());
    return drop;
}

void DropPlaces::add_back_on_the_line(int crossing, Drop& drop) const {
    const Point from = grid_.centre(crossing);
    const Point away = unit(from - pin_);
    for (double back = 0.0; back <= rules_.back_on_line_reach_m; back += grid_.step_m()) {
        const int cell = grid_.cell_at(from + back * away);
        if (may_drop(cell)) drop.cells.push_back(cell);
    }
}

void DropPlaces::add_lateral(int crossing, Drop& drop) const {
    const Point from = grid_.centre(crossing);
    const double reach = 2.0 * rules_.club_length_m;
    const double nearest = distance(from, pin_) - no_nearer_slack_m;
    const int cells = static_cast<int>(reach / grid_.step_m());
    for (int row = -cells; row <= cells; ++row)
        for (int column = -cells; column <= cells; ++column) {
            const Point place =
                from + double{column * 1.0} * grid_.step_right() + double{row * 1.0} * grid_.step_along();
            const int cell = grid_.cell_at(place);
            if (distance(place, from) <= reach && distance(place, pin_) >= nearest && may_drop(cell))
                drop.cells.push_back(cell);
        }
}

// The nearest fairway no nearer the hole, to either side.
void DropPlaces::add_fairway(int crossing, Drop& drop) const {
    const Point reference = grid_.centre(crossing);
    const double radius = distance(reference, pin_);
    const double bearing = plane_bearing(reference - pin_);
    for (double aside = 0.0; aside <= std::min(e5_reach_m, std::numbers::pi * radius);
         aside += grid_.step_m())
        for (const double side : {-1.0, 1.0}) {
            const int cell = grid_.cell_at(pin_ + radius * along_bearing(bearing + side * aside / radius));
            if (grid_.lie(cell) != Lie::fairway || !grid_.is_inside(cell)) continue;
            drop.cells.push_back(cell);
            return;
        }
}

}  // namespace landwidth
