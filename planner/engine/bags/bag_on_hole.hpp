// What a bag makes of a hole: the club it plays from the tee, what that comes to, and what it may come to
// given how few shots stand behind the patterns.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "planner/engine/bags/ground_shots.hpp"

namespace landwidth {

// What is open about the strokes on a hole because of one club's pattern: by draw, how many more than
// expected.
struct DrawnPart {
    std::size_t club;
    std::vector<double> strokes;
};

struct BagOnHole {
    std::size_t club;                    // number in the profile
    double aim;                          // plane bearing
    double strokes;                      // expected, to hole out
    std::array<double, lie_count> lies;  // where its balls finish; add to 1
    double leave_mean_m;                 // distance left, balls in play
    // First that of the tee club, each draw at the best aim for it: a golfer sees where the ball goes and
    // aims accordingly, but carries what the evidence of today says. Then those of clubs that a change brings
    // in or takes out, from the ground.
    std::vector<DrawnPart> drawn;
    const ClubShots* shots = nullptr;  // of the tee club
};

// The options are the study's. Of what is open, the part of the tee club. Of clubs that are equally good from
// the tee within what the search resolves, `usual` is taken: with the same clubs the same one is played, and
// no noise of the search makes a change of it.
BagOnHole bag_on_hole(HoleStudy& study, const HoleStudy::Options& options,
                      std::optional<std::size_t> usual = std::nullopt);

// Adds what is open because of these clubs' shots from the ground; `played` after the bag's tee shot.
void add_ground_shots(const HoleStudy& study, std::span<const PlayedShots> played,
                      std::span<const GroundShots> clubs, BagOnHole& hole);

// The club that is best from the tee, `usual` as above.
std::size_t best_club(const HoleStudy::Options& options, std::optional<std::size_t> usual);

// The options of the clubs that are still in the bag.
HoleStudy::Options options_kept(HoleStudy::Options options, const Golfer& golfer);
// Adds the options of further clubs in the same field. `options` may be empty.
void add_options(HoleStudy::Options& options, const HoleStudy::Options& further);

// By draw, all parts together.
std::vector<double> drawn_strokes(const BagOnHole& hole);

// What can matter after a change: the clubs that were in contention before, near their aims of then, and
// those that came in, within the aims that any club had then and a little outside of them. `before`: of all
// clubs.
std::vector<HoleStudy::Asked> clubs_to_try(const HoleStudy::Options& before,
                                           const std::vector<std::size_t>& in, int coarse_rays);

}  // namespace landwidth
