// An interval of strokes saved as a small bar, for a column of a table.
#pragma once

#include <string>

#include "planner/engine/bags/weighing.hpp"

namespace landwidth {

// One scale for the bars of a column, so that they compare; nothing saved is always on it.
class GainScale {
  public:
    explicit GainScale(const std::vector<WeighedChange>& changes);

    // An inline SVG: a bar from low to high, a dot at the expected gain and an upright line at 0, costs to
    // the left of it. It only repeats numbers: a screen reader passes it over.
    std::string bar(const WeighedChange& change) const;

  private:
    double place_px(double strokes) const;

    double least_ = 0.0, most_ = 0.0;  // strokes at the ends
};

// CSS of the bars.
std::string_view gain_bar_style();

}  // namespace landwidth
