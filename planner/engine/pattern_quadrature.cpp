#include "planner/engine/pattern_quadrature.hpp"

#include <array>
#include <boost/random/sobol.hpp>
#include <cmath>

#include "golfer-profiles/counter_bits.hpp"

namespace landwidth {

namespace {

constexpr int most_log2_points = 16;
constexpr std::uint64_t usual_stream = 0x75737561ULL;
constexpr std::uint64_t mishit_stream = 0x6d697368ULL;

using SobolPoint = std::array<std::uint64_t, 2>;

const std::vector<SobolPoint>& sobol_points() {
    static const std::vector<SobolPoint> points = [] {
        boost::random::sobol engine(2);
        std::vector<SobolPoint> made(std::size_t{1} << most_log2_points);
        for (SobolPoint& point : made)
            for (std::uint64_t& coordinate : point)
                coordinate = engine();
        return made;
    }();
    return points;
}

double unit_interval(std::uint64_t bits) {
    return static_cast<double>(bits >> 11) * 0x1.0p-53;
}

void append_shots(const Spread& spread, double tail_dof, double share, std::size_t count,
                  std::uint64_t stream, std::vector<WeightedShot>& shots) {
    const std::uint64_t shift_u = mixed(2 * stream);
    const std::uint64_t shift_v = mixed(2 * stream + 1);
    const double weight = share / static_cast<double>(count);
    for (std::size_t i = 0; i < count / 2; ++i) {
        const auto [bits_u, bits_v] = sobol_points()[i];
        const double u = unit_interval(bits_u ^ shift_u);
        const double half_turn = 0.5 * unit_interval(bits_v ^ shift_v);
        for (const double v : {half_turn, 1.0 - half_turn}) {
            const ShotOffset shot = spread_point(spread, tail_dof, u, v);
            shots.push_back(
                {std::hypot(shot.carry_m, shot.side_m), std::atan2(shot.side_m, shot.carry_m), weight});
        }
    }
}

}  // namespace

std::vector<WeightedShot> weighted_shots(const ShotPattern& pattern, int log2_points,
                                         std::uint64_t replicate) {
    const std::size_t usual = std::size_t{1} << log2_points;
    const double mishit_share = pattern.mishit ? pattern.mishit->share : 0.0;
    std::vector<WeightedShot> shots;
    shots.reserve(usual + usual / 4);
    if (pattern.ways) {
        std::uint64_t stream = mixed(replicate) ^ usual_stream;
        for (const Way& way : *pattern.ways)
            append_shots(spread_of(pattern.usual, way), pattern.tail_dof, (1.0 - mishit_share) * way.share,
                         usual / 2, stream++, shots);
    } else {
        append_shots(pattern.usual, pattern.tail_dof, 1.0 - mishit_share, usual,
                     mixed(replicate) ^ usual_stream, shots);
    }
    if (mishit_share > 0.0)
        append_shots(pattern.mishit->spread, std::numeric_limits<double>::infinity(), mishit_share, usual / 4,
                     mixed(replicate) ^ mishit_stream, shots);
    return shots;
}

}  // namespace landwidth
