#include "planner/reports/build_picture.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "planner/reports/build_figures.hpp"
#include "planner/reports/build_words.hpp"
#include "planner/reports/html_text.hpp"
#include "planner/reports/svg_writing.hpp"

namespace landwidth {
namespace {

constexpr double width_px = 720.0;
constexpr double edge_px = 14.0;
constexpr double head_room_px = 40.0;
constexpr double row_px = 112.0;
constexpr double shaft_px = 44.0;  // height of the shaft's line in its row
constexpr double mark_px = 9.0;

class Drawing {
  public:
    explicit Drawing(const BuildChange& change) : change_(change) {
        const double longest_m = std::max(change.before.length_m, change.after.length_m);
        px_per_m_ = (width_px - 2.0 * edge_px - head_room_px) / longest_m;
    }

    std::string html() const {
        const bool both = weights_of(change_.before).swing_weight.moment_kg_m !=
                              weights_of(change_.after).swing_weight.moment_kg_m ||
                          change_.before.length_m != change_.after.length_m;
        const double height_px = both ? 2.0 * row_px : row_px;
        std::string svg = fmt::format(
            "<figure class=\"club\">\n<div class=\"scroll\" tabindex=\"0\"><svg class=\"club-balance\" "
            "viewBox=\"0 0 {} {}\" role=\"img\" "
            "aria-label=\"The club on its side: butt to the left, head to the right, with the balance points "
            "of "
            "its parts\">\n",
            px(width_px), px(height_px));
        svg += club("as it is", change_.before, 0.0);
        if (both) svg += club("changed", change_.after, row_px);
        return svg +
               "</svg></div>\n<figcaption class=\"note\">Butt left, to scale along the length. Dots: where "
               "grip, "
               "shaft and head balance, the larger the heavier. Open triangle: the fulcrum of the "
               "swing-weight "
               "scale, 14 in from the butt. Filled triangle: where the whole club balances.</figcaption>\n"
               "</figure>\n";
    }

  private:
    double x_of(double from_butt_m) const { return edge_px + px_per_m_ * from_butt_m; }

    static std::string triangle(std::string_view css_class, double x, double y) {
        return path_element(css_class,
                            path_data({{x, y}, {x - mark_px, y + 15.0}, {x + mark_px, y + 15.0}}, true));
    }
    static std::string dot(double x, double y, double kg) {
        // By area.
        constexpr double px_per_root_kg = 16.0;
        return fmt::format("<circle class=\"mass\" cx=\"{}\" cy=\"{}\" r=\"{}\"/>\n", px(x), px(y),
                           px(px_per_root_kg * std::sqrt(kg)));
    }

    std::string club(const std::string& name, const ClubParts& parts, double top) const {
        const double y = top + shaft_px;
        const ClubWeights weights = weights_of(parts);
        const double head_x = x_of(parts.length_m - parts.head_centre_from_end_m);
        const double grip_end = x_of(2.0 * parts.grip_balance_m);
        std::string svg = text_element("club", {{edge_px, top + 12.0}, Anchor::start},
                                       fmt::format("{}, {}", name, inches_text(parts.length_m)));
        svg += path_element("shaft", path_data({{x_of(0.0), y}, {x_of(parts.length_m), y}}, false));
        svg += path_element("grip", path_data({{x_of(0.0), y}, {grip_end, y}}, false));
        svg += fmt::format("<ellipse class=\"head\" cx=\"{}\" cy=\"{}\" rx=\"17\" ry=\"22\"/>\n", px(head_x),
                           px(y));
        svg += dot(x_of(parts.grip_balance_m), y, parts.grip_kg);
        svg += dot(x_of(parts.shaft_balance_share * parts.shaft_length_m), y, parts.shaft_kg);
        svg += dot(head_x, y, parts.head_kg);
        const double foot = y + 4.0;
        svg += triangle("fulcrum", x_of(swing_weight_fulcrum_m), foot);
        svg += text_element("size", {{x_of(swing_weight_fulcrum_m), foot + 28.0}, Anchor::middle},
                            fmt::format("14 in, {}", swing_weight_words(weights.swing_weight)));
        svg += triangle("balance", x_of(weights.balance_m), foot);
        svg += text_element("size", {{x_of(weights.balance_m), foot + 28.0}, Anchor::middle},
                            fmt::format("{:.2f} in, {:.1f} g", shown_inches(weights.balance_m),
                                        shown_grams(weights.total_kg)));
        svg += text_element(
            "size", {{edge_px, foot + 50.0}, Anchor::start},
            fmt::format("{:.0f} kg cm2 about the butt", shown_inertia(inertia_about_butt(parts))));
        return svg;
    }

    const BuildChange& change_;
    double px_per_m_ = 1.0;
};

}  // namespace

std::string build_picture(const BuildChange& change) {
    return Drawing(change).html();
}

std::string_view build_picture_style() {
    return R"css(
figure.club { margin: .6rem 0; }
.club-balance { display: block; width: 100%; min-width: 34rem; max-width: 46rem; height: auto; }
.club-balance .shaft { stroke: #6d7364; stroke-width: 3; }
.club-balance .grip { stroke: #14180f; stroke-width: 11; stroke-linecap: round; }
.club-balance .head { fill: #e4e6dc; stroke: #14180f; stroke-width: 1.2; }
.club-balance .mass { fill: #8c0a4f; stroke: #fff; stroke-width: 1.2; }
.club-balance .fulcrum { fill: #fff; stroke: #14180f; stroke-width: 1.4; }
.club-balance .balance { fill: #14180f; }
.club-balance text { font: 12px system-ui, sans-serif; fill: #14180f; }
.club-balance text.club { font-weight: 700; }
)css";
}

}  // namespace landwidth
