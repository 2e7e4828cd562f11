#include "planner/commands/plannable_course.hpp"

#include <fmt/format.h>

#include "geometry/error.hpp"

namespace landwidth {

namespace {

// "way/7, hole 3", "way/7", "hole 3" or, of the whole course, "the map".
std::string subject_of(const Finding& finding) {
    const std::string hole = finding.hole.empty() ? "" : fmt::format("hole {}", finding.hole);
    if (finding.feature.empty()) return hole.empty() ? "the map" : hole;
    return hole.empty() ? finding.feature : fmt::format("{}, {}", finding.feature, hole);
}

}  // namespace

void refuse_unplannable(const Course& course) {
    for (const Finding& finding : course.findings) {
        if (finding.severity != Severity::error) continue;
        throw InputError(
            fmt::format("{}, {}", course.source, subject_of(finding)),
            fmt::format("{}; {}, or leave the hole out with --holes", finding.message, finding.advice));
    }
    if (course.holes.empty())
        throw InputError(course.source, "no hole can be planned; landwidth survey says why");
}

std::vector<std::string> map_warnings(const Course& course) {
    std::vector<std::string> warnings;
    for (const Finding& finding : course.findings)
        if (finding.severity == Severity::warning)
            warnings.push_back(
                fmt::format("{}: {}; {}", subject_of(finding), finding.message, finding.advice));
    return warnings;
}

}  // namespace landwidth
