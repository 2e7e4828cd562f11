#include "planner/engine/day/bag_flights.hpp"

#include <tbb/parallel_for.h>

#include <optional>

namespace landwidth {

BagFlights::BagFlights(const Golfer& golfer, const Conditions& day, const EngineAssumptions& assumptions)
    : day_(day), full_(golfer.clubs.size()), punch_(golfer.clubs.size()), trial_(golfer.clubs.size()) {
    Conditions windy = day;
    windy.wind = Wind{trial_wind_mps, Bearing{}};
    std::vector<std::optional<std::string>> doubts(golfer.clubs.size());
    tbb::parallel_for(std::size_t{0}, golfer.clubs.size(), [&](std::size_t i) {
        const Club& club = golfer.clubs[i];
        if (!club.pattern) return;
        const ClubFlight flight(club);
        const double run_m = club.pattern->run_m;
        full_[i] = std::make_shared<const DayFlight>(flight, day_, run_m, assumptions.curve_share);
        punch_[i] = std::make_shared<const DayFlight>(
            flight.punch(), day_, assumptions.recovery_run * flight.carry_m(), assumptions.curve_share);
        if (!day_.wind)
            trial_[i] = std::make_shared<const DayFlight>(flight, windy, run_m, assumptions.curve_share);
        doubts[i] = flight.doubt();
    });
    for (const std::optional<std::string>& doubt : doubts)
        if (doubt) doubts_.push_back(*doubt);
}

BagFlights BagFlights::with_wind_from(Bearing from) const {
    BagFlights turned = *this;
    if (turned.day_.wind) turned.day_.wind->from = from;
    return turned;
}

}  // namespace landwidth
