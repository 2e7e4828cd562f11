// Writing results: all or nothing.
#pragma once

#include <filesystem>
#include <functional>
#include <string_view>

namespace landwidth {

// Writes beside the target and renames at the end, so that a killed run leaves the old file or none. Throws
// OutputError: the folder is missing, the target exists and `force` is off (also when it appears meanwhile),
// the disk is full or the folder not writable. A link stays a link, a replaced file's rights stay; a target
// that is no regular file (a pipe, /dev/null) is written to directly. What a killed run may leave is a hidden
// folder ".landwidth-..." beside the target, to be deleted.
void write_file(const std::filesystem::path& target, std::string_view content, bool force);

// The same for a writer that needs a file name of its own (a database): `write` is given a path where nothing
// is yet, with the target's file name, in a temporary folder of its own on the target's file system; what it
// throws is passed on and the folder removed with all it holds.
void write_file_with(const std::filesystem::path& target, bool force,
                     const std::function<void(const std::filesystem::path&)>& write);

// Throws OutputError for what can be known before a long computation: folder missing, target exists without
// `force`.
void check_writable(const std::filesystem::path& target, bool force);

}  // namespace landwidth
