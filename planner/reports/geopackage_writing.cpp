#include "planner/reports/geopackage_writing.hpp"

#include <cpl_conv.h>
#include <cpl_error.h>
#include <fmt/format.h>
#include <gdal_priv.h>
#include <ogrsf_frmts.h>

#include <memory>

#include "geometry/error.hpp"
#include "planner/reports/layer_style.hpp"
#include "planner/reports/text_table.hpp"

namespace landwidth {
namespace {

// The same plan gives the same bytes, whenever it is written.
constexpr const char* fixed_time = "2000-01-01T00:00:00.000Z";

struct CloseDataset {
    void operator()(GDALDataset* dataset) const { GDALClose(dataset); }
};
using DatasetPtr = std::unique_ptr<GDALDataset, CloseDataset>;
struct DestroyFeature {
    void operator()(OGRFeature* feature) const { OGRFeature::DestroyFeature(feature); }
};
using FeaturePtr = std::unique_ptr<OGRFeature, DestroyFeature>;

// GDAL's messages are kept and not printed. The first failure is the cause, the later ones its consequences.
class GdalFailures {
  public:
    GdalFailures() { CPLPushErrorHandlerEx(keep, this); }
    GdalFailures(const GdalFailures&) = delete;
    GdalFailures& operator=(const GdalFailures&) = delete;
    ~GdalFailures() { CPLPopErrorHandler(); }

    const std::string& first() const { return first_; }
    bool disk_full() const { return disk_full_; }

  private:
    static void CPL_STDCALL keep(CPLErr severity, CPLErrorNum, const char* message) {
        if (severity < CE_Failure) return;
        auto& self = *static_cast<GdalFailures*>(CPLGetErrorHandlerUserData());
        const std::string words = on_one_line(message);
        if (self.first_.empty()) self.first_ = words;
        // SQLite's words, and those of the C library.
        for (const char* full : {"disk is full", "No space left"}) {
            if (words.find(full) != std::string::npos) self.disk_full_ = true;
        }
    }

    std::string first_;
    bool disk_full_ = false;
};

class GeopackageWriter {
  public:
    explicit GeopackageWriter(const std::filesystem::path& path)
        : path_(path), time_("OGR_CURRENT_DATE", fixed_time, true) {
        GDALAllRegister();
        GDALDriver* driver = GetGDALDriverManager()->GetDriverByName("GPKG");
        if (driver == nullptr) fail("this GDAL has no GeoPackage driver");
        dataset_.reset(driver->Create(path.c_str(), 0, 0, 0, GDT_Unknown, nullptr));
        if (!dataset_) fail("cannot create it");
        wgs84_.importFromEPSG(4326);
        wgs84_.SetAxisMappingStrategy(OAMS_TRADITIONAL_GIS_ORDER);
        require(dataset_->StartTransaction());
    }

    void add(const VectorLayer& layer) {
        char** options = CSLSetNameValue(nullptr, "DESCRIPTION", layer.description.c_str());
        options = CSLSetNameValue(options, "IDENTIFIER", layer.name.c_str());
        OGRLayer* table = dataset_->CreateLayer(layer.name.c_str(), &wgs84_, layer.shape_type, options);
        CSLDestroy(options);
        if (table == nullptr) fail("cannot create its layers");
        if (!layer.features.empty()) {
            for (const auto& [name, value] : fields_of(layer))
                create_field(*table, name, value);
        }
        for (const VectorFeature& feature : layer.features) {
            const FeaturePtr row(OGRFeature::CreateFeature(table->GetLayerDefn()));
            for (const auto& [name, value] : feature.fields)
                set(*row, name.c_str(), value);
            if (feature.shape) require(row->SetGeometry(feature.shape.get()));
            require(table->CreateFeature(row.get()));
        }
    }

    // The table in which a GIS finds the style of a layer. The empty texts are compared with, so they must
    // not be null.
    void add_styles(const std::vector<VectorLayer>& layers) {
        OGRLayer* table = dataset_->CreateLayer("layer_styles", nullptr, wkbNone, nullptr);
        if (table == nullptr) fail("cannot create its styles");
        for (const char* name : {"f_table_catalog", "f_table_schema", "f_table_name", "f_geometry_column",
                                 "styleName", "styleQML", "styleSLD"}) {
            create_field(*table, name, std::string());
        }
        create_field(*table, "useAsDefault", true);
        for (const char* name : {"description", "owner", "ui"})
            create_field(*table, name, std::string());
        OGRFieldDefn time("update_time", OFTDateTime);
        require(table->CreateField(&time));

        for (const VectorLayer& layer : layers) {
            const LayerStyle& style = layer_style(layer.name);
            const FeaturePtr row(OGRFeature::CreateFeature(table->GetLayerDefn()));
            row->SetField("f_table_catalog", "");
            row->SetField("f_table_schema", "");
            row->SetField("f_table_name", layer.name.c_str());
            row->SetField("f_geometry_column", "geom");
            row->SetField("styleName", layer.name.c_str());
            row->SetField("styleQML", style_as_qml(style).c_str());
            row->SetField("styleSLD", style_as_sld(style).c_str());
            row->SetField("useAsDefault", 1);
            row->SetField("description", layer.description.c_str());
            row->SetField("owner", "");
            row->SetField("update_time", fixed_time);
            require(table->CreateFeature(row.get()));
        }
    }

    void add_metadata(const std::vector<std::pair<std::string, std::string>>& metadata) {
        for (const auto& [key, value] : metadata) {
            if (dataset_->SetMetadataItem(key.c_str(), value.c_str()) != CE_None) fail("cannot write it");
        }
    }

    void finish() {
        require(dataset_->CommitTransaction());
        dataset_.reset();
        if (!failures_.first().empty()) fail("cannot finish it");
    }

  private:
    // A layer's fields with a value that tells their type: the first that is not null.
    static std::vector<std::pair<std::string, FieldValue>> fields_of(const VectorLayer& layer) {
        auto fields = layer.features.front().fields;
        for (const VectorFeature& feature : layer.features) {
            for (std::size_t i = 0; i < fields.size(); ++i) {
                if (std::holds_alternative<std::monostate>(fields[i].second))
                    fields[i] = feature.fields.at(i);
            }
        }
        return fields;
    }

    void create_field(OGRLayer& table, const std::string& name, const FieldValue& example) {
        OGRFieldDefn field(name.c_str(), OFTString);
        if (std::holds_alternative<int>(example)) field.SetType(OFTInteger);
        if (std::holds_alternative<double>(example)) field.SetType(OFTReal);
        if (std::holds_alternative<bool>(example)) {
            field.SetType(OFTInteger);
            field.SetSubType(OFSTBoolean);
        }
        require(table.CreateField(&field));
    }

    static void set(OGRFeature& row, const char* name, const FieldValue& value) {
        if (const auto* text = std::get_if<std::string>(&value))
            row.SetField(name, on_one_line(*text).c_str());
        if (const auto* whole = std::get_if<int>(&value)) row.SetField(name, *whole);
        if (const auto* real = std::get_if<double>(&value)) row.SetField(name, *real);
        if (const auto* flag = std::get_if<bool>(&value)) row.SetField(name, *flag ? 1 : 0);
    }

    void require(OGRErr result) const {
        if (result != OGRERR_NONE) fail("cannot write it");
    }

    [[noreturn]] void fail(const std::string& what) const {
        const std::string& why = failures_.first();
        throw OutputError(path_.filename().string(),
                          failures_.disk_full() ? "disk full; free some space or write somewhere else"
                          : why.empty()         ? what
                                                : fmt::format("{} ({})", what, why));
    }

    std::filesystem::path path_;
    GdalFailures failures_;
    CPLConfigOptionSetter time_;
    OGRSpatialReference wgs84_;
    DatasetPtr dataset_;
};

}  // namespace

void write_geopackage(const std::filesystem::path& path, const std::vector<VectorLayer>& layers,
                      const GeopackageExtras& extras) {
    if (std::filesystem::exists(path)) throw OutputError(path.string(), "exists already");
    GeopackageWriter writer(path);
    for (const VectorLayer& layer : layers)
        writer.add(layer);
    if (extras.styles) writer.add_styles(layers);
    writer.add_metadata(extras.metadata);
    writer.finish();
}

}  // namespace landwidth
