#include "planner/commands/output_options.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>
#include <ostream>
#include <system_error>

#include "geometry/error.hpp"
#include "planner/reports/output_file.hpp"

namespace landwidth {

namespace {

// Options that name what is written, or what is written anew with all that it held.
constexpr std::array<std::string_view, 4> written{"--output", "--report", "--onto", "--force"};

// Whether what was typed is this file, under any name, or the folder it is in.
bool holds(const std::filesystem::path& typed, const std::filesystem::path& file) {
    std::error_code none;
    if (std::filesystem::equivalent(typed, file, none)) return true;
    return std::filesystem::exists(file, none) && std::filesystem::is_directory(typed, none) &&
           std::filesystem::equivalent(typed, std::filesystem::absolute(file, none).parent_path(), none);
}

}  // namespace

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
    app_ = &app;
    app.add_option("-o,--output", file_, "write to this file and not to standard output")->type_name("FILE");
    app.add_flag("--force", force_, "overwrite the file if it exists");
}

void OutputOptions::check() const {
    if (!to_file()) return;
    refuse_input("-o", file_);
    check_writable(file_, force_);
}

void OutputOptions::refuse_input(std::string_view option, const std::filesystem::path& file) const {
    for (const CLI::Option* other : app_->get_options()) {
        const std::string name = other->get_name();
        if (std::ranges::find(written, name) != written.end()) continue;
        for (const std::string& typed : other->results()) {
            if (!holds(typed, file)) continue;
            throw UsageError(fmt::format("{} {}: this command reads that file ({}); write to another", option,
                                         file.string(), name));
        }
    }
}

void OutputOptions::write(std::string_view content, std::ostream& out) const {
    if (to_file())
        write_file(file_, content, force_);
    else
        out << content;
}

}  // namespace landwidth
