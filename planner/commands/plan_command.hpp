// landwidth plan COURSE PROFILE: the round plan.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "golfer-profiles/profile_file.hpp"
#include "planner/commands/command.hpp"
#include "planner/commands/course_options.hpp"
#include "planner/commands/day_options.hpp"
#include "planner/commands/output_options.hpp"
#include "planner/engine/round_plan.hpp"

namespace landwidth {

class PlanCommand : public Command {
  public:
    void setup(CLI::App& app) override;
    int run(std::ostream& out, std::ostream& err) override;

  private:
    void check_wind_card(const PlanRequest& request) const;
    void write_plan(const Course& course, const ProfileReading& profile, const PlanRequest& request,
                    std::ostream& out, std::ostream& err) const;
    void write_wind_card(const Course& course, const ProfileReading& profile, const PlanRequest& request,
                         const Wind& wind, std::ostream& out, std::ostream& err) const;

    CourseOptions course_;
    DayOptions day_;
    OutputOptions output_;
    std::filesystem::path profile_;
    std::string field_ = "personal";
    std::string aim_for_ = "strokes";
    std::string local_rule_;
    std::vector<std::string> assumed_;
};

}  // namespace landwidth
