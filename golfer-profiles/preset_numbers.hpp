// The numbers the presets are made of, each with its source or the word assumption. Yards and degrees, as
// they are published. Not for use outside of this room.
#pragma once

#include <span>
#include <string_view>

#include "golfer-profiles/presets.hpp"
#include "golfer-profiles/profile.hpp"

namespace landwidth {

inline constexpr double lowest_index = -10,
                        highest_index = 54;  // Rules of Handicapping; plus side: assumption
inline constexpr double shortest_drive_yd = 80, longest_drive_yd = 380;  // assumption: any golfer

// The handicap indexes of the standard golfers. Bogey man 20 and bogey woman 24: Rules of Handicapping,
// definition of a bogey golfer, from memory. Tour: assumption.
inline constexpr double tour_index = -5, scratch_index = 0, bogey_man_index = 20, bogey_woman_index = 24;

// How far the two longest clubs of a golfer go.
struct Reach {
    double driver_carry_yd, driver_run_yd;
    double second_carry_yd, second_run_yd;  // the fairway wood of the second shot
    double driver_total_yd() const { return driver_carry_yd + driver_run_yd; }
};

// The published standard golfers, shortest drive first; for men the tour player as well.
std::span<const Reach> standard_reaches(Reference reference);

// A golfer with this drive: shares of the drive interpolated between the standard golfers, those of the
// nearest beyond them. Exactly the standard golfer at a standard drive.
Reach reach_for_drive(Reference reference, double drive_total_yd);

// The published mean total of a drive for a handicap, interpolated at the centres of the bands and held
// constant beyond the outer ones.
double mean_drive_yd(Reference reference, double handicap_index);

// How a golfer of a handicap scatters shots.
struct Scatter {
    double direction_sd_deg;  // of all tee shots with a driver, mishits among them
    double carry_sd_share;    // of the carry, usual shots
    double tail_dof;
    double mishit_share;
    double correlation;  // of a right-hander: what goes right goes short
};
Scatter scatter_for(double handicap_index);

// A mishit, as shares of the usual shot of the same club. Assumptions.
inline constexpr double mishit_carry_share = 0.60;
inline constexpr double mishit_carry_sd_share = 0.12;  // of the usual carry
inline constexpr double mishit_direction_ratio = 1.5;  // of its direction sd to the usual shot's

// A place in the bag.
struct BagSlot {
    std::string_view name;
    ClubKind kind;
    double carry_share;      // of the second club's carry; 0 for driver, mini-driver and putter
    double direction_share;  // of the driver's direction sd
    double length_in, loft_deg;
};

// 14 clubs: a bag with long irons for a handicap under 10, one with fairway woods and hybrids for the others.
std::span<const BagSlot> bag_for(double handicap_index);

// Clubs that no preset bag has, by name, in no bag's order.
std::span<const BagSlot> spare_clubs();

// Women's clubs are shorter by this. Common practice, no source.
inline constexpr double womens_length_step_in = 1.0;

}  // namespace landwidth
