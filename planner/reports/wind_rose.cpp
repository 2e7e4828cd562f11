#include "planner/reports/wind_rose.hpp"

#include <fmt/format.h>

#include <cmath>
#include <numbers>

#include "planner/reports/html_text.hpp"
#include "planner/reports/svg_writing.hpp"
#include "planner/reports/wind_card_words.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

constexpr double size_px = 116.0;
constexpr Point centre{size_px / 2.0, size_px / 2.0};
constexpr double inner_px = 13.0;
constexpr double outer_px = 41.0;
constexpr double label_px = 50.0;
constexpr double half_sector_rad = std::numbers::pi / wind_card_directions;

// Clockwise from the top of the page.
Point at(double angle_rad, double radius_px) {
    return centre + radius_px * Point{std::sin(angle_rad), -std::cos(angle_rad)};
}

std::string_view sector_class(WindEffect effect) {
    switch (effect) {
        case WindEffect::none:
            break;
        case WindEffect::toss_up:
        case WindEffect::toss_up_of_other:
            return "ws either";
        case WindEffect::change:
            return "ws changed";
        case WindEffect::settles:
            return "ws settled";
    }
    return "ws";
}

std::string sector(std::string_view css_class, double angle_rad) {
    const double from = angle_rad - half_sector_rad;
    const double to = angle_rad + half_sector_rad;
    const Point a = at(from, inner_px);
    const Point b = at(from, outer_px);
    const Point c = at(to, outer_px);
    const Point d = at(to, inner_px);
    return path_element(
        css_class, fmt::format("M{} {}L{} {}A{} {} 0 0 1 {} {}L{} {}A{} {} 0 0 0 {} {}z", px(a.x), px(a.y),
                               px(b.x), px(b.y), px(outer_px), px(outer_px), px(c.x), px(c.y), px(d.x),
                               px(d.y), px(inner_px), px(inner_px), px(a.x), px(a.y)));
}

std::string swatch(std::string_view css_class, std::string_view meaning) {
    return fmt::format(
        "<li><svg class=\"swatch\" width=\"26\" height=\"13\" aria-hidden=\"true\"><rect class=\"{}\" "
        "x=\"1\" "
        "y=\"1\" width=\"24\" height=\"11\"/></svg><span>{}</span></li>\n",
        css_class, meaning);
}

}  // namespace

std::string wind_rose(const WindCardView& view, std::size_t hole, const std::string& id) {
    const Hole& on_map = view.course.holes.at(hole);
    const WindCardHole& card = view.card.holes.at(hole);
    const double play_rad = plane_bearing(on_map.line.direction_at(0.0));
    std::string sectors;
    std::string labels;
    for (std::size_t direction = 0; direction < wind_card_directions; ++direction) {
        const double angle_rad = wind_card_bearing(direction).radians - play_rad;
        const WindEffect effect = wind_effect(card, direction);
        sectors += sector(sector_class(effect), angle_rad);
        labels += text_element(effect == WindEffect::change ? "wl changed" : "wl",
                               {at(angle_rad, label_px), Anchor::middle}, wind_card_direction(direction));
    }
    // The way of play, from the tee to the flag.
    const std::string play = path_element(
        "wp", path_data({at(std::numbers::pi, 9.0), at(0.0, 9.0)}, false) +
                  path_data({at(0.0, 9.0) + Point{-3.5, 6.0}, at(0.0, 9.0), at(0.0, 9.0) + Point{3.5, 6.0}},
                            false));
    std::string words;
    for (const std::string& change : change_words(view, card))
        words += (words.empty() ? "" : ", ") + change;
    if (words.empty()) words = "no wind changes the club";
    return fmt::format(
        "<svg class=\"wind-rose\" role=\"img\" aria-labelledby=\"{0}-t\" viewBox=\"0 0 {1:.0f} {1:.0f}\" "
        "width=\"{1:.0f}\" height=\"{1:.0f}\">\n<title id=\"{0}-t\">Hole {2}: {3} in still air, "
        "{4}</title>\n{5}{6}{7}</svg>\n",
        id, size_px, escaped(name_text(on_map.ref, 20)), escaped(name_text(wind_card_club(view, card.still))),
        escaped(words), sectors, play, labels);
}

std::string_view wind_rose_patterns() {
    return "<svg width=\"0\" height=\"0\" style=\"position:absolute\" aria-hidden=\"true\"><defs>\n<pattern "
           "id=\"toss-up\" width=\"5\" height=\"5\" patternUnits=\"userSpaceOnUse\"><rect width=\"5\" "
           "height=\"5\" fill=\"#fff\"/><path d=\"M-1 1l2-2M0 5l5-5M4 6l2-2\" stroke=\"#444\" "
           "stroke-width=\"1\"/></pattern>\n</defs></svg>\n";
}

std::string_view wind_rose_style() {
    return R"css(
.ws { fill: #fff; stroke: #000; stroke-width: .8; }
.ws.either { fill: url(#toss-up); }
.ws.changed { fill: #2d332b; }
.ws.settled { fill: #b9bdb4; }
.wp { fill: none; stroke: #000; stroke-width: 1.4; }
.wind-rose { flex: none; }
.wind-rose text { font: 9px system-ui, sans-serif; fill: #14180f; }
.wind-rose text.changed { font-weight: 700; }
)css";
}

std::string wind_rose_legend() {
    return "<ul class=\"legend\" aria-label=\"Signs of the wind roses\">\n" +
           swatch("ws", "the club of still air") + swatch("ws changed", "another club") +
           swatch("ws settled", "settles a toss-up of still air for another club") +
           swatch("ws either", "a toss-up of two clubs") + "</ul>\n";
}

}  // namespace landwidth
