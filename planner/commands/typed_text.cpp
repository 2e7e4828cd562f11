#include "planner/commands/typed_text.hpp"

#include <fmt/format.h>

#include <charconv>
#include <cmath>
#include <optional>

#include "geometry/error.hpp"
#include "golfer-profiles/json_text.hpp"

namespace landwidth {

void Typed::refuse(std::string_view problem) const {
    throw UsageError(fmt::format("{} {}: {}", option, in_quotes(text), problem));
}

TypedQuantity quantity_of(const Typed& typed, std::string_view part, std::string_view example) {
    const std::string_view text = trimmed(part);
    double number = 0.0;
    const auto [stopped, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc() || !std::isfinite(number))
        typed.refuse(fmt::format("a number with its unit is expected: write {}", example));
    const auto used = static_cast<std::size_t>(stopped - text.data());
    std::string unit = in_small_letters(trimmed(text.substr(used)));
    if (unit.empty()) typed.refuse(fmt::format("the unit is missing: write {}", example));
    return {number, std::move(unit)};
}

double si_of(const Typed& typed, const TypedQuantity& quantity, Measure measure, std::string_view example) {
    const std::optional<LogUnit> unit = unit_written(quantity.unit);
    if (!unit || unit->measure != measure)
        typed.refuse(fmt::format("{} is no unit of {} here: write {}", in_quotes(quantity.unit),
                                 measure_words(measure), example));
    return unit->in_si(quantity.number);
}

}  // namespace landwidth
