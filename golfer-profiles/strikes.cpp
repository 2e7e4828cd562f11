#include "golfer-profiles/strikes.hpp"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>

#include "golfer-profiles/order_statistics.hpp"

namespace landwidth {
namespace {

constexpr double metres_per_cm = 0.01;

const LoggedShot& recorded(const LandedShot& landed, const std::vector<NamedLog>& logs) {
    const std::vector<LoggedShot>& shots = logs[landed.log].log.shots;
    return *std::lower_bound(shots.begin(), shots.end(), landed.row,
                             [](const LoggedShot& shot, std::size_t row) { return shot.row < row; });
}

struct Points {
    std::vector<double> at_m, value;
    void add(double x_m, double y) {
        at_m.push_back(x_m);
        value.push_back(y);
    }
};

std::optional<StrikeSlope> slope_through(const Points& points) {
    const auto shots = static_cast<Eigen::Index>(points.at_m.size());
    if (shots < 3) return std::nullopt;
    const Eigen::ArrayXd x = Eigen::Map<const Eigen::ArrayXd>(points.at_m.data(), shots) / metres_per_cm;
    const Eigen::ArrayXd y = Eigen::Map<const Eigen::ArrayXd>(points.value.data(), shots);
    const Eigen::ArrayXd from_mean = x - x.mean();
    const double spread = from_mean.square().sum();
    constexpr double same_place = 1e-9;
    if (spread < same_place) return std::nullopt;
    const double slope = (from_mean * y).sum() / spread;
    const double rest = (y - y.mean() - slope * from_mean).square().sum();
    return StrikeSlope{points.at_m.size(), slope, std::sqrt(rest / static_cast<double>(shots - 2) / spread)};
}

std::optional<StrikeEffect> effect_of(const LoggedClub& club, const std::vector<NamedLog>& logs) {
    Points speeds, sides;
    std::vector<double> toes;
    double squares = 0.0;
    std::size_t shots = 0;
    for (const LandedShot& landed : club.shots) {
        const LoggedShot& shot = recorded(landed, logs);
        if (!shot.strike_toe_m && !shot.strike_up_m) continue;
        ++shots;
        const double off_m = std::hypot(shot.strike_toe_m.value_or(0.0), shot.strike_up_m.value_or(0.0));
        squares += off_m * off_m;
        if (shot.ball_speed_mps) speeds.add(off_m, *shot.ball_speed_mps);
        if (!shot.strike_toe_m) continue;
        toes.push_back(*shot.strike_toe_m);
        sides.add(*shot.strike_toe_m, landed.landing.side_m);
    }
    if (shots == 0) return std::nullopt;
    if (!speeds.value.empty()) {
        const double middle = median(speeds.value);
        for (double& speed : speeds.value)
            speed /= middle;
    }
    double toe_sum = 0.0;
    for (const double toe : toes)
        toe_sum += toe;
    return StrikeEffect{club.name,
                        shots,
                        toes.empty() ? 0.0 : toe_sum / static_cast<double>(toes.size()),
                        std::sqrt(squares / static_cast<double>(shots)),
                        slope_through(speeds),
                        slope_through(sides)};
}

}  // namespace

std::vector<StrikeEffect> strike_effects(const std::vector<NamedLog>& logs, const LoggedClubs& clubs) {
    std::vector<StrikeEffect> effects;
    for (const LoggedClub& club : clubs.clubs)
        if (auto effect = effect_of(club, logs)) effects.push_back(std::move(*effect));
    return effects;
}

}  // namespace landwidth
