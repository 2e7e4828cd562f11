// The same OpenStreetMap data in its other formats, for tests.
#pragma once

#include <filesystem>
#include <string>

#include "courses/reading/osm_elements.hpp"

namespace landwidth::test {

// Runs the package osmium-tool with these arguments. Throws std::runtime_error when it is missing or fails.
void run_osmium(const std::string& arguments);

// As query services of the open map write JSON.
enum class JsonStyle {
    nodes,      // ways name their nodes, which are elements of their own
    positions,  // ways and members with all their positions; nodes with tags only
};
std::string osm_json(const OsmElements& elements, JsonStyle style);

}  // namespace landwidth::test
