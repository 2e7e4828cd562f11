#include "golfer-profiles/logs/other_rows.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/logs/log_units.hpp"
#include "golfer-profiles/profile.hpp"

namespace landwidth {
namespace {

std::string_view without_brackets(std::string_view text) {
    text = trimmed(text);
    const bool enclosed = text.size() > 2 && (text.front() == '(' || text.front() == '[') &&
                          (text.back() == ')' || text.back() == ']');
    return enclosed ? trimmed(text.substr(1, text.size() - 2)) : text;
}

bool has_digit(std::string_view text) {
    return text.find_first_of("0123456789") != std::string_view::npos;
}

// In small letters, words with single spaces between them: "Std. Dev." is "std dev".
std::string words_of(std::string_view cell) {
    std::string words;
    for (const char c : in_small_letters(trimmed(cell))) {
        const bool gap = c == ' ' || c == '.' || c == '-' || c == '_' || c == ':' || c == '(' || c == ')';
        if (gap && (words.empty() || words.back() == ' ')) continue;
        words += gap ? ' ' : c;
    }
    while (words.ends_with(' '))
        words.pop_back();
    return words;
}

// Words that name no club, wherever they stand in its cell.
constexpr std::string_view summary_words[]{"average", "averages", "avg",   "deviation",
                                           "std",     "stdev",    "stddev"};
constexpr std::string_view words_beside_deviation[]{"standard", "dev"};
// Alone in a cell they sum up too.
constexpr std::string_view summary_cells[]{"mean",    "median", "sd",  "total",   "totals",
                                           "summary", "min",    "max", "minimum", "maximum"};

// Words that stand beside one for what was summed up: "session mean", "avg of all shots".
constexpr std::string_view words_beside[]{"session", "of",   "the",  "all", "shots", "shot",  "row",
                                          "day",     "club", "this", "for", "value", "values"};
// Of the cells above, those that a note of a single shot does not consist of ("max" may be how hard it was
// hit).
constexpr std::string_view summary_notes[]{"mean", "median", "sd"};

bool is_one_of(std::string_view word, const auto& words) {
    return std::find(std::begin(words), std::end(words), word) != std::end(words);
}

// How many words of `words` are among `known`, and how many there are.
std::pair<std::size_t, std::size_t> count_known(std::string_view words, const auto& known) {
    std::pair<std::size_t, std::size_t> counts{0, 0};
    for (std::size_t at = 0; at < words.size(); ++counts.second) {
        const std::size_t end = std::min(words.find(' ', at), words.size());
        counts.first += is_one_of(words.substr(at, end - at), known) ? 1 : 0;
        at = end + 1;
    }
    return counts;
}

// Nothing but words for averages and deviations, and what they are of.
bool is_summary_note(std::string_view cell) {
    const std::string words = words_of(cell);
    const auto [known, all] = count_known(words, summary_words);
    const std::size_t sums = known + count_known(words, summary_notes).first;
    // "standard deviation", "std dev": one of the words may only belong to the other.
    return sums > 0 &&
           sums + count_known(words, words_beside_deviation).first + count_known(words, words_beside).first ==
               all;
}

bool is_summary_cell(std::string_view cell) {
    const std::string words = words_of(cell);
    return is_one_of(words, summary_cells) || is_summary_note(cell);
}

bool has_summary_word(std::string_view cell) {
    return count_known(words_of(cell), summary_words).first > 0 || is_summary_cell(cell);
}

bool is_summary(const CsvRow& row, const LogColumns& columns) {
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
        const auto used = std::find_if(columns.used().begin(), columns.used().end(),
                                       [&](const LogColumn& column) { return column.index == i; });
        const bool is_used = used != columns.used().end();
        if (is_used && used->field == LogField::club) {
            if (has_summary_word(row.cells[i])) return true;
            continue;
        }
        const bool may_label = !is_used || !(measure_of(used->field) || is_position(used->field) ||
                                             used->field == LogField::note);
        if (may_label && is_summary_cell(row.cells[i])) return true;
    }
    return false;
}

// Averages that only the note tells from shots.
bool is_noted_summary(const CsvRow& row, const LogColumns& columns) {
    const LogColumn* note = columns.column(LogField::note);
    return note != nullptr && note->index < row.cells.size() && is_summary_note(row.cells[note->index]);
}

bool is_header_again(const CsvRow& row, const CsvRow& header) {
    return std::equal(row.cells.begin(), row.cells.end(), header.cells.begin(), header.cells.end(),
                      [](const std::string& a, const std::string& b) { return same_name(a, b); });
}

}  // namespace

std::vector<std::string> take_units(std::vector<CsvRow>& rows) {
    if (rows.size() < 2) return {};
    std::vector<std::string> units;
    std::size_t written = 0, are_units = 0;
    for (const std::string& cell : rows[1].cells) {
        units.emplace_back(without_brackets(cell));
        if (has_digit(cell)) return {};
        written += units.back().empty() ? 0 : 1;
        are_units += unit_written(units.back()) ? 1 : 0;
    }
    if (are_units == 0 || 2 * are_units < written) return {};
    rows.erase(rows.begin() + 1);
    return units;
}

std::vector<std::string> take_other_rows(std::vector<CsvRow>& rows, const LogColumns& columns) {
    // Where every other row is noted so, it is how the shots were found.
    constexpr std::size_t shots_to_one = 2;
    const auto noted = static_cast<std::size_t>(
        std::ranges::count_if(rows, [&](const CsvRow& row) { return is_noted_summary(row, columns); }));
    const bool notes_tell = (shots_to_one + 1) * noted <= rows.size();
    std::vector<std::size_t> headers, summaries;
    const auto is_other = [&](const CsvRow& row) {
        if (is_header_again(row, rows.front())) {
            headers.push_back(row.row);
        } else if (is_summary(row, columns) || (notes_tell && is_noted_summary(row, columns))) {
            summaries.push_back(row.row);
        } else {
            return false;
        }
        return true;
    };
    // In order, as remove_if need not go.
    std::vector<CsvRow> kept{rows.front()};
    for (std::size_t i = 1; i < rows.size(); ++i)
        if (!is_other(rows[i])) kept.push_back(std::move(rows[i]));
    rows = std::move(kept);
    std::vector<std::string> said;
    const auto say = [&](const std::vector<std::size_t>& which, std::string_view what) {
        if (!which.empty()) said.push_back(fmt::format("{} left out: {}", row_words(which), what));
    };
    say(headers, "the headings again");
    say(summaries, "averages and the like, no shots");
    return said;
}

std::string row_words(const std::vector<std::size_t>& rows, std::size_t most) {
    std::vector<std::string> parts;
    for (std::size_t i = 0; i < rows.size();) {
        std::size_t end = i + 1;
        while (end < rows.size() && rows[end] == rows[end - 1] + 1)
            ++end;
        if (end - i <= 2) end = i + 1;
        parts.push_back(end == i + 1 ? fmt::format("{}", rows[i])
                                     : fmt::format("{} to {}", rows[i], rows[end - 1]));
        i = end;
    }
    std::string words = rows.size() == 1 ? "row " : "rows ";
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (i == most) return words + ", ...";
        const bool is_last = i + 1 == parts.size();
        words += (i == 0 ? "" : is_last ? " and " : ", ") + parts[i];
    }
    return words;
}

}  // namespace landwidth
