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

    // What can be known to fail before the work is done: throws OutputError as check_writable does, and
    // UsageError when the file is one that the command reads, --force or not.
    void check() const;
    // The same UsageError for another file that the command writes. Looks at what was typed for every option:
    // whatever names an existing file is read. A profile that --onto names may be written anew.
    void refuse_input(std::string_view option, const std::filesystem::path& file) const;
    // To the file, all or nothing, or to `out`. Throws OutputError.
    void write(std::string_view content, std::ostream& out) const;

  private:
    const CLI::App* app_ = nullptr;
    std::string format_;
    std::string units_ = "yards";
    std::filesystem::path file_;
    bool force_ = false;
};

}  // namespace landwidth
