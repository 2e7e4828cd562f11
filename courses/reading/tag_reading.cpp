#include "courses/reading/tag_reading.hpp"

#include <algorithm>
#include <array>

#include "courses/reading/copied_findings.hpp"
#include "courses/tags/vocabulary.hpp"
#include "courses/text.hpp"

namespace landwidth {

namespace {

constexpr std::array<std::string_view, 3> packed_names{"other_tags", "all_tags", "tags"};
// Fields that only OpenStreetMap data has, whatever wrote the file.
constexpr std::array<std::string_view, 6> openstreetmap_names{"osm_id", "osm_way_id", "full_id",
                                                              "@id",    "@osmid",     "osm_type"};

template <std::size_t N>
bool is_one_of(std::string_view name, const std::array<std::string_view, N>& names) {
    return std::find(names.begin(), names.end(), name) != names.end();
}

std::string list_text(OGRFeature& feature, int index) {
    std::string text;
    if (char** items = feature.GetFieldAsStringList(index)) {
        for (; *items != nullptr; ++items)
            text += (text.empty() ? "" : ";") + std::string(*items);
        return text;
    }
    return feature.GetFieldAsString(index);
}

bool is_number(std::string_view text) {
    if (text.starts_with('-')) text.remove_prefix(1);
    return !text.empty() && text.find_first_not_of("0123456789") == std::string_view::npos;
}

// What an `osm_id` counts is told by the layers of GDAL's OSM driver, or by a field `osm_type`.
std::string kind_of_element(std::string_view layer, const std::string& type, const OGRGeometry* shape) {
    for (const std::string_view kind : {"node", "way", "relation"}) {
        if (folded(type) == kind) return std::string(kind);
    }
    if (layer == "points") return "node";
    if (layer == "lines") return "way";
    if (layer == "multipolygons" || layer == "multilinestrings" || layer == "other_relations")
        return "relation";
    if (shape != nullptr && shape->getDimension() == 0) return "node";
    return shape != nullptr && shape->getDimension() == 1 ? "way" : "osm_id";
}

const std::string& tag_or_empty(const Tags& tags, const std::string& key) {
    static const std::string absent;
    const auto found = tags.find(key);
    return found == tags.end() ? absent : found->second;
}

}  // namespace

std::string element_id(const std::string& text) {
    const std::string id = folded(text);
    for (const std::string_view kind : {"node", "way", "relation"}) {
        std::string_view rest = id;
        if (rest.starts_with(kind)) {
            rest.remove_prefix(kind.size());
            if (!rest.starts_with('/') && !rest.starts_with(' ')) continue;
            rest.remove_prefix(1);
        } else if (rest.starts_with(kind.front())) {
            rest.remove_prefix(1);
        } else {
            continue;
        }
        if (is_number(rest)) return std::string(kind) + "/" + std::string(rest);
    }
    return {};
}

bool is_source_id(std::string_view text) {
    constexpr std::string_view feature = ", feature ";
    const std::size_t at = text.rfind(feature);
    if (text.starts_with("layer ") && at != std::string_view::npos)
        return is_number(text.substr(at + feature.size()));
    return text.starts_with("osm_id ") && is_number(text.substr(7));
}

bool says_what_it_is(std::string_view key) {
    return is_one_of(key, role_keys);
}

std::string tag_key(std::string_view field, std::string_view value) {
    std::string key = folded(field);
    std::string plain = key;
    std::replace(plain.begin(), plain.end(), '_', ':');
    if (plain == "golf:course:name") return "golf:course:name";
    // Cut at ten characters golf:course (a kind: "18_hole") and golf:course:name look alike.
    if (plain == "golf:course" || plain == "golf:cours" || plain.starts_with("golf:cou:")) {
        const std::string kind = folded(value);
        const bool is_kind = kind.ends_with("hole") || kind.ends_with("holes") || kind == "executive" ||
                             kind == "par_3" || kind == "pitch_and_putt" || kind == "driving_range" ||
                             kind == "regulation" || whole_number_in(kind).has_value();
        return is_kind || plain == "golf:course" ? "golf:course" : "golf:course:name";
    }
    if (plain == "building:levels" || plain == "building:l") return "building:levels";
    if (plain == "building:height" || plain == "building:h") return "building:height";
    if (plain == "intermitte") return "intermittent";
    if (plain == "diameter:c") return "diameter_crown";
    if (plain == "width:average" || plain == "width:aver") return "width:average";
    if (plain == "disc:golf:hole" || plain == "disc:golf:") return "disc_golf:hole";
    if (plain == "penalty:ar") return "penalty_area";
    return key;
}

TagFields::TagFields(const OGRFeatureDefn& layer) {
    for (int i = 0; i < layer.GetFieldCount(); ++i) {
        const OGRFieldDefn& field = *layer.GetFieldDefn(i);
        const std::string name = folded(field.GetNameRef());
        const OGRFieldType type = field.GetType();
        fields_.push_back({.index = i,
                           .name = name,
                           .packed = is_one_of(name, packed_names),
                           .chooses = says_what_it_is(name),
                           .truth = type == OFTInteger && field.GetSubType() == OFSTBoolean,
                           .list = type == OFTStringList || type == OFTIntegerList ||
                                   type == OFTInteger64List || type == OFTRealList});
        if (is_one_of(name, openstreetmap_names)) openstreetmap_ = true;
    }
}

bool TagFields::worth_reading(OGRFeature& feature) const {
    for (const Field& field : fields_) {
        if (!field.packed && !field.chooses) continue;
        if (!feature.IsFieldSetAndNotNull(field.index)) continue;
        if (field.chooses) return true;
        const std::string_view text = feature.GetFieldAsString(field.index);
        for (const std::string_view name : role_keys) {
            if (text.find(name) != std::string_view::npos) return true;
        }
    }
    return false;
}

TagFields::Reading TagFields::read(OGRFeature& feature) const {
    Reading reading;
    for (const Field& field : fields_) {
        if (field.packed || !feature.IsFieldSetAndNotNull(field.index)) continue;
        std::string value = trimmed(field.truth ? (feature.GetFieldAsInteger(field.index) != 0 ? "yes" : "no")
                                    : field.list ? list_text(feature, field.index)
                                                 : feature.GetFieldAsString(field.index));
        if (!value.empty()) reading.tags.emplace(tag_key(field.name, value), std::move(value));
    }
    for (const Field& field : fields_) {
        if (!field.packed || !feature.IsFieldSetAndNotNull(field.index)) continue;
        if (!add_packed_tags(feature.GetFieldAsString(field.index), reading.tags)) reading.cut_off = true;
    }
    return reading;
}

std::string TagFields::id_of(OGRFeature& feature, std::string_view layer, const Tags& tags) const {
    for (const char* key : {"@id", "full_id", "@osmid", "id"}) {
        std::string id = element_id(tag_or_empty(tags, key));
        if (!id.empty()) return id;
    }
    if (const std::string& id = tag_or_empty(tags, copy_field::source_id); is_source_id(id)) return id;
    if (const std::string& way = tag_or_empty(tags, "osm_way_id"); is_number(way)) return "way/" + way;
    if (const std::string& number = tag_or_empty(tags, "osm_id"); is_number(number)) {
        const std::string kind =
            kind_of_element(layer, tag_or_empty(tags, "osm_type"), feature.GetGeometryRef());
        return kind == "osm_id" ? "osm_id " + number : kind + "/" + number;
    }
    return "feature " + std::to_string(feature.GetFID());
}

}  // namespace landwidth
