#include <nlohmann/json.hpp>

#include "planner/reports/display_length.hpp"
#include "planner/reports/profile_text.hpp"
#include "planner/reports/rounded.hpp"

namespace landwidth {
namespace {

using Json = nlohmann::ordered_json;

}  // namespace

std::string bag_json(const BagView& bag) {
    const std::string suffix = bag.units == DisplayUnits::yards ? "_yd" : "_m";
    const auto length = [&](double metres) { return rounded(in_display_units(metres, bag.units), 1); };
    Json clubs = Json::array();
    for (const ClubSummary& club : bag.clubs) {
        clubs.push_back({{"club", club.name},
                         {"kind", std::string(club_kind_name(club.kind))},
                         {"carry" + suffix, length(club.carry_m)},
                         {"run" + suffix, length(club.run_m)},
                         {"total" + suffix, length(club.total_m)},
                         {"side_sd" + suffix, length(club.side_sd_m)},
                         {"share_within", rounded(club.share_within, 3)},
                         {"mishit_share", rounded(club.mishit_share, 3)},
                         {"shots", club.shots},
                         {"in_bag", club.in_bag}});
    }
    const Golfer& golfer = bag.golfer;
    const Json result = {{"golfer",
                          {{"name", golfer.name},
                           {"handicap_index", golfer.handicap_index},
                           {"hand", golfer.hand == Hand::right ? "right" : "left"},
                           {"note", golfer.note}}},
                         {"half_width" + suffix, length(bag.half_width_m)},
                         {"clubs", clubs}};
    return result.dump(2) + "\n";
}

}  // namespace landwidth
