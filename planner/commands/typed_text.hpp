// What was typed behind an option, and the quantities in it: a number with its unit.
#pragma once

#include <string>
#include <string_view>

#include "golfer-profiles/logs/log_units.hpp"

namespace landwidth {

struct Typed {
    std::string_view option;
    std::string_view text;

    // Throws UsageError: option, text, problem.
    [[noreturn]] void refuse(std::string_view problem) const;
};

struct TypedQuantity {
    double number;
    std::string unit;  // small letters, as typed; not empty
};

// Of `part` of what was typed. Refuses what is no number or has no unit; `example` says what to write.
TypedQuantity quantity_of(const Typed& typed, std::string_view part, std::string_view example);

// In SI by the units that logs know too; refuses others.
double si_of(const Typed& typed, const TypedQuantity& quantity, Measure measure, std::string_view example);

}  // namespace landwidth
