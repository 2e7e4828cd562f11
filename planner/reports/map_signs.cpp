#include "planner/reports/map_signs.hpp"

#include <fmt/format.h>

#include "planner/reports/display_length.hpp"
#include "planner/reports/hole_map.hpp"
#include "planner/reports/html_text.hpp"
#include "planner/reports/map_palette.hpp"
#include "planner/reports/svg_writing.hpp"

namespace landwidth {
namespace {

// The tile of a hatching, drawn over the lie's fill.
struct Tile {
    int width;
    int height;
    std::string_view marks;
};

Tile tile_of(MapPattern pattern) {
    switch (pattern) {
        case MapPattern::tufts:
            return {14, 12, "<path d=\"M3 4v-2.4M5 4v-1.7M10 10v-2.4M12 10v-1.7\"/>"};
        case MapPattern::stipple:
            return {4, 4, "<path stroke-linecap=\"round\" stroke-width=\"1.25\" d=\"M1 1h.01M3 3h.01\"/>"};
        case MapPattern::crowns:
            return {9, 8,
                    "<circle cx=\"2.6\" cy=\"2.4\" r=\"1.7\"/><circle cx=\"7.1\" cy=\"6.2\" r=\"1.4\"/>"};
        case MapPattern::waves:
            return {10, 5, "<path stroke-width=\".9\" d=\"M0 2.5q2.5-2.6 5 0t5 0\"/>"};
        case MapPattern::horizontal:
            return {6, 4, "<path stroke-width=\".9\" d=\"M0 2h6\"/>"};
        case MapPattern::diagonal:
            return {6, 6, "<path d=\"M-1-1l8 8M-1 5l2 2M5-1l2 2\"/>"};
        case MapPattern::none:
            break;
    }
    return {4, 4, ""};
}

std::string_view dashes(MapEdge edge) {
    switch (edge) {
        case MapEdge::dashed:
            return "stroke-dasharray:5 2.5;";
        case MapEdge::dotted:
            return "stroke-dasharray:.1 3;stroke-linecap:round;";
        case MapEdge::solid:
            break;
    }
    return "";
}

std::string swatch(std::string_view inside) {
    return fmt::format("<svg class=\"swatch\" width=\"26\" height=\"13\" aria-hidden=\"true\">{}</svg>",
                       inside);
}

std::string entry(std::string_view inside, std::string_view meaning) {
    return fmt::format("<li>{}<span>{}</span></li>\n", swatch(inside), meaning);
}

std::string_view surrounding_words(Surrounding::Kind kind) {
    switch (kind) {
        case Surrounding::Kind::building:
            return "building";
        case Surrounding::Kind::road:
            return "road";
        case Surrounding::Kind::path:
            return "path";
        case Surrounding::Kind::other_hole:
            return "green or tees of another hole";
    }
    return "";
}

std::string club_entry(std::string_view css_class, std::string_view name, std::string_view rank) {
    return entry(
        fmt::format("<ellipse class=\"{0}\" cx=\"13\" cy=\"6.5\" rx=\"11.5\" ry=\"5\"/>"
                    "<ellipse class=\"{0} in\" cx=\"13\" cy=\"6.5\" rx=\"5.5\" ry=\"2.3\"/>",
                    css_class),
        fmt::format("{} ({}): aim line; 50 % and 90 % of its usual shots land inside", isolated(name), rank));
}

}  // namespace

std::string_view surrounding_class(Surrounding::Kind kind) {
    switch (kind) {
        case Surrounding::Kind::building:
            return "house";
        case Surrounding::Kind::road:
            return "road";
        case Surrounding::Kind::path:
            return "path";
        case Surrounding::Kind::other_hole:
            return "other";
    }
    return "";
}

std::vector<Point> wind_arrow(Point centre, Point towards) {
    const Point right{-towards.y, towards.x};
    // Along and across, from the notched tail around the tip.
    constexpr std::array<Point, 8> outline{{{-9.0, 0.0},
                                            {-13.0, -4.0},
                                            {2.0, -2.0},
                                            {2.0, -6.0},
                                            {13.0, 0.0},
                                            {2.0, 6.0},
                                            {2.0, 2.0},
                                            {-13.0, 4.0}}};
    std::vector<Point> points;
    for (const Point p : outline)
        points.push_back(centre + p.x * towards + p.y * right);
    return points;
}

std::string map_legend(const MapContents& contents, DisplayUnits units) {
    std::string list = "<ul class=\"legend\" aria-label=\"Signs on this map\">\n";
    list += club_entry("b", contents.best, "best");
    if (!contents.second.empty()) list += club_entry("s", contents.second, "next");
    if (contents.next_shots) {
        list += entry(
            "<path class=\"then\" d=\"M2 6.5h22\"/><circle class=\"ball\" cx=\"24\" cy=\"6.5\" r=\"2.4\"/>",
            "the shots that follow, and where the usual ball lies");
    }
    list += entry("<path class=\"play\" d=\"M0 6.5h26\"/>", "line of play");
    if (contents.landing_width) {
        list += entry("<path class=\"wide\" d=\"M2 6.5h22M2 2.5v8M24 2.5v8\"/>", "landing width");
    }
    if (contents.arcs) {
        list += entry("<path class=\"arc\" d=\"M1 10q12-7 24 0\"/>",
                      fmt::format("{} from the tee", display_unit(units)));
    }
    if (contents.wind) {
        list += entry(path_element("wind", path_data(wind_arrow({13.0, 6.5}, {1.0, 0.0}), true)),
                      "the way the wind blows");
    }
    for (const Lie lie : all_lies) {
        if (!contents.lies[index_of(lie)]) continue;
        list += entry(
            fmt::format("<rect class=\"l{}\" x=\"1\" y=\"1\" width=\"24\" height=\"11\"/>", index_of(lie)),
            lie_style(lie).label);
    }
    for (const Surrounding::Kind kind : contents.surroundings) {
        list += entry(fmt::format("<rect class=\"{}\" x=\"5\" y=\"2\" width=\"16\" height=\"9\"/>",
                                  surrounding_class(kind)),
                      surrounding_words(kind));
    }
    return list + "</ul>\n";
}

std::string map_patterns() {
    std::string svg =
        "<svg width=\"0\" height=\"0\" style=\"position:absolute\" aria-hidden=\"true\"><defs>\n";
    for (const Lie lie : all_lies) {
        const LieStyle& style = lie_style(lie);
        if (style.pattern == MapPattern::none) continue;
        const Tile tile = tile_of(style.pattern);
        svg += fmt::format(
            "<pattern id=\"ground-{0}\" width=\"{1}\" height=\"{2}\" patternUnits=\"userSpaceOnUse\">"
            "<rect width=\"{1}\" height=\"{2}\" fill=\"{3}\"/><g fill=\"none\" stroke=\"{4}\" "
            "stroke-width=\".7\">{5}</g></pattern>\n",
            index_of(lie), tile.width, tile.height, style.fill, style.ink, tile.marks);
    }
    return svg + "</defs></svg>\n";
}

std::string map_style() {
    std::string css;
    for (const Lie lie : all_lies) {
        const LieStyle& style = lie_style(lie);
        const std::string fill = style.pattern == MapPattern::none
                                     ? std::string(style.fill)
                                     : fmt::format("url(#ground-{})", index_of(lie));
        css += fmt::format(".l{}{{fill:{};fill-rule:evenodd;", index_of(lie), fill);
        if (style.stroke_px > 0.0) {
            css += fmt::format("stroke:{};stroke-width:{:g};{}", style.stroke, style.stroke_px,
                               dashes(style.edge));
        }
        css += "}\n";
    }
    css += fmt::format(
        ".b,.s,.then,.case,.play,.arc,.wide,.rim,.pole{{fill:none}}\n"
        ".b{{stroke:{0};stroke-width:1.7}}\n.s{{stroke:{1};stroke-width:1.4;stroke-dasharray:4.5 2.5}}\n"
        ".b.in,.s.in{{stroke-width:1.1}}\n.then{{stroke:{0};stroke-width:1.1;stroke-dasharray:2.5 2}}\n"
        ".ball{{fill:#fff;stroke:{0};stroke-width:1.2}}\n.play{{stroke:{2};stroke-width:1;stroke-dasharray:8 "
        "2.5 1.5 2.5}}\n"
        "text.b,text.then{{fill:{0};stroke:#fff;stroke-dasharray:none}}\ntext.s{{fill:{1};stroke:#fff}}\n",
        best_club_colour, second_club_colour, line_of_play_colour);
    return css;
}

std::string lie_bar(const TeeChoice& choice) {
    constexpr double wide = 100.0;
    // Good to bad, so that the bars of several clubs compare at either end.
    constexpr std::array<Lie, lie_count> order{Lie::green,       Lie::teeing_area,    Lie::fairway,
                                               Lie::rough,       Lie::bunker,         Lie::trees,
                                               Lie::penalty_red, Lie::penalty_yellow, Lie::out_of_bounds};
    std::string svg = fmt::format(
        "<svg class=\"lie-bar\" viewBox=\"0 0 {0:.0f} 12\" width=\"{0:.0f}\" height=\"12\" "
        "aria-hidden=\"true\">",
        wide);
    double x = 0.0;
    for (const Lie lie : order) {
        const double width = wide * choice.lies[index_of(lie)];
        if (width < 0.1) continue;
        svg += fmt::format("<rect class=\"l{}\" x=\"{:.1f}\" width=\"{:.1f}\" height=\"12\"/>", index_of(lie),
                           x, width);
        x += width;
    }
    return svg + "</svg>";
}

}  // namespace landwidth
