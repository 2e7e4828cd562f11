// Where a shot hit in some air and wind would have landed on the reference day.
//
// A ball is looked for that in the air and wind of the session lands where the shot did: of the shot's own
// launch where ball speed, launch angle and spin were recorded, with the drag that gives its carry; else of
// the club's launch, hit slower or faster. The same ball is flown once more on the reference day, and the
// shot is moved by the difference of the two landings. In the air of the reference day the two are one
// flight, and nothing moves, to the last bit.
//
// A share of a ball's direction off the line is curve (side spin), as in a plan on a day of its own.
//
// The flights are those of ball_flight.hpp. Against balls of it with the club's lift, up to 15 mph, 0 to 35 C
// and 1600 m, the result is within a yard (or 1 %) of the truth where the launch of shot or club is recorded.
// At worst of those days (which move a drive by 50 yd) it is 11 yd off for a drive that is launched 2 degrees
// higher and spins a fifth more than is usual, without a word of it in the log; 6 yd for one 6.5 degrees off
// the line that is all curve; 9 yd for a ball that lifts a tenth more (tests/golfer-profiles/
// to_reference_test.cpp holds the first two). Metres.
#pragma once

#include <optional>

#include "golfer-profiles/club_flight.hpp"

namespace landwidth {

class ToReference {
  public:
    // Of balls of this club. curve_share: of a ball's direction off the line, [0, 1].
    ToReference(const ClubFlight& club, double curve_share);

    // `own`: the launch recorded with the shot; set aside where no likely drag gives its landing. Shots under
    // 10 m of carry stay as they are: hardly in the air. Nothing where no ball of this club lands there in
    // such a wind. About 20 microseconds.
    std::optional<ShotOffset> landing(const ShotOffset& landed, const AirFlow& flow,
                                      const std::optional<Launch>& own) const;

  private:
    struct Ball {
        Launch launch;
        BallAerodynamics aerodynamics;
    };
    struct Search;
    BallLaunch aimed(const Launch& launch, double off_line_rad) const;
    Ball own_ball(const Launch& launch, double log_drag) const;
    Ball club_ball(double log_speed) const;
    std::optional<ShotOffset> found(const ShotOffset& landed, const AirFlow& flow,
                                    const Search& search) const;

    ClubFlight club_;
    double curve_share_;
    double curve_per_tilt_;  // direction on the reference day, a radian of the spin axis
};

}  // namespace landwidth
