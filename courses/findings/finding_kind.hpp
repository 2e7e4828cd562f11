// What a kind of findings is made of; all kinds stand in finding_kinds.hpp.
#pragma once

#include <algorithm>
#include <cstddef>
#include <optional>
#include <string_view>

#include "courses/finding.hpp"

namespace landwidth {

// How severe a kind is.
enum class Weight {
    error,
    warning,
    note,
    as_lost,          // what it means to lose a feature of its role (RoleMeaning::loss)
};

// What a finding bears on: its `hole`, its `feature`, or neither.
enum class Bears { on_course, on_hole, on_feature };

struct FindingKind {
    // The code, and where one code is told in several wordings also which: "drawn-twice", "ring-closed/gap".
    std::string_view name;
    Weight weight;
    Bears bears;
    // One sentence each, without a full stop: format strings of the same arguments. Argument 0 of a kind that
    // bears on a feature is what that is tagged as ("golf=green"); what else the words leave open stands
    // above the kind where the words do not tell.
    std::string_view words;
    std::string_view advice;

    constexpr std::string_view code() const { return name.substr(0, name.find('/')); }
};

// Absent where it depends on the feature's role.
constexpr std::optional<Severity> fixed_severity(Weight weight) {
    switch (weight) {
        case Weight::error:
            return Severity::error;
        case Weight::warning:
            return Severity::warning;
        case Weight::note:
            return Severity::note;
        case Weight::as_lost:
            break;
    }
    return std::nullopt;
}

// A kind's name as an argument of a template.
template <std::size_t size>
struct KindName {
    char text[size];

    consteval KindName(const char (&name)[size]) { std::copy_n(name, size, text); }
    constexpr std::string_view view() const { return {text, size - 1}; }
};

}  // namespace landwidth
