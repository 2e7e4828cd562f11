#include "courses/assembly/course_assembly.hpp"

#include <algorithm>
#include <set>

#include "courses/assembly/course_groups.hpp"
#include "courses/assembly/fairway_owners.hpp"
#include "courses/assembly/hole_assembly.hpp"
#include "courses/assembly/hole_numbering.hpp"
#include "courses/assembly/hole_refs.hpp"
#include "courses/assembly/tee_choice.hpp"
#include "courses/text.hpp"
#include "geometry/error.hpp"

namespace landwidth {

namespace {

// Other courses' holes within this of the chosen ones count as neighbours, metres.
constexpr double neighbourhood_m = 1000.0;

// Where the holes are: the place of the first that has one.
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

class Assembly {
  public:
    Assembly(const MapData& map, const CourseRequest& request, const MapAssumptions& assumptions)
        : map_(map),
          request_(request),
          assumptions_(assumptions),
          index_(map),
          groups_(course_groups(index_)),
          chosen_(choose()),
          ground_(ground_features(), origin(), notes_.repairs()) {}

    Course assemble() {
        course_.name = course_name();
        course_.source = map_.source;
        course_.attribution = map_.attribution;
        course_.findings = map_.findings;
        draft_holes();
        check_tee();
        keep_holes_wanted();
        for (const CourseGroup* group : chosen_)
            add_group_findings(*group);
        look_at_points();
        look_for_ground();
        assemble_holes();
        notes_.append_to(course_.findings);
        sort_findings(course_.findings);
        return std::move(course_);
    }

  private:
    std::vector<const CourseGroup*> choose() const {
        if (groups_.empty()) {
            const bool points = !index_.with_role(Role::hole).empty();
            throw InputError(map_.source,
                             points ? "its golf=hole features are points; draw every hole as a line "
                                      "from tee to pin"
                                    : "there is no golf=hole line on this map; draw every hole as a "
                                      "line from tee to pin");
        }
        return choose_courses(groups_, request_.names, map_.source);
    }

    std::vector<const MapFeature*> chosen_holes() const {
        std::vector<const MapFeature*> holes;
        for (const CourseGroup* group : chosen_)
            holes.insert(holes.end(), group->holes.begin(), group->holes.end());
        return holes;
    }

    LonLat origin() const { return anchor_of(chosen_holes()); }

    std::vector<const IndexedFeature*> ground_features() const {
        return index_.near(box_of(chosen_holes()).grown(neighbourhood_m));
    }

    std::string course_name() const {
        std::vector<std::string> names;
        for (const CourseGroup* group : chosen_) {
            if (!group->name.empty()) names.push_back(group->name);
        }
        std::string name;
        for (const std::string& one : names)
            name += (name.empty() ? "" : " + ") + one;
        return name;
    }

    std::vector<HoleDraft> drafts_of(const CourseGroup& group) const {
        std::vector<HoleDraft> drafts;
        for (const MapFeature* hole : group.holes)
            drafts.push_back(draft_hole(*hole, ground_, assumptions_));
        return number_holes(std::move(drafts), ground_, request_.tee, assumptions_.snap_m);
    }

    // The holes of the chosen courses, then of those beside them, which share out the tees among them.
    void draft_holes() {
        std::vector<std::vector<HoleDraft>> loops;
        for (const CourseGroup* group : chosen_)
            loops.push_back(drafts_of(*group));
        renumber_on(loops);
        for (std::vector<HoleDraft>& loop : loops)
            std::move(loop.begin(), loop.end(), std::back_inserter(drafts_));
        sort_by_number(drafts_);
        const DegreeBox here = box_of(chosen_holes()).grown(neighbourhood_m);
        for (const CourseGroup& group : groups_) {
            if (std::find(chosen_.begin(), chosen_.end(), &group) != chosen_.end()) continue;
            if (!box_of(group.holes).meets(here)) continue;
            std::vector<HoleDraft> beside = drafts_of(group);
            std::move(beside.begin(), beside.end(), std::back_inserter(neighbours_));
        }
        std::vector<HoleDraft*> all;
        for (HoleDraft& draft : drafts_)
            all.push_back(&draft);
        for (HoleDraft& draft : neighbours_)
            all.push_back(&draft);
        share_out_tees(all, ground_, assumptions_.snap_m);
    }

    void check_tee() const {
        if (request_.tee.empty()) return;
        std::vector<std::string> names;
        for (const HoleDraft& draft : drafts_) {
            if (goes_by_tee(*draft.feature, request_.tee)) return;
            for (const std::size_t tee : draft.tees) {
                if (goes_by_tee(*ground_.tees()[tee].part.feature, request_.tee)) return;
            }
            for (std::string& name : tee_names(draft, ground_)) {
                if (std::find(names.begin(), names.end(), name) == names.end())
                    names.push_back(std::move(name));
            }
        }
        throw InputError(map_.source,
                         "no hole has a tee called \"" + request_.tee + "\"; " +
                             (names.empty() ? "its tees have no names" : "there is " + enumeration(names)));
    }

    void keep_holes_wanted() {
        for (const HoleDraft& draft : drafts_)
            all_.push_back(draft);
        for (const HoleDraft& draft : neighbours_)
            all_.push_back(draft);
        holes_of_course_ = drafts_.size();
        if (request_.refs.empty()) return;
        std::set<std::string> wanted;
        for (const std::string& text : request_.refs) {
            const std::string ref = plain_ref(text);
            const bool there =
                std::any_of(drafts_.begin(), drafts_.end(), [&](const HoleDraft& d) { return d.ref == ref; });
            if (!there) {
                std::vector<std::string> refs;
                for (const HoleDraft& draft : drafts_)
                    refs.push_back(draft.ref);
                throw InputError(map_.source, "there is no hole " + text + "; the course has " +
                                                  (refs.size() == 1 ? "hole " : "holes ") +
                                                  enumeration(refs, 40));
            }
            wanted.insert(ref);
        }
        std::erase_if(drafts_, [&](const HoleDraft& draft) { return !wanted.contains(draft.ref); });
    }

    bool wants_all() const { return request_.refs.empty(); }

    void tell(Finding finding) { course_.findings.push_back(std::move(finding)); }

    void add_group_findings(const CourseGroup& group) {
        for (const Finding& finding : group.findings) {
            const bool wanted = std::any_of(drafts_.begin(), drafts_.end(), [&](const HoleDraft& draft) {
                return draft.feature->label() == finding.feature;
            });
            if (wanted) course_.findings.push_back(finding);
        }
    }

    // golf=hole on a point is a cup when it lies in a green; else a hole that cannot be planned, unless it
    // has a line as well.
    void look_at_points() {
        if (!wants_all()) return;
        for (const PinPlace& pin : ground_.pins()) {
            if (!pin.tagged_as_hole) continue;
            const auto green = ground_.nearest_green(pin.place);
            if (green && green->distance_m == 0.0) continue;
            const std::string ref = plain_ref(pin.feature->tag("ref"));
            const bool has_line =
                ref.empty() || std::any_of(all_.begin(), all_.end(),
                                           [&](const HoleDraft& draft) { return draft.ref == ref; });
            const std::string label = pin.feature->label();
            tell(has_line ? finding_on_hole<"hole-not-a-line/also-a-point">(label, ref, pin.lonlat)
                          : finding_on_hole<"hole-not-a-line/only-a-point">(label, ref, pin.lonlat));
        }
    }

    void assemble_holes() {
        std::vector<const MapFeature*> boundaries;
        for (const CourseGroup* group : chosen_) {
            for (const MapFeature* boundary : group->boundaries) {
                if (std::find(boundaries.begin(), boundaries.end(), boundary) == boundaries.end())
                    boundaries.push_back(boundary);
            }
        }
        if (boundaries.empty()) tell(finding_on_course<"boundary-missing">());
        std::vector<const HoleDraft*> all;
        for (const HoleDraft& draft : all_)
            all.push_back(&draft);
        std::set<const MapFeature*> used;
        // What it repairs is told where a hole that is wanted needs it.
        RepairLog untold;
        const FairwayOwners fairways(ground_features(), all, ground_.frame(), untold);
        const CourseContext context{index_,           ground_,        assumptions_, request_.tee,
                                    boundaries,       std::move(all), fairways,     map_.stated_extent(),
                                    holes_of_course_, notes_,         used};
        for (HoleDraft& draft : drafts_) {
            if (draft.playable) {
                if (std::optional<Hole> hole = assemble_hole(draft, context))
                    course_.holes.push_back(std::move(*hole));
            }
            for (Finding& finding : draft.findings) {
                finding.hole = draft.ref;
                course_.findings.push_back(std::move(finding));
            }
        }
        if (wants_all() && groups_.size() == 1) count_unused(used);
    }

    // What a whole course lacks is more likely missing on the map than on the ground.
    void look_for_ground() {
        std::set<Role> roles;
        for (const IndexedFeature* indexed : ground_features())
            roles.insert(indexed->feature->role());
        const auto any_of = [&roles](std::initializer_list<Role> wanted) {
            return std::ranges::any_of(wanted, [&roles](Role role) { return roles.contains(role); });
        };
        if (!any_of({Role::green, Role::tee, Role::fairway, Role::bunker, Role::rough})) {
            return tell(finding_on_course<"ground-missing">());
        }
        if (!any_of({Role::bunker, Role::sand})) tell(finding_on_course<"bunkers-missing">());
        if (!any_of({Role::yellow_penalty_area, Role::red_penalty_area, Role::water, Role::watercourse,
                     Role::coastline}))
            tell(finding_on_course<"water-missing">());
    }

    void count_unused(const std::set<const MapFeature*>& used) {
        int unused = 0;
        std::string example;
        std::set<std::string> unknown;
        for (const IndexedFeature& indexed : index_.features()) {
            const Role role = indexed.feature->role();
            if (role == Role::other_golf) unknown.insert(tag_words(indexed.feature->tags));
            if (!is_golf(role) || role == Role::hole || role == Role::boundary || role == Role::other_golf)
                continue;
            if (used.contains(indexed.feature)) continue;
            if (unused++ == 0) example = indexed.feature->label();
        }
        if (unused == 1) tell(finding_on_course<"features-unused/one">(example));
        if (unused > 1) tell(finding_on_course<"features-unused/several">(unused, example));
        if (!unknown.empty())
            tell(finding_on_course<"golf-unknown">(enumeration({unknown.begin(), unknown.end()})));
    }

    const MapData& map_;
    const CourseRequest& request_;
    const MapAssumptions& assumptions_;
    FeatureNotes notes_;
    MapIndex index_;
    std::vector<CourseGroup> groups_;
    std::vector<const CourseGroup*> chosen_;
    CourseGround ground_;
    std::vector<HoleDraft> drafts_;      // of the holes wanted, in the order of play
    std::vector<HoleDraft> neighbours_;  // of other courses nearby
    std::vector<HoleDraft> all_;         // every hole around, wanted or not
    std::size_t holes_of_course_ = 0;
    Course course_;
};

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
    return Assembly(map, request, assumptions).assemble();
}

}  // namespace landwidth
