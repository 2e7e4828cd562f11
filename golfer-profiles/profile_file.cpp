#include "golfer-profiles/profile_file.hpp"

#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "geometry/error.hpp"
#include "golfer-profiles/file_content.hpp"
#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/profile_format.hpp"

namespace landwidth {
namespace {

// A whole bag with notes takes 10 kB. Anything near this is another kind of file, or a device without an end.
constexpr std::size_t largest_file = 4U << 20U;

ProfileReading reading_of(ProfileCheck check, const std::string& file_name) {
    if (check.errors.empty()) return {std::move(*check.golfer), std::move(check.warnings)};
    const std::size_t more = check.errors.size() - 1;
    const std::string rest =
        more == 0 ? "" : fmt::format(" ({} more; \"landwidth profile check\" lists them)", more);
    throw InputError(file_name, check.errors.front() + rest);
}

}  // namespace

ProfileCheck check_profile_text(const std::string& text, const std::string& file_name) {
    std::vector<std::string> repeated;
    const nlohmann::json root = parse_json(text, file_name, repeated);
    FieldNotes notes;
    for (const std::string& path : repeated) {
        notes.errors.push_back(
            fmt::format("the key {} stands twice in one object; keep one of them", in_quotes(path)));
    }
    Golfer golfer = golfer_of_json(root, notes);
    ProfileCheck check{std::nullopt, std::move(notes.errors), std::move(notes.warnings)};
    if (!check.errors.empty()) return check;
    for (std::string& doubt : doubts(golfer))
        check.warnings.push_back(std::move(doubt));
    check.golfer = std::move(golfer);
    return check;
}

ProfileCheck check_profile(const std::filesystem::path& path) {
    return check_profile_text(file_content(path, largest_file, "profile"), path.string());
}

ProfileReading parse_profile(const std::string& text, const std::string& file_name) {
    return reading_of(check_profile_text(text, file_name), file_name);
}

ProfileReading read_profile(const std::filesystem::path& path) {
    return reading_of(check_profile(path), path.string());
}

}  // namespace landwidth
