// What GDAL's OSM driver dropped without saying so.
#pragma once

#include <string>
#include <vector>

#include "courses/finding.hpp"
#include "courses/reading/osm_xml.hpp"
#include "courses/tags/map_feature.hpp"

namespace landwidth {

// Compares the features read with the document they came from: ways and relations with tags of the
// vocabulary that did not arrive, or arrived with points missing. Hole lines of fewer than two points are
// added as features, so that their hole can be reported as one that cannot be planned.
void report_losses(const OsmDocument& document, const std::string& file, std::vector<MapFeature>& features,
                   std::vector<Finding>& findings);

// The same as far as it can be told from the driver's debug messages, for .osm.pbf.
void report_losses(const std::vector<std::string>& remarks, const std::vector<MapFeature>& features,
                   std::vector<Finding>& findings);

}  // namespace landwidth
