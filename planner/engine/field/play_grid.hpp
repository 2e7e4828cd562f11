// The grid a hole is solved on, and what a ball meets on its way over it.
//
// Square cells set along the direction from tee to pin, the pin at the centre of one: turning or moving a
// hole turns or moves its grid. A cell has the lie of its centre. Grid coordinates count cells from the outer
// corner; columns to the right of the play, rows towards the pin. The ground is what lies within a reach of
// the line of play; a ball beyond it counts as on the nearest cell inside.
//
// Travel is told apart in 32 directions clockwise from the play. For each the grid knows, from every cell,
// how far a ball may run before a bunker or penalty area takes it, and how far behind it trees or buildings
// stand that hide as much of the sky as a canopy of the usual height would.
#pragma once

#include <algorithm>
#include <array>
#include <cstdint>
#include <optional>
#include <vector>

#include "courses/course.hpp"
#include "geometry/lie_raster.hpp"
#include "planner/engine/day/hole_day.hpp"
#include "planner/engine/distance_left.hpp"
#include "planner/engine/field/shot_menu.hpp"

namespace landwidth {

// Cells are taken together in square blocks of this side; columns and rows of a grid are multiples of it.
inline constexpr int block_side = 4;
inline constexpr std::size_t block_cells = std::size_t{block_side} * block_side;

// The direction that a turn of the travel belongs to; any turn from -turn_steps up.
constexpr int direction_of(int turn) {
    return ((turn + turn_steps + turns_per_direction / 2) / turns_per_direction) % travel_directions;
}

class PlayGrid {
  public:
    // run_m: no ball runs further; stop_cells: canopies of the usual height further behind a landing place
    // stop none.
    PlayGrid(const Hole& hole, const LieRaster& lies, const HoleDay& day, double step_m, double reach_m,
             double run_m, unsigned stop_cells);

    double step_m() const { return step_m_; }
    int columns() const { return columns_; }
    int rows() const { return rows_; }
    int cells() const { return columns_ * rows_; }

    Point pin() const { return pin_; }
    Point centre(int cell) const;
    Point step_along() const { return step_m_ * ahead_; }  // one row
    Point step_right() const { return step_m_ * right_; }  // one column
    Point corner() const { return corner_; }
    // The turn of a plane bearing from the play, in [0, turn_steps).
    int turn_of(double bearing) const;
    double bearing_of(int turn) const;
    // Coordinates of a place in cells; may lie off the grid.
    Point coordinates(Point place) const;
    int cell_at(Point place) const;

    Lie lie(int cell) const { return lies_[static_cast<std::size_t>(cell)]; }
    // Distance left along the line of play, metres.
    float left_m(int cell) const { return left_m_[static_cast<std::size_t>(cell)]; }
    // The turn to which the wind blows; absent in still air.
    const std::optional<int>& wind_turn() const { return wind_turn_; }
    // The ground where heights are known: a plane over every block, rising so many metres a metre to the
    // right of the play and along it.
    struct Post {
        float height_m;
        float right, along;
    };
    bool has_heights() const { return !posts_.empty(); }
    // At coordinates on the grid.
    Post ground_at(float x, float y) const {
        const int column = static_cast<int>(x) / block_side;
        const int row = static_cast<int>(y) / block_side;
        Post post = posts_[static_cast<std::size_t>(row * (columns_ / block_side) + column)];
        constexpr float to_middle = 0.5F * block_side;
        const float right = x - (static_cast<float>(column * block_side) + to_middle);
        const float along = y - (static_cast<float>(row * block_side) + to_middle);
        post.height_m += (right * post.right + along * post.along) * static_cast<float>(step_m_);
        return post;
    }
    // The same, a place off the grid taken to its edge.
    Post ground_kept_on(float x, float y) const {
        return ground_at(std::max(0.0F, std::min(x, static_cast<float>(columns_) - 0.5F)),
                         std::max(0.0F, std::min(y, static_cast<float>(rows_) - 0.5F)));
    }
    // From where balls of a cell are hit: all cells of a block count as equally high.
    float height_of_block(int cell) const { return posts_[block_of(cell)].height_m; }
    // Cells beyond the reach, each with the cell inside that stands for it.
    struct Outside {
        int cell;
        int stands_for;
    };
    const std::vector<Outside>& outside() const { return outside_; }
    // The cell itself, or the one inside that stands for it.
    int standing(int cell) const { return stands_for_[static_cast<std::size_t>(cell)]; }
    // Places spread evenly over a cell.
    std::array<Point, 16> spots(int cell) const;
    bool is_inside(int cell) const { return inside_[static_cast<std::size_t>(cell)]; }

    // What a ball that lands in a cell, travelling in a direction, meets.
    class Meeting {
      public:
        explicit Meeting(std::uint16_t bits) : bits_(bits) {}
        std::size_t run_kind() const { return bits_ & 7U; }
        // Cells to run until a bunker or penalty area: 0 in one, far_away when none is within the run.
        int trap_cells() const { return (bits_ >> 3U) & 63U; }
        // Cells back to a canopy of the usual height, or to where one would hide as much as what stands there
        // does; far_away when none is near enough to matter.
        unsigned woods_cells() const { return bits_ >> 9U; }

      private:
        std::uint16_t bits_;
    };
    static constexpr int far_away = 63;
    const std::uint16_t* meetings(int direction) const {
        return meetings_.data() + static_cast<std::size_t>(direction) * static_cast<std::size_t>(cells());
    }
    // Of four meetings read at once: whether all land on the same kind of ground, and whether in all of them
    // traps or woods are at least so far away (at most far_away).
    static constexpr bool same_kind(std::uint64_t four) {
        return ((four ^ (four & 7U) * each_of_four) & 7U * each_of_four) == 0;
    }
    static constexpr bool traps_at_least(std::uint64_t four, unsigned cells) {
        return at_least((four >> 3U) & 63U * each_of_four, cells);
    }
    static constexpr bool woods_at_least(std::uint64_t four, unsigned cells) {
        return at_least((four >> 9U) & 63U * each_of_four, cells);
    }

    // Cells ahead to woods from a cell in a direction.
    unsigned woods_ahead(int direction, int cell) const {
        return Meeting(meetings((direction + travel_directions / 2) % travel_directions)[cell]).woods_cells();
    }
    // The first cell of woods back from a landing place (or, with the opposite direction, ahead of a ball),
    // where a Meeting knows of some.
    int woods_behind(int direction, int cell) const {
        return cell -
               stride(direction,
                      canopy_steps_[static_cast<std::size_t>(direction) * static_cast<std::size_t>(cells()) +
                                    static_cast<std::size_t>(cell)]);
    }
    bool is_tall(int cell) const { return canopy_m_[static_cast<std::size_t>(cell)] > 0.0F; }

    // So many cells on in a direction; stays on the grid.
    int moved(int cell, int direction, int steps) const;
    // The same as a difference of cell numbers, for moves that a Meeting knows to stay on the grid.
    int stride(int direction, int steps) const {
        return strides_[static_cast<std::size_t>(direction)][static_cast<std::size_t>(steps)];
    }

  private:
    static constexpr std::uint64_t each_of_four = 0x0001000100010001ULL;
    // A guard bit above every field stays set unless the field was smaller than what is taken off.
    static constexpr bool at_least(std::uint64_t fields, std::uint64_t least) {
        constexpr std::uint64_t guards = 0x8000U * each_of_four;
        return (((fields | guards) - least * each_of_four) & guards) == guards;
    }
    struct Offset {
        int column, row;
    };
    void lay_out(const Hole& hole, double reach_m);
    void read_lies(const Hole& hole, const LieRaster& lies, double reach_m);
    void find_outside(const Hole& hole, double reach_m);
    void find_traps(int furthest);
    void read_day(const HoleDay& day, const LieRaster& lies);
    void find_woods(int furthest);
    void hide_behind(int woods, int furthest);
    void lower_trap(int direction, int cell, unsigned distance);
    void lower_woods(int direction, int cell, unsigned distance);
    std::size_t block_of(int cell) const {
        return static_cast<std::size_t>(cell / columns_ / block_side * (columns_ / block_side) +
                                        cell % columns_ / block_side);
    }
    bool is_edge_of_canopy(int cell) const;
    float ground_m(int cell) const {
        if (!has_heights()) return 0.0F;
        return ground_at(static_cast<float>(cell % columns_) + 0.5F,
                         static_cast<float>(cell / columns_) + 0.5F)
            .height_m;
    }

    double step_m_;
    Point pin_;
    Point ahead_, right_;
    Point corner_{};
    int columns_ = 0, rows_ = 0;
    std::array<std::array<Offset, far_away>, travel_directions> offsets_;
    std::array<std::array<int, far_away>, travel_directions> strides_;
    std::vector<Lie> lies_;
    std::vector<char> inside_;
    std::vector<float> canopy_m_;  // over the ground
    std::vector<Post> posts_;      // by block
    float lowest_ground_m_ = 0.0F;
    std::optional<int> wind_turn_;
    std::vector<std::uint8_t> canopy_steps_;  // by direction and cell; far_away: none
    std::vector<float> left_m_;
    std::vector<Outside> outside_;
    std::vector<int> stands_for_;
    std::vector<std::uint16_t> meetings_;
};

}  // namespace landwidth
