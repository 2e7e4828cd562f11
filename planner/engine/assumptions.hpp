// Every modelling constant that is not data: one place to read, override and echo them.
//
// The values, units, meanings and sources stand in assumptions.cpp. `--assume name=value` overrides one; the
// machine-readable outputs carry all of them.
#pragma once

#include <string_view>
#include <vector>

#include "courses/map_assumptions.hpp"
#include "planner/engine/assumption_entry.hpp"
#include "planner/engine/engine_assumptions.hpp"

namespace landwidth {

struct Assumptions {
    MapAssumptions map;
    EngineAssumptions engine;
};

Assumptions default_assumptions();

// For what looks out from a tee hundreds of times (a chart, bags side by side): cells of the tee fan twice as
// large. On the demo's golfers that moved a difference between two clubs on a hole by at most 0.0024 strokes,
// 0.0007 on average.
Assumptions with_coarser_fan(Assumptions assumptions);

// For what solves the holes many times over (the wind card): cells of the golfer's own field twice as large.
Assumptions with_coarser_field(Assumptions assumptions);

// In the order of assumptions.cpp.
std::vector<AssumptionEntry> list_assumptions(const Assumptions& assumptions);

// `text` is "name=value", the value in the unit listed. Throws UsageError: unknown name (naming the nearest),
// not a number, out of range.
void override_assumption(Assumptions& assumptions, std::string_view text);

}  // namespace landwidth
