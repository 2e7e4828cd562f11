#include "golfer-profiles/logs/log_text.hpp"

#include <fmt/format.h>
#include <iconv.h>

#include <algorithm>
#include <memory>
#include <string_view>
#include <type_traits>

#include "geometry/error.hpp"
#include "golfer-profiles/file_content.hpp"
#include "golfer-profiles/json_text.hpp"

namespace landwidth {
namespace {

// 100,000 shots take 10 MB.
constexpr std::size_t largest_file = 256U << 20U;

struct CloseConversion {
    void operator()(void* conversion) const { iconv_close(conversion); }
};
static_assert(std::is_same_v<iconv_t, void*>);
using Conversion = std::unique_ptr<void, CloseConversion>;

// Nothing in the text may be unknown to the encoding.
std::string utf8_of(std::string_view text, const char* encoding, const std::string& file) {
    const iconv_t opened = iconv_open("UTF-8", encoding);
    if (opened == reinterpret_cast<iconv_t>(-1)) {
        throw InputError(file, fmt::format("this system cannot read {}; save the file as UTF-8", encoding));
    }
    const Conversion conversion(opened);
    std::string input(text);
    std::string result(2 * text.size() + 4, '\0');  // two bytes of UTF-16 give at most three
    char* from = input.data();
    std::size_t left = input.size();
    char* to = result.data();
    std::size_t room = result.size();
    if (iconv(opened, &from, &left, &to, &room) == static_cast<std::size_t>(-1)) {
        throw InputError(file, "is cut off or no good UTF-16 text; save the file as UTF-8");
    }
    result.resize(result.size() - room);
    return result;
}

[[noreturn]] void refuse_encoding(std::string_view text, const std::string& file) {
    std::size_t line = 1;
    for (std::size_t start = 0; start < text.size(); ++line) {
        const std::size_t end = std::min(text.find('\n', start), text.size());
        const std::string_view here = text.substr(start, end - start);
        if (!is_utf8(here)) {
            throw InputError(file, fmt::format("line {}, {}: not UTF-8 text; save the file as UTF-8", line,
                                               in_quotes(here)));
        }
        start = end + 1;
    }
    throw InputError(file, "not UTF-8 text; save the file as UTF-8");
}

}  // namespace

std::string log_text(const std::filesystem::path& path, std::string_view what) {
    constexpr std::string_view utf8_mark = "\xef\xbb\xbf";
    const std::string file = path.string();
    std::string text = file_content(path, largest_file, what);
    if (text.starts_with("PK\x03\x04") || text.starts_with("\xd0\xcf\x11\xe0")) {
        throw InputError(file, "is a workbook or archive and no text; save the sheet as CSV");
    }
    if (text.starts_with("\xff\xfe"))
        text = utf8_of(std::string_view(text).substr(2), "UTF-16LE", file);
    else if (text.starts_with("\xfe\xff"))
        text = utf8_of(std::string_view(text).substr(2), "UTF-16BE", file);
    else if (text.starts_with(utf8_mark))
        text.erase(0, utf8_mark.size());
    if (trimmed(text).empty()) throw InputError(file, "the file is empty");
    if (text.find('\0') != std::string::npos) {
        throw InputError(file, "is no text, or UTF-16 without a byte-order mark; save the file as UTF-8 CSV");
    }
    if (!is_utf8(text)) refuse_encoding(text, file);
    return text;
}

}  // namespace landwidth
