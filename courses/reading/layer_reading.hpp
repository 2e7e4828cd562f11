// One layer of a vector source, feature by feature, into features of a map.
#pragma once

#include <ogrsf_frmts.h>

#include <optional>
#include <string>
#include <vector>

#include "courses/reading/copied_findings.hpp"
#include "courses/reading/ogr_shapes.hpp"
#include "courses/reading/read_features.hpp"
#include "courses/reading/tag_mapper.hpp"
#include "courses/reading/tag_reading.hpp"

namespace landwidth {

class LayerReader {
  public:
    // `mapper`: what the user says its names and columns mean; null for a map that brings its tags. It must
    // outlive the reader. Throws InputError when the layer's CRS cannot be used.
    LayerReader(OGRLayer& layer, std::string file, TagMapper* mapper = nullptr);

    // Adds what the feature is to a hole, if anything; a finding of a copy goes to `told_before`. Throws
    // InputError for coordinates that are unusable.
    void take(OGRFeature& feature, ReadFeatures& read);
    // Reports what only shows at the end: a missing CRS, strings cut off.
    void finish(std::vector<Finding>& findings) const;

    const std::string& name() const { return name_; }
    std::string place() const { return name_ == file_ ? file_ : file_ + ", layer " + name_; }
    bool from_openstreetmap() const { return fields_.from_openstreetmap(); }
    // Names of the fields, for saying that none of them is golf.
    std::vector<std::string> field_names() const;

  private:
    std::optional<ShapeParts> usable_parts(const OGRGeometry* geometry, const MapFeature& feature,
                                           std::vector<Finding>& findings) const;
    void take_finding(OGRFeature& feature, std::vector<Finding>& told_before) const;
    void take_without_role(OGRFeature& feature, ReadFeatures& read) const;

    std::string file_;
    std::string name_;
    const OGRFeatureDefn& definition_;
    TagFields fields_;
    FindingFields finding_fields_;
    ToWgs84 to_wgs84_;
    TagMapper* mapper_;
    MappedLayer mapped_;
    int taken_ = 0;
    int cut_off_ = 0;
};

}  // namespace landwidth
