#include "courses/assembly/scorecard.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "courses/text.hpp"
#include "geometry/units.hpp"

namespace landwidth {

namespace {

constexpr double longer_by = 1.25;
constexpr double shorter_by = 2.0 / 3.0;

std::string yards(double metres) {
    return std::to_string(static_cast<long>(std::lround(to_yards(metres)))) + " yd";
}

std::optional<int> par_in(const std::string& text) {
    std::string plain = folded(text);
    if (plain.starts_with("par")) plain.erase(0, 3);
    const std::optional<int> par = whole_number_in(plain);
    return par && *par >= 3 && *par <= 6 ? par : std::nullopt;
}

// The item of a list that goes with the hole's ref.
const std::string& item_for(const HoleDraft& draft, const std::vector<std::string>& items) {
    return items[draft.item < items.size() ? draft.item : 0];
}

void check_against_length(HoleDraft& draft, int par, double length_m, const MapAssumptions& assumptions) {
    const std::array<double, 3> from{assumptions.par4_from_m, assumptions.par5_from_m,
                                     assumptions.par6_from_m};
    const bool too_short = par > 3 && length_m < shorter_by * from[static_cast<std::size_t>(par - 4)];
    const bool too_long = par < 6 && length_m > longer_by * from[static_cast<std::size_t>(par - 3)];
    if (!too_short && !too_long) return;
    draft.report(
        Severity::warning, "par-doubtful", draft.path.front(),
        "par " + std::to_string(par) + " on a line of " + yards(length_m) + " is doubtful; it is kept",
        "check par and the hole's line");
}

}  // namespace

int par_for_length(double length_m, const MapAssumptions& assumptions) {
    if (length_m <= assumptions.par4_from_m) return 3;
    if (length_m <= assumptions.par5_from_m) return 4;
    return length_m <= assumptions.par6_from_m ? 5 : 6;
}

Par par_of(HoleDraft& draft, const MapAssumptions& assumptions) {
    const double length_m = length_of(draft.path);
    const std::string& text = draft.feature->tag("par");
    const std::vector<std::string> items = list_items(text, ";,/");
    if (!items.empty()) {
        if (const std::optional<int> par = par_in(item_for(draft, items))) {
            if (items.size() > 1) {
                draft.report(Severity::note, "par-listed", draft.path.front(),
                             "par is \"" + text + "\"; " + std::to_string(*par) + " is taken",
                             "set the par of the tees you play");
            }
            check_against_length(draft, *par, length_m, assumptions);
            return {*par, false};
        }
    }
    const int par = par_for_length(length_m, assumptions);
    const bool missing = trimmed(text).empty();
    draft.report(missing ? Severity::note : Severity::warning, missing ? "par-inferred" : "par-unreadable",
                 draft.path.front(),
                 (missing ? "no par is given" : "par \"" + text + "\" is not between 3 and 6") + "; par " +
                     std::to_string(par) + " is inferred from the length of " + yards(length_m),
                 "set par on the hole");
    return {par, true};
}

std::optional<int> stroke_index_of(HoleDraft& draft, std::size_t holes_of_course) {
    const std::string& text = draft.feature->tag("handicap");
    const std::vector<std::string> items = list_items(text, ";,/");
    if (items.empty()) return std::nullopt;
    const std::optional<int> index = whole_number_in(item_for(draft, items));
    const int most = std::max(18, static_cast<int>(holes_of_course));
    if (index && *index >= 1 && *index <= most) return index;
    draft.report(
        Severity::warning, "handicap-unreadable", std::nullopt,
        "handicap \"" + text + "\" is no stroke index from 1 to " + std::to_string(most) + " and is left out",
        "correct the handicap tag");
    return std::nullopt;
}

}  // namespace landwidth
