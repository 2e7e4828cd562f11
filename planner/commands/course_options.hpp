// The options of every command that reads a course: the file, what its layers and columns mean, which course
// on it, which tee, which holes, how high its ground lies.
#pragma once

#include <CLI/App.hpp>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "courses/course.hpp"
#include "courses/map_assumptions.hpp"
#include "courses/reading/map_source.hpp"

namespace landwidth {

class CourseOptions {
  public:
    void setup(CLI::App& app);
    // The same without the file, for a command that takes several.
    void setup_choice(CLI::App& app);
    // The first of the options of setup_choice that was given, as typed ("--holes"); empty for none.
    std::string_view given() const;
    // Reads the map, puts the course together and lays the heights of the ground, if any, under it. Holes
    // that cannot be planned are left out; see Course::findings.
    Course read(const MapAssumptions& assumptions) const { return read(file_, assumptions); }
    Course read(const std::filesystem::path& file, const MapAssumptions& assumptions) const;
    // The same in two steps, for a command that needs the map as well.
    MapData read_map() const { return read_map(file_); }
    MapData read_map(const std::filesystem::path& file) const;
    Course assemble(const MapData& map, const MapAssumptions& assumptions) const;

    static constexpr const char* file_help =
        "map of the course: .osm, .osm.pbf, GeoJSON, GeoPackage, Shapefile (or a folder of them), KML, "
        "FlatGeobuf, or what else GDAL opens";

  private:
    std::filesystem::path file_;
    std::vector<std::string> names_;
    std::vector<std::string> tags_;
    std::string tee_;
    std::string holes_;
    std::filesystem::path ground_;  // empty: flat
};

// "1-3,7,12b": refs, ranges of numbers written out. Throws UsageError.
std::vector<std::string> hole_refs(const std::string& text);

}  // namespace landwidth
