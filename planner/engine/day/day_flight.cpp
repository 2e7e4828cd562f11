#include "planner/engine/day/day_flight.hpp"

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <numbers>

namespace landwidth {

namespace {

// Carries a response is worked out at: every tenth of the usual one, to half as far again.
constexpr std::size_t steps_to_usual = 10;
constexpr std::size_t node_count = 16;

// Wind angles of a half turn; the other half is its mirror image. 8 to the turn tell the first two harmonics
// apart.
constexpr std::array wind_angles{0.0, 0.25 * std::numbers::pi, 0.5 * std::numbers::pi,
                                 0.75 * std::numbers::pi, std::numbers::pi};
constexpr std::array<double, wind_angles.size()> times_in_a_turn{1.0, 2.0, 2.0, 2.0, 1.0};
constexpr double angles_in_a_turn = 8.0;

// Across which the drift of a running ball is measured.
constexpr double cross_slope = 0.05;
// Side spin by which growth of the curve is measured.
constexpr double curve_tilt_rad = 0.1;

// A run of the model shorter than this tells no ratio to the club's own run.
constexpr double least_run_m = 3.0;
constexpr double least_run_scale = 0.5, most_run_scale = 2.0;

AirFlow flow_at(const Conditions& day, double angle) {
    const double speed = day.wind ? day.wind->speed_mps : 0.0;
    return {air_of(day.weather), speed * std::cos(angle), speed * std::sin(angle)};
}

AirFlow still(const Conditions& day) {
    return {air_of(day.weather), 0.0, 0.0};
}

Impact impact_of(const Flight& flight) {
    return {flight.landing_speed_mps, flight.landing_angle_rad, flight.landing_spin_rad_per_s};
}

Firmness firmness_of(Surface surface, const Conditions& day) {
    switch (surface) {
        case Surface::mown:
            return day.fairway;
        case Surface::rough:
            return day.rough;
        case Surface::green:
            break;
    }
    return Firmness::ordinary;
}

double flat_run(const Flight& flight, Firmness firmness) {
    return run_out(impact_of(flight), firmness, {}).along_m;
}

// What the model's runs are multiplied by to be those of the club.
double run_scale_of(const ClubFlight& club, double run_m) {
    const double modelled = flat_run(
        fly(club.launch_for(club.carry_m()), reference_air(), club.aerodynamics()), Firmness::ordinary);
    return std::clamp(run_m / std::max(modelled, least_run_m), least_run_scale, most_run_scale);
}

// Height by distance along the way, at even steps, from a path that is even in time; in carries.
template <std::size_t points>
std::array<float, points> profile_of(const Flight& flight) {
    std::array<float, points> profile{};
    const double carry = flight.landing.along_m;
    std::size_t after = 1;
    for (std::size_t i = 1; i + 1 < points; ++i) {
        const double at = carry * static_cast<double>(i) / (points - 1);
        while (after + 1 < flight.path.size() && flight.path[after].along_m < at)
            ++after;
        const FlightPoint& a = flight.path[after - 1];
        const FlightPoint& b = flight.path[after];
        const double share = std::clamp((at - a.along_m) / (b.along_m - a.along_m), 0.0, 1.0);
        profile[i] =
            static_cast<float>(std::max(0.0, a.height_m + share * (b.height_m - a.height_m)) / carry);
    }
    return profile;
}

// Sums over a turn of what is the same on either side, and of what is opposite.
struct Harmonics {
    double mean = 0.0, cos1 = 0.0, cos2 = 0.0, sin1 = 0.0, sin2 = 0.0;

    void add_even(double angle, double times, double value) {
        mean += times / angles_in_a_turn * value;
        cos1 += 2.0 * times / angles_in_a_turn * value * std::cos(angle);
        cos2 += 2.0 * times / angles_in_a_turn * value * std::cos(2.0 * angle);
    }
    void add_odd(double angle, double times, double value) {
        sin1 += 2.0 * times / angles_in_a_turn * value * std::sin(angle);
        sin2 += 2.0 * times / angles_in_a_turn * value * std::sin(2.0 * angle);
    }
};

}  // namespace

DayFlight::DayFlight(const ClubFlight& club, const Conditions& day, double run_m, double curve_share)
    : differs_(!is_reference_day(day)),
      nodes_per_m_(static_cast<float>(static_cast<double>(steps_to_usual) / club.carry_m())),
      nodes_(node_count) {
    const double run_scale = run_scale_of(club, run_m);
    for (std::size_t i = 1; i < node_count; ++i)
        nodes_[i] = node_at(club, day, club.carry_m() * static_cast<double>(i) / steps_to_usual, run_scale);
    // A ball that goes nowhere: as steep, and as high for its carry, as the shortest one.
    nodes_[0].fall0 = nodes_[1].fall0;
    nodes_[0].fall1 = nodes_[1].fall1;
    nodes_[0].profile = nodes_[1].profile;
    nodes_[0].peak = nodes_[1].peak;
    learn_slopes(club, run_scale);
    if (!differs_) return;
    learn_heights(club, day);
    learn_curve(club, day, curve_share);
}

DayFlight::Node DayFlight::node_at(const ClubFlight& club, const Conditions& day, double carry_m,
                                   double run_scale) const {
    const BallLaunch ball = club.launch_for(carry_m);
    const auto flown = [&](const AirFlow& flow) { return fly(ball, flow, club.aerodynamics()); };
    const Flight reference = flown(reference_air());
    const auto fall = [](const Flight& flight) { return 1.0 / std::tan(flight.landing_angle_rad); };
    Node node;
    node.profile = profile_of<profile_points>(reference);
    node.peak = static_cast<float>(reference.peak.height_m / reference.landing.along_m);
    node.fall0 = static_cast<float>(fall(reference));
    if (!differs_) return node;

    const Flight calm = flown(still(day));
    node.air_along = static_cast<float>(calm.landing.along_m - reference.landing.along_m);
    Harmonics along, right, falls;
    std::array<Harmonics, surface_count> runs;
    for (std::size_t i = 0; i < wind_angles.size(); ++i) {
        const double angle = wind_angles[i];
        const double times = times_in_a_turn[i];
        const Flight flight = day.wind ? flown(flow_at(day, angle)) : calm;
        along.add_even(angle, times, flight.landing.along_m - calm.landing.along_m);
        right.add_odd(angle, times, flight.landing.right_m);
        falls.add_even(angle, times, fall(flight));
        for (std::size_t s = 0; s < surface_count; ++s)
            runs[s].add_even(angle, times,
                             run_scale * (flat_run(flight, firmness_of(static_cast<Surface>(s), day)) -
                                          flat_run(reference, Firmness::ordinary)));
    }
    node.wind_along0 = static_cast<float>(along.mean);
    node.wind_along1 = static_cast<float>(along.cos1);
    node.wind_along2 = static_cast<float>(along.cos2);
    node.wind_right1 = static_cast<float>(right.sin1);
    node.wind_right2 = static_cast<float>(right.sin2);
    node.fall0 = static_cast<float>(falls.mean);
    node.fall1 = static_cast<float>(falls.cos1);
    for (std::size_t s = 0; s < surface_count; ++s) {
        node.run0[s] = static_cast<float>(runs[s].mean);
        node.run1[s] = static_cast<float>(runs[s].cos1);
    }
    return node;
}

void DayFlight::learn_slopes(const ClubFlight& club, double run_scale) {
    const Impact impact =
        impact_of(fly(club.launch_for(club.carry_m()), reference_air(), club.aerodynamics()));
    const auto run = [&](const Slope& slope) { return run_out(impact, Firmness::ordinary, slope); };
    const double flat = run({}).along_m;
    for (std::size_t i = 0; i < slope_steps; ++i) {
        const double rise = double{steepest_slope} * (2.0 * static_cast<double>(i) / (slope_steps - 1) - 1.0);
        on_slope_[i] = static_cast<float>(run_scale * (run({rise, 0.0}).along_m - flat));
    }
    sideways_per_slope_ = static_cast<float>(run_scale * run({0.0, cross_slope}).right_m / cross_slope);
}

void DayFlight::learn_heights(const ClubFlight& club, const Conditions& day) {
    const BallLaunch ball = club.launch_for(club.carry_m());
    const auto for_its_way = [&](const AirFlow& flow) {
        const Flight flight = fly(ball, flow, club.aerodynamics());
        return flight.peak.height_m / flight.landing.along_m;
    };
    const double usual = for_its_way(reference_air());
    const double calm = for_its_way(still(day)) / usual;
    const double tail = for_its_way(flow_at(day, 0.0)) / usual;
    const double head = for_its_way(flow_at(day, std::numbers::pi)) / usual;
    height_air_ = static_cast<float>(calm - 1.0);
    height0_ = static_cast<float>(0.5 * (tail + head) - calm);
    height1_ = static_cast<float>(0.5 * (tail - head));
}

void DayFlight::learn_curve(const ClubFlight& club, const Conditions& day, double curve_share) {
    BallLaunch ball = club.launch_for(club.carry_m());
    ball.tilt_rad = curve_tilt_rad;
    const auto off_line = [&](const AirFlow& flow) {
        const Flight flight = fly(ball, flow, club.aerodynamics());
        return std::atan2(flight.landing.right_m, flight.landing.along_m);
    };
    const double usual = off_line(reference_air());
    const double tail = off_line(flow_at(day, 0.0)) / usual - 1.0;
    const double head = off_line(flow_at(day, std::numbers::pi)) / usual - 1.0;
    curl0_ = static_cast<float>(curve_share * 0.5 * (tail + head));
    curl1_ = static_cast<float>(curve_share * 0.5 * (tail - head));
}

DayFlight::Between DayFlight::between(float carry_m) const {
    const float at = std::clamp(carry_m * nodes_per_m_, 0.0F, static_cast<float>(node_count - 1));
    const std::size_t below = std::min(static_cast<std::size_t>(at), node_count - 2);
    return {nodes_[below], nodes_[below + 1], at - static_cast<float>(below)};
}

DayFlight::Landing DayFlight::landing(float carry_m, float gust) const {
    const Between at = between(carry_m);
    const float squared = gust * gust;
    return {{at.mix(&Node::air_along), squared * at.mix(&Node::wind_along0),
             gust * at.mix(&Node::wind_along1), squared * at.mix(&Node::wind_along2),
             gust * at.mix(&Node::wind_right1), squared * at.mix(&Node::wind_right2)},
            at.mix(&Node::fall0),
            at.mix(&Node::fall1)};
}

float DayFlight::fall(float carry_m, const WindAngle& wind) const {
    const Between at = between(carry_m);
    return at.mix(&Node::fall0) + at.mix(&Node::fall1) * wind.cos1;
}

float DayFlight::more_run(float carry_m, Surface surface, const WindAngle& wind) const {
    const Between at = between(carry_m);
    const auto s = static_cast<std::size_t>(surface);
    const auto run = [&](const Node& node) { return node.run0[s] + node.run1[s] * wind.cos1; };
    return run(at.below) + at.share * (run(at.above) - run(at.below));
}

float DayFlight::height(float at_m, float carry_m, float lands_m, const WindAngle& wind) const {
    if (!(lands_m > 0.0F)) return 0.0F;
    const float step = std::clamp(at_m / lands_m, 0.0F, 1.0F) * (profile_points - 1);
    const std::size_t before = std::min(static_cast<std::size_t>(step), profile_points - 2);
    const Between at = between(carry_m);
    const auto share = [&](const Node& node) {
        return node.profile[before] +
               (step - static_cast<float>(before)) * (node.profile[before + 1] - node.profile[before]);
    };
    const float below = share(at.below);
    return lands_m * (below + at.share * (share(at.above) - below)) * higher(wind);
}

float DayFlight::peak(float carry_m, float lands_m, const WindAngle& wind) const {
    return lands_m * between(carry_m).mix(&Node::peak) * higher(wind);
}

float gust_factor(const std::optional<Wind>& wind, std::size_t i) {
    if (!wind || !wind->gusts_mps || !(wind->speed_mps > 0.0)) return 1.0F;
    // Quantiles of a normal, cut at two standard deviations, in an order that neighbours do not share.
    constexpr std::size_t count = 64, step = 27;
    static const std::array<double, count> quantiles = [] {
        std::array<double, count> made{};
        constexpr double furthest_sd = 2.0;
        const boost::math::normal standard;
        for (std::size_t k = 0; k < count; ++k)
            made[k] = std::clamp(boost::math::quantile(standard, (static_cast<double>(k) + 0.5) / count),
                                 -furthest_sd, furthest_sd);
        return made;
    }();
    const double sd = 0.5 * (*wind->gusts_mps - wind->speed_mps) / wind->speed_mps;
    return static_cast<float>(std::max(0.0, 1.0 + sd * quantiles[i * step % count]));
}

}  // namespace landwidth
