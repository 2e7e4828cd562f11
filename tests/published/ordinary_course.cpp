#include "tests/published/ordinary_course.hpp"

#include <array>

#include "tests/planner/engine/invented_hole.hpp"

namespace landwidth::published {

using fixture::yd;

namespace {

Region disc_yd(double x, double y, double radius) {
    return Region::disc(yd(x, y), yd(radius, 0).x);
}

Region box_yd(double left, double bottom, double right, double top) {
    return Region::box({yd(left, bottom), yd(right, top)});
}

}  // namespace

Hole ordinary_hole(double length, int par, int number) {
    fixture::HoleParts parts = fixture::straight_hole(length, 34);
    parts.par = par;
    const auto add = [&](Lie lie, const Region& region) { parts.layers.push_back({lie, region}); };
    add(Lie::bunker, disc_yd(-17, length - 4, 5));
    add(Lie::bunker, disc_yd(17, length - 6, 5));
    if (number % 2 == 1) add(Lie::bunker, disc_yd(6, length - 19, 4));
    if (par > 3) {
        const bool is_long = length > 300;
        add(Lie::bunker, disc_yd(-19, is_long ? 230 : 180, 6));
        add(Lie::bunker, disc_yd(19, is_long ? 255 : 200, 6));
        if (par == 5) add(Lie::bunker, disc_yd(-16, length - 90, 6));
        add(Lie::trees, box_yd(-90, 60, -40, length - 20));
        add(Lie::trees, box_yd(40, 60, 90, length - 20));
    }
    if (number % 6 == 1)
        add(Lie::penalty_red, par == 3 ? box_yd(-60, length - 60, 60, length - 25)
                                       : box_yd(-38, length - 60, -20, length + 15));
    if (number % 9 == 4) parts.in_bounds = box_yd(-300, -300, 50, length + 300);
    return fixture::invented_hole(parts);
}

OrdinaryCourse ordinary_course(double scale) {
    constexpr std::array pars{4, 5, 3, 4, 4, 3, 4, 5, 4, 4, 4, 3, 5, 4, 4, 5, 3, 4};
    constexpr std::array<double, 18> lengths{385, 519, 166, 403, 345, 196, 378, 495, 413,
                                             367, 355, 154, 530, 436, 397, 512, 182, 421};
    OrdinaryCourse result{{}, 0.0};
    std::vector<Hole> holes;
    for (std::size_t i = 0; i < pars.size(); ++i) {
        const double length = scale * lengths[i];
        result.length_yd += length;
        holes.push_back(ordinary_hole(length, pars[i], static_cast<int>(i) + 1));
    }
    result.course = fixture::course_of(std::move(holes));
    return result;
}

Golfer with_longer_driver(const Golfer& golfer) {
    constexpr double more_m = Yards{20.0}.metres();
    Golfer longer = golfer;
    for (Club& club : longer.clubs) {
        if (club.kind != ClubKind::driver) continue;
        ShotPattern& pattern = *club.pattern;
        const double share = more_m / pattern.usual.centre.carry_m;
        pattern.usual.centre.carry_m += more_m;
        if (pattern.mishit) pattern.mishit->spread.centre.carry_m *= 1.0 + share;
    }
    return longer;
}

}  // namespace landwidth::published
