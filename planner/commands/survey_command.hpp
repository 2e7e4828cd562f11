// landwidth survey COURSE: what is on this map, and what is missing.
#pragma once

#include <string>
#include <vector>

#include "courses/survey/hole_survey.hpp"
#include "planner/commands/command.hpp"
#include "planner/commands/course_options.hpp"
#include "planner/commands/output_options.hpp"

namespace landwidth {

class SurveyCommand : public Command {
  public:
    void setup(CLI::App& app) override;
    int run(std::ostream& out, std::ostream& err) override;

  private:
    MapData read_map(std::ostream& out) const;
    void tell_left_out(const MapData& map, std::ostream& err) const;
    void write(const MapData& map, const Course& course, const std::vector<HoleSurvey>& surveys,
               std::ostream& out) const;

    CourseOptions course_;
    OutputOptions output_;
    std::vector<std::string> assumed_;
};

}  // namespace landwidth
