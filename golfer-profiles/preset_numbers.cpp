#include "golfer-profiles/preset_numbers.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace landwidth {
namespace {

struct Node {
    double x, y;
};

// Linear between nodes of rising x, constant beyond them.
double interpolated(std::span<const Node> nodes, double x) {
    const auto upper = std::find_if(nodes.begin(), nodes.end(), [&](const Node& n) { return n.x > x; });
    if (upper == nodes.begin()) return upper->y;
    const Node& a = *(upper - 1);
    if (upper == nodes.end()) return a.y;
    return a.y + (upper->y - a.y) * ((x - a.x) / (upper->x - a.x));
}

// USGA Course Rating System guide: bogey man 200 yd off the tee (180 carry, 20 run) and 170 yd (150, 20) for
// the second shot, scratch man 250 (225, 25) and 220 (200, 20). Tour: carry 275 yd as published for tour
// players; 20 yd run, and a second club in the scratch man's proportion, are assumptions.
constexpr std::array<Reach, 3> men{{{180, 20, 150, 20}, {225, 25, 200, 20}, {275, 20, 244, 20}}};

// The same guide: bogey woman 150 yd and 280 in two, scratch woman 210 and 400 in two. How these split into
// carry and run is an assumption: the men's shares (a ninth of the carry for the driver, 0.117 for the wood).
constexpr std::array<Reach, 2> women{{{135, 15, 116, 14}, {189, 21, 170, 20}}};

// R&A and USGA distance reports 2018-2020, mean total of a tee shot. Centres of the bands 5 or less (0 to 5),
// 6-12, 13-20, 21 or more (men) or 21-28 (women), 29 or more. Open bands: assumed 21-28 and 29-36.
constexpr std::array<Node, 4> mens_drives{{{2.5, 240}, {9, 220}, {16.5, 204}, {24.5, 187}}};
constexpr std::array<Node, 5> womens_drives{{{2.5, 196}, {9, 178}, {16.5, 153}, {24.5, 138}, {32.5, 118}}};

// M. Broadie, Every Shot Counts, 2014, from memory: direction off the tee, tour 3.4 deg, a 90-shooter 6.5
// deg. That a 90-shooter's handicap index is 15, the straight line through both, and its end at 10 deg are
// assumptions.
constexpr double tour_direction_sd_deg = 3.4;
constexpr double ninety_shooter_direction_sd_deg = 6.5;
constexpr double ninety_shooter_index = 15;
constexpr double widest_direction_sd_deg = 10;

// Common practice for lengths and lofts, no source. The carries are an assumption: equal gaps from the
// fairway wood down to a pitching wedge at 0.56 of its carry, as common practice spaces a bag; wedges below
// by 0.07. Irons fly straighter than a driver, by assumption: 0.95 of its direction sd for the wood, down to
// 0.65.
constexpr std::array<BagSlot, 14> long_irons{{
    {"driver", ClubKind::driver, 0, 1, 45, 10},
    {"3-wood", ClubKind::fairway_wood, 1, 0.95, 43, 15},
    {"3-hybrid", ClubKind::hybrid, 0.945, 0.91, 40.5, 19},
    {"4-iron", ClubKind::iron, 0.89, 0.875, 38.5, 22},
    {"5-iron", ClubKind::iron, 0.835, 0.84, 38, 25},
    {"6-iron", ClubKind::iron, 0.78, 0.80, 37.5, 28},
    {"7-iron", ClubKind::iron, 0.725, 0.76, 37, 32},
    {"8-iron", ClubKind::iron, 0.67, 0.725, 36.5, 36},
    {"9-iron", ClubKind::iron, 0.615, 0.69, 36, 41},
    {"pitching wedge", ClubKind::wedge, 0.56, 0.65, 35.75, 46},
    {"gap wedge", ClubKind::wedge, 0.49, 0.65, 35.5, 51},
    {"sand wedge", ClubKind::wedge, 0.42, 0.65, 35.25, 56},
    {"lob wedge", ClubKind::wedge, 0.35, 0.65, 35, 60},
    {"putter", ClubKind::putter, 0, 0, 34, 4},
}};

constexpr std::array<BagSlot, 14> woods_and_hybrids{{
    {"driver", ClubKind::driver, 0, 1, 45, 10.5},
    {"3-wood", ClubKind::fairway_wood, 1, 0.95, 43, 16},
    {"5-wood", ClubKind::fairway_wood, 0.945, 0.91, 42, 19},
    {"4-hybrid", ClubKind::hybrid, 0.89, 0.875, 40, 22},
    {"5-hybrid", ClubKind::hybrid, 0.835, 0.84, 39.5, 25},
    {"6-iron", ClubKind::iron, 0.78, 0.80, 37.5, 28},
    {"7-iron", ClubKind::iron, 0.725, 0.76, 37, 32},
    {"8-iron", ClubKind::iron, 0.67, 0.725, 36.5, 36},
    {"9-iron", ClubKind::iron, 0.615, 0.69, 36, 41},
    {"pitching wedge", ClubKind::wedge, 0.56, 0.65, 35.75, 46},
    {"gap wedge", ClubKind::wedge, 0.49, 0.65, 35.5, 51},
    {"sand wedge", ClubKind::wedge, 0.42, 0.65, 35.25, 56},
    {"lob wedge", ClubKind::wedge, 0.35, 0.65, 35, 60},
    {"putter", ClubKind::putter, 0, 0, 34, 4},
}};

// Shares that follow the gaps of the bags, assumptions as theirs. A mini-driver: straighter than the driver
// by a little more than half the way to the fairway wood. A driving iron: between a 3-hybrid and a 4-iron in
// carry, as straight as an iron of its length.
constexpr std::array<BagSlot, 9> spares{{
    {"mini-driver", ClubKind::mini_driver, 0, 0.97, 43.75, 12.5},
    {"4-wood", ClubKind::fairway_wood, 0.97, 0.93, 42.5, 17},
    {"7-wood", ClubKind::fairway_wood, 0.89, 0.875, 41.5, 21},
    {"9-wood", ClubKind::fairway_wood, 0.835, 0.84, 41, 24},
    {"2-hybrid", ClubKind::hybrid, 0.97, 0.93, 41, 17},
    {"6-hybrid", ClubKind::hybrid, 0.78, 0.80, 39, 28},
    {"driving iron", ClubKind::driving_iron, 0.93, 0.88, 40, 18},
    {"2-iron", ClubKind::iron, 0.97, 0.93, 39.5, 18},
    {"3-iron", ClubKind::iron, 0.945, 0.91, 39, 20},
}};

}  // namespace

std::span<const BagSlot> spare_clubs() {
    return spares;
}

std::span<const Reach> standard_reaches(Reference reference) {
    return reference == Reference::men ? std::span<const Reach>(men) : std::span<const Reach>(women);
}

Reach reach_for_drive(Reference reference, double drive_total_yd) {
    const auto share = [&](double Reach::*part) {
        std::array<Node, men.size()> nodes{};
        const std::span<const Reach> standards = standard_reaches(reference);
        for (std::size_t i = 0; i < standards.size(); ++i) {
            nodes[i] = {standards[i].driver_total_yd(), standards[i].*part / standards[i].driver_total_yd()};
        }
        return drive_total_yd * interpolated(std::span(nodes).first(standards.size()), drive_total_yd);
    };
    const double carry = share(&Reach::driver_carry_yd);
    return {carry, drive_total_yd - carry, share(&Reach::second_carry_yd), share(&Reach::second_run_yd)};
}

double mean_drive_yd(Reference reference, double handicap_index) {
    return reference == Reference::men ? interpolated(mens_drives, handicap_index)
                                       : interpolated(womens_drives, handicap_index);
}

Scatter scatter_for(double handicap_index) {
    const double from_tour = std::max(0.0, handicap_index - tour_index);
    const double direction_slope =
        (ninety_shooter_direction_sd_deg - tour_direction_sd_deg) / (ninety_shooter_index - tour_index);
    // All assumptions but the direction, growing with the handicap. Their form, a t for the usual shot and a
    // part of its own for mishits, follows S. Ko, thesis, Columbia 2012, and M. Broadie and S. Ko 2009. How
    // fast mishits grow is set so that rounds come near the course rating of standard golfers, and 20 yd of
    // length near its published worth to a high handicap; see tests/published/field_published.cpp.
    return {.direction_sd_deg =
                std::min(tour_direction_sd_deg + direction_slope * from_tour, widest_direction_sd_deg),
            .carry_sd_share = std::min(0.04 + 0.0015 * from_tour, 0.12),
            .tail_dof = std::max(11.0 - 0.2 * from_tour, 5.0),
            .mishit_share = std::min(0.02 + 0.002 * from_tour + 0.0003 * from_tour * from_tour, 0.40),
            .correlation = std::max(-0.01 * from_tour, -0.25)};
}

std::span<const BagSlot> bag_for(double handicap_index) {
    constexpr double plays_long_irons_below = 10;
    return handicap_index < plays_long_irons_below ? std::span<const BagSlot>(long_irons)
                                                   : std::span<const BagSlot>(woods_and_hybrids);
}

}  // namespace landwidth
