// How the balls of one club fly on the day: what wind and air do to where they land, how they come down, how
// far they run, and how high they fly on the way.
//
// A pattern tells where balls land on the reference day. A ball of it that there carries c on a bearing b
// lands, on the day, a shift away that depends on c and on the wind against b alone. The shift is taken from
// flights of this club's launch (ball_flight.hpp) at a row of carries, in the angle of the wind as a short
// Fourier series: exact for what is at most quadratic in the wind. Balls are taken to fly straight to where
// they land, but for a share of their side offset that is curve and grows with a head wind.
//
// Metres, radians. Immutable; safe to read from several threads.
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <memory>
#include <vector>

#include "golfer-profiles/club_flight.hpp"
#include "planner/engine/day/conditions.hpp"

namespace landwidth {

// The wind against a ball's own direction: cosine and sine of its angle, clockwise from a tail wind, times
// its strength, and those of twice the angle times the square of that. Strength is a factor on the wind of
// the day that a flight was worked out for. All 0: calm.
struct WindAngle {
    float cos1 = 0.0F, sin1 = 0.0F, cos2 = 0.0F, sin2 = 0.0F;
    float squared = 0.0F;  // strength

    static WindAngle of(float cosine, float sine) {
        return {cosine, sine, cosine * cosine - sine * sine, 2.0F * sine * cosine,
                cosine * cosine + sine * sine};
    }
    static WindAngle of(double radians, double strength = 1.0) {
        return of(static_cast<float>(strength * std::cos(radians)),
                  static_cast<float>(strength * std::sin(radians)));
    }
};

// How far from its place of the reference day a ball lands, along and across its own direction.
struct LandingShift {
    float air;                     // by the air alone
    float along0, along1, along2;  // by the wind: squared, cos1, cos2
    float right1, right2;          // sin1, sin2

    float along(const WindAngle& wind) const {
        return air + along0 * wind.squared + along1 * wind.cos1 + along2 * wind.cos2;
    }
    float right(const WindAngle& wind) const { return right1 * wind.sin1 + right2 * wind.sin2; }
};

// Ground that runs differ on; firmness of the green is that of an ordinary day.
enum class Surface : std::uint8_t { mown, rough, green };
inline constexpr std::size_t surface_count = 3;

class DayFlight {
  public:
    // run_m: the club's run on fairway on the reference day. curve_share: of a ball's side offset.
    DayFlight(const ClubFlight& club, const Conditions& day, double run_m, double curve_share);

    // Whether the day moves where balls land or changes how far they run.
    bool differs() const { return differs_; }

    // gust: the wind this ball meets as a factor on the mean wind.
    LandingShift shift(float carry_m, float gust) const { return landing(carry_m, gust).shift; }
    // Shift and fall at once.
    struct Landing {
        LandingShift shift;
        float fall0, fall1;
        float fall(const WindAngle& wind) const { return fall0 + fall1 * wind.cos1; }
    };
    Landing landing(float carry_m, float gust) const;
    // What a ball's direction off the aim grows by, as a share of itself.
    float curl(const WindAngle& wind) const { return curl0_ + curl1_ * wind.cos1; }
    // Metres of carry that a landing place a metre higher costs.
    float fall(float carry_m, const WindAngle& wind) const;
    // What the day adds to the run on fairway, or to the run of which rough and greens take a share.
    float more_run(float carry_m, Surface surface, const WindAngle& wind) const;
    // The same by the rise of the ground in the direction of travel.
    float more_run_on_slope(float rise) const {
        constexpr float half = 0.5F * (slope_steps - 1);
        const float at = rise * (half / steepest_slope) + (half + 0.5F);
        return on_slope_[static_cast<std::size_t>(
            std::max(0.0F, std::min(at, static_cast<float>(slope_steps - 1))))];
    }
    // How far to the side a running ball drifts per metre that the ground rises to the right: below 0.
    float sideways_per_slope() const { return sideways_per_slope_; }

    // Height over where it was hit of a ball that on the reference day carries carry_m and now comes down, at
    // that height, after `lands_m`; `at_m` in [0, lands_m].
    float height(float at_m, float carry_m, float lands_m, const WindAngle& wind) const;
    float peak(float carry_m, float lands_m, const WindAngle& wind) const;

  private:
    static constexpr std::size_t profile_points = 33;
    // At a carry of the reference day.
    struct Node {
        float air_along = 0.0F;  // shift by the air alone
        float wind_along0 = 0.0F, wind_along1 = 0.0F, wind_along2 = 0.0F, wind_right1 = 0.0F,
              wind_right2 = 0.0F;
        float fall0 = 0.0F, fall1 = 0.0F;
        std::array<float, surface_count> run0{}, run1{};
        // Height as a share of the carry, at even steps of the way.
        std::array<float, profile_points> profile{};
        float peak = 0.0F;  // as a share of the carry
    };
    struct Between {
        const Node& below;
        const Node& above;
        float share;  // of above
        float mix(float Node::*value) const { return below.*value + share * (above.*value - below.*value); }
    };
    Between between(float carry_m) const;
    Node node_at(const ClubFlight& club, const Conditions& day, double carry_m, double run_scale) const;
    void learn_slopes(const ClubFlight& club, double run_scale);
    void learn_heights(const ClubFlight& club, const Conditions& day);
    void learn_curve(const ClubFlight& club, const Conditions& day, double curve_share);

    bool differs_;
    float nodes_per_m_;
    std::vector<Node> nodes_;  // evenly from carry 0
    // What the day makes of the height for the way to where it lands, as a share: the air, the wind from
    // anywhere, a tail wind.
    float height_air_ = 0.0F, height0_ = 0.0F, height1_ = 0.0F;
    float higher(const WindAngle& wind) const {
        return 1.0F + height_air_ + height0_ * wind.squared + height1_ * wind.cos1;
    }
    float curl0_ = 0.0F, curl1_ = 0.0F;
    // Flat in the middle.
    static constexpr std::size_t slope_steps = 65;
    static constexpr float steepest_slope = 0.3F;
    std::array<float, slope_steps> on_slope_{};
    float sideways_per_slope_ = 0.0F;
};

// The wind that the i-th of many balls meets, as a factor on the mean wind: 1 without gusts.
float gust_factor(const std::optional<Wind>& wind, std::size_t i);

}  // namespace landwidth
