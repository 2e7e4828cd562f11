// What the golfer's club is and what is to become of it, as typed: the options of landwidth build, and the
// checks that they go together.
#pragma once

#include <CLI/App.hpp>
#include <optional>
#include <string>
#include <vector>

#include "golfer-profiles/profile.hpp"
#include "planner/commands/build_limits.hpp"
#include "planner/commands/build_parts.hpp"
#include "planner/engine/build_assumptions.hpp"
#include "planner/reports/build_reports.hpp"

namespace landwidth {

class BuildOptions {
  public:
    void setup(CLI::App& app);

    // The question answered. Carry is typed and shown in `units`; `warnings` gets what reading a profile had
    // to say. Throws UsageError for what is out of range or does not go together, InputError for a profile
    // that cannot be used.
    BuildView answer(DisplayUnits units, std::vector<std::string>& warnings) const;

  private:
    // Of an option: what landwidth::within makes of it.
    std::optional<double> within(const std::optional<double>& value, const char* option,
                                 const BuildLimits& limits) const;
    void setup_club(CLI::App& app);
    void setup_wishes(CLI::App& app);
    void setup_flight(CLI::App& app);

    // The club of the profile, or what --kind and the rest say of one.
    struct KnownClub {
        std::string name;
        ClubKind kind = ClubKind::driver;
        std::optional<double> length_m = {};
        std::optional<double> lie_rad = {};
        std::optional<double> loft_rad = {};
        KnownFlight flight = {};
    };
    KnownClub known_club(DisplayUnits units, std::vector<std::string>& warnings) const;
    void take_profile_club(KnownClub& club, std::vector<std::string>& warnings) const;

    BuildWishes wishes() const;
    // From two of --total, --balance and --swing-weight; nothing for fewer.
    std::optional<ClubWeights> weighed_club() const;
    // Nothing when no part is named.
    std::optional<TypedParts> typed_parts(std::optional<double> length_m) const;
    void add_length_answers(BuildView& view, const KnownClub& club,
                            const BuildAssumptions& assumptions) const;
    void add_parts_answers(BuildView& view, const TypedParts& typed,
                           const BuildAssumptions& assumptions) const;
    void check_enough(const KnownClub& club, const BuildWishes& wishes, bool has_parts, bool weighed) const;

    const CLI::App* app_ = nullptr;
    std::string profile_;
    std::string club_;
    std::string kind_;
    // Inches, grams, shares as typed.
    std::optional<double> length_, head_, shaft_, grip_, shaft_length_, shaft_balance_;
    std::optional<double> total_, balance_;
    std::string swing_weight_;
    std::optional<double> to_length_, to_head_, to_shaft_, to_shaft_balance_, to_grip_;
    std::string to_swing_weight_;
    std::optional<double> to_inertia_;
    std::optional<double> lie_, loft_;  // degrees
    std::string cut_ = "butt";
    std::optional<double> club_speed_, ball_speed_, carry_;
    std::vector<std::string> assumed_;
};

}  // namespace landwidth
