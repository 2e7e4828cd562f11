#include "courses/finding.hpp"

#include <algorithm>

namespace landwidth {

namespace {

// Findings on one hole stay together, in the order the holes first turn up.
std::vector<std::string> holes_in_order(const std::vector<Finding>& findings) {
    std::vector<std::string> holes;
    for (const Finding& finding : findings) {
        if (std::find(holes.begin(), holes.end(), finding.hole) == holes.end()) holes.push_back(finding.hole);
    }
    return holes;
}

}  // namespace

std::string_view severity_name(Severity severity) {
    switch (severity) {
        case Severity::error:
            return "error";
        case Severity::warning:
            return "warning";
        case Severity::note:
            return "note";
    }
    return "note";
}

void sort_findings(std::vector<Finding>& findings) {
    const std::vector<std::string> holes = holes_in_order(findings);
    const auto place_of = [&holes](const Finding& finding) {
        return std::find(holes.begin(), holes.end(), finding.hole) - holes.begin();
    };
    std::stable_sort(findings.begin(), findings.end(), [&](const Finding& a, const Finding& b) {
        if (a.severity != b.severity) return a.severity < b.severity;
        return place_of(a) < place_of(b);
    });
}

}  // namespace landwidth
