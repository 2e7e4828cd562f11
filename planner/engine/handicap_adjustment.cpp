#include "planner/engine/handicap_adjustment.hpp"

#include <algorithm>
#include <cmath>

namespace landwidth {

HandicapAdjustment::HandicapAdjustment(const Golfer& golfer, const EngineAssumptions& a) {
    const double tour = a.tour_handicap;
    const auto beyond_tour = [&](double handicap) { return (handicap - tour) / a.bogey_handicap; };
    const double short_game = handicap_of(golfer.short_game, golfer.handicap_index, tour);
    const double putting = handicap_of(golfer.putting, golfer.handicap_index, tour);
    around_green_ = beyond_tour(short_game) * a.short_game_strokes;
    reach_m_ = a.short_game_reach_m;
    per_m_ = beyond_tour(golfer.handicap_index) * a.long_game_strokes_per_m;
    stretch_ = std::max(0.5, 1.0 + (a.putting_stretch_at_18 - 1.0) * (putting - tour) / (18.0 - tour));
}

double HandicapAdjustment::extra_strokes(double distance_m) const {
    return around_green_ * -std::expm1(-distance_m / reach_m_) + per_m_ * distance_m;
}

double HandicapAdjustment::worth_putt_m(double distance_m) const {
    return stretch_ * distance_m;
}

}  // namespace landwidth
