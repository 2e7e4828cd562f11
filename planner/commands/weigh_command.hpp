// landwidth weigh COURSE... PROFILE: what changes to the bag are worth.
#pragma once

#include <string>
#include <vector>

#include "planner/commands/command.hpp"
#include "planner/commands/course_options.hpp"
#include "planner/commands/day_options.hpp"
#include "planner/commands/output_options.hpp"
#include "planner/engine/assumptions.hpp"
#include "planner/engine/bags/bag_change.hpp"

namespace landwidth {

class WeighCommand : public Command {
  public:
    void setup(CLI::App& app) override;
    int run(std::ostream& out, std::ostream& err) override;

  private:
    std::vector<Course> read_courses(const Assumptions& assumptions) const;

    CourseOptions course_;
    DayOptions day_;
    OutputOptions output_;
    std::vector<std::string> files_;  // the courses, then the profile
    std::vector<std::string> added_;
    std::vector<std::string> dropped_;
    std::vector<std::string> replaced_;
    std::string local_rule_;
    std::vector<std::string> assumed_;
};

}  // namespace landwidth
