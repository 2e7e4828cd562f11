#include "courses/assembly/hole_numbering.hpp"

#include <algorithm>
#include <set>

#include "courses/assembly/hole_refs.hpp"
#include "courses/assembly/tee_choice.hpp"
#include "courses/text.hpp"

namespace landwidth {

namespace {

// Pieces of a hole meet at a point, give or take a slip of the mouse.
constexpr double joint_m = 2.0;

class Numbering {
  public:
    Numbering(std::vector<HoleDraft> drafts, const CourseGround& ground, const std::string& tee,
              double snap_m)
        : drafts_(std::move(drafts)), ground_(ground), tee_(tee), snap_m_(snap_m) {
        for (HoleDraft& draft : drafts_) {
            if (const std::vector<std::string> refs = refs_in(draft.ref); refs.size() == 1)
                draft.ref = refs.front();
        }
    }

    std::vector<HoleDraft> numbered() {
        join_pieces();
        merge_alternatives();
        expand_lists();
        part_doubles();
        number_the_nameless();
        return std::move(drafts_);
    }

  private:
    bool same_hole_ref(const HoleDraft& a, const HoleDraft& b) const {
        return !a.ref.empty() && a.ref == b.ref;
    }

    bool continues(const HoleDraft& first, const HoleDraft& second) const {
        if (!second.playable || first.path.size() < 2 || second.path.size() < 2) return false;
        if (geodesic_distance(first.path.back(), second.path.front()) > joint_m) return false;
        const auto green = ground_.nearest_green(ground_.frame().to_plane(first.path.back()));
        return !green || green->distance_m > 0.0;
    }

    void join_pieces() {
        for (std::size_t i = 0; i < drafts_.size(); ++i) {
            for (std::size_t k = 0; k < drafts_.size(); ++k) {
                if (i == k || !same_hole_ref(drafts_[i], drafts_[k]) || !continues(drafts_[i], drafts_[k]))
                    continue;
                LonLatPath path = drafts_[i].path;
                path.insert(path.end(), drafts_[k].path.begin() + 1, drafts_[k].path.end());
                HoleDraft joined = drafts_[k];
                joined.feature = drafts_[i].feature;
                joined.path = std::move(path);
                joined.report<"line-in-parts/two-lines">(joined.path.front(), drafts_[i].feature->label(),
                                                         drafts_[k].feature->label());
                drafts_[std::min(i, k)] = std::move(joined);
                drafts_.erase(drafts_.begin() + static_cast<std::ptrdiff_t>(std::max(i, k)));
                return join_pieces();
            }
        }
    }

    bool same_green(const HoleDraft& a, const HoleDraft& b) const {
        if (!a.playable || !b.playable) return false;
        return a.green == b.green || geodesic_distance(a.path.back(), b.path.back()) <= snap_m_;
    }

    // Whether the line starts at the tee asked for.
    bool starts_at_wish(const HoleDraft& draft) const {
        if (tee_.empty()) return false;
        if (goes_by_tee(*draft.feature, tee_)) return true;
        const auto near = ground_.nearest_tee(ground_.frame().to_plane(draft.path.front()));
        return near && near->distance_m <= snap_m_ &&
               goes_by_tee(*ground_.tees()[near->index].part.feature, tee_);
    }

    void merge_alternatives() {
        for (std::size_t i = 0; i < drafts_.size(); ++i) {
            for (std::size_t k = i + 1; k < drafts_.size();) {
                if (same_hole_ref(drafts_[i], drafts_[k]) && same_green(drafts_[i], drafts_[k])) {
                    merge(drafts_[i], drafts_[k]);
                    drafts_.erase(drafts_.begin() + static_cast<std::ptrdiff_t>(k));
                } else {
                    ++k;
                }
            }
        }
    }

    void merge(HoleDraft& kept, HoleDraft& other) const {
        const bool wish_kept = starts_at_wish(kept);
        const bool wish_other = starts_at_wish(other);
        const bool longer = length_of(other.path) > length_of(kept.path);
        if (wish_kept == wish_other ? longer : wish_other) std::swap(kept, other);
        kept.alternatives.push_back(other.path);
        kept.alternatives.insert(kept.alternatives.end(), other.alternatives.begin(),
                                 other.alternatives.end());
        const LonLat place = other.path.front();
        const std::string label = other.feature->label();
        wish_kept != wish_other ? kept.report<"alternative-line/tee">(place, label, kept.feature->label())
                                : kept.report<"alternative-line/longer">(place, label, kept.feature->label());
    }

    bool has_ref(const std::string& ref) const {
        return std::any_of(drafts_.begin(), drafts_.end(), [&](const HoleDraft& d) { return d.ref == ref; });
    }

    void expand_lists() {
        const std::size_t count = drafts_.size();
        for (std::size_t i = 0; i < count; ++i) {
            const std::vector<std::string> refs = refs_in(drafts_[i].ref);
            if (refs.size() < 2) continue;
            const HoleDraft listed = drafts_[i];
            bool first = true;
            for (std::size_t item = 0; item < refs.size(); ++item) {
                if (has_ref(refs[item])) continue;
                if (!first) drafts_.push_back(listed);
                HoleDraft& draft = first ? drafts_[i] : drafts_.back();
                first = false;
                draft.ref = refs[item];
                draft.item = item;
                draft.report<"played-twice">(std::nullopt, listed.ref);
            }
            if (first) drafts_[i].ref = refs.front();
        }
    }

    // "b", "c", ... "z", then "-26", "-27".
    static std::string suffix(int copy) {
        constexpr int letters = 25;
        return copy <= letters ? std::string(1, static_cast<char>('a' + copy)) : "-" + std::to_string(copy);
    }

    void part_doubles() {
        std::set<std::string> taken;
        for (HoleDraft& draft : drafts_) {
            if (draft.ref.empty() || taken.insert(draft.ref).second) continue;
            const std::string doubled = draft.ref;
            for (int copy = 1; !taken.insert(draft.ref).second; ++copy)
                draft.ref = doubled + suffix(copy);
            draft.report<"ref-doubled">(std::nullopt, doubled, draft.ref);
        }
    }

    void number_the_nameless() {
        for (HoleDraft& draft : drafts_) {
            if (!draft.ref.empty()) {
                if (!number_of_ref(draft.ref)) draft.report<"ref-unreadable">(std::nullopt, draft.ref);
                continue;
            }
            const std::optional<std::string> from_name = number_in_name(draft.feature->tag("name"));
            if (from_name && !has_ref(*from_name)) {
                draft.ref = *from_name;
                draft.report<"ref-inferred">(std::nullopt);
            }
        }
        for (HoleDraft& draft : drafts_) {
            if (!draft.ref.empty()) continue;
            int number = 1;
            while (has_ref(std::to_string(number)))
                ++number;
            draft.ref = std::to_string(number);
            draft.report<"ref-missing">(std::nullopt, draft.ref);
        }
    }

    std::vector<HoleDraft> drafts_;
    const CourseGround& ground_;
    const std::string& tee_;
    double snap_m_;
};

int highest_number(const std::vector<HoleDraft>& drafts) {
    int highest = 0;
    for (const HoleDraft& draft : drafts)
        highest = std::max(highest, number_of_ref(draft.ref).value_or(0));
    return highest;
}

}  // namespace

std::vector<HoleDraft> number_holes(std::vector<HoleDraft> drafts, const CourseGround& ground,
                                    const std::string& tee, double snap_m) {
    return Numbering(std::move(drafts), ground, tee, snap_m).numbered();
}

void renumber_on(std::vector<std::vector<HoleDraft>>& loops) {
    std::set<std::string> taken;
    int played = 0;
    for (std::vector<HoleDraft>& loop : loops) {
        const bool clash = std::any_of(loop.begin(), loop.end(),
                                       [&](const HoleDraft& draft) { return taken.contains(draft.ref); });
        for (HoleDraft& draft : loop) {
            if (clash) {
                const std::string before = draft.ref;
                const std::optional<int> number = number_of_ref(before);
                const std::size_t digits = number ? std::to_string(*number).size() : 0;
                draft.ref = number ? std::to_string(*number + played) + before.substr(digits)
                                   : before + " (" + std::to_string(played) + ")";
                draft.report<"ref-renumbered">(std::nullopt, before);
            }
        }
        for (const HoleDraft& draft : loop)
            taken.insert(draft.ref);
        played = std::max(played, highest_number(loop));
    }
}

void sort_by_number(std::vector<HoleDraft>& drafts) {
    static constexpr int after_all = 1'000'000;
    std::stable_sort(drafts.begin(), drafts.end(), [](const HoleDraft& a, const HoleDraft& b) {
        const int number_a = number_of_ref(a.ref).value_or(after_all);
        const int number_b = number_of_ref(b.ref).value_or(after_all);
        if (number_a != number_b) return number_a < number_b;
        return number_a != after_all && a.ref < b.ref;
    });
}

}  // namespace landwidth
