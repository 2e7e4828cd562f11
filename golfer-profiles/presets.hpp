// Golfers to start from, when nobody has measured anything yet. Every number has its source in
// preset_numbers.cpp, or is called an assumption there and in the notes of the profile it makes.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "golfer-profiles/profile.hpp"

namespace landwidth {

struct Preset {
    std::string name;     // "scratch-woman"
    std::string summary;  // one line for a list
};

// tour, scratch-man, bogey-man, scratch-woman, bogey-woman. "tour" has no published woman's counterpart here.
const std::vector<Preset>& presets();

struct PresetChanges {
    std::string name;  // of the golfer; empty: the preset's own
    Hand hand = Hand::right;
};
// Throws UsageError naming the presets when there is none of that name. "scratch" and "bogey" are the men's.
Golfer preset_golfer(std::string_view name, const PresetChanges& changes = {});

enum class Reference { men, women };

// A whole bag for a handicap index ([-10, 54]) and the mean total distance of a drive (yards, [80, 380]);
// without one the published mean for the handicap is taken. Throws UsageError when out of range.
struct GolferRequest {
    std::string name;
    double handicap_index;
    std::optional<double> drive_total_yd = {};
    Reference reference = Reference::men;
    Hand hand = Hand::right;
};
Golfer typical_golfer(const GolferRequest& request);

}  // namespace landwidth
