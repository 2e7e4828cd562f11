#include "planner/engine/relief.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/units.hpp"

namespace landwidth {

namespace {

// Places are tried this close together: finer than a ball can be dropped.
constexpr double back_step_m = Yards{1.0}.metres();
constexpr int lateral_circles = 3;
constexpr int lateral_directions = 24;
constexpr double e5_reach_m = Yards{150.0}.metres();

void consider(const ReliefGround& ground, Point place, int used, std::optional<Drop>& best) {
    const Lie lie = ground.lies.at(place);
    if (!is_in_play(lie)) return;
    const double cost = ground.field.cost(place, lie, used);
    if (!best || cost < best->cost) best = Drop{place, lie, cost};
}

}  // namespace

std::optional<Drop> back_on_the_line(const ReliefGround& ground, Point crossing, int used) {
    const Point away = unit(crossing - ground.pin);
    std::optional<Drop> best;
    for (double back = 0.0; back <= ground.back_on_line_reach_m; back += back_step_m)
        consider(ground, crossing + back * away, used, best);
    return best;
}

std::optional<Drop> lateral_relief(const ReliefGround& ground, Point crossing, int used) {
    const double to_hole = distance(crossing, ground.pin);
    std::optional<Drop> best;
    for (int circle = 1; circle <= lateral_circles; ++circle) {
        const double radius = 2.0 * ground.club_length_m * circle / lateral_circles;
        for (int direction = 0; direction < lateral_directions; ++direction) {
            const double angle = 2.0 * std::numbers::pi * direction / lateral_directions;
            const Point place = crossing + radius * along_bearing(angle);
            if (distance(place, ground.pin) >= to_hole) consider(ground, place, used, best);
        }
    }
    return best;
}

std::optional<Drop> penalty_area_relief(const ReliefGround& ground, Lie colour, Point crossing, int used) {
    std::optional<Drop> back = back_on_the_line(ground, crossing, used);
    if (colour != Lie::penalty_red) return back;
    std::optional<Drop> lateral = lateral_relief(ground, crossing, used);
    if (!back || (lateral && lateral->cost < back->cost)) return lateral;
    return back;
}

std::optional<Drop> local_rule_e5_drop(const ReliefGround& ground, Point reference, int used) {
    const double radius = distance(reference, ground.pin);
    const double bearing = plane_bearing(reference - ground.pin);
    for (double aside = 0.0; aside <= std::min(e5_reach_m, std::numbers::pi * radius); aside += back_step_m)
        for (const double side : {-1.0, 1.0}) {
            const Point place = ground.pin + radius * along_bearing(bearing + side * aside / radius);
            if (ground.lies.at(place) != Lie::fairway) continue;
            return Drop{place, Lie::fairway, ground.field.cost(place, Lie::fairway, used)};
        }
    return std::nullopt;
}

}  // namespace landwidth
