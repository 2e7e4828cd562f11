#include "golfer-profiles/logs/course_positions.hpp"

#include <fmt/format.h>

#include <cmath>
#include <string_view>

#include "geometry/error.hpp"

namespace landwidth {
namespace {

// No golf shot and no aim goes further; anything beyond is a slip.
constexpr double furthest_m = 700.0;
// Closer to the start than this a target gives no direction.
constexpr double nearest_target_m = 5.0;

bool is_on_earth(LonLat place) {
    return std::abs(place.lat_deg) <= 90.0 && std::abs(place.lon_deg) <= 180.0;
}

LonLat swapped(LonLat place) {
    return {place.lat_deg, place.lon_deg};
}

void check_on_earth(LonLat position, std::string_view name, const std::string& place) {
    if (is_on_earth(position)) return;
    const bool fits_swapped = is_on_earth(swapped(position));
    throw InputError(
        place, fmt::format("{} at longitude {}, latitude {} is not on earth{}", name, position.lon_deg,
                           position.lat_deg, fits_swapped ? "; are longitude and latitude swapped?" : ""));
}

void check_near(LonLat start, LonLat other, std::string_view name, const std::string& place) {
    const double distance = geodesic_distance(start, other);
    if (distance <= furthest_m) return;
    const bool fits_swapped =
        is_on_earth(swapped(other)) && geodesic_distance(start, swapped(other)) <= furthest_m;
    throw InputError(place,
                     fmt::format("{} is {:.0f} m from the start, further than any shot{}", name, distance,
                                 fits_swapped ? "; are longitude and latitude swapped in one of them?"
                                              : "; is a digit wrong?"));
}

}  // namespace

ShotOffset offset_at_rest(const ShotPositions& positions, const std::string& place) {
    check_on_earth(positions.start, "the start", place);
    check_on_earth(positions.finish, "the finish", place);
    check_on_earth(positions.target, "the target", place);
    check_near(positions.start, positions.target, "the target", place);
    check_near(positions.start, positions.finish, "the finish", place);
    const PlaneFrame frame(positions.start);
    const Point target = frame.to_plane(positions.target);
    const Point finish = frame.to_plane(positions.finish);
    if (length(target) < nearest_target_m) {
        throw InputError(place,
                         "the target is where the shot started; a target ahead is needed to tell sides");
    }
    const Point ahead = unit(target);
    return {dot(finish, ahead), dot(finish, to_the_right(ahead))};
}

}  // namespace landwidth
