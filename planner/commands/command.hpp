// What every command of the program is: options filled in by the parser, then one run.
#pragma once

#include <CLI/App.hpp>
#include <iosfwd>

namespace landwidth {

class Command {
  public:
    Command() = default;
    Command(const Command&) = delete;
    Command& operator=(const Command&) = delete;
    virtual ~Command() = default;

    // Declares options and help on the command's own parser; the values land in members.
    virtual void setup(CLI::App& app) = 0;
    // Does the job: results to `out`, progress and warnings to `err`. Returns the exit code 0 (done) or 1
    // (the answer is "no"); bad usage and bad input are thrown as Error.
    virtual int run(std::ostream& out, std::ostream& err) = 0;
};

}  // namespace landwidth
