#include "courses/layer_reading.hpp"

#include <utility>

#include "geometry/error.hpp"

namespace landwidth {

namespace {

// Relations that GDAL cannot build a shape for come with the shapes of all their members, which mean other
// things.
bool is_bag_of_members(const std::string& layer) {
    return layer == "other_relations";
}

}  // namespace

LayerReader::LayerReader(OGRLayer& layer, std::string file, bool openstreetmap)
    : file_(std::move(file)),
      name_(layer.GetName()),
      definition_(*layer.GetLayerDefn()),
      fields_(definition_),
      to_wgs84_(layer.GetSpatialRef(), openstreetmap ? file_ : place()) {}

void LayerReader::take(OGRFeature& feature, std::vector<MapFeature>& features,
                       std::vector<Finding>& findings) {
    if (!fields_.worth_reading(feature)) return;
    TagFields::Reading reading = fields_.read(feature);
    if (reading.cut_off) ++cut_off_;
    const Role role = role_of(reading.tags);
    if (role == Role::none) return;

    MapFeature result;
    result.id = fields_.id_of(feature, name_, reading.tags);
    result.layer = name_;
    result.file = file_;
    result.tags = std::move(reading.tags);
    const auto report = [&](Severity severity, const char* code, const char* message, const char* advice) {
        findings.push_back(
            {severity, code, result.id, "", std::nullopt, tag_words(result.tags) + " " + message, advice});
    };
    const bool golf = is_golf(role);
    const OGRGeometry* geometry = feature.GetGeometryRef();
    if (geometry == nullptr) {
        report(golf ? Severity::warning : Severity::note, "shape-missing", "has no shape and is left out",
               "draw it or remove the feature");
        return;
    }
    if (is_bag_of_members(name_)) {
        if (golf)
            report(Severity::note, "relation-unused", "is a relation that is no multipolygon; it is not used",
                   "tag the members themselves, or make it a multipolygon");
        return;
    }
    ShapeParts parts = parts_of(*geometry);
    if (parts.empty_point) {
        throw InputError(result.where(), tag_words(result.tags) +
                                             " is a point without coordinates, or with some that are no "
                                             "number; correct or remove the feature");
    }
    to_wgs84_.apply(parts, result.where());
    if (parts.points.empty() && parts.paths.empty() && parts.polygons.empty()) {
        report(golf ? Severity::warning : Severity::note, "shape-missing",
               "has an empty shape and is left out", "draw it or remove the feature");
        return;
    }
    ++taken_;
    for (MapShape& shape : shapes_in_form(std::move(parts), form_of(role, result.tags), result, findings)) {
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
    for (int i = 0; i < definition_.GetFieldCount(); ++i)
        names.emplace_back(definition_.GetFieldDefn(i)->GetNameRef());
    return names;
}

}  // namespace landwidth
