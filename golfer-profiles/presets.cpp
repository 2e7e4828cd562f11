#include "golfer-profiles/presets.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
#include <span>

#include "geometry/error.hpp"
#include "geometry/units.hpp"
#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/nearest_word.hpp"
#include "golfer-profiles/preset_numbers.hpp"
#include "golfer-profiles/run_by_kind.hpp"

namespace landwidth {
namespace {

// Rounded to what the number means: nobody knows a preset to less than a tenth of a yard.
double to_tenth(double value) {
    return std::round(value * 10.0) / 10.0;
}
double to_hundredth(double value) {
    return std::round(value * 100.0) / 100.0;
}
double metres(double yards) {
    return Yards{yards}.metres();
}

struct Standard {
    std::string_view name;
    std::string_view summary;
    double handicap_index;
    double drive_total_yd;
    Reference reference;
    NamedLevel level;
};

constexpr std::array<Standard, 5> standards{{
    {"tour", "a tour player: 295 yd off the tee, 275 of it carry", tour_index, 295, Reference::men,
     NamedLevel::tour},
    {"scratch-man", "the scratch man of the course rating: 250 yd off the tee, 470 in two", scratch_index,
     250, Reference::men, NamedLevel::scratch},
    {"bogey-man", "the bogey man of the course rating: 200 yd off the tee, 370 in two", bogey_man_index, 200,
     Reference::men, NamedLevel::handicap},
    {"scratch-woman", "the scratch woman of the course rating: 210 yd off the tee, 400 in two", scratch_index,
     210, Reference::women, NamedLevel::scratch},
    {"bogey-woman", "the bogey woman of the course rating: 150 yd off the tee, 280 in two", bogey_woman_index,
     150, Reference::women, NamedLevel::handicap},
}};

// What all clubs of a bag share.
struct Maker {
    Reach reach;
    Scatter scatter;
    Reference reference;
    Hand hand;
};

struct CarryAndRun {
    double carry_yd, run_yd;
};

CarryAndRun distances(const BagSlot& slot, const Reach& reach) {
    if (slot.kind == ClubKind::driver) {
        // Rounded so that the two add up to the drive that was asked for.
        const double carry = to_tenth(reach.driver_carry_yd);
        return {carry, to_tenth(reach.driver_total_yd() - carry)};
    }
    const double carry = to_tenth(reach.second_carry_yd * slot.carry_share);
    const bool is_second_club = slot.carry_share == 1.0;
    return {carry, to_tenth(is_second_club ? reach.second_run_yd : carry * run_share_of_carry(slot.kind))};
}

ShotPattern pattern_for(const BagSlot& slot, const Maker& maker) {
    const auto [carry, run] = distances(slot, maker.reach);
    const Scatter& scatter = maker.scatter;
    const double share = to_hundredth(scatter.mishit_share);
    // The published sd is that of all shots; the usual ones are a little straighter, mishits wilder.
    const double ratio = mishit_direction_ratio;
    const double usual_share_of_sd = 1.0 / std::sqrt(1.0 - share + share * ratio * ratio);
    const double tangent = std::tan(scatter.direction_sd_deg * slot.direction_share * radians_per_degree);
    const double usual_side_sd = to_tenth(carry * tangent * usual_share_of_sd);
    const double mishit_carry = to_tenth(mishit_carry_share * carry);
    const double mishit_side_sd = to_tenth(mishit_carry * tangent * usual_share_of_sd * ratio);
    const double hand = maker.hand == Hand::right ? 1.0 : -1.0;
    ShotPattern pattern;
    pattern.usual = {{metres(carry), 0.0},
                     metres(to_tenth(carry * scatter.carry_sd_share)),
                     metres(usual_side_sd),
                     hand * to_hundredth(scatter.correlation)};
    pattern.tail_dof = to_tenth(scatter.tail_dof);
    pattern.run_m = metres(run);
    pattern.mishit = Mishit{share,
                            {{metres(mishit_carry), 0.0},
                             metres(to_tenth(mishit_carry_sd_share * carry)),
                             metres(mishit_side_sd),
                             0.0}};
    return pattern;
}

std::string note_for(const BagSlot& slot) {
    if (slot.kind == ClubKind::putter) return "no pattern: putts go by distance and level";
    if (slot.kind == ClubKind::driver) {
        return "carry and run: share of the drive as for the standard golfers of the USGA Course Rating "
               "System guide "
               "(tour and women's split: assumption); side: direction sd from Broadie 2014 (memory), a line "
               "in the "
               "handicap; carry sd, tail and mishits: assumptions";
    }
    if (slot.carry_share == 1.0) {
        return "carry and run: the second shot of the standard golfers of the USGA Course Rating System "
               "guide (tour "
               "and women's split: assumption); spread: as the driver's, straighter by assumption";
    }
    return "carry: equal gaps below the fairway wood, assumption; run by kind: assumption; spread: as the "
           "driver's, "
           "straighter by assumption";
}

Club club_for(const BagSlot& slot, const Maker& maker) {
    Club club;
    club.name = slot.name;
    club.kind = slot.kind;
    const double shorter = maker.reference == Reference::women ? womens_length_step_in : 0.0;
    club.length_m = (slot.length_in - shorter) * metres_per_inch;
    club.loft_rad = slot.loft_deg * radians_per_degree;
    if (slot.kind != ClubKind::putter) club.pattern = pattern_for(slot, maker);
    club.note = note_for(slot);
    return club;
}

std::vector<Club> bag_of(const Maker& maker, double handicap_index) {
    const std::span<const BagSlot> slots = bag_for(handicap_index);
    std::vector<Club> clubs;
    clubs.reserve(slots.size());
    for (const BagSlot& slot : slots)
        clubs.push_back(club_for(slot, maker));
    return clubs;
}

void check_range(std::string_view what, double value, double low, double high) {
    if (value >= low && value <= high) return;  // false for NaN as well
    throw UsageError(fmt::format("{} {} is out of range; it lies between {} and {}", what, value, low, high));
}

const Standard& standard_named(std::string_view wanted) {
    std::string_view name = wanted;
    if (name == "scratch") name = "scratch-man";
    if (name == "bogey") name = "bogey-man";
    const auto* found =
        std::find_if(standards.begin(), standards.end(), [&](const Standard& s) { return s.name == name; });
    if (found != standards.end()) return *found;
    std::vector<std::string_view> names;
    std::transform(standards.begin(), standards.end(), std::back_inserter(names),
                   [](const Standard& s) { return s.name; });
    const auto nearest = nearest_word(wanted, names);
    throw UsageError(fmt::format("there is no preset {}{}; the presets are {}", in_quotes(wanted),
                                 nearest ? fmt::format(", did you mean \"{}\"", *nearest) : "",
                                 fmt::join(names, ", ")));
}

}  // namespace

const std::vector<Preset>& presets() {
    static const std::vector<Preset> all = [] {
        std::vector<Preset> list;
        list.reserve(standards.size());
        for (const Standard& s : standards)
            list.push_back({std::string(s.name), std::string(s.summary)});
        return list;
    }();
    return all;
}

Golfer preset_golfer(std::string_view name, const PresetChanges& changes) {
    const Standard& standard = standard_named(name);
    Golfer golfer = typical_golfer({.name = changes.name.empty() ? std::string(standard.name) : changes.name,
                                    .handicap_index = standard.handicap_index,
                                    .drive_total_yd = standard.drive_total_yd,
                                    .reference = standard.reference,
                                    .hand = changes.hand});
    golfer.short_game = standard.level;
    golfer.putting = standard.level;
    golfer.note = fmt::format("Preset, not measured: {}. Each club says where its numbers come from.",
                              standard.summary);
    return golfer;
}

Golfer typical_golfer(const GolferRequest& request) {
    if (const std::string problem = name_problem(request.name); !problem.empty()) {
        throw UsageError("the golfer's name " + problem);
    }
    check_range("handicap index", request.handicap_index, lowest_index, highest_index);
    const bool published = !request.drive_total_yd.has_value();
    const double drive =
        request.drive_total_yd.value_or(mean_drive_yd(request.reference, request.handicap_index));
    check_range("a drive in yards of", drive, shortest_drive_yd, longest_drive_yd);
    Golfer golfer;
    golfer.name = trimmed(request.name);
    golfer.handicap_index = request.handicap_index;
    golfer.hand = request.hand;
    golfer.clubs = bag_of({reach_for_drive(request.reference, drive), scatter_for(request.handicap_index),
                           request.reference, request.hand},
                          request.handicap_index);
    golfer.note = fmt::format(
        "Preset, not measured: a typical bag of a {} with handicap index {} and a drive of {:.1f} yd{}. Each "
        "club says "
        "where its numbers come from; replace them as you measure.",
        request.reference == Reference::men ? "man" : "woman", request.handicap_index, drive,
        published ? ", the published mean for that handicap (R&A and USGA distance reports 2018-2020)" : "");
    return golfer;
}

}  // namespace landwidth
