#include "planner/engine/bags/gain_sums.hpp"

#include "planner/engine/likeness.hpp"

namespace landwidth {

HoleGain GainSums::add(const BagOnHole& before, const BagOnHole& after) {
    add_drawn(before, per_round_);
    add_drawn(after, -per_round_);
    HoleGain hole{before, after, before.strokes - after.strokes, {}};
    std::vector<double> gains = drawn_strokes(before);
    const std::vector<double> then = drawn_strokes(after);
    if (gains == then) return hole;
    for (std::size_t draw = 0; draw < gains.size(); ++draw)
        gains[draw] -= then[draw];
    hole.chance = share_better(gains);
    return hole;
}

void GainSums::add_drawn(const BagOnHole& hole, double factor) {
    for (double& strokes : gains_)
        strokes += factor * hole.strokes;
    for (const DrawnPart& part : hole.drawn) {
        std::vector<double>& own = by_club_[part.club];
        own.resize(gains_.size(), 0.0);
        for (std::size_t draw = 0; draw < gains_.size(); ++draw) {
            gains_[draw] += factor * part.strokes[draw];
            own[draw] += factor * part.strokes[draw];
        }
    }
}

}  // namespace landwidth
