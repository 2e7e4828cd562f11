// The options of every command that reads a course: the file, which course on it, which tee, which holes.
#pragma once

#include <CLI/App.hpp>
#include <filesystem>
#include <string>
#include <vector>

#include "courses/course.hpp"
#include "courses/map_assumptions.hpp"

namespace landwidth {

class CourseOptions {
  public:
    void setup(CLI::App& app);
    // Reads the map and puts the course together. Holes that cannot be planned are left out; see
    // Course::findings.
    Course read(const MapAssumptions& assumptions) const;

  private:
    std::filesystem::path file_;
    std::vector<std::string> names_;
    std::string tee_;
    std::string holes_;
};

// "1-3,7,12b": refs, ranges of numbers written out. Throws UsageError.
std::vector<std::string> hole_refs(const std::string& text);

}  // namespace landwidth
