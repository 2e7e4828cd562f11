// Tags out of the fields of a vector source.
//
// Fields are tags whose key is the field's name. Keys are compared without regard to case, and the names that
// formats make of OpenStreetMap's keys are undone: "golf_cours" and "golf:cours" (Shapefile cuts names at ten
// characters), "golf_course_name" (colons turned into underscores). The fields `other_tags`, `all_tags` and
// `tags` hold more tags, as an hstore or JSON string.
#pragma once

#include <ogr_feature.h>

#include <string>
#include <string_view>
#include <vector>

#include "courses/tags/map_feature.hpp"

namespace landwidth {

// Adds what is not there yet. False when the text breaks off part way (Shapefile cuts texts at 254
// characters); what stands before the break is added.
bool add_packed_tags(std::string_view text, Tags& tags);

// The key that OpenStreetMap would use for a field of this name; `value` settles what a cut-off name stands
// for.
std::string tag_key(std::string_view field, std::string_view value);

// "way/123", "W123", "w123", "way 123" as "way/123"; empty for what is no id of an element.
std::string element_id(const std::string& text);
// Whether a text is an id of a feature as a copy of a course has it (copied_findings.hpp).
bool is_source_id(std::string_view text);

// Whether this key says what a feature is: golf, natural, ...
bool says_what_it_is(std::string_view key);

// The fields of a layer, their names looked at once.
class TagFields {
  public:
    explicit TagFields(const OGRFeatureDefn& layer);

    struct Reading {
        Tags tags;
        bool cut_off = false;  // a packed string breaks off
    };
    Reading read(OGRFeature& feature) const;
    // Cheap look before read(): whether the feature can have a tag of the vocabulary at all.
    bool worth_reading(OGRFeature& feature) const;
    // The id as "way/123" where the fields tell, else "feature 7"; in a copy that this program wrote that of its
    // source, "layer holes, feature 7".
    std::string id_of(OGRFeature& feature, std::string_view layer, const Tags& tags) const;
    // Whether the fields are those of OpenStreetMap data.
    bool from_openstreetmap() const { return openstreetmap_; }

  private:
    struct Field {
        int index;
        std::string name;  // lower case
        bool packed;
        bool chooses;  // golf, natural, ...: decides whether the feature is of use
        bool truth;    // a boolean
        bool list;
    };
    std::vector<Field> fields_;
    bool openstreetmap_ = false;
};

}  // namespace landwidth
