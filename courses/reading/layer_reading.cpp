#include "courses/reading/layer_reading.hpp"

#include <utility>

#include "geometry/error.hpp"

namespace landwidth {

namespace {

// Relations that GDAL cannot build a shape for come with the shapes of all their members, which mean other
// things; files converted from OpenStreetMap data have them in a layer of this name.
bool is_bag_of_members(const std::string& layer) {
    return layer == "other_relations";
}

// An empty point counts: it may be one with a coordinate that is no number.
bool has_shape(const OGRGeometry* geometry) {
    return geometry != nullptr &&
           (!geometry->IsEmpty() || wkbFlatten(geometry->getGeometryType()) == wkbPoint);
}

}  // namespace

LayerReader::LayerReader(OGRLayer& layer, std::string file, TagMapper* mapper)
    : file_(std::move(file)),
      name_(layer.GetName()),
      definition_(*layer.GetLayerDefn()),
      fields_(definition_),
      to_wgs84_(layer.GetSpatialRef(), place()),
      mapper_(mapper),
      mapped_(mapper != nullptr ? mapper->layer(definition_, name_) : MappedLayer()) {}

// A multipolygon whose tags are on its outer way, as they used to be.
void LayerReader::take_bare(OGRFeature& feature, std::vector<MapFeature>& bare) const {
    if (name_ != "multipolygons" || feature.GetGeometryRef() == nullptr) return;
    Tags tags = fields_.read(feature).tags;
    for (const char* key : {"osm_id", "osm_way_id", "type"})
        tags.erase(key);
    if (!tags.empty()) return;
    ShapeParts parts = parts_of(*feature.GetGeometryRef());
    std::erase_if(parts.polygons, [](const LonLatPolygon& polygon) { return polygon.inners.empty(); });
    if (parts.polygons.empty()) return;
    to_wgs84_.apply(parts, place());
    bare.push_back({"", name_, file_, {}, std::move(parts.polygons)});
}

// The parts of the feature's shape where they can be used; what is dropped is reported.
std::optional<ShapeParts> LayerReader::usable_parts(const OGRGeometry* geometry, const MapFeature& feature,
                                                    Role role, std::vector<Finding>& findings) const {
    if (!has_shape(geometry)) {
        findings.push_back(shape_missing(feature));
        return std::nullopt;
    }
    ShapeParts parts = parts_of(*geometry);
    if (parts.empty_point) {
        throw InputError(feature.where(), tag_words(feature.tags) +
                                              " is a point without coordinates, or with some that are no "
                                              "number; correct or remove the feature");
    }
    to_wgs84_.apply(parts, feature.where());
    if (is_bag_of_members(name_)) {
        if (is_golf(role)) findings.push_back(relation_unused(feature, any_place(parts)));
        return std::nullopt;
    }
    return parts;
}

void LayerReader::take(OGRFeature& feature, std::vector<MapFeature>& features, std::vector<MapFeature>& bare,
                       std::vector<Finding>& findings) {
    if (fields_.is_finding(feature)) return;
    if (mapper_ == nullptr && !fields_.worth_reading(feature)) return take_bare(feature, bare);
    TagFields::Reading reading = fields_.read(feature);
    if (mapper_ != nullptr) mapper_->add_tags(mapped_, feature, reading.tags);
    if (reading.cut_off) ++cut_off_;
    const Role role = role_of(reading.tags);
    if (role == Role::none) return;

    MapFeature result;
    result.id = fields_.id_of(feature, name_, reading.tags);
    result.layer = name_;
    result.file = file_;
    result.tags = std::move(reading.tags);
    if (role == Role::hole && !has_shape(feature.GetGeometryRef())) {
        // Kept, so that the hole is reported as one that cannot be planned.
        features.push_back({result.id, name_, file_, result.tags, std::vector<LonLatPath>{}});
        return;
    }
    std::optional<ShapeParts> parts = usable_parts(feature.GetGeometryRef(), result, role, findings);
    if (!parts) return;
    ++taken_;
    for (MapShape& shape : shapes_in_form(std::move(*parts), form_of(role, result.tags), result, findings)) {
        MapFeature& added = features.emplace_back(result);
        added.shape = std::move(shape);
    }
}

void LayerReader::finish(std::vector<Finding>& findings) const {
    if (to_wgs84_.crs_missing() && taken_ > 0) {
        findings.push_back(
            {Severity::warning, "crs-missing", "layer " + name_, "", std::nullopt,
             "layer " + name_ +
                 " has no coordinate reference system; its coordinates are taken "
                 "for WGS 84 longitude and latitude",
             "check that the course lies where it should, or save the layer with its reference "
             "system"});
    }
    if (cut_off_ > 0) {
        findings.push_back({Severity::warning, "tags-cut-off", "layer " + name_, "", std::nullopt,
                            std::to_string(cut_off_) + " features of layer " + name_ +
                                " have tags in one text that breaks off, so that some are lost",
                            "export with the golf tags in fields of their own, or to GeoPackage"});
    }
}

std::vector<std::string> LayerReader::field_names() const {
    std::vector<std::string> names;
    names.reserve(static_cast<std::size_t>(definition_.GetFieldCount()));
    for (int i = 0; i < definition_.GetFieldCount(); ++i)
        names.emplace_back(definition_.GetFieldDefn(i)->GetNameRef());
    return names;
}

}  // namespace landwidth
