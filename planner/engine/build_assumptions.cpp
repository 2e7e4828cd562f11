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
constexpr ConstantUnit yd_per_mph{"yd/mph", metres_per_yard / metres_per_second_per_mph};

constexpr std::string_view assumption = "assumption";
constexpr std::string_view practice = "common practice, no source";

using Constant = NamedConstant<BuildAssumptions>;

#define IN(name) [](BuildAssumptions& a) -> double& { return a.name; }

const std::array constants{
    Constant{"head_centre", 0.0, in, -1.0, 2.5, IN(head_centre_from_end_m),
             "how far short of the club's end the head balances, along the shaft", assumption},
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
};
#undef IN

void refuse_reversed(Range range, std::string_view name) {
    if (range.low > range.high)
        throw UsageError(fmt::format("--assume {0}_low lies above {0}_high; name both", name));
}

}  // namespace

BuildAssumptions default_build_assumptions() {
    return defaults_of<BuildAssumptions>(constants);
}

std::vector<AssumptionEntry> list_build_assumptions(const BuildAssumptions& assumptions) {
    return entries_of<BuildAssumptions>(constants, assumptions);
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
}

}  // namespace landwidth
