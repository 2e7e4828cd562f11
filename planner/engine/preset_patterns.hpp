// Whether an answer rests on typical numbers instead of the golfer's own shots.
#pragma once

#include <optional>
#include <string>

#include "golfer-profiles/profile.hpp"

namespace landwidth {

// One sentence for the warnings; absent when recorded shots stand behind every pattern.
std::optional<std::string> preset_patterns_warning(const Golfer& golfer);

}  // namespace landwidth
