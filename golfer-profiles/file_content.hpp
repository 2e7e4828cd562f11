// A whole file in memory, with the ways that can fail told in the user's words.
#pragma once

#include <cstddef>
#include <filesystem>
#include <string>
#include <string_view>

namespace landwidth {

// Throws InputError naming the file: a folder, not readable, more than `most_bytes`. `what` is what the file
// should be: "profile".
std::string file_content(const std::filesystem::path& path, std::size_t most_bytes, std::string_view what);

}  // namespace landwidth
