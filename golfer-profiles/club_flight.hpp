// How the balls of one club fly: the published coefficients, drag scaled so that the usual carry of the club
// is the measured one.
//
// Carries of a profile are those of a reference day: still air of ISO 2533 at sea level (15 C, 101325 Pa,
// dry), landing as high as the ball was hit. The flight is used for differences from that day and for
// heights, never for the carry itself.
#pragma once

#include <optional>
#include <string>

#include "golfer-profiles/ball_flight.hpp"

namespace landwidth {

// A launch that a club of this kind and carry usually has. Carry in metres, > 0; loft where it is known.
Launch usual_launch(ClubKind kind, double carry_m, std::optional<double> loft_rad);

// How far a ball so launched with a club of this kind usually carries on the reference day, metres: with the
// drag that goes with tour players' carries, more of it for a slower ball. The other way about than
// usual_launch, and for launches that are not usual. Angle of launch above 0.
double usual_carry(ClubKind kind, const Launch& launch, std::optional<double> loft_rad);
// Of a ball of this speed, launched as is usual for it.
double usual_carry(ClubKind kind, double ball_speed_mps, std::optional<double> loft_rad);

// The factor on the published lift. With the published one tour players' balls would rise to 32 to 38 m,
// where 25 to 30 is common (from memory).
inline constexpr double usual_lift = 0.9;

class ClubFlight {
  public:
    // Of the club's usual shot. The club has a pattern, else std::logic_error. A launch that cannot give the
    // carry with any drag is set aside for the usual one: see doubt().
    explicit ClubFlight(const Club& club);
    // Of a low punch, by assumption: half the launch angle.
    ClubFlight punch() const;

    double carry_m() const { return carry_m_; }  // of the usual shot on the reference day
    const Launch& launch() const { return launch_; }
    bool launch_is_inferred() const { return inferred_; }
    const BallAerodynamics& aerodynamics() const { return aerodynamics_; }
    // What is odd about the recorded launch, as a sentence; absent when nothing is.
    const std::optional<std::string>& doubt() const { return doubt_; }

    // The launch of a ball of this club that on the reference day carries this far, hit straight: the same
    // angle, another speed; spin in proportion for a shorter ball, in inverse proportion for one beyond the
    // usual carry (a flier). carry in (0, 1.6 carry_m()]. On the reference day its flight carries `carry_m`
    // to within 1e-6 of it.
    BallLaunch launch_for(double carry_m) const;
    // The same kind of ball, its speed so many times the usual one's. ratio > 0.
    Launch launch_at(double ratio) const;

  private:
    ClubFlight() = default;

    double carry_m_ = 0.0;
    Launch launch_{};
    bool inferred_ = false;
    BallAerodynamics aerodynamics_;
    std::optional<std::string> doubt_;
};

AirFlow reference_air();

}  // namespace landwidth
