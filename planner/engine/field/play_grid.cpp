#include "planner/engine/field/play_grid.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/units.hpp"

namespace landwidth {

namespace {

constexpr double whole_turn = 2.0 * std::numbers::pi;
constexpr unsigned trap_shift = 3, woods_shift = 9;
constexpr std::uint16_t trap_mask = 63U << trap_shift, woods_mask = 63U << woods_shift;

// Hardly a ball ends up further behind the tee, or further beyond the hole.
constexpr double behind_tee_m = Yards{25.0}.metres();
constexpr double beyond_pin_m = Yards{50.0}.metres();

constexpr int room_cells = 12;
// The cell that stands for one outside is looked for this far inside.
constexpr double most_back_m = Yards{20.0}.metres();

bool is_trap(Lie lie) {
    return lie == Lie::bunker || is_penalty_area(lie);
}

int steps_within(double metres, double step_m) {
    return std::clamp(static_cast<int>(std::ceil(metres / step_m)), 0, PlayGrid::far_away - 1);
}

}  // namespace

PlayGrid::PlayGrid(const Hole& hole, const LieRaster& lies, const HoleDay& day, double step_m, double reach_m,
                   double run_m, unsigned stop_cells)
    : step_m_(step_m),
      pin_(hole.line.pin()),
      ahead_(unit(hole.line.pin() - hole.line.tee())),
      right_{ahead_.y, -ahead_.x} {
    for (int direction = 0; direction < travel_directions; ++direction) {
        const double angle = direction * whole_turn / travel_directions;
        for (int k = 0; k < far_away; ++k)
            offsets_[static_cast<std::size_t>(direction)][static_cast<std::size_t>(k)] = {
                static_cast<int>(std::lround(k * std::sin(angle))),
                static_cast<int>(std::lround(k * std::cos(angle)))};
    }
    lay_out(hole, reach_m);
    for (std::size_t direction = 0; direction < travel_directions; ++direction)
        for (std::size_t k = 0; k < far_away; ++k)
            strides_[direction][k] = offsets_[direction][k].row * columns_ + offsets_[direction][k].column;
    read_lies(hole, lies, reach_m);
    find_outside(hole, reach_m);
    read_day(day, lies);
    // A few more, so that four may be read at once.
    meetings_.resize(static_cast<std::size_t>(travel_directions) * static_cast<std::size_t>(cells()) +
                     block_side);
    for (int direction = 0; direction < travel_directions; ++direction)
        for (int cell = 0; cell < cells(); ++cell)
            meetings_[static_cast<std::size_t>(direction) * static_cast<std::size_t>(cells()) +
                      static_cast<std::size_t>(cell)] =
                static_cast<std::uint16_t>(static_cast<unsigned>(run_kind(lie(cell))) | trap_mask |
                                           woods_mask);
    find_traps(steps_within(run_m, step_m_));
    find_woods(static_cast<int>(stop_cells));
}

void PlayGrid::lay_out(const Hole& hole, double reach_m) {
    double left = 0.0;
    double right = 0.0;
    double back = 0.0;
    double beyond = 0.0;
    for (const Point& vertex : hole.line.vertices()) {
        const Point from_pin = vertex - pin_;
        left = std::max(left, -dot(from_pin, right_));
        right = std::max(right, dot(from_pin, right_));
        back = std::max(back, -dot(from_pin, ahead_));
        beyond = std::max(beyond, dot(from_pin, ahead_));
    }
    // Room for balls that go wide, so that few have to be kept on the edge.
    const auto cells_for = [&](double metres, double more_m) {
        return static_cast<int>(std::ceil((metres + more_m) / step_m_)) + room_cells;
    };
    const auto whole_blocks = [](int cells) { return (cells + block_side - 1) / block_side * block_side; };
    const int columns_left = cells_for(left, reach_m);
    const int rows_back = cells_for(back, std::min(reach_m, behind_tee_m));
    columns_ = whole_blocks(columns_left + cells_for(right, reach_m) + 1);
    rows_ = whole_blocks(rows_back + cells_for(beyond, std::min(reach_m, beyond_pin_m)) + 1);
    corner_ = pin_ - (columns_left + 0.5) * step_m_ * right_ - (rows_back + 0.5) * step_m_ * ahead_;
}

void PlayGrid::read_lies(const Hole& hole, const LieRaster& lies, double reach_m) {
    const DistanceLeft left(hole.line, hole.lies.extent());
    const Point first_leg = hole.line.direction_at(0.0);
    const Point last_leg = hole.line.direction_at(hole.line.length());
    const auto count = static_cast<std::size_t>(cells());
    lies_.reserve(count);
    inside_.reserve(count);
    left_m_.reserve(count);
    for (int cell = 0; cell < cells(); ++cell) {
        const Point place = centre(cell);
        const LineOfPlay::Place on_line = hole.line.place_of(place);
        lies_.push_back(lies.at(place));
        inside_.push_back(std::abs(on_line.offset_m) <= reach_m &&
                          distance(place, hole.line.point_at(on_line.station_m)) <= reach_m &&
                          dot(place - hole.line.tee(), first_leg) >= -behind_tee_m &&
                          dot(place - pin_, last_leg) <= beyond_pin_m);
        left_m_.push_back(static_cast<float>(left.from(place)));
    }
}

void PlayGrid::read_day(const HoleDay& day, const LieRaster& lies) {
    if (day.wind_to) wind_turn_ = turn_of(*day.wind_to);
    const auto count = static_cast<std::size_t>(cells());
    canopy_m_.assign(count, 0.0F);
    for (int cell = 0; cell < cells() && day.canopy != nullptr; ++cell)
        canopy_m_[static_cast<std::size_t>(cell)] =
            static_cast<float>(canopy_m(day, lies, centre(cell), lie(cell)));
    if (day.heights == nullptr) return;
    // In double, so that the mean of equal heights is that height to the last bit.
    struct Sum {
        double height_m = 0.0;
        Point rise;
    };
    std::vector<Sum> sums(count / block_cells);
    for (int cell = 0; cell < cells(); ++cell) {
        Sum& sum = sums[block_of(cell)];
        sum.height_m += day.heights->at(centre(cell));
        sum.rise = sum.rise + day.heights->gradient(centre(cell));
    }
    constexpr double share = 1.0 / static_cast<double>(block_cells);
    for (const Sum& sum : sums)
        posts_.push_back({static_cast<float>(share * sum.height_m),
                          static_cast<float>(share * dot(sum.rise, right_)),
                          static_cast<float>(share * dot(sum.rise, ahead_))});
    lowest_ground_m_ = std::ranges::min_element(posts_, {}, &Post::height_m)->height_m;
}

void PlayGrid::find_outside(const Hole& hole, double reach_m) {
    for (int cell = 0; cell < cells(); ++cell) {
        stands_for_.push_back(cell);
        if (is_inside(cell)) continue;
        const Point place = centre(cell);
        const Point foot = hole.line.point_at(hole.line.place_of(place).station_m);
        // On the way back to the line: the first cell inside of the same lie, else the first in play.
        int stands_for = -1;
        int in_play = -1;
        const double out = distance(place, foot);
        for (double back = 0.0; back < out && stands_for < 0; back += step_m_) {
            const int candidate = cell_at(foot + (out - back) * unit(place - foot));
            if (!is_inside(candidate)) continue;
            const Lie there = lie(candidate);
            if (in_play < 0 && is_in_play(there)) in_play = candidate;
            if (there == lie(cell)) stands_for = candidate;
            if (in_play >= 0 && out - back < reach_m - most_back_m) break;
        }
        if (stands_for < 0) stands_for = in_play >= 0 ? in_play : cell_at(foot);
        outside_.push_back({cell, stands_for});
        stands_for_.back() = stands_for;
    }
}

Point PlayGrid::centre(int cell) const {
    return corner_ + (cell % columns_ + 0.5) * step_m_ * right_ + (cell / columns_ + 0.5) * step_m_ * ahead_;
}

std::array<Point, 16> PlayGrid::spots(int cell) const {
    constexpr std::size_t across = 4;
    std::array<Point, 16> places;
    for (std::size_t i = 0; i < places.size(); ++i)
        places[i] = centre(cell) + ((static_cast<double>(i % across) + 0.5) / across - 0.5) * step_right() +
                    ((static_cast<double>(i / across) + 0.5) / across - 0.5) * step_along();
    return places;
}

int PlayGrid::turn_of(double bearing) const {
    const double turn = std::remainder(bearing - plane_bearing(ahead_), whole_turn);
    const int steps = static_cast<int>(std::lround(turn / whole_turn * turn_steps));
    return (steps + turn_steps) % turn_steps;
}

double PlayGrid::bearing_of(int turn) const {
    return plane_bearing(ahead_) + turn * whole_turn / turn_steps;
}

Point PlayGrid::coordinates(Point place) const {
    const Point from_corner = place - corner_;
    return {dot(from_corner, right_) / step_m_, dot(from_corner, ahead_) / step_m_};
}

int PlayGrid::cell_at(Point place) const {
    const Point at = coordinates(place);
    const int column = static_cast<int>(std::clamp(at.x, 0.0, columns_ - 0.5));
    const int row = static_cast<int>(std::clamp(at.y, 0.0, rows_ - 0.5));
    return row * columns_ + column;
}

int PlayGrid::moved(int cell, int direction, int steps) const {
    const Offset offset = offsets_[static_cast<std::size_t>(direction)][static_cast<std::size_t>(steps)];
    const int column = std::clamp(cell % columns_ + offset.column, 0, columns_ - 1);
    const int row = std::clamp(cell / columns_ + offset.row, 0, rows_ - 1);
    return row * columns_ + column;
}

void PlayGrid::lower_trap(int direction, int cell, unsigned distance) {
    std::uint16_t& bits = meetings_[static_cast<std::size_t>(direction) * static_cast<std::size_t>(cells()) +
                                    static_cast<std::size_t>(cell)];
    if (distance < (bits & trap_mask) >> trap_shift)
        bits = static_cast<std::uint16_t>((bits & ~unsigned{trap_mask}) | distance << trap_shift);
}

void PlayGrid::lower_woods(int direction, int cell, unsigned distance) {
    std::uint16_t& bits = meetings_[static_cast<std::size_t>(direction) * static_cast<std::size_t>(cells()) +
                                    static_cast<std::size_t>(cell)];
    if (distance < unsigned{bits} >> woods_shift)
        bits = static_cast<std::uint16_t>((bits & ~unsigned{woods_mask}) | distance << woods_shift);
}

// Every trap writes its distance to the cells a ball may come from: exactly what walking ahead from each of
// those cells would find, at the cost of the traps alone.
void PlayGrid::find_traps(int furthest) {
    for (int cell = 0; cell < cells(); ++cell) {
        if (!is_trap(lie(cell))) continue;
        const int column = cell % columns_;
        const int row = cell / columns_;
        for (int direction = 0; direction < travel_directions; ++direction)
            for (int k = 0; k <= furthest; ++k) {
                const Offset offset =
                    offsets_[static_cast<std::size_t>(direction)][static_cast<std::size_t>(k)];
                const int from_column = column - offset.column;
                const int from_row = row - offset.row;
                if (from_column < 0 || from_row < 0 || from_column >= columns_ || from_row >= rows_) break;
                const int from = from_row * columns_ + from_column;
                // A ball there is in a trap already.
                if (k > 0 && is_trap(lie(from))) continue;
                lower_trap(direction, from, static_cast<unsigned>(k));
            }
    }
}

bool PlayGrid::is_edge_of_canopy(int cell) const {
    if (!is_tall(cell)) return false;
    for (int direction = 0; direction < travel_directions; direction += travel_directions / 8)
        if (!is_tall(moved(cell, direction, 1))) return true;
    return false;
}

void PlayGrid::find_woods(int furthest) {
    canopy_steps_.assign(static_cast<std::size_t>(travel_directions) * static_cast<std::size_t>(cells()),
                         std::uint8_t{far_away});
    for (int cell = 0; cell < cells(); ++cell)
        if (is_edge_of_canopy(cell)) hide_behind(cell, furthest);
}

// Writes to the cells in reach of a canopy how near one of the usual height would have to stand to hide as
// much of the sky. `furthest`: cells within which a usual one stops balls.
void PlayGrid::hide_behind(int woods, int furthest) {
    constexpr auto usual = static_cast<float>(usual_canopy_m);
    // Ground that rises as much as a canopy of no height at all hides next to nothing.
    constexpr float least_top_m = 1.0F;
    const int column = woods % columns_;
    const int row = woods / columns_;
    const float top = canopy_m_[static_cast<std::size_t>(woods)] + ground_m(woods);
    const float lowest = has_heights() ? lowest_ground_m_ : 0.0F;
    const float most_hidden = std::max(least_top_m, top - lowest) / usual;
    const int reach =
        std::min(static_cast<int>(std::ceil(static_cast<float>(furthest) * most_hidden)), far_away - 1);
    for (int direction = 0; direction < travel_directions; ++direction)
        for (int k = 1; k <= reach; ++k) {
            const Offset offset = offsets_[static_cast<std::size_t>(direction)][static_cast<std::size_t>(k)];
            const int past_column = column + offset.column;
            const int past_row = row + offset.row;
            if (past_column < 0 || past_row < 0 || past_column >= columns_ || past_row >= rows_) break;
            const int past = past_row * columns_ + past_column;
            if (is_tall(past)) continue;
            const float hidden = std::max(least_top_m, top - ground_m(past)) / usual;
            const int as_usual = static_cast<int>(std::ceil(static_cast<float>(k) / hidden));
            if (as_usual > furthest) continue;
            lower_woods(direction, past, static_cast<unsigned>(as_usual));
            std::uint8_t& steps =
                canopy_steps_[static_cast<std::size_t>(direction) * static_cast<std::size_t>(cells()) +
                              static_cast<std::size_t>(past)];
            steps = std::min(steps, static_cast<std::uint8_t>(k));
        }
}

}  // namespace landwidth
