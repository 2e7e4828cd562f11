#include "planner/reports/svg_writing.hpp"

#include <fmt/format.h>

#include <cmath>

#include "planner/reports/html_text.hpp"

namespace landwidth {
namespace {

long tenths(double value) {
    return std::lround(10.0 * value);
}

std::string from_tenths(long value) {
    if (value % 10 == 0) return fmt::format("{}", value / 10);
    const char* sign = value < 0 ? "-" : "";
    const long size = std::labs(value);
    return size < 10 ? fmt::format("{}.{}", sign, size) : fmt::format("{}{}.{}", sign, size / 10, size % 10);
}

// Steps are taken between rounded points, so that rounding does not add up along a path.
void append_path(std::string& out, const std::vector<Point>& points, bool closed) {
    long last_x = 0;
    long last_y = 0;
    bool first = true;
    for (const Point p : points) {
        const long x = tenths(p.x);
        const long y = tenths(p.y);
        if (!first && x == last_x && y == last_y) continue;
        if (first) {
            out += fmt::format("M{} {}l", from_tenths(x), from_tenths(y));
        } else {
            if (out.back() != 'l') out += ' ';
            out += fmt::format("{} {}", from_tenths(x - last_x), from_tenths(y - last_y));
        }
        first = false;
        last_x = x;
        last_y = y;
    }
    // "l" without a step is no path data; a single point draws nothing.
    if (!out.empty() && out.back() == 'l') out += "0 0";
    if (closed && !first) out += 'z';
}

double sheet_area(const std::vector<Point>& ring) {
    double twice = 0.0;
    for (std::size_t i = 0; i < ring.size(); ++i)
        twice += cross(ring[i], ring[(i + 1) % ring.size()]);
    return std::abs(twice) / 2.0;
}

constexpr double speck_px2 = 1.5;

}  // namespace

std::string px(double value) {
    return from_tenths(tenths(value));
}

std::string path_data(const std::vector<Point>& sheet_points, bool closed) {
    std::string out;
    append_path(out, sheet_points, closed);
    return out;
}

std::string ring_data(const Ring& ring, const MapSheet& sheet) {
    std::vector<Point> points;
    points.reserve(ring.size());
    for (const Point p : ring)
        points.push_back(sheet.to_sheet(p));
    if (points.size() > 1 && points.front() == points.back()) points.pop_back();
    return sheet_area(points) < speck_px2 ? std::string() : path_data(points, true);
}

std::string path_data(const Region& region, const MapSheet& sheet) {
    std::string out;
    for (const PolygonRings& polygon : region.polygons()) {
        out += ring_data(polygon.outer, sheet);
        for (const Ring& inner : polygon.inners)
            out += ring_data(inner, sheet);
    }
    return out;
}

std::string path_element(std::string_view css_class, std::string_view data) {
    return data.empty() ? std::string() : fmt::format("<path class=\"{}\" d=\"{}\"/>\n", css_class, data);
}

std::string text_element(std::string_view css_class, const LabelSpot& spot, std::string_view text) {
    const char* anchor = spot.anchor == Anchor::start ? "" : spot.anchor == Anchor::end ? " e" : " m";
    // The baseline lies about a third of the font size below the middle of the figures.
    return fmt::format("<text class=\"{}{}\" x=\"{}\" y=\"{}\" dy=\".35em\">{}</text>\n", css_class, anchor,
                       px(spot.at.x), px(spot.at.y), escaped(text));
}

}  // namespace landwidth
