#include "golfer-profiles/bag_joining.hpp"

#include <algorithm>
#include <utility>

#include "golfer-profiles/club_names.hpp"

namespace landwidth {

Club* club_meant(Golfer& golfer, const LoggedClub& logged) {
    const auto same = std::find_if(golfer.clubs.begin(), golfer.clubs.end(),
                                   [&](const Club& c) { return same_name(c.name, logged.name); });
    if (same != golfer.clubs.end()) return &*same;
    const auto usual = usual_name(logged.kind, logged.club);
    if (!usual || !logged.build.empty()) return nullptr;
    Club* meant = nullptr;
    for (Club& club : golfer.clubs) {
        // A build ("driver, 44.5 in") is not its club.
        const bool is_build = club.name.find(", ") != std::string::npos;
        if (is_build || club.kind != logged.kind || usual_name(club.kind, club.name) != usual) continue;
        if (meant != nullptr) return nullptr;
        meant = &club;
    }
    return meant;
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
