// The balls of a tee fan in the air: where a flight comes down over the hole, and what stands on its way.
#include <algorithm>
#include <cmath>

#include "planner/engine/tee_fan.hpp"

namespace landwidth {

namespace {

// Tops of canopies count as one where they differ by less.
constexpr float same_height_m = 1.0F;
// Trees that a map draws over the tee, or right before it, stand beside it.
constexpr double tee_is_clear_m = 5.0;

}  // namespace

TeeFan::Air TeeFan::air_around(const FanShots& shots, int ray) const {
    Air air{};
    air.differs = shots.flight && shots.flight->differs();
    if (!air.differs) return air;
    if (shots.other_wind)
        air.wind = WindAngle::of(shots.other_wind->to - bearing_of(ray), shots.other_wind->strength);
    else if (day_.wind_to)
        air.wind = WindAngle::of(*day_.wind_to - bearing_of(ray));
    air.curl = double{shots.flight->curl(air.wind)};
    for (std::size_t s = 0; s < surface_count; ++s)
        air.more_run[s] = shots.flight->more_run(shots.usual_carry_m, static_cast<Surface>(s), air.wind) /
                          static_cast<float>(row_step_);
    return air;
}

TeeFan::FlightOverHole& TeeFan::over_hole(const FanShots& shots) {
    const auto known = std::ranges::find(flights_, shots.flight, &FlightOverHole::flight);
    if (known != flights_.end()) return *known;
    flights_.push_back({shots.flight, std::vector<std::vector<Knot>>(static_cast<std::size_t>(rays_))});
    return flights_.back();
}

// The wind takes the ball off its ray; ground higher or lower than the tee then catches it sooner or later on
// the last part of its flight.
TeeFan::Knot TeeFan::knot_at(const FanShots& shots, int ray, float row, const Air& air, float gust) {
    const auto step = static_cast<float>(row_step_);
    const DayFlight::Landing landing = shots.flight->landing(row * step, gust);
    Knot knot{0.0F, row, row};
    if (air.differs) {
        const float along = std::max(row * step + landing.shift.along(air.wind), 0.0F);
        const float right = landing.shift.right(air.wind);
        knot.turn = std::atan2(right, std::max(along, step)) / static_cast<float>(angle_step_);
        knot.flat_row = std::sqrt(along * along + right * right) / step;
        knot.row = knot.flat_row;
    }
    if (day_.heights == nullptr) return knot;
    // Towards ground that rises less steeply than the ball falls every look comes several times nearer.
    constexpr int looks = 3;
    const float fall = landing.fall(air.wind) / step;
    for (int look = 0; look < looks; ++look) {
        const Ray& under = ray_with(ray + nearest_whole(double{knot.turn}), knot.row);
        knot.row = std::max(0.0F, knot.flat_row - over_tee_m(under, row_index(under, knot.row)) * fall);
    }
    return knot;
}

const std::vector<TeeFan::Knot>& TeeFan::knots_for(const FanShots& shots, FlightOverHole& over, int ray,
                                                   const Air& air, float furthest_row) {
    std::vector<Knot>& knots = over.rays[ray_slot(ray)];
    const auto needed =
        static_cast<std::size_t>(std::min(furthest_row, static_cast<float>(most_rows_))) / rows_per_knot + 2;
    while (knots.size() < needed)
        knots.push_back(knot_at(shots, ray, static_cast<float>(knots.size() * rows_per_knot), air, 1.0F));
    return knots;
}

TeeFan::Flying TeeFan::flown_alone(const FanShots& shots, int ray, std::uint32_t index, float off_aim,
                                   const Air& air) {
    const float row = shots.shots[index].row;
    const Knot knot = knot_at(shots, ray, row, air, gust_factor(shots.wind, index));
    const double turn = double{knot.turn} + double{off_aim} * air.curl;
    return {ray + nearest_whole(turn), knot.flat_row, knot.row, row * static_cast<float>(row_step_)};
}

void TeeFan::add_canopy(Ray& ray, int row, Point place) const {
    const double stands_m = canopy_m(day_, ground_.lies, place, ray.run_lie);
    if (!(stands_m > 0.0)) return;
    const float top = static_cast<float>(stands_m) + (ray.posts.empty() ? 0.0F : over_tee_m(ray, row));
    if (!ray.canopies.empty() && ray.canopies.back().to == row &&
        std::abs(ray.canopies.back().top_m - top) < same_height_m) {
        ray.canopies.back().to = row + 1;
        return;
    }
    ray.canopies.push_back({row, row + 1, top});
}

std::optional<int> TeeFan::met_canopy(const Ray& ray, const DayFlight& flight, const Flying& ball,
                                      const WindAngle& wind) const {
    const float lands_m = ball.flat_row * static_cast<float>(row_step_);
    const int landing = row_index(ray, ball.row);
    const auto height = [&](int row) {
        const float at_m = (static_cast<float>(row) - ray.phase) * static_cast<float>(row_step_);
        return flight.height(std::max(at_m, 0.0F), ball.carry_m, lands_m, wind);
    };
    const int clear_of_tee = static_cast<int>(tee_is_clear_m / row_step_);
    for (const Canopy& canopy : ray.canopies) {
        if (canopy.from > landing) break;
        if (canopy.from < clear_of_tee) continue;
        if (height(canopy.from) < canopy.top_m) return canopy.from;
        // Over its near edge: from there on the ball only meets it on the way down.
        int over = canopy.from;
        int under = std::min(canopy.to - 1, landing);
        if (height(under) >= canopy.top_m) continue;
        while (under - over > 1) {
            const int middle = (over + under) / 2;
            (height(middle) >= canopy.top_m ? over : under) = middle;
        }
        return under;
    }
    return std::nullopt;
}

}  // namespace landwidth
