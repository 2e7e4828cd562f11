#include "golfer-profiles/evidence/edited_clubs.hpp"

#include <fmt/format.h>

#include <cmath>

#include "geometry/units.hpp"
#include "golfer-profiles/evidence/bag_draws.hpp"
#include "golfer-profiles/evidence/club_figures.hpp"
#include "golfer-profiles/evidence/pattern_middle.hpp"
#include "golfer-profiles/json_text.hpp"

namespace landwidth {

namespace {

// A standard deviation from an interval that holds 90 % of a normal.
constexpr double sds_of_interval = 3.29;

bool is_off(double stated, const OpenFigure& figure) {
    return std::abs(stated - figure.middle) > 0.5 * (figure.high - figure.low) / sds_of_interval;
}

}  // namespace

std::vector<std::string> edited_clubs(const Golfer& golfer, const GolferPrior& prior) {
    std::vector<std::string> said;
    const BagDraws draws = posterior_draws(golfer, prior, draws_of_middle);
    for (std::size_t i = 0; i < golfer.clubs.size(); ++i) {
        const Club& club = golfer.clubs[i];
        if (draws[i].empty() || !club.learnt_from || club.learnt_from->shots.empty()) continue;
        const OpenPattern open = open_pattern(middle_of(draws[i]), draws[i]);
        const auto look = [&](std::string_view field, double stated, const OpenFigure& figure, double unit) {
            if (!is_off(stated, figure)) return;
            said.push_back(fmt::format(
                "clubs[{}] {}: pattern.{} is {:.4g}, where the recorded shots say {:.4g}; edited by hand? "
                "Plans take it as it stands",
                i, in_quotes(club.name), field, stated / unit, figure.middle / unit));
        };
        const ShotPattern& stated = *club.pattern;
        look("carry_yd", stated.usual.centre.carry_m, open.carry, metres_per_yard);
        look("side_yd", stated.usual.centre.side_m, open.side, metres_per_yard);
        look("carry_sd_yd", stated.usual.carry_sd_m, open.carry_sd, metres_per_yard);
        look("side_sd_yd", stated.usual.side_sd_m, open.side_sd, metres_per_yard);
        look("mishit.share", stated.mishit ? stated.mishit->share : 0.0, open.mishit_share, 1.0);
    }
    return said;
}

}  // namespace landwidth
