// The words and marks that the forms of a wind card share.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "planner/reports/wind_card_reports.hpp"

namespace landwidth {

// "N", "NE", ...: where the wind of one of the eight directions comes from.
std::string_view wind_card_direction(std::size_t direction);
Bearing wind_card_bearing(std::size_t direction);

// What a wind does to the club on a tee.
enum class WindEffect {
    none,             // the club of still air, and no toss-up
    toss_up,          // the club of still air, in a toss-up with another
    change,           // another club: a flip
    settles,          // another club than the one ahead in a toss-up of still air, and no toss-up any more
    toss_up_of_other  // another club is ahead, in a toss-up
};
WindEffect wind_effect(const WindCardHole& hole, std::size_t direction);

const std::string& wind_card_club(const WindCardView& view, const WindCardVerdict& verdict);

// One entry for every other club that is no toss-up, in the order of the directions: "3-wood with the wind
// from N, NE".
std::vector<std::string> change_words(const WindCardView& view, const WindCardHole& hole);
// One sentence for every hole on which the wind changes the club: "hole 7: driver in still air, 3-wood with
// the wind from N, NE".
std::vector<std::string> flip_words(const WindCardView& view);

// "Wind of 12 mph, gusting 18, from eight directions; 8 °C, ...".
std::string wind_card_day_words(const WindCardView& view);

// "+0.42": strokes of a round against still air; "+0.00" for what rounds to nothing.
std::string against_still_text(const WindCard& card, std::size_t direction);

std::vector<std::string> wind_card_cautions();

}  // namespace landwidth
