#include "planner/commands/course_options.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>

#include "courses/assembly/course_assembly.hpp"
#include "courses/ground/ground_heights.hpp"
#include "courses/reading/tag_mapping.hpp"
#include "geometry/error.hpp"

namespace landwidth {

namespace {

constexpr int most_holes = 200;

std::optional<int> whole_number(std::string_view text) {
    int value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc{} || end != text.data() + text.size()) return std::nullopt;
    return value;
}

void append_refs(const std::string& part, std::vector<std::string>& refs) {
    const std::size_t dash = part.find('-');
    if (dash == std::string::npos) {
        refs.push_back(part);
        return;
    }
    const auto first = whole_number(std::string_view(part).substr(0, dash));
    const auto last = whole_number(std::string_view(part).substr(dash + 1));
    if (!first || !last || *first > *last || *last - *first >= most_holes)
        throw UsageError(fmt::format("--holes {}: expected hole numbers and ranges such as 1-9,12", part));
    for (int ref = *first; ref <= *last; ++ref)
        refs.push_back(std::to_string(ref));
}

}  // namespace

std::vector<std::string> hole_refs(const std::string& text) {
    std::vector<std::string> refs;
    std::size_t start = 0;
    while (start <= text.size() && !text.empty()) {
        const std::size_t comma = std::min(text.find(',', start), text.size());
        const std::string part = text.substr(start, comma - start);
        if (part.empty())
            throw UsageError(
                fmt::format("--holes {}: expected hole numbers and ranges such as 1-9,12", text));
        append_refs(part, refs);
        start = comma + 1;
    }
    return refs;
}

void CourseOptions::setup(CLI::App& app) {
    app.add_option("COURSE", file_, file_help)->required();
    setup_choice(app);
}

void CourseOptions::setup_choice(CLI::App& app) {
    app.add_option("--course", names_,
                   "name of the course where the map has several; again for a second nine")
        ->type_name("NAME")
        ->allow_extra_args(false);
    app.add_option(
           "--tags", tags_,
           "what the layers and columns of a map without golf tags mean: a file of lines such as\n"
           "type lake = golf=water_hazard, or for the words in them layer or a column's name; repeatable")
        ->type_name("FILE|COLUMN")
        ->allow_extra_args(false);
    app.add_option("--tee", tee_, "tee to play from, e.g. white (default: where the hole's line starts)")
        ->type_name("NAME");
    app.add_option("--holes", holes_, "only these holes, e.g. 1-9,12")->type_name("REFS");
    app.add_option("--ground", ground_,
                   "heights of the ground: any raster GDAL reads, in metres or feet (default: flat)")
        ->type_name("FILE");
}

std::string_view CourseOptions::given() const {
    return !names_.empty()    ? "--course"
           : !tags_.empty()   ? "--tags"
           : !tee_.empty()    ? "--tee"
           : !holes_.empty()  ? "--holes"
           : !ground_.empty() ? "--ground"
                              : "";
}

MapData CourseOptions::read_map(const std::filesystem::path& file) const {
    return landwidth::read_map(file, tag_mapping(tags_));
}

Course CourseOptions::assemble(const MapData& map, const MapAssumptions& assumptions) const {
    const std::vector<std::string> refs = hole_refs(holes_);
    Course course = assemble_course(map, {names_, tee_, refs}, assumptions);
    if (!ground_.empty()) lay_ground_heights(course, ground_);
    return course;
}

Course CourseOptions::read(const std::filesystem::path& file, const MapAssumptions& assumptions) const {
    // A slip in --holes is told before a large map is read.
    hole_refs(holes_);
    return assemble(read_map(file), assumptions);
}

}  // namespace landwidth
