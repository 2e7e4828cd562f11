// landwidth profile learn: a profile from recorded shots.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "golfer-profiles/learnt_golfer.hpp"
#include "planner/commands/command.hpp"
#include "planner/commands/golfer_options.hpp"
#include "planner/commands/output_options.hpp"
#include "planner/commands/session_options.hpp"
#include "planner/reports/learn_reports.hpp"

namespace landwidth {

class ProfileLearnCommand : public Command {
  public:
    void setup(CLI::App& app) override;
    int run(std::ostream& out, std::ostream& err) override;

  private:
    LearnRequest request(const Assumptions& assumptions, std::ostream& err) const;
    std::vector<ColumnName> columns() const;
    void check_reports() const;
    void write_reports(const LearnView& view, std::ostream& err) const;

    std::vector<std::string> logs_;
    std::vector<std::string> columns_;  // carry_yd=Carry
    std::string column_file_;
    std::vector<std::string> kinds_;    // wonder club=hybrid
    std::vector<std::string> carried_;  // driver, 45.5 in
    std::vector<std::string> assumed_;
    std::string onto_;
    SessionOptions session_;
    GolferOptions golfer_;
    std::string units_ = "yards";
    OutputOptions output_;
    std::vector<std::filesystem::path> reports_;  // learn.html
};

}  // namespace landwidth
