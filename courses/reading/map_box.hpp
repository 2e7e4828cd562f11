// How far a map that is no OpenStreetMap data reaches, where it says so of itself.
#pragma once

#include <gdal_priv.h>

#include <optional>
#include <string_view>

#include "courses/tags/map_extent.hpp"

namespace landwidth {

// In the first few kB of a file: the member "bbox" of GeoJSON before its features. Absent where it is not
// there or makes no sense.
std::optional<MapExtent> box_in_head(std::string_view head);
// "west,south,east,north"; in the metadata item "bbox" of a dataset.
std::optional<MapExtent> box_in_metadata(GDALDataset& dataset);
std::optional<MapExtent> box_in_text(std::string_view text);

}  // namespace landwidth
