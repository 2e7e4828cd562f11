// Whose data a map is, by what the source says of itself.
#pragma once

#include <gdal_priv.h>

#include <string>
#include <string_view>

namespace landwidth {

// One line out of what a head or a metadata item says; OpenStreetMap's various wordings become the usual
// credit.
std::string attribution_from(std::string_view statement);

// Looks at the dataset's metadata and, for JSON, at the first members of the file. `openstreetmap`: the
// fields are those of OpenStreetMap data, which asks for its credit even where the file is silent.
std::string attribution_of(GDALDataset& dataset, std::string_view head, bool openstreetmap);

}  // namespace landwidth
