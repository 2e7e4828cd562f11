// How likely each score on a hole is.
#pragma once

#include <vector>

namespace landwidth {

struct ScoreDistribution {
    // shares[n]: of holes played in n strokes, the last entry in that many or more. Adds to 1; empty where no
    // distribution was computed (the published table has means only).
    std::vector<double> shares;

    bool empty() const { return shares.empty(); }
    double mean() const;  // the last entry counted at its number; 0 when empty
    double variance() const;
    // The share of holes played in `from` to `to` strokes, both included; at least as many as the last entry
    // counts for it.
    double between(int from, int to) const;
};

// The distribution of the sum of independent holes: a round.
ScoreDistribution sum_of(const std::vector<ScoreDistribution>& holes);

}  // namespace landwidth
