// What a comparison of bags stands on, in sentences: the holes, the bag a change starts from, what is only
// supposed, and where no shots of the golfer's own are behind it.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "planner/reports/weigh_reports.hpp"

namespace landwidth {

// "14 straight holes"; absent where there is a course.
std::optional<std::string> straight_title(const WeighView& view);

// That no course was given, and what the straight holes are. One sentence; empty where there is a course.
std::string straight_words(const WeighView& view);
// "trees", "water left", "rough only": of one of them.
std::string trouble_words(ChartTrouble trouble);

// Whether the change starts from another bag than that of today.
bool has_baseline(const WeighedChange& change);
// That bag, for the first column of a table: "from: driver, 45.5 in for driver".
std::string baseline_label(const WeighView& view, const WeighedChange& change);
// The same as a sentence with its strokes; empty where it is the bag of today.
std::string baseline_words(const WeighView& view, const WeighedChange& change);
// The bag a change starts from, for the head of a column: "today", "before".
std::string before_word(const WeighedChange& change);

// Whether a club of the profile is supposed.
bool is_supposed(const WeighView& view, std::size_t club);
// The supposed clubs of a change.
std::vector<SupposedClub> supposed_in(const WeighView& view, const WeighedChange& change);
// One sentence for each of them.
std::vector<std::string> supposed_words(const WeighView& view, const WeighedChange& change);

// Compared clubs whose usual shots go two ways: one sentence each.
std::vector<std::string> two_way_words(const WeighView& view);

// That the comparison is with a typical club; empty where recorded shots are behind all that it is with.
std::string without_shots_words(const WeighView& view, const WeighedChange& change);
// These sentences for the warnings, each once.
std::vector<std::string> baseline_warnings(const WeighView& view);

}  // namespace landwidth
