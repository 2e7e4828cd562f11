// The text of a log file, whatever a spreadsheet or an app saved it as.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

namespace landwidth {

// As UTF-8 without a byte-order mark: UTF-8 as it is, UTF-16 (which must have its mark) converted. Throws
// InputError naming the file, and the line where there is one: not readable, empty, a workbook and no text,
// text in another encoding. `what` is what the file
// should be.
std::string log_text(const std::filesystem::path& path, std::string_view what = "shot log");

}  // namespace landwidth
