#include "planner/reports/pattern_signs.hpp"

#include <fmt/format.h>

#include <array>
#include <string_view>
#include <vector>

#include "planner/reports/map_palette.hpp"
#include "planner/reports/svg_writing.hpp"

namespace landwidth {
namespace {

constexpr double mark_px = 4.6;

struct Sign {
    std::string_view ink;
    std::string_view dashes;
};

// Dark enough for white paper, apart in lightness and hue for the colour-blind; the order is that of the
// marks.
constexpr std::array<Sign, most_pictured> signs{
    {{best_club_colour, "none"}, {second_club_colour, "7 3"}, {"#9a5a00", "2 2.5"}, {"#1d6b52", "10 3 2 3"}}};

// Circle, square, triangle, diamond: corners in units of mark_px.
std::vector<Point> mark_outline(std::size_t sign, Point at) {
    static const std::array<std::vector<Point>, most_pictured> outlines{{
        {{1.0, 0.0},
         {0.87, 0.5},
         {0.5, 0.87},
         {0.0, 1.0},
         {-0.5, 0.87},
         {-0.87, 0.5},
         {-1.0, 0.0},
         {-0.87, -0.5},
         {-0.5, -0.87},
         {0.0, -1.0},
         {0.5, -0.87},
         {0.87, -0.5}},
        {{-0.9, -0.9}, {0.9, -0.9}, {0.9, 0.9}, {-0.9, 0.9}},
        {{0.0, -1.2}, {1.1, 0.8}, {-1.1, 0.8}},
        {{0.0, -1.3}, {1.3, 0.0}, {0.0, 1.3}, {-1.3, 0.0}},
    }};
    std::vector<Point> outline;
    for (const Point corner : outlines.at(sign))
        outline.push_back(at + mark_px * corner);
    return outline;
}

}  // namespace

std::string pattern_mark(std::size_t club, Point at, bool mishit) {
    std::string svg = fmt::format("<path class=\"shot p{}{}\" d=\"{}\"/>\n", club, mishit ? " missed" : "",
                                  path_data(mark_outline(club, at), true));
    if (!mishit) return svg;
    const double arm = 1.6 * mark_px;
    for (const double turn : {1.0, -1.0})
        svg += fmt::format("<path class=\"cross p{}\" d=\"{}\"/>\n", club,
                           path_data({at + Point{-arm, -turn * arm}, at + Point{arm, turn * arm}}, false));
    return svg;
}

std::string pattern_swatch(std::size_t club) {
    return fmt::format(
        "<svg class=\"swatch patterns\" width=\"44\" height=\"14\" viewBox=\"0 0 44 14\" "
        "aria-hidden=\"true\"><path class=\"outer p{}\" d=\"M0 7l28 0\"/>{}</svg>",
        club, pattern_mark(club, {37.0, 7.0}, false));
}

std::string pattern_picture_style() {
    std::string css = R"css(
figure.patterns { margin: .6rem 0 1rem; break-inside: avoid; }
figure.patterns > svg { display: block; width: 100%; max-width: 46rem; max-height: 52rem; }
svg.patterns text { font: 13px system-ui, sans-serif; fill: #14180f; unicode-bidi: plaintext; }
svg.patterns text.axis { font-size: 12px; fill: #55594f; }
svg.patterns text.bold { font-weight: 700; fill: #14180f; }
svg.patterns text.club { font-size: 15px; font-weight: 700; }
.patterns .ground { fill: #f8f9f4; stroke: #55594f; stroke-width: .8; }
.patterns .grid { fill: none; stroke: #dcdfd2; stroke-width: .7; }
.patterns .grid.bold { stroke: #8d9283; stroke-width: 1; }
.patterns .aim, .patterns .scale { fill: none; stroke: #14180f; stroke-width: 1.3; }
.patterns .arrow { fill: #14180f; }
.patterns .outer { fill: none; stroke-width: 2; }
.patterns .inner { stroke-width: 1.1; fill-opacity: .1; }
.patterns .tie { fill: none; stroke-width: .8; }
.patterns .shot { stroke-width: .8; }
.patterns .cross { fill: none; stroke-width: 1.2; }
@media print { figure.patterns > svg { max-width: 150mm; max-height: 106mm; } }
)css";
    for (std::size_t i = 0; i < signs.size(); ++i)
        css += fmt::format(
            ".patterns .outer.p{0},.patterns .inner.p{0}{{stroke:{1};stroke-dasharray:{2}}}\n"
            ".patterns .inner.p{0}{{fill:{1}}}\n.patterns .tie.p{0},.patterns .cross.p{0}{{stroke:{1}}}\n"
            ".patterns .shot.p{0}{{fill:{1};stroke:#fff}}\n.patterns "
            ".shot.missed.p{0}{{fill:#fff;stroke:{1}}}\n"
            "svg.patterns text.club.p{0}{{fill:{1}}}\n",
            i, signs[i].ink, signs[i].dashes);
    return css;
}

}  // namespace landwidth
