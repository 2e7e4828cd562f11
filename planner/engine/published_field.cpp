#include "planner/engine/published_field.hpp"

#include <algorithm>
#include <stdexcept>

#include "geometry/units.hpp"
#include "planner/engine/tour_table.hpp"

namespace landwidth {

namespace {

constexpr double table_step_m = 0.1;
constexpr double table_reach_m = 1200.0;

TourLie table_column(Lie lie) {
    switch (lie) {
        case Lie::rough:
            return TourLie::rough;
        case Lie::bunker:
            return TourLie::sand;
        case Lie::trees:
            return TourLie::recovery;
        default:
            return TourLie::fairway;
    }
}

double value_at(Lie lie, double distance_m, const HandicapAdjustment& adjustment) {
    if (lie == Lie::green) return tour_putts(adjustment.worth_putt_m(distance_m) / metres_per_foot);
    return tour_strokes(table_column(lie), Yards::of(distance_m)) + adjustment.extra_strokes(distance_m);
}

}  // namespace

StrokesByDistance::StrokesByDistance(const Golfer& golfer, const EngineAssumptions& assumptions) {
    const HandicapAdjustment adjustment(golfer, assumptions);
    const auto nodes = static_cast<std::size_t>(table_reach_m / table_step_m) + 2;
    for (Lie lie : all_lies) {
        if (!is_in_play(lie)) continue;
        std::vector<double>& column = columns_[index_of(lie)];
        column.reserve(nodes);
        for (std::size_t i = 0; i < nodes; ++i)
            column.push_back(value_at(lie, static_cast<double>(i) * table_step_m, adjustment));
    }
}

double StrokesByDistance::strokes(Lie lie, double distance_m) const {
    const std::vector<double>& column = columns_[index_of(lie)];
    if (column.empty()) throw std::logic_error("a ball out of play has no strokes of its own");
    const double position = std::min(distance_m, table_reach_m) / table_step_m;
    const auto node = static_cast<std::size_t>(position);
    const double share = position - static_cast<double>(node);
    return column[node] + share * (column[node + 1] - column[node]);
}

PublishedField::PublishedField(const StrokesByDistance& table, const LineOfPlay& line, const Box& ground)
    : table_(table), left_(line, ground) {}

StrokesField::Worth PublishedField::worth(Point place, Lie lie, int used) const {
    const double left = left_.from(place);
    return {used + table_.strokes(lie, left), left};
}

}  // namespace landwidth
