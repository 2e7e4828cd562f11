// Finds out what a path is and opens it, or says why it cannot be opened.
#pragma once

#include <gdal_priv.h>

#include <filesystem>
#include <string>

#include "courses/gdal_session.hpp"
#include "courses/reading/osm_file.hpp"

namespace landwidth {

struct MapPath {
    std::string gdal;  // as GDAL takes it: with /vsizip/ or /vsigzip/ before packed files
    std::string file;  // name without folders, for people
    OsmFormat openstreetmap = OsmFormat::none;  // none: for GDAL
    std::string head;                           // the first few kB, unpacked; empty for a folder
};

// Throws InputError: not there, not readable, empty, a folder without a map, part of a Shapefile missing.
MapPath find_map(const std::filesystem::path& path);

// Opens anything but OpenStreetMap formats. Throws InputError when nothing opens it; `messages` tells why.
GDALDatasetUniquePtr open_map(const MapPath& map, const GdalMessages& messages);

}  // namespace landwidth
