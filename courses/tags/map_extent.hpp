// The box of a map: ground beyond it is unknown.
#pragma once

#include <optional>

#include "courses/tags/map_feature.hpp"

namespace landwidth {

// Degrees, WGS 84, `west` <= `east`: a box across the 180th meridian reaches beyond 180.
struct MapExtent {
    double west = 0.0;
    double south = 0.0;
    double east = 0.0;
    double north = 0.0;
    // True: the file says so (`<bounds>` of OpenStreetMap XML, the head of a .pbf, `bounds` of JSON); false:
    // it is the box around what was read, and more may be mapped just beyond.
    bool stated = false;

    bool contains(LonLat place) const {
        return west <= place.lon_deg && place.lon_deg <= east && south <= place.lat_deg &&
               place.lat_deg <= north;
    }
    void add(LonLat place) {
        west = place.lon_deg < west ? place.lon_deg : west;
        east = place.lon_deg > east ? place.lon_deg : east;
        south = place.lat_deg < south ? place.lat_deg : south;
        north = place.lat_deg > north ? place.lat_deg : north;
    }
    LonLat middle() const { return {0.5 * (west + east), 0.5 * (south + north)}; }
    static MapExtent around(LonLat place) {
        return {place.lon_deg, place.lat_deg, place.lon_deg, place.lat_deg, false};
    }
};

// Makes the box reach over a path, or a shape; it begins with the first place added.
void reach_over(const LonLatPath& path, std::optional<MapExtent>& extent);
void reach_over(const MapShape& shape, std::optional<MapExtent>& extent);

}  // namespace landwidth
