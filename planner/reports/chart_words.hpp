// The sentences and short texts that the forms of a driver chart share.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "planner/reports/chart_reports.hpp"

namespace landwidth {

// Which side a cell is for: neither where the difference is within the noise or rounds to nothing.
enum class ChartSide { driver, control, either };
ChartSide side_of(const ChartCell& cell);

// "rough only", "trees on both sides", "a red penalty area on the left", "out of bounds on the right".
std::string_view trouble_words(ChartTrouble trouble);

// The club to hit in a cell, as the profile names it; "either" where there is none.
std::string chart_club_text(const ChartView& view, const ChartCell& cell);

// What it saves, "0.12"; empty where either club will do.
std::string chart_saving_text(const ChartCell& cell);

// On what landings the driver pays, for neighbouring lengths of which the same is to be said.
struct TurnWords {
    std::string lengths;  // "320 yd", "320 to 360 yd"
    std::string pars;     // "4", "4 or 5"
    // "from 34 yd", "up to 20 yd", "at every width", "at no width, or either will do", "either club will do"
    std::string pays;
};
std::vector<TurnWords> turn_words(const ChartView& view);

// What the chart says, a sentence each.
std::vector<std::string> chart_summary(const ChartView& view);

// The hole the chart is made of, and how the strokes are valued; a sentence each.
std::vector<std::string> chart_grounds(const ChartView& view);

// What to keep in mind, a sentence each.
std::vector<std::string> chart_cautions();

}  // namespace landwidth
