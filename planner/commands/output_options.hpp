// The options of every command that writes a result: where, in which form and units.
#pragma once

#include <CLI/App.hpp>
#include <filesystem>
#include <iosfwd>
#include <string>
#include <string_view>
#include <vector>

#include "planner/reports/plan_view.hpp"

namespace landwidth {

class OutputOptions {
  public:
    // The first format is the default.
    void setup(CLI::App& app, const std::vector<std::string>& formats);
    // -o and --force alone, for a command with one form of output.
    void setup_file(CLI::App& app);

    const std::string& format() const { return format_; }
    DisplayUnits units() const { return units_ == "metres" ? DisplayUnits::metres : DisplayUnits::yards; }
    bool to_file() const { return !file_.empty(); }
    const std::filesystem::path& file() const { return file_; }
    bool force() const { return force_; }

    // What can be known to fail before the work is done. Throws OutputError.
    void check() const;
    // To the file, all or nothing, or to `out`. Throws OutputError.
    void write(std::string_view content, std::ostream& out) const;

  private:
    std::string format_;
    std::string units_ = "yards";
    std::filesystem::path file_;
    bool force_ = false;
};

}  // namespace landwidth
