#include "planner/reports/landing_rim.hpp"

#include <numbers>

#include "planner/reports/day_words.hpp"

namespace landwidth {

std::vector<Ring> landing_rims(const PlanView& view, Point tee, const TeeChoice& choice, double share,
                               int points) {
    const auto& pattern = view.golfer.clubs.at(choice.club).pattern;
    if (!pattern) return {};
    const bool moved = shows_day(view.plan);
    const double further_m = moved ? choice.day.carry_m - pattern->usual.centre.carry_m : 0.0;
    const double drift_m = moved ? choice.day.drift_m : 0.0;
    const Point along = along_bearing(choice.aim);
    const Point across = to_the_right(along);
    std::vector<Ring> rings;
    for (const LandingEllipse& ellipse : landing_ellipses(*pattern, share)) {
        Ring& ring = rings.emplace_back();
        for (int i = 0; i < points; ++i) {
            const ShotOffset rim = ellipse.rim(2.0 * std::numbers::pi * i / points);
            ring.push_back(tee + (rim.carry_m + further_m) * along + (rim.side_m + drift_m) * across);
        }
    }
    return rings;
}

}  // namespace landwidth
