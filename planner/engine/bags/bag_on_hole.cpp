#include "planner/engine/bags/bag_on_hole.hpp"

#include <algorithm>

namespace landwidth {

namespace {

// Clubs this much dearer than the best do not become the best by a change of the bag.
constexpr double out_of_contention = 0.25;
// Coarse aims looked at again beside a known one, and beyond the outermost known ones.
constexpr int steps_near = 3;
constexpr int steps_outside = 6;
// Of the strokes on a hole, where its field is solved once more. 0.0016 was measured.
constexpr double equally_good = 0.002;

double total(const AimSearch& search, std::size_t i) {
    return search.clubs[i].outcome.total(search.replay_cost);
}

std::size_t best_of(const AimSearch& search, std::optional<std::size_t> usual = std::nullopt) {
    std::size_t best = 0;
    for (std::size_t i = 1; i < search.clubs.size(); ++i)
        if (total(search, i) < total(search, best)) best = i;
    for (std::size_t i = 0; i < search.clubs.size(); ++i)
        if (search.clubs[i].club == usual && total(search, i) <= total(search, best) + equally_good) return i;
    return best;
}

}  // namespace

BagOnHole bag_on_hole(HoleStudy& study, const HoleStudy::Options& options, std::optional<std::size_t> usual) {
    const AimSearch& search = options.search;
    const std::size_t best = best_of(search, usual);
    const ClubShots& shots = *options.contenders[best].shots;
    const AimedClub& aimed = search.clubs[best];
    TeeFan& fan = study.fan();
    const Tally tally = fan.tally(shots.fine, aimed.ray);
    BagOnHole result{.club = aimed.club,
                     .aim = fan.bearing_of(aimed.ray),
                     .strokes = aimed.outcome.solved(),
                     .lies = tally.lies,
                     .leave_mean_m = tally.leave_mean_m,
                     .drawn = {},
                     .shots = &shots};
    const auto strokes_of = [&](const FanShots& drawn) {
        return drawn_outcome(fan, drawn, aimed.ray, study.coarse_rays(), search.replay_cost).solved();
    };
    // Few shots stand for a drawn pattern, and as few for the pattern itself in this comparison.
    const double own = strokes_of(shots.undrawn);
    DrawnPart from_tee{aimed.club, {}};
    for (const FanShots& drawn : shots.draws)
        from_tee.strokes.push_back(strokes_of(drawn) - own);
    result.drawn.push_back(std::move(from_tee));
    return result;
}

void add_ground_shots(const HoleStudy& study, std::span<const PlayedShots> played,
                      std::span<const GroundShots> clubs, BagOnHole& hole) {
    for (const GroundShots& club : clubs)
        hole.drawn.push_back({club.club(), club.on_hole(study, played)});
}

std::size_t best_club(const HoleStudy::Options& options, std::optional<std::size_t> usual) {
    return options.search.clubs[best_of(options.search, usual)].club;
}

HoleStudy::Options options_kept(HoleStudy::Options options, const Golfer& golfer) {
    const auto gone = [&](std::size_t club) { return !is_playable(golfer.clubs[club]); };
    std::erase_if(options.contenders,
                  [&](const Contender& contender) { return gone(contender.shots->club); });
    std::erase_if(options.search.clubs, [&](const AimedClub& aimed) { return gone(aimed.club); });
    return options;
}

void add_options(HoleStudy::Options& options, const HoleStudy::Options& further) {
    options.contenders.insert(options.contenders.end(), further.contenders.begin(), further.contenders.end());
    AimSearch& search = options.search;
    search.clubs.insert(search.clubs.end(), further.search.clubs.begin(), further.search.clubs.end());
    // Playing again counts the stroke and the penalty.
    search.replay_cost = 2.0 + tee_cost(search.clubs, std::nullopt);
}

std::vector<double> drawn_strokes(const BagOnHole& hole) {
    std::vector<double> sum(hole.drawn.front().strokes.size(), hole.strokes);
    for (const DrawnPart& part : hole.drawn)
        for (std::size_t draw = 0; draw < sum.size(); ++draw)
            sum[draw] += part.strokes[draw];
    return sum;
}

std::vector<HoleStudy::Asked> clubs_to_try(const HoleStudy::Options& before,
                                           const std::vector<std::size_t>& in, int coarse_rays) {
    const AimSearch& search = before.search;
    const auto [least, most] = std::ranges::minmax_element(search.clubs, {}, &AimedClub::ray);
    std::vector<HoleStudy::Asked> clubs;
    for (const std::size_t club : in)
        clubs.push_back(
            {club, {least->ray - steps_outside * coarse_rays, most->ray + steps_outside * coarse_rays}});
    const double limit = total(search, best_of(search)) + out_of_contention;
    for (std::size_t i = 0; i < search.clubs.size(); ++i) {
        const int ray = search.clubs[i].ray;
        if (total(search, i) <= limit)
            clubs.push_back(
                {search.clubs[i].club, {ray - steps_near * coarse_rays, ray + steps_near * coarse_rays}});
    }
    return clubs;
}

}  // namespace landwidth
