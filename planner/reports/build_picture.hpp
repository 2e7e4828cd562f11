// A club drawn on its side, to scale along its length: the parts, where each balances, the fulcrum of the
// swing-weight scale and the point on which the whole club balances.
#pragma once

#include <string>
#include <string_view>

#include "golfer-profiles/club_build.hpp"

namespace landwidth {

// The club as it is and, where it is changed, below it as it becomes; HTML.
std::string build_picture(const BuildChange& change);

std::string_view build_picture_style();

}  // namespace landwidth
