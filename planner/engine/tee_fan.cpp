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

Surface surface_of(Lie lie) {
    if (lie == Lie::green) return Surface::green;
    return lie == Lie::fairway || lie == Lie::teeing_area ? Surface::mown : Surface::rough;
}

bool stops_a_ball(Lie lie) {
    return lie == Lie::bunker || is_penalty_area(lie);
}

}  // namespace

FanShots fan_shots(const ShotPattern& pattern, int log2_points, std::uint64_t replicate,
                   const EngineAssumptions& assumptions, std::shared_ptr<const DayFlight> flight,
                   const std::optional<Wind>& wind) {
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
    for (const Lie lie : all_lies) {
        result.run_rows[index_of(lie)] = static_cast<float>(run * run_share(lie, assumptions));
        result.run_shares[index_of(lie)] = static_cast<float>(run_share(lie, assumptions));
    }
    result.longest_run_rows = std::ranges::max(result.run_rows);
    result.usual_carry_m = static_cast<float>(pattern.usual.centre.carry_m);
    result.flight = std::move(flight);
    result.wind = wind;
    result.other_wind = {};
    return result;
}

TeeFan::TeeFan(const ReliefGround& ground, const HoleDay& day, Point tee, double forward, double replay_cost,
               bool local_rule_e5, const EngineAssumptions& assumptions)
    : ground_(ground),
      day_(day),
      tee_height_m_(day.heights != nullptr ? static_cast<float>(day.heights->at(tee)) : 0.0F),
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

void TeeFan::lengthen(Ray& ray, int slot, int number, int needed) const {
    if (ray.cells.empty()) ray.phase = phase_of(std::min(slot, rays_ - slot));
    const int rounded_up = (needed + rows_at_a_time - 1) / rows_at_a_time * rows_at_a_time;
    extend_ray(ray, along_bearing(bearing_of(number)), std::min(rounded_up, most_rows_));
}

TeeFan::Cell TeeFan::ball_at_rest(Point place, Point last_in_bounds, Lie lie) const {
    Cell cell{0.0F, 0.0F, 0.0F, 0, lie};
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
                                                       ? Cell{0.0F, 0.0F, 0.0F, 0, lie}
                                                       : ball_at_rest(place, ray.last_in_bounds, lie);
        if (day_.heights != nullptr && row % rows_per_post == 0) {
            const Point middle = place + 0.5 * (rows_per_post - 1) * row_step_ * direction;
            const Point rise = day_.heights->gradient(middle);
            ray.posts.push_back({static_cast<float>(day_.heights->at(middle)) - tee_height_m_,
                                 static_cast<float>(dot(rise, direction)),
                                 static_cast<float>(dot(rise, to_the_right(direction)))});
        }
        if (day_.canopy != nullptr) add_canopy(ray, row, place);
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

TeeFan::Flying TeeFan::flown(const std::vector<Knot>& knots, int ray, float row, float off_aim,
                             const Air& air) const {
    const float at = row / rows_per_knot;
    const std::size_t before = std::min(static_cast<std::size_t>(at), knots.size() - 2);
    const float share = at - static_cast<float>(before);
    const Knot& a = knots[before];
    const Knot& b = knots[before + 1];
    const float turn = a.turn + share * (b.turn - a.turn) + off_aim * static_cast<float>(air.curl);
    return {ray + nearest_whole(double{turn}), a.flat_row + share * (b.flat_row - a.flat_row),
            a.row + share * (b.row - a.row), row * static_cast<float>(row_step_)};
}

template <class LieOf>
TeeFan::Rest TeeFan::rest_of(const FanShots& shots, const Ray& ray, const Flying& ball, const Air& air,
                             const LieOf& lie_of) {
    const int landing = row_index(ray, ball.row);
    if (shots.flight && !ray.canopies.empty() && ray.canopies.front().from <= landing)
        if (const std::optional<int> met = met_canopy(ray, *shots.flight, ball, air.wind))
            return {&ray, ball.ray, *met, true};
    const Lie lie = lie_of(ray, ball.ray, landing);
    const float level_run = shots.run_rows[index_of(lie)];
    const float share = shots.run_shares[index_of(lie)];
    float run = level_run;
    float aside = 0.0F;
    if (air.differs) run += share * air.more_run[static_cast<std::size_t>(surface_of(lie))];
    if (shots.flight && share > 0.0F && !ray.posts.empty()) {
        const Post& post = post_of(ray, landing);
        const auto step = static_cast<float>(row_step_);
        run = std::max(0.0F, run + share * shots.flight->more_run_on_slope(post.rise) / step);
        // A ball drifts in proportion to how far it runs.
        if (level_run > 0.0F)
            aside = share * post.lean * shots.flight->sideways_per_slope() / step * run / level_run;
    }
    run = std::max(0.0F, run);
    if (run > shots.longest_run_rows) ray_with(ball.ray, ball.row + run);
    const int rolled = static_cast<int>(ball.row + ray.phase + run);
    const int row = std::min(rolled, int{ray.cells[static_cast<std::size_t>(landing)].stop});
    if (aside == 0.0F || row < rolled) return {&ray, ball.ray, row, false};
    const int turn = nearest_whole(double{aside / (ball.row + run + 1.0F)} / angle_step_);
    if (turn == 0) return {&ray, ball.ray, row, false};
    const Ray& beside = ray_with(ball.ray + turn, ball.row + run);
    return {&beside, ball.ray + turn, row_index(beside, ball.row + run), false};
}

template <class Visit>
void TeeFan::for_each_landing(const FanShots& shots, int aim_ray, Visit&& visit) {
    const bool as_in_pattern = !shots.flight || (!shots.flight->differs() && day_.heights == nullptr);
    const bool one_by_one = (shots.wind && shots.wind->gusts_mps) || shots.other_wind;
    FlightOverHole* const over = as_in_pattern || one_by_one ? nullptr : &over_hole(shots);
    const auto step = static_cast<float>(row_step_);
    for (const FanShots::OnRay& group : shots.rays) {
        const int number = aim_ray + group.ray;
        const auto off_aim = static_cast<float>(group.ray);
        const Air air = air_around(shots, number);
        // The shots of a group are in order of distance: the last may run furthest.
        const float furthest = shots.shots[group.end - 1].row;
        const Ray* ray = as_in_pattern ? &ray_with(number, furthest + shots.longest_run_rows) : nullptr;
        const std::vector<Knot>* const knots =
            over != nullptr ? &knots_for(shots, *over, number, air, furthest) : nullptr;
        for (std::uint32_t i = group.first; i < group.end; ++i) {
            const float row = shots.shots[i].row;
            Flying ball{number, row, row, row * step};
            if (!as_in_pattern) {
                ball = knots != nullptr ? flown(*knots, number, row, off_aim, air)
                                        : flown_alone(shots, number, i, off_aim, air);
                ray = &ray_with(ball.ray, ball.row + shots.longest_run_rows);
            }
            visit(shots.shots[i], ball, *ray, air);
        }
    }
}

template <class LieOf, class Visit>
void TeeFan::for_each_ball(const FanShots& shots, int aim_ray, const LieOf& lie_of, Visit&& visit) {
    for_each_landing(shots, aim_ray,
                     [&](const FanShots::Shot& shot, const Flying& ball, const Ray& ray, const Air& air) {
                         visit(shot, rest_of(shots, ray, ball, air, lie_of));
                     });
}

std::vector<TeeFan::Landing> TeeFan::landings(const FanShots& shots, int aim_ray) {
    std::vector<Landing> places;
    for_each_landing(
        shots, aim_ray, [&](const FanShots::Shot& shot, const Flying& ball, const Ray&, const Air&) {
            const Point direction = along_bearing(bearing_of(ball.ray));
            places.push_back({tee_ + double{ball.row} * row_step_ * direction, double{shot.weight}});
        });
    return places;
}

template <class Visit>
void TeeFan::for_each_ball(const FanShots& shots, int aim_ray, Visit&& visit) {
    for_each_ball(
        shots, aim_ray,
        [](const Ray& ray, int, int row) { return ray.cells[static_cast<std::size_t>(row)].lie; },
        std::forward<Visit>(visit));
}

Outcome TeeFan::outcome(const FanShots& shots, int aim_ray) {
    Outcome sum;
    for_each_ball(shots, aim_ray, [&](const FanShots::Shot& shot, const Rest& rest) {
        const Cell& cell = rest.ray->cells[static_cast<std::size_t>(rest.row)];
        sum.cost += double{shot.weight} * double{cell.cost};
        sum.replay += double{shot.weight} * double{cell.replay};
    });
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
    const auto turn_at = [&](int number, int row) {
        Ray& ray = fan_[ray_slot(number)];
        if (ray.turns.size() < ray.cells.size()) ray.turns.resize(ray.cells.size(), {not_yet, 0.0F});
        MovingFairway::Turn& turn = ray.turns[static_cast<std::size_t>(row)];
        if (std::isnan(turn.at_m)) turn = turn_on(ray, row, along_bearing(bearing_of(number)), fairway);
        return turn;
    };
    const auto lie_of = [&](const Ray& ray, int number, int row) {
        const Lie lie = ray.cells[static_cast<std::size_t>(row)].lie;
        if (is_penalty_area(lie) || !turn_at(number, row).is_past(move_m)) return lie;
        return lie == Lie::fairway ? Lie::rough : Lie::fairway;
    };
    for_each_ball(shots, aim_ray, lie_of, [&](const FanShots::Shot& shot, const Rest& rest) {
        const Cell& cell = rest.ray->cells[static_cast<std::size_t>(rest.row)];
        const MovingFairway::Turn turn = turn_at(rest.number, rest.row);
        sum.cost += double{shot.weight} * double{turn.is_past(move_m) ? turn.cost : cell.cost};
        // Nobody goes back to the tee from a place that turns.
        sum.replay += double{shot.weight} * double{cell.replay};
    });
    return sum;
}

Tally TeeFan::tally(const FanShots& shots, int aim_ray) {
    Tally tally;
    double in_play = 0.0;
    double leave = 0.0;
    double leave_squared = 0.0;
    double all = 0.0;
    for_each_ball(shots, aim_ray, [&](const FanShots::Shot& shot, const Rest& rest) {
        const Cell& cell = rest.ray->cells[static_cast<std::size_t>(rest.row)];
        const double weight = double{shot.weight};
        all += weight;
        tally.lies[index_of(cell.lie)] += weight;
        if (rest.stopped) tally.stopped += weight;
        if (!is_in_play(cell.lie)) return;
        const double left = cell.leave_m;
        in_play += weight;
        leave += weight * left;
        leave_squared += weight * left * left;
    });
    tally.stopped /= all;
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
    for_each_ball(shots, aim_ray, [&](const FanShots::Shot& shot, const Rest& rest) {
        const Ray& ray = *rest.ray;
        const Point direction = along_bearing(bearing_of(rest.number));
        const Cell& cell = ray.cells[static_cast<std::size_t>(rest.row)];
        const double weight = double{shot.weight};
        const double replay = double{cell.replay};
        add(tee_, Lie::teeing_area, 2, weight * replay);
        if (is_penalty_area(cell.lie)) {
            if (replay < 1.0) {
                const Drop& drop = *run_of(ray, rest.row).drop;
                add(drop.place, drop.lie, 2, weight);
            }
            return;
        }
        const double out = cell.lie == Lie::out_of_bounds ? 1.0
                           : cell.lie == Lie::trees       ? trees_lost_share_
                                                          : 0.0;
        add(place_on(ray, rest.row, direction), cell.lie, 1, weight * (1.0 - out));
        if (out == replay) return;
        // Model Local Rule E-5 took the place of stroke and distance.
        int inside = rest.row;
        while (cell.lie == Lie::out_of_bounds && inside > 0 &&
               ray.cells[static_cast<std::size_t>(inside)].lie == Lie::out_of_bounds)
            --inside;
        if (const auto drop = local_rule_e5_drop(ground_, place_on(ray, inside, direction), 3))
            add(drop->place, drop->lie, 3, weight * out);
    });
    return places;
}

}  // namespace landwidth
