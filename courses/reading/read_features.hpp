// What reading a source gives, in any form of file, before the whole map is looked at.
#pragma once

#include <cstddef>
#include <vector>

#include "courses/finding.hpp"
#include "courses/tags/map_feature.hpp"

namespace landwidth {

struct ReadFeatures {
    std::vector<MapFeature> features;
    std::vector<MapFeature> bare;  // multipolygons without tags
    std::vector<Finding> findings;
    // What the map that this one is a copy of had to tell, in the order of the copy (copied_findings.hpp).
    std::vector<Finding> told_before;
    // Features whose tags say nothing to a golf hole: left out.
    std::size_t without_role = 0;
};

}  // namespace landwidth
