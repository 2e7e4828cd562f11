// Units of heights as rasters name them.
#pragma once

#include <optional>
#include <string_view>

namespace landwidth {

// Metres, international and US survey feet under their usual names, without regard to case; absent for
// anything else, the empty text included.
std::optional<double> metres_per_height_unit(std::string_view name);

}  // namespace landwidth
