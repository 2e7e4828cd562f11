// landwidth profile new|check|show: makes a golfer's profile, checks one, shows one.
#pragma once

#include <optional>
#include <string>

#include "golfer-profiles/profile.hpp"
#include "planner/commands/command.hpp"
#include "planner/commands/output_options.hpp"

namespace landwidth {

class ProfileCommand : public Command {
  public:
    void setup(CLI::App& app) override;
    int run(std::ostream& out, std::ostream& err) override;

  private:
    void setup_new(CLI::App& app);
    void setup_check(CLI::App& app);
    void setup_show(CLI::App& app);

    Golfer new_golfer() const;
    int run_new(std::ostream& out, std::ostream& err) const;
    int run_check(std::ostream& out, std::ostream& err) const;
    int run_show(std::ostream& out, std::ostream& err) const;

    const CLI::App* new_ = nullptr;
    const CLI::App* check_ = nullptr;
    std::string file_;  // of check and show

    // Of new.
    std::string preset_;
    std::string handicap_;  // as typed: +2.3 is a plus handicap
    std::optional<double> drive_;
    std::string drive_units_ = "yards";
    bool women_ = false;
    bool left_handed_ = false;
    std::string name_;
    OutputOptions new_output_;

    OutputOptions show_output_;
};

}  // namespace landwidth
