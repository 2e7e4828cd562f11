#include "courses/assembly/hole_ground.hpp"

#include "courses/assembly/course_ground.hpp"
#include "courses/assembly/reach_of_play.hpp"
#include "courses/tags/vocabulary.hpp"
#include "courses/text.hpp"

namespace landwidth {

namespace {

// Nominal widths where a road or path has no width tag: two lanes, one buggy (assumptions; cautions only).
constexpr double road_width_m = 6.0;
constexpr double path_width_m = 2.5;
constexpr double line_width_m = 0.5;

class GroundOfHole {
  public:
    GroundOfHole(const MapFeature& green, std::size_t green_part, const PlaneDrawing& drawing,
                 const LineOfPlay& line, const Box& extent, const DegreeBox& here,
                 const MapAssumptions& assumptions, FeatureNotes& notes)
        : green_(green),
          green_part_(green_part),
          drawing_(drawing),
          extent_(extent),
          here_(here),
          assumptions_(assumptions),
          notes_(notes),
          in_play_(Region::around(line.vertices(), reach_of_play_m)) {}

    HoleGround find(const std::vector<const IndexedFeature*>& near) {
        for (const IndexedFeature* indexed : near)
            if (is_penalty_role(indexed->feature->role())) marked_.push_back(indexed->feature);
        for (const IndexedFeature* indexed : near)
            take(*indexed->feature);
        return std::move(ground_);
    }

  private:
    static bool is_penalty_role(Role role) {
        return role == Role::yellow_penalty_area || role == Role::red_penalty_area;
    }

    void take(const MapFeature& feature) {
        switch (feature.role()) {
            case Role::tee:
                return take_tee(feature);
            case Role::green:
                return take_green(feature);
            case Role::sand:
                return take_sand(feature);
            case Role::yellow_penalty_area:
            case Role::red_penalty_area:
            case Role::water:
            case Role::watercourse:
                return take_water(feature);
            case Role::coastline:
                ground_.coastlines.push_back(&feature);
                return;
            case Role::beach:
                if (is_in_play(feature)) note<"in-play/beach">(feature);
                return;
            case Role::barrier:
                if (is_in_play(feature)) note<"in-play/barrier">(feature);
                return;
            case Role::trees:
                return add_woods(feature);
            case Role::tree:
                return take_tree(feature);
            case Role::tree_row:
                return add_tall(feature, around(feature, assumptions_.tree_radius_m));
            case Role::heath:
                return note<"heath-as-rough">(feature);
            case Role::out_of_bounds:
                ground_.out_of_bounds_marks.push_back(&feature);
                return;
            case Role::building:
                return surround(Surrounding::Kind::building, feature, 0.0);
            case Role::road:
                return surround(Surrounding::Kind::road, feature, road_width_m);
            case Role::path:
                return surround(Surrounding::Kind::path, feature, path_width_m);
            default:
                return add_areas(feature);
        }
    }

    void add(Lie lie, AreaNear area, const MapFeature& feature, Evidence evidence, double tall_m = 0.0) {
        if (area.region.empty()) return;
        ground_.drawn.push_back({lie, std::move(area.region), area.whole_m2, evidence, &feature, tall_m});
    }

    void add(Lie lie, Region region, const MapFeature& feature, Evidence evidence) {
        const double area_m2 = region.area();
        add(lie, AreaNear{std::move(region), area_m2}, feature, evidence);
    }

    // As the table of roles says, if that gives it a lie. Each area by itself: what an export merged into one
    // feature was drawn as many.
    void add_areas(const MapFeature& feature) {
        const RoleMeaning& meaning = meaning_of(feature.role());
        const auto* polygons = std::get_if<std::vector<LonLatPolygon>>(&feature.shape);
        if (polygons == nullptr || !meaning.lie) return;
        for (const LonLatPolygon& polygon : *polygons)
            add(*meaning.lie, drawing_.area_near(feature, polygon, here_), feature, meaning.evidence);
    }

    void add_woods(const MapFeature& feature) {
        const auto* polygons = std::get_if<std::vector<LonLatPolygon>>(&feature.shape);
        if (polygons == nullptr) return;
        for (const LonLatPolygon& polygon : *polygons)
            add_tall(feature, drawing_.area_near(feature, polygon, here_));
    }

    // Trees of every kind: a lie, and something that stands on it.
    void add_tall(const MapFeature& feature, AreaNear area) {
        if (area.region.empty()) return;
        const double height_m = height_of(feature);
        ground_.tall.push_back({area.region, height_m, true});
        add(Lie::trees, std::move(area), feature, meaning_of(feature.role()).evidence, height_m);
    }

    void add_tall(const MapFeature& feature, Region region) {
        const double area_m2 = region.area();
        add_tall(feature, AreaNear{std::move(region), area_m2});
    }

    double height_of(const MapFeature& feature) {
        const TaggedHeight tagged = tagged_height(feature.role(), feature.tags, assumptions_);
        if (tagged.metres) return *tagged.metres;
        const double assumed = assumed_height(feature.role(), feature.tags, assumptions_);
        if (!tagged.unreadable.empty()) note<"height-assumed">(feature, tagged.unreadable, assumed);
        return assumed;
    }

    template <KindName kind, typename... Args>
    void note(const MapFeature& feature, const Args&... args) {
        notes_.add<kind>(feature, place_of(feature.shape), args...);
    }

    void take_tee(const MapFeature& feature) {
        const auto* polygons = std::get_if<std::vector<LonLatPolygon>>(&feature.shape);
        if (polygons != nullptr) return add_areas(feature);
        const bool point = std::holds_alternative<LonLat>(feature.shape);
        note<"tee-not-an-area">(feature, point ? "point" : "line", CourseGround::tee_around_m);
        if (point)
            return add(Lie::teeing_area,
                       ground_of(FeaturePart(feature, 0), drawing_, CourseGround::tee_around_m), feature,
                       Evidence::object);
        add_around(Lie::teeing_area, feature, CourseGround::tee_around_m);
    }

    void take_green(const MapFeature& feature) {
        const auto* polygons = std::get_if<std::vector<LonLatPolygon>>(&feature.shape);
        if (polygons == nullptr) return;
        for (std::size_t part = 0; part < polygons->size(); ++part) {
            const bool own = &feature == &green_ && part == green_part_;
            add(own ? Lie::green : Lie::fairway, drawing_.area(feature, (*polygons)[part]), feature,
                Evidence::golf_area);
        }
    }

    void take_sand(const MapFeature& feature) {
        add_areas(feature);
        note<"sand-as-bunker">(feature);
    }

    // What a careful golfer wants to know of and the plan knows nothing about.
    bool is_in_play(const MapFeature& feature) const {
        const bool area = std::holds_alternative<std::vector<LonLatPolygon>>(feature.shape);
        const Region here = area ? drawing_.area(feature) : around(feature, 0.5 * line_width_m);
        return here.meets(in_play_);
    }

    void take_tree(const MapFeature& feature) {
        const std::string& crown = feature.tag("diameter_crown");
        const std::optional<double> diameter = length_in_metres(crown);
        const double radius = diameter ? 0.5 * *diameter : assumptions_.tree_radius_m;
        if (const auto* point = std::get_if<LonLat>(&feature.shape))
            add_tall(feature, Region::disc(drawing_.frame().to_plane(*point), radius));
    }

    void take_water(const MapFeature& feature) {
        if (is_under_ground(feature.tags)) return note<"water-under-ground">(feature);
        if (is_intermittent(feature.tags)) note<"water-intermittent">(feature);
        if (!is_golf(feature.role()) && !lies_in_marked_area(feature)) note<"water-as-red">(feature);
        if (std::holds_alternative<std::vector<LonLatPolygon>>(feature.shape)) return add_areas(feature);
        if (std::holds_alternative<LonLat>(feature.shape)) return note<"area-missing/water">(feature);
        add_around(*meaning_of(feature.role()).lie, feature, 0.5 * width_of_water(feature));
    }

    // Whether a penalty area drawn for golf holds all of this water.
    bool lies_in_marked_area(const MapFeature& water) const {
        if (marked_.empty()) return false;
        const bool area = std::holds_alternative<std::vector<LonLatPolygon>>(water.shape);
        const Region here = (area ? drawing_.area(water) : around(water, 0.5 * line_width_m))
                                .common_with(Region::box(extent_));
        std::vector<Region> marked;
        for (const MapFeature* feature : marked_)
            marked.push_back(drawing_.area(*feature));
        return !here.empty() && here.without(Region::united(marked).grown(line_width_m)).empty();
    }

    double width_of_water(const MapFeature& feature) {
        const TaggedWidth tagged = tagged_width(feature.tags);
        if (tagged.metres) return *tagged.metres;
        const double assumed = assumed_width(feature.tags, assumptions_);
        tagged.unreadable.empty() ? note<"width-assumed">(feature, assumed)
                                  : note<"width-assumed/unreadable">(feature, tagged.unreadable, assumed);
        return assumed;
    }

    // Only what comes near: a river may run on for miles.
    void add_around(Lie lie, const MapFeature& feature, double half_width_m) {
        add(lie, around(feature, half_width_m), feature, Evidence::object);
    }

    Region around(const MapFeature& feature, double half_width_m) const {
        std::vector<Region> parts;
        for (const std::vector<Point>& path : drawing_.paths(feature)) {
            if (path.size() == 1) parts.push_back(Region::disc(path.front(), half_width_m));
            for (const std::vector<Point>& stretch : stretches_near(path, extent_.grown(half_width_m)))
                parts.push_back(Region::around(stretch, half_width_m));
        }
        return parts.size() == 1 ? parts.front() : Region::united(parts);
    }

    void surround(Surrounding::Kind kind, const MapFeature& feature, double width_m) {
        const bool area = std::holds_alternative<std::vector<LonLatPolygon>>(feature.shape);
        if (kind == Surrounding::Kind::building && !area) return;
        Region region = area ? drawing_.area(feature)
                             : around(feature, 0.5 * tagged_width(feature.tags).metres.value_or(width_m));
        if (region.empty()) return;
        const Box bounds = region.bounds();
        if (bounds.min.x > extent_.max.x || bounds.max.x < extent_.min.x || bounds.min.y > extent_.max.y ||
            bounds.max.y < extent_.min.y)
            return;
        if (kind == Surrounding::Kind::building) ground_.tall.push_back({region, height_of(feature), false});
        const std::string& name = feature.tag("name");
        ground_.surroundings.push_back({kind, std::move(region), name.empty() ? feature.tag("ref") : name});
    }

    const MapFeature& green_;
    std::size_t green_part_;
    const PlaneDrawing& drawing_;
    const Box& extent_;
    const DegreeBox& here_;  // holds the extent with room to spare
    const MapAssumptions& assumptions_;
    FeatureNotes& notes_;
    Region in_play_;
    std::vector<const MapFeature*> marked_;  // penalty areas drawn for golf
    HoleGround ground_;
};

}  // namespace

HoleGround ground_of_hole(const std::vector<const IndexedFeature*>& near, const MapFeature& green,
                          std::size_t green_part, const PlaneDrawing& drawing, const LineOfPlay& line,
                          const Box& extent, const DegreeBox& here, const MapAssumptions& assumptions,
                          FeatureNotes& notes) {
    return GroundOfHole(green, green_part, drawing, line, extent, here, assumptions, notes).find(near);
}

}  // namespace landwidth
