// landwidth profile new|learn|check|show|gaps: a golfer's profile. Each subcommand is a command of its own.
#pragma once

#include "planner/commands/command.hpp"
#include "planner/commands/command_set.hpp"

namespace landwidth {

class ProfileCommand : public Command {
  public:
    void setup(CLI::App& app) override;
    int run(std::ostream& out, std::ostream& err) override;

  private:
    CommandSet subcommands_;
};

}  // namespace landwidth
