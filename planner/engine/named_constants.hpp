// Lists of modelling constants that can be echoed and overridden by name: what assumptions.cpp and
// build_assumptions.cpp have in common.
#pragma once

#include <cstddef>
#include <span>
#include <string_view>
#include <vector>

#include "planner/engine/assumption_entry.hpp"

namespace landwidth {

// How a value is shown and typed, and how many SI units one of it is.
struct ConstantUnit {
    std::string_view name;
    double si;
};

// Everything about a constant but where it is held; value and limits in the unit.
struct ConstantText {
    std::string_view name;  // as typed after --assume
    double value;
    ConstantUnit unit;
    double lowest;
    double highest;
    std::string_view meaning;
    std::string_view source;
};

// `Values` holds the constants, in SI.
template <typename Values>
struct NamedConstant {
    std::string_view name;
    double value;
    ConstantUnit unit;
    double lowest;
    double highest;
    double& (*member)(Values&);
    std::string_view meaning;
    std::string_view source;

    ConstantText text() const { return {name, value, unit, lowest, highest, meaning, source}; }
};

AssumptionEntry entry_of(const ConstantText& constant, double si_value);

// What "name=value" asks for: which of the constants, and the value in SI. Throws UsageError: unknown name
// (naming the nearest), not a number, out of range. `lists_all` is the command that shows every name.
struct Override {
    std::size_t index;
    double si_value;
};
Override read_override(std::span<const ConstantText> constants, std::string_view text,
                       std::string_view lists_all);

template <typename Values>
Values defaults_of(std::span<const NamedConstant<Values>> constants) {
    Values values{};
    for (const NamedConstant<Values>& constant : constants)
        constant.member(values) = constant.value * constant.unit.si;
    return values;
}

// In the order of the list.
template <typename Values>
std::vector<AssumptionEntry> entries_of(std::span<const NamedConstant<Values>> constants, Values values) {
    std::vector<AssumptionEntry> entries;
    entries.reserve(constants.size());
    for (const NamedConstant<Values>& constant : constants)
        entries.push_back(entry_of(constant.text(), constant.member(values)));
    return entries;
}

// Throws as read_override.
template <typename Values>
void override_constant(std::span<const NamedConstant<Values>> constants, Values& values,
                       std::string_view text, std::string_view lists_all) {
    std::vector<ConstantText> texts;
    texts.reserve(constants.size());
    for (const NamedConstant<Values>& constant : constants)
        texts.push_back(constant.text());
    const Override wanted = read_override(texts, text, lists_all);
    constants[wanted.index].member(values) = wanted.si_value;
}

}  // namespace landwidth
