// The forms of a plan. Each turns results into text or a file and computes nothing that is a golf number.
#pragma once

#include <filesystem>
#include <string>

#include "planner/reports/plan_view.hpp"

namespace landwidth {

// A table for a terminal, at most 100 columns wide, then scores, the holes in words, warnings, cautions and
// attribution.
std::string plan_text(const PlanView& view);

// "landwidth-plan/1", the contract of the design; always yards, whatever view.units. With an aim other than
// strokes the value stands beside expected_strokes (expected_points, par_or_better), margin_strokes is null,
// and the margin is margin_points or margin_share; round.always_driver and never_driver are in the units of
// the aim.
std::string plan_json(const PlanView& view);

// One self-contained page: no network, no script, prints well. Holes with a cost map can be shaded by it.
std::string plan_html(const PlanView& view);

// RFC 7946 feature collection in WGS 84; each feature has a "layer" property: lies, aim_lines,
// landing_ellipses, landing_widths.
std::string plan_geojson(const PlanView& view);

// The same layers as tables of a GeoPackage with their styles, written to `path` (which must not exist).
// Throws OutputError.
void write_plan_geopackage(const PlanView& view, const std::filesystem::path& path);

}  // namespace landwidth
