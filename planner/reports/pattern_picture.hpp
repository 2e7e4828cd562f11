// Shot patterns drawn over each other with the recorded shots behind them, seen from above and played up the
// page.
//
// Of each club the ellipses that hold half and nine tenths of the usual shots (where those go two ways, of
// the balls of each way), and every recorded shot where it landed; a mishit is crossed. Along and across have
// one scale. Clubs are told apart by line pattern, shape of mark and a label at the ellipse, so that the
// picture is read without its colours.
#pragma once

#include <string>
#include <vector>

#include "golfer-profiles/profile.hpp"
#include "planner/reports/pattern_signs.hpp"
#include "planner/reports/plan_view.hpp"

namespace landwidth {

struct PicturedPattern {
    const Club* club;                   // with a pattern
    std::vector<double> mishit_chance;  // of each shot of club->learnt_from, if there are any
    bool supposed = false;              // nobody has hit it
};

// A <figure>: the drawing, then what its signs mean and how many shots stand behind each pattern. A shot far
// outside of all patterns is not drawn but counted. Of several pictures on a page the first may explain the
// signs for all. Its CSS is pattern_picture_style(). Throws std::logic_error for no pattern or more than
// most_pictured.
std::string pattern_picture(const std::vector<PicturedPattern>& patterns, DisplayUnits units,
                            bool explained = true);

}  // namespace landwidth
