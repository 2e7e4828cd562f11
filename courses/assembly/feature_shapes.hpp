// Features of a map as ground in the plane of a hole.
#pragma once

#include <set>
#include <string>
#include <vector>

#include "courses/assembly/map_index.hpp"
#include "courses/finding.hpp"
#include "courses/tags/map_feature.hpp"
#include "geometry/region.hpp"

namespace landwidth {

// Repairs are reported once a feature, however many holes it belongs to.
class RepairLog {
  public:
    void add(const MapFeature& feature, const std::string& repair, LonLat place);
    void add_lost(const MapFeature& feature, LonLat place);
    const std::vector<Finding>& findings() const { return findings_; }

  private:
    bool is_new(const MapFeature& feature) {
        return reported_.insert(feature.layer + "\n" + feature.id).second;
    }

    std::set<std::string> reported_;
    std::vector<Finding> findings_;
};

struct AreaNear {
    Region region;
    double whole_m2;  // the area of all of it; of a long outline within 1 %
};

// Draws features into one plane.
class PlaneDrawing {
  public:
    PlaneDrawing(const PlaneFrame& frame, RepairLog& repairs) : frame_(frame), repairs_(repairs) {}

    const PlaneFrame& frame() const { return frame_; }
    std::vector<Point> path(const LonLatPath& path) const;
    Region area(const MapFeature& feature, const LonLatPolygon& polygon) const;
    // The same ground within `here`, for less work: of a long outline only what the box needs is drawn, see
    // outline_near. Beyond the box the region means nothing.
    AreaNear area_near(const MapFeature& feature, const LonLatPolygon& polygon, const DegreeBox& here) const;
    // All areas of the feature; empty when it has none.
    Region area(const MapFeature& feature) const;
    // Its lines; the outer rings of its areas, closed.
    std::vector<std::vector<Point>> paths(const MapFeature& feature) const;

  private:
    Region::Repaired drawn(const LonLatPolygon& polygon) const;

    const PlaneFrame& frame_;
    RepairLog& repairs_;
};

// The stretches of a path that come near a box: every segment whose own box meets it, neighbours joined.
// Points drawn twice in a row are dropped.
std::vector<std::vector<Point>> stretches_near(const std::vector<Point>& path, const Box& box);

// A point of the region to stand for it: its centroid where that is inside, else the middle of the widest cut
// through it. The region must not be empty.
Point middle_of(const Region& region);

}  // namespace landwidth
