// landwidth weigh [COURSE...] PROFILE: what changes to the bag are worth, on courses or on straight holes.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "golfer-profiles/profile_file.hpp"
#include "planner/commands/asked_changes.hpp"
#include "planner/commands/command.hpp"
#include "planner/commands/course_options.hpp"
#include "planner/commands/day_options.hpp"
#include "planner/commands/output_options.hpp"
#include "planner/reports/weigh_reports.hpp"

namespace landwidth {

class WeighCommand : public Command {
  public:
    void setup(CLI::App& app) override;
    int run(std::ostream& out, std::ostream& err) override;

  private:
    struct Ground {
        std::vector<Course> courses;
        std::optional<StraightHoles> straight;  // where no course was given
        std::vector<std::string> warnings;
    };
    ProfileReading profile() const;
    Ground ground(const WeighRequest& request) const;
    Ground straight_ground(const WeighRequest& request) const;
    void write(const WeighView& view, Weighing& weighing, std::ostream& out) const;

    CourseOptions course_;
    DayOptions day_;
    OutputOptions output_;
    std::vector<std::string> files_;  // the courses, then the profile
    std::vector<std::string> added_;
    std::vector<std::string> dropped_;
    std::vector<std::string> replaced_;
    std::vector<std::string> supposed_;
    bool together_ = false;
    std::string trouble_;  // empty: a mix
    std::string local_rule_;
    std::vector<std::string> assumed_;
};

}  // namespace landwidth
