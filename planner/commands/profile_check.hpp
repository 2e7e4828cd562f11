// landwidth profile check: everything that is wrong or doubtful in a profile.
#pragma once

#include <string>

#include "planner/commands/command.hpp"

namespace landwidth {

class ProfileCheckCommand : public Command {
  public:
    void setup(CLI::App& app) override;
    int run(std::ostream& out, std::ostream& err) override;

  private:
    std::string file_;
};

}  // namespace landwidth
