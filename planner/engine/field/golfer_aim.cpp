#include "planner/engine/field/golfer_aim.hpp"

#include <algorithm>
#include <cmath>

namespace landwidth {

double GolferAim::cost(int strokes) const {
    switch (aim_) {
        case AimFor::stableford:
            return -std::max(0, 2 + target_ - strokes);
        case AimFor::par_or_better:
            return strokes <= target_ ? -1.0 : 0.0;
        case AimFor::strokes:
            break;
    }
    return strokes;
}

std::vector<int> strokes_received(const Course& course, double handicap_index) {
    std::vector<int> received(course.holes.size(), 0);
    const bool indexed =
        std::ranges::all_of(course.holes, [](const Hole& hole) { return hole.stroke_index.has_value(); });
    if (!indexed) return received;
    constexpr int holes = 18;
    const int strokes = static_cast<int>(std::lround(handicap_index));
    for (std::size_t i = 0; i < received.size(); ++i) {
        const int index = *course.holes[i].stroke_index;
        // A plus handicap gives strokes back on the easiest holes first.
        const int whole = static_cast<int>(std::floor(static_cast<double>(strokes) / holes));
        received[i] = whole + (index <= strokes - whole * holes ? 1 : 0);
    }
    return received;
}

}  // namespace landwidth
