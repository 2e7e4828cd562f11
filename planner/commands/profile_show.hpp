// landwidth profile show: the bag of a profile as a table.
#pragma once

#include <string>

#include "planner/commands/command.hpp"
#include "planner/commands/output_options.hpp"

namespace landwidth {

class ProfileShowCommand : public Command {
  public:
    void setup(CLI::App& app) override;
    int run(std::ostream& out, std::ostream& err) override;

  private:
    std::string file_;
    OutputOptions output_;
};

}  // namespace landwidth
