// Assumptions as every JSON report carries them.
#pragma once

#include <nlohmann/json.hpp>
#include <vector>

#include "planner/engine/assumption_entry.hpp"

namespace landwidth {

// One object a constant, under its name: value, unit, source, meaning, and "overridden" where it is.
nlohmann::ordered_json json_assumptions(const std::vector<AssumptionEntry>& entries);

}  // namespace landwidth
