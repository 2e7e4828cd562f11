#include "planner/engine/build_assumptions.hpp"

#include <fmt/format.h>

#include <array>

#include "geometry/error.hpp"
#include "geometry/units.hpp"
#include "planner/engine/named_constants.hpp"

namespace landwidth {
namespace {

constexpr ConstantUnit in{"in", metres_per_inch};
constexpr ConstantUnit share{"share", 1.0};
constexpr ConstantUnit ratio{"ratio", 1.0};
constexpr ConstantUnit points_per_in{"points/in", 1.0 / metres_per_inch};
constexpr ConstantUnit points_per_g{"points/g", 1.0 / kilograms_per_gram};
constexpr ConstantUnit mph_per_in{"mph/in", metres_per_second_per_mph / metres_per_inch};
constexpr ConstantUnit g{"g", kilograms_per_gram};
constexpr ConstantUnit deg_per_in{"deg/in", radians_per_degree / metres_per_inch};
constexpr ConstantUnit mph_per_g{"mph/g", metres_per_second_per_mph / kilograms_per_gram};
constexpr ConstantUnit yd_per_mph{"yd/mph", metres_per_yard / metres_per_second_per_mph};

constexpr std::string_view assumption = "assumption";
constexpr std::string_view practice = "common practice, no source";

// Assumptions, from the shape of usual heads. Seen from the front, with the shaft's line meeting the ground
// at the club's end under the lie angle, a head's middle of mass h above the sole and d square off that line
// lies h / sin(lie) - d / tan(lie) short of the end: a driver (58 deg, h 32 mm, d 40 mm) 13 mm, fairway woods
// and hybrids (57 deg, 22 and 33 mm) 5 mm, irons and wedges (63 deg, 20 and 36 mm) 4 mm. A putter's head
// hangs nearly below its shaft: half its height.
constexpr double head_centre_in(ClubKind kind) {
    switch (kind) {
        case ClubKind::driver:
            return 0.5;
        case ClubKind::mini_driver:
            return 0.4;
        case ClubKind::putter:
            return 0.5;
        default:
            return 0.2;
    }
}

using Constant = NamedConstant<BuildAssumptions>;

#define IN(name) [](BuildAssumptions& a) -> double& { return a.name; }

const std::array constants{
    // The default is a driver's; see head_centre_in.
    Constant{"head_centre", head_centre_in(ClubKind::driver), in, -1.0, 2.5, IN(head_centre_from_end_m),
             "how far short of the club's end the head balances, along the shaft; by kind of club",
             assumption},
    Constant{"shaft_balance", 0.5, share, 0.3, 0.7, IN(shaft_balance_share),
             "where a shaft balances, from the butt, of its length", assumption},
    Constant{"grip_balance", 4.0, in, 1.0, 10.0, IN(grip_balance_m), "where a grip balances, from the butt",
             assumption},
    Constant{"points_per_inch", 6.0, points_per_in, 0.0, 20.0, IN(thumb.points_per_m),
             "swing weight an inch of length adds: half an inch about 3 points", practice},
    Constant{"points_per_gram", 0.5, points_per_g, 0.0, 5.0, IN(thumb.points_per_kg),
             "swing weight a gram on the head adds: 2 g about 1 point", practice},
    Constant{"club_speed_low", 0.0, mph_per_in, 0.0, 5.0, IN(length.club_speed_per_length.low),
             "club speed an inch of length adds, low end; the trade says it of drivers", practice},
    Constant{"club_speed_high", 3.0, mph_per_in, 0.0, 5.0, IN(length.club_speed_per_length.high),
             "club speed an inch of length adds, high end; the trade says it of drivers", practice},
    Constant{"smash_wood_low", 1.40, ratio, 0.5, 1.6, IN(length.smash_wood.low),
             "ball speed over club speed, drivers, fairway woods and hybrids, low end", assumption},
    Constant{"smash_wood_high", 1.50, ratio, 0.5, 1.6, IN(length.smash_wood.high),
             "ball speed over club speed, drivers, fairway woods and hybrids, high end", assumption},
    Constant{"smash_iron_low", 1.25, ratio, 0.5, 1.6, IN(length.smash_iron.low),
             "ball speed over club speed, irons and driving irons, low end", assumption},
    Constant{"smash_iron_high", 1.45, ratio, 0.5, 1.6, IN(length.smash_iron.high),
             "ball speed over club speed, irons and driving irons, high end", assumption},
    Constant{"smash_wedge_low", 1.00, ratio, 0.5, 1.6, IN(length.smash_wedge.low),
             "ball speed over club speed, wedges, low end", assumption},
    Constant{"smash_wedge_high", 1.25, ratio, 0.5, 1.6, IN(length.smash_wedge.high),
             "ball speed over club speed, wedges, high end", assumption},
    Constant{"carry_low", 2.0, yd_per_mph, 0.0, 5.0, IN(length.carry_per_ball_speed.low),
             "carry a mph of ball speed adds, all else equal, low end", practice},
    Constant{"carry_high", 3.0, yd_per_mph, 0.0, 5.0, IN(length.carry_per_ball_speed.high),
             "carry a mph of ball speed adds, all else equal, high end", practice},
    Constant{"length_reach", 1.5, in, 0.1, 6.0, IN(length.reach_m),
             "the largest change of length that rules of thumb are meant for: about 1 to 1.5 in", practice},
    Constant{"lie_low", 1.5, deg_per_in, 0.0, 5.0, IN(lie_per_length.low),
             "how much flatter an inch less plays, low end: half an inch about 1 deg", practice},
    Constant{"lie_high", 2.5, deg_per_in, 0.0, 5.0, IN(lie_per_length.high),
             "how much flatter an inch less plays, high end: half an inch about 1 deg", practice},
    Constant{"head_speed_low", -0.2, mph_per_g, -1.0, 0.0, IN(head.club_speed_per_kg.low),
             "club speed a gram more on the head adds, low end", assumption},
    Constant{"head_speed_high", 0.1, mph_per_g, 0.0, 1.0, IN(head.club_speed_per_kg.high),
             "club speed a gram more on the head adds, high end", assumption},
    Constant{"head_reach", 15.0, g, 1.0, 50.0, IN(head.reach_kg),
             "the largest change of the head that its effect on club speed is told for", assumption},
};
#undef IN

auto constants_of(ClubKind kind) {
    auto of_kind = constants;
    of_kind.front().value = head_centre_in(kind);
    return of_kind;
}

void refuse_reversed(Range range, std::string_view name) {
    if (range.low > range.high)
        throw UsageError(fmt::format("--assume {0}_low lies above {0}_high; name both", name));
}

}  // namespace

BuildAssumptions default_build_assumptions(ClubKind kind) {
    return defaults_of<BuildAssumptions>(constants_of(kind));
}

std::vector<AssumptionEntry> list_build_assumptions(const BuildAssumptions& assumptions, ClubKind kind) {
    return entries_of<BuildAssumptions>(constants_of(kind), assumptions);
}

void override_build_assumptions(BuildAssumptions& assumptions, const std::vector<std::string>& texts) {
    for (const std::string& text : texts)
        override_constant<BuildAssumptions>(constants, assumptions, text, "build --format json");
    const LengthPractice& length = assumptions.length;
    refuse_reversed(length.club_speed_per_length, "club_speed");
    refuse_reversed(length.smash_wood, "smash_wood");
    refuse_reversed(length.smash_iron, "smash_iron");
    refuse_reversed(length.smash_wedge, "smash_wedge");
    refuse_reversed(length.carry_per_ball_speed, "carry");
    refuse_reversed(assumptions.lie_per_length, "lie");
}

}  // namespace landwidth
