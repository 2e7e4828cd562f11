#include "planner/commands/output_options.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <ostream>

#include "planner/reports/output_file.hpp"

namespace landwidth {

void OutputOptions::setup(CLI::App& app, const std::vector<std::string>& formats) {
    format_ = formats.front();
    app.add_option("--format", format_, fmt::format("form of the result: {}", fmt::join(formats, ", ")))
        ->type_name("FORM")
        ->check(CLI::IsMember(formats).description(""))
        ->capture_default_str();
    app.add_option("--units", units_, "lengths in the result: yards or metres")
        ->type_name("UNIT")
        ->check(CLI::IsMember({"yards", "metres"}).description(""))
        ->capture_default_str();
    setup_file(app);
}

void OutputOptions::setup_file(CLI::App& app) {
    app.add_option("-o,--output", file_, "write to this file and not to standard output")->type_name("FILE");
    app.add_flag("--force", force_, "overwrite the file if it exists");
}

void OutputOptions::check() const {
    if (to_file()) check_writable(file_, force_);
}

void OutputOptions::write(std::string_view content, std::ostream& out) const {
    if (to_file())
        write_file(file_, content, force_);
    else
        out << content;
}

}  // namespace landwidth
