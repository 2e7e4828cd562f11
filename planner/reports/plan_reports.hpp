// The forms of a plan. Each turns results into text or a file and computes nothing that is a golf number.
#pragma once

#include <filesystem>
#include <string>

#include "planner/reports/plan_view.hpp"

namespace landwidth {

// A table for a terminal, at most 100 columns wide, then warnings, cautions and attribution.
std::string plan_text(const PlanView& view);

// "landwidth-plan/1", the contract of the design; always yards, whatever view.units.
std::string plan_json(const PlanView& view);

// One self-contained page: no network, prints well.
std::string plan_html(const PlanView& view);

// RFC 7946 feature collection in WGS 84; each feature has a "layer" property: lies, aim_lines,
// landing_ellipses, landing_widths.
std::string plan_geojson(const PlanView& view);

// The same layers as tables of a GeoPackage with their styles, written to `path` (which must not exist).
// Throws OutputError.
void write_plan_geopackage(const PlanView& view, const std::filesystem::path& path);

}  // namespace landwidth
