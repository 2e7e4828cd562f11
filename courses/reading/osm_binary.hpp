// OpenStreetMap's binary formats, .pbf and .o5m, into records, by libosmium.
//
// A file may hold a whole region: it is read several times over, and only elements with a tag of the
// vocabulary are kept, with what they are made of. From `region_bytes` on also only those near golf: first
// where golf is, then what lies within some 5 km of it, so that memory is bounded by the golf on the map and
// not by the map.
#pragma once

#include <cstdint>
#include <string>

#include "courses/reading/osm_elements.hpp"

namespace landwidth {

struct BinarySource {
    std::string path;    // of the file, or empty:
    std::string bytes;   // its content, unpacked
    std::string format;  // "pbf" or "o5m"

    std::uintmax_t size() const;
};

inline constexpr std::uintmax_t region_bytes = 10'000'000;

// `file` is named in errors. Throws InputError: damaged, a node off the earth. `region`: only near golf.
OsmElements read_osm_binary(const BinarySource& source, const std::string& file, bool region);

}  // namespace landwidth
