#include "courses/assembly/out_of_bounds.hpp"

#include <algorithm>
#include <cmath>

#include "courses/tags/vocabulary.hpp"

namespace landwidth {

namespace {

// Half the breadth of the strip that stands for the line of play when looking for ground that cannot be out.
constexpr double play_strip_m = 0.5;
// A boundary is drawn so exactly, metres (an assumption).
constexpr double boundary_slip_m = 5.0;
// What begins that near to it but reaches further belongs to the ground next door.
constexpr double furthest_beyond_m = 15.0;
// Less ground beyond it is rounding, square metres.
constexpr double least_beyond_m2 = 0.5;

bool crosses(const std::vector<Point>& path, const LineOfPlay& line) {
    const std::vector<Point>& play = line.vertices();
    for (std::size_t i = 1; i < path.size(); ++i) {
        for (std::size_t k = 1; k < play.size(); ++k) {
            if (segments_cross(path[i - 1], path[i], play[k - 1], play[k])) return true;
        }
    }
    return false;
}

// The side of the path that the line of play is not on.
Side far_side(const std::vector<Point>& path, const LineOfPlay& line) {
    double leftness = 0.0;
    for (std::size_t i = 1; i < path.size(); ++i) {
        const Point step = path[i] - path[i - 1];
        const Point middle = path[i - 1] + 0.5 * step;
        const Point play = line.point_at(line.place_of(middle).station_m);
        const double away = distance(middle, play);
        const double side = cross(unit(step), play - middle);
        leftness += length(step) * side / (1.0 + away * away * away);
    }
    return leftness > 0.0 ? Side::right : Side::left;
}

class BoundsOfHole {
  public:
    BoundsOfHole(const PlaneDrawing& drawing, const LineOfPlay& line, const Box& extent, double depth_m,
                 HoleDraft& draft, FeatureNotes& notes)
        : drawing_(drawing), line_(line), extent_(extent), depth_m_(depth_m), draft_(draft), notes_(notes) {}

    OutOfBounds find(const OutOfBoundsSources& sources) {
        apply_boundary(sources.boundaries, sources.drawn);
        for (const MapFeature* mark : sources.marks) {
            if (std::holds_alternative<std::vector<LonLatPolygon>>(mark->shape)) {
                apply_area(*mark, sources.drawn);
            } else {
                apply_line(*mark);
            }
        }
        return std::move(result_);
    }

  private:
    bool holds_hole(const Region& region) const {
        return region.contains(line_.tee()) && region.contains(line_.pin());
    }

    // The boundary with the golf ground that lies across it.
    Region with_golf_ground(Region region, const std::vector<const MapFeature*>& boundaries,
                            const std::vector<DrawnGround>& drawn) {
        std::vector<Region> parts{region};
        const Region reach = region.grown(boundary_slip_m);
        const Region furthest = region.grown(furthest_beyond_m);
        for (const DrawnGround& ground : drawn) {
            const bool is_played = ground.evidence == Evidence::golf_area && ground.lie != Lie::rough &&
                                   !is_penalty_area(ground.lie);
            if (!is_played || !ground.region.meets(reach)) continue;
            const Region beyond = ground.region.without(region);
            if (beyond.area() < least_beyond_m2) continue;
            // A course beside this one, drawn across the boundary, stays outside.
            if (!ground.region.meets(region) && !ground.region.without(furthest).empty()) continue;
            notes_.add_pair<"boundary-inside">(*ground.feature, *boundaries.front(),
                                               drawing_.frame().to_lonlat(middle_of(beyond)),
                                               boundaries.front()->label());
            parts.push_back(ground.region);
        }
        return parts.size() == 1 ? region : Region::united(parts);
    }

    void apply_boundary(const std::vector<const MapFeature*>& boundaries,
                        const std::vector<DrawnGround>& drawn) {
        if (boundaries.empty()) return;
        std::vector<Region> parts;
        parts.reserve(boundaries.size());
        for (const MapFeature* boundary : boundaries)
            parts.push_back(drawing_.area(*boundary));
        Region region = with_golf_ground(Region::united(parts), boundaries, drawn);
        if (holds_hole(region)) {
            result_.in_bounds = std::move(region);
            return;
        }
        const bool tee_out = !region.contains(line_.tee());
        draft_.report<"boundary-unused">(drawing_.frame().to_lonlat(tee_out ? line_.tee() : line_.pin()),
                                         tee_out ? "tee" : "green");
    }

    void apply_area(const MapFeature& mark, const std::vector<DrawnGround>& drawn) {
        const Region region = drawing_.area(mark);
        if (region.empty()) return;
        if (!holds_hole(region)) {
            if (region.contains(line_.tee()) || region.contains(line_.pin())) {
                return draft_.report<"out-of-bounds-unclear/one-end">(
                    place_of(mark.shape), mark.label(), region.contains(line_.tee()) ? "tee" : "green");
            }
            tell_ground_in(region, mark, drawn);
            result_.out.push_back(region);
            return;
        }
        result_.in_bounds = result_.in_bounds ? result_.in_bounds->common_with(region) : region;
    }

    // Golf ground that is out of bounds by the area; rough next to it is drawn so without a thought.
    void tell_ground_in(const Region& out, const MapFeature& mark, const std::vector<DrawnGround>& drawn) {
        for (const auto& [ground, common] : golf_ground_in(out, drawn, line_)) {
            if (ground->lie == Lie::rough) continue;
            notes_.add_pair<"out-of-bounds-over">(*ground->feature, mark,
                                                  drawing_.frame().to_lonlat(middle_of(common)), mark.label(),
                                                  std::lround(common.area()));
        }
    }

    void apply_line(const MapFeature& mark) {
        if (std::holds_alternative<LonLat>(mark.shape)) {
            return draft_.report<"out-of-bounds-unclear/point">(place_of(mark.shape), mark.label());
        }
        for (const std::vector<Point>& path : drawing_.paths(mark)) {
            for (const std::vector<Point>& stretch : stretches_near(path, extent_)) {
                if (crosses(stretch, line_)) {
                    return draft_.report<"out-of-bounds-unclear/crossing">(place_of(mark.shape),
                                                                           mark.label());
                }
                add_beyond(stretch, mark);
            }
        }
    }

    // The strip beyond a line. Where a bend would lay it across the line of play, the segments that do so are
    // left out.
    void add_beyond(const std::vector<Point>& stretch, const MapFeature& mark) {
        const Side side = far_side(stretch, line_);
        const Region play = Region::around(line_.vertices(), play_strip_m);
        Region beyond = Region::beside(stretch, depth_m_, side);
        if (!beyond.meets(play)) {
            result_.out.push_back(std::move(beyond));
            return;
        }
        for (std::size_t i = 1; i < stretch.size(); ++i) {
            if (stretch[i - 1] == stretch[i]) continue;
            Region part = Region::beside({stretch[i - 1], stretch[i]}, depth_m_, side);
            if (!part.meets(play)) result_.out.push_back(std::move(part));
        }
        draft_.report<"out-of-bounds-unclear/bend">(place_of(mark.shape), mark.label());
    }

    const PlaneDrawing& drawing_;
    const LineOfPlay& line_;
    const Box& extent_;
    double depth_m_;
    HoleDraft& draft_;
    FeatureNotes& notes_;
    OutOfBounds result_;
};

}  // namespace

OutOfBounds out_of_bounds_on(const OutOfBoundsSources& sources, const PlaneDrawing& drawing,
                             const LineOfPlay& line, const Box& extent, double depth_m, HoleDraft& draft,
                             FeatureNotes& notes) {
    return BoundsOfHole(drawing, line, extent, depth_m, draft, notes).find(sources);
}

}  // namespace landwidth
