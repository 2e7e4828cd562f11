#include "planner/engine/named_constants.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>

#include "geometry/error.hpp"
#include "golfer-profiles/nearest_word.hpp"

namespace landwidth {
namespace {

std::size_t index_named(std::span<const ConstantText> constants, std::string_view name,
                        std::string_view lists_all) {
    const auto found = std::ranges::find(constants, name, &ConstantText::name);
    if (found != constants.end()) return static_cast<std::size_t>(found - constants.begin());
    std::vector<std::string_view> names;
    for (const ConstantText& constant : constants)
        names.push_back(constant.name);
    const std::optional<std::string_view> nearest = nearest_word(name, names);
    throw UsageError(fmt::format("--assume {}: there is no assumption of that name{}; {} lists them all",
                                 name, nearest ? fmt::format("; did you mean \"{}\"?", *nearest) : "",
                                 lists_all));
}

}  // namespace

AssumptionEntry entry_of(const ConstantText& constant, double si_value) {
    const double shown = si_value / constant.unit.si;
    const bool changed = std::abs(shown - constant.value) > 1e-9 * std::max(1.0, std::abs(constant.value));
    return {std::string(constant.name),    changed ? shown : constant.value, std::string(constant.unit.name),
            std::string(constant.meaning), std::string(constant.source),     changed};
}

Override read_override(std::span<const ConstantText> constants, std::string_view text,
                       std::string_view lists_all) {
    const std::size_t equals = text.find('=');
    if (equals == std::string_view::npos) {
        throw UsageError(fmt::format("--assume {}: expected name=value, e.g. {}={:g}", text,
                                     constants.front().name, constants.front().value));
    }
    const std::size_t index = index_named(constants, text.substr(0, equals), lists_all);
    const ConstantText& constant = constants[index];
    const std::string_view number = text.substr(equals + 1);
    double value = 0.0;
    const auto [end, error] = std::from_chars(number.data(), number.data() + number.size(), value);
    if (error != std::errc{} || end != number.data() + number.size() || !std::isfinite(value))
        throw UsageError(fmt::format("--assume {}: \"{}\" is not a number", text, number));
    if (value < constant.lowest || value > constant.highest)
        throw UsageError(fmt::format("--assume {}: must be from {} to {} {}", text, constant.lowest,
                                     constant.highest, constant.unit.name));
    return {index, value * constant.unit.si};
}

}  // namespace landwidth
