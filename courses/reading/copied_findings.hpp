// The findings that stand beside the features of a course written back as a map: read again from such a copy.
//
// A copy holds the shapes as they were read, so that what got lost on the way (a lake cut by the export, a
// ring that held no ground) no longer shows in them. These findings are told again whenever the copy is read,
// until whoever mends the map removes the finding's point. Findings of putting the course together are made
// anew and not read.
#pragma once

#include <ogr_feature.h>

#include <string_view>

#include "courses/finding.hpp"

namespace landwidth {

// Names of fields that the copy is written with and read by; ten characters at most, so that they stay whole
// in a Shapefile.
namespace copy_field {
inline constexpr const char* finding = "finding";  // the code
inline constexpr const char* severity = "severity";
inline constexpr const char* hole = "hole";
inline constexpr const char* feature = "feature";
inline constexpr const char* message = "message";
inline constexpr const char* advice = "advice";
inline constexpr const char* told_again = "told_again";  // `until_removed`, or nothing
inline constexpr const char* place = "place";            // `own_place`, else where its point stands instead
// Of a golf=hole line: how many of its points the export lacked; empty once it is drawn to its end.
inline constexpr const char* points_cut = "points_cut";
// Of a feature that is no element of OpenStreetMap: its id in the source, "layer holes, feature 7".
inline constexpr const char* source_id = "source_id";
}  // namespace copy_field
inline constexpr const char* until_removed = "until removed";
inline constexpr const char* own_place = "its own";

// The fields of a layer as those of findings, their names looked at once.
class FindingFields {
  public:
    explicit FindingFields(const OGRFeatureDefn& layer);

    // Whether it is a finding that this program wrote beside the features of a map.
    bool is_finding(OGRFeature& feature) const;
    // Whether it is to be told again.
    bool is_told_again(OGRFeature& feature) const;
    // Whether its point is the place it is about, and not a stand-in.
    bool has_place(OGRFeature& feature) const;
    // Without its place.
    Finding read(OGRFeature& feature) const;

  private:
    std::string_view text(OGRFeature& feature, int index) const;

    int finding_ = -1;  // -1: not a layer of findings
    int severity_, hole_, feature_, message_, advice_, told_again_, place_;
};

}  // namespace landwidth
