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

// Two names with the same key are spellings of one club: "driver", "Dr" and "1W"; "7-iron", "7i" and "Iron
// 7"; "LW 58" and "58 lob wedge". Stricter than usual_name: whatever the name says besides its kind stays in
// the key, so that "LW" and "60 deg", "58" and "60 deg", "gap wedge" and "AW", "driver" and "Driver 10.5"
// are clubs of their own. A name whose kind is not known, or with signs other than letters and digits, is
// like none but itself, as same_name compares.
std::string club_key(std::optional<ClubKind> kind, std::string_view name);
inline std::string club_key(std::string_view name) {
    return club_key(kind_by_name(name), name);
}

// Two builds of one club with the same key are spellings of one build: case, spaces, and how inches are
// written do not matter ("44 in", "44.0in", "44\""). The name of the club in front of it is left out
// ("driver, 44 in"); empty when nothing else is there.
std::string build_key(std::string_view club, std::string_view build);

}  // namespace landwidth
