#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "geometry/units.hpp"
#include "planner/reports/display_length.hpp"
#include "planner/reports/gaps_reports.hpp"
#include "planner/reports/rounded.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

constexpr auto left = TextTable::Align::left;
constexpr auto right = TextTable::Align::right;

class Words {
  public:
    explicit Words(const GapsView& view) : view_(view) {}

    Document document(std::string picture) const {
        Document document{
            .title = fmt::format("Gaps in the bag of {}", name_text(view_.golfer.name, 80)),
            .subtitle = fmt::format("Lengths in {}, from a good lie, in still air on level ground.",
                                    view_.units == DisplayUnits::yards ? "yards" : "metres")};
        document.parts.push_back(clubs(std::move(picture)));
        document.parts.push_back(gaps());
        document.parts.push_back(slot());
        document.parts.push_back({"Keep in mind", {DocumentList{cautions()}}});
        return document;
    }

  private:
    const Club& club(std::size_t place) const {
        return view_.golfer.clubs.at(view_.gaps.clubs.at(place).club);
    }
    std::string name(std::size_t place) const { return name_text(club(place).name, 24); }
    std::string whole(double metres) const { return length_number(metres, view_.units); }
    std::string between(Range range) const {
        return fmt::format("{} to {}", whole(range.low), whole(range.high));
    }
    // The difference of two carries as they are shown.
    double shown_gap(std::size_t longer, std::size_t shorter) const {
        const auto shown = [&](std::size_t place) {
            return rounded(in_display_units(view_.gaps.clubs.at(place).carry_m, view_.units), 0);
        };
        return shown(longer) - shown(shorter);
    }
    static std::string degrees(double rad) {
        return fmt::format("{:.0f}", rounded(rad / radians_per_degree, 0));
    }

    DocumentPart clubs(std::string picture) const {
        DocumentTable table{{{"club", left, true},
                             {"carry", right},
                             {"90 % between", right},
                             {"run", right},
                             {"total", right},
                             {"descent", right},
                             {"to the next", right},
                             {"90 % between", right},
                             {"lands short", right},
                             {"shots", right}},
                            {},
                            "gaps"};
        for (std::size_t i = 0; i < view_.gaps.clubs.size(); ++i) {
            const CarriedClub& carried = view_.gaps.clubs[i];
            std::vector<std::string> row{name(i),
                                         whole(carried.carry_m),
                                         between(carried.carry_90_m),
                                         whole(carried.run_m),
                                         whole(carried.total_m),
                                         degrees(carried.descent_rad) + " deg"};
            if (i < view_.gaps.gaps.size()) {
                const CarryGap& gap = view_.gaps.gaps[i];
                row.push_back(fmt::format("{:.0f}", shown_gap(i, i + 1)));
                row.push_back(between(gap.gap_90_m));
                row.push_back(share_text(gap.overlap_chance));
            } else {
                row.insert(row.end(), {"", "", ""});
            }
            row.push_back(carried.shots == 0 ? "typical" : fmt::format("{}", carried.shots));
            table.rows.push_back(row);
        }
        return {
            "Club by club",
            {DocumentPicture{std::move(picture)}, std::move(table),
             DocumentParagraph{
                 "Carry: of the usual shot; 90 % of what the recorded shots leave open about its mean lies "
                 "between. Descent: how steeply the ball comes down, by the flight model. To the next: how "
                 "much farther than the next shorter club. Lands short: how often a usual shot of this "
                 "club lands short of one of the next. Typical: no recorded shots; typical numbers, not "
                 "measured ones."}}};
    }

    std::string sure_words(double sure) const {
        return fmt::format("{}{} sure",
                           sure < view_.gaps.assumptions.engine.toss_up_below ? "not settled: " : "",
                           share_text(sure));
    }

    std::string gap_words(const CarryGap& gap) const {
        const double shown = shown_gap(gap.longer, gap.shorter);
        const std::string pair = fmt::format("{} and {}", name(gap.longer), name(gap.shorter));
        const std::string sure = sure_words(gap.sure);
        if (gap.standing == GapStanding::wide)
            return fmt::format("{}: a wide gap, {:.0f} {} ({}).", capitalised(pair), shown,
                               display_unit(view_.units), sure);
        return fmt::format(
            "{}: they overlap, {:.0f} {} apart; a shot of the longer one lands short of one of the other {} "
            "of "
            "the time ({}).",
            capitalised(pair), shown, display_unit(view_.units), share_text(gap.overlap_chance), sure);
    }

    std::string limit_words() const {
        const GapLimits& limits = view_.gaps.assumptions.engine.gaps;
        return fmt::format(
            "Wide: more than {} between two mean carries. Overlap: the longer club's usual shot is the "
            "shorter "
            "one at least {} of the time. Both are assumed (gap_wide, gap_overlap). Sure: in how much of "
            "what the "
            "recorded "
            "shots leave open it is so.",
            length_text(limits.wide_m, view_.units), share_text(limits.overlap_chance));
    }

    DocumentPart gaps() const {
        DocumentPart part{"Wide gaps and overlaps", {}};
        DocumentList list;
        for (const CarryGap& gap : view_.gaps.gaps)
            if (gap.standing != GapStanding::even) list.sentences.push_back(gap_words(gap));
        if (list.sentences.empty()) {
            part.blocks.emplace_back(DocumentParagraph{"No gap is wide, and no two neighbours overlap."});
        } else {
            part.blocks.emplace_back(std::move(list));
        }
        part.blocks.emplace_back(DocumentParagraph{limit_words()});
        return part;
    }

    std::string slot_words(const TeeSlot& slot) const {
        const double gap = shown_gap(slot.driver, slot.next);
        if (!slot.has_room)
            return fmt::format(
                "The slot behind the driver is taken: the {} is there, {:.0f} {} behind it ({}). A "
                "second "
                "tee club in between would hit no other shot.",
                name(slot.next), gap, display_unit(view_.units), sure_words(slot.room_sure));
        return fmt::format(
            "Between {} and {} lie {:.0f} {} (a wide gap, {}). A second tee club in the "
            "middle "
            "of it carries about {} and goes {} in all; from {} to {} of carry it fills the slot.",
            name(slot.driver), name(slot.next), gap, display_unit(view_.units), sure_words(slot.room_sure),
            whole(slot.carry_m), whole(slot.total_m), whole(slot.fills_m.low), whole(slot.fills_m.high));
    }

    std::string place_words(const TeeSlot& slot, SlotPlace place) const {
        switch (place) {
            case SlotPlace::longer_than_driver:
                return fmt::format("longer than the {}", name(slot.driver));
            case SlotPlace::near_driver:
                return fmt::format("close to the {}", name(slot.driver));
            case SlotPlace::fills:
                return slot.has_room ? "fills the slot" : "between the two";
            case SlotPlace::near_next:
                return fmt::format("close to the {}", name(slot.next));
            case SlotPlace::shorter_than_next:
                break;
        }
        return fmt::format("shorter than the {}", name(slot.next));
    }

    DocumentPart slot() const {
        DocumentPart part{"A second tee club", {}};
        if (!view_.gaps.slot) {
            part.blocks.emplace_back(
                DocumentParagraph{"There is no slot behind a driver: the bag has no driver with a pattern, "
                                  "or nothing behind it."});
            return part;
        }
        const TeeSlot& slot = *view_.gaps.slot;
        part.blocks.emplace_back(DocumentParagraph{slot_words(slot)});
        if (slot.candidates.empty()) {
            part.blocks.emplace_back(
                DocumentParagraph{"No typical clubs are known for a drive of this length."});
            return part;
        }
        DocumentTable table{{{"club", left, true},
                             {"carry", right},
                             {"total", right},
                             {"descent", right},
                             {"numbers", left},
                             {"where it goes", left}},
                            {},
                            "gaps"};
        for (const SlotCandidate& candidate : slot.candidates) {
            const int shots = candidate.club.pattern->shots;
            table.rows.push_back({name_text(candidate.club.name, 24), whole(candidate.carry_m),
                                  whole(candidate.total_m), degrees(candidate.descent_rad) + " deg",
                                  !candidate.on_trial ? "typical"
                                  : shots > 0         ? fmt::format("on trial, {} shots", shots)
                                                      : std::string("on trial, typical"),
                                  place_words(slot, candidate.place)});
        }
        part.blocks.emplace_back(std::move(table));
        part.blocks.emplace_back(
            DocumentParagraph{"Typical: of a golfer of this level with a drive of this length, not measured. "
                              "A slot that is filled "
                              "saves no strokes by itself: landwidth weigh COURSE PROFILE --add CLUB tells "
                              "what the club is worth "
                              "on the holes that are played."});
        return part;
    }

    std::vector<std::string> cautions() const {
        std::vector<std::string> sentences = view_.gaps.warnings;
        const auto standing = cautions_of_any_shot();
        sentences.insert(sentences.end(), standing.begin(), standing.end());
        return sentences;
    }

    const GapsView& view_;
};

}  // namespace

Document gaps_document(const GapsView& view, std::string picture) {
    return Words(view).document(std::move(picture));
}

std::string gaps_text(const GapsView& view) {
    return document_text(gaps_document(view));
}

}  // namespace landwidth
