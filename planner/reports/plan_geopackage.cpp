#include "planner/reports/geopackage_writing.hpp"
#include "planner/reports/plan_layers.hpp"
#include "planner/reports/plan_reports.hpp"

namespace landwidth {

void write_plan_geopackage(const PlanView& view, const std::filesystem::path& path) {
    write_geopackage(path, plan_layers(view), {.styles = true});
}

}  // namespace landwidth
