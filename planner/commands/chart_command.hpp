// landwidth chart PROFILE: where the driver pays, over landing width and length of the hole.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "planner/commands/command.hpp"
#include "planner/commands/output_options.hpp"
#include "planner/engine/driver_chart.hpp"

namespace landwidth {

class ChartCommand : public Command {
  public:
    void setup(CLI::App& app) override;
    int run(std::ostream& out, std::ostream& err) override;

  private:
    ChartRequest request() const;

    OutputOptions output_;
    std::filesystem::path profile_;
    std::string trouble_;
    std::string widths_;  // as typed; empty: the usual ones
    std::string lengths_;
    std::vector<std::string> assumed_;
};

}  // namespace landwidth
