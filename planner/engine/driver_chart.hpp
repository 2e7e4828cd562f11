// The golfer's driver chart, free of any course: over landing width and length of a straight hole, where the
// driver pays and where the control club (the best tee club that is no driver) does.
//
// The hole: see driver_chart_hole.hpp. Each landing width is one hole, the longest, whose field is solved
// once; the shorter holes are the same ground from tees further forward. What that leaves out is the start of
// the fairway, which stays where the longest hole has it; tests/planner/engine/driver_chart_test.cpp measures
// it.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "golfer-profiles/profile.hpp"
#include "planner/engine/assumptions.hpp"
#include "planner/engine/driver_chart_hole.hpp"

namespace landwidth {

struct ChartRequest {
    ChartTrouble trouble = ChartTrouble::rough;
    std::vector<double> widths_m;   // landing widths, > 0, ascending, not empty
    std::vector<double> lengths_m;  // of the hole, at least 100 m, ascending, not empty
    Assumptions assumptions = default_assumptions();
};

// A club at its best aim from the tee.
struct ChartClub {
    std::size_t club;         // index in the bag
    double expected_strokes;  // to hole out
    double standard_error;    // from the quadrature alone
};

struct ChartCell {
    ChartClub driver;     // the best of kind driver
    ChartClub control;    // the best of the other tee clubs
    double driver_saves;  // strokes: what the control club costs more; negative where the driver costs more
    double confidence;    // share of draws of the two patterns in which the sign of it holds
    bool toss_up;         // the difference is within the noise
};

// Where the verdict turns on the way from narrow to wide.
struct EvenWidth {
    double width_m;           // between two widths of the chart
    bool driver_pays_beyond;  // on wider landings; false: the control club does
};

struct DriverChart {
    ChartTrouble trouble;
    std::vector<double> widths_m;
    std::vector<double> lengths_m;
    std::vector<int> pars;         // by length
    std::vector<ChartCell> cells;  // by width, then length
    // By length: the last turn of the verdict; none where one side pays at every width of the chart.
    std::vector<std::optional<EvenWidth>> break_evens;
    Assumptions assumptions;
    std::vector<std::string> warnings;  // one sentence each

    const ChartCell& cell(std::size_t width, std::size_t length) const {
        return cells.at(width * lengths_m.size() + length);
    }
};

// Throws InputError when the bag has no driver with a pattern, or nothing to play from the tee instead.
// Deterministic: the same inputs give the same digits on any number of threads.
DriverChart driver_chart(const Golfer& golfer, const ChartRequest& request);

}  // namespace landwidth
