#include "golfer-profiles/swing_weight.hpp"

#include <fmt/format.h>

#include <charconv>
#include <cmath>

#include "golfer-profiles/json_text.hpp"

namespace landwidth {
namespace {

constexpr double points_per_letter = 10.0;
constexpr std::string_view letters = "ABCDEFG";
constexpr double d0_inch_ounces = 213.5;
constexpr double d0_kg_m = d0_inch_ounces * kilograms_per_ounce * metres_per_inch;
constexpr double d0_points = 3.0 * points_per_letter;

}  // namespace

double SwingWeight::points() const {
    return d0_points + (moment_kg_m - d0_kg_m) / kilogram_metres_per_point;
}

SwingWeight SwingWeight::of_points(double points) {
    return {d0_kg_m + (points - d0_points) * kilogram_metres_per_point};
}

SwingWeight swing_weight_of(double total_kg, double balance_m) {
    return {total_kg * (balance_m - swing_weight_fulcrum_m)};
}

double balance_of(SwingWeight weight, double total_kg) {
    return swing_weight_fulcrum_m + weight.moment_kg_m / total_kg;
}

std::optional<double> total_of(SwingWeight weight, double balance_m) {
    const double arm_m = balance_m - swing_weight_fulcrum_m;
    const double total_kg = weight.moment_kg_m / arm_m;
    if (!std::isfinite(total_kg) || total_kg <= 0.0) return std::nullopt;
    return total_kg;
}

std::optional<std::string> swing_weight_text(SwingWeight weight) {
    const double tenths = std::round(10.0 * weight.points());
    constexpr double tenths_per_letter = 10.0 * points_per_letter;
    if (!(tenths >= 0.0 && tenths < tenths_per_letter * static_cast<double>(letters.size())))
        return std::nullopt;
    const double letter = std::floor(tenths / tenths_per_letter);
    // The shortest form: no decimal where it is a whole point.
    return fmt::format("{}{:g}", letters[static_cast<std::size_t>(letter)],
                       (tenths - letter * tenths_per_letter) / 10.0);
}

std::optional<SwingWeight> swing_weight_of_text(std::string_view text) {
    text = trimmed(text);
    if (text.size() < 2) return std::nullopt;
    const char typed = text.front();
    const std::size_t letter =
        letters.find(typed >= 'a' && typed <= 'z' ? static_cast<char>(typed - 'a' + 'A') : typed);
    const std::string_view number = text.substr(1);
    double points = 0.0;
    const auto [end, error] =
        std::from_chars(number.data(), number.data() + number.size(), points, std::chars_format::fixed);
    const bool read = error == std::errc{} && end == number.data() + number.size();
    if (letter == std::string_view::npos || !read || std::signbit(points) || !(points < points_per_letter))
        return std::nullopt;
    return SwingWeight::of_points(static_cast<double>(letter) * points_per_letter + points);
}

}  // namespace landwidth
