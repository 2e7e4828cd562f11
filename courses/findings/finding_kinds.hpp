// Every kind of findings, and how one is made.
//
// What a reading of a map can have to tell stands in three lists: reading_kinds, assembly_kinds,
// ground_kinds. Code that finds something names the kind and gives what its words leave open. A name that is
// no kind, and arguments that do not fit the words, do not compile:
//
//     finding_on_course<"elements-deleted">(12)
//
// Findings on a feature are made by finding_on() (courses/tags/feature_findings.hpp), those on a hole by
// HoleDraft::report(), those that are told once however many holes a feature belongs to by FeatureNotes.
#pragma once

#include <fmt/core.h>

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "courses/finding.hpp"
#include "courses/findings/assembly_kinds.hpp"
#include "courses/findings/finding_kind.hpp"
#include "courses/findings/ground_kinds.hpp"
#include "courses/findings/reading_kinds.hpp"

namespace landwidth {

// All of them, in the order of the lists.
std::vector<FindingKind> finding_kinds();

consteval FindingKind kind_named(std::string_view name) {
    for (const FindingKind& kind : reading_kinds) {
        if (kind.name == name) return kind;
    }
    for (const FindingKind& kind : assembly_kinds) {
        if (kind.name == name) return kind;
    }
    for (const FindingKind& kind : ground_kinds) {
        if (kind.name == name) return kind;
    }
    throw "there is no kind of findings with this name";
}

template <KindName name>
inline constexpr FindingKind kind_of = kind_named(name.view());

// With what the words leave open filled in; `arguments` must fit them.
Finding filled_in(const FindingKind& kind, Severity severity, std::string feature, std::string hole,
                  std::optional<LonLat> place, fmt::format_args arguments);

// The same, and whether the arguments fit is known when it is compiled.
template <KindName name, typename... Args>
Finding filled_in(Severity severity, std::string feature, std::string hole, std::optional<LonLat> place,
                  const Args&... args) {
    constexpr const FindingKind& kind = kind_of<name>;
    [[maybe_unused]] constexpr fmt::format_string<const Args&...> words{kind.words}, advice{kind.advice};
    return filled_in(kind, severity, std::move(feature), std::move(hole), place,
                     fmt::make_format_args(args...));
}

// `about`: the file, the layer or whatever of the map it is about; may be empty.
template <KindName name, typename... Args>
Finding finding_about(std::string about, const Args&... args) {
    static_assert(kind_of<name>.bears == Bears::on_course);
    constexpr std::optional<Severity> severity = fixed_severity(kind_of<name>.weight);
    return filled_in<name>(severity.value(), std::move(about), "", std::nullopt, args...);
}

template <KindName name, typename... Args>
Finding finding_on_course(const Args&... args) {
    return finding_about<name>("", args...);
}

// `feature`: the id of the hole's line; `hole`: its ref, empty where it has none yet.
template <KindName name, typename... Args>
Finding finding_on_hole(std::string feature, std::string hole, std::optional<LonLat> place,
                        const Args&... args) {
    static_assert(kind_of<name>.bears == Bears::on_hole);
    constexpr std::optional<Severity> severity = fixed_severity(kind_of<name>.weight);
    return filled_in<name>(severity.value(), std::move(feature), std::move(hole), place, args...);
}

}  // namespace landwidth
