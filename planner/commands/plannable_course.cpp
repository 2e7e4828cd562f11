#include "planner/commands/plannable_course.hpp"

#include <fmt/format.h>

#include "geometry/error.hpp"

namespace landwidth {

void refuse_unplannable(const Course& course) {
    for (const Finding& finding : course.findings) {
        if (finding.severity != Severity::error) continue;
        const std::string hole = finding.hole.empty() ? "" : fmt::format(", hole {}", finding.hole);
        throw InputError(
            fmt::format("{}, {}{}", course.source, finding.feature, hole),
            fmt::format("{}; {}, or leave the hole out with --holes", finding.message, finding.advice));
    }
    if (course.holes.empty())
        throw InputError(course.source, "no hole can be planned; landwidth survey says why");
}

std::vector<std::string> map_warnings(const Course& course) {
    std::vector<std::string> warnings;
    for (const Finding& finding : course.findings)
        if (finding.severity == Severity::warning)
            warnings.push_back(fmt::format("{}{}: {}; {}", finding.feature,
                                           finding.hole.empty() ? "" : fmt::format(", hole {}", finding.hole),
                                           finding.message, finding.advice));
    return warnings;
}

}  // namespace landwidth
