#include "courses/reading/osm_areas.hpp"

#include <algorithm>
#include <map>
#include <osmium/area/assembler.hpp>
#include <osmium/builder/osm_object_builder.hpp>
#include <tuple>

#include "courses/tags/feature_findings.hpp"

namespace landwidth {

namespace {

osmium::Location location_of(LonLat place) {
    return osmium::Location{place.lon_deg, place.lat_deg};
}

LonLat place_of(osmium::Location location) {
    return {location.lon_without_check(), location.lat_without_check()};
}

// The first report of every code.
class Reports : public osmium::area::ProblemReporter {
  public:
    explicit Reports(const MapFeature& feature) : feature_(feature) {}

    std::vector<Finding> take() { return std::move(findings_); }

    void report_intersection(osmium::object_id_type way1, osmium::Location, osmium::Location,
                             osmium::object_id_type way2, osmium::Location, osmium::Location,
                             osmium::Location place) override {
        add<"relation-crossing">(place, name(way1) + (way1 == way2 ? " itself" : " and " + name(way2)));
    }
    void report_duplicate_segment(const osmium::NodeRef& a, const osmium::NodeRef&) override {
        add<"relation-doubled/stretch">(a.location());
    }
    void report_overlapping_segment(const osmium::NodeRef& a, const osmium::NodeRef& b) override {
        report_duplicate_segment(a, b);
    }
    void report_duplicate_way(const osmium::Way& way) override {
        if (way.nodes().empty()) return;
        add<"relation-doubled/member">(way.nodes().front().location(), name(way.id()));
    }
    void report_role_should_be_outer(osmium::object_id_type way, osmium::Location start,
                                     osmium::Location) override {
        add<"relation-role">(start, name(way), "outer");
    }
    void report_role_should_be_inner(osmium::object_id_type way, osmium::Location start,
                                     osmium::Location) override {
        add<"relation-role">(start, name(way), "inner");
    }

  private:
    static std::string name(osmium::object_id_type way) { return "way/" + std::to_string(way); }

    template <KindName kind, typename... Args>
    void add(osmium::Location place, const Args&... args) {
        const bool known = std::ranges::any_of(
            findings_, [](const Finding& finding) { return finding.code == kind_of<kind>.code(); });
        if (!known) findings_.push_back(finding_on<kind>(feature_, place_of(place), args...));
    }

    const MapFeature& feature_;
    std::vector<Finding> findings_;
};

struct ByPlace {
    bool operator()(const LonLat& a, const LonLat& b) const {
        return std::tie(a.lon_deg, a.lat_deg) < std::tie(b.lon_deg, b.lat_deg);
    }
};

// Where a path's first segment is in the rings: as drawn.
class FirstSegments {
  public:
    explicit FirstSegments(const std::vector<LonLatPath>& paths) {
        for (std::size_t i = 0; i < paths.size(); ++i) {
            if (paths[i].size() > 1) segments_.push_back({i, paths[i][0], paths[i][1]});
        }
    }

    // Turns the ring so that it begins with the earliest path in it. Returns that path's number.
    std::size_t turn(LonLatPath& ring) const {
        ring.pop_back();
        std::map<LonLat, std::size_t, ByPlace> at;
        for (std::size_t i = 0; i < ring.size(); ++i)
            at.emplace(ring[i], i);
        const std::size_t count = ring.size();
        std::size_t first = segments_.size();
        for (const Segment& segment : segments_) {
            const auto found = at.find(segment.from);
            if (found == at.end()) continue;
            const std::size_t here = found->second;
            if (ring[(here + 1) % count] == segment.to) {
                std::rotate(ring.begin(), ring.begin() + static_cast<std::ptrdiff_t>(here), ring.end());
            } else if (ring[(here + count - 1) % count] == segment.to) {
                std::rotate(ring.begin(), ring.begin() + static_cast<std::ptrdiff_t>((here + 1) % count),
                            ring.end());
                std::reverse(ring.begin(), ring.end());
            } else {
                continue;
            }
            first = segment.path;
            break;
        }
        ring.push_back(ring.front());
        return first;
    }

  private:
    struct Segment {
        std::size_t path;
        LonLat from;
        LonLat to;
    };
    std::vector<Segment> segments_;
};

void add_way(osmium::memory::Buffer& buffer, osmium::object_id_type id, const LonLatPath& path,
             std::map<LonLat, osmium::object_id_type, ByPlace>& nodes) {
    {
        osmium::builder::WayBuilder builder{buffer};
        builder.set_id(id);
        osmium::builder::WayNodeListBuilder list{buffer, &builder};
        for (const LonLat& place : path) {
            const auto number = static_cast<osmium::object_id_type>(nodes.size()) + 1;
            list.add_node_ref(nodes.emplace(place, number).first->second, location_of(place));
        }
    }
    buffer.commit();
}

void add_relation(osmium::memory::Buffer& buffer, const OsmRelation& relation,
                  const std::vector<const OsmWay*>& ways) {
    {
        osmium::builder::RelationBuilder builder{buffer};
        builder.set_id(relation.id);
        osmium::builder::RelationMemberListBuilder list{buffer, &builder};
        for (const OsmWay* way : ways) {
            const auto member =
                std::find_if(relation.members.begin(), relation.members.end(),
                             [&](const OsmMember& m) { return m.kind == 'w' && m.id == way->id; });
            const std::string role = member == relation.members.end() ? "" : member->role.substr(0, 200);
            list.add_member(osmium::item_type::way, way->id, role.c_str(), role.size());
        }
    }
    buffer.commit();
}

LonLatPath path_of(const osmium::NodeRefList& ring) {
    LonLatPath path;
    for (const osmium::NodeRef& node : ring)
        path.push_back(place_of(node.location()));
    return path;
}

std::vector<LonLatPolygon> polygons_of(const osmium::Area& area, const std::vector<LonLatPath>& paths) {
    const FirstSegments segments(paths);
    std::vector<std::pair<std::size_t, LonLatPolygon>> numbered;
    for (const osmium::OuterRing& outer : area.outer_rings()) {
        LonLatPolygon polygon;
        polygon.outer = path_of(outer);
        const std::size_t number = segments.turn(polygon.outer);
        std::vector<std::pair<std::size_t, LonLatPath>> inners;
        for (const osmium::InnerRing& inner : area.inner_rings(outer)) {
            LonLatPath path = path_of(inner);
            const std::size_t place = segments.turn(path);
            inners.emplace_back(place, std::move(path));
        }
        std::stable_sort(inners.begin(), inners.end(),
                         [](const auto& a, const auto& b) { return a.first < b.first; });
        for (auto& [place, path] : inners)
            polygon.inners.push_back(std::move(path));
        numbered.emplace_back(number, std::move(polygon));
    }
    std::stable_sort(numbered.begin(), numbered.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<LonLatPolygon> polygons;
    for (auto& [number, polygon] : numbered)
        polygons.push_back(std::move(polygon));
    return polygons;
}

}  // namespace

AssembledArea assemble_area(const OsmRelation& relation, const std::vector<const OsmWay*>& ways,
                            const std::vector<LonLatPath>& paths, const MapFeature& feature) {
    using osmium::memory::Buffer;
    Buffer input{1U << 16U, Buffer::auto_grow::yes};
    Buffer output{1U << 16U, Buffer::auto_grow::yes};
    std::map<LonLat, osmium::object_id_type, ByPlace> nodes;
    for (std::size_t i = 0; i < ways.size(); ++i)
        add_way(input, ways[i]->id, paths[i], nodes);
    add_relation(input, relation, ways);

    std::vector<const osmium::Way*> members;
    for (const osmium::Way& way : input.select<osmium::Way>())
        members.push_back(&way);
    Reports reports(feature);
    osmium::area::AssemblerConfig config;
    config.problem_reporter = &reports;
    config.check_roles = true;
    config.create_empty_areas = false;
    osmium::area::Assembler assembler{config};
    AssembledArea result;
    if (assembler(*input.select<osmium::Relation>().begin(), members, output)) {
        const auto areas = output.select<osmium::Area>();
        if (areas.begin() != areas.end()) result.polygons = polygons_of(*areas.begin(), paths);
    }
    result.findings = reports.take();
    return result;
}

}  // namespace landwidth
