// The profile format, "landwidth-profile/1": JSON with yards, miles per hour, degrees and inches in its
// names. Beside the keys of the format, "note" (a text) may stand at the top and in each club.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "golfer-profiles/profile.hpp"

namespace landwidth {

struct ProfileReading {
    Golfer golfer;
    // One sentence each, without the file's name: unknown keys with the nearest known one, values that are
    // legal but hard to believe (a 3-wood that carries past the driver, a side spread of 60 yd).
    std::vector<std::string> warnings;
};

// Throws InputError naming the file and the field (`me.json: clubs[2] "3-wood": pattern.carry_sd_yd is ...`)
// with what was expected: not readable, not JSON or cut off (with line and column), a number too large, wrong
// format string, wrong type, missing key, a key that stands twice, value out of range (negative sd,
// correlation outside
// (-1, 1), tail_dof <= 2, share outside [0, 1)), two clubs of one name, more than 14 clubs in the bag (Rules
// of Golf 4.1b) or most_known_clubs in all, a club other than the putter without a pattern, no club in the
// bag with one, more than most_learnt_shots. When several things are wrong it tells the first and how many
// more there are.
//
// Keys that may be absent, and what that means: length_in, loft_deg (unknown), launch, mishit (none), note
// (empty), tail_dof (a normal), correlation (0), run_yd (run_share_of_carry of the kind),
// in_bag (true; false: a club on trial), build_of (a club of its own, or by the name: profile.hpp's
// family_of), learnt_from (the shots are not at hand; an object of "prior", a pattern, "shots_yd", each
// [carry, side] or [carry, side, session, when], and "lost", a number of lost balls), handicap_known (true),
// sessions (none; objects of "label" and "weight"), a pattern's ways (one usual shot; two objects of share,
// carry_sds, side_sds, carry_spread, side_spread and correlation). Names are trimmed.
ProfileReading read_profile(const std::filesystem::path& path);
ProfileReading parse_profile(const std::string& text, const std::string& file_name);

// Everything that can be said about a profile at once.
struct ProfileCheck {
    std::optional<Golfer> golfer;       // absent exactly when there are errors
    std::vector<std::string> errors;    // one sentence each, without the file's name
    std::vector<std::string> warnings;  // as in ProfileReading
};

// Throws InputError only for a file that cannot be read or is not JSON.
ProfileCheck check_profile(const std::filesystem::path& path);
ProfileCheck check_profile_text(const std::string& text, const std::string& file_name);

// The same format, laid out for a person to edit. Reading it back gives the same golfer: lengths, angles and
// speeds whose value in the format's units has at most 10 significant digits come back bit for bit, others to
// a relative 5e-10. Throws std::logic_error for a golfer the format cannot hold (a value out of range or not
// finite, a mishit with a correlation).
std::string profile_text(const Golfer& golfer);

}  // namespace landwidth
