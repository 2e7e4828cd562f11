#include "planner/reports/hole_map.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include "planner/reports/cost_shading.hpp"
#include "planner/reports/display_length.hpp"
#include "planner/reports/html_text.hpp"
#include "planner/reports/landing_rim.hpp"
#include "planner/reports/map_arcs.hpp"
#include "planner/reports/map_sheet.hpp"
#include "planner/reports/map_signs.hpp"
#include "planner/reports/next_shot_words.hpp"
#include "planner/reports/svg_writing.hpp"
#include "planner/reports/wind_words.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

constexpr double outer_share = 0.9;
constexpr double inner_share = 0.5;
constexpr int rim_points = 48;
// Vertices nearer than this to the outline of the simplified ground are dropped: less than a pixel.
constexpr double drawing_tolerance_px = 0.4;
// Ground drawn beyond the clipping outline, so that no edge runs along it.
constexpr double bleed_m = 4.0;
constexpr double label_px = 9.5;
constexpr double club_label_px = 10.5;
constexpr std::size_t longest_label = 14;
constexpr double wind_row_px = 28.0;

// A club as drawn: its aim line and ellipses, in the hole's plane.
struct DrawnClub {
    const TeeChoice& choice;
    std::string name;
    std::vector<Ring> outer;  // one, or one for each way the club goes; none without a pattern
    std::vector<Ring> inner;  // likewise
};

class Drawing {
  public:
    Drawing(const PlanView& view, std::size_t hole)
        : view_(view),
          hole_(view.course.holes.at(hole)),
          plan_(view.plan.holes.at(hole)),
          best_(drawn(plan_.choices.at(plan_.verdict.best))),
          second_(plan_.verdict.over ? std::optional(drawn(plan_.choices.at(*plan_.verdict.over)))
                                     : std::nullopt),
          sheet_(hole_, rims(), way_to_green(), view.plan.conditions.wind ? wind_row_px : 0.0),
          placer_(sheet_.width_px(), sheet_.ground_height_px()) {}

    HoleMap draw(const std::string& id);

  private:
    DrawnClub drawn(const TeeChoice& choice) const {
        const Point tee = hole_.line.tee();
        return {choice, name_text(view_.golfer.clubs.at(choice.club).name, longest_label),
                landing_rims(view_, tee, choice, outer_share, rim_points),
                landing_rims(view_, tee, choice, inner_share, rim_points)};
    }
    std::vector<Ring> rims() const {
        std::vector<Ring> rings = best_.outer;
        if (second_) rings.insert(rings.end(), second_->outer.begin(), second_->outer.end());
        return rings;
    }
    // The aim line, then ball by ball to the green.
    std::vector<Point> way_to_green() const {
        std::vector<Point> way{hole_.line.tee(), best_.choice.aim_point};
        for (const PlannedShot& shot : plan_.next) {
            way.push_back(shot.from);
            way.push_back(shot.leave);
        }
        return way;
    }
    std::vector<Point> on_sheet(const std::vector<Point>& points) const {
        std::vector<Point> mapped;
        mapped.reserve(points.size());
        for (const Point p : points)
            mapped.push_back(sheet_.to_sheet(p));
        return mapped;
    }
    // A line on a white casing, so that it stands out from any ground.
    void draw_cased(std::string_view css_class, const std::vector<Point>& plane_points, bool closed) {
        const std::string data = path_data(on_sheet(plane_points), closed);
        marks_ += path_element("case", data);
        marks_ += path_element(css_class, data);
    }
    void draw_ground();
    void draw_surroundings();
    void draw_arcs();
    void draw_club(const DrawnClub& club, std::string_view css_class);
    void draw_next_shots();
    void label_next_shots();
    void draw_landing_width();
    void draw_tee_and_pin();
    void label_club(const DrawnClub& club, std::string_view css_class, bool further);
    void draw_scale_and_north();
    void draw_wind();

    const PlanView& view_;
    const Hole& hole_;
    const HolePlan& plan_;
    DrawnClub best_;
    std::optional<DrawnClub> second_;
    MapSheet sheet_;
    LabelPlacer placer_;
    MapContents contents_;
    std::string ground_;
    std::string marks_;
    std::string labels_;
};

void Drawing::draw_ground() {
    const Region wanted = sheet_.ground().grown(bleed_m);
    const double tolerance = drawing_tolerance_px / sheet_.px_per_m();
    const Lie beyond = hole_.lies.beyond();
    // Ground beyond what was planned on shows as what it counts as.
    ground_ += path_element(fmt::format("l{}", index_of(beyond)), path_data(wanted, sheet_));
    // Rough has no edge and lies below all others.
    std::vector<Lie> order(all_lies.begin(), all_lies.end());
    std::stable_partition(order.begin(), order.end(), [](Lie lie) { return lie == Lie::rough; });
    for (const Lie lie : order) {
        const Region& region = hole_.lies.region(lie);
        if (region.empty()) continue;
        const std::string data = path_data(region.common_with(wanted).simplified(tolerance), sheet_);
        if (data.empty()) continue;
        contents_.lies[index_of(lie)] = true;
        // A stream is narrower than the edges drawn along it: it gets a breadth of water first.
        if (is_penalty_area(lie)) ground_ += path_element("shore", data);
        ground_ += path_element(fmt::format("l{}", index_of(lie)), data);
    }
}

void Drawing::draw_surroundings() {
    for (const Surrounding& thing : hole_.surroundings) {
        const Region part = thing.region.common_with(sheet_.ground().grown(bleed_m));
        const std::string data = path_data(part.simplified(drawing_tolerance_px / sheet_.px_per_m()), sheet_);
        if (data.empty()) continue;
        ground_ += path_element(surrounding_class(thing.kind), data);
        auto& kinds = contents_.surroundings;
        if (std::find(kinds.begin(), kinds.end(), thing.kind) == kinds.end()) kinds.push_back(thing.kind);
    }
    std::sort(contents_.surroundings.begin(), contents_.surroundings.end());
}

void Drawing::draw_arcs() {
    for (const DistanceArc& arc : distance_arcs(hole_.line, sheet_.ground(), view_.units)) {
        contents_.arcs = true;
        const std::vector<Point> points = on_sheet(arc.points);
        marks_ += path_element("arc", path_data(points, false));
        const Point left = points.front();
        const Point right = points.back();
        const std::string text = fmt::format("{:.0f}", arc.distance);
        const auto spot = placer_.place(text, label_px,
                                        {{{right.x + 3.0, right.y}, Anchor::start},
                                         {{left.x - 3.0, left.y}, Anchor::end},
                                         {{right.x - 3.0, right.y}, Anchor::end},
                                         {{left.x + 3.0, left.y}, Anchor::start},
                                         {points[points.size() / 2], Anchor::middle}});
        if (spot) labels_ += text_element("yd", *spot, text);
    }
}

void Drawing::draw_club(const DrawnClub& club, std::string_view css_class) {
    const std::string line(css_class);
    for (const Ring& ring : club.outer)
        draw_cased(line, ring, true);
    for (const Ring& ring : club.inner)
        draw_cased(line + " in", ring, true);
    draw_cased(line + " aim", {hole_.line.tee(), club.choice.aim_point}, false);
}

void Drawing::draw_next_shots() {
    if (plan_.next.empty()) return;
    contents_.next_shots = true;
    std::vector<Point> balls;
    for (const PlannedShot& shot : plan_.next) {
        draw_cased("then", {shot.from, shot.leave}, false);
        for (const Point ball : {shot.from, shot.leave}) {
            if (balls.empty() || distance(balls.back(), ball) * sheet_.px_per_m() > 1.0)
                balls.push_back(ball);
        }
    }
    for (const Point ball : on_sheet(balls))
        marks_ +=
            fmt::format("<circle class=\"ball\" cx=\"{}\" cy=\"{}\" r=\"2.4\"/>\n", px(ball.x), px(ball.y));
}

void Drawing::label_next_shots() {
    for (const PlannedShot& shot : plan_.next) {
        const Point from = sheet_.to_sheet(shot.from);
        const Point leave = sheet_.to_sheet(shot.leave);
        const std::string text = name_text(swing_words(view_, shot.club, shot.swing), longest_label + 12);
        std::vector<LabelSpot> spots;
        for (const double along : {0.5, 0.35, 0.65, 0.2, 0.8}) {
            const Point at = (1.0 - along) * from + along * leave;
            spots.push_back({at + Point{7.0, 0.0}, Anchor::start});
            spots.push_back({at - Point{7.0, 0.0}, Anchor::end});
        }
        const auto spot = placer_.place(text, label_px, spots);
        if (spot) labels_ += text_element("then", *spot, text);
    }
}

void Drawing::draw_landing_width() {
    const auto& landing = best_.choice.landing;
    // On a par 3 the fairway is no target, and what there is of it is an apron.
    if (!landing || hole_.par == 3) return;
    contents_.landing_width = true;
    const Point across = to_the_right(along_bearing(best_.choice.aim));
    const Point left = sheet_.to_sheet(best_.choice.aim_point + landing->left_m * across);
    const Point right = sheet_.to_sheet(best_.choice.aim_point + landing->right_m * across);
    const Point step = sheet_.turned(across);
    const Point tick = 4.0 * Point{-step.y, step.x};
    const std::string data = path_data({left, right}, false) + path_data({left - tick, left + tick}, false) +
                             path_data({right - tick, right + tick}, false);
    marks_ += path_element("case", data) + path_element("wide", data);
    const std::string text = length_text(landing->width_m(), view_.units);
    // Beside either end, then a line above or below it; the step turns the sides around on a hole played
    // back towards the tee.
    const Point out = step.x >= 0.0 ? step : Point{-step.x, -step.y};
    const Point start = step.x >= 0.0 ? left : right;
    const Point end = step.x >= 0.0 ? right : left;
    std::vector<LabelSpot> spots;
    for (const double lift : {0.0, -12.0, 12.0, -24.0, 24.0}) {
        spots.push_back({end + 6.0 * out + Point{0.0, lift}, Anchor::start});
        spots.push_back({start - 6.0 * out + Point{0.0, lift}, Anchor::end});
    }
    const auto spot = placer_.place(text, club_label_px, spots);
    if (spot) labels_ += text_element("width", *spot, text);
}

void Drawing::draw_tee_and_pin() {
    const Point tee = sheet_.to_sheet(hole_.line.tee());
    const Point pin = sheet_.to_sheet(hole_.line.pin());
    marks_ += fmt::format("<circle class=\"tee\" cx=\"{}\" cy=\"{}\" r=\"3\"/>\n", px(tee.x), px(tee.y));
    marks_ += fmt::format(
        "<path class=\"pole\" d=\"M{0} {1}v-15\"/><path class=\"flag\" d=\"M{0} {2}l9 3.5-9 3.5z\"/>"
        "<circle class=\"cup\" cx=\"{0}\" cy=\"{1}\" r=\"1.3\"/>\n",
        px(pin.x), px(pin.y), px(pin.y - 15.0));
    placer_.reserve({tee.x - 4.0, tee.y - 4.0, tee.x + 4.0, tee.y + 4.0});
    placer_.reserve({pin.x - 2.0, pin.y - 16.0, pin.x + 10.0, pin.y + 2.0});
}

void Drawing::label_club(const DrawnClub& club, std::string_view css_class, bool further) {
    std::vector<Point> rim;
    for (const Ring& ring : club.outer)
        rim.insert(rim.end(), ring.begin(), ring.end());
    rim = on_sheet(rim.empty() ? std::vector<Point>{club.choice.aim_point} : rim);
    Point low = rim.front();
    Point high = rim.front();
    for (const Point p : rim) {
        low = {std::min(low.x, p.x), std::min(low.y, p.y)};
        high = {std::max(high.x, p.x), std::max(high.y, p.y)};
    }
    const Point middle = 0.5 * (low + high);
    std::vector<LabelSpot> spots;
    for (const double away : {9.0, 21.0, 33.0}) {
        const LabelSpot above{{middle.x, low.y - away}, Anchor::middle};
        const LabelSpot below{{middle.x, high.y + away}, Anchor::middle};
        spots.push_back(further ? above : below);
        const double lift = away - 9.0;
        spots.push_back({{high.x + 5.0, middle.y + (further ? -lift : lift)}, Anchor::start});
        spots.push_back({{low.x - 5.0, middle.y + (further ? -lift : lift)}, Anchor::end});
        spots.push_back(further ? below : above);
    }
    const auto spot = placer_.place(club.name, club_label_px, spots);
    if (spot) labels_ += text_element(css_class, *spot, club.name);
}

void Drawing::draw_scale_and_north() {
    constexpr double longest_bar_px = 80.0;
    double units_long = 200.0;
    for (const double candidate : {200.0, 100.0, 50.0, 25.0, 20.0, 10.0, 5.0}) {
        units_long = candidate;
        if (metres_of_display(candidate, view_.units) * sheet_.px_per_m() <= longest_bar_px) break;
    }
    const double bar = metres_of_display(units_long, view_.units) * sheet_.px_per_m();
    const std::string text = fmt::format("{:.0f} {}", units_long, display_unit(view_.units));
    const double y = sheet_.ground_height_px() + 17.0;
    const LabelSpot spot{{sheet_.width_px() - 4.0, y}, Anchor::end};
    const double right = LabelPlacer::box_of(text, label_px, spot).left - 2.0;
    labels_ += fmt::format(
        "<path class=\"bar\" d=\"M{0} {1}h{2}v4h-{2}z\"/><path class=\"half\" d=\"M{0} {1}h{3}v4h-{3}z\"/>\n",
        px(right - bar), px(y - 2.0), px(bar), px(bar / 2.0));
    labels_ += text_element("yd", spot, text);

    const Point north = sheet_.turned({0.0, 1.0});
    const Point side{-north.y, north.x};
    const Point centre{20.0, y};
    const Point tip = centre + 7.0 * north;
    const Point tail = centre - 8.0 * north;
    labels_ += path_element("north", path_data({tail, centre}, false) +
                                         path_data({tip, centre + 3.5 * side, centre - 3.5 * side}, true));
    labels_ += text_element("yd", {centre + 12.5 * north, Anchor::middle}, "N");
}

// A broad arrow with the wind, in a row of its own below the scale.
void Drawing::draw_wind() {
    if (!view_.plan.conditions.wind) return;
    const Wind& wind = *view_.plan.conditions.wind;
    contents_.wind = true;
    const double y = sheet_.height_px() - 0.5 * wind_row_px;
    // The frame's y axis points to true north within what can be drawn.
    const Point blows = sheet_.turned(-1.0 * along_bearing(wind.from.radians));
    marks_ += path_element("wind", path_data(wind_arrow({20.0, y}, blows), true));
    const std::string text = "wind " + wind_label(wind, view_.units);
    labels_ += text_element("yd", {{38.0, y}, Anchor::start}, text);
}

HoleMap Drawing::draw(const std::string& id) {
    contents_.best = name_text(view_.golfer.clubs.at(best_.choice.club).name);
    if (second_) contents_.second = name_text(view_.golfer.clubs.at(second_->choice.club).name);
    draw_ground();
    draw_surroundings();
    draw_tee_and_pin();
    const std::string tee_and_pin = std::move(marks_);
    marks_.clear();
    // Places are given in the order of weight: what the plan says first, then the arcs.
    draw_landing_width();
    const std::string landing_width = std::move(marks_);
    marks_.clear();
    const double best_carry = distance(hole_.line.tee(), best_.choice.aim_point);
    const bool best_is_further =
        !second_ || best_carry >= distance(hole_.line.tee(), second_->choice.aim_point);
    label_club(best_, "club b", best_is_further);
    if (second_) label_club(*second_, "club s", !best_is_further);
    label_next_shots();
    draw_arcs();
    marks_ += path_element("play", path_data(on_sheet(hole_.line.vertices()), false));
    if (second_) draw_club(*second_, "s");
    draw_next_shots();
    draw_club(best_, "b");
    marks_ += landing_width + tee_and_pin;
    draw_scale_and_north();
    draw_wind();

    const std::string outline = path_data(sheet_.ground(), sheet_);
    const std::string title = fmt::format("Map of hole {}", name_text(hole_.ref));
    const std::string description =
        fmt::format("Drawn so that play goes up the page. {}",
                    verdict_words(view_, static_cast<std::size_t>(&plan_ - view_.plan.holes.data())));
    HoleMap map;
    if (plan_.cost_map) {
        CostShading shading = cost_shading(*plan_.cost_map, sheet_);
        map.cost_key = std::move(shading.key);
        ground_ = fmt::format("<g class=\"shade\">\n{}</g>\n<g class=\"ground\">\n{}</g>\n", shading.layer,
                              ground_);
    }
    map.svg = fmt::format(
        "<svg class=\"hole-map\" role=\"img\" aria-labelledby=\"{0}-t {0}-d\" viewBox=\"0 0 {1} {2}\" "
        "width=\"{1}\" height=\"{2}\">\n<title id=\"{0}-t\">{3}</title>\n<desc id=\"{0}-d\">{4}</desc>\n"
        "<clipPath id=\"{0}-c\"><path d=\"{5}\"/></clipPath>\n"
        "<g clip-path=\"url(#{0}-c)\">\n{6}</g>\n<path class=\"rim\" d=\"{5}\"/>\n{7}{8}</svg>\n",
        id, px(sheet_.width_px()), px(sheet_.height_px()), escaped(title), escaped(description), outline,
        ground_, marks_, labels_);
    map.legend = map_legend(contents_, view_.units);
    return map;
}

}  // namespace

HoleMap hole_map(const PlanView& view, std::size_t hole, const std::string& id) {
    return Drawing(view, hole).draw(id);
}

}  // namespace landwidth
