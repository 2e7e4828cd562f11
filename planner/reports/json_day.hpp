// The day as every JSON report carries it.
#pragma once

#include "planner/engine/day/conditions.hpp"
#include "planner/reports/json_pieces.hpp"

namespace landwidth {

double json_mph(double mps);

// {"wind": null or {"speed_mph", "from_deg", "gusts_mph"}, "temperature_c", "pressure_hpa", "humidity_share",
// "air_density_kg_per_m3", "firmness": {"fairway", "rough"}}.
Json json_day(const Conditions& conditions);

}  // namespace landwidth
