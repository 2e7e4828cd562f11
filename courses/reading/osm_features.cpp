#include "courses/reading/osm_features.hpp"

#include <algorithm>
#include <iterator>

#include "courses/reading/cut_areas.hpp"
#include "courses/reading/ogr_shapes.hpp"
#include "courses/reading/osm_members.hpp"
#include "courses/tags/feature_findings.hpp"
#include "courses/tags/vocabulary.hpp"
#include "courses/text.hpp"

namespace landwidth {

namespace {

std::string tag_of(const Tags& tags, const char* key) {
    const auto found = tags.find(key);
    return found == tags.end() ? std::string() : folded(found->second);
}

class FeatureMaking {
  public:
    FeatureMaking(const OsmElements& elements, const std::string& file) : elements_(elements), file_(file) {}

    ReadFeatures make() {
        for (const OsmNode& node : elements_.nodes)
            make(node);
        for (const OsmWay& way : elements_.ways)
            make(way);
        for (const OsmRelation& relation : elements_.relations)
            make(relation);
        make_what_is_cut();
        std::stable_sort(made_.begin(), made_.end(), [](const Made& a, const Made& b) {
            return std::pair(a.kind, a.id) < std::pair(b.kind, b.id);
        });
        result_.features.reserve(made_.size());
        for (Made& made : made_)
            result_.features.push_back(std::move(made.feature));
        return std::move(result_);
    }

  private:
    struct Made {
        int kind;  // 0 a node, 1 a way, 2 a relation
        std::int64_t id;
        MapFeature feature;
    };
    // An area of which the file holds a part only; built when all golf that is there is known.
    struct Cut {
        int kind;
        std::int64_t id;
        MapFeature feature;
        std::vector<OutlinePart> stretches;
        std::string loss;  // "2 of its 5 members are in the file"; empty: told already
    };

    MapFeature feature_of(const char* kind, const char* layer, const OsmElement& element,
                          FeatureTags tags) const {
        return {std::string(kind) + "/" + std::to_string(element.id), layer, file_, std::move(tags),
                std::vector<LonLatPath>{}};
    }

    void leave_out(const FeatureTags& tags) { result_.without_role += tags.size() > 0 ? 1 : 0; }

    template <KindName kind, typename... Args>
    void report(const MapFeature& feature, std::optional<LonLat> place, const Args&... args) {
        result_.findings.push_back(finding_on<kind>(feature, place, args...));
    }

    void add(int kind, std::int64_t id, const MapFeature& feature, ShapeParts parts) {
        for (MapShape& shape : shapes_in_form(std::move(parts), form_of(feature.role(), feature.tags),
                                              feature, result_.findings)) {
            MapFeature& added = made_.emplace_back(Made{kind, id, feature}).feature;
            added.shape = std::move(shape);
        }
    }

    void make(const OsmNode& node) {
        if (node.tags.empty()) return;
        FeatureTags tags = tags_of(node);
        if (tags.role() == Role::none) return leave_out(tags);
        ShapeParts parts;
        parts.points.push_back(node.place);
        add(0, node.id, feature_of("node", "points", node, std::move(tags)), std::move(parts));
    }

    void make(const OsmWay& way) {
        if (way.tags.empty()) return;
        FeatureTags tags = tags_of(way);
        const Role role = tags.role();
        if (role == Role::none) return leave_out(tags);
        MapFeature feature = feature_of("way", "lines", way, std::move(tags));
        WayPoints points = points_of(way, elements_);
        const bool told_by_loss = !way.nodes.empty() && (role == Role::hole || role == Role::boundary);
        if (points.count == 0 && way.middle && !told_by_loss)
            return add_middle(1, way.id, feature, *way.middle);
        if (role == Role::hole) return make_hole_line(way, feature, std::move(points));
        if (points.missing > 0) return make_cut(way, role, feature, std::move(points));
        if (points.count == 0) {
            report<"shape-missing">(feature, std::nullopt);
            return;
        }
        ShapeParts parts;
        parts.paths = std::move(points.runs);
        add(1, way.id, feature, std::move(parts));
    }

    // An export of middles only.
    void add_middle(int kind, std::int64_t id, const MapFeature& feature, LonLat middle) {
        ShapeParts parts;
        parts.points.push_back(middle);
        add(kind, id, feature, std::move(parts));
    }

    // Kept whatever is left of it, so that its hole is reported as one that cannot be planned.
    void make_hole_line(const OsmWay& way, MapFeature& feature, WayPoints points) {
        if (points.missing == 0 && points.count >= 2) {
            ShapeParts parts;
            parts.paths = std::move(points.runs);
            return add(1, way.id, feature, std::move(parts));
        }
        feature.points_missing = points.missing;
        feature.shape = std::vector<LonLatPath>{points.all()};
        made_.push_back({1, way.id, std::move(feature)});
    }

    void report_thin(const MapFeature& feature, const WayPoints& points) {
        report<"ring-thin/way">(feature, points.any(),
                                share_of(points.missing, points.missing + points.count, "points"));
    }

    void make_cut(const OsmWay& way, Role role, MapFeature& feature, WayPoints points) {
        const std::string lost = share_of(points.missing, way.nodes.size(), "points");
        if (role == Role::boundary)
            return report<"boundary-cut">(feature, points.any(), lost + " not in the file");
        if (points.count < 2) return report_thin(feature, points);
        report<"points-missing">(feature, points.any(), lost);
        const Form form = form_of(role, feature.tags);
        if (is_ring(way) && (form == Form::area || form == Form::any)) {
            Cut& cut = cuts_.emplace_back(Cut{1, way.id, std::move(feature), {}, {}});
            for (LonLatPath& run : points.runs_of_ring())
                cut.stretches.push_back({std::move(run), RingRole::unsaid});
            return;
        }
        ShapeParts parts;
        parts.paths = std::move(points.runs);
        std::erase_if(parts.paths, [](const LonLatPath& run) { return run.size() < 2; });
        add(1, way.id, feature, std::move(parts));
    }

    void make(const OsmRelation& relation) {
        const FeatureTags tags = tags_of(relation);
        const std::string type = tag_of(tags, "type");
        const bool area = type == "multipolygon" || type == "boundary";
        const bool line = type == "multilinestring" || type == "route";
        const Role role = tags.role();
        const bool only_type = area && tags.size() == 1;
        if (role == Role::none && !only_type) return leave_out(tags);
        MapFeature feature = feature_of("relation", area ? "multipolygons" : "relations", relation, tags);
        MemberWays members = members_of(relation, elements_);
        if (!members.place() && relation.middle && role != Role::none && role != Role::boundary)
            return add_middle(2, relation.id, feature, *relation.middle);
        if (role == Role::none) return make_bare(relation, feature, std::move(members));
        if (!area && !line) {
            if (is_golf(role)) report<"relation-unused">(feature, members.place());
            return;
        }
        if (line) return make_line(relation, role, feature, std::move(members));
        make_area(relation, role, feature, std::move(members));
    }

    void make_line(const OsmRelation& relation, Role role, MapFeature& feature, MemberWays members) {
        const bool complete = members.complete();
        if (!complete && role == Role::hole) {
            feature.points_missing = 1;
        } else if (!complete) {
            report<"relation-cut/line">(feature, members.place(), members.loss());
        }
        ShapeParts parts;
        for (OutlinePart& stretch : joined(members.outline()))
            parts.paths.push_back(std::move(stretch.path));
        if (role == Role::hole && !complete) {
            feature.shape = std::move(parts.paths);
            made_.push_back({2, relation.id, std::move(feature)});
            return;
        }
        add(2, relation.id, feature, std::move(parts));
    }

    void make_area(const OsmRelation& relation, Role role, MapFeature& feature, MemberWays members) {
        const std::optional<LonLat> place = members.place();
        if (!members.complete() && role == Role::boundary)
            return report<"boundary-cut">(feature, place, members.loss());
        if (!place) {
            if (members.absent.empty()) return report<"relation-incomplete/empty">(feature, std::nullopt);
            return report<"relation-incomplete/members">(feature, std::nullopt,
                                                         enumeration(members.absent, 5));
        }
        if (!members.complete()) {
            Cut& cut = cuts_.emplace_back(Cut{2, relation.id, std::move(feature), {}, members.loss()});
            cut.stretches = members.outline();
            return;
        }
        AssembledArea area = members.assembled(relation, feature);
        std::ranges::move(area.findings, std::back_inserter(result_.findings));
        ShapeParts parts;
        parts.polygons =
            area.polygons ? std::move(*area.polygons) : rings_as_drawn(feature, std::move(members));
        add(2, relation.id, feature, std::move(parts));
    }

    // What the assembler refuses: its closed rings, crossing or not. What does not close is reported.
    std::vector<LonLatPolygon> rings_as_drawn(const MapFeature& feature, MemberWays members) {
        std::vector<OutlinePart> chains = joined(members.outline());
        const auto open = std::find_if(chains.begin(), chains.end(),
                                       [](const OutlinePart& chain) { return !chain.closed(); });
        if (open != chains.end()) {
            const bool all = std::none_of(chains.begin(), chains.end(),
                                          [](const OutlinePart& chain) { return chain.closed(); });
            const LonLat end = open->path.back();
            all ? report<"relation-incomplete/rings-open">(feature, end)
                : report<"relation-incomplete/ring-open">(feature, end);
        }
        std::erase_if(chains, [](const OutlinePart& chain) { return !chain.closed(); });
        return areas_of(chains);
    }

    // Lends its inner rings to the way that is its outer ring; of that way are the tags.
    void make_bare(const OsmRelation& relation, MapFeature& feature, MemberWays members) {
        const OsmWay* tagged = nullptr;
        for (const OsmWay* way : members.ways) {
            if (tagged == nullptr && role_of(tags_of(*way)) != Role::none) tagged = way;
        }
        if (tagged == nullptr) return;
        if (!members.complete()) {
            feature.tags = tags_of(*tagged);
            return report<"relation-cut/rings-of-way">(feature, members.place(), tagged->id, members.loss());
        }
        std::optional<std::vector<LonLatPolygon>> polygons = members.assembled(relation, feature).polygons;
        if (!polygons) return;
        std::erase_if(*polygons, [](const LonLatPolygon& polygon) { return polygon.inners.empty(); });
        if (polygons->empty()) return;
        feature.shape = std::move(*polygons);
        result_.bare.push_back(std::move(feature));
    }

    void make_what_is_cut() {
        if (cuts_.empty()) return;
        std::vector<LonLat> golf;
        for (const Made& made : made_)
            add_golf_places(made.feature, golf);
        const std::optional<MapExtent> data = reach_of_data();
        for (Cut& cut : cuts_) {
            const std::optional<LonLat> place = any_place_of(cut.stretches);
            const Role role = cut.feature.role();
            // Land cover of an export that does not say its box reaches to the edge of the data.
            const bool to_data = !elements_.box && cut.kind == 2 && !is_golf(role);
            CutArea area = cut_area(std::move(cut.stretches), to_data ? data : elements_.box, golf);
            report_cut(cut, place, area, to_data);
            ShapeParts parts;
            parts.polygons = std::move(area.polygons);
            add(cut.kind, cut.id, cut.feature, std::move(parts));
        }
    }

    void report_cut(const Cut& cut, std::optional<LonLat> place, const CutArea& area, bool to_data) {
        const bool nothing = area.polygons.empty();
        if (cut.loss.empty()) {
            if (nothing) report<"ring-thin/cut">(cut.feature, place);
            return;
        }
        if (nothing) return report<"relation-cut/no-ground">(cut.feature, place, cut.loss);
        if (!area.along_box) return report<"relation-cut/shortest-way">(cut.feature, place, cut.loss);
        if (to_data) return report<"relation-cut/edge-of-data">(cut.feature, place, cut.loss);
        report<"relation-cut/box">(cut.feature, place, cut.loss);
    }

    // The box around all that was made and what is to be.
    std::optional<MapExtent> reach_of_data() const {
        std::optional<MapExtent> extent;
        for (const Made& made : made_)
            reach_over(made.feature.shape, extent);
        for (const Cut& cut : cuts_) {
            for (const OutlinePart& part : cut.stretches)
                reach_over(part.path, extent);
        }
        return extent;
    }

    static std::optional<LonLat> any_place_of(const std::vector<OutlinePart>& stretches) {
        for (const OutlinePart& stretch : stretches) {
            if (!stretch.path.empty()) return stretch.path.front();
        }
        return std::nullopt;
    }

    const OsmElements& elements_;
    const std::string& file_;
    ReadFeatures result_;
    std::vector<Made> made_;
    std::vector<Cut> cuts_;
};

}  // namespace

ReadFeatures osm_features(const OsmElements& elements, const std::string& file) {
    return FeatureMaking(elements, file).make();
}

}  // namespace landwidth
