// Findings on features of a map.
#pragma once

#include <optional>

#include "courses/findings/finding_kinds.hpp"
#include "courses/tags/map_feature.hpp"
#include "courses/tags/roles.hpp"
#include "courses/tags/vocabulary.hpp"

namespace landwidth {

// How severe a kind of findings is on a feature of this role.
inline Severity severity_on(Weight weight, Role role) {
    if (weight == Weight::as_lost) return severity_of_loss(role);
    return *fixed_severity(weight);
}

// `args`: what the words say beside what the feature is tagged as.
template <KindName name, typename... Args>
Finding finding_on(const MapFeature& feature, std::optional<LonLat> place, const Args&... args) {
    static_assert(kind_of<name>.bears == Bears::on_feature);
    return filled_in<name>(severity_on(kind_of<name>.weight, feature.role()), feature.label(), "", place,
                           tag_words(feature.tags), args...);
}

}  // namespace landwidth
