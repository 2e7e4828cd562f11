// ogr2ogr as a user would run it, with GDAL's own settings for the source.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace landwidth::test {

// Returns `to`; throws std::runtime_error when GDAL cannot do it.
std::filesystem::path converted(const std::filesystem::path& from, const std::filesystem::path& to,
                                const std::vector<std::string>& arguments);

}  // namespace landwidth::test
