// The cells with a choice to make, grouped for the solver: small blocks of one stance that are valued
// together, and larger ones that share what one cell found.
#pragma once

#include <array>
#include <vector>

#include "planner/engine/field/field_layer.hpp"
#include "planner/engine/field/hole_out.hpp"
#include "planner/engine/field/play_grid.hpp"

namespace landwidth {

// The open cells of one stance in a square of the grid (block_side cells).
struct SolverBlock {
    int first_cell;  // of the square
    Stance stance;
    std::array<bool, block_cells> open;  // row by row
    int middle;                          // one of its cells
    int large;                           // index of the larger block it belongs to
    int square;                          // number of the square, row by row
    float left_m;                        // mean distance left
};

// The cell that looks at everything for several blocks, and what it found.
struct LargeSolverBlock {
    int cell;
    std::vector<int> cells;     // all of its blocks
    std::vector<Action> found;  // best first; filled by the solver
    std::array<int, 4> beside;  // large blocks of the same stance; -1: none
};

class SolverBlocks {
  public:
    SolverBlocks(const PlayGrid& grid, const HoleOut& hole_out);

    // Nearest to the hole first.
    const std::vector<SolverBlock>& all() const { return blocks_; }
    const std::vector<LargeSolverBlock>& large() const { return large_; }
    int open_cells() const { return open_cells_; }
    int cell_of(const SolverBlock& block, std::size_t index) const {
        return block.first_cell + static_cast<int>(index) / block_side * columns_ +
               static_cast<int>(index) % block_side;
    }
    int square_of(int cell) const {
        return cell / columns_ / block_side * (columns_ / block_side) + cell % columns_ / block_side;
    }

  private:
    void add_blocks_of(const PlayGrid& grid, const HoleOut& hole_out, int first_cell);
    void make_large_blocks();

    int columns_;
    int open_cells_ = 0;
    std::vector<SolverBlock> blocks_;
    std::vector<LargeSolverBlock> large_;
};

}  // namespace landwidth
