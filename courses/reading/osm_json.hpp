// OpenStreetMap data as JSON, {"elements": [...]}, the way query services of the open map answer, into
// records.
//
// Elements with tags and ids as anywhere; positions of ways and members either by their nodes or in full
// ("geometry", where a null is a point outside the box asked for), or only a middle ("center") or box
// ("bounds"). Read element by element: the document as a whole is never held.
#pragma once

#include <string>
#include <string_view>

#include "courses/reading/osm_elements.hpp"
#include "courses/reading/unpacking.hpp"

namespace landwidth {

// Whether a text starts as such a document: "elements" comes before "features" among its outermost keys.
bool is_osm_json(std::string_view head);

// `file` is named in errors. Throws InputError: JSON that breaks off (with the byte), elements without id or
// with a position that is none.
OsmElements read_osm_json(UnpackedFile& source, const std::string& file);

}  // namespace landwidth
