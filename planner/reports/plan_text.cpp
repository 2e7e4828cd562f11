#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "planner/reports/break_even_words.hpp"
#include "planner/reports/closing_text.hpp"
#include "planner/reports/day_words.hpp"
#include "planner/reports/display_length.hpp"
#include "planner/reports/next_shot_words.hpp"
#include "planner/reports/plan_reports.hpp"
#include "planner/reports/score_words.hpp"
#include "planner/reports/text_table.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

constexpr auto left = TextTable::Align::left;
constexpr auto right = TextTable::Align::right;

// "+0.08", "-0.02"; what rounds to nothing is "+0.00".
std::string difference_text(double value) {
    const double shown = std::round(100.0 * value) / 100.0 + 0.0;
    return fmt::format("{:+.2f}", shown);
}

// The head of the column beside the strokes; "" when strokes are all there is to aim for.
std::string_view value_heading(AimFor aim) {
    switch (aim) {
        case AimFor::strokes:
            break;
        case AimFor::stableford:
            return "points";
        case AimFor::par_or_better:
            return "chance";
    }
    return "";
}

const std::string& club_of(const PlanView& view, const TeeChoice& choice) {
    return view.golfer.clubs.at(choice.club).name;
}

double mown_share(const TeeChoice& choice) {
    return choice.lies[index_of(Lie::fairway)] + choice.lies[index_of(Lie::teeing_area)] +
           choice.lies[index_of(Lie::green)];
}

std::string next_best(const PlanView& view, const HolePlan& plan) {
    if (!plan.verdict.over || !plan.verdict.margin) return "none";
    return fmt::format("{} {}", loss_change_text(view.plan.aim_for, *plan.verdict.margin),
                       club_of(view, plan.choices.at(*plan.verdict.over)));
}

std::string certainty(const Verdict& verdict) {
    if (!verdict.over) return "-";
    return verdict.toss_up ? "toss-up" : share_text(verdict.confidence);
}

// The tee all holes are played from; "" when they differ or it has no name.
std::string common_tee(const Course& course) {
    if (course.holes.empty()) return "";
    const std::string& tee = course.holes.front().tee;
    const bool common = std::ranges::all_of(course.holes, [&](const Hole& hole) { return hole.tee == tee; });
    return common ? tee : "";
}

std::string title(const PlanView& view) {
    const std::string& course = view.course.name.empty() ? view.course.source : view.course.name;
    std::string words = "Round plan";
    if (!view.golfer.name.empty()) words += fmt::format(" for {}", name_text(view.golfer.name));
    if (!course.empty()) words += fmt::format(": {}", name_text(course));
    if (const std::string tee = common_tee(view.course); !tee.empty())
        words += fmt::format(", tee {}", name_text(tee));
    const std::string day = day_words(view.plan.conditions, view.plan.has_heights, view.units);
    return wrapped(words) + (day.empty() ? "" : wrapped(capitalised(day) + "."));
}

std::string holes_table(const PlanView& view) {
    const std::string unit(display_unit(view.units));
    const bool tees_differ = common_tee(view.course).empty();
    std::vector<TextTable::Column> columns{{"hole", left, true},      {"par", right},   {unit, right},
                                           {"club", left, true},      {"aim", left},    {"fairway", right},
                                           {"trouble", right},        {"to go", right}, {"strokes", right},
                                           {"next best", left, true}, {"sure", right}};
    constexpr std::size_t tee_column = 3;
    // Before the last two columns, the next best club and how sure.
    const auto value_column = static_cast<std::ptrdiff_t>(columns.size()) - 2;
    const AimFor aim = view.plan.aim_for;
    const std::string value_head(value_heading(aim));
    if (!value_head.empty()) columns.insert(columns.begin() + value_column, {value_head, right});
    if (tees_differ) columns.insert(columns.begin() + tee_column, {"tee", left, true});
    TextTable table(columns);
    for (std::size_t i = 0; i < view.plan.holes.size(); ++i) {
        const Hole& hole = view.course.holes.at(i);
        const HolePlan& plan = view.plan.holes[i];
        const TeeChoice& best = plan.choices.at(plan.verdict.best);
        std::vector<std::string> row{hole.ref,
                                     fmt::format("{}{}", hole.par, hole.par_inferred ? "?" : ""),
                                     length_number(hole.line.length(), view.units),
                                     club_of(view, best),
                                     short_aim_words(best, view.units),
                                     share_text(mown_share(best)),
                                     share_text(trouble_share(best)),
                                     length_number(best.leave_mean_m, view.units),
                                     fmt::format("{:.2f}", best.expected_strokes),
                                     next_best(view, plan),
                                     certainty(plan.verdict)};
        if (!value_head.empty()) {
            row.insert(row.begin() + value_column, aim_value_text(aim, best.aim_value));
        }
        if (tees_differ) row.insert(row.begin() + tee_column, hole.tee.empty() ? "-" : hole.tee);
        table.add_row(row);
    }
    return table.text();
}

// On which holes a toss-up is which.
std::string toss_up_note(const PlanView& view) {
    std::string words;
    for (const bool alike : {true, false}) {
        std::string holes;
        for (std::size_t i = 0; i < view.plan.holes.size(); ++i) {
            const Verdict& verdict = view.plan.holes[i].verdict;
            if (verdict.toss_up && verdict.alike == alike)
                holes += (holes.empty() ? "" : ", ") + name_text(view.course.holes.at(i).ref);
        }
        if (holes.empty()) continue;
        words += fmt::format("{}{} on {} ({})", words.empty() ? "" : "; ", undecided_words(alike), holes,
                             alike ? "either club will do" : "more recorded shots would tell");
    }
    return words.empty() ? words : wrapped(fmt::format("Toss-up: {}.", words));
}

std::string key(const PlanView& view) {
    std::string text =
        "Fairway: balls that end there or on the green. Trouble: bunker, trees, penalty area, out of "
        "bounds.\n"
        "To go: mean distance left. Next best: what that club costs. Sure: how often the choice stays "
        "best.\n";
    if (view.plan.aim_for == AimFor::stableford) {
        text += "Points: Stableford; the next best club costs points.\n";
    }
    if (view.plan.aim_for == AimFor::par_or_better) {
        text += "Chance: of par or better; the next best club costs that part of all holes played.\n";
    }
    text += fmt::format("Strokes: {}.\n", field_words(view.plan.field));
    const auto& plans = view.plan.holes;
    text += toss_up_note(view);
    if (std::any_of(plans.begin(), plans.end(),
                    [](const HolePlan& plan) { return plan.break_evens.has_value(); })) {
        text += wrapped(
            "Flips: what makes the next best club as good off this tee, moved alone. The side spread is a "
            "standard deviation.");
    }
    const auto& holes = view.course.holes;
    if (std::any_of(holes.begin(), holes.end(), [](const Hole& hole) { return hole.par_inferred; })) {
        text += "Par with a ?: not on the map, inferred from the length.\n";
    }
    return text;
}

std::string round_totals(const PlanView& view) {
    const RoundPlan& plan = view.plan;
    const bool strokes_only = plan.aim_for == AimFor::strokes;
    const char* unit = strokes_only ? "strokes" : plan.aim_for == AimFor::stableford ? "points" : "par holes";
    const double planned = strokes_only ? plan.expected_strokes : plan.aim_value;
    TextTable table({{fmt::format("round, par {}", plan.par), left}, {unit, right}, {"difference", right}});
    const auto add = [&](const char* what, const std::optional<double>& value) {
        if (!value) return;
        table.add_row({what, fmt::format("{:.2f}", *value), difference_text(*value - planned)});
    };
    table.add_row({"this plan", fmt::format("{:.2f}", planned), ""});
    add("driver on every par 4 and longer", plan.always_driver);
    add("never the driver", plan.never_driver);
    if (strokes_only) return table.text();
    return table.text() + fmt::format("Strokes of the round: {:.2f}.\n", plan.expected_strokes) +
           (plan.aim_for == AimFor::par_or_better
                ? "Par holes: how many of the holes end in par or better on average.\n"
                : "");
}

// How likely each score is, hole by hole; nothing where no distribution was computed.
std::string scores_table(const PlanView& view) {
    TextTable table({{"scores", left, true},
                     {"birdie or better", right},
                     {"par", right},
                     {"bogey", right},
                     {"double or worse", right}});
    bool any = false;
    for (std::size_t i = 0; i < view.plan.holes.size(); ++i) {
        const Hole& hole = view.course.holes.at(i);
        const HolePlan& plan = view.plan.holes[i];
        const ScoreDistribution& scores = plan.choices.at(plan.verdict.best).score;
        if (scores.empty()) continue;
        any = true;
        const auto share = [&](ScoreToPar score) { return share_of(scores, score, hole.par); };
        table.add_row(
            {hole.ref, share_text(share(ScoreToPar::eagle_or_better) + share(ScoreToPar::birdie)),
             share_text(share(ScoreToPar::par)), share_text(share(ScoreToPar::bogey)),
             share_text(share(ScoreToPar::double_bogey) + share(ScoreToPar::triple_bogey_or_worse))});
    }
    if (!any) return {};
    return table.text() + wrapped(round_score_words(view.plan)) + "\n";
}

// "then a; then b".
std::string one_after_another(const std::vector<std::string>& sentences) {
    std::string words;
    for (const std::string& one : sentences)
        words += (words.empty() ? "then " : "; then ") + one;
    return words;
}

// The aims as a golfer says them, the shots that follow, and what to keep in mind on that tee.
std::string hole_by_hole(const PlanView& view) {
    constexpr std::size_t longest_ref = 8;
    std::size_t ref_width = 1;
    for (const Hole& hole : view.course.holes) {
        ref_width = std::max(ref_width, std::min(display_width(hole.ref), longest_ref));
    }
    const std::string caution_start = std::string(ref_width + 2, ' ') + "! ";
    std::string text = "On the tee\n";
    for (std::size_t i = 0; i < view.plan.holes.size(); ++i) {
        const HolePlan& plan = view.plan.holes[i];
        const TeeChoice& best = plan.choices.at(plan.verdict.best);
        const std::string ref = shortened(view.course.holes.at(i).ref, longest_ref);
        text += wrapped(fmt::format("{}, {}", name_text(club_of(view, best)), aim_words(best, view.units)),
                        ref + std::string(ref_width + 2 - std::min(display_width(ref), ref_width), ' '));
        if (const std::string plays = plays_as_words(view, i); !plays.empty()) {
            text += wrapped(plays, std::string(ref_width + 2, ' '));
            text += wrapped(flight_words(best.day, view.units), std::string(ref_width + 2, ' '));
        }
        if (const std::string next = one_after_another(next_shot_words(view, i)); !next.empty()) {
            text += wrapped(next, std::string(ref_width + 2, ' '));
        }
        if (const std::string flips = break_even_words(view, i); !flips.empty()) {
            text += wrapped(flips, std::string(ref_width + 2, ' '));
        }
        for (const std::string& caution : caution_words(view, i))
            text += wrapped(caution, caution_start);
    }
    return text;
}

}  // namespace

std::string plan_text(const PlanView& view) {
    return title(view) + "\n" + holes_table(view) + "\n" + key(view) + "\n" + round_totals(view) + "\n" +
           scores_table(view) + hole_by_hole(view) + bulleted("Warnings", view.plan.warnings) +
           bulleted("Keep in mind",
                    standing_cautions(setting_words(view.plan.conditions, view.plan.has_heights))) +
           "\n" + map_line(view.course);
}

}  // namespace landwidth
