// Where the greens, tees and pins around some holes are, in one plane, to find out which belongs to which
// hole.
//
// The parts of a multi-part feature count one by one: greens merged into one feature by an export are still
// greens of their own.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "courses/assembly/feature_shapes.hpp"
#include "courses/assembly/map_index.hpp"

namespace landwidth {

// One area, line or point of a feature.
struct FeaturePart {
    FeaturePart(const MapFeature& whole, std::size_t which)
        : feature(&whole), part(which), box(DegreeBox::of(whole.shape, which)) {}

    const MapFeature* feature;
    std::size_t part;
    DegreeBox box;
};

// The ground of a part. A teeing area drawn as a line or a point is taken for `around_m` around it.
Region ground_of(const FeaturePart& part, const PlaneDrawing& drawing, double around_m);

struct GreenGround {
    FeaturePart part;
    Region region;
    bool practice;  // tagged or named as a practice green, or on a driving range: of no hole
    std::vector<const MapFeature*> lines;  // the holes whose line, as it was drawn, ends in it
};

struct TeeGround {
    FeaturePart part;
    Region region;
    Point middle;
};

struct PinPlace {
    const MapFeature* feature;
    LonLat lonlat;
    Point place;
    bool tagged_as_hole;  // golf=hole on a point: a cup, if it lies in a green
};

class CourseGround {
  public:
    // Half the breadth of a teeing area that was drawn as a point or a line, metres (an assumption).
    static constexpr double tee_around_m = 3.0;

    CourseGround(const std::vector<const IndexedFeature*>& features, LonLat origin, RepairLog& repairs);

    const PlaneFrame& frame() const { return frame_; }
    const std::vector<GreenGround>& greens() const { return greens_; }
    const std::vector<TeeGround>& tees() const { return tees_; }
    const std::vector<PinPlace>& pins() const { return pins_; }

    struct Near {
        std::size_t index;
        double distance_m;  // 0 inside
    };
    // Of several that contain the point the smallest, else the nearest; absent on a course without any.
    // Practice greens count like others here.
    std::optional<Near> nearest_green(Point place) const;
    std::optional<Near> nearest_tee(Point place) const;

  private:
    void add_greens(const MapFeature& feature, const PlaneDrawing& drawing, const Region& ranges);
    void end_lines(const std::vector<const IndexedFeature*>& features);
    void add_tees(const MapFeature& feature, const PlaneDrawing& drawing, const Region& ranges);

    PlaneFrame frame_;
    std::vector<GreenGround> greens_;
    std::vector<TeeGround> tees_;
    std::vector<PinPlace> pins_;
};

}  // namespace landwidth
