// A hole on its way from a golf=hole feature to a hole that can be planned.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "courses/assembly/course_ground.hpp"
#include "courses/findings/finding_kinds.hpp"
#include "courses/map_assumptions.hpp"

namespace landwidth {

// No golf hole is shorter or longer: the line, or the map's reference system, must be wrong (an assumption).
inline constexpr double shortest_hole_m = 20.0;
inline constexpr double longest_hole_m = 1500.0;

struct HoleDraft {
    const MapFeature* feature = nullptr;
    std::string mapped_ref;                // as it stands on the map: "1;10", "Hole 7"; may be empty
    std::string number;                    // within its loop on the map: what tees, greens and pins bear
    std::string ref;                       // as printed and asked for: unique within the course
    std::size_t item = 0;                  // which item of lists like par="4;5" counts, for refs like "1;10"
    LonLatPath path;                       // from tee to green
    std::vector<LonLatPath> alternatives;  // other lines of the same hole, for other tees
    std::optional<std::size_t> green;      // index into the course's greens
    std::vector<std::size_t> tees;         // indices of the course's tees that belong to it
    bool playable = true;                  // false: an error finding says why not
    std::vector<Finding> findings;         // their `hole` is filled in at the end

    // Without a place of its own a finding is placed at the start of the line.
    template <KindName kind, typename... Args>
    void report(std::optional<LonLat> place, const Args&... args) {
        if (!place && !path.empty()) place = path.front();
        findings.push_back(finding_on_hole<kind>(feature->label(), "", place, args...));
    }
};

// Reads a hole's line and finds its green; its number and ref are what is mapped until it is numbered
// (hole_numbering.hpp). Rules:
// - Lines in parts are chained end to end; gaps up to snap_m are bridged with a warning.
// - A line of fewer than two different points, shorter than 20 m or longer than 1500 m is an error.
// - Its direction and its green are one choice (hole_ends.hpp): a line turned round is a warning, one that
// ends
//   short of its green a note, one that runs on behind it is ended there (a warning), a green with another
//   hole's number is a warning, no green an error.
HoleDraft draft_hole(const MapFeature& feature, const CourseGround& ground,
                     const MapAssumptions& assumptions);

// Where the hole is being played to, and how that is known. Rules: of the pins in its green the one with the
// hole's ref, else the nearest to the line's end; golf=hole points count as pins where there is no other;
// else the line's end where it is in the green, else the middle of the green (both a note).
LonLat pin_of(HoleDraft& draft, const CourseGround& ground);

double length_of(const LonLatPath& path);

}  // namespace landwidth
