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

long whole_yards(double metres) {
    return std::lround(to_yards(metres));
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
    draft.report<"par-doubtful">(draft.path.front(), par, whole_yards(length_m));
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
            if (items.size() > 1) draft.report<"par-listed">(draft.path.front(), text, *par);
            check_against_length(draft, *par, length_m, assumptions);
            return {*par, false};
        }
    }
    const int par = par_for_length(length_m, assumptions);
    if (trimmed(text).empty()) {
        draft.report<"par-inferred">(draft.path.front(), par, whole_yards(length_m));
    } else {
        draft.report<"par-unreadable">(draft.path.front(), text, par, whole_yards(length_m));
    }
    return {par, true};
}

std::optional<int> stroke_index_of(HoleDraft& draft, std::size_t holes_of_course) {
    const std::string& text = draft.feature->tag("handicap");
    const std::vector<std::string> items = list_items(text, ";,/");
    if (items.empty()) return std::nullopt;
    const std::optional<int> index = whole_number_in(item_for(draft, items));
    const int most = std::max(18, static_cast<int>(holes_of_course));
    if (index && *index >= 1 && *index <= most) return index;
    draft.report<"handicap-unreadable">(std::nullopt, text, most);
    return std::nullopt;
}

}  // namespace landwidth
