// The solution of a hole on its grid: for every cell what it costs to be there and what to play.
#pragma once

#include <cstdint>
#include <vector>

namespace landwidth {

// A shot: an option of the menu for the cell's stance, and the turn of its aim (see PlayGrid).
struct Action {
    std::int16_t option = -1;  // -1: nothing to choose (the green, the short game, out of play)
    std::int16_t turn = 0;

    friend bool operator==(const Action&, const Action&) = default;
};

struct FieldLayer {
    std::vector<float> cost;
    std::vector<Action> action;
};

// How a solution came about.
struct SolveRecord {
    int sweeps = 0;              // over the grid with the final choices
    double residual = 0.0;       // largest difference between a cost and what its own shot makes of it
    std::uint64_t look_ups = 0;  // balls followed to their place of rest
    int cells = 0;               // with a choice to make
};

}  // namespace landwidth
