#include "courses/reading/osm_members.hpp"

#include "courses/text.hpp"

namespace landwidth {

namespace {

RingRole ring_role(const std::string& role) {
    const std::string word = folded(role);
    return word == "outer" ? RingRole::outer : word == "inner" ? RingRole::inner : RingRole::unsaid;
}

}  // namespace

std::optional<LonLat> MemberWays::place() const {
    for (const WayPoints& way : points) {
        if (const std::optional<LonLat> place = way.any()) return place;
    }
    return std::nullopt;
}

std::string MemberWays::loss() const {
    std::string text = share_of(ways.size(), count(), "members") + " in the file";
    if (with_points_missing > 0)
        text += ", " + std::to_string(with_points_missing) + " of them with points missing";
    return text;
}

std::vector<OutlinePart> MemberWays::outline() const {
    std::vector<OutlinePart> stretches;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const std::vector<LonLatPath> runs = is_ring(*ways[i]) ? points[i].runs_of_ring() : points[i].runs;
        for (const LonLatPath& run : runs)
            stretches.push_back({run, roles[i]});
    }
    return stretches;
}

AssembledArea MemberWays::assembled(const OsmRelation& relation, const MapFeature& feature) const {
    std::vector<LonLatPath> paths;
    for (const WayPoints& way : points)
        paths.push_back(way.all());
    return assemble_area(relation, ways, paths, feature);
}

MemberWays members_of(const OsmRelation& relation, const OsmElements& elements) {
    MemberWays members;
    for (const OsmMember& member : relation.members) {
        if (member.kind != 'w') continue;
        const OsmWay* way = elements.way(member.id);
        if (way == nullptr) {
            members.absent.push_back("way/" + std::to_string(member.id));
            continue;
        }
        members.ways.push_back(way);
        members.roles.push_back(ring_role(member.role));
        members.points.push_back(points_of(*way, elements));
        if (members.points.back().missing > 0) ++members.with_points_missing;
    }
    return members;
}

std::string share_of(std::size_t part, std::size_t whole, const std::string& what) {
    return std::to_string(part) + " of its " + std::to_string(whole) + " " + what +
           (part == 1 ? " is" : " are");
}

}  // namespace landwidth
