#include "golfer-profiles/json_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <nlohmann/json.hpp>
#include <set>

#include "geometry/error.hpp"

namespace landwidth {
namespace {

using Json = nlohmann::json;

struct Failure {
    std::size_t offset;     // of the byte after the last one read
    std::string last_read;  // the word the parser stumbled over
    bool too_large;         // a number beyond double
};

// Walks the text once without building anything: collects repeated keys and the first failure.
class Walk : public nlohmann::json_sax<Json> {
  public:
    explicit Walk(std::vector<std::string>& repeated) : repeated_(repeated) {}
    const std::optional<Failure>& failure() const { return failure_; }

    bool null() override { return count(); }
    bool boolean(bool) override { return count(); }
    bool number_integer(number_integer_t) override { return count(); }
    bool number_unsigned(number_unsigned_t) override { return count(); }
    bool number_float(number_float_t, const string_t&) override { return count(); }
    bool string(string_t&) override { return count(); }
    bool binary(binary_t&) override { return count(); }
    bool start_object(std::size_t) override { return open(false); }
    bool start_array(std::size_t) override { return open(true); }
    bool end_object() override { return close(); }
    bool end_array() override { return close(); }

    bool key(string_t& name) override {
        open_.back().key = name;
        if (!open_.back().seen.insert(name).second) repeated_.push_back(path());
        return true;
    }

    bool parse_error(std::size_t position, const std::string& last_token,
                     const Json::exception& error) override {
        failure_ = Failure{position, last_token, dynamic_cast<const Json::out_of_range*>(&error) != nullptr};
        return false;
    }

  private:
    struct Opened {
        bool is_array;
        std::size_t values = 0;  // of an array, begun so far
        std::string key = {};
        std::set<std::string> seen = {};
    };

    bool count() {
        if (!open_.empty()) ++open_.back().values;
        return true;
    }
    bool open(bool is_array) {
        count();
        open_.push_back({is_array});
        return true;
    }
    bool close() {
        open_.pop_back();
        return true;
    }
    std::string path() const {
        std::string result;
        for (const Opened& level : open_) {
            if (level.is_array) {
                result += fmt::format("[{}]", level.values - 1);
            } else {
                result += (result.empty() ? "" : ".") + level.key;
            }
        }
        return result;
    }

    std::vector<std::string>& repeated_;
    std::vector<Opened> open_;
    std::optional<Failure> failure_;
};

bool starts_with_any(std::string_view text, std::initializer_list<std::string_view> starts) {
    return std::any_of(starts.begin(), starts.end(),
                       [&](std::string_view s) { return text.substr(0, s.size()) == s; });
}

// What is unusual where the parser stopped. `rest` begins with the byte it stumbled over, `before` ends
// there.
std::string hint(std::string_view before, std::string_view rest) {
    const std::string_view earlier = trimmed(before);
    if (starts_with_any(rest, {"//", "/*", "#"})) return "JSON has no comments; delete it";
    if (starts_with_any(rest, {"NaN", "nan", "Inf", "inf", "-NaN", "-nan", "-Inf", "-inf", "+"})) {
        return "numbers are written as 12, -3.5 or 1e2; NaN, Infinity and a leading + are none";
    }
    if (starts_with_any(rest, {"'", "\u2018", "\u201c", "\u201d"}))
        return "texts and keys stand in plain double quotes";
    if (starts_with_any(rest, {"}", "]"})) {
        return earlier.ends_with(',') ? "delete the comma before the closing bracket"
                                      : "a bracket closes here that is not open, or a value is missing";
    }
    if (starts_with_any(rest, {"\n", "\r", "\t"}))
        return "a text in quotes stays on one line; is a quote missing?";
    if (starts_with_any(rest, {"\""})) return "a comma or colon is missing before it";
    if (starts_with_any(rest, {"{", "["}))
        return "a comma or colon is missing before it, or a key has no name";
    return "a comma, a colon, quotes or a bracket is missing or one too many";
}

std::string first_word(std::string_view rest) {
    constexpr std::string_view ends = " \t\r\n,:]}";
    if (rest.size() > 1 && rest.front() == '"')
        rest.remove_prefix(1);  // the message puts it in quotes itself
    if (const std::size_t end = rest.find('"'); end != 0) rest = rest.substr(0, end);
    const std::size_t length = std::max<std::size_t>(1, std::min(rest.find_first_of(ends), rest.size()));
    return std::string(rest.substr(0, std::min<std::size_t>(length, 30)));
}

// Where the word the parser stumbled over begins. It has read one byte too many of a number or literal it
// does not know, but the whole of a text that is in the wrong place.
std::size_t start_of(const Failure& failure, std::string_view text) {
    const std::size_t end = std::min(failure.offset, text.size());
    if (end == 0) return 0;
    const std::string_view read = failure.last_read;
    const bool is_text = read.size() > 1 && read.starts_with('"') && read.ends_with('"');
    if (is_text && text.substr(0, end).ends_with(read)) return end - read.size();
    constexpr std::string_view not_in_words = " \t\r\n,:[]{}\"";
    if (not_in_words.find(text[end - 1]) != std::string_view::npos) return end - 1;
    const std::size_t before = text.substr(0, end).find_last_of(not_in_words);
    return before == std::string_view::npos ? 0 : before + 1;
}

[[noreturn]] void report(const Failure& failure, std::string_view text, const std::string& place) {
    const std::size_t written = text.find_last_not_of(" \t\r\n") + 1;
    const bool cut_off = failure.offset > text.size() || start_of(failure, text) >= written;
    const std::size_t start = cut_off ? written : start_of(failure, text);
    const std::string_view before = text.substr(0, start);
    const auto line = 1 + std::count(before.begin(), before.end(), '\n');
    const std::size_t column = start - (before.rfind('\n') + 1) + 1;  // npos + 1 is 0: the first line
    const std::string where = fmt::format("line {}, column {}", line, column);
    if (failure.too_large)
        throw InputError(
            place, fmt::format("{}: the number {} is too large", where, first_word(text.substr(start))));
    if (!is_utf8(text)) {
        throw InputError(place, where + ": not UTF-8 text; save the file as UTF-8");
    }
    if (cut_off) throw InputError(place, where + ": the file ends in the middle of the JSON; is it cut off?");
    const std::string_view rest = text.substr(start);
    throw InputError(
        place, fmt::format("{}: not JSON at {}: {}", where, in_quotes(first_word(rest)), hint(before, rest)));
}

}  // namespace

std::string_view trimmed(std::string_view text) {
    constexpr std::string_view blanks = " \t\r\n";
    const std::size_t first = text.find_first_not_of(blanks);
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

bool is_utf8(std::string_view text) {
    try {
        static_cast<void>(Json(text).dump());
        return true;
    } catch (const Json::type_error&) {
        return false;
    }
}

std::string in_quotes(std::string_view text) {
    constexpr std::size_t longest = 60;
    constexpr auto replace = Json::error_handler_t::replace;
    if (text.size() <= longest) return Json(text).dump(-1, ' ', false, replace);
    // A byte of the form 10xxxxxx belongs to the character before it.
    std::size_t end = longest;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xc0U) == 0x80U)
        --end;
    return Json(text.substr(0, end)).dump(-1, ' ', false, replace) + "...";
}

Json parse_json(std::string_view text, const std::string& place, std::vector<std::string>& repeated) {
    constexpr std::string_view byte_order_mark = "\xef\xbb\xbf";
    if (text.substr(0, 2) == "\xff\xfe" || text.substr(0, 2) == "\xfe\xff") {
        throw InputError(place, "UTF-16 text; save the file as UTF-8");
    }
    if (text.substr(0, byte_order_mark.size()) == byte_order_mark) text.remove_prefix(byte_order_mark.size());
    if (trimmed(text).empty()) throw InputError(place, "the file is empty");
    Walk walk(repeated);
    Json::sax_parse(text, &walk);
    if (walk.failure()) report(*walk.failure(), text, place);
    return Json::parse(text);
}

}  // namespace landwidth
