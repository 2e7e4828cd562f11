#include "golfer-profiles/level_guess.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "geometry/error.hpp"
#include "geometry/units.hpp"
#include "golfer-profiles/club_flight.hpp"
#include "golfer-profiles/preset_numbers.hpp"
#include "golfer-profiles/typical_club.hpp"

namespace landwidth {

namespace {

constexpr double best_guess = 0.0, worst_guess = 36.0;
constexpr double usual_speed_ratio = 1.45;

// Where a falling or rising `at` passes 0 between low and high, which it does once.
template <class Function>
double crossing(double low, double high, Function at) {
    const bool rises = at(high) > 0.0;
    for (int halving = 0; halving < 60; ++halving) {
        const double middle = 0.5 * (low + high);
        ((at(middle) > 0.0) == rises ? high : low) = middle;
    }
    return 0.5 * (low + high);
}

GolferRequest with_drive(GolferRequest like, double drive_yd) {
    like.handicap_index = handicap_by_drive(like.reference, drive_yd);
    like.drive_total_yd = drive_yd;
    return like;
}

}  // namespace

double handicap_by_drive(Reference reference, double drive_total_yd) {
    if (drive_total_yd >= mean_drive_yd(reference, best_guess)) return best_guess;
    if (drive_total_yd <= mean_drive_yd(reference, worst_guess)) return worst_guess;
    const double index = crossing(best_guess, worst_guess, [&](double handicap) {
        return mean_drive_yd(reference, handicap) - drive_total_yd;
    });
    return std::round(10.0 * index) / 10.0;
}

double drive_by_carry(const GolferRequest& like, ClubKind kind, const std::string& name, double carry_yd) {
    const auto too_short = [&](double drive_yd) {
        return to_yards(typical_club(with_drive(like, drive_yd), kind, name).pattern->usual.centre.carry_m) -
               carry_yd;
    };
    if (too_short(shortest_drive_yd) > 0.0 || too_short(longest_drive_yd) < 0.0)
        throw UsageError(
            fmt::format("a carry of {:g} yd with \"{}\": no golfer's drives go with it ({:g} to "
                        "{:g} yd)",
                        carry_yd, name, shortest_drive_yd, longest_drive_yd));
    return crossing(shortest_drive_yd, longest_drive_yd, too_short);
}

double drive_by_club_speed(const GolferRequest& like, double club_speed_mps) {
    const double ball_speed = usual_speed_ratio * club_speed_mps;
    constexpr double shortest_carry_m = Yards{60.0}.metres(), longest_carry_m = Yards{360.0}.metres();
    const auto too_slow = [&](double carry_m) {
        return usual_launch(ClubKind::driver, carry_m, std::nullopt).ball_speed_mps - ball_speed;
    };
    if (too_slow(shortest_carry_m) > 0.0 || too_slow(longest_carry_m) < 0.0)
        throw UsageError(fmt::format("a club speed of {:.0f} mph is no golfer's with a driver",
                                     club_speed_mps / metres_per_second_per_mph));
    return drive_by_carry(like, ClubKind::driver, "driver",
                          to_yards(crossing(shortest_carry_m, longest_carry_m, too_slow)));
}

GolferRequest guessed_level(GolferRequest like, double drive_total_yd) {
    return with_drive(std::move(like), std::round(10.0 * drive_total_yd) / 10.0);
}

}  // namespace landwidth
