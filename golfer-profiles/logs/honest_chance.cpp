#include "golfer-profiles/logs/honest_chance.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <optional>
#include <unordered_set>

#include "golfer-profiles/logs/log_units.hpp"
#include "golfer-profiles/order_statistics.hpp"

namespace landwidth {
namespace {

using Number = std::optional<double>;

Number ratio(Number a, Number b) {
    return a && b && *b > 0.0 ? Number(*a / *b) : std::nullopt;
}

Number length_of(const LoggedShot& shot) {
    return shot.carry_m ? shot.carry_m : shot.total_m;
}

// One quantity: as it is written, and that part of it that the others do not tell already.
struct Quantity {
    Number (*written)(const LoggedShot&);
    Number (*own)(const LoggedShot&);
    // What the own part changes by when the written one changes by 1.
    double (*own_per_written)(const LoggedShot&);
    // Nobody is steadier than this share of the middle value and this much: assumptions, so that a handful
    // of shots does not look steadier than golfers are.
    double least_share, least;
};

Number lost_or(const LoggedShot& shot, Number value) {
    return shot.lost ? std::nullopt : value;
}

const std::array<Quantity, 9>& quantities() {
    constexpr auto one = [](const LoggedShot&) { return 1.0; };
    constexpr auto length = [](const LoggedShot& s) { return lost_or(s, length_of(s)); };
    constexpr auto side = [](const LoggedShot& s) { return lost_or(s, s.side_m); };
    constexpr auto total = [](const LoggedShot& s) { return s.carry_m ? s.total_m : std::nullopt; };
    constexpr auto run = [](const LoggedShot& s) {
        return s.carry_m && s.total_m ? Number(*s.total_m - *s.carry_m) : std::nullopt;
    };
    constexpr auto ball = [](const LoggedShot& s) { return s.ball_speed_mps; };
    constexpr auto ball_share = [](const LoggedShot& s) { return ratio(s.ball_speed_mps, length_of(s)); };
    constexpr auto per_length = [](const LoggedShot& s) { return 1.0 / length_of(s).value_or(1.0); };
    constexpr auto club = [](const LoggedShot& s) { return s.club_speed_mps; };
    constexpr auto club_share = [](const LoggedShot& s) { return ratio(s.club_speed_mps, s.ball_speed_mps); };
    constexpr auto per_ball = [](const LoggedShot& s) { return 1.0 / s.ball_speed_mps.value_or(1.0); };
    constexpr auto launch = [](const LoggedShot& s) { return s.launch_rad; };
    constexpr auto spin = [](const LoggedShot& s) { return s.spin_rad_per_s; };
    constexpr auto toe = [](const LoggedShot& s) { return s.strike_toe_m; };
    constexpr auto up = [](const LoggedShot& s) { return s.strike_up_m; };
    static const std::array<Quantity, 9> all{{
        {length, length, one, 0.02, 0.9},
        {side, side, one, 0.0, 3.0},
        {total, run, one, 0.0, 2.0},
        {ball, ball_share, per_length, 0.01, 0.0},
        {club, club_share, per_ball, 0.01, 0.0},
        {launch, launch, one, 0.0, 0.017},
        {spin, spin, one, 0.04, 1.0},
        {toe, toe, one, 0.0, 0.004},
        {up, up, one, 0.0, 0.004},
    }};
    return all;
}

// The largest step in any unit that all values are multiples of; a thousandth of SI when none is.
double step_of(const std::vector<double>& values) {
    constexpr double steps[]{1.0, 0.5, 0.1, 0.01};
    constexpr double exact = 1e-6;  // of a step, for what comes and goes in conversions
    double best = 0.001;
    for (const LogUnit& unit : log_units()) {
        for (const double share : steps) {
            const double step = unit.si * share;
            if (step <= best) continue;
            const bool fits = std::all_of(values.begin(), values.end(), [&](double value) {
                return std::abs(value / step - std::round(value / step)) < exact;
            });
            if (fits) best = step;
        }
    }
    return best;
}

void multiply_in(const Quantity& quantity, const std::vector<LoggedShot>& shots,
                 const std::vector<std::size_t>& club_of, std::vector<double>& chances) {
    std::vector<double> written;
    std::vector<std::vector<double>> own;
    for (std::size_t i = 0; i < shots.size(); ++i) {
        if (const Number value = quantity.written(shots[i])) written.push_back(*value);
        if (club_of[i] >= own.size()) own.resize(club_of[i] + 1);
        if (const Number value = quantity.own(shots[i])) own[club_of[i]].push_back(*value);
    }
    if (written.empty()) return;
    const double step = step_of(written);
    std::vector<double> deviations;
    for (const std::vector<double>& values : own) {
        const double least =
            values.empty() ? 1.0 : quantity.least + quantity.least_share * std::abs(median(values));
        deviations.push_back(values.empty() ? least : std::max(robust_deviation(values), least));
    }
    for (std::size_t i = 0; i < shots.size(); ++i) {
        if (!quantity.own(shots[i])) continue;
        // Of two normal values: the density of their difference at 0, times the step.
        const double own_step = step * quantity.own_per_written(shots[i]);
        chances[i] *= std::min(1.0, own_step * 0.5 * std::numbers::inv_sqrtpi / deviations[club_of[i]]);
    }
}

}  // namespace

int quantities_in(const LoggedShot& shot) {
    const Number numbers[]{shot.carry_m,        shot.total_m,
                           shot.ball_speed_mps, shot.club_speed_mps,
                           shot.launch_rad,     shot.spin_rad_per_s,
                           shot.peak_m,         shot.strike_toe_m,
                           shot.strike_up_m,    lost_or(shot, shot.side_m)};
    return static_cast<int>(
        std::count_if(std::begin(numbers), std::end(numbers), [](const Number& n) { return n.has_value(); }));
}

std::vector<double> honest_chances(const std::vector<LoggedShot>& shots,
                                   const std::vector<std::size_t>& club_of) {
    std::unordered_set<std::string> dates;
    for (const LoggedShot& shot : shots)
        dates.insert(shot.date);
    // Times of day tell shots apart as far as they differ.
    std::vector<double> chances(shots.size(),
                                1.0 / static_cast<double>(std::max(dates.size(), std::size_t{1})));
    for (const Quantity& quantity : quantities())
        multiply_in(quantity, shots, club_of, chances);
    return chances;
}

}  // namespace landwidth
