// V: what a place on the hole is worth, in expected strokes to hole out from there.
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
        double strokes;          // expected, to hole out
        double distance_left_m;  // to the hole along the line of play
    };
    // With the ball at rest at `place` on `lie`. A ball in a penalty area or out of bounds has no value of
    // its own: std::logic_error (see relief.hpp). Safe to call from several threads.
    virtual Worth worth(Point place, Lie lie) const = 0;

    double strokes(Point place, Lie lie) const { return worth(place, lie).strokes; }
};

}  // namespace landwidth
