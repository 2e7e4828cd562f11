// What two bags make of the holes of a round, added up: expected, and draw by draw of what the patterns may
// be.
#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <vector>

#include "planner/engine/bags/bag_on_hole.hpp"

namespace landwidth {

struct HoleGain {
    BagOnHole before;
    BagOnHole after;
    double gain;                   // expected
    std::optional<double> chance;  // share of the draws in which the hole is played better, ties half; absent
                                   // when nothing changes
};

class GainSums {
  public:
    // `per_round`: what a hole counts for, less than 1 where several courses share the round.
    GainSums(std::size_t draws, double per_round) : per_round_(per_round), gains_(draws, 0.0) {}

    HoleGain add(const BagOnHole& before, const BagOnHole& after);

    // By draw, strokes saved a round.
    const std::vector<double>& gains() const { return gains_; }
    // By number of the club, by draw: what its open pattern adds to them.
    const std::map<std::size_t, std::vector<double>>& by_club() const { return by_club_; }

  private:
    void add_drawn(const BagOnHole& hole, double factor);

    double per_round_;
    std::vector<double> gains_;
    std::map<std::size_t, std::vector<double>> by_club_;
};

}  // namespace landwidth
