#include "courses/reading/map_source.hpp"

#include <algorithm>
#include <iterator>
#include <optional>

#include "courses/findings/finding_kinds.hpp"
#include "courses/gdal_session.hpp"
#include "courses/reading/attribution.hpp"
#include "courses/reading/element_order.hpp"
#include "courses/reading/layer_reading.hpp"
#include "courses/reading/map_box.hpp"
#include "courses/reading/map_opening.hpp"
#include "courses/reading/osm_features.hpp"
#include "courses/reading/stray_points.hpp"
#include "courses/reading/tag_mapper.hpp"
#include "courses/reading/tag_proposal.hpp"
#include "courses/reading/twice_drawn.hpp"
#include "courses/text.hpp"
#include "geometry/error.hpp"

namespace landwidth {

namespace {

void check(const GdalMessages& messages, const std::string& place) {
    if (!messages.failure()) return;
    throw InputError(place, "the file is damaged and cannot be read to its end (" + *messages.failure() +
                                "); export or download it again");
}

class MapReading {
  public:
    MapReading(const MapPath& map, const TagMapping& mapping)
        : map_(map), mapping_(mapping), mapper_(mapping) {
        data_.source = map.file;
    }

    MapData read() {
        if (map_.openstreetmap != OsmFormat::none) {
            read_openstreetmap();
        } else {
            read_layers();
        }
        data_.features = std::move(made_.features);
        data_.without_role = made_.without_role;
        take_findings();
        leave_out_stray_points(data_.features, data_.findings);
        leave_out_huge_areas(data_.features, data_.findings);
        cut_out_inner_rings(made_.bare, data_.features);
        drop_what_is_drawn_twice(data_.features, data_.findings);
        check_for_golf();
        if (!data_.extent) {
            for (const MapFeature& feature : data_.features)
                reach_over(feature.shape, data_.extent);
        }
        return std::move(data_);
    }

  private:
    void read_layers() {
        dataset_ = open_map(map_, messages_);
        data_.extent = box_in_head(map_.head);
        if (!data_.extent) data_.extent = box_in_metadata(*dataset_);
        bool openstreetmap = false;
        for (OGRLayer* layer : dataset_->GetLayers()) {
            if (layer->GetGeomType() == wkbNone) continue;
            LayerReader reader(*layer, map_.file, mapping_.empty() ? nullptr : &mapper_);
            read_layer(*layer, reader);
            for (const std::string& name : reader.field_names()) {
                if (std::find(fields_.begin(), fields_.end(), name) == fields_.end()) fields_.push_back(name);
            }
            openstreetmap = openstreetmap || reader.from_openstreetmap();
        }
        put_in_order_of_elements(made_.features, made_.findings);
        data_.attribution = attribution_of(*dataset_, map_.head, openstreetmap);
        if (!mapping_.empty()) mapper_.finish(map_.file, fields_, made_.findings);
    }

    void read_layer(OGRLayer& layer, LayerReader& reader) {
        const GIntBig announced = layer.TestCapability(OLCFastFeatureCount) ? layer.GetFeatureCount() : -1;
        GIntBig count = 0;
        layer.ResetReading();
        while (const OGRFeatureUniquePtr feature{layer.GetNextFeature()}) {
            reader.take(*feature, made_);
            ++count;
            if (messages_.failure()) check(messages_, place_of_trouble(layer, reader, *feature));
        }
        check(messages_, reader.place());
        if (count < announced) {
            throw InputError(reader.place(), "the file is damaged: it holds " + std::to_string(count) +
                                                 " of the " + std::to_string(announced) +
                                                 " features it announces; export it again");
        }
        read_ += count;
        reader.finish(made_.findings);
    }

    // Some drivers read ahead: the feature at fault is the next one that came without a shape.
    std::string place_of_trouble(OGRLayer& layer, const LayerReader& reader, const OGRFeature& last) const {
        const auto named = [&reader](const OGRFeature& feature) {
            return reader.place() + ", feature " + std::to_string(feature.GetFID());
        };
        if (last.GetGeometryRef() == nullptr) return named(last);
        while (const OGRFeatureUniquePtr feature{layer.GetNextFeature()}) {
            if (feature->GetGeometryRef() == nullptr) return named(*feature);
        }
        return reader.place();
    }

    void read_openstreetmap() {
        const OsmElements elements = read_osm_file(map_.openstreetmap, map_.gdal, map_.file);
        data_.attribution =
            attribution_from(elements.copyright.empty() ? "OpenStreetMap" : elements.copyright);
        data_.extent = elements.box;
        if (!mapping_.empty()) {
            data_.findings.push_back(finding_on_course<"tag-mapping-unused">());
        }
        read_ = static_cast<GIntBig>(elements.elements);
        report_disorder(elements);
        made_ = osm_features(elements, map_.file);
    }

    // What was told of the map that this is a copy of goes first, as it stood there; what shows in the copy as
    // well is told once.
    void take_findings() {
        std::vector<Finding>& told = made_.told_before;
        for (Finding& finding : made_.findings) {
            if (std::ranges::find(told, finding) == told.end()) data_.findings.push_back(std::move(finding));
        }
        data_.findings.insert(data_.findings.begin(), std::make_move_iterator(told.begin()),
                              std::make_move_iterator(told.end()));
    }

    void report_disorder(const OsmElements& document) {
        std::vector<Finding>& findings = data_.findings;
        if (!document.remark.empty())
            findings.push_back(finding_on_course<"export-incomplete">(in_one_line(document.remark)));
        if (document.doubled > 0) findings.push_back(finding_on_course<"elements-doubled">(document.doubled));
        if (document.deleted > 0) findings.push_back(finding_on_course<"elements-deleted">(document.deleted));
    }

    void check_for_golf() const {
        bool other_sport = false;
        for (const MapFeature& feature : data_.features) {
            const Role role = feature.role();
            if (is_golf(role)) return;
            other_sport = other_sport || role == Role::other_sport;
        }
        std::string problem = "there is no golf on this map: none of its " + std::to_string(read_) +
                              (map_.openstreetmap == OsmFormat::none ? " features" : " elements") +
                              " has a golf=* or leisure=golf_course tag";
        if (other_sport) problem += " (disc golf and courses out of use do not count)";
        if (!fields_.empty()) problem += "; its fields are " + enumeration(fields_);
        const std::string proposal =
            dataset_ && mapping_.empty() ? proposed_tag_file(*dataset_, map_.file) : std::string();
        if (!proposal.empty()) {
            problem +=
                "; say with --tags what its layers and columns mean (survey prints a proposal, to be saved "
                "as a file for it)";
        } else if (dataset_) {
            problem += mapping_.empty()
                           ? "; if its layers or columns tell what the ground is, say with --tags "
                             "FILE what they mean"
                           : "; nor does --tags give them one";
        }
        throw NoGolfError(map_.file, problem, proposal);
    }

    const MapPath& map_;
    const TagMapping& mapping_;
    TagMapper mapper_;
    GDALDatasetUniquePtr dataset_;  // of anything but OpenStreetMap formats
    GdalMessages messages_;
    MapData data_;
    ReadFeatures made_;
    GIntBig read_ = 0;
    std::vector<std::string> fields_;
};

}  // namespace

MapData read_map(const std::filesystem::path& path, const TagMapping& mapping) {
    prepare_gdal();
    std::optional<MapPath> map;
    {
        const GdalMessages quiet;
        map = find_map(path);
    }
    return MapReading(*map, mapping).read();
}

}  // namespace landwidth
