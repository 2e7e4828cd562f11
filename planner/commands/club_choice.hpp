// The clubs that a command line names, in a profile and besides.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "planner/engine/bags/supposition.hpp"

namespace landwidth {

class ClubChoice {
  public:
    explicit ClubChoice(const Golfer& golfer) : golfer_(golfer) {}

    // A club of the profile. Throws UsageError, naming the nearest.
    std::size_t in_profile(std::string_view option, std::string_view name) const;
    // The same, or its usual name ("7-iron" for "7i"), or else a typical one of the kind that the name says,
    // put on trial with a warning. With a pattern.
    std::size_t to_hit(std::string_view option, std::string_view name);
    // Puts a supposed club on trial.
    std::size_t supposed(std::string_view option, const std::string& text);

    // What a club is a build of: as the profile says, or its name up to a comma.
    static std::string build_of(const Club& club);

    const Golfer& golfer() const { return golfer_; }
    const std::vector<SupposedClub>& suppositions() const { return supposed_; }
    const std::vector<std::string>& warnings() const { return warnings_; }

  private:
    std::optional<std::size_t> typical(std::string_view name);
    std::size_t on_trial(Club club);
    std::string free_name(const std::string& name) const;

    Golfer golfer_;
    std::vector<SupposedClub> supposed_;
    std::vector<std::string> warnings_;
};

}  // namespace landwidth
