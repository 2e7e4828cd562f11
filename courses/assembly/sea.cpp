#include "courses/assembly/sea.hpp"

#include <algorithm>
#include <cmath>

namespace landwidth {

namespace {

// Ends of coastlines this near to each other are joined, this near to the edge of the map reach it, metres.
constexpr double joined_m = 2.0;
// A shore is looked at so often, and so far to its side, metres.
constexpr double step_m = 10.0;
constexpr double beside_m = 0.05;
// Less of a piece's shore on the other side than this is a slip of the pen.
constexpr double contradiction_share = 0.1;

struct Piece {
    Region region;
    double sea_m = 0.0;   // of shore that has it on the right
    double land_m = 0.0;  // ... on the left
};

std::optional<Box> common_box(const Box& a, const std::optional<Box>& b) {
    if (!b) return a;
    const Box box{{std::max(a.min.x, b->min.x), std::max(a.min.y, b->min.y)},
                  {std::min(a.max.x, b->max.x), std::min(a.max.y, b->max.y)}};
    return box.min.x < box.max.x && box.min.y < box.max.y ? std::optional(box) : std::nullopt;
}

class SeaOfHole {
  public:
    SeaOfHole(const std::vector<const MapFeature*>& coastlines, const PlaneDrawing& drawing,
              const Box& ground, FeatureNotes& notes)
        : ground_(ground), notes_(notes) {
        for (const MapFeature* feature : coastlines) {
            for (std::vector<Point>& path : drawing.paths(*feature)) {
                path.erase(std::unique(path.begin(), path.end()), path.end());
                if (path.size() > 1) coasts_.push_back({feature, std::move(path)});
            }
        }
        find_ends();
        cut();
    }

    bool any() const { return !pieces_.empty(); }

    Region water(bool turned) const {
        std::vector<Region> parts;
        for (const Piece& piece : pieces_) {
            if (turned ? piece.land_m > piece.sea_m : piece.sea_m > piece.land_m)
                parts.push_back(piece.region);
        }
        return Region::united(parts);
    }

    template <KindName kind>
    void note() {
        for (const Coast& coast : coasts_) {
            if (!stretches_near(coast.path, ground_).empty())
                notes_.add<kind>(*coast.feature, place_of(coast.feature->shape));
        }
    }

    bool contradicts() const {
        return std::ranges::any_of(pieces_, [](const Piece& piece) {
            return std::min(piece.sea_m, piece.land_m) > contradiction_share * (piece.sea_m + piece.land_m);
        });
    }

  private:
    struct Coast {
        const MapFeature* feature;
        std::vector<Point> path;
    };

    double depth_in_ground(Point p) const {
        return std::min({p.x - ground_.min.x, ground_.max.x - p.x, p.y - ground_.min.y, ground_.max.y - p.y});
    }

    bool goes_on(const Coast& coast, Point end) const {
        if (distance(coast.path.front(), coast.path.back()) <= joined_m) return true;
        return std::ranges::any_of(coasts_, [&](const Coast& other) {
            return &other != &coast && (distance(other.path.front(), end) <= joined_m ||
                                        distance(other.path.back(), end) <= joined_m);
        });
    }

    // Draws ends on that lie within the ground, so that they cut it; gaps between ends are closed.
    void find_ends() {
        const double far = distance(ground_.min, ground_.max) + joined_m;
        std::vector<std::vector<Point>> more;
        for (const Coast& coast : coasts_) {
            const std::size_t last = coast.path.size() - 1;
            add_end(coast, coast.path[0], coast.path[1], far, more);
            add_end(coast, coast.path[last], coast.path[last - 1], far, more);
        }
        additions_ = std::move(more);
    }

    void add_end(const Coast& coast, Point end, Point before, double far,
                 std::vector<std::vector<Point>>& more) {
        const double depth = depth_in_ground(end);
        if (depth <= 0.0) return;
        if (goes_on(coast, end)) {
            for (const Coast& other : coasts_) {
                for (const Point next : {other.path.front(), other.path.back()}) {
                    if (next != end && distance(next, end) <= joined_m) more.push_back({end, next});
                }
            }
            return;
        }
        more.push_back({end, end + far * unit(end - before)});
        if (depth > joined_m) notes_.add<"coastline-ends">(*coast.feature, place_of(coast.feature->shape));
    }

    void cut() {
        std::vector<std::vector<Point>> paths = additions_;
        std::vector<std::vector<Point>> shores;
        for (const Coast& coast : coasts_) {
            for (std::vector<Point>& stretch : stretches_near(coast.path, ground_))
                shores.push_back(std::move(stretch));
        }
        if (shores.empty()) return;
        paths.insert(paths.end(), shores.begin(), shores.end());
        for (Region& region : Region::pieces(ground_, paths))
            pieces_.push_back({std::move(region)});
        for (const std::vector<Point>& shore : shores) {
            for (std::size_t i = 1; i < shore.size(); ++i)
                look_beside(shore[i - 1], shore[i]);
        }
    }

    void look_beside(Point from, Point to) {
        const double length = distance(from, to);
        const int steps = std::max(1, static_cast<int>(std::ceil(length / step_m)));
        const Point aside = beside_m * unit(to_the_right(to - from));
        for (int i = 0; i < steps; ++i) {
            const Point shore = from + ((i + 0.5) / steps) * (to - from);
            if (depth_in_ground(shore) <= beside_m) continue;
            for (Piece& piece : pieces_) {
                if (piece.region.contains(shore + aside)) piece.sea_m += length / steps;
                if (piece.region.contains(shore - aside)) piece.land_m += length / steps;
            }
        }
    }

    Box ground_;
    FeatureNotes& notes_;
    std::vector<Coast> coasts_;
    std::vector<std::vector<Point>> additions_;
    std::vector<Piece> pieces_;
};

double share_in(const Region& water, const LineOfPlay& line) {
    constexpr int looks = 40;
    int wet = 0;
    for (int i = 0; i <= looks; ++i) {
        if (water.contains(line.point_at(line.length() * i / looks))) ++wet;
    }
    return static_cast<double>(wet) / (looks + 1);
}

}  // namespace

Region sea_beside(const std::vector<const MapFeature*>& coastlines, const PlaneDrawing& drawing,
                  const LineOfPlay& line, const Box& extent, const std::optional<Box>& known,
                  FeatureNotes& notes, HoleDraft& draft) {
    const std::optional<Box> ground = common_box(extent, known);
    if (coastlines.empty() || !ground) return {};
    SeaOfHole sea(coastlines, drawing, *ground, notes);
    if (!sea.any()) return {};
    if (sea.contradicts()) sea.note<"coastline-contradicts">();
    Region water = sea.water(false);
    const bool tee_wet = water.contains(line.tee());
    const bool pin_wet = water.contains(line.pin());
    if (tee_wet && pin_wet && share_in(water, line) > 0.5) {
        sea.note<"coastline-turned-round">();
        return sea.water(true);
    }
    if (tee_wet || pin_wet) draft.report<"hole-in-the-sea">(std::nullopt, tee_wet ? "tee" : "pin");
    if (!water.empty()) sea.note<"sea-as-red">();
    return water;
}

void tell_ground_in_sea(const Region& sea, const std::vector<const MapFeature*>& coastlines,
                        const std::vector<DrawnGround>& drawn, const PlaneDrawing& drawing,
                        const LineOfPlay& line, FeatureNotes& notes) {
    if (sea.empty()) return;
    for (const auto& [ground, common] : golf_ground_in(sea, drawn, line))
        notes.add_pair<"overlap-unclear/sea">(*ground->feature, *coastlines.front(),
                                              drawing.frame().to_lonlat(middle_of(common)),
                                              coastlines.front()->label(), std::lround(common.area()));
}

}  // namespace landwidth
