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
double away(const LieStretch& offsets) {
    return std::max({offsets.from_m, -offsets.to_m, 0.0});
}

std::optional<FairwayCut> fairway_of(const std::vector<LieStretch>& offsets) {
    std::optional<FairwayCut> best;
    double best_away = 0.0;
    for (const LieStretch& stretch : offsets) {
        if (stretch.lie != Lie::fairway) continue;
        const FairwayCut cut{stretch.from_m, stretch.to_m};
        const double cut_away = away(stretch);
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

Transect transect_across(const LiePartition& lies, Point centre, Point along, double reach_m) {
    const Point across = unit(to_the_right(along));
    const bool usable = std::isfinite(centre.x) && std::isfinite(centre.y) && length(across) > 0.5 &&
                        std::isfinite(reach_m) && reach_m > 0.0;
    if (!usable) throw std::invalid_argument("a transect needs a place, a direction and a reach above 0");

    std::vector<LieStretch> offsets = lies.stretches(centre - reach_m * across, centre + reach_m * across);
    for (LieStretch& stretch : offsets) {
        stretch.from_m -= reach_m;
        stretch.to_m -= reach_m;
    }
    Transect transect{0.0, centre, across, fairway_of(offsets), std::nullopt, std::nullopt};
    for (const LieStretch& stretch : offsets) {
        if (!is_trouble(stretch.lie)) continue;
        if (stretch.from_m < 0.0) keep_nearer(transect.left, {away(stretch), stretch.lie});
        if (stretch.to_m > 0.0) keep_nearer(transect.right, {away(stretch), stretch.lie});
    }
    return transect;
}

Transect transect_at(const LiePartition& lies, const LineOfPlay& line, double station_m, double reach_m) {
    Transect transect =
        transect_across(lies, line.point_at(station_m), line.direction_at(station_m), reach_m);
    transect.station_m = station_m;
    return transect;
}

}  // namespace landwidth
