#include "planner/reports/words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "planner/reports/display_length.hpp"
#include "planner/reports/score_words.hpp"

namespace landwidth {
namespace {

bool starts_character(char c) {
    return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
}

// Whether a text holds letters of the scripts written from right to left: U+0590..U+08FF and their
// presentation forms, told from the lead bytes of UTF-8.
bool may_run_right_to_left(std::string_view text) {
    return std::any_of(text.begin(), text.end(), [](char c) {
        const auto byte = static_cast<unsigned char>(c);
        return (byte >= 0xD6U && byte <= 0xDFU) || byte == 0xE0U || byte == 0xEFU;
    });
}

constexpr std::string_view left_to_right_mark = "\u200E";

std::string_view thing_name(Lie lie) {
    switch (lie) {
        case Lie::penalty_yellow:
        case Lie::penalty_red:
            return "penalty area";
        case Lie::out_of_bounds:
            return "out-of-bounds line";
        default:
            return lie_name(lie);
    }
}

std::string side_words(double offset_m, DisplayUnits units) {
    return fmt::format("{} {}", length_text(std::abs(offset_m), units), offset_m < 0.0 ? "left" : "right");
}

bool rounds_to_nothing(double length_m, DisplayUnits units) {
    return std::abs(in_display_units(length_m, units)) < 0.5;
}

std::string sighting_words(const Sighting& sighting, DisplayUnits units) {
    const std::string_view thing = thing_name(sighting.lie);
    const std::string out = length_text(sighting.distance_m, units);
    if (sighting.mark == Sighting::Mark::over || sighting.mark == Sighting::Mark::towards) {
        const char* how = sighting.lie == Lie::green                 ? "at"
                          : sighting.mark == Sighting::Mark::towards ? "towards"
                                                                     : "over";
        return fmt::format("{} the {} {} out", how, thing, out);
    }
    const char* edge = sighting.mark == Sighting::Mark::left_edge ? "left" : "right";
    if (rounds_to_nothing(sighting.offset_m, units)) {
        return fmt::format("at the {} edge of the {} {} out", edge, thing, out);
    }
    return fmt::format("{} of the {} edge of the {} {} out", side_words(sighting.offset_m, units), edge,
                       thing, out);
}

// What a golfer hears about, in the order of telling; the two kinds of penalty area are one.
struct Outcome {
    std::string_view name;
    double share;
};

std::vector<Outcome> outcomes(const TeeChoice& choice) {
    const auto share = [&](Lie lie) { return choice.lies[index_of(lie)]; };
    return {{"fairway", share(Lie::fairway)},
            {"green", share(Lie::green)},
            {"penalty area", share(Lie::penalty_yellow) + share(Lie::penalty_red)},
            {"out of bounds", share(Lie::out_of_bounds)},
            {"trees", share(Lie::trees)},
            {"bunker", share(Lie::bunker)}};
}

constexpr double worth_telling = 0.005;

std::string outcome_words(const TeeChoice& choice) {
    std::vector<Outcome> told = outcomes(choice);
    // The green first where it is what most balls find: on a par 3.
    if (told[1].share > told[0].share) std::swap(told[0], told[1]);
    std::string words;
    for (const Outcome& outcome : told) {
        if (outcome.share < worth_telling) continue;
        if (!words.empty()) words += ", ";
        words += fmt::format("{} {}", share_text(outcome.share), outcome.name);
    }
    return words.empty() ? "rough only" : words;
}

std::string club_name(const PlanView& view, const TeeChoice& choice) {
    return name_text(view.golfer.clubs.at(choice.club).name);
}

// What `choice` finds more of (or less, for the fairway) than `best`, the largest change first.
std::vector<std::string> worse_outcomes(const TeeChoice& choice, const TeeChoice& best) {
    struct Change {
        double size;
        std::string words;
    };
    std::vector<Change> changes;
    const auto theirs = outcomes(choice);
    const auto ours = outcomes(best);
    for (std::size_t i = 0; i < theirs.size(); ++i) {
        const bool good = theirs[i].name == "fairway" || theirs[i].name == "green";
        const double size = good ? ours[i].share - theirs[i].share : theirs[i].share - ours[i].share;
        if (size < 0.01) continue;
        changes.push_back({size, fmt::format("{} {} instead of {}", share_text(theirs[i].share),
                                             theirs[i].name, share_text(ours[i].share))});
    }
    std::stable_sort(changes.begin(), changes.end(),
                     [](const Change& a, const Change& b) { return a.size > b.size; });
    std::vector<std::string> words;
    words.reserve(changes.size());
    for (const Change& change : changes)
        words.push_back(change.words);
    return words;
}

}  // namespace

std::string capitalised(std::string text) {
    if (!text.empty() && text.front() >= 'a' && text.front() <= 'z') {
        text.front() = static_cast<char>(text.front() - 'a' + 'A');
    }
    return text;
}

std::string name_text(std::string_view name, std::size_t longest) {
    std::string text;
    std::size_t characters = 0;
    for (const char c : name) {
        if (starts_character(c) && ++characters > longest) {
            while (!text.empty() && !starts_character(text.back()))
                text.pop_back();
            if (!text.empty()) text.pop_back();
            text += "…";
            break;
        }
        text += c;
    }
    if (may_run_right_to_left(text)) text += left_to_right_mark;
    return text;
}

std::string share_text(double share) {
    const double percent = std::round(100.0 * share);
    if (share > 0.0 && percent < 1.0) return "<1 %";
    if (share < 1.0 && percent > 99.0) return ">99 %";
    return fmt::format("{:.0f} %", percent + 0.0);
}

double trouble_share(const TeeChoice& choice) {
    double share = 0.0;
    for (const Lie lie :
         {Lie::bunker, Lie::trees, Lie::penalty_yellow, Lie::penalty_red, Lie::out_of_bounds}) {
        share += choice.lies[index_of(lie)];
    }
    return share;
}

std::string aim_words(const TeeChoice& choice, DisplayUnits units) {
    const AimDescription& aim = choice.description;
    std::string words = rounds_to_nothing(aim.offset_m, units)
                            ? std::string("on the centre line")
                            : fmt::format("{} of the centre line", side_words(aim.offset_m, units));
    if (aim.sighting) words += ", " + sighting_words(*aim.sighting, units);
    return words;
}

std::string short_aim_words(const TeeChoice& choice, DisplayUnits units) {
    const double offset_m = choice.description.offset_m;
    return rounds_to_nothing(offset_m, units) ? "centre" : side_words(offset_m, units);
}

std::string verdict_words(const PlanView& view, std::size_t hole) {
    const HolePlan& plan = view.plan.holes.at(hole);
    const TeeChoice& best = plan.choices.at(plan.verdict.best);
    const std::string what =
        fmt::format("{}, {}: {}", club_name(view, best), aim_words(best, view.units), outcome_words(best));
    if (!plan.verdict.over || !plan.verdict.margin) {
        return capitalised(what) + "; no other club is worth computing here.";
    }
    const std::string next = club_name(view, plan.choices.at(*plan.verdict.over));
    const std::string cost =
        fmt::format("{} costs {}", next, loss_words(view.plan.aim_for, *plan.verdict.margin));
    if (!plan.verdict.toss_up) return fmt::format("{}; {}.", capitalised(what), cost);
    return fmt::format("A toss-up between {} and {}, {}. {}; {}.", club_name(view, best), next,
                       undecided_words(plan.verdict.alike), capitalised(what), cost);
}

std::string why_not_driver_words(const PlanView& view, std::size_t hole) {
    const HolePlan& plan = view.plan.holes.at(hole);
    const TeeChoice& best = plan.choices.at(plan.verdict.best);
    const auto is_driver = [&](const TeeChoice& choice) {
        return view.golfer.clubs.at(choice.club).kind == ClubKind::driver;
    };
    const auto driver = std::find_if(plan.choices.begin(), plan.choices.end(), is_driver);
    if (driver == plan.choices.end() || is_driver(best)) return {};
    const auto worse = worse_outcomes(*driver, best);
    const std::string finds = worse.empty()
                                  ? fmt::format("no more trouble, but leaves {} instead of {}",
                                                length_text(driver->leave_mean_m, view.units),
                                                length_text(best.leave_mean_m, view.units))
                                  : worse.front() + (worse.size() > 1 ? ", " + worse[1] : std::string());
    const AimFor aim = view.plan.aim_for;
    return fmt::format("{} finds {}: it costs {} {} {}.", capitalised(club_name(view, *driver)), finds,
                       loss_words(aim, loss(aim, *driver, best)), aim == AimFor::strokes ? "than" : "against",
                       club_name(view, best));
}

std::string_view undecided_words(bool alike) {
    return alike ? "as good as each other" : "not known yet";
}

std::string certainty_words(const HolePlan& hole) {
    if (!hole.verdict.over) return {};
    const std::string share = share_text(hole.verdict.confidence);
    if (!hole.verdict.toss_up)
        return fmt::format("The same club stays best in {} of the plausible patterns.", share);
    return fmt::format("A toss-up, {}: the same club stays best in {} of the plausible patterns.",
                       undecided_words(hole.verdict.alike), share);
}

std::vector<std::string> caution_words(const PlanView& view, std::size_t hole) {
    const HolePlan& plan = view.plan.holes.at(hole);
    const TeeChoice& best = plan.choices.at(plan.verdict.best);
    std::vector<std::string> sentences;
    for (const Caution& caution : best.cautions) {
        const std::string label =
            caution.label.empty() ? std::string() : fmt::format(" ({})", name_text(caution.label));
        const std::string share = share_text(caution.share);
        switch (caution.kind) {
            case Surrounding::Kind::building:
                sentences.push_back(fmt::format(
                    "A building{} lies inside the pattern: {} of the balls land on it.", label, share));
                break;
            case Surrounding::Kind::road:
                sentences.push_back(fmt::format(
                    "A road{} lies inside the pattern: {} of the balls land on it; let traffic pass.", label,
                    share));
                break;
            case Surrounding::Kind::path:
                sentences.push_back(fmt::format(
                    "A path{} lies inside the pattern: {} of the balls land on it; look for people.", label,
                    share));
                break;
            case Surrounding::Kind::other_hole:
                sentences.push_back(fmt::format(
                    "Another hole{} lies inside the pattern: {} of the balls land on its green or "
                    "tees; wait until nobody is there.",
                    label, share));
                break;
        }
    }
    return sentences;
}

std::vector<std::string> cautions_of_any_shot(std::string_view setting) {
    return {
        "Nobody may be within reach of the shot, walkers, greenkeepers and other holes included; warn at "
        "once when a ball goes their way.",
        "In a thunderstorm stop and take shelter at once.",
        fmt::format("The figures are averages over many shots with the patterns given, {}: advice for a long "
                    "run, no promise for one shot.",
                    setting),
    };
}

std::vector<std::string> standing_cautions(std::string_view setting) {
    std::vector<std::string> all = cautions_of_any_shot(setting);
    all.insert(all.end() - 1,
               "Local rules, the committee, and what you see on the day come before this plan; the map "
               "may be old or incomplete.");
    return all;
}

}  // namespace landwidth
