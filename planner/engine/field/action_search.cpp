#include "planner/engine/field/action_search.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "geometry/units.hpp"

namespace landwidth {

namespace {

constexpr int turns_of(double degrees) {
    return static_cast<int>(degrees / 360.0 * turn_steps + (degrees < 0.0 ? -0.5 : 0.5));
}

// First look: aims beside the directions to the pin and along the line. Second look: a fan around the best.
constexpr std::array first_asides{turns_of(-42.0), turns_of(-30.0), turns_of(-19.0), turns_of(-9.0),
                                  turns_of(9.0),   turns_of(19.0),  turns_of(30.0),  turns_of(42.0)};
constexpr int fan_step = turns_of(3.0);
constexpr int fan_half = 5;
constexpr std::size_t fanned_options = 6;
constexpr int least_close_step = turns_of(1.2);
constexpr double close_cells = 1.5;
// Shorter shots than this share of what the golfer has, or of what is left, are not looked at from a good
// lie.
constexpr double least_share = 0.3;
// Out of trees any way may be the way.
constexpr int trees_step = turns_of(11.25);
// Shots that usually end this far beyond the pin are not tried.
constexpr double overshoot_m = Yards{40.0}.metres();

int turned(int turn) {
    return ((turn % turn_steps) + turn_steps) % turn_steps;
}

void keep(std::vector<Ranked>& best, const Ranked& found, std::size_t most) {
    const auto place = std::ranges::upper_bound(best, found.cost, {}, &Ranked::cost);
    if (place == best.end() && best.size() >= most) return;
    best.insert(place, found);
    if (best.size() > most) best.pop_back();
}

}  // namespace

ActionSearch::ActionSearch(const PlayGrid& grid, const ShotMenu& menu, const LineOfPlay& line,
                           ShotWorth& worth, const ShotCost& cost)
    : grid_(grid), menu_(menu), line_(line), worth_(worth), cost_(cost) {}

float ActionSearch::cost(int cell, Action action, BallSet ShotOption::*balls) {
    const ShotOption& shot = option(cell, action);
    return cost_.of(worth_.of(shot, shot.*balls, cell, action.turn, cost_.replay(cell)), stance(cell), cell);
}

std::vector<int> ActionSearch::aims_of(int cell, const ShotOption& option) const {
    const Point here = grid_.centre(cell);
    const auto towards = [&](Point target) { return grid_.turn_of(plane_bearing(target - here)); };
    const int to_pin = towards(line_.pin());
    std::vector<int> aims{to_pin};
    if (stance(cell) == Stance::trees) {
        for (int turn = trees_step; turn < turn_steps; turn += trees_step)
            aims.push_back(turned(to_pin + turn));
        return aims;
    }
    // Where the shot comes to when it follows the line.
    const double station = line_.place_of(here).station_m + option.total_m;
    int along = to_pin;
    if (station < line_.length()) along = towards(line_.point_at(station));
    if (along != to_pin) aims.push_back(along);
    for (const int aside : first_asides)
        aims.push_back(turned(along + aside));
    return aims;
}

bool ActionSearch::is_sensible(int cell, const ShotOption& option) const {
    // Too long a club is left out, but not the last one there is.
    const Stance here = stance(cell);
    if (&option == &menu_.options(here).back()) return true;
    const double left = distance(grid_.centre(cell), grid_.pin());
    const double longest = std::min(menu_.options(here).front().total_m, left);
    const double least = here == Stance::trees || here == Stance::bunker ? 0.0 : least_share * longest;
    return option.total_m <= left + overshoot_m && option.total_m >= least;
}

std::vector<Ranked> ActionSearch::everything(int cell) {
    return everything(cell, [&](const ShotOption& option) { return is_sensible(cell, option); });
}

std::vector<Ranked> ActionSearch::everything(int cell,
                                             const std::function<bool(const ShotOption&)>& allowed) {
    const std::vector<ShotOption>& options = menu_.options(stance(cell));
    std::vector<Ranked> per_option;
    for (std::size_t index = 0; index < options.size(); ++index) {
        if (!allowed(options[index])) continue;
        std::vector<Ranked> best;
        for (const int turn : aims_of(cell, options[index])) {
            const Action action{static_cast<std::int16_t>(index), static_cast<std::int16_t>(turn)};
            keep(best, {action, cost(cell, action, &ShotOption::rough_set)}, 1);
        }
        keep(per_option, best.front(), fanned_options);
    }
    std::vector<Ranked> best;
    for (const Ranked& middle : per_option) {
        std::vector<Ranked> of_option{middle};
        for (int step = -fan_half; step <= fan_half; ++step) {
            if (step == 0) continue;
            const Action action{middle.action.option,
                                static_cast<std::int16_t>(turned(middle.action.turn + step * fan_step))};
            keep(of_option, {action, cost(cell, action, &ShotOption::rough_set)}, 1);
        }
        keep(best, of_option.front(), most_kept);
    }
    return best;
}

Ranked ActionSearch::best_of(int cell, std::span<const Action> shots) {
    std::vector<Ranked> best;
    for (const Action& action : shots)
        keep(best, {action, cost(cell, action, &ShotOption::choice_set)}, 1);
    return best.front();
}

// Close to the hole the same step to the side is a larger turn.
int ActionSearch::close_step(int cell) const {
    const double left = distance(grid_.centre(cell), grid_.pin());
    const double turn =
        std::atan2(close_cells * grid_.step_m(), left) / (2.0 * std::numbers::pi) * turn_steps;
    return std::max(least_close_step, static_cast<int>(turn));
}

std::vector<Action> ActionSearch::beside(int cell, Action action) const {
    std::vector<Action> shots;
    const auto options = static_cast<int>(menu_.options(stance(cell)).size());
    for (const int option : {action.option - 1, action.option + 1})
        if (option >= 0 && option < options)
            shots.push_back({static_cast<std::int16_t>(option), action.turn});
    const int step = close_step(cell);
    for (const int aside : {-step, step})
        shots.push_back({action.option, static_cast<std::int16_t>(turned(action.turn + aside))});
    return shots;
}

void ActionSearch::add_unlike(std::vector<Action>& shots, int cell, Action action) const {
    const int step = close_step(cell);
    const bool again = std::ranges::any_of(shots, [&](const Action& other) {
        const int apart = turned(other.turn - action.turn);
        return other.option == action.option && std::min(apart, turn_steps - apart) <= step / 2;
    });
    if (!again) shots.push_back(action);
}

Action ActionSearch::re_aimed(int from, Action action, int to) const {
    const ShotOption& shot = option(from, action);
    const Point target = grid_.centre(from) + shot.total_m * along_bearing(grid_.bearing_of(action.turn));
    return {action.option,
            static_cast<std::int16_t>(grid_.turn_of(plane_bearing(target - grid_.centre(to))))};
}

}  // namespace landwidth
