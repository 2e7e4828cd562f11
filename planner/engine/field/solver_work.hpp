// A layer while it is being solved: the state that the steps of FieldSolver share. Not for use outside of it.
#pragma once

#include <optional>
#include <vector>

#include "planner/engine/field/field_solver.hpp"

namespace landwidth {

struct FieldSolver::Work {
    FieldLayer layer;
    Continuation next;
    bool refers_to_itself;  // strokes: the continuation is the layer itself
    std::optional<ShotCost> cost;
    std::optional<ShotWorth> worth;
    std::optional<ActionSearch> search;
    std::vector<double> changes;    // by square: the largest changes of its cells so far, summed up
    std::vector<float> drop_costs;  // as last looked at
    std::vector<double> exposed;    // by block: its exposure when it was valued
};

}  // namespace landwidth
