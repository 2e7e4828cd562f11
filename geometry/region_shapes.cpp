// The ways a Region comes into being: drawn rings made valid, boxes, discs, ground around or beside a path.
#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "geometry/line_of_play.hpp"
#include "geometry/region.hpp"
#include "geometry/region_shape.hpp"

namespace landwidth {
namespace {

// Well beyond half way round the earth, and small enough for squares and products of squares.
constexpr double largest_coordinate_m = 1e9;

// A ring that crosses itself more often is a scribble: no outline of anything, and thousands of scraps of
// area.
constexpr int most_self_crossings = 200;
// Longer paths are given their breadth piece by piece.
constexpr std::size_t longest_piece = 200;

void require_length(double length_m, const char* what) {
    if (!std::isfinite(length_m) || length_m < 0.0) {
        throw std::invalid_argument(std::string(what) + " is below 0 or not finite");
    }
}

// Without repeated points, and open.
Ring tidied(const Ring& ring) {
    Ring tidy;
    std::unique_copy(ring.begin(), ring.end(), std::back_inserter(tidy));
    while (tidy.size() > 1 && tidy.front() == tidy.back())
        tidy.pop_back();
    return tidy;
}

bool has_three_distinct(const Ring& ring) {
    for (std::size_t i = 1; i < ring.size(); ++i) {
        if (ring[i] == ring[0]) continue;
        return std::any_of(ring.begin(), ring.end(), [&](Point p) { return p != ring[0] && p != ring[i]; });
    }
    return false;
}

// GEOS's reasons in a mapper's words.
std::string in_words(std::string_view reason) {
    if (reason == "Self-intersection") return "self-crossing ring";
    if (reason == "Ring Self-intersection") return "ring that touches itself";
    if (reason == "Hole lies outside shell") return "inner ring outside the outer ring";
    if (reason == "Holes are nested") return "inner ring inside another inner ring";
    if (reason == "Interior is disconnected") return "inner rings that cut the area apart";
    if (reason == "Duplicate Rings") return "the same ring twice";
    if (reason == "Too few points in geometry component") return "ring without an area";
    return "invalid polygon (" + std::string(reason) + ")";
}

struct Flaw {
    std::string words;
    std::optional<Point> place;
};

std::optional<Flaw> flaw_of(const GEOSGeometry* polygon) {
    char* reason = nullptr;
    GEOSGeometry* location = nullptr;
    const char valid = GEOSisValidDetail_r(geos(), polygon, 0, &reason, &location);
    const std::unique_ptr<char, GeosDeleter> reason_owner(reason);
    const GeosPtr location_owner(location);
    if (answer_of(valid)) return std::nullopt;
    Flaw flaw{in_words(reason != nullptr ? reason : "no reason given"), std::nullopt};
    Point place;
    if (location != nullptr && GEOSGeomGetX_r(geos(), location, &place.x) == 1 &&
        GEOSGeomGetY_r(geos(), location, &place.y) == 1) {
        flaw.place = place;
    }
    return flaw;
}

// How often the segments of a ring cross each other, counted up to `most`.
int self_crossings(const Ring& ring, int most) {
    struct Segment {
        Point a, b;
        double low, high;
    };
    // Swept along the axis on which segments are the shorter, so that few are looked at together.
    double along_x = 0.0;
    double along_y = 0.0;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Point step = ring[(i + 1) % ring.size()] - ring[i];
        along_x += std::abs(step.x);
        along_y += std::abs(step.y);
    }
    const auto place = [&](Point p) { return along_x <= along_y ? p.x : p.y; };
    std::vector<Segment> segments;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Point a = ring[i];
        const Point b = ring[(i + 1) % ring.size()];
        segments.push_back({a, b, std::min(place(a), place(b)), std::max(place(a), place(b))});
    }
    std::ranges::sort(segments, {}, &Segment::low);
    std::vector<const Segment*> open;
    int crossings = 0;
    for (const Segment& segment : segments) {
        std::erase_if(open, [&](const Segment* other) { return other->high < segment.low; });
        for (const Segment* other : open) {
            if (segments_cross(segment.a, segment.b, other->a, other->b) && ++crossings >= most)
                return crossings;
        }
        open.push_back(&segment);
    }
    return crossings;
}

GeosPtr made_valid(const GEOSGeometry* polygon) {
    const auto params = owned(GEOSMakeValidParams_create_r(geos()));
    // The linework method keeps what an odd number of rings enclose: both lobes of a bow-tie.
    GEOSMakeValidParams_setMethod_r(geos(), params.get(), GEOS_MAKE_VALID_LINEWORK);
    return owned(GEOSMakeValidWithParams_r(geos(), polygon, params.get()));
}

GeosPtr buffer(const GEOSGeometry* geometry, double by_m, int cap) {
    const auto params = owned(GEOSBufferParams_create_r(geos()));
    GEOSBufferParams_setQuadrantSegments_r(geos(), params.get(), buffer_segments_per_quadrant);
    GEOSBufferParams_setEndCapStyle_r(geos(), params.get(), cap);
    return owned(GEOSBufferWithParams_r(geos(), geometry, params.get(), by_m));
}

// The path drawn on a little at both ends, so that it cuts ground that ends exactly where the path does.
std::vector<Point> drawn_on(const LineOfPlay& path, double by_m) {
    std::vector<Point> points = path.vertices();
    if (points.front() == points.back()) return points;
    points.front() = path.point_at(-by_m);
    points.back() = path.point_at(path.length() + by_m);
    return points;
}

// The pieces into which paths cut the ground.
GeosPtr cut_by(const GEOSGeometry* ground, std::span<const std::vector<Point>> paths) {
    std::vector<GeosPtr> lines;
    lines.push_back(owned(GEOSBoundary_r(geos(), ground)));
    for (const std::vector<Point>& path : paths)
        lines.push_back(geos_line(path));
    const GeosPtr drawing = geos_collection(GEOS_GEOMETRYCOLLECTION, std::move(lines));
    const GeosPtr noded = owned(GEOSUnaryUnion_r(geos(), drawing.get()));
    const GEOSGeometry* input = noded.get();
    return owned(GEOSPolygonize_r(geos(), &input, 1));
}

}  // namespace

void require_on_earth(std::span<const Point> points, const char* what) {
    for (const Point p : points) {
        // Written so that NaN fails too.
        if (!(std::abs(p.x) <= largest_coordinate_m && std::abs(p.y) <= largest_coordinate_m)) {
            throw std::invalid_argument(std::string(what) + ": a coordinate is not finite or not on earth");
        }
    }
}

Region::Repaired Region::repaired(const PolygonRings& rings) {
    PolygonRings tidy;
    require_on_earth(rings.outer, "the outer ring");
    tidy.outer = tidied(rings.outer);
    if (!has_three_distinct(tidy.outer)) {
        throw std::invalid_argument("the outer ring has fewer than three distinct points");
    }
    Repaired result;
    for (const Ring& inner : rings.inners) {
        require_on_earth(inner, "an inner ring");
        Ring tidy_inner = tidied(inner);
        if (has_three_distinct(tidy_inner)) {
            tidy.inners.push_back(std::move(tidy_inner));
        } else {
            result.repair = "inner ring with fewer than three distinct points, left out";
            if (!inner.empty()) result.place = inner.front();
        }
    }
    GeosPtr polygon = geos_polygon(tidy);
    if (const std::optional<Flaw> flaw = flaw_of(polygon.get())) {
        result.repair = flaw->words;
        result.place = flaw->place;
        if (self_crossings(tidy.outer, most_self_crossings) == most_self_crossings) {
            result.repair = "ring that crosses itself hundreds of times";
            return result;
        }
        polygon = made_valid(polygon.get());
    }
    result.region = GeosAccess::region(std::move(polygon));
    if (result.region.empty()) {
        result.repair = result.repair.value_or("ring without an area") + ", nothing is left of the area";
    }
    return result;
}

Region Region::box(const Box& box) {
    const Point corners[] = {box.min, box.max};
    require_on_earth(corners, "the corners of a box");
    if (box.min.x > box.max.x || box.min.y > box.max.y) {
        throw std::invalid_argument("a box whose lower corner is above its upper");
    }
    if (box.min.x == box.max.x || box.min.y == box.max.y) return {};
    return GeosAccess::region(
        geos_polygon({{box.min, {box.max.x, box.min.y}, box.max, {box.min.x, box.max.y}}, {}}));
}

Region Region::disc(Point centre, double radius_m) {
    return around({centre}, radius_m);
}

Region Region::around(const std::vector<Point>& path, double half_width_m) {
    require_on_earth(path, "the path");
    require_length(half_width_m, "the width around a path");
    if (path.empty()) throw std::invalid_argument("a path without a point");
    if (half_width_m == 0.0) return {};
    const bool one_place = std::all_of(path.begin(), path.end(), [&](Point p) { return p == path.front(); });
    if (one_place) {
        const GeosPtr point = geos_point(path.front());
        return GeosAccess::region(buffer(point.get(), half_width_m, GEOSBUF_CAP_ROUND));
    }
    const auto around_piece = [&](std::size_t first, std::size_t last) {
        const auto begin = path.begin() + static_cast<std::ptrdiff_t>(first);
        const GeosPtr line = geos_line({begin, path.begin() + static_cast<std::ptrdiff_t>(last) + 1});
        return GeosAccess::region(buffer(line.get(), half_width_m, GEOSBUF_CAP_ROUND));
    };
    if (path.size() <= longest_piece) return around_piece(0, path.size() - 1);
    // GEOS rounds every corner of a long path before it looks for crossings; a track that wanders about would
    // take a gigabyte.
    std::vector<Region> pieces;
    for (std::size_t first = 0; first + 1 < path.size(); first += longest_piece)
        pieces.push_back(around_piece(first, std::min(first + longest_piece, path.size() - 1)));
    return united(pieces);
}

std::vector<Region> Region::pieces(const Box& box, const std::vector<std::vector<Point>>& paths) {
    for (const std::vector<Point>& path : paths) {
        require_on_earth(path, "a path that cuts");
        if (path.size() < 2) throw std::invalid_argument("a path that cuts has fewer than two points");
    }
    const Region whole = Region::box(box);
    std::vector<Region> result;
    const GeosPtr cut = cut_by(GeosAccess::geometry(whole), paths);
    for_each_polygon(cut.get(), [&](const GEOSGeometry* polygon) {
        // A loop of a path beyond the box is a piece of nothing.
        Region piece = GeosAccess::region(geos_copy(polygon)).common_with(whole);
        if (!piece.empty()) result.push_back(std::move(piece));
    });
    return result;
}

Region Region::beside(const std::vector<Point>& path, double width_m, Side side) {
    require_on_earth(path, "the path");
    require_length(width_m, "the width beside a path");
    const LineOfPlay line(path);
    if (width_m == 0.0) return {};
    const bool closed = line.vertices().front() == line.vertices().back();
    const GeosPtr drawn = geos_line(line.vertices());
    const GeosPtr both_sides = buffer(drawn.get(), width_m, closed ? GEOSBUF_CAP_ROUND : GEOSBUF_CAP_FLAT);
    const std::vector<std::vector<Point>> cuts = {drawn_on(line, 1e-3 * width_m)};
    const GeosPtr pieces = cut_by(both_sides.get(), cuts);

    const Region ground = GeosAccess::region(geos_copy(both_sides.get()));
    std::vector<Region> wanted;
    for_each_polygon(pieces.get(), [&](const GEOSGeometry* piece) {
        const GeosPtr inner_point = owned(GEOSPointOnSurface_r(geos(), piece));
        const Point p = points_of(inner_point.get()).front();
        const bool right = line.place_of(p).offset_m > 0.0;
        if (ground.contains(p) && right == (side == Side::right)) {
            wanted.push_back(GeosAccess::region(geos_copy(piece)));
        }
    });
    return united(wanted);
}

}  // namespace landwidth
