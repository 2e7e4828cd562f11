#include "planner/reports/plan_layers.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "planner/reports/display_length.hpp"
#include "planner/reports/landing_rim.hpp"
#include "planner/reports/layer_shapes.hpp"
#include "planner/reports/layer_style.hpp"
#include "planner/reports/rounded.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

using Fields = std::vector<std::pair<std::string, FieldValue>>;

constexpr std::size_t clubs_with_ellipses = 2;
constexpr std::array<double, 2> ellipse_shares{0.9, 0.5};  // the larger below
constexpr int ellipse_points = 72;

double layer_yards(double metres) {
    return rounded(to_yards(metres), 1);
}

// Ground first, then what is cut into it. Neighbouring holes share ground, and what is this hole's green is
// fairway to the next hole: so all fairways come before any green.
constexpr std::array<Lie, lie_count> drawing_order{
    Lie::rough,          Lie::out_of_bounds, Lie::trees,       Lie::fairway, Lie::penalty_red,
    Lie::penalty_yellow, Lie::bunker,        Lie::teeing_area, Lie::green,
};

// What every feature starts and ends with.
Fields with_origin(const PlanView& view, const Hole& hole, Fields own) {
    Fields fields{{"course", view.course.name}, {"hole", hole.ref}};
    std::move(own.begin(), own.end(), std::back_inserter(fields));
    fields.emplace_back("attribution", view.course.attribution);
    return fields;
}

VectorLayer layer_of_lies(const PlanView& view) {
    VectorLayer layer{std::string(lies_layer), "what the ball lies on, by hole", wkbMultiPolygon, {}};
    for (const Lie lie : drawing_order) {
        for (const Hole& hole : view.course.holes) {
            OGRGeometryUniquePtr shape = lonlat_areas(hole.frame, hole.lies.region(lie).polygons());
            if (shape->IsEmpty()) continue;
            const std::string name(lie_name(lie));
            layer.features.push_back({std::move(shape), with_origin(view, hole, {{"lie", name}}), name,
                                      fmt::format("hole {}: {}", hole.ref, name)});
        }
    }
    return layer;
}

// The holes' choices, the best club of every hole last and so on top.
template <typename Add>
void for_choices(const PlanView& view, std::size_t ranks, const Add& add) {
    for (std::size_t i = 0; i < view.plan.holes.size(); ++i) {
        const auto& choices = view.plan.holes[i].choices;
        for (std::size_t rank = std::min(ranks, choices.size()); rank-- > 0;) {
            add(view.course.holes.at(i), view.plan.holes[i], rank);
        }
    }
}

struct ChoiceWords {
    std::string word;
    std::string club;
    int rank;
};

ChoiceWords words_of(const PlanView& view, const HolePlan& plan, std::size_t rank) {
    return {std::string(choice_word(rank)), view.golfer.clubs.at(plan.choices.at(rank).club).name,
            static_cast<int>(rank) + 1};
}

VectorLayer layer_of_ellipses(const PlanView& view) {
    VectorLayer layer{std::string(landing_ellipses_layer),
                      "where the usual shots land: half of them and nine in ten, best and second club",
                      wkbMultiPolygon,
                      {}};
    for_choices(view, clubs_with_ellipses, [&](const Hole& hole, const HolePlan& plan, std::size_t rank) {
        const TeeChoice& choice = plan.choices[rank];
        if (!view.golfer.clubs.at(choice.club).pattern) return;
        const ChoiceWords words = words_of(view, plan, rank);
        for (const double share : ellipse_shares) {
            const std::vector<Ring> rings =
                landing_rims(view, hole.line.tee(), choice, share, ellipse_points);
            const auto& ways = view.golfer.clubs.at(choice.club).pattern->ways;
            for (std::size_t way = 0; way < rings.size(); ++way) {
                const std::string label = fmt::format(
                    "{}: {} of the usual shots{} land here", words.club, share_text(share),
                    ways ? fmt::format(" that go this way ({} do)", share_text(ways->at(way).share)) : "");
                layer.features.push_back({lonlat_areas(hole.frame, {{rings[way], {}}}),
                                          with_origin(view, hole,
                                                      {{"choice", words.word},
                                                       {"rank", words.rank},
                                                       {"club", words.club},
                                                       {"share", share},
                                                       {"label", label}}),
                                          words.word, fmt::format("hole {}, {}", hole.ref, label)});
            }
        }
    });
    return layer;
}

VectorLayer layer_of_widths(const PlanView& view) {
    VectorLayer layer{std::string(landing_widths_layer),
                      "the fairway across the aim line where the usual shot comes down",
                      wkbMultiLineString,
                      {}};
    constexpr auto all = std::numeric_limits<std::size_t>::max();
    for_choices(view, all, [&](const Hole& hole, const HolePlan& plan, std::size_t rank) {
        const TeeChoice& choice = plan.choices[rank];
        if (!choice.landing) return;
        const ChoiceWords words = words_of(view, plan, rank);
        const Point across = to_the_right(along_bearing(choice.aim));
        const std::vector<Point> path{choice.aim_point + choice.landing->left_m * across,
                                      choice.aim_point + choice.landing->right_m * across};
        const std::string label =
            fmt::format("{}: {} wide", words.club, length_text(choice.landing->width_m(), view.units));
        layer.features.push_back({lonlat_line(hole.frame, path),
                                  with_origin(view, hole,
                                              {{"choice", words.word},
                                               {"rank", words.rank},
                                               {"club", words.club},
                                               {"width_yd", layer_yards(choice.landing->width_m())},
                                               {"left_yd", layer_yards(choice.landing->left_m)},
                                               {"right_yd", layer_yards(choice.landing->right_m)},
                                               {"label", label}}),
                                  words.word, fmt::format("hole {}, landing width, {}", hole.ref, label)});
    });
    return layer;
}

Fields aim_fields(const PlanView& view, const HolePlan& plan, std::size_t rank, const ChoiceWords& words,
                  const std::string& label) {
    const TeeChoice& choice = plan.choices[rank];
    const TeeChoice& best = plan.choices.at(plan.verdict.best);
    const bool verdict = rank == plan.verdict.best;
    const double fairway = choice.lies[index_of(Lie::fairway)] + choice.lies[index_of(Lie::teeing_area)];
    return {{"choice", words.word},
            {"rank", words.rank},
            {"club", words.club},
            {"strokes", rounded(choice.expected_strokes, 4)},
            {"costs_strokes", rounded(choice.expected_strokes - best.expected_strokes, 4)},
            {"aim_bearing_deg", rounded_direction(choice.aim_bearing.degrees(), 2)},
            {"aim", aim_words(choice, view.units)},
            {"fairway_share", rounded(fairway, 4)},
            {"green_share", rounded(choice.lies[index_of(Lie::green)], 4)},
            {"trouble_share", rounded(trouble_share(choice), 4)},
            {"leave_yd", layer_yards(choice.leave_mean_m)},
            {"confidence", verdict ? FieldValue(rounded(plan.verdict.confidence, 4)) : FieldValue()},
            {"toss_up", verdict ? FieldValue(plan.verdict.toss_up) : FieldValue()},
            {"label", label}};
}

VectorLayer layer_of_aims(const PlanView& view) {
    VectorLayer layer{
        std::string(aim_lines_layer), "from the tee to the aim point of each club", wkbMultiLineString, {}};
    constexpr auto all = std::numeric_limits<std::size_t>::max();
    for_choices(view, all, [&](const Hole& hole, const HolePlan& plan, std::size_t rank) {
        const TeeChoice& choice = plan.choices[rank];
        const ChoiceWords words = words_of(view, plan, rank);
        const std::string label = fmt::format("{} {:.2f}", words.club, choice.expected_strokes);
        layer.features.push_back(
            {lonlat_line(hole.frame, {hole.line.tee(), choice.aim_point}),
             with_origin(view, hole, aim_fields(view, plan, rank, words, label)), words.word,
             fmt::format("hole {}: {}, {}", hole.ref, words.club, aim_words(choice, view.units))});
    });
    return layer;
}

}  // namespace

std::vector<VectorLayer> plan_layers(const PlanView& view) {
    std::vector<VectorLayer> layers;
    layers.push_back(layer_of_lies(view));
    layers.push_back(layer_of_ellipses(view));
    layers.push_back(layer_of_widths(view));
    layers.push_back(layer_of_aims(view));
    return layers;
}

}  // namespace landwidth
