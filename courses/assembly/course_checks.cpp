#include "courses/assembly/course_checks.hpp"

#include <algorithm>
#include <string>

#include "courses/assembly/hole_refs.hpp"
#include "courses/findings/finding_kinds.hpp"
#include "courses/text.hpp"

namespace landwidth {

std::vector<Finding> points_for_holes(const CourseGround& ground,
                                      const std::vector<const HoleDraft*>& holes) {
    std::vector<Finding> findings;
    for (const PinPlace& pin : ground.pins()) {
        if (!pin.tagged_as_hole) continue;
        const auto green = ground.nearest_green(pin.place);
        if (green && green->distance_m == 0.0) continue;
        const std::string ref = plain_ref(pin.feature->tag("ref"));
        const bool has_line = ref.empty() || std::ranges::any_of(holes, [&](const HoleDraft* hole) {
                                  return hole->number == ref;
                              });
        const std::string label = pin.feature->label();
        findings.push_back(has_line
                               ? finding_on_hole<"hole-not-a-line/also-a-point">(label, ref, pin.lonlat)
                               : finding_on_hole<"hole-not-a-line/only-a-point">(label, ref, pin.lonlat));
    }
    return findings;
}

std::vector<Finding> boundary_missing(const MapIndex& map, const std::vector<CourseGroup>& groups,
                                      const DegreeBox& holes, bool knows_edge) {
    for (const IndexedFeature* indexed : map.with_role(Role::boundary)) {
        const bool anothers = std::ranges::any_of(groups, [&](const CourseGroup& group) {
            return std::ranges::find(group.boundaries, indexed->feature) != group.boundaries.end();
        });
        const bool area = std::holds_alternative<std::vector<LonLatPolygon>>(indexed->feature->shape);
        if (area && !anothers && indexed->box.meets(holes))
            return {finding_on_course<"boundary-beside">(indexed->feature->label())};
    }
    if (!knows_edge) return {finding_on_course<"boundary-missing/edge-unknown">()};
    return {finding_on_course<"boundary-missing">()};
}

std::vector<Finding> ground_missing(const std::vector<const IndexedFeature*>& around) {
    std::set<Role> roles;
    for (const IndexedFeature* indexed : around)
        roles.insert(indexed->feature->role());
    const auto has_any = [&roles](std::initializer_list<Role> wanted) {
        return std::ranges::any_of(wanted, [&roles](Role role) { return roles.contains(role); });
    };
    if (!has_any({Role::green, Role::tee, Role::fairway, Role::bunker, Role::rough}))
        return {finding_on_course<"ground-missing">()};
    std::vector<Finding> findings;
    if (!has_any({Role::bunker, Role::sand})) findings.push_back(finding_on_course<"bunkers-missing">());
    if (!has_any({Role::yellow_penalty_area, Role::red_penalty_area, Role::water, Role::watercourse,
                  Role::coastline}))
        findings.push_back(finding_on_course<"water-missing">());
    return findings;
}

std::vector<Finding> golf_unused(const MapIndex& map, const std::set<const MapFeature*>& used) {
    std::vector<const MapFeature*> unused;
    std::set<std::string> unknown;
    for (const IndexedFeature& indexed : map.features()) {
        const Role role = indexed.feature->role();
        if (role == Role::other_golf) unknown.insert(tag_words(indexed.feature->tags));
        const bool ground =
            is_golf(role) && role != Role::hole && role != Role::boundary && role != Role::other_golf;
        if (ground && !used.contains(indexed.feature)) unused.push_back(indexed.feature);
    }
    std::vector<Finding> findings;
    if (unused.size() == 1)
        findings.push_back(finding_on_course<"features-unused/one">(unused.front()->label()));
    if (unused.size() > 1)
        findings.push_back(
            finding_on_course<"features-unused/several">(unused.size(), unused.front()->label()));
    if (!unknown.empty())
        findings.push_back(finding_on_course<"golf-unknown">(enumeration({unknown.begin(), unknown.end()})));
    return findings;
}

}  // namespace landwidth
