// Commands side by side on one parser: those of the program, and the subcommands of a command.
#pragma once

#include <CLI/App.hpp>
#include <memory>
#include <utility>
#include <vector>

#include "planner/commands/command.hpp"

namespace landwidth {

class CommandSet {
  public:
    template <typename C>
    void add(CLI::App& parent, const char* name, const char* summary) {
        auto command = std::make_unique<C>();
        CLI::App* parser = parent.add_subcommand(name, summary);
        command->setup(*parser);
        commands_.push_back({std::move(command), parser});
    }

    // After parsing: the one named on the command line; nullptr when none was.
    Command* chosen() const {
        for (const Named& named : commands_)
            if (named.parser->parsed()) return named.command.get();
        return nullptr;
    }

  private:
    struct Named {
        std::unique_ptr<Command> command;
        CLI::App* parser;
    };
    std::vector<Named> commands_;
};

}  // namespace landwidth
