// Layers as the tables of a GeoPackage.
#pragma once

#include <filesystem>
#include <string>
#include <utility>
#include <vector>

#include "planner/reports/vector_layers.hpp"

namespace landwidth {

struct GeopackageExtras {
    bool styles = false;  // the layers have one each (layer_style.hpp), which goes into the file
    std::vector<std::pair<std::string, std::string>> metadata = {};  // of the whole file
};

// Writes to `path`, which must not exist; the same layers give the same bytes. Throws OutputError.
void write_geopackage(const std::filesystem::path& path, const std::vector<VectorLayer>& layers,
                      const GeopackageExtras& extras);

}  // namespace landwidth
