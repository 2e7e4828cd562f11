// The flights of a whole bag on the day. Made once for a golfer, used on every hole.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "golfer-profiles/profile.hpp"
#include "planner/engine/day/day_flight.hpp"
#include "planner/engine/engine_assumptions.hpp"

namespace landwidth {

class BagFlights {
  public:
    // Of every club with a pattern, those on trial included.
    BagFlights(const Golfer& golfer, const Conditions& day, const EngineAssumptions& assumptions);

    const Conditions& day() const { return day_; }
    // The same with the wind, where there is one, from elsewhere: balls fly as they do.
    BagFlights with_wind_from(Bearing from) const;
    // `club`: number in the profile, of a club with a pattern.
    const std::shared_ptr<const DayFlight>& full(std::size_t club) const { return full_[club]; }
    const std::shared_ptr<const DayFlight>& punch(std::size_t club) const { return punch_[club]; }
    // On a day without wind: the full flight in a wind of trial_wind_mps, to ask what a wind would change.
    static constexpr double trial_wind_mps = 15.0 * metres_per_second_per_mph;
    const std::shared_ptr<const DayFlight>& in_trial_wind(std::size_t club) const { return trial_[club]; }
    // What is odd about recorded launches, one sentence each.
    const std::vector<std::string>& doubts() const { return doubts_; }

  private:
    Conditions day_;
    std::vector<std::shared_ptr<const DayFlight>> full_, punch_, trial_;
    std::vector<std::string> doubts_;
};

}  // namespace landwidth
