#include "golfer-profiles/bag_joining.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <optional>
#include <string_view>
#include <utility>

#include "geometry/error.hpp"
#include "geometry/units.hpp"
#include "golfer-profiles/club_names.hpp"

namespace landwidth {

namespace {

// How well a logged club fits one of a profile.
enum class Fit { none, same_usual_name, another_spelling, same_name };

// The name of a club of a profile in two parts: "driver, 44 in" is a build of the driver.
struct NameParts {
    std::string_view club, build;
};

NameParts parts_of(std::string_view name) {
    const std::size_t comma = name.find(", ");
    if (comma == std::string_view::npos) return {name, {}};
    return {name.substr(0, comma), name.substr(comma + 2)};
}

Fit fit_of(const LoggedClub& logged, const Club& club) {
    if (same_name(club.name, logged.name)) return Fit::same_name;
    if (club.kind != logged.kind) return Fit::none;
    const auto [name, build] = parts_of(club.name);
    const bool same_club = club_key(club.kind, name) == club_key(logged.kind, logged.club);
    const std::string key = build_key(logged.club, logged.build);
    if (same_club && build_key(name, build) == key) return Fit::another_spelling;
    // A build is not its club, unless it stands for it.
    if (!build.empty() || (!key.empty() && !logged.is_the_one_carried)) return Fit::none;
    if (same_club) return Fit::another_spelling;
    const auto usual = usual_name(logged.kind, logged.club);
    return usual && usual_name(club.kind, name) == usual ? Fit::same_usual_name : Fit::none;
}

// The best of the profile by itself; nullptr when two fit by their usual name alone.
Club* best_fit(Golfer& golfer, const LoggedClub& logged) {
    Club* best = nullptr;
    Fit fit = Fit::none;
    bool two = false;
    for (Club& club : golfer.clubs) {
        const Fit here = fit_of(logged, club);
        two = here > fit ? false : two || (here == fit && here == Fit::same_usual_name);
        if (here <= fit) continue;
        best = &club;
        fit = here;
    }
    return two ? nullptr : best;
}

// How far the loft in the name is from the club's own; absent when one of them is not known.
std::optional<double> off_by(const LoggedClub& logged, const Club& club) {
    const std::size_t digit = logged.club.find_first_of("0123456789");
    if (!club.loft_rad || digit == std::string::npos) return std::nullopt;
    return std::abs(std::strtod(logged.club.c_str() + digit, nullptr) * radians_per_degree - *club.loft_rad);
}

bool fits_better(const LoggedClub& other, const LoggedClub& logged, const Club& club) {
    const Fit theirs = fit_of(other, club), ours = fit_of(logged, club);
    if (theirs != ours) return theirs > ours;
    if (ours != Fit::same_usual_name) return false;
    const auto their_distance = off_by(other, club), distance = off_by(logged, club);
    return !distance || !their_distance || *their_distance <= *distance;
}

}  // namespace

Club* club_meant(Golfer& golfer, const LoggedClub& logged, const std::vector<LoggedClub>& all) {
    Club* meant = best_fit(golfer, logged);
    if (meant == nullptr) return nullptr;
    const bool is_taken = std::any_of(all.begin(), all.end(), [&](const LoggedClub& other) {
        return !same_name(other.name, logged.name) && fits_better(other, logged, *meant);
    });
    return is_taken ? nullptr : meant;
}

void check_room(Golfer& golfer, const std::vector<LoggedClub>& all, const std::string& file) {
    const auto added = static_cast<std::size_t>(std::count_if(
        all.begin(), all.end(), [&](const auto& club) { return club_meant(golfer, club, all) == nullptr; }));
    const std::size_t clubs = golfer.clubs.size() + added;
    if (clubs <= most_known_clubs) return;
    throw InputError(file,
                     fmt::format("{} clubs and builds that the profile has not, beside its {}; a profile "
                                 "holds {}: leave some out",
                                 added, golfer.clubs.size(), most_known_clubs));
}

Joined join_bag(Golfer& golfer, Club club, Club* replaced, bool is_build) {
    if (replaced != nullptr) {
        club.in_bag = replaced->in_bag;
        *replaced = std::move(club);
        return Joined::replaced;
    }
    const auto carried =
        std::count_if(golfer.clubs.begin(), golfer.clubs.end(), [](const Club& c) { return c.in_bag; });
    club.in_bag = !is_build && static_cast<std::size_t>(carried) < most_clubs;
    const Joined joined = club.in_bag ? Joined::carried : Joined::on_trial;
    const auto shorter = std::find_if(golfer.clubs.begin(), golfer.clubs.end(), [&](const Club& c) {
        return !c.pattern || (c.kind != ClubKind::driver &&
                              c.pattern->usual.centre.carry_m < club.pattern->usual.centre.carry_m);
    });
    golfer.clubs.insert(shorter, std::move(club));
    return joined;
}

}  // namespace landwidth
