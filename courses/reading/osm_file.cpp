#include "courses/reading/osm_file.hpp"

#include <filesystem>

#include "courses/reading/osm_binary.hpp"
#include "courses/reading/osm_json.hpp"
#include "courses/reading/osm_xml.hpp"
#include "courses/text.hpp"

namespace landwidth {

namespace {

// The most that a packed binary file is unpacked to in memory.
constexpr std::size_t most_bytes = 300'000'000;

// "<osm version=...": the name of the first element; empty when the text shows none.
std::string_view root_element(std::string_view text) {
    for (std::size_t at = text.find('<'); at != std::string_view::npos; at = text.find('<', at + 1)) {
        const std::string_view rest = text.substr(at + 1);
        if (rest.starts_with('?')) continue;
        if (rest.starts_with("!--")) {
            const std::size_t end = rest.find("-->");
            if (end == std::string_view::npos) return {};
            at += end;
            continue;
        }
        if (rest.starts_with('!')) continue;
        return rest.substr(0, rest.find_first_of(" \t\r\n/>"));
    }
    return {};
}

// "course.osm.gz" -> "course.osm".
std::string without_packing(const std::string& file) {
    const std::filesystem::path path(folded(file));
    const std::string extension = path.extension().string();
    return extension == ".gz" || extension == ".bz2" || extension == ".zip" ? path.stem().string()
                                                                            : path.string();
}

}  // namespace

OsmFormat osm_format_of(std::string_view head, const std::string& file) {
    const std::string name = without_packing(file);
    std::string_view text = head;
    if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
    text.remove_prefix(std::min(text.find_first_not_of(" \t\r\n"), text.size()));
    if (text.starts_with('<')) {
        const std::string_view root = root_element(text);
        return root == "osm" || root == "osmChange" || name.ends_with(".osm") ? OsmFormat::xml
                                                                              : OsmFormat::none;
    }
    if (text.starts_with('{')) return is_osm_json(text) ? OsmFormat::json : OsmFormat::none;
    if (head.substr(0, 64).find("OSMHeader") != std::string_view::npos || name.ends_with(".osm.pbf"))
        return OsmFormat::pbf;
    if (head.substr(0, 16).find("o5m2") != std::string_view::npos || name.ends_with(".o5m"))
        return OsmFormat::o5m;
    // What could not be unpacked says why when it is read.
    const bool packed = name != folded(file);
    return packed && head.empty() && name.ends_with(".osm") ? OsmFormat::xml : OsmFormat::none;
}

OsmElements read_osm_file(OsmFormat format, const std::string& gdal_path, const std::string& file) {
    if (format == OsmFormat::xml || format == OsmFormat::json) {
        UnpackedFile source(gdal_path, file);
        return format == OsmFormat::xml ? read_osm_xml(source, file) : read_osm_json(source, file);
    }
    BinarySource source;
    source.format = format == OsmFormat::pbf ? "pbf" : "o5m";
    if (gdal_path.starts_with("/vsi")) {
        source.bytes = UnpackedFile(gdal_path, file).read_all(most_bytes);
    } else {
        source.path = std::filesystem::absolute(gdal_path).string();
    }
    return read_osm_binary(source, file, source.size() > region_bytes);
}

}  // namespace landwidth
