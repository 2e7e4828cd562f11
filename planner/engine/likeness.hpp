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

// Of the difference of two choices: nobody would notice it, wherever in the interval it is.
bool is_alike(const Interval& difference, double equal_within);

// The share of the draws above 0; an exact tie counts as half, since it speaks for neither. 0.5 for none.
double share_better(const std::vector<double>& draws);

}  // namespace landwidth
