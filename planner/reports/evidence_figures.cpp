#include "planner/reports/evidence_figures.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "golfer-profiles/evidence/mishit_chance.hpp"
#include "planner/reports/display_length.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {

std::string side_number(double side_m, DisplayUnits units) {
    const std::string number = length_number(std::abs(side_m), units);
    return number == "0" ? number : number + (side_m > 0 ? "R" : "L");
}

std::string spread_number(double sd_m, DisplayUnits units) {
    return fmt::format("{:.1f}", in_display_units(sd_m, units));
}

std::string spread_number(const RawShots& raw, const RawFigures& figures, DisplayUnits units) {
    return raw.shots > 1 ? spread_number(figures.sd, units) : "-";
}

std::string length_range(double low_m, double high_m, DisplayUnits units) {
    return fmt::format("{} to {}", length_number(low_m, units), length_number(high_m, units));
}

std::string side_range(double low_m, double high_m, DisplayUnits units) {
    return fmt::format("{} to {}", side_number(low_m, units), side_number(high_m, units));
}

std::string spread_range(const OpenFigure& figure, DisplayUnits units) {
    return fmt::format("{} to {}", spread_number(figure.low, units), spread_number(figure.high, units));
}

std::size_t mishits_among(const ClubEvidence& evidence) {
    return static_cast<std::size_t>(std::ranges::count_if(
        evidence.mishit_chance, [](double chance) { return chance > taken_for_mishit; }));
}

DocumentTable raw_beside_model(const std::vector<ClubRow>& clubs, DisplayUnits units) {
    constexpr auto left = TextTable::Align::left;
    constexpr auto right = TextTable::Align::right;
    DocumentTable table{{{"club", left, true},
                         {"", left},
                         {"shots", right},
                         {"mean carry", right},
                         {"median", right},
                         {"carry sd", right},
                         {"mean side", right},
                         {"side sd", right},
                         {"mishits", right}},
                        {},
                        "evidence"};
    for (const auto& [club, evidence] : clubs) {
        const RawShots& raw = evidence.raw;
        const OpenPattern& open = evidence.open;
        const auto with_range = [](const std::string& middle, const std::string& range) {
            return fmt::format("{} ({})", middle, range);
        };
        const std::string name = name_text(club, 24);
        table.rows.push_back({name, "recorded", fmt::format("{}", raw.shots),
                              length_number(raw.carry.mean, units), length_number(raw.carry.median, units),
                              spread_number(raw, raw.carry, units), side_number(raw.side.mean, units),
                              spread_number(raw, raw.side, units),
                              fmt::format("{}", mishits_among(evidence))});
        table.rows.push_back(
            {name, "model", "",
             with_range(length_number(open.carry.middle, units),
                        length_range(open.carry.low, open.carry.high, units)),
             "", with_range(spread_number(open.carry_sd.middle, units), spread_range(open.carry_sd, units)),
             with_range(side_number(open.side.middle, units),
                        side_range(open.side.low, open.side.high, units)),
             with_range(spread_number(open.side_sd.middle, units), spread_range(open.side_sd, units)),
             with_range(share_text(open.mishit_share.middle),
                        fmt::format("{} to {}", share_text(open.mishit_share.low),
                                    share_text(open.mishit_share.high)))});
    }
    return table;
}

std::string raw_beside_model_words() {
    return "Recorded: the shots by themselves, those taken for mishits among them and counted. Model: the "
           "usual "
           "shot and the share of mishits that the comparison stands on; 90 % of what the shots of all clubs "
           "leave possible lies between the figures in brackets. sd: one standard deviation. The two differ "
           "because mishits stand apart from the usual shot and because few shots of a club lean on the "
           "golfer's other clubs and, where those are few too, on the level.";
}

}  // namespace landwidth
