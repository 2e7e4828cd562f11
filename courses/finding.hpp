// What a reading of a map has to tell: something inferred, dropped, repaired or missing.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "geometry/plane_frame.hpp"

namespace landwidth {

// Worst first.
enum class Severity {
    error,    // a hole cannot be planned
    warning,  // planned, but on something repaired, dropped or doubtful
    note,     // inferred in the ordinary way
};

// "error", "warning", "note".
std::string_view severity_name(Severity severity);

struct Finding {
    Severity severity = Severity::note;
    std::string code;  // stable, kebab-case: "par-inferred", "ring-repaired", "green-missing"
    std::string
        feature;  // id of the feature as in its source: "way/123", "layer fairways, feature 7"; may be empty
    std::string hole;  // ref of the hole it bears on; empty for the whole course
    std::optional<LonLat> place;
    std::string message;  // what is the case, one sentence without a full stop
    std::string advice;   // what to do about it, one sentence without a full stop

    bool operator==(const Finding&) const = default;
};

// Worst first, then by hole as given, then as found (stable).
void sort_findings(std::vector<Finding>& findings);

}  // namespace landwidth
