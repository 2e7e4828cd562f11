#include "golfer-profiles/run_out.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <stdexcept>

#include "geometry/units.hpp"
#include "golfer-profiles/ball.hpp"

namespace landwidth {

namespace {

struct Vector {
    double along, right, up;
};
Vector operator+(const Vector& a, const Vector& b) {
    return {a.along + b.along, a.right + b.right, a.up + b.up};
}
Vector operator-(const Vector& a, const Vector& b) {
    return {a.along - b.along, a.right - b.right, a.up - b.up};
}
Vector operator*(double k, const Vector& a) {
    return {k * a.along, k * a.right, k * a.up};
}
double dot(const Vector& a, const Vector& b) {
    return a.along * b.along + a.right * b.right + a.up * b.up;
}
double length(const Vector& a) {
    return std::sqrt(dot(a, a));
}

// Penner's bounce, from memory: the turf gives under the ball and turns its surface back towards it, by
// 15.4 deg at the measured 18.6 m/s and 44.4 deg. That the angle is measured from straight down is an
// assumption: only then does a ball from straight above bounce straight up.
constexpr double measured_turn_rad = 15.4 * radians_per_degree;
constexpr double measured_speed_mps = 18.6;
constexpr double measured_angle_rad = 44.4 * radians_per_degree;
constexpr double sliding_friction = 0.40;
double restitution_of(double normal_mps) {
    if (normal_mps > 20.0) return 0.120;
    return 0.510 - 0.0375 * normal_mps + 0.000903 * normal_mps * normal_mps;
}

// `give` multiplies how far the turf turns: 1 as published. `rolling` is the friction of a rolling ball:
// ordinary so that the drivers of the standard golfers run nearly as far as published
// (tests/published/run_out_published.cpp). Firm about 1.6 times and soft half as far by assumption.
struct Turf {
    double give, rolling;
};
Turf turf_of(Firmness firmness) {
    switch (firmness) {
        case Firmness::soft:
            return {1.20, 0.15};
        case Firmness::firm:
            return {0.80, 0.09};
        case Firmness::ordinary:
            break;
    }
    return {1.00, 0.115};
}

// Of steep ground only so much pulls at a rolling ball, as a share of what the grass holds: it stops at last,
// and once it lies it lies. Assumption.
constexpr double most_pull = 0.8;
constexpr double longest_run_m = 150.0;  // assumption: something stops a ball
constexpr double least_hop_m = 0.005;
constexpr int most_hops = 100;
constexpr int roll_steps = 16;
constexpr double rolling_share = 5.0 / 7.0;  // of a force along the ground, for a solid ball that rolls

// The ground as a plane through the place of landing, and the ball on it.
struct Ground {
    Vector normal;
    Vector pull;         // gravity along the plane
    double weight_mps2;  // gravity into it
};

Ground ground_of(const Slope& slope, const Turf& turf) {
    const double steepness = std::sqrt(1.0 + slope.along * slope.along + slope.right * slope.right);
    const Vector normal = (1.0 / steepness) * Vector{-slope.along, -slope.right, 1.0};
    const double weight = gravity_mps2 / steepness;
    const Vector pull = Vector{0.0, 0.0, -gravity_mps2} + weight * normal;
    const double steep = length(pull);
    const double most = most_pull * turf.rolling * weight;
    return {normal, (steep > most ? most / steep : 1.0) * pull, weight};
}

struct Ball {
    Vector place;
    Vector velocity;
    // Of the lowest point of its surface against its middle, by its spin: forward for backspin.
    Vector surface;
};

// The ground's part of a velocity.
Vector along_ground(const Vector& v, const Vector& normal) {
    return v - dot(v, normal) * normal;
}

// How far the turf turns against a ball that comes in at this speed and angle below its surface. A faster
// ball than the measured one turns it no further, by assumption: else a ball would run the shorter the faster
// it is.
double turn_of(double speed_mps, double angle_rad, double give) {
    const double from_straight_down = 0.5 * std::numbers::pi - angle_rad;
    return give * measured_turn_rad * std::min(speed_mps / measured_speed_mps, 1.0) *
           (from_straight_down / measured_angle_rad);
}

void bounce(Ball& ball, const Ground& ground, const Turf& turf) {
    const Vector level = along_ground(ball.velocity, ground.normal);
    const double level_mps = length(level);
    const double down_mps = -dot(ball.velocity, ground.normal);
    Vector normal = ground.normal;
    if (level_mps > 0.0) {
        const double turn = turn_of(length(ball.velocity), std::atan2(down_mps, level_mps), turf.give);
        normal = std::cos(turn) * normal - (std::sin(turn) / level_mps) * level;
    }
    const double into_mps = -dot(ball.velocity, normal);
    const double spring = restitution_of(into_mps);
    const Vector slide = along_ground(ball.velocity, normal);
    const Vector contact = slide + along_ground(ball.surface, normal);
    const double contact_mps = length(contact);
    // The friction of a sliding ball, unless less is enough to make it roll; a solid ball's spin changes by
    // 5/2 of it.
    const double kick = std::min(sliding_friction * (1.0 + spring) * into_mps, 2.0 / 7.0 * contact_mps);
    const Vector change = contact_mps > 0.0 ? (-kick / contact_mps) * contact : Vector{};
    ball.velocity = slide + change + (spring * into_mps) * normal;
    // Grass holds a ball that bounces as it holds one that rolls: in the end by the same share of its weight.
    const Vector after = along_ground(ball.velocity, ground.normal);
    const double after_mps = length(after);
    const double held_mps = std::min(rolling_share * turf.rolling * (1.0 + spring) * into_mps, after_mps);
    const Vector held = after_mps > 0.0 ? (held_mps / after_mps) * after : Vector{};
    ball.velocity = ball.velocity - held;
    // What holds a rolling ball slows its roll as well.
    ball.surface = along_ground(ball.surface + 2.5 * change + held, ground.normal);
}

void hop(Ball& ball, const Ground& ground) {
    const double up_mps = dot(ball.velocity, ground.normal);
    const double time_s = 2.0 * up_mps / ground.weight_mps2;
    const Vector level = along_ground(ball.velocity, ground.normal);
    ball.place = ball.place + time_s * level + (0.5 * time_s * time_s) * ground.pull;
    ball.velocity = level + time_s * ground.pull - up_mps * ground.normal;
}

void roll(Ball& ball, const Ground& ground, const Turf& turf) {
    // What is left of its spin makes it roll at once: where it skids is not far.
    const Vector level = along_ground(ball.velocity, ground.normal);
    Vector velocity = level - (2.0 / 7.0) * (level + ball.surface);
    const double hold = rolling_share * turf.rolling * ground.weight_mps2;
    const Vector pull = rolling_share * ground.pull;
    // In steps that shrink with the speed, so that it comes to rest in the last.
    for (int step = 0; step < roll_steps; ++step) {
        const double speed = length(velocity);
        if (!(speed > 1e-6)) return;
        const double left_s = speed / (hold - dot(pull, (1.0 / speed) * velocity));
        const double time_s = left_s / (roll_steps - step);
        const Vector middle = velocity + (0.5 * time_s) * (pull - (hold / speed) * velocity);
        const double middle_speed = length(middle);
        if (!(middle_speed > 1e-9)) return;
        ball.place = ball.place + time_s * middle;
        velocity = velocity + time_s * (pull - (hold / middle_speed) * middle);
    }
}

}  // namespace

RunOut run_out(const Impact& impact, Firmness firmness, const Slope& slope) {
    const double right_angle = 0.5 * std::numbers::pi;
    if (!(impact.speed_mps > 0.0 && std::isfinite(impact.speed_mps)) ||
        !(impact.angle_rad > 0.0 && impact.angle_rad <= right_angle) ||
        !(impact.spin_rad_per_s >= 0.0 && std::isfinite(impact.spin_rad_per_s)) ||
        !(std::abs(slope.along) <= 1.0) || !(std::abs(slope.right) <= 1.0))
        throw std::invalid_argument("an impact or a slope that no ball meets");
    const Turf turf = turf_of(firmness);
    const Ground ground = ground_of(slope, turf);
    const Vector travel = along_ground({1.0, 0.0, 0.0}, ground.normal);
    Ball ball{.place = {},
              .velocity = {impact.speed_mps * std::cos(impact.angle_rad), 0.0,
                           -impact.speed_mps * std::sin(impact.angle_rad)},
              .surface = (ball_radius_m * impact.spin_rad_per_s / length(travel)) * travel};
    for (int hops = 0; hops < most_hops && dot(ball.velocity, ground.normal) < 0.0; ++hops) {
        bounce(ball, ground, turf);
        const double up_mps = dot(ball.velocity, ground.normal);
        if (up_mps * up_mps < 2.0 * ground.weight_mps2 * least_hop_m || up_mps < 0.0) break;
        hop(ball, ground);
    }
    roll(ball, ground, turf);
    const double run_m = std::hypot(ball.place.along, ball.place.right);
    const double kept = run_m > longest_run_m ? longest_run_m / run_m : 1.0;
    return {kept * ball.place.along, kept * ball.place.right};
}

}  // namespace landwidth
