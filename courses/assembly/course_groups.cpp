#include "courses/assembly/course_groups.hpp"

#include <algorithm>
#include <limits>
#include <map>
#include <set>

#include "courses/assembly/feature_shapes.hpp"
#include "courses/assembly/hole_refs.hpp"
#include "courses/findings/finding_kinds.hpp"
#include "courses/text.hpp"
#include "geometry/error.hpp"

namespace landwidth {

namespace {

// A course's area in a plane of its own.
struct Boundary {
    const MapFeature* feature;
    PlaneFrame frame;
    Region region;

    bool contains(LonLat place) const { return region.contains(frame.to_plane(place)); }
};

// The places a hole is looked for by: the middle of its line first.
std::vector<LonLat> places_of(const MapFeature& hole) {
    if (const auto* point = std::get_if<LonLat>(&hole.shape)) return {*point};
    LonLatPath path;
    if (const auto* paths = std::get_if<std::vector<LonLatPath>>(&hole.shape)) {
        for (const LonLatPath& part : *paths)
            path.insert(path.end(), part.begin(), part.end());
    } else {
        path = std::get<std::vector<LonLatPolygon>>(hole.shape).front().outer;
    }
    if (path.size() < 2) return path;
    return {path[path.size() / 2], path.front(), path.back()};
}

std::vector<Boundary> boundaries_on(const MapIndex& index) {
    std::vector<Boundary> boundaries;
    RepairLog repairs;
    for (const IndexedFeature* indexed : index.with_role(Role::boundary)) {
        const auto* polygons = std::get_if<std::vector<LonLatPolygon>>(&indexed->feature->shape);
        if (polygons == nullptr) continue;
        const PlaneFrame frame(polygons->front().outer.front());
        Region region = PlaneDrawing(frame, repairs).area(*indexed->feature);
        boundaries.push_back({indexed->feature, frame, std::move(region)});
    }
    return boundaries;
}

const Boundary* boundary_of(const MapFeature& hole, const std::vector<Boundary>& boundaries) {
    for (const LonLat place : places_of(hole)) {
        const Boundary* smallest = nullptr;
        double area = std::numeric_limits<double>::infinity();
        for (const Boundary& boundary : boundaries) {
            if (!boundary.contains(place) || boundary.region.area() >= area) continue;
            smallest = &boundary;
            area = boundary.region.area();
        }
        if (smallest != nullptr) return smallest;
    }
    return nullptr;
}

struct Belonging {
    const MapFeature* hole;
    const Boundary* boundary;  // null: in none
    std::vector<std::string> names;
};

class Grouping {
  public:
    explicit Grouping(const MapIndex& index) : boundaries_(boundaries_on(index)) {
        for (const IndexedFeature* indexed : index.with_role(Role::hole)) {
            const MapFeature& hole = *indexed->feature;
            // A hole drawn as a point may be the cup in a green; the assembly looks at those.
            if (std::holds_alternative<LonLat>(hole.shape)) continue;
            holes_.push_back(
                {&hole, boundary_of(hole, boundaries_), list_items(hole.tag("golf:course:name"))});
        }
    }

    std::vector<CourseGroup> groups() {
        for (const Belonging& hole : holes_) {
            for (const std::string& name : hole.names)
                add(folded(name), name, "", *hole.hole);
        }
        for (const Belonging& hole : holes_) {
            if (!hole.names.empty() || hole.boundary == nullptr) continue;
            if (CourseGroup* loop = only_loop_in(*hole.boundary);
                loop != nullptr && has_room(*loop, *hole.hole)) {
                join(*loop, hole);
                continue;
            }
            const MapFeature& boundary = *hole.boundary->feature;
            const std::string& name = boundary.tag("name");
            add(name.empty() ? "\n" + boundary.label() : folded(name), name, boundary.label(), *hole.hole);
        }
        const bool only_course = groups_.size() == 1;
        for (const Belonging& hole : holes_) {
            if (!hole.names.empty() || hole.boundary != nullptr) continue;
            if (only_course && has_room(groups_.front(), *hole.hole)) {
                join(groups_.front(), hole);
            } else {
                add("", "", "unnamed", *hole.hole);
            }
        }
        for (CourseGroup& group : groups_)
            add_boundaries(group);
        return std::move(groups_);
    }

  private:
    void add(const std::string& key, const std::string& name, const std::string& handle,
             const MapFeature& hole) {
        const auto [entry, is_new] = places_.try_emplace(key, groups_.size());
        if (is_new) groups_.push_back({name, name.empty() ? handle : name, {}, {}, {}});
        groups_[entry->second].holes.push_back(&hole);
    }

    // The one loop with a name of its own among the holes of an area.
    CourseGroup* only_loop_in(const Boundary& boundary) {
        std::set<std::size_t> loops;
        for (const Belonging& hole : holes_) {
            if (hole.boundary != &boundary) continue;
            for (const std::string& name : hole.names)
                loops.insert(places_.at(folded(name)));
        }
        return loops.size() == 1 ? &groups_[*loops.begin()] : nullptr;
    }

    // Whether no hole of the course has this number.
    static bool has_room(const CourseGroup& group, const MapFeature& hole) {
        const std::vector<std::string> refs = refs_in(hole.tag("ref"));
        for (const MapFeature* member : group.holes) {
            for (const std::string& ref : refs_in(member->tag("ref"))) {
                if (std::find(refs.begin(), refs.end(), ref) != refs.end()) return false;
            }
        }
        return true;
    }

    void join(CourseGroup& group, const Belonging& hole) {
        group.holes.push_back(hole.hole);
        const std::vector<LonLat> places = places_of(*hole.hole);
        group.findings.push_back(finding_on_hole<"course-inferred">(
            hole.hole->label(), "", places.empty() ? std::nullopt : std::optional(places.front()),
            group.name));
    }

    void add_boundaries(CourseGroup& group) const {
        std::set<const MapFeature*> holes(group.holes.begin(), group.holes.end());
        for (const Boundary& boundary : boundaries_) {
            const std::string& name = boundary.feature->tag("name");
            bool belongs = !name.empty() && folded(name) == folded(group.name);
            for (const MapFeature* hole : group.holes) {
                for (const LonLat place : places_of(*hole))
                    belongs = belongs || boundary.contains(place);
                if (belongs) break;
            }
            if (belongs) group.boundaries.push_back(boundary.feature);
        }
    }

    std::vector<Boundary> boundaries_;
    std::vector<Belonging> holes_;
    std::vector<CourseGroup> groups_;
    std::map<std::string, std::size_t> places_;
};

std::string list_of(const std::vector<CourseGroup>& groups) {
    std::vector<std::string> items;
    for (const CourseGroup& group : groups) {
        const std::size_t count = group.holes.size();
        items.push_back("\"" + group.handle + "\" (" + std::to_string(count) +
                        (count == 1 ? " hole)" : " holes)"));
    }
    return enumeration(items, 40);
}

bool goes_by(const CourseGroup& group, const std::string& name) {
    return std::any_of(group.boundaries.begin(), group.boundaries.end(), [&name](const MapFeature* boundary) {
        return folded(boundary->tag("name")) == name || boundary->label() == name;
    });
}

}  // namespace

std::vector<CourseGroup> course_groups(const MapIndex& index) {
    return Grouping(index).groups();
}

std::vector<const CourseGroup*> choose_courses(const std::vector<CourseGroup>& groups,
                                               const std::vector<std::string>& names,
                                               const std::string& source) {
    if (names.empty()) {
        if (groups.size() == 1) return {&groups.front()};
        throw InputError(source,
                         "the map has several courses: " + list_of(groups) + "; say which with --course");
    }
    std::vector<const CourseGroup*> chosen;
    for (const std::string& name : names) {
        std::vector<const CourseGroup*> matches;
        for (const CourseGroup& group : groups) {
            if (folded(group.handle) == folded(name)) matches.push_back(&group);
        }
        if (matches.empty()) {
            for (const CourseGroup& group : groups) {
                if (goes_by(group, folded(name))) matches.push_back(&group);
            }
        }
        if (matches.size() != 1) {
            throw InputError(
                source, (matches.empty() ? "no course is called \"" : "several courses lie in \"") + name +
                            "\"; the map has " + list_of(groups));
        }
        chosen.push_back(matches.front());
    }
    return chosen;
}

}  // namespace landwidth
