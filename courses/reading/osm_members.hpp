// The member ways of a relation as far as the file has them.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "courses/reading/osm_areas.hpp"
#include "courses/reading/osm_elements.hpp"
#include "courses/reading/osm_points.hpp"
#include "courses/reading/rings.hpp"

namespace landwidth {

struct MemberWays {
    std::vector<const OsmWay*> ways;  // those in the file
    std::vector<WayPoints> points;    // of them
    std::vector<RingRole> roles;      // of them
    std::vector<std::string> absent;  // "way/12"
    std::size_t with_points_missing = 0;

    std::size_t count() const { return ways.size() + absent.size(); }
    bool complete() const { return absent.empty() && with_points_missing == 0; }
    // Absent when no point of any member is in the file.
    std::optional<LonLat> place() const;
    // "2 of its 5 members are in the file, 1 of them with points missing".
    std::string loss() const;
    std::vector<OutlinePart> outline() const;
    // Only when complete.
    AssembledArea assembled(const OsmRelation& relation, const MapFeature& feature) const;
};

// The records must outlive the members.
MemberWays members_of(const OsmRelation& relation, const OsmElements& elements);

// "1 of its 5 points is", "2 of its 5 points are".
std::string share_of(std::size_t part, std::size_t whole, const std::string& what);

}  // namespace landwidth
