// How GDAL's OSM driver is to read a map: settings of our own instead of GDAL's default file.
//
// The default settings take some closed ways for areas, but not golf=* ones, put the golf key into a string
// and leave some tags out. Ours leave the areas to us, keep every tag, and are handed over in memory: no file
// is installed and no environment variable is needed.
#pragma once

#include <string>

namespace landwidth {

// The settings as a file of GDAL's memory, there while this lives.
class OsmSettings {
  public:
    OsmSettings();
    ~OsmSettings();
    OsmSettings(const OsmSettings&) = delete;
    OsmSettings& operator=(const OsmSettings&) = delete;

    const std::string& path() const { return path_; }

  private:
    std::string path_;
    std::string text_;
};

}  // namespace landwidth
