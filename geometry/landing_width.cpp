#include "geometry/landing_width.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace landwidth {
namespace {

bool is_trouble(Lie lie) {
    return lie == Lie::bunker || lie == Lie::trees || lie == Lie::out_of_bounds || is_penalty_area(lie);
}

// How far a stretch of offsets is from the line; 0 when it holds the line.
double away(double from_m, double to_m) {
    return std::max({from_m, -to_m, 0.0});
}

// The stretches of fairway that are this hole's. A sliver between two outlines of one edge is none.
std::vector<FairwayCut> own_fairways(const std::vector<LieStretch>& offsets,
                                     const std::vector<Stretch>& others) {
    constexpr double sliver_m = 0.01;
    std::vector<FairwayCut> cuts;
    const auto add = [&cuts](double from_m, double to_m, double least_m) {
        if (to_m - from_m > least_m) cuts.push_back({from_m, to_m});
    };
    for (const LieStretch& stretch : offsets) {
        if (stretch.lie != Lie::fairway) continue;
        double from_m = stretch.from_m;
        bool whole = true;
        for (const Stretch& other : others) {
            if (other.to_m <= from_m || other.from_m >= stretch.to_m) continue;
            whole = false;
            add(from_m, other.from_m, sliver_m);
            from_m = std::max(from_m, other.to_m);
        }
        add(from_m, stretch.to_m, whole ? 0.0 : sliver_m);
    }
    return cuts;
}

std::optional<FairwayCut> nearest_of(const std::vector<FairwayCut>& cuts) {
    std::optional<FairwayCut> best;
    double best_away = 0.0;
    for (const FairwayCut& cut : cuts) {
        const double cut_away = away(cut.left_m, cut.right_m);
        const bool better =
            !best || cut_away < best_away || (cut_away == best_away && cut.width_m() > best->width_m());
        if (!better) continue;
        best = cut;
        best_away = cut_away;
    }
    return best;
}

void keep_nearer(std::optional<Trouble>& nearest, Trouble trouble) {
    if (!nearest || trouble.offset_m < nearest->offset_m) nearest = trouble;
}

}  // namespace

Transect transect_across(const LiePartition& lies, Point centre, Point along, double reach_m,
                         const Region& other_fairways) {
    const Point across = unit(to_the_right(along));
    const bool usable = std::isfinite(centre.x) && std::isfinite(centre.y) && length(across) > 0.5 &&
                        std::isfinite(reach_m) && reach_m > 0.0;
    if (!usable) throw std::invalid_argument("a transect needs a place, a direction and a reach above 0");

    const Point from = centre - reach_m * across;
    const Point to = centre + reach_m * across;
    const auto from_line = [reach_m](auto stretches) {
        for (auto& stretch : stretches) {
            stretch.from_m -= reach_m;
            stretch.to_m -= reach_m;
        }
        return stretches;
    };
    const std::vector<LieStretch> offsets = from_line(lies.stretches(from, to));
    const std::vector<FairwayCut> fairways =
        own_fairways(offsets, from_line(other_fairways.stretches(from, to)));
    Transect transect{0.0, centre, across, nearest_of(fairways), std::nullopt, std::nullopt};
    for (const LieStretch& stretch : offsets) {
        if (!is_trouble(stretch.lie)) continue;
        if (stretch.from_m < 0.0)
            keep_nearer(transect.left, {away(stretch.from_m, stretch.to_m), stretch.lie});
        if (stretch.to_m > 0.0)
            keep_nearer(transect.right, {away(stretch.from_m, stretch.to_m), stretch.lie});
    }
    return transect;
}

Transect transect_at(const LiePartition& lies, const LineOfPlay& line, double station_m, double reach_m,
                     const Region& other_fairways) {
    Transect transect = transect_across(lies, line.point_at(station_m), line.direction_at(station_m), reach_m,
                                        other_fairways);
    transect.station_m = station_m;
    return transect;
}

}  // namespace landwidth
