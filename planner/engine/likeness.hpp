// Whether two choices that the shots do not tell apart are alike, or are only not known well enough.
//
// The two are different news: of choices that are alike nothing is lost by either; between choices that are
// not known yet a good deal may lie, and more shots would tell.
#pragma once

#include <vector>

namespace landwidth {

// The share of what is possible that an interval holds, in this room and in every report.
inline constexpr double interval_share = 0.90;

struct Interval {
    double low, high;
};

// The middle interval_share of draws; both ends 0 for none.
Interval middle_of(std::vector<double> draws);

// No draw of the difference of two choices is other than 0 but for the rounding of sums: what differs between
// them took part in none, so that nothing was compared. That is not being alike.
bool is_same(const std::vector<double>& draws);

// Of the difference of two choices: nobody would notice it, wherever in the interval it is.
bool is_alike(const Interval& difference, double equal_within);

// A smaller difference, of strokes, is a tie: two decimals show it as nothing, and where a field is solved
// anew (to field_residual) or an aim falls on the next ray the search itself differs by 0.002 on a hole.
inline constexpr double least_difference = 0.005;

// The share of the draws above 0. A tie counts as half, since it speaks for neither; 0.5 for no draws.
double share_better(const std::vector<double>& draws);

}  // namespace landwidth
