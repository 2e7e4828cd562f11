// The figures of a club's build as they are shown, rounded in this one place: a change that a sentence names
// is the difference of what stands in the table, to the last digit.
#pragma once

#include <optional>
#include <string>

#include "planner/reports/build_reports.hpp"

namespace landwidth {

// As numbers, in the units shown.
double shown_grams(double kg);            // to a tenth
double shown_inches(double m);            // to a hundredth
double shown_degrees(double rad);         // to a tenth
double shown_inertia(double kg_m2);       // whole kg cm2
double shown_points(SwingWeight weight);  // to a tenth of a point, as its letters are
double shown_points_more(const ClubParts& before, const ClubParts& after);
double shown_grams_more(const ClubParts& before, const ClubParts& after);  // of the head
double shown_inertia_more(const ClubParts& before, const ClubParts& after);

// A range of change and what it comes to: rounded outward, so that what is shown holds what is meant, and
// `then` is `now` plus the change as they are shown, not below 0.
struct ShownRange {
    Range change;
    std::optional<double> now = {};
    std::optional<Range> then = {};
};
// Of speeds in mph and of carries in either unit, in every output.
inline constexpr int speed_decimals = 1, carry_decimals = 0;
ShownRange shown_range(Range change, const std::optional<double>& now, double unit, int decimals);

// "-4.5 to 0", "0 to +14".
std::string change_words(Range shown, int decimals);

}  // namespace landwidth
