#include "courses/reading/layer_reading.hpp"

#include <algorithm>
#include <utility>

#include "courses/tags/feature_findings.hpp"
#include "courses/text.hpp"
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

// Takes out of the tags how many points a hole's line lacks in a copy. Whatever is in the field and no number
// says that some are.
std::size_t points_cut_in(Tags& tags) {
    const auto found = tags.find(copy_field::points_cut);
    if (found == tags.end()) return 0;
    const double count = number_in(found->second).value_or(1.0);
    tags.erase(found);
    return count >= 1.0 ? static_cast<std::size_t>(std::min(count, 1e6)) : 0;
}

}  // namespace

LayerReader::LayerReader(OGRLayer& layer, std::string file, TagMapper* mapper)
    : file_(std::move(file)),
      name_(layer.GetName()),
      definition_(*layer.GetLayerDefn()),
      fields_(definition_),
      finding_fields_(definition_),
      to_wgs84_(layer.GetSpatialRef(), place()),
      mapper_(mapper),
      mapped_(mapper != nullptr ? mapper->layer(definition_, name_) : MappedLayer()) {}

void LayerReader::take_finding(OGRFeature& feature, std::vector<Finding>& told_before) const {
    if (!finding_fields_.is_told_again(feature)) return;
    Finding& finding = told_before.emplace_back(finding_fields_.read(feature));
    const OGRGeometry* shape = feature.GetGeometryRef();
    if (shape == nullptr || !finding_fields_.has_place(feature)) return;
    ShapeParts parts = parts_of(*shape);
    to_wgs84_.apply(parts, place());
    finding.place = any_place(parts);
}

// Of use may be a multipolygon whose tags are on its outer way, as they used to be.
void LayerReader::take_without_role(OGRFeature& feature, ReadFeatures& read) const {
    Tags tags = fields_.read(feature).tags;
    for (const char* key : {"osm_id", "osm_way_id", "type"})
        tags.erase(key);
    if (name_ != "multipolygons" || feature.GetGeometryRef() == nullptr || !tags.empty()) {
        ++read.without_role;
        return;
    }
    ShapeParts parts = parts_of(*feature.GetGeometryRef());
    std::erase_if(parts.polygons, [](const LonLatPolygon& polygon) { return polygon.inners.empty(); });
    if (parts.polygons.empty()) return;
    to_wgs84_.apply(parts, place());
    read.bare.push_back({"", name_, file_, {}, std::move(parts.polygons)});
}

// The parts of the feature's shape where they can be used; what is dropped is reported.
std::optional<ShapeParts> LayerReader::usable_parts(const OGRGeometry* geometry, const MapFeature& feature,
                                                    std::vector<Finding>& findings) const {
    if (!has_shape(geometry)) {
        findings.push_back(finding_on<"shape-missing">(feature, std::nullopt));
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
        if (is_golf(feature.role()))
            findings.push_back(finding_on<"relation-unused">(feature, any_place(parts)));
        return std::nullopt;
    }
    return parts;
}

void LayerReader::take(OGRFeature& feature, ReadFeatures& read) {
    if (finding_fields_.is_finding(feature)) return take_finding(feature, read.told_before);
    if (mapper_ == nullptr && !fields_.worth_reading(feature)) return take_without_role(feature, read);
    TagFields::Reading reading = fields_.read(feature);
    if (mapper_ != nullptr) mapper_->add_tags(mapped_, feature, reading.tags);
    if (reading.cut_off) ++cut_off_;
    const std::size_t points_cut = points_cut_in(reading.tags);
    FeatureTags tags(std::move(reading.tags));
    const Role role = tags.role();
    if (role == Role::none) {
        ++read.without_role;
        return;
    }

    MapFeature result;
    result.id = fields_.id_of(feature, name_, tags);
    result.layer = name_;
    result.file = file_;
    result.tags = std::move(tags);
    if (role == Role::hole) result.points_missing = points_cut;
    if (role == Role::hole && !has_shape(feature.GetGeometryRef())) {
        // Kept, so that the hole is reported as one that cannot be planned.
        result.shape = std::vector<LonLatPath>{};
        read.features.push_back(std::move(result));
        return;
    }
    std::optional<ShapeParts> parts = usable_parts(feature.GetGeometryRef(), result, read.findings);
    if (!parts) return;
    ++taken_;
    for (MapShape& shape : shapes_in_form(std::move(*parts), form_of(role, result.tags), result, read.findings)) {
        MapFeature& added = read.features.emplace_back(result);
        added.shape = std::move(shape);
    }
}

void LayerReader::finish(std::vector<Finding>& findings) const {
    if (to_wgs84_.crs_missing() && taken_ > 0) {
        findings.push_back(finding_about<"crs-missing">("layer " + name_, name_));
    }
    if (cut_off_ > 0) {
        findings.push_back(finding_about<"tags-cut-off">("layer " + name_, cut_off_, name_));
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
