#include "courses/assembly/course_assembly.hpp"

#include <algorithm>
#include <iterator>
#include <set>

#include "courses/assembly/course_checks.hpp"
#include "courses/assembly/course_drafts.hpp"
#include "courses/assembly/course_groups.hpp"
#include "courses/assembly/fairway_owners.hpp"
#include "courses/assembly/hole_assembly.hpp"
#include "courses/assembly/reach_of_play.hpp"
#include "courses/findings/finding_kinds.hpp"
#include "geometry/error.hpp"

namespace landwidth {

namespace {

// Other courses' holes within this of the chosen ones count as neighbours, metres.
constexpr double neighbourhood_m = 1000.0;

using Groups = std::vector<const CourseGroup*>;

Groups chosen_groups(const std::vector<CourseGroup>& groups, const MapIndex& index,
                     const std::vector<std::string>& names, const std::string& source) {
    if (groups.empty()) {
        const bool points = !index.with_role(Role::hole).empty();
        throw InputError(source, points ? "its golf=hole features are points; draw every hole as a line "
                                          "from tee to pin"
                                        : "there is no golf=hole line on this map; draw every hole as a "
                                          "line from tee to pin");
    }
    return choose_courses(groups, names, source);
}

std::vector<const MapFeature*> lines_of(const Groups& chosen) {
    std::vector<const MapFeature*> lines;
    for (const CourseGroup* group : chosen)
        lines.insert(lines.end(), group->holes.begin(), group->holes.end());
    return lines;
}

std::string name_of(const Groups& chosen) {
    std::string name;
    for (const CourseGroup* group : chosen) {
        if (!group->name.empty()) name += (name.empty() ? "" : " + ") + group->name;
    }
    return name;
}

// Each once, in the order of the courses.
std::vector<const MapFeature*> boundaries_of(const Groups& chosen) {
    std::vector<const MapFeature*> boundaries;
    for (const CourseGroup* group : chosen) {
        for (const MapFeature* boundary : group->boundaries) {
            if (std::ranges::find(boundaries, boundary) == boundaries.end()) boundaries.push_back(boundary);
        }
    }
    return boundaries;
}

// What the grouping had to tell of the holes wanted, by the refs they go by now.
std::vector<Finding> findings_of(const Groups& chosen, const std::vector<HoleDraft>& wanted) {
    std::vector<Finding> findings;
    for (const CourseGroup* group : chosen) {
        for (const Finding& finding : group->findings) {
            const auto hole = std::ranges::find_if(
                wanted, [&](const HoleDraft& draft) { return draft.feature->label() == finding.feature; });
            if (hole == wanted.end()) continue;
            findings.push_back(finding);
            findings.back().hole = hole->ref;
        }
    }
    return findings;
}

std::vector<const HoleDraft*> all_of(const CourseDrafts& drafts) {
    std::vector<const HoleDraft*> all;
    for (const HoleDraft& draft : drafts.holes)
        all.push_back(&draft);
    for (const HoleDraft& draft : drafts.neighbours)
        all.push_back(&draft);
    return all;
}

void append(std::vector<Finding> more, std::vector<Finding>& findings) {
    std::ranges::move(more, std::back_inserter(findings));
}

}  // namespace

std::vector<CourseOnMap> courses_on(const MapData& map) {
    const MapIndex index(map);
    std::vector<CourseOnMap> courses;
    const std::vector<CourseGroup> groups = course_groups(index);
    courses.reserve(groups.size());
    for (const CourseGroup& group : groups) {
        // A single course without a name needs none.
        courses.push_back(
            {groups.size() == 1 ? group.name : group.handle, static_cast<int>(group.holes.size())});
    }
    return courses;
}

Course assemble_course(const MapData& map, const CourseRequest& request, const MapAssumptions& assumptions) {
    const MapIndex index(map);
    const std::vector<CourseGroup> groups = course_groups(index);
    const Groups chosen = chosen_groups(groups, index, request.names, map.source);
    const std::vector<const MapFeature*> lines = lines_of(chosen);
    const DegreeBox here = box_of(lines).grown(neighbourhood_m);
    const std::vector<const IndexedFeature*> around = index.near(here);
    FeatureNotes notes;
    const CourseGround ground(around, anchor_of(lines), notes.repairs());

    const CourseDrafts drafts = draft_courses(groups, chosen, here, ground, request.tee, assumptions);
    check_tee(request.tee, drafts.holes, ground, map.source);
    const std::vector<HoleDraft> wanted = holes_wanted(request.refs, drafts.holes, map.source);
    const std::vector<const HoleDraft*> all = all_of(drafts);
    const bool wants_all = request.refs.empty();

    Course course{.name = name_of(chosen),
                  .source = map.source,
                  .attribution = map.attribution,
                  .holes = {},
                  .findings = map.findings};
    append(findings_of(chosen, wanted), course.findings);
    if (wants_all) append(points_for_holes(ground, all), course.findings);
    append(ground_missing(around), course.findings);
    const std::vector<const MapFeature*> boundaries = boundaries_of(chosen);
    if (boundaries.empty())
        append(boundary_missing(index, groups, box_of(lines).grown(reach_of_play_m),
                                map.stated_extent().has_value()),
               course.findings);

    // What it repairs is told where a hole that is wanted needs it.
    RepairLog untold;
    const FairwayOwners fairways(around, all, ground.frame(), untold);
    const CourseContext context{index, ground,   assumptions,         request.tee,         boundaries,
                                all,   fairways, map.stated_extent(), drafts.holes.size(), notes};
    std::set<const MapFeature*> used;
    for (const HoleDraft& draft : wanted) {
        AssembledHole assembled = assemble_hole(draft, context);
        if (assembled.hole) course.holes.push_back(std::move(*assembled.hole));
        append(std::move(assembled.findings), course.findings);
        used.insert(assembled.ground.begin(), assembled.ground.end());
    }
    if (wants_all && groups.size() == 1) append(golf_unused(index, used), course.findings);
    notes.append_to(course.findings);
    sort_findings(course.findings);
    return course;
}

}  // namespace landwidth
