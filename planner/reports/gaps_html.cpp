#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "planner/reports/display_length.hpp"
#include "planner/reports/gaps_reports.hpp"
#include "planner/reports/html_text.hpp"
#include "planner/reports/page_parts.hpp"
#include "planner/reports/svg_writing.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

constexpr std::string_view gaps_style = R"css(
.gaps { width: auto; font-size: .92rem; }
.gaps td, .gaps th[scope=row] { white-space: nowrap; }
.assumptions { font-size: .85rem; }
figure.carries { margin: .6rem 0; }
.carries svg { display: block; width: 100%; min-width: 34rem; max-width: 48rem; height: auto; }
.carries text { font: 12px system-ui, sans-serif; fill: #14180f; }
.carries text.club { font-weight: 650; }
.carries .grid { stroke: #c9cbbf; stroke-width: .8; }
.carries .shots { stroke: #14180f; stroke-width: 1.4; }
.carries .sure { fill: #dd9fbd; stroke: #8c0a4f; stroke-width: .8; }
.carries .run { stroke: #14180f; stroke-width: 1; stroke-dasharray: 2 2; }
.carries .stop { fill: #fff; stroke: #14180f; stroke-width: 1; }
.carries .slot { fill: #f0e6d2; }
)css";

constexpr double labels_px = 130.0;
constexpr double plot_px = 560.0;
constexpr double edge_px = 20.0;
constexpr double row_px = 24.0;
constexpr double top_px = 10.0;
constexpr double axis_px = 24.0;
constexpr double grid_step = 20.0;  // in the units shown

class Picture {
  public:
    explicit Picture(const GapsView& view) : view_(view) {
        low_ = 1e9;
        for (const CarriedClub& club : view.gaps.clubs) {
            low_ = std::min(low_, shown(club.carry_m - club.carry_sd_m));
            high_ = std::max({high_, shown(club.total_m), shown(club.carry_m + club.carry_sd_m)});
        }
        low_ = grid_step * std::floor(low_ / grid_step);
        high_ = grid_step * std::ceil(high_ / grid_step);
    }

    std::string html() const {
        const double height = bottom() + axis_px;
        std::string svg = fmt::format(
            "<figure class=\"carries\">\n<div class=\"scroll\" tabindex=\"0\"><svg viewBox=\"0 0 {} {}\" "
            "role=\"img\" aria-label=\"Carry of every club along one scale\">\n",
            px(labels_px + plot_px + edge_px), px(height));
        svg += slot() + grid();
        for (std::size_t i = 0; i < view_.gaps.clubs.size(); ++i)
            svg += row(i);
        return svg +
               fmt::format(
                   "</svg></div>\n<figcaption class=\"note\">Carry in {}. The bar: 90 % of what the recorded "
                   "shots leave open about the mean carry. The line through it: one standard deviation of "
                   "single "
                   "usual shots to either side. The dotted line: the run, to the ring.{}</figcaption>\n"
                   "</figure>\n",
                   view_.units == DisplayUnits::yards ? "yards" : "metres",
                   has_slot() ? " The shaded band: where a second tee club would carry." : "");
    }

  private:
    double shown(double metres) const { return in_display_units(metres, view_.units); }
    double x_of(double in_units) const { return labels_px + plot_px * (in_units - low_) / (high_ - low_); }
    double x_of_metres(double metres) const { return x_of(shown(metres)); }
    double bottom() const { return top_px + row_px * static_cast<double>(view_.gaps.clubs.size()); }
    bool has_slot() const { return view_.gaps.slot && view_.gaps.slot->has_room; }

    std::string slot() const {
        if (!has_slot()) return {};
        const double from = x_of_metres(view_.gaps.slot->fills_m.low);
        return fmt::format("<rect class=\"slot\" x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\"/>\n", px(from),
                           px(top_px), px(x_of_metres(view_.gaps.slot->fills_m.high) - from),
                           px(bottom() - top_px));
    }
    std::string grid() const {
        std::string svg;
        for (double at = low_; at < high_ + 0.5; at += grid_step) {
            svg += path_element("grid", path_data({{x_of(at), top_px}, {x_of(at), bottom()}}, false));
            svg += text_element("axis", {{x_of(at), bottom() + 12.0}, Anchor::middle},
                                fmt::format("{:.0f}", at));
        }
        return svg;
    }
    std::string row(std::size_t i) const {
        const CarriedClub& club = view_.gaps.clubs[i];
        const double y = top_px + row_px * (static_cast<double>(i) + 0.5);
        const double low = x_of_metres(club.carry_90_m.low);
        std::string svg = text_element("club", {{4.0, y}, Anchor::start},
                                       name_text(view_.golfer.clubs.at(club.club).name, 16));
        svg += path_element(
            "run",
            path_data({{x_of_metres(club.carry_m), y + 6.0}, {x_of_metres(club.total_m), y + 6.0}}, false));
        svg += fmt::format("<rect class=\"sure\" x=\"{}\" y=\"{}\" width=\"{}\" height=\"6\"/>\n", px(low),
                           px(y - 3.0), px(std::max(x_of_metres(club.carry_90_m.high) - low, 1.5)));
        svg += path_element("shots", path_data({{x_of_metres(club.carry_m - club.carry_sd_m), y},
                                                {x_of_metres(club.carry_m + club.carry_sd_m), y}},
                                               false));
        return svg + fmt::format("<circle class=\"stop\" cx=\"{}\" cy=\"{}\" r=\"2.6\"/>\n",
                                 px(x_of_metres(club.total_m)), px(y + 6.0));
    }

    const GapsView& view_;
    double low_ = 0.0;
    double high_ = 0.0;
};

}  // namespace

std::string gaps_html(const GapsView& view) {
    return document_html(gaps_document(view, Picture(view).html()), gaps_style,
                         details("Assumptions", assumptions_table(view.gaps.assumptions)));
}

}  // namespace landwidth
