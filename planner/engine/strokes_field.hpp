// What a place on the hole is worth.
//
// The engine asks nothing else of the golfer's future than this, so that the published table and a field
// solved for the golfer are interchangeable.
#pragma once

#include "geometry/lie.hpp"
#include "geometry/point.hpp"

namespace landwidth {

class StrokesField {
  public:
    StrokesField() = default;
    StrokesField(const StrokesField&) = delete;
    StrokesField& operator=(const StrokesField&) = delete;
    virtual ~StrokesField() = default;

    struct Worth {
        // What the whole hole comes to on the scale of the golfer's aim, lower is better. For strokes: `used`
        // and the expected strokes to hole out.
        double cost;
        double distance_left_m;  // to the hole along the line of play
    };
    // With the ball at rest at `place` on `lie` and `used` strokes taken, penalties among them; used >= 0. A
    // ball in a penalty area or out of bounds has no value of its own: std::logic_error (see relief.hpp).
    // Safe to call from several threads.
    virtual Worth worth(Point place, Lie lie, int used) const = 0;

    double cost(Point place, Lie lie, int used) const { return worth(place, lie, used).cost; }
};

}  // namespace landwidth
