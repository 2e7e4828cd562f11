// The features of a map with their roles and boxes, for finding what lies near a hole.
#pragma once

#include <array>
#include <vector>

#include "courses/reading/map_source.hpp"
#include "courses/tags/map_feature.hpp"
#include "courses/tags/vocabulary.hpp"

namespace landwidth {

// A box of degrees that may lie across the 180th meridian: steps from its anchor.
class DegreeBox {
  public:
    static DegreeBox around(LonLat anchor) { return DegreeBox(anchor); }
    static DegreeBox of(const MapShape& shape);
    // Of one area, line or point of a shape.
    static DegreeBox of(const MapShape& shape, std::size_t part);
    // As far as `margin_m` in every direction; near the poles all longitudes.
    DegreeBox grown(double margin_m) const;
    void add(LonLat place);
    void add(const LonLatPath& path) {
        for (const LonLat& place : path)
            add(place);
    }
    bool meets(const DegreeBox& other) const;
    // Which sides of the box a place lies beyond, as bits; 0 within it. Two places beyond the same side have
    // that bit in common.
    unsigned sides_beyond(LonLat place) const;

  private:
    explicit DegreeBox(LonLat anchor) : anchor_(anchor), south_(anchor.lat_deg), north_(anchor.lat_deg) {}

    LonLat anchor_;
    double west_ = 0.0;  // degrees from the anchor
    double east_ = 0.0;
    double south_;
    double north_;
};

struct IndexedFeature {
    const MapFeature* feature;
    DegreeBox box;
};

class MapIndex {
  public:
    // The map must outlive the index.
    explicit MapIndex(const MapData& map);

    const std::vector<IndexedFeature>& features() const { return features_; }
    std::vector<const IndexedFeature*> near(const DegreeBox& box) const;
    std::vector<const IndexedFeature*> with_role(Role role) const;

  private:
    std::vector<IndexedFeature> features_;
};

}  // namespace landwidth
