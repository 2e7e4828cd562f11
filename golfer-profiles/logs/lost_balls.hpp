// Words that say a ball was not found, or not played to the end.
#pragma once

#include <string_view>

namespace landwidth {

// One of them anywhere in a note: "lost", "lost ball", "not found", "unfinished", "OB", "out of bounds". Only
// worth asking of a shot without a place: "nearly lost" says so too.
bool says_lost(std::string_view note);

// Nothing but one of them, as people write it into the cell of a number.
bool says_only_lost(std::string_view cell);

}  // namespace landwidth
