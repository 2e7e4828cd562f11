#include "courses/reading/box_edge.hpp"

#include <algorithm>
#include <cmath>

#include "geometry/units.hpp"

namespace landwidth {

namespace {

void add(LonLat place, LonLatPath& path) {
    if (path.empty() || path.back() != place) path.push_back(place);
}

}  // namespace

LonLat BoxEdge::corner(int number) const {
    switch (number % 4) {
        case 0:
            return {box_.west, box_.south};
        case 1:
            return {box_.east, box_.south};
        case 2:
            return {box_.east, box_.north};
        default:
            return {box_.west, box_.north};
    }
}

LonLat BoxEdge::nearest(LonLat place) const {
    const double across = std::cos(place.lat_deg * radians_per_degree);
    const std::array<double, 4> distances{place.lat_deg - box_.south, (box_.east - place.lon_deg) * across,
                                          box_.north - place.lat_deg, (place.lon_deg - box_.west) * across};
    switch (std::min_element(distances.begin(), distances.end()) - distances.begin()) {
        case 0:
            return {place.lon_deg, box_.south};
        case 1:
            return {box_.east, place.lat_deg};
        case 2:
            return {place.lon_deg, box_.north};
        default:
            return {box_.west, place.lat_deg};
    }
}

double BoxEdge::turn(LonLat place) const {
    const LonLat at = nearest(place);
    const double width = std::max(box_.east - box_.west, 1e-9);
    const double height = std::max(box_.north - box_.south, 1e-9);
    const auto share = [](double value) { return std::clamp(value, 0.0, 1.0); };
    if (at.lat_deg == box_.south) return share((at.lon_deg - box_.west) / width);
    if (at.lon_deg == box_.east) return 1.0 + share((at.lat_deg - box_.south) / height);
    if (at.lat_deg == box_.north) return 2.0 + share((box_.east - at.lon_deg) / width);
    return 3.0 + share((box_.north - at.lat_deg) / height);
}

void BoxEdge::go(LonLat from, LonLat to, bool counter_clockwise, LonLatPath& path) const {
    const LonLat start = nearest(from);
    const LonLat stop = nearest(to);
    double begin = turn(from);
    double end = turn(to);
    add(start, path);
    if (counter_clockwise) {
        if (end < begin) end += 4.0;
        for (int number = static_cast<int>(std::floor(begin)) + 1; number < end; ++number)
            add(corner(number), path);
    } else {
        if (begin < end) begin += 4.0;
        for (int number = static_cast<int>(std::ceil(begin)) - 1; number > end; --number)
            add(corner(number), path);
    }
    add(stop, path);
}

LonLatPath BoxEdge::ring() const {
    return {corner(0), corner(1), corner(2), corner(3), corner(0)};
}

// Cuts a segment to its part within the box (after Liang and Barsky). False when there is none.
bool BoxEdge::clip(LonLat& a, LonLat& b) const {
    const double east = b.lon_deg - a.lon_deg;
    const double north = b.lat_deg - a.lat_deg;
    const std::array<double, 4> steps{-east, east, -north, north};
    const std::array<double, 4> rooms{a.lon_deg - box_.west, box_.east - a.lon_deg, a.lat_deg - box_.south,
                                      box_.north - a.lat_deg};
    double enter = 0.0;
    double leave = 1.0;
    for (std::size_t side = 0; side < 4; ++side) {
        if (steps[side] == 0.0) {
            if (rooms[side] < 0.0) return false;
            continue;
        }
        const double share = rooms[side] / steps[side];
        if (steps[side] < 0.0) {
            enter = std::max(enter, share);
        } else {
            leave = std::min(leave, share);
        }
    }
    if (enter >= leave) return false;
    const auto at = [&](double share) {
        const LonLat place{a.lon_deg + share * east, a.lat_deg + share * north};
        // Cut places lie on the edge to the last digit.
        const LonLat edge = nearest(place);
        return LonLat{std::clamp(edge.lon_deg, box_.west, box_.east),
                      std::clamp(edge.lat_deg, box_.south, box_.north)};
    };
    const LonLat first = enter > 0.0 ? at(enter) : a;
    const LonLat last = leave < 1.0 ? at(leave) : b;
    a = first;
    b = last;
    return true;
}

std::vector<LonLatPath> BoxEdge::pieces_inside(const LonLatPath& path) const {
    std::vector<LonLatPath> pieces;
    LonLatPath piece;
    const auto end_piece = [&] {
        if (piece.size() > 1) pieces.push_back(std::move(piece));
        piece.clear();
    };
    for (std::size_t i = 1; i < path.size(); ++i) {
        LonLat a = path[i - 1];
        LonLat b = path[i];
        if (!clip(a, b)) {
            end_piece();
            continue;
        }
        if (!piece.empty() && piece.back() != a) end_piece();
        if (piece.empty()) piece.push_back(a);
        piece.push_back(b);
        if (b != path[i]) end_piece();
    }
    end_piece();
    return pieces;
}

}  // namespace landwidth
