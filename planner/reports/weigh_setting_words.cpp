#include "planner/reports/weigh_setting_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "planner/reports/display_length.hpp"
#include "planner/reports/way_words.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {

namespace {

std::string club_name(const WeighView& view, std::size_t club) {
    return name_text(view.golfer.clubs.at(club).name);
}

// "the driver", "the driver and the 3-wood", "the driver, the 3-wood and 2 more".
std::string the_clubs(const WeighView& view, const std::vector<std::size_t>& clubs) {
    constexpr std::size_t most_named = 3;
    const std::size_t named = clubs.size() > most_named ? most_named - 1 : clubs.size();
    std::string words;
    for (std::size_t i = 0; i < named; ++i) {
        const bool last = i + 1 == clubs.size();
        words += fmt::format("{}the {}", i == 0 ? "" : last ? " and " : ", ", club_name(view, clubs[i]));
    }
    if (named < clubs.size()) words += fmt::format(" and {} more", clubs.size() - named);
    return words;
}

std::string names_of(const WeighView& view, const std::vector<std::size_t>& clubs) {
    std::string words;
    for (const std::size_t club : clubs)
        words += (words.empty() ? "" : ", ") + club_name(view, club);
    return words;
}

std::string length_range(double from_m, double to_m, const char* between, DisplayUnits units) {
    if (from_m == to_m) return length_text(from_m, units);
    return fmt::format("{} {} {}", length_number(from_m, units), between, length_text(to_m, units));
}

// "woods on 4 holes, a penalty area on 2, out of bounds on 2, nothing on 6".
std::string mix_words(const std::vector<StraightHole>& holes) {
    struct Kind {
        const char* words;
        std::array<ChartTrouble, 2> troubles;
    };
    static constexpr std::array kinds{
        Kind{"woods", {ChartTrouble::trees, ChartTrouble::trees}},
        Kind{"a penalty area on one side", {ChartTrouble::water_left, ChartTrouble::water_right}},
        Kind{"out of bounds on one side", {ChartTrouble::out_left, ChartTrouble::out_right}},
        Kind{"only more rough", {ChartTrouble::rough, ChartTrouble::rough}}};
    std::string words;
    for (const Kind& kind : kinds) {
        const auto count = std::ranges::count_if(holes, [&](const StraightHole& hole) {
            return std::ranges::find(kind.troubles, hole.trouble) != kind.troubles.end();
        });
        if (count > 0) words += fmt::format("{}{} on {}", words.empty() ? "" : ", ", kind.words, count);
    }
    return words;
}

}  // namespace

std::optional<std::string> straight_title(const WeighView& view) {
    if (!view.weighing.straight) return std::nullopt;
    return fmt::format("{} straight holes", view.weighing.straight->holes.size());
}

std::string straight_words(const WeighView& view) {
    if (!view.weighing.straight) return {};
    const StraightHoles& straight = *view.weighing.straight;
    const auto [narrow, wide] = std::ranges::minmax(straight.holes, {}, &StraightHole::width_m);
    const auto [shortest, longest] = std::ranges::minmax(straight.holes, {}, &StraightHole::length_m);
    const std::string beyond =
        straight.trouble ? trouble_words(*straight.trouble) + " on every hole" : mix_words(straight.holes);
    return fmt::format(
        "No course was given: the bags play {} straight holes without par 3s, landing width {}, {} long, "
        "trouble: {}.",
        straight.holes.size(), length_range(narrow.width_m, wide.width_m, "or", view.units),
        length_range(shortest.length_m, longest.length_m, "to", view.units), beyond);
}

std::string trouble_words(ChartTrouble trouble) {
    switch (trouble) {
        case ChartTrouble::rough:
            break;
        case ChartTrouble::trees:
            return "woods";
        case ChartTrouble::water_left:
            return "water left";
        case ChartTrouble::water_right:
            return "water right";
        case ChartTrouble::out_left:
            return "out left";
        case ChartTrouble::out_right:
            return "out right";
    }
    return "rough only";
}

bool has_baseline(const WeighedChange& change) {
    return !change.change.before.empty();
}

std::string baseline_label(const WeighView& view, const WeighedChange& change) {
    const Exchange& before = change.change.before;
    return fmt::format("from: {}{}", names_of(view, before.in),
                       before.out.empty() ? "" : fmt::format(" for {}", names_of(view, before.out)));
}

std::string baseline_words(const WeighView& view, const WeighedChange& change) {
    if (!has_baseline(change)) return {};
    const Exchange& before = change.change.before;
    const std::string place = before.out.empty()
                                  ? "besides the bag of today"
                                  : fmt::format("in the place of {}", the_clubs(view, before.out));
    return fmt::format("It starts from a bag of its own, with {} {}: {:.2f} strokes.",
                       the_clubs(view, before.in), place, change.baseline_strokes);
}

std::string before_word(const WeighedChange& change) {
    return has_baseline(change) ? "before" : "today";
}

bool is_supposed(const WeighView& view, std::size_t club) {
    return std::ranges::find(view.weighing.supposed, club, &SupposedClub::club) !=
           view.weighing.supposed.end();
}

std::vector<SupposedClub> supposed_in(const WeighView& view, const WeighedChange& change) {
    std::vector<SupposedClub> supposed = view.weighing.supposed;
    std::erase_if(supposed, [&](const SupposedClub& club) {
        const auto among = [&](const std::vector<std::size_t>& clubs) {
            return std::ranges::find(clubs, club.club) != clubs.end();
        };
        const BagChange& asked = change.change;
        return !among(asked.in) && !among(asked.out) && !among(asked.before.in);
    });
    return supposed;
}

std::vector<std::string> supposed_words(const WeighView& view, const WeighedChange& change) {
    std::vector<std::string> sentences;
    for (const SupposedClub& club : supposed_in(view, change))
        sentences.push_back(fmt::format(
            "Supposed, not hit: the {} is the {} with {}. What that is worth is said here, not whether it "
            "comes true.",
            club_name(view, club.club), club_name(view, club.of), name_text(club.words, 160)));
    return sentences;
}

std::vector<std::string> two_way_words(const WeighView& view) {
    std::vector<std::string> sentences;
    for (const ComparedClub& compared : view.weighing.compared) {
        const std::string ways = ways_words(*view.golfer.clubs.at(compared.club).pattern, view.units);
        if (!ways.empty())
            sentences.push_back(
                fmt::format("The {} goes two ways, {} of the aim, and is aimed and weighed so.",
                            club_name(view, compared.club), ways));
    }
    return sentences;
}

std::string without_shots_words(const WeighView& view, const WeighedChange& change) {
    const std::vector<std::size_t>& clubs = change.baseline_without_shots;
    if (clubs.empty()) return {};
    return fmt::format("No shots with {} are recorded: the comparison is with {}, not with the golfer's own.",
                       the_clubs(view, clubs), clubs.size() == 1 ? "a typical club" : "typical clubs");
}

std::vector<std::string> baseline_warnings(const WeighView& view) {
    std::vector<std::string> warnings;
    for (const WeighedChange& change : view.weighing.changes) {
        const std::string words = without_shots_words(view, change);
        if (!words.empty() && std::ranges::find(warnings, words) == warnings.end()) warnings.push_back(words);
    }
    return warnings;
}

}  // namespace landwidth
