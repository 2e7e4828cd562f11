#include <algorithm>

#include "planner/reports/learn_reports.hpp"
#include "planner/reports/page_parts.hpp"
#include "planner/reports/pattern_picture.hpp"
#include "planner/reports/pattern_signs.hpp"

namespace landwidth {
namespace {

constexpr std::string_view learn_style = R"css(
.learnt { font-size: .92rem; }
.learnt td, .learnt th[scope=row] { white-space: nowrap; }
.families { columns: 26rem; column-gap: 1.6rem; }
.families figure { break-inside: avoid; margin-bottom: 1.2rem; overflow-x: auto; }
.families svg.patterns:not(.swatch) { min-width: 26rem; }
.assumptions { font-size: .85rem; }
)css";

// Builds of a club over each other, as many as one picture holds.
std::string pictures(const LearnView& view) {
    std::vector<std::vector<PicturedPattern>> families;
    for (const LearntClub& club : view.learnt.clubs) {
        const auto of_family = [&](const std::vector<PicturedPattern>& family) {
            return family.size() < most_pictured &&
                   same_name(family_of(*family.front().club), family_of(club.club));
        };
        const auto known = std::ranges::find_if(families, of_family);
        (known == families.end() ? families.emplace_back() : *known)
            .push_back({&club.club, club.evidence.mishit_chance});
    }
    std::string html;
    bool explained = false;
    for (const std::vector<PicturedPattern>& family : families) {
        const bool has_shots = std::ranges::any_of(
            family, [](const PicturedPattern& one) { return !one.club->learnt_from->shots.empty(); });
        html += pattern_picture(family, view.units, !explained || !has_shots);
        explained = explained || has_shots;
    }
    return "<div class=\"families\">\n" + html + "</div>\n";
}

}  // namespace

std::string learn_html(const LearnView& view) {
    return document_html(learn_document(view, pictures(view)),
                         std::string(learn_style) + pattern_picture_style(),
                         details("Assumptions", assumptions_table(view.assumptions)));
}

}  // namespace landwidth
