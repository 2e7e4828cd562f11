#include "golfer-profiles/evidence/bag_draws.hpp"

#include <algorithm>
#include <cmath>

#include "golfer-profiles/evidence/golfer_sampler.hpp"
#include "golfer-profiles/evidence/pattern_middle.hpp"
#include "golfer-profiles/evidence/shared_effects.hpp"
#include "golfer-profiles/evidence/usual_ways.hpp"

namespace landwidth {

namespace {

constexpr std::uint64_t stream = 0x676f6c66ULL;

BagDraws patterns_in(const GolferModel& model, const std::vector<GolferState>& states, const Golfer& golfer) {
    BagDraws draws(golfer.clubs.size());
    for (std::size_t build = 0; build < model.builds.size(); ++build) {
        const std::size_t club = model.builds[build].club;
        for (const GolferState& state : states)
            draws[club].push_back(pattern_in(model, state, build, *golfer.clubs[club].pattern));
    }
    return draws;
}

// How often each of two ways is gone is as open as so many shots leave it; with it the middle of the usual
// shot, since the ways stay where they are.
void draw_shares(const ShotPattern& own, std::vector<ShotPattern>& draws) {
    CounterBits bits(mixed(stream + 1));
    const double second = (*own.ways)[1].share;
    const double shots = std::max(own.shots, static_cast<int>(fewest_for_shape));
    for (ShotPattern& draw : draws) {
        const double first_part = gamma_variate((1.0 - second) * shots + 0.5, bits);
        const double second_part = gamma_variate(second * shots + 0.5, bits);
        go_ways(draw, std::clamp(second_part / (first_part + second_part), 0.01, 0.99));
    }
}

}  // namespace

BagDraws posterior_draws(const Golfer& golfer, const GolferPrior& prior, int count) {
    const GolferModel model = golfer_model(golfer, prior, usual_length_ratio(golfer));
    CounterBits bits(mixed(stream));
    std::vector<GolferState> states;
    if (model.has_evidence()) {
        states = drawn_after_shots(model, bits, count);
    } else {
        for (int draw = 0; draw < count; ++draw)
            states.push_back(drawn_before_shots(model, true, bits));
    }
    BagDraws draws = patterns_in(model, states, golfer);
    for (std::size_t club = 0; club < draws.size(); ++club)
        if (!draws[club].empty() && golfer.clubs[club].pattern->ways)
            draw_shares(*golfer.clubs[club].pattern, draws[club]);
    return draws;
}

BagDraws drawn_bags(const Golfer& golfer, const GolferPrior& prior, int count) {
    if (count <= 0) return BagDraws(golfer.clubs.size());
    BagDraws draws = posterior_draws(golfer, prior, std::max(count, draws_of_middle));
    for (std::size_t club = 0; club < draws.size(); ++club) {
        if (draws[club].empty()) continue;
        const ShotPattern middle = middle_of(std::span(draws[club]).first(draws_of_middle));
        draws[club].resize(static_cast<std::size_t>(count));
        move_about(middle, *golfer.clubs[club].pattern, draws[club]);
    }
    return draws;
}

double shots_known_otherwise(const Golfer& golfer, std::size_t club, const GolferPrior& prior) {
    const bool has_other_builds = std::ranges::any_of(golfer.clubs, [&](const Club& other) {
        return &other != &golfer.clubs[club] && other.pattern && other.pattern->shots > 0 &&
               same_name(family_of(other), family_of(golfer.clubs[club]));
    });
    const LevelSds& sds = prior.log_spread;
    const double variance = sds.build * sds.build + (has_other_builds ? 0.0 : sds.club * sds.club);
    // A shot tells the logarithm of a spread with variance 1/2.
    return 0.5 / variance;
}

}  // namespace landwidth
