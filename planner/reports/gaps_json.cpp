#include "geometry/units.hpp"
#include "planner/reports/display_length.hpp"
#include "planner/reports/gaps_reports.hpp"
#include "planner/reports/json_assumptions.hpp"
#include "planner/reports/json_pieces.hpp"
#include "planner/reports/rounded.hpp"

namespace landwidth {
namespace {

class AsJson {
  public:
    explicit AsJson(const GapsView& view)
        : view_(view), suffix_(view.units == DisplayUnits::yards ? "_yd" : "_m") {}

    Json json() const {
        Json json{{"format", "landwidth-gaps/1"},
                  {"golfer", {{"name", view_.golfer.name}, {"handicap_index", view_.golfer.handicap_index}}},
                  {"clubs", Json::array()},
                  {"gaps", Json::array()}};
        for (const CarriedClub& club : view_.gaps.clubs)
            json["clubs"].push_back(json_club(club));
        for (const CarryGap& gap : view_.gaps.gaps)
            json["gaps"].push_back(json_gap(gap));
        json["tee_slot"] = view_.gaps.slot ? json_slot(*view_.gaps.slot) : Json(nullptr);
        json["warnings"] = view_.gaps.warnings;
        json["assumptions"] = json_assumptions(list_assumptions(view_.gaps.assumptions));
        return json;
    }

  private:
    double length(double metres) const { return rounded(in_display_units(metres, view_.units), 1); }
    Json range(Range metres) const { return Json::array({length(metres.low), length(metres.high)}); }
    static double degrees(double rad) { return rounded(rad / radians_per_degree, 1); }
    const std::string& name(std::size_t place) const {
        return view_.golfer.clubs.at(view_.gaps.clubs.at(place).club).name;
    }

    Json json_club(const CarriedClub& carried) const {
        const Club& club = view_.golfer.clubs.at(carried.club);
        return {{"club", club.name},
                {"kind", std::string(club_kind_name(club.kind))},
                {"carry" + suffix_, length(carried.carry_m)},
                {"carry_90" + suffix_, range(carried.carry_90_m)},
                {"carry_sd" + suffix_, length(carried.carry_sd_m)},
                {"run" + suffix_, length(carried.run_m)},
                {"total" + suffix_, length(carried.total_m)},
                {"descent_deg", degrees(carried.descent_rad)},
                {"shots", carried.shots},
                {"typical", carried.shots == 0}};
    }
    Json json_gap(const CarryGap& gap) const {
        const char* standing = gap.standing == GapStanding::wide      ? "wide"
                               : gap.standing == GapStanding::overlap ? "overlap"
                                                                      : "even";
        return {{"longer", name(gap.longer)},
                {"shorter", name(gap.shorter)},
                {"gap" + suffix_, length(gap.gap_m)},
                {"gap_90" + suffix_, range(gap.gap_90_m)},
                {"longer_lands_short", rounded(gap.overlap_chance, 3)},
                {"standing", standing},
                {"confidence", rounded(gap.sure, 3)}};
    }
    static const char* place_name(SlotPlace place) {
        switch (place) {
            case SlotPlace::longer_than_driver:
                return "longer than the driver";
            case SlotPlace::near_driver:
                return "close to the driver";
            case SlotPlace::fills:
                return "fills";
            case SlotPlace::near_next:
                return "close to the next";
            case SlotPlace::shorter_than_next:
                break;
        }
        return "shorter than the next";
    }
    Json json_slot(const TeeSlot& slot) const {
        Json json{{"driver", name(slot.driver)},
                  {"next", name(slot.next)},
                  {"gap" + suffix_, length(slot.gap_m)},
                  {"has_room", slot.has_room},
                  {"confidence", rounded(slot.room_sure, 3)},
                  {"carry" + suffix_, length(slot.carry_m)},
                  {"total" + suffix_, length(slot.total_m)},
                  {"fills" + suffix_, range(slot.fills_m)},
                  {"candidates", Json::array()}};
        for (const SlotCandidate& candidate : slot.candidates)
            json["candidates"].push_back({{"club", candidate.club.name},
                                          {"kind", std::string(club_kind_name(candidate.club.kind))},
                                          {"on_trial", candidate.on_trial},
                                          {"shots", candidate.club.pattern->shots},
                                          {"carry" + suffix_, length(candidate.carry_m)},
                                          {"total" + suffix_, length(candidate.total_m)},
                                          {"descent_deg", degrees(candidate.descent_rad)},
                                          {"place", place_name(candidate.place)}});
        return json;
    }

    const GapsView& view_;
    std::string suffix_;
};

}  // namespace

std::string gaps_json(const GapsView& view) {
    return json_text(AsJson(view).json());
}

}  // namespace landwidth
