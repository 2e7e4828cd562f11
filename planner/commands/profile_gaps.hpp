// landwidth profile gaps: how far apart the clubs of a bag carry, and the slot a second tee club would fill.
#pragma once

#include <string>
#include <vector>

#include "planner/commands/command.hpp"
#include "planner/commands/output_options.hpp"

namespace landwidth {

class ProfileGapsCommand : public Command {
  public:
    void setup(CLI::App& app) override;
    int run(std::ostream& out, std::ostream& err) override;

  private:
    std::string file_;
    std::vector<std::string> assumed_;
    OutputOptions output_;
};

}  // namespace landwidth
