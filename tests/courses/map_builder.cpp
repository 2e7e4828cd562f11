#include "tests/courses/map_builder.hpp"

#include <array>
#include <atomic>
#include <cmath>
#include <cstdio>
#include <fstream>
#include <numbers>
#include <random>
#include <stdexcept>

#include "geometry/error.hpp"
#include "geometry/units.hpp"

namespace landwidth::test {

namespace {

std::string escaped(const std::string& text) {
    std::string result;
    for (const char c : text) {
        if (c == '&') {
            result += "&amp;";
        } else if (c == '"') {
            result += "&quot;";
        } else if (c == '<') {
            result += "&lt;";
        } else {
            result += c;
        }
    }
    return result;
}

std::string tag_elements(const TagList& tags) {
    std::string text;
    for (const auto& [key, value] : tags)
        text += "<tag k=\"" + escaped(key) + "\" v=\"" + escaped(value) + "\"/>";
    return text;
}

}  // namespace

TemporaryFolder::TemporaryFolder() {
    static std::atomic<int> count{0};
    const std::string name =
        "landwidth-test-" + std::to_string(std::random_device{}()) + "-" + std::to_string(count++);
    path_ = std::filesystem::temp_directory_path() / name;
    std::filesystem::create_directories(path_);
}

TemporaryFolder::~TemporaryFolder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
}

std::filesystem::path TemporaryFolder::write(const std::string& name, const std::string& content) const {
    std::filesystem::path file = path_ / name;
    std::filesystem::create_directories(file.parent_path());
    std::ofstream(file, std::ios::binary) << content;
    return file;
}

std::string MapBuilder::refs(const std::vector<Point>& points, bool closed) {
    std::string text;
    const long first = next_node_;
    for (const Point point : points)
        text += "<nd ref=\"" + std::to_string(node(point, {})) + "\"/>";
    if (closed) text += "<nd ref=\"" + std::to_string(first) + "\"/>";
    return text;
}

long MapBuilder::node(Point at, const TagList& tags) {
    const LonLat place = frame_.to_lonlat(at);
    std::array<char, 96> head{};
    std::snprintf(head.data(), head.size(), "<node id=\"%ld\" lat=\"%.9f\" lon=\"%.9f\">", next_node_,
                  place.lat_deg, place.lon_deg);
    nodes_ += head.data() + tag_elements(tags) + "</node>\n";
    return next_node_++;
}

long MapBuilder::line(const std::vector<Point>& points, const TagList& tags) {
    ways_ += "<way id=\"" + std::to_string(next_way_) + "\">" + refs(points, false) + tag_elements(tags) +
             "</way>\n";
    return next_way_++;
}

long MapBuilder::area(const std::vector<Point>& points, const TagList& tags) {
    ways_ += "<way id=\"" + std::to_string(next_way_) + "\">" + refs(points, true) + tag_elements(tags) +
             "</way>\n";
    return next_way_++;
}

long MapBuilder::relation(const std::vector<std::pair<long, std::string>>& ways, const TagList& tags) {
    relations_ += "<relation id=\"" + std::to_string(next_relation_) + "\">";
    for (const auto& [way, role] : ways)
        relations_ += "<member type=\"way\" ref=\"" + std::to_string(way) + "\" role=\"" + role + "\"/>";
    relations_ += tag_elements(tags) + "</relation>\n";
    return next_relation_++;
}

void MapBuilder::hole(const std::string& ref, Point tee, Point pin, const TagList& more) {
    TagList tags{{"golf", "hole"}};
    if (!ref.empty()) tags.emplace_back("ref", ref);
    tags.insert(tags.end(), more.begin(), more.end());
    line({tee, pin}, tags);
    area(rectangle(tee, 10.0, 10.0), {{"golf", "tee"}, {"tee", "white"}});
    area(disc(pin, 12.0), {{"golf", "green"}});
    node(pin, {{"golf", "pin"}});
}

std::string MapBuilder::osm() const {
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<osm version=\"0.6\">\n" + nodes_ + ways_ +
           relations_ + "</osm>\n";
}

MapData MapBuilder::read() const {
    const TemporaryFolder folder;
    return read_map(folder.write("built.osm", osm()));
}

Course MapBuilder::assemble(const CourseRequest& request) const {
    return assemble_course(read(), request, assumptions());
}

MapBuilder straight_hole() {
    MapBuilder map;
    map.hole("1", {0, 0}, {0, 300});
    return map;
}

std::vector<Point> rectangle(Point centre, double width, double height) {
    const double x = 0.5 * width;
    const double y = 0.5 * height;
    return {{centre.x - x, centre.y - y},
            {centre.x + x, centre.y - y},
            {centre.x + x, centre.y + y},
            {centre.x - x, centre.y + y}};
}

std::vector<Point> disc(Point centre, double radius) {
    std::vector<Point> points;
    for (int i = 0; i < 24; ++i) {
        const double turn = 2.0 * std::numbers::pi * i / 24.0;
        points.push_back({centre.x + radius * std::cos(turn), centre.y + radius * std::sin(turn)});
    }
    return points;
}

const MapAssumptions& assumptions() {
    static const MapAssumptions values{.stream_width_m = 2.0,
                                       .ditch_width_m = 1.5,
                                       .river_width_m = 10.0,
                                       .tree_radius_m = 4.0,
                                       .tree_height_m = 12.0,
                                       .scrub_height_m = 3.0,
                                       .building_height_m = 6.0,
                                       .storey_height_m = 3.0,
                                       .out_of_bounds_depth_m = 150.0,
                                       .hole_margin_m = 180.0,
                                       .snap_m = 40.0,
                                       .par4_from_m = Yards{250.0}.metres(),
                                       .par5_from_m = Yards{470.0}.metres(),
                                       .par6_from_m = Yards{690.0}.metres()};
    return values;
}

std::vector<Finding> findings_of(const std::vector<Finding>& findings, const std::string& code) {
    std::vector<Finding> found;
    for (const Finding& finding : findings) {
        if (finding.code == code) found.push_back(finding);
    }
    return found;
}

bool has(const std::vector<Finding>& findings, const std::string& code, Severity severity) {
    for (const Finding& finding : findings) {
        if (finding.code == code && finding.severity == severity) return true;
    }
    return false;
}

const Hole& hole_of(const Course& course, const std::string& ref) {
    for (const Hole& hole : course.holes) {
        if (hole.ref == ref) return hole;
    }
    throw std::runtime_error("the course has no hole " + ref);
}

std::string error_reading(const std::filesystem::path& file, const CourseRequest& request) {
    try {
        assemble_course(read_map(file), request, assumptions());
    } catch (const InputError& error) {
        return error.what();
    }
    return {};
}

}  // namespace landwidth::test
