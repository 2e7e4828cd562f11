#include "golfer-profiles/evidence/mishit_chance.hpp"

#include <cmath>

#include "golfer-profiles/evidence/golfer_model.hpp"

namespace landwidth {

namespace {

// Density of a bivariate t, or a normal, at a shot.
double density(const Spread& spread, double tail_dof, const ShotOffset& shot) {
    const double scale = std::isinf(tail_dof) ? 1.0 : std::sqrt((tail_dof - 2.0) / tail_dof);
    const double along = (shot.carry_m - spread.centre.carry_m) / (scale * spread.carry_sd_m);
    const double across = (shot.side_m - spread.centre.side_m) / (scale * spread.side_sd_m);
    const double rho = spread.correlation;
    const double rest = 1.0 - rho * rho;
    const double distance = (along * along - 2.0 * rho * along * across + across * across) / rest;
    return std::exp(-tail_loss(distance, tail_dof)) /
           (scale * scale * spread.carry_sd_m * spread.side_sd_m * std::sqrt(rest));
}

double usual_density(const ShotPattern& pattern, const ShotOffset& shot) {
    if (!pattern.ways) return density(pattern.usual, pattern.tail_dof, shot);
    double sum = 0.0;
    for (const Way& way : *pattern.ways)
        sum += way.share * density(spread_of(pattern.usual, way), pattern.tail_dof, shot);
    return sum;
}

}  // namespace

std::vector<double> mishit_chances(const ShotPattern& pattern, std::span<const ShotOffset> shots) {
    constexpr double normal_tail = std::numeric_limits<double>::infinity();
    std::vector<double> chances(shots.size(), 0.0);
    if (!pattern.mishit || !(pattern.mishit->share > 0.0)) return chances;
    const double share = pattern.mishit->share;
    for (std::size_t i = 0; i < shots.size(); ++i) {
        const double usual = (1.0 - share) * usual_density(pattern, shots[i]);
        const double mishit = share * density(pattern.mishit->spread, normal_tail, shots[i]);
        // Further out than either density reaches: no usual shot.
        chances[i] = usual + mishit > 0.0 ? mishit / (usual + mishit) : 1.0;
    }
    return chances;
}

std::vector<double> mishit_chances(std::span<const ShotPattern> draws, std::span<const ShotOffset> shots) {
    std::vector<double> chances(shots.size(), 0.0);
    for (const ShotPattern& draw : draws) {
        const std::vector<double> of_draw = mishit_chances(draw, shots);
        for (std::size_t i = 0; i < chances.size(); ++i)
            chances[i] += of_draw[i] / static_cast<double>(draws.size());
    }
    return chances;
}

}  // namespace landwidth
