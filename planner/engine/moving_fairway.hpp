// The fairway of a hole with its edges moved: what each place would turn into, and what it would be worth.
//
// All edges of the hole's own fairway move outward or inward by the same amount; the fairways of other holes
// stay. Only fairway and rough turn into each other: bunkers, trees, water, greens and what is out of bounds
// keep their ground. The field behind stays as it was solved; so a place that turns is worth what the field
// says of its new lie there.
#pragma once

#include <limits>
#include <vector>

#include "geometry/lie_partition.hpp"
#include "geometry/region.hpp"
#include "planner/engine/strokes_field.hpp"

namespace landwidth {

class MovingFairway {
  public:
    // `others`: mown ground of other holes (Hole::other_fairways). Edges move by at most reach_m (> 0) either
    // way. Keeps a reference to the field.
    MovingFairway(const LiePartition& lies, const Region& others, const StrokesField& field, double reach_m);

    // What a place turns into when the edges move far enough.
    struct Turn {
        // The move, outward positive, at which the lie changes: rough turns to fairway when the edges move
        // out by this or more, fairway to rough (at_m < 0) when they move in by this or more. `never` for
        // other lies and beyond the reach.
        float at_m;
        float cost;  // of the hole from there after the turn; 0 when it never turns
        bool is_past(float move_m) const { return at_m > 0.0F ? move_m >= at_m : move_m <= at_m; }
    };
    static constexpr float never = std::numeric_limits<float>::infinity();

    // `lie`: what the place is today; `used`: strokes taken with the ball there.
    Turn turn_at(Point place, Lie lie, int used) const;

  private:
    struct Edge {
        Point from;
        Point to;
    };
    // The edges within reach of a square of ground, square by square: a look-up measures a handful.
    std::size_t square_of(Point place) const;
    double distance_to_edge(Point place) const;

    Region others_;
    const StrokesField& field_;
    double reach_m_;
    Point corner_{};
    std::size_t columns_ = 0;
    std::size_t rows_ = 0;
    std::vector<std::vector<Edge>> squares_;
};

}  // namespace landwidth
