// A multipolygon relation whose members are all there, into areas, by libosmium's assembler.
//
// The assembler goes by where the lines run, not by the roles of the members. What it reports about the rings
// comes back as findings, one of a code.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "courses/finding.hpp"
#include "courses/reading/osm_elements.hpp"
#include "courses/tags/map_feature.hpp"

namespace landwidth {

struct AssembledArea {
    // Absent when the rings do not close or cross. A ring starts where the first of its ways starts and runs
    // as that runs, so that one way and a relation of one way are the same to the last digit.
    std::optional<std::vector<LonLatPolygon>> polygons;
    std::vector<Finding> findings;  // what its rings are like
};

// `ways` are the relation's member ways, each with all its points; `paths` those points; `feature` is what
// the area is for, whose findings they are.
AssembledArea assemble_area(const OsmRelation& relation, const std::vector<const OsmWay*>& ways,
                            const std::vector<LonLatPath>& paths, const MapFeature& feature);

}  // namespace landwidth
