#include "courses/assembly/hole_numbering.hpp"

#include <algorithm>
#include <iterator>
#include <optional>
#include <set>
#include <utility>

#include "courses/assembly/hole_refs.hpp"
#include "courses/assembly/tee_choice.hpp"
#include "courses/text.hpp"

namespace landwidth {

namespace {

// Pieces of a hole meet at a point, give or take a slip of the mouse.
constexpr double joint_m = 2.0;

using Drafts = std::vector<HoleDraft>;

bool same_hole_ref(const HoleDraft& a, const HoleDraft& b) {
    return !a.ref.empty() && a.ref == b.ref;
}

bool has_ref(const Drafts& drafts, const std::string& ref) {
    return std::ranges::any_of(drafts, [&](const HoleDraft& draft) { return draft.ref == ref; });
}

// "Hole 7" -> "7"; lists stay.
Drafts with_plain_refs(Drafts drafts) {
    for (HoleDraft& draft : drafts) {
        if (const std::vector<std::string> refs = refs_in(draft.ref); refs.size() == 1)
            draft.ref = refs.front();
    }
    return drafts;
}

// Whether the second line goes on where the first ends, away from any green.
bool continues(const HoleDraft& first, const HoleDraft& second, const CourseGround& ground) {
    if (!second.playable || first.path.size() < 2 || second.path.size() < 2) return false;
    if (geodesic_distance(first.path.back(), second.path.front()) > joint_m) return false;
    const auto green = ground.nearest_green(ground.frame().to_plane(first.path.back()));
    return !green || green->distance_m > 0.0;
}

HoleDraft joined(const HoleDraft& first, const HoleDraft& second) {
    HoleDraft whole = second;
    whole.feature = first.feature;
    whole.mapped_ref = first.mapped_ref;
    whole.path = first.path;
    whole.path.insert(whole.path.end(), second.path.begin() + 1, second.path.end());
    whole.report<"line-in-parts/two-lines">(whole.path.front(), first.feature->label(),
                                            second.feature->label());
    return whole;
}

// The two pieces of one hole that come first; absent when no line goes on in another.
std::optional<std::pair<std::size_t, std::size_t>> two_pieces(const Drafts& drafts,
                                                              const CourseGround& ground) {
    for (std::size_t i = 0; i < drafts.size(); ++i) {
        for (std::size_t k = 0; k < drafts.size(); ++k) {
            if (i != k && same_hole_ref(drafts[i], drafts[k]) && continues(drafts[i], drafts[k], ground))
                return std::pair{i, k};
        }
    }
    return std::nullopt;
}

Drafts with_pieces_joined(Drafts drafts, const CourseGround& ground) {
    while (const auto pieces = two_pieces(drafts, ground)) {
        const auto [first, second] = *pieces;
        drafts[std::min(first, second)] = joined(drafts[first], drafts[second]);
        drafts.erase(drafts.begin() + static_cast<std::ptrdiff_t>(std::max(first, second)));
    }
    return drafts;
}

bool same_green(const HoleDraft& a, const HoleDraft& b, double snap_m) {
    if (!a.playable || !b.playable) return false;
    return a.green == b.green || geodesic_distance(a.path.back(), b.path.back()) <= snap_m;
}

// Whether the line starts at the tee asked for.
bool starts_at(const std::string& tee, const HoleDraft& draft, const CourseGround& ground, double snap_m) {
    if (tee.empty()) return false;
    if (goes_by_tee(*draft.feature, tee)) return true;
    const auto near = ground.nearest_tee(ground.frame().to_plane(draft.path.front()));
    return near && near->distance_m <= snap_m && goes_by_tee(*ground.tees()[near->index].part.feature, tee);
}

// Two lines of one hole: the one that counts, with the other among its alternatives.
HoleDraft merged(HoleDraft kept, HoleDraft other, const CourseGround& ground, const std::string& tee,
                 double snap_m) {
    const bool wish_kept = starts_at(tee, kept, ground, snap_m);
    const bool wish_other = starts_at(tee, other, ground, snap_m);
    const bool longer = length_of(other.path) > length_of(kept.path);
    if (wish_kept == wish_other ? longer : wish_other) std::swap(kept, other);
    kept.alternatives.push_back(other.path);
    kept.alternatives.insert(kept.alternatives.end(), other.alternatives.begin(), other.alternatives.end());
    const LonLat place = other.path.front();
    const std::string label = other.feature->label();
    wish_kept != wish_other ? kept.report<"alternative-line/tee">(place, label, kept.feature->label())
                            : kept.report<"alternative-line/longer">(place, label, kept.feature->label());
    return kept;
}

Drafts with_alternatives_merged(Drafts drafts, const CourseGround& ground, const std::string& tee,
                                double snap_m) {
    for (std::size_t i = 0; i < drafts.size(); ++i) {
        for (std::size_t k = i + 1; k < drafts.size();) {
            if (same_hole_ref(drafts[i], drafts[k]) && same_green(drafts[i], drafts[k], snap_m)) {
                drafts[i] = merged(std::move(drafts[i]), std::move(drafts[k]), ground, tee, snap_m);
                drafts.erase(drafts.begin() + static_cast<std::ptrdiff_t>(k));
            } else {
                ++k;
            }
        }
    }
    return drafts;
}

// A line whose ref lists numbers becomes a hole for each that no other has.
Drafts with_lists_expanded(Drafts drafts) {
    const std::size_t count = drafts.size();
    for (std::size_t i = 0; i < count; ++i) {
        const std::vector<std::string> refs = refs_in(drafts[i].ref);
        if (refs.size() < 2) continue;
        const HoleDraft listed = drafts[i];
        bool first = true;
        for (std::size_t item = 0; item < refs.size(); ++item) {
            if (has_ref(drafts, refs[item])) continue;
            if (!first) drafts.push_back(listed);
            HoleDraft& draft = first ? drafts[i] : drafts.back();
            first = false;
            draft.ref = refs[item];
            draft.item = item;
            draft.report<"played-twice">(std::nullopt, listed.ref);
        }
        if (first) drafts[i].ref = refs.front();
    }
    return drafts;
}

// "b", "c", ... "z", then "-26", "-27".
std::string suffix(int copy) {
    constexpr int letters = 25;
    return copy <= letters ? std::string(1, static_cast<char>('a' + copy)) : "-" + std::to_string(copy);
}

Drafts with_doubles_parted(Drafts drafts) {
    std::set<std::string> taken;
    for (HoleDraft& draft : drafts) {
        if (draft.ref.empty() || taken.insert(draft.ref).second) continue;
        const std::string doubled = draft.ref;
        for (int copy = 1; !taken.insert(draft.ref).second; ++copy)
            draft.ref = doubled + suffix(copy);
        draft.report<"ref-doubled">(std::nullopt, doubled, draft.ref);
    }
    return drafts;
}

Drafts with_numbers_of_names(Drafts drafts) {
    for (HoleDraft& draft : drafts) {
        if (!draft.ref.empty()) {
            if (!number_of_ref(draft.ref)) draft.report<"ref-unreadable">(std::nullopt, draft.ref);
            continue;
        }
        const std::optional<std::string> from_name = number_in_name(draft.feature->tag("name"));
        if (!from_name || has_ref(drafts, *from_name)) continue;
        draft.ref = *from_name;
        draft.report<"ref-inferred">(std::nullopt);
    }
    return drafts;
}

Drafts with_free_numbers(Drafts drafts) {
    for (HoleDraft& draft : drafts) {
        if (!draft.ref.empty()) continue;
        int number = 1;
        while (has_ref(drafts, std::to_string(number)))
            ++number;
        draft.ref = std::to_string(number);
        draft.report<"ref-missing">(std::nullopt, draft.ref);
    }
    return drafts;
}

int highest_number(const Drafts& drafts) {
    int highest = 0;
    for (const HoleDraft& draft : drafts)
        highest = std::max(highest, number_of_ref(draft.ref).value_or(0));
    return highest;
}

// The ref of a hole in a loop played after so many holes: "7" -> "16", "7b" -> "16b".
std::string numbered_on(const std::string& ref, int played) {
    const std::optional<int> number = number_of_ref(ref);
    if (!number) return ref + " (" + std::to_string(played) + ")";
    return std::to_string(*number + played) + ref.substr(std::to_string(*number).size());
}

Drafts sorted_by_number(Drafts drafts) {
    static constexpr int after_all = 1'000'000;
    std::ranges::stable_sort(drafts, [](const HoleDraft& a, const HoleDraft& b) {
        const int number_a = number_of_ref(a.ref).value_or(after_all);
        const int number_b = number_of_ref(b.ref).value_or(after_all);
        if (number_a != number_b) return number_a < number_b;
        return number_a != after_all && a.ref < b.ref;
    });
    return drafts;
}

}  // namespace

std::vector<HoleDraft> number_holes(std::vector<HoleDraft> drafts, const CourseGround& ground,
                                    const std::string& tee, double snap_m) {
    drafts = with_plain_refs(std::move(drafts));
    drafts = with_pieces_joined(std::move(drafts), ground);
    drafts = with_alternatives_merged(std::move(drafts), ground, tee, snap_m);
    drafts = with_lists_expanded(std::move(drafts));
    drafts = with_doubles_parted(std::move(drafts));
    drafts = with_numbers_of_names(std::move(drafts));
    drafts = with_free_numbers(std::move(drafts));
    for (HoleDraft& draft : drafts)
        draft.number = draft.ref;
    return drafts;
}

std::vector<HoleDraft> in_order_of_play(std::vector<std::vector<HoleDraft>> loops) {
    std::vector<HoleDraft> round;
    std::set<std::string> taken;
    int played = 0;
    for (std::vector<HoleDraft>& loop : loops) {
        const bool clash =
            std::ranges::any_of(loop, [&](const HoleDraft& draft) { return taken.contains(draft.ref); });
        for (HoleDraft& draft : loop) {
            if (!clash) continue;
            draft.report<"ref-renumbered">(std::nullopt, draft.ref);
            draft.ref = numbered_on(draft.ref, played);
        }
        for (const HoleDraft& draft : loop)
            taken.insert(draft.ref);
        played = std::max(played, highest_number(loop));
        std::ranges::move(loop, std::back_inserter(round));
    }
    return sorted_by_number(std::move(round));
}

}  // namespace landwidth
