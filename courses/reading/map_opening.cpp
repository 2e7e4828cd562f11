#include "courses/reading/map_opening.hpp"

#include <cpl_vsi.h>

#include <fstream>
#include <nlohmann/json.hpp>
#include <system_error>

#include "courses/reading/unpacking.hpp"
#include "courses/text.hpp"
#include "geometry/error.hpp"

namespace landwidth {

namespace {

namespace fs = std::filesystem;

// Enough to tell what a file is.
constexpr std::size_t head_bytes = 4096;

std::string name_of(const fs::path& path) {
    // "course/" ends in an empty name.
    return path.filename().empty() ? path.parent_path().filename().string() : path.filename().string();
}

void check_shapefile(const fs::path& shp) {
    const std::string name = name_of(shp);
    std::error_code trouble;
    if (fs::file_size(shp, trouble) == 0 && !trouble) throw InputError(name, "is empty; export it again");
    for (const char* part : {".shx", ".dbf"}) {
        fs::path lower = shp;
        fs::path upper = shp;
        lower.replace_extension(part);
        upper.replace_extension(part[1] == 's' ? ".SHX" : ".DBF");
        if (!fs::exists(lower) && !fs::exists(upper)) {
            throw InputError(name, "the Shapefile's " + lower.filename().string() +
                                       " is missing beside it; copy all its parts");
        }
    }
}

void check_folder(const fs::path& folder) {
    bool any = false;
    std::error_code trouble;
    for (const auto& entry : fs::directory_iterator(folder, trouble)) {
        if (folded(entry.path().extension().string()) != ".shp") continue;
        any = true;
        check_shapefile(entry.path());
    }
    if (trouble) throw InputError(name_of(folder), "the folder cannot be read: " + trouble.message());
    // GDAL also knows folders of other kinds (.gdb); what is none of them is refused on opening.
    if (!any && folded(folder.extension().string()) != ".gdb") {
        throw InputError(name_of(folder), "is a folder without a Shapefile; name the map file itself");
    }
}

std::string whole_text(const std::string& gdal_path) {
    std::string text;
    std::string part(1U << 16U, '\0');
    VSILFILE* file = VSIFOpenL(gdal_path.c_str(), "rb");
    if (file == nullptr) return {};
    while (const std::size_t count = VSIFReadL(part.data(), 1, part.size(), file))
        text.append(part, 0, count);
    VSIFCloseL(file);
    return text;
}

bool starts_with_mark(std::string_view head, char mark) {
    if (head.starts_with("\xEF\xBB\xBF")) head.remove_prefix(3);
    const std::string text = trimmed(head);
    return !text.empty() && text.front() == mark;
}

// What GDAL would take for OpenStreetMap data goes to our own readers, too.
bool is_for_gdals_osm_driver(const std::string& gdal_path) {
    const GDALDriverH driver = GDALIdentifyDriverEx(gdal_path.c_str(), GDAL_OF_VECTOR, nullptr, nullptr);
    return driver != nullptr && std::string_view(GDALGetDescription(driver)) == "OSM";
}

// Why a file of JSON did not open: damaged, or a map of another make.
[[noreturn]] void refuse_json(const MapPath& map) {
    nlohmann::json document;
    try {
        document = nlohmann::json::parse(whole_text(map.gdal));
    } catch (const nlohmann::json::parse_error& failure) {
        throw InputError(
            map.file + ", byte " + std::to_string(failure.byte),
            "the file is damaged here: its JSON breaks off or is not well-formed; export it again");
    }
    throw InputError(map.file, "is JSON but not GeoJSON: no feature collection in it");
}

[[noreturn]] void refuse(const MapPath& map, const GdalMessages& messages) {
    if (starts_with_mark(map.head, '{') || starts_with_mark(map.head, '[')) refuse_json(map);
    if (messages.failure())
        throw InputError(map.file, "the map is damaged and cannot be opened (" + *messages.failure() +
                                       "); export or download it again");
    throw InputError(
        map.file,
        "is not a map that can be opened; give an .osm, .osm.pbf, GeoJSON, GeoPackage, Shapefile, "
        "KML or FlatGeobuf file");
}

}  // namespace

MapPath find_map(const fs::path& path) {
    MapPath map;
    map.file = name_of(path);
    map.gdal = path.string();
    std::error_code trouble;
    const fs::file_status status = fs::status(path, trouble);
    if (!fs::exists(status)) throw InputError(path.string(), "there is no such file");
    if (fs::is_directory(status)) {
        check_folder(path);
        return map;
    }
    if (!std::ifstream(path, std::ios::binary).is_open())
        throw InputError(path.string(), "cannot be read; check that you may read it");
    if (fs::file_size(path, trouble) == 0 && !trouble)
        throw InputError(map.file, "is empty; export it again");

    const std::string extension = folded(path.extension().string());
    if (extension == ".shp") check_shapefile(path);
    const std::string inner = folded(path.stem().extension().string());
    if (extension == ".gz") map.gdal = "/vsigzip/" + fs::absolute(path).string();
    if (extension == ".zip" && inner != ".shp") map.gdal = "/vsizip/" + fs::absolute(path).string();
    map.head = unpacked_head(map.gdal, head_bytes);
    map.openstreetmap = osm_format_of(map.head, map.file);
    if (map.openstreetmap == OsmFormat::none && is_for_gdals_osm_driver(map.gdal))
        map.openstreetmap = starts_with_mark(map.head, '<') ? OsmFormat::xml : OsmFormat::pbf;
    return map;
}

GDALDatasetUniquePtr open_map(const MapPath& map, const GdalMessages& messages) {
    GDALDatasetUniquePtr dataset(GDALDataset::Open(map.gdal.c_str(), GDAL_OF_VECTOR | GDAL_OF_READONLY));
    // What opened in part is read on, to find the feature at fault.
    if (!dataset || dataset->GetLayerCount() == 0) refuse(map, messages);
    return dataset;
}

}  // namespace landwidth
