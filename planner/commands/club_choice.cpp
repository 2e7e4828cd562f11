#include "planner/commands/club_choice.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "geometry/error.hpp"
#include "geometry/units.hpp"
#include "golfer-profiles/club_names.hpp"
#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/nearest_word.hpp"
#include "golfer-profiles/typical_club.hpp"
#include "planner/commands/typed_supposition.hpp"
#include "planner/commands/typed_text.hpp"

namespace landwidth {

namespace {

// Of its carry: the share a club may be supposed to gain or lose. Assumption.
constexpr double most_carry_share = 0.25;

std::optional<std::size_t> number_of(const Golfer& golfer, std::string_view name) {
    const auto found =
        std::ranges::find_if(golfer.clubs, [&](const Club& club) { return same_name(club.name, name); });
    if (found == golfer.clubs.end()) return std::nullopt;
    return static_cast<std::size_t>(found - golfer.clubs.begin());
}

// Of that name, or of the usual name for it: the "7-iron" for "7i".
std::optional<std::size_t> known(const Golfer& golfer, std::string_view name) {
    if (const auto club = number_of(golfer, name)) return club;
    const std::optional<ClubKind> kind = kind_by_name(name);
    const std::optional<std::string> usual = kind ? usual_name(*kind, name) : std::nullopt;
    return usual ? number_of(golfer, *usual) : std::nullopt;
}

[[noreturn]] void no_such_club(const Golfer& golfer, std::string_view option, std::string_view name) {
    std::vector<std::string_view> names;
    for (const Club& club : golfer.clubs)
        names.push_back(club.name);
    const auto nearest = nearest_word(name, names);
    throw UsageError(
        fmt::format("{} {}: the profile has no club of that name{}; landwidth profile show lists them",
                    option, name, nearest ? fmt::format(", did you mean \"{}\"?", *nearest) : ""));
}

// What the change comes to with this club is a club still.
void check_supposed(const Typed& typed, const Club& of, const Supposition& supposition) {
    const ShotPattern& pattern = *of.pattern;
    const double carry_m = pattern.usual.centre.carry_m;
    const double then_m = supposed_pattern(pattern, supposition).usual.centre.carry_m;
    if (std::abs(then_m - carry_m) > most_carry_share * carry_m)
        typed.refuse(
            fmt::format("the {} carries {:.0f} yd and would carry {:.0f}; up to {:.0f} % either way "
                        "can be supposed",
                        of.name, to_yards(carry_m), to_yards(then_m), 100.0 * most_carry_share));
    const bool of_mishits = supposition.mishit_factor != 1.0 || supposition.mishit_share != 0.0;
    if (!of_mishits) return;
    if (!pattern.mishit)
        typed.refuse(
            fmt::format("the pattern of the {} has no mishits: where they would land is not known, so none "
                        "can be supposed",
                        of.name));
    const double share = pattern.mishit->share;
    const double then = share * supposition.mishit_factor + supposition.mishit_share;
    if (then < -1e-12 || then >= 0.9)
        typed.refuse(
            fmt::format("of 100 shots with the {} {:.3g} are mishits, and {:.3g} would be; from 0 to "
                        "90 is expected",
                        of.name, 100.0 * share, 100.0 * then));
}

std::string what_is_supposed(const std::string& words, const Supposition& supposition) {
    if (supposition.ball_speed_mps == 0.0) return words;
    return fmt::format("{}, which carries {:+.1f} yd", words, to_yards(supposition.speed_carry_m));
}

}  // namespace

std::size_t ClubChoice::in_profile(std::string_view option, std::string_view name) const {
    const std::optional<std::size_t> club = number_of(golfer_, trimmed(name));
    if (!club) no_such_club(golfer_, option, name);
    return *club;
}

std::size_t ClubChoice::to_hit(std::string_view option, std::string_view name) {
    std::optional<std::size_t> club = known(golfer_, trimmed(name));
    if (!club) club = typical(trimmed(name));
    if (!club) no_such_club(golfer_, option, name);
    if (!golfer_.clubs[*club].pattern)
        throw UsageError(fmt::format("{} {}: the club has no shot pattern", option, name));
    return *club;
}

std::size_t ClubChoice::supposed(std::string_view option, const std::string& text) {
    const TypedSupposition asked = typed_supposition(option, text);
    const std::size_t of = in_profile(option, asked.club);
    const Club& club = golfer_.clubs[of];
    if (!club.pattern) throw UsageError(fmt::format("{} {}: the club has no shot pattern", option, text));
    if (std::ranges::find(supposed_, of, &SupposedClub::club) != supposed_.end())
        throw UsageError(fmt::format("{} {}: the club is supposed itself; write both changes behind one name",
                                     option, text));
    const Supposition supposition = with_flight(asked.supposition, club);
    check_supposed({option, text}, club, supposition);
    Club made = supposed_club(club, supposition, free_name(club.name + " (supposed"));
    made.build_of = build_of(club);
    const std::string words = what_is_supposed(asked.words, supposition);
    made.note = fmt::format("supposed: {} with {}", club.name, words);
    const std::size_t number = on_trial(std::move(made));
    supposed_.push_back({number, of, supposition, words});
    return number;
}

std::string ClubChoice::build_of(const Club& club) {
    if (!club.build_of.empty()) return club.build_of;
    return std::string(trimmed(std::string_view(club.name).substr(0, club.name.find(','))));
}

std::optional<std::size_t> ClubChoice::typical(std::string_view name) {
    const std::optional<ClubKind> kind = kind_by_name(name);
    if (!kind || *kind == ClubKind::putter) return std::nullopt;
    Club club = typical_club(request_like(golfer_), *kind, name);
    warnings_.push_back(fmt::format(
        "no shots with a {} are recorded: it is weighed with the pattern typical of the golfer's level",
        club.name));
    return on_trial(std::move(club));
}

std::size_t ClubChoice::on_trial(Club club) {
    club.in_bag = false;
    golfer_.clubs.push_back(std::move(club));
    return golfer_.clubs.size() - 1;
}

// "driver (supposed)", and "driver (supposed 2)" for the second.
std::string ClubChoice::free_name(const std::string& name) const {
    std::string free = name + ")";
    for (int count = 2; number_of(golfer_, free); ++count)
        free = fmt::format("{} {})", name, count);
    return free;
}

}  // namespace landwidth
