#include "planner/engine/field/solver_blocks.hpp"

#include <algorithm>
#include <map>
#include <tuple>

namespace landwidth {

namespace {

// Blocks along each side of a larger one.
constexpr int large_side = 2;

}  // namespace

SolverBlocks::SolverBlocks(const PlayGrid& grid, const HoleOut& hole_out) : columns_(grid.columns()) {
    for (int row = 0; row < grid.rows(); row += block_side)
        for (int column = 0; column < grid.columns(); column += block_side)
            add_blocks_of(grid, hole_out, row * grid.columns() + column);
    std::ranges::stable_sort(blocks_, {}, &SolverBlock::left_m);
    make_large_blocks();
}

void SolverBlocks::add_blocks_of(const PlayGrid& grid, const HoleOut& hole_out, int first_cell) {
    for (const Stance stance : all_stances) {
        SolverBlock block{first_cell, stance, {}, -1, -1, square_of(first_cell), 0.0F};
        int count = 0;
        for (std::size_t i = 0; i < block_cells; ++i) {
            const int cell = cell_of(block, i);
            const Lie lie = grid.lie(cell);
            if (!grid.is_inside(cell) || !is_in_play(lie) || stance_on(lie) != stance ||
                hole_out.is_close(lie, distance(grid.centre(cell), grid.pin())))
                continue;
            block.open[i] = true;
            ++count;
            block.left_m += grid.left_m(cell);
            // Of those half way through the square.
            if (block.middle < 0 || i <= block_cells / 2 + block_side / 2) block.middle = cell;
        }
        if (count == 0) continue;
        block.left_m /= static_cast<float>(count);
        open_cells_ += count;
        blocks_.push_back(block);
    }
}

void SolverBlocks::make_large_blocks() {
    constexpr int side = large_side * block_side;
    using Key = std::tuple<int, int, Stance>;
    std::map<Key, int> known;
    std::vector<std::vector<int>> members;
    for (std::size_t i = 0; i < blocks_.size(); ++i) {
        SolverBlock& block = blocks_[i];
        const Key key{block.first_cell % columns_ / side, block.first_cell / columns_ / side, block.stance};
        const auto [entry, is_new] = known.try_emplace(key, static_cast<int>(members.size()));
        if (is_new) members.emplace_back();
        members[static_cast<std::size_t>(entry->second)].push_back(block.middle);
        block.large = entry->second;
    }
    large_.resize(members.size());
    for (const SolverBlock& block : blocks_)
        for (std::size_t i = 0; i < block_cells; ++i)
            if (block.open[i])
                large_[static_cast<std::size_t>(block.large)].cells.push_back(cell_of(block, i));
    for (const auto& [key, index] : known) {
        const auto [column, row, stance] = key;
        LargeSolverBlock& large = large_[static_cast<std::size_t>(index)];
        const std::vector<int>& cells = members[static_cast<std::size_t>(index)];
        large.cell = cells[cells.size() / 2];
        const std::array<Key, 4> keys{Key{column - 1, row, stance}, Key{column + 1, row, stance},
                                      Key{column, row - 1, stance}, Key{column, row + 1, stance}};
        for (std::size_t i = 0; i < keys.size(); ++i) {
            const auto found = known.find(keys[i]);
            large.beside[i] = found == known.end() ? -1 : found->second;
        }
    }
}

}  // namespace landwidth
