// What the name of a club says about it, as golfers write them: "7i", "3-wood", "pw", "56 deg".
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "golfer-profiles/profile.hpp"

namespace landwidth {

// Nothing when the name does not tell ("my favourite", "utility", which may be a hybrid or an iron).
std::optional<ClubKind> kind_by_name(std::string_view name);

// The name the presets use for the same club: "7-iron" for "7i" and "Iron 7", "gap wedge" for "GW" and for
// "52 deg". Nothing when the name does not tell which of its kind it is.
std::optional<std::string> usual_name(ClubKind kind, std::string_view name);

}  // namespace landwidth
