#include "courses/findings/finding_kinds.hpp"

#include <fmt/format.h>

#include <iterator>

namespace landwidth {

std::vector<FindingKind> finding_kinds() {
    std::vector<FindingKind> kinds(std::begin(reading_kinds), std::end(reading_kinds));
    kinds.insert(kinds.end(), std::begin(assembly_kinds), std::end(assembly_kinds));
    kinds.insert(kinds.end(), std::begin(ground_kinds), std::end(ground_kinds));
    return kinds;
}

Finding filled_in(const FindingKind& kind, Severity severity, std::string feature, std::string hole,
                  std::optional<LonLat> place, fmt::format_args arguments) {
    return {.severity = severity,
            .code = std::string(kind.code()),
            .feature = std::move(feature),
            .hole = std::move(hole),
            .place = place,
            .message = fmt::vformat(kind.words, arguments),
            .advice = fmt::vformat(kind.advice, arguments)};
}

}  // namespace landwidth
