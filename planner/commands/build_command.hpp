// landwidth build [PROFILE]: what a change of club build does, as moments and as ranges of common practice.
#pragma once

#include "planner/commands/build_options.hpp"
#include "planner/commands/command.hpp"
#include "planner/commands/output_options.hpp"

namespace landwidth {

class BuildCommand : public Command {
  public:
    void setup(CLI::App& app) override;
    int run(std::ostream& out, std::ostream& err) override;

  private:
    BuildOptions build_;
    OutputOptions output_;
};

}  // namespace landwidth
