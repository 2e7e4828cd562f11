// Small invented maps for tests, drawn in metres around a place in the open sea.
#pragma once

#include <filesystem>
#include <string>
#include <utility>
#include <vector>

#include "courses/assembly/course_assembly.hpp"
#include "courses/reading/map_source.hpp"

namespace landwidth::test {

// A folder that is gone with its contents at the end of the test.
class TemporaryFolder {
  public:
    TemporaryFolder();
    ~TemporaryFolder();
    TemporaryFolder(const TemporaryFolder&) = delete;
    TemporaryFolder& operator=(const TemporaryFolder&) = delete;

    const std::filesystem::path& path() const { return path_; }
    // Writes a file into it and returns where it is.
    std::filesystem::path write(const std::string& name, const std::string& content) const;

  private:
    std::filesystem::path path_;
};

using TagList = std::vector<std::pair<std::string, std::string>>;

class MapBuilder {
  public:
    explicit MapBuilder(LonLat origin = {-33.0, 46.0}) : frame_(origin) {}

    // Elements get ids as they come: nodes from 1, ways from 1001, relations from 5001. They are returned.
    long node(Point at, const TagList& tags);
    long line(const std::vector<Point>& points, const TagList& tags);
    long area(const std::vector<Point>& points, const TagList& tags);
    long relation(const std::vector<std::pair<long, std::string>>& ways, const TagList& tags);
    // A straight hole with a white tee around its start and a green of 12 m radius and a pin at its end.
    void hole(const std::string& ref, Point tee, Point pin, const TagList& more = {});

    LonLat lonlat(Point at) const { return frame_.to_lonlat(at); }
    std::string osm() const;
    MapData read() const;
    Course assemble(const CourseRequest& request = {}) const;

  private:
    std::string refs(const std::vector<Point>& points, bool closed);

    PlaneFrame frame_;
    std::string nodes_;
    std::string ways_;
    std::string relations_;
    long next_node_ = 1;
    long next_way_ = 1001;
    long next_relation_ = 5001;
};

// Hole 1 of 300 m to the north; the plane of the hole is that of the map.
MapBuilder straight_hole();

std::vector<Point> rectangle(Point centre, double width, double height);
std::vector<Point> disc(Point centre, double radius);

const MapAssumptions& assumptions();

// The findings of this code.
std::vector<Finding> findings_of(const std::vector<Finding>& findings, const std::string& code);
bool has(const std::vector<Finding>& findings, const std::string& code, Severity severity);
const Hole& hole_of(const Course& course, const std::string& ref);
// The message of the InputError that reading or assembling the file throws; empty when it throws none.
std::string error_reading(const std::filesystem::path& file, const CourseRequest& request = {});

}  // namespace landwidth::test
