#include "courses/reading/osm_settings.hpp"

#include <cpl_vsi.h>

#include <array>
#include <atomic>
#include <string_view>

namespace landwidth {

namespace {

// Closed ways stay lines for the driver and become areas in our own reading, which knows the tags better.
// Left to the driver, a closed way with tags of its own (a green) would vanish where a multipolygon uses it
// as its outer ring.
constexpr std::string_view general =
    "closed_ways_are_polygons=\n"
    "attribute_name_laundering=no\n"
    "report_all_tags=yes\n";

// The keys a feature is chosen by stand in fields of their own, so that the others are only unpacked for
// chosen ones.
constexpr std::string_view layer =
    "osm_id=yes\n"
    "attributes=golf,leisure,natural,landuse,landcover,waterway,highway,building\n"
    "unsignificant=\n"
    "ignore=\n"
    "other_tags=yes\n";

constexpr std::array<std::string_view, 5> layers{"points", "lines", "multipolygons", "multilinestrings",
                                                 "other_relations"};

std::string settings_text() {
    std::string text(general);
    for (const std::string_view name : layers)
        text += "[" + std::string(name) + "]\n" + std::string(layer);
    return text;
}

}  // namespace

OsmSettings::OsmSettings() : text_(settings_text()) {
    static std::atomic<unsigned> count{0};
    path_ = "/vsimem/landwidth-osm-settings-" + std::to_string(count++) + ".ini";
    // The buffer stays ours: GDAL only looks at it while this lives.
    VSILFILE* file =
        VSIFileFromMemBuffer(path_.c_str(), reinterpret_cast<GByte*>(text_.data()), text_.size(), 0);
    if (file != nullptr) VSIFCloseL(file);
}

OsmSettings::~OsmSettings() {
    VSIUnlink(path_.c_str());
}

}  // namespace landwidth
