#include "planner/reports/weigh_reports.hpp"

namespace landwidth {

std::string weigh_html(const WeighView& view) {
    return weigh_text(view);
}

}  // namespace landwidth
