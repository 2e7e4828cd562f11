// What the open pattern of a club means for the shots it plays from the ground, the tee shot aside.
//
// Full swings from fairway, rough and sand; part swings and punches are taken as they stand. To first order:
// the choices of the field are held, each shot is valued with the drawn pattern instead of the club's own,
// aimed so that the mean direction stays.
#pragma once

#include <array>
#include <optional>
#include <span>
#include <vector>

#include "planner/engine/bags/played_shots.hpp"

namespace landwidth {

class GroundShots {
  public:
    // Of the club numbered so in the profile, for these draws of its pattern. Keeps a reference to `game`.
    GroundShots(const Golfer& golfer, std::size_t club, std::span<const ShotPattern> draws,
                const GolferGame& game);

    std::size_t club() const { return club_; }
    // Whether the club is hit from the ground at all; a driver is not.
    bool any() const;
    // By draw: how many strokes more the hole takes than with the pattern as it stands. `played` on that
    // study's hole.
    std::vector<double> on_hole(const HoleStudy& study, std::span<const PlayedShots> played) const;

  private:
    struct FromStance {
        std::optional<ShotOption> own;
        std::vector<ShotOption> drawn;
    };
    std::size_t club_;
    std::size_t draws_;
    const GolferGame& game_;
    std::array<FromStance, stance_count> options_;
};

}  // namespace landwidth
