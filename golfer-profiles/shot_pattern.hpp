// Where the ball first lands with one club, relative to the aim line, from a good lie.
//
// A mixture: the usual shot is a bivariate Student t (a normal when tail_dof is infinite), a mishit is a
// normal of its own. `carry` is measured along the aim line, `side` across it, positive to the right.
// Published work found that normals alone do not fit golfers and t mixtures do (S. Ko, Columbia 2012; M.
// Broadie and S. Ko 2009).
//
// Standard deviations are those of the distribution itself, not its scale matrix: a t with dof v has scale =
// sd sqrt((v - 2) / v).
#pragma once

#include <array>
#include <limits>
#include <optional>
#include <vector>

#include "geometry/units.hpp"

namespace landwidth {

// Ground coordinates of one shot: metres along the aim line and across it.
struct ShotOffset {
    double carry_m;
    double side_m;

    friend bool operator==(const ShotOffset&, const ShotOffset&) = default;
};

// Wider than any golfer: a standard deviation beyond is a slip of the keyboard or of the unit. Assumption.
inline constexpr double largest_sd_m = Yards{150.0}.metres();

struct Spread {
    ShotOffset centre;
    double carry_sd_m;   // (0, largest_sd_m]
    double side_sd_m;    // (0, largest_sd_m]
    double correlation;  // (-1, 1): a slice that falls short right is negative for a right-hander

    friend bool operator==(const Spread&, const Spread&) = default;
};

struct Mishit {
    double share;  // [0, 1)
    Spread spread;

    friend bool operator==(const Mishit&, const Mishit&) = default;
};

// One of two ways in which the usual shot goes: a two-way miss, or a slice that comes to straight shots.
// Offsets and spreads in standard deviations of the usual shot as a whole.
struct Way {
    double share;  // of the usual shots, (0, 1)
    double carry_sds, side_sds;
    double carry_spread, side_spread;  // > 0
    double correlation;                // (-1, 1)

    friend bool operator==(const Way&, const Way&) = default;
};

struct ShotPattern {
    Spread usual;                                               // as a whole
    double tail_dof = std::numeric_limits<double>::infinity();  // > 2
    double run_m = 0.0;  // after landing on fairway, along the direction of travel; >= 0
    std::optional<Mishit> mishit = {};
    // Where one t would not do: two, both with this tail. Shares add to 1; together they have the mean and
    // the standard deviations of `usual`, whose correlation then only describes them.
    std::optional<std::array<Way, 2>> ways = {};
    int shots = 0;  // recorded shots behind the numbers; 0: a preset

    friend bool operator==(const ShotPattern&, const ShotPattern&) = default;
};

// The spread of one way of the usual shot.
Spread spread_of(const Spread& usual, const Way& way);

// The point of a spread for two numbers of the unit square, by inversion: `u` picks how far out (closed form
// for the bivariate t and normal), `v` the direction. Uniform (u, v) give the distribution exactly; u in [0,
// 1), v in [0, 1).
ShotOffset spread_point(const Spread& spread, double tail_dof, double u, double v);

// The ellipse around the centre of the usual shot that holds a share of the usual shots; mishits not counted.
struct LandingEllipse {
    ShotOffset centre;
    double carry_sd_m, side_sd_m, correlation;  // of the scale matrix
    double radius;                              // in scale units: the Mahalanobis distance of the rim
    // A rim point, angle in radians, any: the same direction as v = angle / (2 pi) of spread_point.
    ShotOffset rim(double angle) const;
};
// share in (0, 1). Around the usual shot as a whole: where it goes two ways hardly a ball lands in the
// middle.
LandingEllipse landing_ellipse(const ShotPattern& pattern, double share);
// What to draw: that one, or one for each way, which holds the share of the balls that go this way (so that
// both together hold at least that share of all usual shots). One or two of them, as pattern.ways.
std::vector<LandingEllipse> landing_ellipses(const ShotPattern& pattern, double share);

// Mean and covariance of the whole mixture, where the ball lands (run not counted).
struct PatternMoments {
    ShotOffset mean;
    double carry_variance, side_variance, covariance;
};
PatternMoments moments(const ShotPattern& pattern);

// Share of shots that land with side < bound (left of a line parallel to the aim), whole mixture, closed form
// through Boost.Math.
double share_left_of(const ShotPattern& pattern, double side_m);

}  // namespace landwidth
