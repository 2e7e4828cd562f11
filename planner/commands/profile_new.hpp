// landwidth profile new: a profile with typical numbers, to start from.
#pragma once

#include <optional>
#include <string>

#include "golfer-profiles/profile.hpp"
#include "planner/commands/command.hpp"
#include "planner/commands/golfer_options.hpp"
#include "planner/commands/output_options.hpp"

namespace landwidth {

class ProfileNewCommand : public Command {
  public:
    void setup(CLI::App& app) override;
    int run(std::ostream& out, std::ostream& err) override;

  private:
    Golfer golfer() const;
    Golfer golfer_by_length() const;

    std::string preset_;
    std::string carry_;       // 7-iron=150yd
    std::string club_speed_;  // 95mph
    GolferOptions golfer_;
    std::optional<double> drive_;
    std::string drive_units_ = "yards";
    OutputOptions output_;
};

}  // namespace landwidth
