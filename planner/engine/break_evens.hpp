// Where a close verdict would flip: how narrow the landing, how wide the pattern or how long the carry of the
// best club has to be before the next club is as good.
//
// Lengths in metres. Each value is the nearest to today's at which the margin changes sign; see
// break_even_search.hpp for what is moved, how far, and what stays.
#pragma once

#include <optional>

namespace landwidth {

struct BreakEven {
    double today_m;
    std::optional<double> flips_at_m;  // absent: not within the range searched
};

// A wind that blows with the shot, m/s: below 0 against it.
struct WindBreakEven {
    std::optional<double> flips_at_mps;  // absent: not within the range searched
};

struct BreakEvens {
    // Absent on a par 3, where no fairway is near the best club's landing, and on other aims than strokes.
    std::optional<BreakEven> landing_width;
    BreakEven side_sd;  // of the best club's usual shot
    BreakEven carry;    // of the best club's usual shot
    // Of a plan in still air; absent where the day has a wind already.
    std::optional<WindBreakEven> wind = {};
};

}  // namespace landwidth
