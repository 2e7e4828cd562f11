// A multipolygon relation whose members are all there, into areas, by libosmium's assembler.
//
// The assembler goes by where the lines run, not by the roles of the members. What it reports about the rings
// comes back with places, one report of a kind.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "courses/finding.hpp"
#include "courses/reading/osm_elements.hpp"

namespace landwidth {

struct RingReport {
    Severity severity;
    const char* code;     // "relation-crossing", "relation-role", "relation-doubled"
    std::string message;  // goes on after the words for the relation: "has rings that cross"
    std::string advice;
    LonLat place;
};

struct AssembledArea {
    // Absent when the rings do not close or cross. A ring starts where the first of its ways starts and runs
    // as that runs, so that one way and a relation of one way are the same to the last digit.
    std::optional<std::vector<LonLatPolygon>> polygons;
    std::vector<RingReport> reports;
};

// `ways` are the relation's member ways, each with all its points; `paths` those points.
AssembledArea assemble_area(const OsmRelation& relation, const std::vector<const OsmWay*>& ways,
                            const std::vector<LonLatPath>& paths);

}  // namespace landwidth
