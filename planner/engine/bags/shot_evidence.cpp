#include "planner/engine/bags/shot_evidence.hpp"

#include <algorithm>

namespace landwidth {

ShotEvidence shot_evidence(const Golfer& golfer, const std::vector<ComparedClub>& compared,
                           const BagDraws& draws) {
    const auto is_compared = [&](const Club& club) {
        return std::ranges::any_of(compared, [&](const ComparedClub& other) {
            return same_name(family_of(club), family_of(golfer.clubs.at(other.club)));
        });
    };
    ShotEvidence evidence;
    for (std::size_t number = 0; number < golfer.clubs.size(); ++number) {
        const Club& club = golfer.clubs[number];
        if (!club.pattern || !club.learnt_from || club.learnt_from->shots.empty() || !is_compared(club))
            continue;
        evidence.emplace(number, club_evidence(*club.pattern, club.learnt_from->shots, draws.at(number)));
    }
    return evidence;
}

}  // namespace landwidth
