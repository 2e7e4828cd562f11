#include "courses/assembly/course_drafts.hpp"

#include <algorithm>
#include <iterator>
#include <set>

#include "courses/assembly/hole_numbering.hpp"
#include "courses/assembly/hole_refs.hpp"
#include "courses/assembly/tee_choice.hpp"
#include "courses/text.hpp"
#include "geometry/error.hpp"

namespace landwidth {

namespace {

std::vector<HoleDraft> drafts_of(const CourseGroup& group, const CourseGround& ground, const std::string& tee,
                                 const MapAssumptions& assumptions) {
    std::vector<HoleDraft> drafts;
    for (const MapFeature* hole : group.holes)
        drafts.push_back(draft_hole(*hole, ground, assumptions));
    return number_holes(std::move(drafts), ground, tee, assumptions.snap_m);
}

// Shares the tees out among all holes.
CourseDrafts with_tees(CourseDrafts drafts, const CourseGround& ground, double snap_m) {
    std::vector<HoleDraft> all = drafts.holes;
    all.insert(all.end(), drafts.neighbours.begin(), drafts.neighbours.end());
    std::vector<std::vector<std::size_t>> tees = tees_of(all, ground, snap_m);
    const std::size_t count = drafts.holes.size();
    for (std::size_t i = 0; i < tees.size(); ++i) {
        HoleDraft& draft = i < count ? drafts.holes[i] : drafts.neighbours[i - count];
        draft.tees = std::move(tees[i]);
    }
    return drafts;
}

std::vector<std::string> refs_of(const std::vector<HoleDraft>& holes) {
    std::vector<std::string> refs;
    for (const HoleDraft& hole : holes)
        refs.push_back(hole.ref);
    return refs;
}

}  // namespace

LonLat anchor_of(const std::vector<const MapFeature*>& holes) {
    for (const MapFeature* hole : holes) {
        if (const std::optional<LonLat> place = place_of(hole->shape)) return *place;
    }
    return {};
}

DegreeBox box_of(const std::vector<const MapFeature*>& holes) {
    DegreeBox box = DegreeBox::around(anchor_of(holes));
    for (const MapFeature* hole : holes) {
        if (const auto* paths = std::get_if<std::vector<LonLatPath>>(&hole->shape)) {
            for (const LonLatPath& path : *paths)
                box.add(path);
        } else if (const std::optional<LonLat> place = place_of(hole->shape)) {
            box.add(*place);
        }
    }
    return box;
}

CourseDrafts draft_courses(const std::vector<CourseGroup>& groups,
                           const std::vector<const CourseGroup*>& chosen, const DegreeBox& here,
                           const CourseGround& ground, const std::string& tee,
                           const MapAssumptions& assumptions) {
    std::vector<std::vector<HoleDraft>> loops;
    for (const CourseGroup* group : chosen)
        loops.push_back(drafts_of(*group, ground, tee, assumptions));
    CourseDrafts drafts{in_order_of_play(std::move(loops)), {}};
    for (const CourseGroup& group : groups) {
        if (std::ranges::find(chosen, &group) != chosen.end() || !box_of(group.holes).meets(here)) continue;
        std::ranges::move(drafts_of(group, ground, tee, assumptions), std::back_inserter(drafts.neighbours));
    }
    return with_tees(std::move(drafts), ground, assumptions.snap_m);
}

void check_tee(const std::string& tee, const std::vector<HoleDraft>& holes, const CourseGround& ground,
               const std::string& source) {
    if (tee.empty()) return;
    std::vector<std::string> names;
    for (const HoleDraft& hole : holes) {
        if (goes_by_tee(*hole.feature, tee)) return;
        for (const std::size_t index : hole.tees) {
            if (goes_by_tee(*ground.tees()[index].part.feature, tee)) return;
        }
        for (std::string& name : tee_names(hole, ground)) {
            if (std::ranges::find(names, name) == names.end()) names.push_back(std::move(name));
        }
    }
    throw InputError(source,
                     "no hole has a tee called \"" + tee + "\"; " +
                         (names.empty() ? "its tees have no names" : "there is " + enumeration(names)));
}

std::vector<HoleDraft> holes_wanted(const std::vector<std::string>& refs, const std::vector<HoleDraft>& holes,
                                    const std::string& source) {
    if (refs.empty()) return holes;
    const std::vector<std::string> known = refs_of(holes);
    std::set<std::string> wanted;
    for (const std::string& text : refs) {
        const std::string ref = plain_ref(text);
        if (std::ranges::find(known, ref) == known.end()) {
            throw InputError(source, "there is no hole " + text + "; the course has " +
                                         (known.size() == 1 ? "hole " : "holes ") + enumeration(known, 40));
        }
        wanted.insert(ref);
    }
    std::vector<HoleDraft> found;
    std::ranges::copy_if(holes, std::back_inserter(found),
                         [&](const HoleDraft& hole) { return wanted.contains(hole.ref); });
    return found;
}

}  // namespace landwidth
