// landwidth survey COURSE: what is on this map, and what is missing.
#pragma once

#include <string>
#include <vector>

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

    CourseOptions course_;
    OutputOptions output_;
    std::vector<std::string> assumed_;
};

}  // namespace landwidth
