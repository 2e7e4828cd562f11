#include "planner/reports/survey_layers.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <memory>
#include <nlohmann/json.hpp>
#include <string_view>

#include "courses/reading/copied_findings.hpp"
#include "courses/reading/tag_reading.hpp"

namespace landwidth {
namespace {

// Keys with a field of their own: these always, so that they can be filled in, ...
constexpr std::array<std::string_view, 9> usual_keys{"golf", "ref",     "name",    "par",     "handicap",
                                                     "tee",  "leisure", "natural", "waterway"};
// ... and these where a feature has one.
constexpr std::array<std::string_view, 26> more_keys{
    "id", "golf:course:name", "golf:course",     "landuse",        "landcover",    "highway",   "building",
    "barrier",          "penalty_area",    "colour",         "width",        "est_width", "height",
    "building:levels",  "building:height", "diameter_crown", "intermittent", "seasonal",  "tunnel",
    "covered",          "location",        "sport",          "golf_cart",    "area",      "access",
    "surface"};

void add_path(OGRSimpleCurve& curve, const LonLatPath& path) {
    for (const LonLat& place : path)
        curve.addPoint(place.lon_deg, place.lat_deg);
}

std::unique_ptr<OGRLinearRing> ring_of(const LonLatPath& path, bool outer) {
    auto ring = std::make_unique<OGRLinearRing>();
    add_path(*ring, path);
    ring->closeRings();
    if ((ring->isClockwise() != 0) == outer) ring->reversePoints();
    return ring;
}

OGRGeometryUniquePtr shape_of(const std::vector<LonLatPolygon>& polygons) {
    auto areas = std::make_unique<OGRMultiPolygon>();
    for (const LonLatPolygon& rings : polygons) {
        OGRPolygon polygon;
        polygon.addRingDirectly(ring_of(rings.outer, true).release());
        for (const LonLatPath& inner : rings.inners)
            polygon.addRingDirectly(ring_of(inner, false).release());
        areas->addGeometry(&polygon);
    }
    return OGRGeometryUniquePtr(areas.release());
}

OGRGeometryUniquePtr shape_of(const std::vector<LonLatPath>& paths) {
    auto lines = std::make_unique<OGRMultiLineString>();
    for (const LonLatPath& path : paths) {
        OGRLineString line;
        add_path(line, path);
        if (!path.empty()) lines->addGeometry(&line);
    }
    if (lines->IsEmpty()) return nullptr;
    return OGRGeometryUniquePtr(lines.release());
}

OGRGeometryUniquePtr shape_of(LonLat place) {
    return OGRGeometryUniquePtr(new OGRPoint(place.lon_deg, place.lat_deg));
}

bool is_element(const std::string& id) {
    return id.starts_with("way/") || id.starts_with("relation/") || id.starts_with("node/");
}

// Without those that the fields @id and source_id say.
Tags without_ids(Tags tags) {
    for (const char* key : {"osm_id", "osm_way_id", "osm_type", copy_field::source_id})
        tags.erase(key);
    for (const char* key : {"@id", "full_id", "@osmid", "id"}) {
        const auto found = tags.find(key);
        if (found != tags.end() && !element_id(found->second).empty()) tags.erase(found);
    }
    return tags;
}

std::vector<std::pair<std::string, FieldValue>> fields_of(const MapFeature& feature) {
    std::vector<std::pair<std::string, FieldValue>> fields;
    const bool element = is_element(feature.id);
    fields.emplace_back("@id", element ? FieldValue(feature.id) : FieldValue());
    fields.emplace_back(copy_field::source_id, element ? FieldValue() : FieldValue(feature.label()));
    fields.emplace_back(copy_field::points_cut, feature.points_missing > 0
                                                    ? FieldValue(static_cast<int>(feature.points_missing))
                                                    : FieldValue());
    Tags rest = without_ids(feature.tags);
    const auto take = [&](std::string_view key) {
        const auto found = rest.find(std::string(key));
        fields.emplace_back(key, found == rest.end() ? FieldValue() : FieldValue(found->second));
        if (found != rest.end()) rest.erase(found);
    };
    std::for_each(usual_keys.begin(), usual_keys.end(), take);
    std::for_each(more_keys.begin(), more_keys.end(), take);
    const nlohmann::json packed(rest);
    fields.emplace_back(
        "other_tags",
        rest.empty() ? FieldValue()
                     : FieldValue(packed.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace)));
    return fields;
}

// Fields that nothing is in, except those to be filled in.
void drop_empty_fields(VectorLayer& layer) {
    if (layer.features.empty()) return;
    for (std::size_t i = layer.features.front().fields.size(); i-- > 0;) {
        const std::string& name = layer.features.front().fields[i].first;
        if (std::find(usual_keys.begin(), usual_keys.end(), name) != usual_keys.end()) continue;
        const bool empty = std::ranges::all_of(layer.features, [i](const VectorFeature& feature) {
            return std::holds_alternative<std::monostate>(feature.fields[i].second);
        });
        if (!empty) continue;
        for (VectorFeature& feature : layer.features)
            feature.fields.erase(feature.fields.begin() + static_cast<std::ptrdiff_t>(i));
    }
}

// Where the middle of the course is: of the starts of its holes, else of the places of its features.
LonLat middle_of_course(const MapData& map, const Course& course) {
    std::vector<LonLat> places;
    for (const Hole& hole : course.holes)
        places.push_back(hole.frame.origin());
    for (auto feature = map.features.begin(); course.holes.empty() && feature != map.features.end();
         ++feature) {
        if (const std::optional<LonLat> place = place_of(feature->shape)) places.push_back(*place);
    }
    if (places.empty()) return {};
    double east = 0.0;
    double north = 0.0;
    for (const LonLat& place : places) {
        east += std::remainder(place.lon_deg - places.front().lon_deg, 360.0);
        north += place.lat_deg;
    }
    const auto count = static_cast<double>(places.size());
    return {std::remainder(places.front().lon_deg + east / count, 360.0), north / count};
}

VectorLayer layer_of_findings(const MapData& map, const Course& course) {
    VectorLayer layer{"findings", "what was inferred, repaired, dropped or is missing", wkbPoint, {}};
    const LonLat middle = middle_of_course(map, course);
    for (const Finding& finding : course.findings) {
        std::optional<LonLat> place = finding.place;
        std::string where = place ? own_place : "middle of the course";
        for (const Hole& hole : course.holes) {
            if (place || hole.ref != finding.hole) continue;
            place = hole.frame.origin();
            where = "start of the hole";
        }
        const bool of_reading = std::ranges::find(map.findings, finding) != map.findings.end();
        VectorFeature& feature = layer.features.emplace_back();
        feature.shape = shape_of(place.value_or(middle));
        feature.fields = {
            {copy_field::finding, finding.code},
            {copy_field::severity, std::string(severity_name(finding.severity))},
            {copy_field::hole, finding.hole},
            {copy_field::feature, finding.feature},
            {copy_field::message, finding.message},
            {copy_field::advice, finding.advice},
            {copy_field::told_again, of_reading ? FieldValue(std::string(until_removed)) : FieldValue()},
            {copy_field::place, where}};
    }
    return layer;
}

}  // namespace

std::vector<VectorLayer> survey_layers(const MapData& map, const Course& course) {
    std::vector<VectorLayer> layers;
    layers.push_back({"areas", "areas of the course, in OpenStreetMap's tags", wkbMultiPolygon, {}});
    layers.push_back({"lines", "lines of the course, in OpenStreetMap's tags", wkbMultiLineString, {}});
    layers.push_back({"points", "points of the course, in OpenStreetMap's tags", wkbPoint, {}});
    for (const MapFeature& feature : map.features) {
        const std::size_t layer = std::holds_alternative<LonLat>(feature.shape)                    ? 2
                                  : std::holds_alternative<std::vector<LonLatPath>>(feature.shape) ? 1
                                                                                                   : 0;
        VectorFeature& added = layers[layer].features.emplace_back();
        added.shape = std::visit([](const auto& shape) { return shape_of(shape); }, feature.shape);
        added.fields = fields_of(feature);
    }
    for (VectorLayer& layer : layers)
        drop_empty_fields(layer);
    layers.push_back(layer_of_findings(map, course));
    return layers;
}

}  // namespace landwidth
