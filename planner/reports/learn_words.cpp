#include "planner/reports/learn_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <set>

#include "golfer-profiles/evidence/mishit_chance.hpp"
#include "planner/reports/display_length.hpp"
#include "planner/reports/evidence_figures.hpp"
#include "planner/reports/way_words.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

// Mishits of one club, in the list.
constexpr std::size_t most_told = 25;

// A difference is told, with its reason, when it is more than half of what 90 % of the evidence leaves open,
// or more than so much: of the carry for carry and side, of the recorded spread, in shares of mishits.
// Assumptions.
constexpr double told_of_carry = 0.02, told_of_spread = 0.10, told_of_mishits = 0.05;

std::string of_club(const std::string& name, const std::string& words) {
    return fmt::format("{}: {}", name_text(name), words);
}

std::string count_words(int count, std::string_view one, std::string_view more) {
    return fmt::format("{} {}", count, count == 1 ? one : more);
}

// A figure of the model beside the recorded one.
struct Compared {
    std::string_view what;
    std::string model, recorded;  // as shown
    bool differs;
};

bool is_told(double recorded, const OpenFigure& model, double limit) {
    const double off = std::abs(model.middle - recorded);
    return off > 0.5 * (model.high - model.low) || off > limit;
}

std::vector<Compared> compared(const LearntClub& club, DisplayUnits units) {
    const RawShots& raw = club.evidence.raw;
    const OpenPattern& open = club.evidence.open;
    std::vector<Compared> all;
    const auto add = [&](std::string_view what, const std::string& model, const std::string& recorded,
                         bool told) {
        all.push_back({what, model, recorded, told && model != recorded});
    };
    const double of_carry = told_of_carry * std::abs(raw.carry.mean);
    add("carry", length_number(open.carry.middle, units), length_number(raw.carry.mean, units),
        is_told(raw.carry.mean, open.carry, of_carry));
    add("side", side_number(open.side.middle, units), side_number(raw.side.mean, units),
        is_told(raw.side.mean, open.side, of_carry));
    // One shot has no spread to differ from.
    if (raw.shots > 1) {
        const auto add_spread = [&](std::string_view what, const OpenFigure& model, double recorded) {
            add(what, spread_number(model.middle, units), spread_number(recorded, units),
                is_told(recorded, model, told_of_spread * recorded));
        };
        add_spread("carry sd", open.carry_sd, raw.carry.sd);
        add_spread("side sd", open.side_sd, raw.side.sd);
    }
    const std::size_t mishits = mishits_among(club.evidence);
    const double share = static_cast<double>(mishits) / static_cast<double>(raw.shots);
    add("mishits", share_text(open.mishit_share.middle), fmt::format("{} of {}", mishits, raw.shots),
        raw.shots > 1 && is_told(share, open.mishit_share, told_of_mishits));
    return all;
}

// That mishits stand apart, and what the others come to.
std::string mishits_apart(const LearntClub& club, DisplayUnits units) {
    const auto mishits = static_cast<int>(mishits_among(club.evidence));
    if (mishits == 0) return {};
    std::string words =
        fmt::format("{} apart", mishits == 1 ? "1 shot taken for a mishit stands"
                                             : fmt::format("{} shots taken for mishits stand", mishits));
    const RawShots& rest = club.evidence.raw_usual;
    if (rest.shots > 1)
        words += fmt::format(" (the other {}: carry {}, side {}, carry sd {}, side sd {})", rest.shots,
                             length_number(rest.carry.mean, units), side_number(rest.side.mean, units),
                             spread_number(rest.carry.sd, units), spread_number(rest.side.sd, units));
    return words;
}

std::string sessions_apart(const LearntClub& club, const Golfer& golfer) {
    std::set<std::size_t> sessions;
    bool fade = false;
    for (const ShotTime& time : club.club.learnt_from->times) {
        sessions.insert(time.session);
        fade = fade || golfer.sessions.at(time.session).weight < 0.99;
    }
    if (sessions.size() < 2) return {};
    return fmt::format("{} sessions have a shift of their own each{}", sessions.size(),
                       fade ? ", and older ones weigh less" : "");
}

// How far others than the club's own shots carry the model; empty where they hardly do.
std::string leaning_words(const LearntClub& club) {
    const double others = 1.0 - club.recorded_share;
    const std::string_view known = club.source == PriorSource::own && club.earlier_shots == 0
                                       ? "from the pattern stated before and the golfer's other clubs"
                                       : "from the golfer's other clubs and the level";
    constexpr double nearly_all = 0.9;
    if (club.recorded_share >= nearly_all) return {};
    return fmt::format("{} few, so {} of the spread comes {}",
                       count_words(club.club.pattern->shots, "shot is", "shots are"), share_text(others),
                       known);
}

// At least one.
std::vector<std::string> reasons(const LearnView& view, const LearntClub& club) {
    std::vector<std::string> all{mishits_apart(club, view.units)};
    if (club.logged.lost > 0)
        all.push_back(count_words(club.logged.lost, "lost ball counts among the wide ones",
                                  "lost balls count among the wide ones"));
    if (club.prior.shots > 0)
        all.push_back(count_words(club.prior.shots, "earlier shot is known by its pattern only",
                                  "earlier shots are known by their pattern only"));
    all.push_back(sessions_apart(club, view.learnt.golfer));
    all.push_back(leaning_words(club));
    std::erase(all, std::string());
    if (all.empty()) all.emplace_back("shots far out weigh less than those near the middle");
    return all;
}

std::string row_words(const LearnView& view, const LandedShot& shot) {
    if (view.logs.size() == 1) return fmt::format("row {}", shot.row);
    const std::string file = std::filesystem::path(view.logs[shot.log].file).filename().string();
    return fmt::format("{} row {}", name_text(file), shot.row);
}

// How a shot differs from the club's usual one: "165 yd, 46 yd short of the usual, 20 yd right".
std::string landing_words(const LearntClub& club, const ShotOffset& landing, DisplayUnits units) {
    const Spread& usual = club.club.pattern->usual;
    const double longer = landing.carry_m - usual.centre.carry_m;
    const double aside = landing.side_m - usual.centre.side_m;
    std::string words = length_text(landing.carry_m, units);
    if (std::abs(longer) > usual.carry_sd_m) {
        words += fmt::format(", {} {} the usual", length_text(std::abs(longer), units),
                             longer < 0 ? "short of" : "past");
    }
    if (std::abs(aside) > usual.side_sd_m) {
        words +=
            fmt::format(", {} {} of it", length_text(std::abs(aside), units), aside < 0 ? "left" : "right");
    }
    return words;
}

}  // namespace

std::string why_differs_words(const LearnView& view, const LearntClub& club) {
    if (club.evidence.raw.shots == 0) return {};
    std::string differing, as_recorded;
    for (const Compared& figure : compared(club, view.units)) {
        std::string& words = figure.differs ? differing : as_recorded;
        words += fmt::format("{}{} {}{}", words.empty() ? "" : ", ", figure.what, figure.model,
                             figure.differs ? " and not " + figure.recorded : "");
    }
    if (differing.empty()) return of_club(club.club.name, fmt::format("much as recorded: {}.", as_recorded));
    std::string because;
    for (const std::string& reason : reasons(view, club))
        because += (because.empty() ? "" : "; ") + reason;
    return of_club(club.club.name, fmt::format("{}, because {}.", differing, because));
}

std::vector<std::string> why_differs_words(const LearnView& view) {
    std::vector<std::string> sentences;
    for (const LearntClub& club : view.learnt.clubs)
        if (std::string words = why_differs_words(view, club); !words.empty())
            sentences.push_back(std::move(words));
    return sentences;
}

std::vector<std::string> prior_words(const LearnView& view) {
    std::vector<std::string> sentences;
    for (const LearntClub& club : view.learnt.clubs) {
        const ShotPattern& prior = club.prior;
        const std::string figures =
            fmt::format("{} of carry, side sd {}", length_text(prior.usual.centre.carry_m, view.units),
                        spread_number(prior.usual.side_sd_m, view.units));
        const std::string before =
            club.source == PriorSource::typical ? fmt::format("typical of the level, {}", figures)
            : club.earlier_shots > 0
                ? fmt::format("{} earlier shots, and before them {}", club.earlier_shots, figures)
                : fmt::format("the pattern the profile states, {}", figures);
        sentences.push_back(of_club(club.club.name, before));
    }
    return sentences;
}

std::vector<std::string> shape_words(const LearnView& view) {
    std::vector<std::string> sentences;
    for (const ShapeFound& shape : view.learnt.shapes) {
        const auto club = std::ranges::find_if(view.learnt.clubs, [&](const LearntClub& learnt) {
            return same_name(family_of(learnt.club), shape.club);
        });
        if (club == view.learnt.clubs.end()) continue;
        sentences.push_back(
            of_club(shape.club,
                    fmt::format("{}; of {} sets drawn from one usual shot, {} look as odd as the {} recorded",
                                ways_words(club->club.pattern->usual, shape.ways, view.units), shape.drawn,
                                shape.as_odd, shape.shots)));
    }
    return sentences;
}

std::vector<std::string> strike_words(const LearnView& view) {
    std::vector<std::string> sentences;
    const auto slope = [](const StrikeSlope& found, double unit, std::string_view what) {
        return fmt::format("; {:+.1f} {} a cm (standard error {:.1f}, {} shots)", found.per_cm / unit, what,
                           found.standard_error / unit, found.shots);
    };
    const bool yards = view.units == DisplayUnits::yards;
    for (const StrikeEffect& effect : view.learnt.strikes) {
        std::string words = fmt::format(
            "{:.0f} mm from the centre of the face as a rule (root mean square), {:.0f} mm "
            "towards the {} on average",
            1000.0 * effect.off_centre_m, 1000.0 * std::abs(effect.mean_toe_m),
            effect.mean_toe_m < 0 ? "heel" : "toe");
        if (effect.ball_speed_share)
            words += slope(*effect.ball_speed_share, 0.01, "% of ball speed off the centre");
        if (effect.side_m)
            words += slope(*effect.side_m, yards ? metres_per_yard : 1.0,
                           yards ? "yd to the right towards the toe" : "m to the right towards the toe");
        sentences.push_back(of_club(effect.club, words));
    }
    return sentences;
}

std::vector<std::string> mishit_words(const LearnView& view) {
    std::vector<std::string> sentences;
    for (const LearntClub& club : view.learnt.clubs) {
        const std::span<const double> chances = logged_mishit_chance(club);
        std::size_t told = 0;
        for (std::size_t i = 0; i < chances.size(); ++i) {
            if (chances[i] <= taken_for_mishit || ++told > most_told) continue;
            const LandedShot& shot = club.logged.shots[i];
            sentences.push_back(
                fmt::format("{}, {}: {} ({} sure)", name_text(club.club.name), row_words(view, shot),
                            landing_words(club, shot.landing, view.units), share_text(chances[i])));
        }
        if (const std::size_t earlier = mishits_among(club.evidence) - told; earlier > 0)
            sentences.push_back(of_club(club.club.name, fmt::format("{} of the earlier shots", earlier)));
        if (told > most_told)
            sentences.push_back(of_club(club.club.name, fmt::format("and {} more", told - most_told)));
    }
    return sentences;
}

}  // namespace landwidth
