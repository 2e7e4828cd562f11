#include "planner/reports/build_figures.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "geometry/units.hpp"
#include "planner/reports/rounded.hpp"

namespace landwidth {
namespace {

Range outward(Range range, int decimals) {
    constexpr double noise = 1e-6;
    const double step = std::pow(10.0, decimals);
    return {rounded(std::floor(range.low * step + noise) / step, decimals),
            rounded(std::ceil(range.high * step - noise) / step, decimals)};
}

}  // namespace

double shown_grams(double kg) {
    return rounded(kg / kilograms_per_gram, 1);
}

double shown_inches(double m) {
    return rounded(m / metres_per_inch, 2);
}

double shown_degrees(double rad) {
    return rounded(rad / radians_per_degree, 1);
}

double shown_inertia(double kg_m2) {
    return rounded(kg_m2 / kg_m2_per_kg_cm2, 0);
}

double shown_points(SwingWeight weight) {
    return rounded(weight.points(), 1);
}

double shown_points_more(const ClubParts& before, const ClubParts& after) {
    return rounded(
        shown_points(weights_of(after).swing_weight) - shown_points(weights_of(before).swing_weight), 1);
}

double shown_grams_more(const ClubParts& before, const ClubParts& after) {
    return rounded(shown_grams(after.head_kg) - shown_grams(before.head_kg), 1);
}

double shown_inertia_more(const ClubParts& before, const ClubParts& after) {
    return shown_inertia(inertia_about_butt(after)) - shown_inertia(inertia_about_butt(before));
}

ShownRange shown_range(Range change, const std::optional<double>& now, double unit, int decimals) {
    ShownRange shown{.change = outward({change.low / unit, change.high / unit}, decimals)};
    if (!now) return shown;
    shown.now = rounded(*now / unit, decimals);
    shown.then = Range{std::max(rounded(*shown.now + shown.change.low, decimals), 0.0),
                       rounded(*shown.now + shown.change.high, decimals)};
    return shown;
}

std::string change_words(Range shown, int decimals) {
    const auto end = [&](double value) {
        return value == 0.0 ? std::string("0") : fmt::format("{:+.{}f}", value, decimals);
    };
    return fmt::format("{} to {}", end(shown.low), end(shown.high));
}

}  // namespace landwidth
