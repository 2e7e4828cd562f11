#include "golfer-profiles/presets.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <iterator>
#include <span>

#include "geometry/error.hpp"
#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/nearest_word.hpp"
#include "golfer-profiles/preset_clubs.hpp"

namespace landwidth {
namespace {

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

std::vector<Club> bag_of(const ClubMaker& maker, double handicap_index) {
    const std::span<const BagSlot> slots = bag_for(handicap_index);
    std::vector<Club> clubs;
    clubs.reserve(slots.size());
    for (const BagSlot& slot : slots)
        clubs.push_back(preset_club(slot, maker));
    return clubs;
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
    const ClubMaker maker = maker_for(request);
    Golfer golfer;
    golfer.name = trimmed(request.name);
    golfer.handicap_index = request.handicap_index;
    golfer.hand = request.hand;
    golfer.clubs = bag_of(maker, request.handicap_index);
    golfer.note = fmt::format(
        "Preset, not measured: a typical bag of a {} with handicap index {} and a drive of {:.1f} yd{}. Each "
        "club says "
        "where its numbers come from; replace them as you measure.",
        request.reference == Reference::men ? "man" : "woman", request.handicap_index, drive_yd_of(request),
        !request.drive_total_yd
            ? ", the published mean for that handicap (R&A and USGA distance reports 2018-2020)"
            : "");
    return golfer;
}

}  // namespace landwidth
