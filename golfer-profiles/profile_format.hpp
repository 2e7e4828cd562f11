// What the reader and the writer of the profile format must agree on. Not for use outside of this room.
#pragma once

#include <nlohmann/json_fwd.hpp>
#include <numbers>
#include <string_view>
#include <vector>

#include "golfer-profiles/json_fields.hpp"
#include "golfer-profiles/profile.hpp"

namespace landwidth {

inline constexpr std::string_view profile_format = "landwidth-profile/1";

// By definition.
inline constexpr double radians_per_second_per_rpm = 2.0 * std::numbers::pi / 60.0;

// The golfer in a parsed file; what is wrong goes to `notes`, and the golfer is good only when that has no
// errors.
Golfer golfer_of_json(const nlohmann::json& root, FieldNotes& notes);

// Sentences about values that are legal but hard to believe.
std::vector<std::string> doubts(const Golfer& golfer);

}  // namespace landwidth
