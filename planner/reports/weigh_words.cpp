#include "planner/reports/weigh_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <vector>

#include "planner/reports/display_length.hpp"
#include "planner/reports/rounded.hpp"
#include "planner/reports/weigh_setting_words.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {

namespace {

constexpr double shown_strokes = 0.005;
constexpr double shown_share = 0.015;
constexpr double shown_leave_m = 3.0;
constexpr std::size_t most_changes = 3;
// All of some hundred draws may agree; that is still no certainty.
constexpr double surest = 0.999;
// Words for chances.
constexpr double even_chance = 0.55, likely = 0.65, very_likely = 0.85, all_but_certain = 0.97;
// Of a change, in a sentence that names several.
constexpr std::size_t longest_label = 80;

struct Ground {
    const char* name;
    std::array<Lie, 3> lies;
    std::size_t count;
};

constexpr std::array grounds{
    Ground{"fairway", {Lie::fairway, Lie::teeing_area, Lie::green}, 3},
    Ground{"rough", {Lie::rough}, 1},
    Ground{"bunker", {Lie::bunker}, 1},
    Ground{"trees", {Lie::trees}, 1},
    Ground{"penalty area", {Lie::penalty_red, Lie::penalty_yellow}, 2},
    Ground{"out of bounds", {Lie::out_of_bounds}, 1},
};

double share_on(const BagOnHole& hole, const Ground& ground) {
    double share = 0.0;
    for (std::size_t i = 0; i < ground.count; ++i)
        share += hole.lies[index_of(ground.lies[i])];
    return share;
}

// What the balls from the tee find more or less of.
struct Change {
    const char* ground;
    double before, after;  // shares
    // What costs a stroke weighs more than what costs part of one.
    double weight;
};

std::vector<Change> largest_changes(const HoleGain& hole, std::size_t most) {
    std::vector<Change> changes;
    for (const Ground& ground : grounds) {
        const double before = share_on(hole.before, ground);
        const double after = share_on(hole.after, ground);
        if (std::abs(after - before) < shown_share) continue;
        const bool costs_a_stroke =
            ground.lies[0] == Lie::penalty_red || ground.lies[0] == Lie::out_of_bounds;
        changes.push_back(
            {ground.name, before, after, std::abs(after - before) * (costs_a_stroke ? 4.0 : 1.0)});
    }
    std::ranges::stable_sort(changes, std::greater<>{}, &Change::weight);
    if (changes.size() > most) changes.resize(most);
    return changes;
}

const std::string& club_name(const WeighView& view, std::size_t club) {
    return view.golfer.clubs.at(club).name;
}

// That nothing was compared, and what would.
std::string not_compared_words(const WeighView& view, const WeighedChange& change) {
    std::vector<std::size_t> clubs = change.change.out;
    clubs.insert(clubs.end(), change.change.in.begin(), change.change.in.end());
    const std::string who =
        clubs.size() == 1 ? fmt::format("The {} is not hit", name_text(club_name(view, clubs[0])))
        : clubs.size() == 2
            ? fmt::format("Neither the {} nor the {} is hit", name_text(club_name(view, clubs[0])),
                          name_text(club_name(view, clubs[1])))
            : "None of the clubs that come or go is hit";
    return fmt::format(
        "{} on any of these holes, from the tee or later, in any of the {:g} draws, so nothing was compared: "
        "on these holes it makes no difference, and which is better is not said. Weigh on holes where {} "
        "hit.",
        who, view.weighing.assumptions.engine.weigh_draws, clubs.size() == 1 ? "it is" : "one of them is");
}

}  // namespace

std::string gain_text(double strokes) {
    const double shown = rounded(strokes, 2);
    return shown == 0.0 ? "0.00" : fmt::format("{:+.2f}", shown);
}

std::string verdict_word(BagVerdict verdict) {
    switch (verdict) {
        case BagVerdict::saves:
            return "saves";
        case BagVerdict::costs:
            return "costs";
        case BagVerdict::alike:
            return "alike";
        case BagVerdict::not_compared:
            return "not-compared";
        case BagVerdict::not_known:
            break;
    }
    return "not-known";
}

std::string standing(const WeighedChange& change) {
    switch (change.verdict) {
        case BagVerdict::saves:
            return "pays";
        case BagVerdict::costs:
            return "costs strokes";
        case BagVerdict::alike:
            return "no difference";
        case BagVerdict::not_compared:
            return "not compared";
        case BagVerdict::not_known:
            break;
    }
    return "open";
}

std::string standing_words(const WeighedChange& change) {
    switch (change.verdict) {
        case BagVerdict::alike:
            return "is as good";
        case BagVerdict::not_compared:
            return "is hit on no hole";
        case BagVerdict::not_known:
            return "is not known yet";
        default:
            return standing(change);
    }
}

std::string chance_words(const WeighedChange& change) {
    if (change.verdict == BagVerdict::alike) return "the same either way";
    if (change.verdict == BagVerdict::not_compared) return "nothing compared";
    const double likelier = std::max(change.chance, 1.0 - change.chance);
    if (likelier < even_chance) return fmt::format("an even chance, {} to help", share_text(change.chance));
    const char* how = likelier >= all_but_certain ? "all but certain"
                      : likelier >= very_likely   ? "very likely"
                      : likelier >= likely        ? "likely"
                                                  : "a little likelier";
    return fmt::format("{} to {}, {}", how, change.chance > 0.5 ? "help" : "cost",
                       share_text(std::min(likelier, surest)));
}

std::string question_words(const WeighView& view) {
    std::string words = view.weighing.changes.size() == 1 ? "What is this change to the bag worth"
                                                          : "What are these changes to the bag worth";
    if (!view.golfer.name.empty()) words += " to " + name_text(view.golfer.name);
    for (std::size_t i = 0; i < view.weighing.changes.size(); ++i)
        words += (i == 0 ? ": " : "; or ") + name_text(view.weighing.changes[i].change.label, longest_label);
    return words + "?";
}

bool shows(const HoleGain& hole) {
    return hole.before.club != hole.after.club || std::abs(hole.gain) >= shown_strokes;
}

int holes_with_new_club(const WeighedChange& change) {
    int holes = 0;
    for (const CourseGain& course : change.courses)
        for (const HoleGain& hole : course.holes)
            if (std::ranges::find(change.change.in, hole.after.club) != change.change.in.end()) ++holes;
    return holes;
}

std::string why_words(const HoleGain& hole, DisplayUnits units) {
    if (hole.before.club == hole.after.club) return {};
    std::string words;
    for (const Change& change : largest_changes(hole, most_changes))
        words += fmt::format("{}{} {} instead of {}", words.empty() ? "" : ", ", change.ground,
                             share_text(change.after), share_text(change.before));
    const double further = hole.after.leave_mean_m - hole.before.leave_mean_m;
    if (std::abs(further) >= shown_leave_m)
        words += fmt::format("{}{} {} to go", words.empty() ? "" : ", ",
                             length_text(std::abs(further), units), further > 0.0 ? "more" : "less");
    return words.empty() ? "much the same from either club" : words;
}

std::string short_why_words(const HoleGain& hole, DisplayUnits units) {
    if (hole.before.club == hole.after.club) return "other shots change";
    std::string words;
    for (const Change& change : largest_changes(hole, 1))
        words += fmt::format("{} {} \u2192 {}", change.ground, share_text(change.before),
                             share_text(change.after));
    const double further = hole.after.leave_mean_m - hole.before.leave_mean_m;
    if (std::abs(further) >= shown_leave_m)
        words += fmt::format("{}{:+.0f} {}", words.empty() ? "" : ", ", in_display_units(further, units),
                             display_unit(units));
    return words.empty() ? "much the same" : words;
}

std::string sureness_words(const WeighedChange& change) {
    if (std::max({std::abs(change.gain), std::abs(change.low), std::abs(change.high)}) < shown_strokes)
        return "Saves nothing and costs nothing: the score is the same with either bag.";
    std::string words = fmt::format(
        "Saves {} strokes a round; 90 % of what the recorded shots leave possible lies between {} and {}, "
        "and in {} of it "
        "the change helps.",
        gain_text(change.gain), gain_text(change.low), gain_text(change.high), share_text(change.chance));
    if (change.gain < change.low || change.gain > change.high)
        words += fmt::format(
            " That figure is of the patterns as they stand and lies outside of it: what is open about them "
            "is "
            "lopsided, and {} is its mean. Trust the interval.",
            gain_text(change.drawn_mean));
    return words;
}

std::string helps_text(const WeighedChange& change) {
    return change.verdict == BagVerdict::not_compared ? "-" : share_text(change.chance);
}

std::string next_step_words(const WeighView& view, const WeighedChange& change) {
    const bool supposes =
        std::ranges::any_of(change.change.in, [&](std::size_t club) { return is_supposed(view, club); });
    const std::string why = capitalised(std::string(undecided_words(change.verdict == BagVerdict::alike)));
    switch (change.verdict) {
        case BagVerdict::alike:
            return fmt::format(
                "{}, within {:.2g} strokes a round whatever of it is true. Whichever feels better: the score "
                "will not tell them apart.",
                why, view.weighing.assumptions.engine.equal_within);
        case BagVerdict::not_compared:
            return not_compared_words(view, change);
        case BagVerdict::saves:
            return supposes
                       ? "Worth finding out whether it comes true: record shots with it, and weigh those."
                       : "Worth a trial on the course; the numbers are for it.";
        case BagVerdict::costs:
            if (supposes) return "Not worth it, even if it comes true.";
            return fmt::format("Leave the {} as it is; the numbers are against it.",
                               has_baseline(change) ? "club" : "bag");
        case BagVerdict::not_known:
            break;
    }
    if (!change.more) return fmt::format("{}, and no more shots of one club would tell.", why);
    const MoreShots& more = *change.more;
    const std::string worth = more.worth < shown_strokes ? "less than 0.01 strokes a round"
                                                         : fmt::format("{:.2f} strokes a round", more.worth);
    const std::string club = name_text(club_name(view, more.club));
    if (more.settles)
        return fmt::format(
            "{}: about {} more shots with the {} would raise the chance of choosing the better bag to {}. "
            "What they tell is worth {} on average.",
            why, more.shots, club, share_text(more.chance_right), worth);
    return fmt::format(
        "{}: even {} more shots with the {} would leave the chance of choosing the better bag at {}; what "
        "they tell is worth {} on average.",
        why, more.shots, club, share_text(more.chance_right), worth);
}

std::string left_at_home_words(const WeighView& view, const WeighedChange& change) {
    if (change.missed.empty()) return {};
    std::string words = fmt::format(
        "With 14 clubs in the bag the {} stays at home: it would be missed by {:.2f} strokes a round",
        name_text(club_name(view, change.missed.front().club)), change.missed.front().strokes);
    if (change.missed.size() > 1)
        words += fmt::format(", the {} by {:.2f}", name_text(club_name(view, change.missed[1].club)),
                             change.missed[1].strokes);
    return words + ".";
}

std::string round_words(const WeighView& view) {
    if (view.courses.size() > 1) return fmt::format("a round, the mean of {} courses", view.courses.size());
    const std::size_t holes = view.courses.front().holes.size();
    if (const auto straight = straight_title(view)) return *straight;
    return holes == 1 ? "the hole" : fmt::format("a round of {} holes", holes);
}

}  // namespace landwidth
