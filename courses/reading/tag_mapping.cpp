#include "courses/reading/tag_mapping.hpp"

#include <algorithm>
#include <fstream>
#include <iterator>
#include <system_error>

#include "courses/text.hpp"
#include "geometry/error.hpp"

namespace landwidth {

namespace {

constexpr std::string_view blanks = " \t\r";
constexpr int most_stars = 3;

std::string in_quotes(std::string_view text) {
    return "\"" + std::string(text) + "\"";
}

// Words between blanks; quotation marks, also after an equals sign, hold one together and are taken off.
// Absent when a quotation mark is not closed.
std::optional<std::vector<std::string>> words_of(std::string_view text) {
    std::vector<std::string> words;
    std::string word;
    bool quoted = false;
    bool any = false;
    for (const char c : text) {
        if (c == '"') {
            quoted = !quoted;
            any = true;
        } else if (!quoted && blanks.find(c) != std::string_view::npos) {
            if (any) words.push_back(word);
            word.clear();
            any = false;
        } else {
            word += c;
            any = true;
        }
    }
    if (quoted) return std::nullopt;
    if (any) words.push_back(word);
    return words;
}

// Where the first equals sign outside of quotation marks stands.
std::size_t equals_sign(std::string_view line) {
    bool quoted = false;
    for (std::size_t i = 0; i < line.size(); ++i) {
        if (line[i] == '"') quoted = !quoted;
        if (line[i] == '=' && !quoted) return i;
    }
    return std::string_view::npos;
}

std::pair<std::string, std::string> tag_in(const std::string& word, const std::string& place) {
    const std::size_t sign = word.find('=');
    const std::string key = trimmed(word.substr(0, sign));
    const std::string value = sign == std::string::npos ? "" : trimmed(word.substr(sign + 1));
    if (key.empty() || value.empty())
        throw InputError(place,
                         in_quotes(word) + " is no tag; a key = a value is expected, as in golf=green");
    return {folded(key), value};
}

Drawn shapes_called(std::string_view word) {
    for (const Drawn drawn : {Drawn::point, Drawn::line, Drawn::area}) {
        if (folded(word) == shapes_word(drawn)) return drawn;
    }
    return Drawn::unknown;
}

TagRule rule_in(std::string_view line, const std::string& place) {
    const std::size_t sign = equals_sign(line);
    const auto where = words_of(line.substr(0, sign));
    const auto tags =
        sign == std::string_view::npos ? std::vector<std::string>() : words_of(line.substr(sign + 1));
    if (!where || !tags) throw InputError(place, std::string(line) + ": a quotation mark is not closed");
    const Drawn drawn = where->size() == 3 ? shapes_called(where->back()) : Drawn::unknown;
    const bool place_known = where->size() == 2 || drawn != Drawn::unknown;
    if (!place_known || tags->empty())
        throw InputError(place, in_quotes(line) +
                                    ": a column, its value = tags are expected, as in type lake = "
                                    "golf=water_hazard; put a value with blanks into quotation marks");
    TagRule rule{.column = where->front(), .value = (*where)[1], .drawn = drawn, .tags = {}, .place = place};
    if (rule.value.empty()) throw InputError(place, in_quotes(line) + ": the value is empty");
    if (std::count(rule.value.begin(), rule.value.end(), '*') > most_stars)
        throw InputError(place, in_quotes(rule.value) + " has too many *; three are enough");
    for (const std::string& word : *tags) {
        rule.tags.push_back(tag_in(word, place));
        for (const std::string_view wildcard : {std::string_view("*"), number_wildcard}) {
            if (rule.tags.back().second.find(wildcard) != std::string::npos &&
                rule.value.find(wildcard) == std::string::npos)
                throw InputError(place, in_quotes(word) + ": " + std::string(wildcard) +
                                            " here needs one in the value that it stands for");
        }
    }
    return rule;
}

bool same_place(const TagRule& a, const TagRule& b) {
    return folded(a.column) == folded(b.column) && folded(a.value) == folded(b.value) && a.drawn == b.drawn;
}

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

// Fills in what the first wildcards of each kind stand for: `offset` is where `text` stands in the whole.
struct Found {
    std::optional<std::pair<std::size_t, std::size_t>> number;  // where, how long
    std::optional<std::pair<std::size_t, std::size_t>> any;
};

bool fits(std::string_view pattern, std::string_view text, std::size_t offset, Found& found) {
    const std::size_t star = pattern.find('*');
    const std::size_t number = pattern.find(number_wildcard);
    const std::size_t first = std::min(star, number);
    if (first == std::string_view::npos) return pattern == text;
    if (!text.starts_with(pattern.substr(0, first))) return false;
    if (first == number) {
        std::size_t end = first;
        while (end < text.size() && is_digit(text[end]))
            ++end;
        if (end == first) return false;
        Found so_far = found;
        if (!so_far.number) so_far.number = {offset + first, end - first};
        if (!fits(pattern.substr(first + number_wildcard.size()), text.substr(end), offset + end, so_far))
            return false;
        found = so_far;
        return true;
    }
    for (std::size_t end = first; end <= text.size(); ++end) {
        Found so_far = found;
        if (!so_far.any) so_far.any = {offset + first, end - first};
        if (!fits(pattern.substr(first + 1), text.substr(end), offset + end, so_far)) continue;
        found = so_far;
        return true;
    }
    return false;
}

}  // namespace

std::optional<Wildcards> matched(std::string_view pattern, std::string_view text) {
    const std::string plain = folded(text);
    Found found;
    if (!fits(folded(pattern), plain, 0, found)) return std::nullopt;
    // Folding keeps the length of nearly every text, so that the text itself can be given back.
    const std::string as_written = trimmed(text);
    const std::string& source = as_written.size() == plain.size() ? as_written : plain;
    Wildcards result;
    if (found.number) result.number = source.substr(found.number->first, found.number->second);
    if (found.any) result.any = trimmed(source.substr(found.any->first, found.any->second));
    return result;
}

std::string number_pattern(std::string_view text) {
    std::string pattern;
    bool in_number = false;
    for (const char c : text) {
        if (!is_digit(c)) pattern += c;
        if (is_digit(c) && !in_number) pattern += number_wildcard;
        in_number = is_digit(c);
    }
    return pattern;
}

std::string_view shapes_word(Drawn drawn) {
    switch (drawn) {
        case Drawn::point:
            return "points";
        case Drawn::line:
            return "lines";
        case Drawn::area:
            return "areas";
        case Drawn::unknown:
            return "";
    }
    return "";
}

std::string tag_file_word(std::string_view text) {
    const bool plain = !text.empty() && text.find_first_of(" \t=#") == std::string_view::npos;
    return plain ? std::string(text) : in_quotes(text);
}

TagMapping read_tag_file(const std::filesystem::path& path) {
    std::error_code trouble;
    if (!std::filesystem::exists(path, trouble))
        throw InputError(path.string(), "there is no such file of tags");
    std::ifstream file(path, std::ios::binary);
    if (std::filesystem::is_directory(path, trouble) || !file.is_open())
        throw InputError(path.string(), "the file of tags cannot be read");
    TagMapping mapping;
    std::string line;
    for (int number = 1; std::getline(file, line); ++number) {
        if (number == 1 && line.starts_with("\xEF\xBB\xBF")) line.erase(0, 3);
        const std::string place = path.string() + ": line " + std::to_string(number);
        if (line.find('\0') != std::string::npos)
            throw InputError(place,
                             "this is no text; a file of tags has one rule a line, as in layer greens "
                             "= golf=green");
        const std::string text = trimmed(line);
        if (text.empty() || text.front() == '#') continue;
        TagRule rule = rule_in(text, place);
        for (const TagRule& before : mapping.rules) {
            if (same_place(before, rule))
                throw InputError(place, rule.column + " " + in_quotes(rule.value) + " is named twice");
        }
        mapping.rules.push_back(std::move(rule));
    }
    if (mapping.empty()) throw InputError(path.string(), "no line says what a layer or a column means");
    return mapping;
}

TagMapping tag_mapping(const std::vector<std::string>& given) {
    TagMapping mapping;
    for (const std::string& text : given) {
        if (trimmed(text).empty()) throw UsageError("--tags: a file or the name of a column is expected");
        if (text.find_first_of("./") == std::string::npos) {
            mapping.rules.push_back(
                {.column = text, .value = {}, .tags = {}, .by_words = true, .place = "--tags " + text});
            continue;
        }
        TagMapping file = read_tag_file(text);
        std::move(file.rules.begin(), file.rules.end(), std::back_inserter(mapping.rules));
    }
    return mapping;
}

}  // namespace landwidth
