// Where a ball crossed the edge of a penalty area: the reference for relief (Rules of Golf 17.1d).
#pragma once

#include <optional>

#include "geometry/region.hpp"

namespace landwidth {

// The point where the straight path from `from` to `to` last crossed into the region, for a ball that comes
// to rest in it at `to`. Absent when `to` is outside the region. When the whole path is inside: `from`.
//
// Example: region x in [10,20] and x in [30,40]; a path along x from 0 to 35 crossed the edge at 10, 20 and
// 30: the answer is 30.
std::optional<Point> last_crossing(const Region& region, Point from, Point to);

}  // namespace landwidth
