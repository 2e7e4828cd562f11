#include "planner/reports/pattern_picture.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <stdexcept>

#include "golfer-profiles/evidence/mishit_chance.hpp"
#include "planner/reports/display_length.hpp"
#include "planner/reports/html_text.hpp"
#include "planner/reports/pattern_signs.hpp"
#include "planner/reports/svg_writing.hpp"
#include "planner/reports/way_words.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

constexpr double outer_share = 0.9;
constexpr double inner_share = 0.5;
constexpr int rim_points = 72;
// A shot this far beyond all ellipses would make them small: it is told and not drawn.
constexpr double farthest_shot_m = 75.0;

// In yards or metres, as the reader has it.
constexpr double fine_step = 10.0;
constexpr double bold_step = 50.0;
constexpr double side_step = 20.0;

constexpr double widest_plot_px = 400.0;
constexpr double tallest_plot_px = 600.0;
constexpr double carry_axis_px = 36.0;
constexpr double side_axis_px = 40.0;
constexpr double top_px = 16.0;
constexpr double labels_px = 212.0;
constexpr double label_gap_px = 42.0;
constexpr std::size_t longest_label = 18;
// Where a pattern is supposed, which its label says: longer names and more to say below them.
constexpr double wide_labels_px = 280.0;
constexpr std::size_t longest_wide_label = 26;

// What is drawn, in display units: carry up, side to the right.
struct Frame {
    double left = 0.0, right = 0.0, near = 0.0, far = 0.0;

    void include(const ShotOffset& place) {
        left = std::min(left, place.side_m);
        right = std::max(right, place.side_m);
        near = std::min(near, place.carry_m);
        far = std::max(far, place.carry_m);
    }
    bool holds(const ShotOffset& place) const {
        return place.side_m >= left && place.side_m <= right && place.carry_m >= near && place.carry_m <= far;
    }
    Frame widened(double by) const { return {left - by, right + by, near - by, far + by}; }
};

class Picture {
  public:
    Picture(const std::vector<PicturedPattern>& patterns, DisplayUnits units, bool explained)
        : patterns_(patterns), units_(units), explained_(explained) {
        if (patterns.empty() || patterns.size() > most_pictured)
            throw std::logic_error("a picture of no pattern, or of too many");
        set_frame();
    }

    std::string html() const {
        const double width = carry_axis_px + plot_width() + (any_supposed() ? wide_labels_px : labels_px);
        const double height = top_px + plot_height() + side_axis_px;
        std::string svg = fmt::format(
            "<svg class=\"patterns\" viewBox=\"0 0 {} {}\" role=\"img\" aria-label=\"Shot patterns seen from "
            "above: {}\">\n",
            px(width), px(height), names());
        svg += grid() + ellipses() + shots() + aim_line() + labels() + scale_bar() + "</svg>\n";
        return "<figure class=\"patterns\">\n" + svg + caption() + "</figure>\n";
    }

  private:
    ShotOffset shown(const ShotOffset& metres) const {
        return {in_display_units(metres.carry_m, units_), in_display_units(metres.side_m, units_)};
    }
    // One, or one for each way.
    std::vector<std::vector<ShotOffset>> rims(const PicturedPattern& pattern, double share) const {
        std::vector<std::vector<ShotOffset>> rims;
        for (const LandingEllipse& ellipse : landing_ellipses(*pattern.club->pattern, share)) {
            std::vector<ShotOffset>& points = rims.emplace_back();
            for (int i = 0; i < rim_points; ++i)
                points.push_back(shown(ellipse.rim(2.0 * std::numbers::pi * i / rim_points)));
        }
        return rims;
    }
    // Of all outer ones together.
    std::vector<ShotOffset> outline(const PicturedPattern& pattern) const {
        std::vector<ShotOffset> all;
        for (const std::vector<ShotOffset>& points : rims(pattern, outer_share))
            all.insert(all.end(), points.begin(), points.end());
        return all;
    }
    static const std::vector<ShotOffset>& shots_of(const PicturedPattern& pattern) {
        static const std::vector<ShotOffset> none;
        return pattern.club->learnt_from ? pattern.club->learnt_from->shots : none;
    }
    void set_frame() {
        const ShotOffset first = shown(patterns_.front().club->pattern->usual.centre);
        Frame ellipses{0.0, 0.0, first.carry_m, first.carry_m};
        for (const PicturedPattern& pattern : patterns_)
            for (const ShotOffset& point : outline(pattern))
                ellipses.include(point);
        const Frame limit = ellipses.widened(in_display_units(farthest_shot_m, units_));
        frame_ = ellipses;
        for (const PicturedPattern& pattern : patterns_)
            for (const ShotOffset& shot : shots_of(pattern)) {
                if (limit.holds(shown(shot))) {
                    frame_.include(shown(shot));
                } else {
                    ++beyond_;
                }
            }
        constexpr double air = 3.0;
        const auto down = [](double value) { return fine_step * std::floor((value - air) / fine_step); };
        const auto up = [](double value) { return fine_step * std::ceil((value + air) / fine_step); };
        frame_ = {down(frame_.left), up(frame_.right), down(frame_.near), up(frame_.far)};
        px_per_unit_ = std::min(widest_plot_px / (frame_.right - frame_.left),
                                tallest_plot_px / (frame_.far - frame_.near));
        // Wide patterns that are not deep: room for their labels all the same.
        while (plot_height() < label_gap_px * static_cast<double>(patterns_.size() + 1))
            frame_.far += fine_step;
    }

    double plot_width() const { return px_per_unit_ * (frame_.right - frame_.left); }
    double plot_height() const { return px_per_unit_ * (frame_.far - frame_.near); }
    Point on_sheet(const ShotOffset& place) const {
        return {carry_axis_px + px_per_unit_ * (place.side_m - frame_.left),
                top_px + px_per_unit_ * (frame_.far - place.carry_m)};
    }
    std::string line(std::string_view css_class, const ShotOffset& from, const ShotOffset& to) const {
        return path_element(css_class, path_data({on_sheet(from), on_sheet(to)}, false));
    }
    static bool is_multiple(double value, double of) {
        return std::abs(value - of * std::round(value / of)) < 0.01;
    }

    std::string names() const {
        std::string text;
        for (const PicturedPattern& pattern : patterns_)
            text += (text.empty() ? "" : ", ") + escaped(name_text(pattern.club->name));
        return text;
    }

    std::string grid() const {
        std::string svg =
            fmt::format("<rect class=\"ground\" x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\"/>\n",
                        px(carry_axis_px), px(top_px), px(plot_width()), px(plot_height()));
        for (double carry = frame_.near; carry < frame_.far + 0.5; carry += fine_step) {
            const bool bold = is_multiple(carry, bold_step);
            svg += line(bold ? "grid bold" : "grid", {carry, frame_.left}, {carry, frame_.right});
            const Point at = on_sheet({carry, frame_.left});
            svg += text_element(bold ? "axis bold" : "axis", {{at.x - 5.0, at.y}, Anchor::end},
                                fmt::format("{:.0f}", carry));
        }
        for (double side = frame_.left; side < frame_.right + 0.5; side += fine_step) {
            const bool bold = is_multiple(side, bold_step);
            svg += line(bold ? "grid bold" : "grid", {frame_.near, side}, {frame_.far, side});
            if (!is_multiple(side, side_step)) continue;
            const Point at = on_sheet({frame_.near, side});
            const bool on_aim = std::abs(side) < 0.5;
            svg += text_element(on_aim || bold ? "axis bold" : "axis", {{at.x, at.y + 11.0}, Anchor::middle},
                                on_aim ? "aim" : fmt::format("{:.0f}", std::abs(side)));
        }
        return svg + side_word(frame_.left, "left") + side_word(frame_.right, "right");
    }
    // Below the numbers of its side, where that is wide enough.
    std::string side_word(double end, std::string_view word) const {
        if (std::abs(end) < side_step) return {};
        const Point at = on_sheet({frame_.near, end / 2.0});
        return text_element("axis", {{at.x, at.y + 26.0}, Anchor::middle},
                            fmt::format("{} {}", display_unit(units_), word));
    }

    std::string aim_line() const {
        const Point top = on_sheet({frame_.far, 0.0});
        return line("aim", {frame_.near, 0.0}, {frame_.far, 0.0}) +
               path_element(
                   "arrow",
                   path_data({top + Point{0.0, -12.0}, top + Point{5.0, 1.0}, top + Point{-5.0, 1.0}}, true));
    }

    std::string ellipses() const {
        std::string svg;
        for (std::size_t i = 0; i < patterns_.size(); ++i)
            for (const double share : {outer_share, inner_share})
                for (const std::vector<ShotOffset>& rim : rims(patterns_[i], share)) {
                    std::vector<Point> points;
                    for (const ShotOffset& point : rim)
                        points.push_back(on_sheet(point));
                    svg += path_element(fmt::format("{} p{}", share == outer_share ? "outer" : "inner", i),
                                        path_data(points, true));
                }
        return svg;
    }

    std::string shots() const {
        std::string svg;
        for (std::size_t i = 0; i < patterns_.size(); ++i) {
            const std::vector<ShotOffset>& landed = shots_of(patterns_[i]);
            for (std::size_t shot = 0; shot < landed.size(); ++shot)
                if (frame_.holds(shown(landed[shot])))
                    svg += pattern_mark(i, on_sheet(shown(landed[shot])), is_mishit(patterns_[i], shot));
        }
        return svg;
    }

    static bool is_mishit(const PicturedPattern& pattern, std::size_t shot) {
        return shot < pattern.mishit_chance.size() && pattern.mishit_chance[shot] > taken_for_mishit;
    }

    // Beside the plot, each tied to the right end of its ellipse; in the order of those ends, so that no two
    // ties cross.
    struct Label {
        std::size_t pattern;
        Point tied_to;
        double middle_px;
    };
    std::vector<Label> placed_labels() const {
        std::vector<Label> labels;
        for (std::size_t i = 0; i < patterns_.size(); ++i) {
            const std::vector<ShotOffset> points = outline(patterns_[i]);
            const Point end = on_sheet(*std::ranges::max_element(points, {}, &ShotOffset::side_m));
            labels.push_back({i, end, end.y});
        }
        std::ranges::stable_sort(labels, {}, [](const Label& label) { return label.tied_to.y; });
        for (std::size_t i = 0; i < labels.size(); ++i) {
            const double least =
                i == 0 ? top_px + 0.5 * label_gap_px : labels[i - 1].middle_px + label_gap_px;
            labels[i].middle_px = std::max(labels[i].middle_px, least);
        }
        double most = top_px + plot_height() - label_gap_px;
        for (std::size_t i = labels.size(); i-- > 0; most -= label_gap_px)
            labels[i].middle_px = std::min(labels[i].middle_px, most);
        return labels;
    }
    std::string labels() const {
        std::string svg;
        const double edge = carry_axis_px + plot_width();
        for (const Label& label : placed_labels()) {
            const PicturedPattern& pattern = patterns_[label.pattern];
            const double y = label.middle_px;
            svg += path_element(
                fmt::format("tie p{}", label.pattern),
                path_data({label.tied_to, {edge + 4.0, y - 8.0}, {edge + 10.0, y - 8.0}}, false));
            svg += pattern_mark(label.pattern, {edge + 17.0, y - 8.0}, false);
            svg += text_element(
                fmt::format("club p{}", label.pattern), {{edge + 26.0, y - 8.0}, Anchor::start},
                name_text(pattern.club->name, any_supposed() ? longest_wide_label : longest_label));
            svg += text_element("size", {{edge + 26.0, y + 8.0}, Anchor::start}, size_words(pattern));
        }
        return svg;
    }
    std::string size_words(const PicturedPattern& pattern) const {
        const auto [least, most] = std::ranges::minmax(outline(pattern), {}, &ShotOffset::side_m);
        return fmt::format("{}{} carry, {:.0f} {} wide", pattern.supposed ? "supposed: " : "",
                           length_text(pattern.club->pattern->usual.centre.carry_m, units_),
                           most.side_m - least.side_m, display_unit(units_));
    }

    std::string scale_bar() const {
        const double length = px_per_unit_ * side_step;
        const double x = carry_axis_px + plot_width() + 17.0;
        const double y = top_px + plot_height() - 4.0;
        return path_element("scale", path_data({{x, y - 4.0}, {x, y}, {x + length, y}, {x + length, y - 4.0}},
                                               false)) +
               text_element("size", {{x + length + 7.0, y - 3.0}, Anchor::start},
                            fmt::format("{:.0f} {}", side_step, display_unit(units_)));
    }

    std::string caption() const {
        std::string html = "<figcaption>\n";
        if (explained_) html += explanation();
        html += two_ways();
        if (any_shots()) html += shot_counts();
        if (beyond_ > 0)
            html += fmt::format("<p class=\"note\">{} so far from all patterns that {} not drawn.</p>\n",
                                beyond_ == 1 ? "1 shot landed" : fmt::format("{} shots landed", beyond_),
                                beyond_ == 1 ? "it is" : "they are");
        return html + "</figcaption>\n";
    }
    std::string explanation() const {
        const auto is_learnt = [](const PicturedPattern& p) { return p.club->pattern->shots > 0; };
        return fmt::format(
            "<p class=\"note\">Where the ball lands, seen from above and played up the page, in "
            "{}. The inner line holds half of the usual shots, the outer nine of ten; wide: the outer line "
            "from side to side. {}</p>\n",
            units_ == DisplayUnits::yards ? "yards" : "metres",
            any_shots() ? "A mark is a recorded shot; a crossed mark was taken for a mishit."
            : std::ranges::any_of(patterns_, is_learnt)
                ? "The recorded shots behind the patterns are not at hand."
                : "No recorded shots: the patterns are typical ones.");
    }
    std::string two_ways() const {
        std::string html;
        for (const PicturedPattern& pattern : patterns_) {
            const std::string ways = ways_words(*pattern.club->pattern, units_);
            if (ways.empty()) continue;
            html += fmt::format(
                "<p class=\"note\">{} goes two ways, {}: each way has lines of its own, which hold half and "
                "nine of ten of the balls that go this way.</p>\n",
                isolated(name_text(pattern.club->name)), ways);
        }
        return html;
    }
    bool any_supposed() const { return std::ranges::any_of(patterns_, &PicturedPattern::supposed); }
    bool any_shots() const {
        return std::ranges::any_of(patterns_, [](const PicturedPattern& p) { return !shots_of(p).empty(); });
    }
    std::string shot_counts() const {
        std::string html = "<ul class=\"legend\">\n";
        for (std::size_t i = 0; i < patterns_.size(); ++i) {
            const std::size_t count = shots_of(patterns_[i]).size();
            std::size_t mishits = 0;
            for (std::size_t shot = 0; shot < count; ++shot)
                mishits += is_mishit(patterns_[i], shot) ? 1 : 0;
            std::string words = patterns_[i].supposed ? "supposed, not hit"
                                : count == 0          ? "no recorded shots at hand"
                                : count == 1          ? "1 shot"
                                                      : fmt::format("{} shots", count);
            if (mishits > 0)
                words += fmt::format(", {} taken for {}", mishits, mishits == 1 ? "a mishit" : "mishits");
            html += fmt::format("<li>{}<span>{}: {}</span></li>\n", pattern_swatch(i),
                                isolated(name_text(patterns_[i].club->name)), words);
        }
        return html + "</ul>\n";
    }
    const std::vector<PicturedPattern>& patterns_;
    DisplayUnits units_;
    bool explained_;
    Frame frame_;
    double px_per_unit_ = 1.0;
    int beyond_ = 0;
};

}  // namespace

std::string pattern_picture(const std::vector<PicturedPattern>& patterns, DisplayUnits units,
                            bool explained) {
    return Picture(patterns, units, explained).html();
}

}  // namespace landwidth
