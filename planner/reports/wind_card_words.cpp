#include "planner/reports/wind_card_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "planner/reports/day_words.hpp"
#include "planner/reports/wind_words.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {

std::string_view wind_card_direction(std::size_t direction) {
    constexpr std::size_t points_apart = compass_points.size() / wind_card_directions;
    return compass_points.at(points_apart * direction);
}

Bearing wind_card_bearing(std::size_t direction) {
    return Bearing::from_degrees(360.0 * static_cast<double>(direction) / wind_card_directions);
}

WindEffect wind_effect(const WindCardHole& hole, std::size_t direction) {
    const WindCardVerdict& verdict = hole.wind_from.at(direction);
    if (verdict.club == hole.still.club) return verdict.toss_up ? WindEffect::toss_up : WindEffect::none;
    if (verdict.toss_up) return WindEffect::toss_up_of_other;
    const bool flips = std::ranges::find(hole.flips, direction) != hole.flips.end();
    return flips ? WindEffect::change : WindEffect::settles;
}

const std::string& wind_card_club(const WindCardView& view, const WindCardVerdict& verdict) {
    return view.golfer.clubs.at(verdict.club).name;
}

std::vector<std::string> change_words(const WindCardView& view, const WindCardHole& hole) {
    std::vector<std::pair<std::size_t, std::string>> by_club;
    for (std::size_t direction = 0; direction < wind_card_directions; ++direction) {
        const WindEffect effect = wind_effect(hole, direction);
        if (effect != WindEffect::change && effect != WindEffect::settles) continue;
        const std::size_t club = hole.wind_from.at(direction).club;
        const auto known =
            std::ranges::find_if(by_club, [club](const auto& entry) { return entry.first == club; });
        const std::string name(wind_card_direction(direction));
        if (known == by_club.end())
            by_club.emplace_back(club, name);
        else
            known->second += ", " + name;
    }
    std::vector<std::string> words;
    for (const auto& entry : by_club)
        words.push_back(fmt::format("{} with the wind from {}",
                                    name_text(view.golfer.clubs.at(entry.first).name), entry.second));
    return words;
}

std::vector<std::string> flip_words(const WindCardView& view) {
    std::vector<std::string> sentences;
    for (std::size_t i = 0; i < view.card.holes.size(); ++i) {
        const WindCardHole& hole = view.card.holes[i];
        if (hole.flips.empty()) continue;
        std::string words =
            fmt::format("hole {}: {} in still air", name_text(view.course.holes.at(i).ref, 20),
                        name_text(wind_card_club(view, hole.still)));
        for (const std::string& change : change_words(view, hole))
            words += ", " + change;
        sentences.push_back(words);
    }
    return sentences;
}

std::string wind_card_day_words(const WindCardView& view) {
    const WindCard& card = view.card;
    std::string words = fmt::format("wind of {}", speed_text(card.speed_mps, view.units));
    if (card.gusts_mps) words += fmt::format(", gusting {},", speed_number(*card.gusts_mps, view.units));
    words += " from eight directions";
    const std::string rest = conditions_words(card.conditions, view.units);
    return rest.empty() ? words : fmt::format("{}; {}", words, rest);
}

std::string against_still_text(const WindCard& card, std::size_t direction) {
    const double change = card.strokes.at(direction) - card.still_strokes;
    return fmt::format("{:+.2f}", std::round(100.0 * change) / 100.0 + 0.0);
}

std::vector<std::string> wind_card_cautions() {
    return standing_cautions("for a wind that blows alike over the whole course");
}

}  // namespace landwidth
