#include "planner/reports/layer_style.hpp"

#include <algorithm>
#include <array>
#include <stdexcept>

namespace landwidth {
namespace {

constexpr std::string_view best_word = "best";
constexpr std::string_view second_word = "second";
constexpr std::string_view other_word = "other";

LayerStyle style_of_lies() {
    LayerStyle style{std::string(lies_layer), "lie", true, false, {}};
    for (const Lie lie : all_lies) {
        const LieStyle& look = lie_style(lie);
        style.categories.push_back({std::string(lie_name(lie)), std::string(look.label), look.stroke,
                                    look.stroke_px, look.edge, look.fill, 1.0, look.pattern, look.ink});
    }
    return style;
}

// The best club solid and heavy, the second dashed, the others thin: told apart without their colours.
LayerStyle style_by_choice(std::string_view layer, bool areas, bool labelled, double px,
                           double fill_opacity) {
    const auto category = [&](std::string_view word, const char* label, std::string_view colour, double width,
                              MapEdge edge) {
        return CategoryStyle{std::string(word), label, colour, width, edge, colour, fill_opacity,
                             MapPattern::none,  colour};
    };
    return {std::string(layer),
            "choice",
            areas,
            labelled,
            {category(best_word, "best club", best_club_colour, px, MapEdge::solid),
             category(second_word, "second club", second_club_colour, 0.75 * px, MapEdge::dashed),
             category(other_word, "other clubs", line_of_play_colour, 0.4 * px, MapEdge::dotted)}};
}

}  // namespace

std::string_view choice_word(std::size_t rank) {
    return rank == 0 ? best_word : rank == 1 ? second_word : other_word;
}

const LayerStyle& layer_style(std::string_view layer) {
    static const std::array<LayerStyle, 4> styles{
        style_of_lies(), style_by_choice(landing_ellipses_layer, true, false, 2.0, 0.12),
        style_by_choice(landing_widths_layer, false, true, 4.0, 0.0),
        style_by_choice(aim_lines_layer, false, true, 2.4, 0.0)};
    const auto found = std::find_if(styles.begin(), styles.end(),
                                    [&](const LayerStyle& style) { return style.layer == layer; });
    if (found == styles.end()) throw std::logic_error("no style for layer " + std::string(layer));
    return *found;
}

const CategoryStyle& category_of(const LayerStyle& style, std::string_view value) {
    const auto found = std::find_if(style.categories.begin(), style.categories.end(),
                                    [&](const CategoryStyle& category) { return category.value == value; });
    if (found == style.categories.end()) throw std::logic_error("no category for " + std::string(value));
    return *found;
}

}  // namespace landwidth
