#include "planner/engine/tee_fan.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <utility>

#include "geometry/units.hpp"
#include "planner/engine/field/lie_effects.hpp"

namespace landwidth {

namespace {

constexpr double whole_turn = 2.0 * std::numbers::pi;

int rays_in_a_turn(const EngineAssumptions& assumptions) {
    return static_cast<int>(std::lround(whole_turn / assumptions.fan_angle_step_rad));
}

// Rays are made this many cells at a time: most shots need no more of most rays.
constexpr int rows_at_a_time = 64;
// No ball rests further from the tee, whatever the tail of its pattern says.
constexpr double furthest_m = Yards{600.0}.metres();

// Cells of neighbouring rays are set against each other, so that an edge of the ground that runs across many
// rays (the front of a green) is not misread on all of them alike. Golden-ratio steps spread evenly; `turn`
// counts rays from the forward one, on either side alike.
float phase_of(int turn) {
    const double phase = turn * std::numbers::phi;
    return static_cast<float>(phase - std::floor(phase));
}

bool stops_a_ball(Lie lie) {
    return lie == Lie::bunker || is_penalty_area(lie);
}

}  // namespace

FanShots fan_shots(const ShotPattern& pattern, int log2_points, std::uint64_t replicate,
                   const EngineAssumptions& assumptions) {
    struct Placed {
        std::int32_t ray;
        FanShots::Shot shot;
    };
    const double angle_step = whole_turn / rays_in_a_turn(assumptions);
    const double row_step = assumptions.fan_ray_step_m;
    std::vector<Placed> placed;
    for (const WeightedShot& shot : weighted_shots(pattern, log2_points, replicate))
        placed.push_back({static_cast<std::int32_t>(std::lround(shot.angle_rad / angle_step)),
                          {static_cast<float>(shot.distance_m / row_step), static_cast<float>(shot.weight)}});
    std::ranges::stable_sort(placed, {}, [](const Placed& p) { return std::pair(p.ray, p.shot.row); });
    FanShots result{};
    for (const Placed& p : placed) {
        const auto index = static_cast<std::uint32_t>(result.shots.size());
        if (result.rays.empty() || result.rays.back().ray != p.ray)
            result.rays.push_back({p.ray, index, index});
        result.rays.back().end = index + 1;
        result.shots.push_back(p.shot);
    }
    const double run = pattern.run_m / row_step;
    for (const Lie lie : all_lies)
        result.run_rows[index_of(lie)] = static_cast<float>(run * run_share(lie, assumptions));
    result.longest_run_rows = std::ranges::max(result.run_rows);
    return result;
}

TeeFan::TeeFan(const ReliefGround& ground, const FlightClearance& clearance, Point tee, double forward,
               double replay_cost, bool local_rule_e5, const EngineAssumptions& assumptions)
    : ground_(ground),
      clearance_(clearance),
      tee_(tee),
      forward_(forward),
      row_step_(assumptions.fan_ray_step_m),
      angle_step_(whole_turn / rays_in_a_turn(assumptions)),
      rays_(rays_in_a_turn(assumptions)),
      most_rows_(std::clamp(static_cast<int>(std::ceil(furthest_m / row_step_)), 1,
                            int{std::numeric_limits<std::uint16_t>::max()})),
      replay_cost_(replay_cost),
      local_rule_e5_(local_rule_e5),
      trees_lost_share_(assumptions.trees_lost_share),
      fan_(static_cast<std::size_t>(rays_)) {}

int TeeFan::ray_near(double bearing) const {
    const double turn = std::remainder(bearing - forward_, whole_turn);
    return static_cast<int>(std::lround(turn / angle_step_));
}

TeeFan::Ray& TeeFan::ray_for(const FanShots& shots, const FanShots::OnRay& group, int aim_ray) {
    const int turned = (aim_ray + group.ray) % rays_;
    Ray& ray = fan_[static_cast<std::size_t>(turned < 0 ? turned + rays_ : turned)];
    if (ray.cells.empty())
        ray.phase = phase_of(std::min(turned < 0 ? -turned : turned, rays_ - std::abs(turned)));
    // The shots of a group are in order of distance: the last may run furthest.
    const float furthest = shots.shots[group.end - 1].row + shots.longest_run_rows;
    const int needed = std::min(static_cast<int>(std::min(furthest, 1e6F)) + 3, most_rows_);
    if (static_cast<int>(ray.cells.size()) < needed) {
        const int rounded_up = (needed + rows_at_a_time - 1) / rows_at_a_time * rows_at_a_time;
        extend_ray(ray, along_bearing(bearing_of(aim_ray + group.ray)), std::min(rounded_up, most_rows_));
    }
    return ray;
}

TeeFan::Cell TeeFan::ball_at_rest(Point place, Point last_in_bounds, Lie lie) const {
    Cell cell{0.0F, 0.0F, 0.0F, 0, no_woods, lie};
    const double out_share = lie == Lie::out_of_bounds ? 1.0 : lie == Lie::trees ? trees_lost_share_ : 0.0;
    double cost = 0.0;
    double replay = out_share;
    if (out_share < 1.0) {
        const StrokesField::Worth worth = ground_.field.worth(place, lie, 1);
        cost += (1.0 - out_share) * worth.cost;
        cell.leave_m = static_cast<float>(worth.distance_left_m);
    }
    if (local_rule_e5_ && out_share > 0.0) {
        const Point reference = lie == Lie::out_of_bounds ? last_in_bounds : place;
        if (const std::optional<Drop> drop = local_rule_e5_drop(ground_, reference, 3)) {
            cost += out_share * drop->cost;
            replay = 0.0;
        }
    }
    cell.cost = static_cast<float>(cost);
    cell.replay = static_cast<float>(replay);
    return cell;
}

void TeeFan::extend_ray(Ray& ray, Point direction, int rows) const {
    const int made = static_cast<int>(ray.cells.size());
    ray.cells.resize(static_cast<std::size_t>(rows));
    // A penalty area that the old end cut short goes on.
    if (!ray.penalty_runs.empty() && ray.penalty_runs.back().to == made) ray.penalty_runs.pop_back();
    const std::size_t settled_runs = ray.penalty_runs.size();
    if (made == 0) ray.last_in_bounds = tee_;
    const auto end_run = [&](int row) {
        if (is_penalty_area(ray.run_lie)) ray.penalty_runs.push_back(penalty_run(ray, row, direction));
    };
    for (int row = made; row < rows; ++row) {
        const Point place = place_on(ray, row, direction);
        const Lie lie = ground_.lies.at(place);
        if (lie != ray.run_lie) {
            end_run(row);
            ray.run_start = row;
            ray.run_lie = lie;
        }
        ray.cells[static_cast<std::size_t>(row)] = is_penalty_area(lie)
                                                       ? Cell{0.0F, 0.0F, 0.0F, 0, no_woods, lie}
                                                       : ball_at_rest(place, ray.last_in_bounds, lie);
        const auto here = static_cast<std::uint16_t>(row);
        if (lie == Lie::trees && ray.first_woods == no_woods) ray.first_woods = here;
        ray.cells[static_cast<std::size_t>(row)].woods =
            lie == Lie::trees ? here
            : row > 0         ? ray.cells[static_cast<std::size_t>(row - 1)].woods
                              : no_woods;
        if (lie != Lie::out_of_bounds) ray.last_in_bounds = place;
    }
    end_run(rows);
    int stop = rows - 1;
    for (int row = rows - 1; row >= 0; --row) {
        Cell& cell = ray.cells[static_cast<std::size_t>(row)];
        if (stops_a_ball(cell.lie)) stop = row;
        cell.stop = static_cast<std::uint16_t>(stop);
    }
    for (std::size_t run = settled_runs; run < ray.penalty_runs.size(); ++run)
        apply(ray.penalty_runs[run], ray);
}

TeeFan::PenaltyRun TeeFan::penalty_run(const Ray& ray, int to, Point direction) const {
    const double from_m = std::max(0.0, (ray.run_start - double{ray.phase}) * row_step_);
    const Point crossing = tee_ + from_m * direction;
    return {ray.run_start, to, penalty_area_relief(ground_, ray.run_lie, crossing, 2)};
}

bool TeeFan::apply(const PenaltyRun& run, Ray& ray) const {
    const bool back_to_tee = !run.drop || run.drop->cost > replay_cost_;
    const float cost = back_to_tee ? 0.0F : static_cast<float>(run.drop->cost);
    const float replay = back_to_tee ? 1.0F : 0.0F;
    bool changed = false;
    for (int row = run.from; row < run.to; ++row) {
        Cell& cell = ray.cells[static_cast<std::size_t>(row)];
        changed = changed || cell.replay != replay;
        cell.cost = cost;
        cell.replay = replay;
    }
    return changed;
}

const TeeFan::PenaltyRun& TeeFan::run_of(const Ray& ray, int row) {
    return *std::ranges::find_if(ray.penalty_runs,
                                 [&](const PenaltyRun& r) { return row >= r.from && row < r.to; });
}

bool TeeFan::settle(double replay_cost) {
    replay_cost_ = replay_cost;
    bool changed = false;
    for (Ray& ray : fan_)
        for (const PenaltyRun& run : ray.penalty_runs)
            changed = apply(run, ray) || changed;
    return changed;
}

template <class Visit>
void TeeFan::follow(const Ray& ray, const FanShots& shots, const FanShots::Shot& shot, Visit&& visit) const {
    const auto landing = static_cast<std::size_t>(landing_row(ray, shot));
    follow(ray, shots, shot, ray.cells[landing].lie, std::forward<Visit>(visit));
}

template <class Visit>
void TeeFan::follow(const Ray& ray, const FanShots& shots, const FanShots::Shot& shot, Lie landed_on,
                    Visit&& visit) const {
    const int landing = landing_row(ray, shot);
    const Cell& landed = ray.cells[static_cast<std::size_t>(landing)];
    float flying = 1.0F;
    if (landed.woods != no_woods) {
        const double carry = double{shot.row} * row_step_;
        const double reach = clearance_.low_reach_m(carry);
        const auto stop = [&](int woods) {
            const double woods_at = std::min(woods * row_step_, carry);
            if (woods_at > reach && woods_at < carry - reach) return;
            const float stopped = flying * static_cast<float>(clearance_.stopped_share(woods_at, carry));
            flying -= stopped;
            if (stopped > 0.0F) visit(woods, stopped);
        };
        if (ray.first_woods < landing && ray.first_woods * row_step_ <= reach) stop(ray.first_woods);
        if (landed_on != Lie::trees && carry - landed.woods * row_step_ <= reach) stop(landed.woods);
    }
    const int rolled = static_cast<int>(shot.row + ray.phase + shots.run_rows[index_of(landed_on)]);
    visit(std::min(rolled, int{landed.stop}), flying);
}

Outcome TeeFan::outcome(const FanShots& shots, int aim_ray) {
    Outcome sum;
    for (const FanShots::OnRay& group : shots.rays) {
        const Ray& ray = ray_for(shots, group, aim_ray);
        for (std::uint32_t i = group.first; i < group.end; ++i) {
            const FanShots::Shot& shot = shots.shots[i];
            follow(ray, shots, shot, [&](int row, float share) {
                const Cell& cell = ray.cells[static_cast<std::size_t>(row)];
                const double weight = double{shot.weight} * double{share};
                sum.cost += weight * double{cell.cost};
                sum.replay += weight * double{cell.replay};
            });
        }
    }
    return sum;
}

MovingFairway::Turn TeeFan::turn_on(const Ray& ray, int row, Point direction,
                                    const MovingFairway& fairway) const {
    const Cell& cell = ray.cells[static_cast<std::size_t>(row)];
    if (!is_penalty_area(cell.lie)) return fairway.turn_at(place_on(ray, row, direction), cell.lie, 1);
    if (cell.replay > 0.0F) return {MovingFairway::never, 0.0F};
    const Drop& drop = *run_of(ray, row).drop;
    return fairway.turn_at(drop.place, drop.lie, 2);
}

Outcome TeeFan::outcome_with_edges_moved(const FanShots& shots, int aim_ray, const MovingFairway& fairway,
                                         float move_m) {
    constexpr float not_yet = std::numeric_limits<float>::quiet_NaN();
    Outcome sum;
    for (const FanShots::OnRay& group : shots.rays) {
        Ray& ray = ray_for(shots, group, aim_ray);
        if (ray.turns.size() < ray.cells.size()) ray.turns.resize(ray.cells.size(), {not_yet, 0.0F});
        const Point direction = along_bearing(bearing_of(aim_ray + group.ray));
        const auto turn_at = [&](int row) {
            MovingFairway::Turn& turn = ray.turns[static_cast<std::size_t>(row)];
            if (std::isnan(turn.at_m)) turn = turn_on(ray, row, direction, fairway);
            return turn;
        };
        for (std::uint32_t i = group.first; i < group.end; ++i) {
            const FanShots::Shot& shot = shots.shots[i];
            const int landing = landing_row(ray, shot);
            Lie landed_on = ray.cells[static_cast<std::size_t>(landing)].lie;
            if (!is_penalty_area(landed_on) && turn_at(landing).is_past(move_m))
                landed_on = landed_on == Lie::fairway ? Lie::rough : Lie::fairway;
            follow(ray, shots, shot, landed_on, [&](int row, float share) {
                const Cell& cell = ray.cells[static_cast<std::size_t>(row)];
                const double weight = double{shot.weight} * double{share};
                const MovingFairway::Turn turn = turn_at(row);
                sum.cost += weight * double{turn.is_past(move_m) ? turn.cost : cell.cost};
                // Nobody goes back to the tee from a place that turns.
                sum.replay += weight * double{cell.replay};
            });
        }
    }
    return sum;
}

Tally TeeFan::tally(const FanShots& shots, int aim_ray) {
    Tally tally;
    double in_play = 0.0;
    double leave = 0.0;
    double leave_squared = 0.0;
    double all = 0.0;
    for (const FanShots::OnRay& group : shots.rays) {
        const Ray& ray = ray_for(shots, group, aim_ray);
        for (std::uint32_t i = group.first; i < group.end; ++i) {
            const FanShots::Shot& shot = shots.shots[i];
            follow(ray, shots, shot, [&](int row, float share) {
                const Cell& cell = ray.cells[static_cast<std::size_t>(row)];
                const double weight = double{shot.weight} * double{share};
                all += weight;
                tally.lies[index_of(cell.lie)] += weight;
                if (!is_in_play(cell.lie)) return;
                const double left = cell.leave_m;
                in_play += weight;
                leave += weight * left;
                leave_squared += weight * left * left;
            });
        }
    }
    for (double& share : tally.lies)
        share /= all;
    tally.lost = trees_lost_share_ * tally.lies[index_of(Lie::trees)];
    if (in_play > 0.0) {
        tally.leave_mean_m = leave / in_play;
        tally.leave_sd_m =
            std::sqrt(std::max(0.0, leave_squared / in_play - tally.leave_mean_m * tally.leave_mean_m));
    }
    return tally;
}

std::vector<NextPlace> TeeFan::next_places(const FanShots& shots, int aim_ray) {
    std::vector<NextPlace> places;
    const auto add = [&](Point place, Lie lie, int used, double share) {
        if (share > 0.0) places.push_back({place, lie, used, share});
    };
    for (const FanShots::OnRay& group : shots.rays) {
        const Ray& ray = ray_for(shots, group, aim_ray);
        const Point direction = along_bearing(bearing_of(aim_ray + group.ray));
        const auto place_of = [&](int row) { return place_on(ray, row, direction); };
        const auto rest = [&](int row, double weight) {
            const Cell& cell = ray.cells[static_cast<std::size_t>(row)];
            const double replay = double{cell.replay};
            add(tee_, Lie::teeing_area, 2, weight * replay);
            if (is_penalty_area(cell.lie)) {
                if (replay < 1.0) {
                    const Drop& drop = *run_of(ray, row).drop;
                    add(drop.place, drop.lie, 2, weight);
                }
                return;
            }
            const double out = cell.lie == Lie::out_of_bounds ? 1.0
                               : cell.lie == Lie::trees       ? trees_lost_share_
                                                              : 0.0;
            add(place_of(row), cell.lie, 1, weight * (1.0 - out));
            if (out == replay) return;
            // Model Local Rule E-5 took the place of stroke and distance.
            int inside = row;
            while (cell.lie == Lie::out_of_bounds && inside > 0 &&
                   ray.cells[static_cast<std::size_t>(inside)].lie == Lie::out_of_bounds)
                --inside;
            if (const auto drop = local_rule_e5_drop(ground_, place_of(inside), 3))
                add(drop->place, drop->lie, 3, weight * out);
        };
        for (std::uint32_t i = group.first; i < group.end; ++i)
            follow(ray, shots, shots.shots[i],
                   [&](int row, float share) { rest(row, double{shots.shots[i].weight} * double{share}); });
    }
    return places;
}

}  // namespace landwidth
