#include "golfer-profiles/typical_club.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <optional>
#include <span>
#include <string>

#include "golfer-profiles/club_names.hpp"
#include "golfer-profiles/preset_clubs.hpp"

namespace landwidth {
namespace {

std::string_view plain_name(ClubKind kind) {
    switch (kind) {
        case ClubKind::fairway_wood:
            return "3-wood";
        case ClubKind::hybrid:
            return "4-hybrid";
        case ClubKind::iron:
            return "7-iron";
        case ClubKind::wedge:
            return "pitching wedge";
        default:
            return {};
    }
}

const BagSlot* slot_named(ClubKind kind, std::string_view name) {
    const std::array<std::span<const BagSlot>, 3> lists{bag_for(lowest_index), bag_for(highest_index),
                                                        spare_clubs()};
    for (const std::span<const BagSlot> list : lists) {
        const auto found = std::find_if(list.begin(), list.end(), [&](const BagSlot& slot) {
            return slot.kind == kind && slot.name == name;
        });
        if (found != list.end()) return &*found;
    }
    return nullptr;
}

}  // namespace

Club typical_club(const GolferRequest& request, ClubKind kind, std::string_view name) {
    const ClubMaker maker = maker_for(request);
    const std::optional<std::string> usual = usual_name(kind, name);
    const BagSlot* slot = usual ? slot_named(kind, *usual) : nullptr;
    const bool guessed = slot == nullptr;
    if (guessed) slot = slot_named(kind, plain_name(kind));
    Club club = preset_club(*slot, maker);
    club.name = name;
    if (guessed) {
        club.length_m.reset();
        club.loft_rad.reset();
        club.note = fmt::format("taken for a {}, assumption; {}", slot->name, club.note);
    }
    return club;
}

GolferRequest request_like(const Golfer& golfer) {
    GolferRequest request{.name = golfer.name, .handicap_index = golfer.handicap_index, .hand = golfer.hand};
    for (const Club& club : golfer.clubs)
        if (club.kind == ClubKind::driver && is_playable(club))
            request.drive_total_yd = to_yards(club.pattern->usual.centre.carry_m + club.pattern->run_m);
    return request;
}

bool has_typical_club(const GolferRequest& request) {
    const double drive_yd = request.drive_total_yd.value_or(shortest_drive_yd);
    return request.handicap_index >= lowest_index && request.handicap_index <= highest_index &&
           drive_yd >= shortest_drive_yd && drive_yd <= longest_drive_yd;
}

}  // namespace landwidth
