#include "planner/reports/break_even_words.hpp"

#include <fmt/format.h>

#include <cmath>
#include <optional>
#include <vector>

#include "planner/reports/display_length.hpp"
#include "planner/reports/wind_words.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

// What is moved, as it is called here; absent values are not told.
struct Moved {
    std::string_view name;
    std::optional<BreakEven> value;
};

std::vector<Moved> all_moved(const BreakEvens& break_evens) {
    return {{"landing width", break_evens.landing_width},
            {"side spread", break_evens.side_sd},
            {"carry", break_evens.carry}};
}

std::string length_pair(double flips_at_m, double today_m, DisplayUnits units) {
    const double flips_at = in_display_units(flips_at_m, units);
    const double today = in_display_units(today_m, units);
    const int decimals = std::round(flips_at) == std::round(today) ? 1 : 0;
    return fmt::format("{:.{}f} {} ({:.{}f} now)", flips_at, decimals, display_unit(units), today, decimals);
}

std::string wind_that_flips(double tail_mps, DisplayUnits units) {
    const std::string wind = wind_parts_words(tail_mps, 0.0, units);
    if (wind.empty())
        return tail_mps < 0.0 ? "there is the least wind against" : "there is the least wind behind";
    return "there is a wind of " + wind;
}

// "a", "a or b", "a, b or c".
std::string alternatives(const std::vector<std::string>& words) {
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (i > 0) text += i + 1 == words.size() ? " or " : ", ";
        text += words[i];
    }
    return text;
}

}  // namespace

std::string break_even_words(const BreakEvens& break_evens, std::string_view next_club, DisplayUnits units) {
    std::vector<std::string> names;
    std::vector<std::string> flips;
    for (const Moved& moved : all_moved(break_evens)) {
        if (!moved.value) continue;
        names.emplace_back(moved.name);
        if (!moved.value->flips_at_m) continue;
        const double flips_at = *moved.value->flips_at_m;
        flips.push_back(fmt::format("the {} {}{} {}", moved.name, flips.empty() ? "is " : "",
                                    flips_at < moved.value->today_m ? "under" : "over",
                                    length_pair(flips_at, moved.value->today_m, units)));
    }
    if (break_evens.wind) {
        names.emplace_back("wind");
        if (break_evens.wind->flips_at_mps)
            flips.push_back(wind_that_flips(*break_evens.wind->flips_at_mps, units));
    }
    const std::string club = name_text(next_club);
    if (flips.empty()) return fmt::format("no {} within reach flips it to {}", alternatives(names), club);
    return fmt::format("flips to {} if {}", club, alternatives(flips));
}

std::string break_even_words(const PlanView& view, std::size_t hole) {
    const HolePlan& plan = view.plan.holes.at(hole);
    if (!plan.break_evens || !plan.verdict.over) return {};
    const TeeChoice& next = plan.choices.at(*plan.verdict.over);
    return break_even_words(*plan.break_evens, view.golfer.clubs.at(next.club).name, view.units);
}

}  // namespace landwidth
