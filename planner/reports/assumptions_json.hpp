// Every modelling constant as a machine-readable output carries it.
#pragma once

#include <nlohmann/json.hpp>

#include "planner/engine/assumptions.hpp"

namespace landwidth {

// An object by name: value, unit, meaning, source and whether it was overridden.
nlohmann::ordered_json assumptions_json(const Assumptions& assumptions);

}  // namespace landwidth
