#include <fmt/format.h>

#include <algorithm>

#include "planner/reports/closing_text.hpp"
#include "planner/reports/display_length.hpp"
#include "planner/reports/text_table.hpp"
#include "planner/reports/wind_card_words.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

constexpr auto left = TextTable::Align::left;
constexpr auto right = TextTable::Align::right;

std::string title(const WindCardView& view) {
    const std::string& course = view.course.name.empty() ? view.course.source : view.course.name;
    std::string words = "Wind card";
    if (!view.golfer.name.empty()) words += fmt::format(" for {}", name_text(view.golfer.name));
    if (!course.empty()) words += fmt::format(": {}", name_text(course));
    return wrapped(words) + wrapped(capitalised(wind_card_day_words(view)) + ".");
}

std::string wind_cell(const WindCardView& view, const WindCardHole& hole, std::size_t direction) {
    const std::string& club = wind_card_club(view, hole.wind_from.at(direction));
    switch (wind_effect(hole, direction)) {
        case WindEffect::none:
            break;
        case WindEffect::toss_up:
            return "~";
        case WindEffect::change:
        case WindEffect::settles:
            return club;
        case WindEffect::toss_up_of_other:
            // In front, where shortening a long name leaves it.
            return "~" + club;
    }
    return ".";
}

std::string holes_table(const WindCardView& view) {
    std::vector<TextTable::Column> columns{{"hole", left, true}, {"par", right}, {"still air", left, true}};
    for (std::size_t direction = 0; direction < wind_card_directions; ++direction)
        columns.push_back({std::string(wind_card_direction(direction)), left, true});
    TextTable table(columns);
    for (std::size_t i = 0; i < view.card.holes.size(); ++i) {
        const WindCardHole& hole = view.card.holes[i];
        std::vector<std::string> row{view.course.holes.at(i).ref, fmt::format("{}", view.course.holes[i].par),
                                     (hole.still.toss_up ? "~" : "") + wind_card_club(view, hole.still)};
        for (std::size_t direction = 0; direction < wind_card_directions; ++direction)
            row.push_back(wind_cell(view, hole, direction));
        table.add_row(row);
    }
    return table.text();
}

std::string round_table(const WindCardView& view) {
    std::vector<TextTable::Column> columns{{"round", left}, {"still air", right}};
    std::vector<std::string> strokes{"strokes", fmt::format("{:.2f}", view.card.still_strokes)};
    std::vector<std::string> against{"against still air", ""};
    for (std::size_t direction = 0; direction < wind_card_directions; ++direction) {
        columns.push_back({std::string(wind_card_direction(direction)), right});
        strokes.push_back(fmt::format("{:.2f}", view.card.strokes.at(direction)));
        against.push_back(against_still_text(view.card, direction));
    }
    TextTable table(columns);
    table.add_row(strokes);
    table.add_row(against);
    return table.text();
}

std::string flips(const WindCardView& view) {
    const std::vector<std::string> sentences = flip_words(view);
    if (sentences.empty()) return "\nNo wind of this card changes the club on a tee, toss-ups aside.\n";
    return bulleted("Where the wind changes the club", sentences);
}

}  // namespace

std::string wind_card_text(const WindCardView& view) {
    return title(view) + "\n" + holes_table(view) + "\n" +
           wrapped(
               "A column is a wind from there. A dot: the club of still air. ~: a toss-up with the next "
               "club; either will do.") +
           "\n" + round_table(view) + flips(view) + bulleted("Warnings", view.card.warnings) +
           bulleted("Keep in mind", wind_card_cautions()) + "\n" + map_line(view.course);
}

}  // namespace landwidth
