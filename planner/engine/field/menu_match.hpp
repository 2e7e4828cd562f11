// Which shots of two menus are the same: menus of one golfer with different clubs in the bag.
#pragma once

#include <array>
#include <vector>

#include "planner/engine/field/field_layer.hpp"
#include "planner/engine/field/shot_menu.hpp"

namespace landwidth {

class MenuMatch {
  public:
    // Clubs are told by their number in the profile, which both menus share.
    MenuMatch(const ShotMenu& known, const ShotMenu& now);

    // The known shot in the menu of now; option -1 when it is gone, or was none.
    Action now(Stance stance, Action known) const;
    bool is_new(Stance stance, const ShotOption& option) const;

  private:
    const ShotMenu& now_;
    std::array<std::vector<std::int16_t>, stance_count> now_of_known_;
    std::array<std::vector<bool>, stance_count> is_new_;
};

}  // namespace landwidth
