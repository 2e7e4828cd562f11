#include "golfer-profiles/logs/csv_rows.hpp"

#include <csv.h>
#include <fmt/format.h>

#include <algorithm>
#include <new>
#include <optional>

#include "geometry/error.hpp"
#include "golfer-profiles/json_text.hpp"

namespace landwidth {
namespace {

constexpr std::string_view separator_line = "sep=";

bool is_blank(const std::vector<std::string>& cells) {
    return std::all_of(cells.begin(), cells.end(), [](const std::string& c) { return trimmed(c).empty(); });
}

// libcsv's parser and the rows it calls back with.
class Parser {
  public:
    Parser(char separator, unsigned char options) {
        if (csv_init(&parser_, options) != 0) throw std::bad_alloc();
        csv_set_delim(&parser_, static_cast<unsigned char>(separator));
    }
    Parser(const Parser&) = delete;
    Parser& operator=(const Parser&) = delete;
    ~Parser() { csv_free(&parser_); }

    // False when quotation marks do not pair up; row() is then where.
    bool read(std::string_view text) {
        const bool good =
            csv_parse(&parser_, text.data(), text.size(), on_cell, on_row_end, this) == text.size() &&
            csv_fini(&parser_, on_cell, on_row_end, this) == 0;
        if (!good && csv_error(&parser_) != CSV_EPARSE) throw std::bad_alloc();
        return good;
    }
    std::size_t row() const { return row_; }
    std::vector<CsvRow>& rows() { return rows_; }

  private:
    static void on_cell(void* text, std::size_t size, void* self) {
        static_cast<Parser*>(self)->cells_.emplace_back(static_cast<const char*>(text), size);
    }
    // `ending` is the character that ended the row, -1 at the end of the text.
    static void on_row_end(int ending, void* self) { static_cast<Parser*>(self)->end_row(ending); }

    void end_row(int ending) {
        // Every CR and LF is reported: the LF of a CR LF ends nothing.
        const bool second_half = ending == '\n' && last_ending_ == '\r' && cells_.empty();
        last_ending_ = second_half ? 0 : ending;
        if (second_half) return;
        if (!is_blank(cells_)) rows_.push_back({row_, std::move(cells_)});
        cells_.clear();
        ++row_;
    }

    csv_parser parser_{};
    std::vector<std::string> cells_;
    std::vector<CsvRow> rows_;
    std::size_t row_ = 1;
    int last_ending_ = 0;
};

// The first row of which one cell goes over several lines.
std::optional<std::size_t> row_over_lines(const std::vector<CsvRow>& rows) {
    for (const CsvRow& row : rows) {
        for (const std::string& cell : row.cells)
            if (cell.find_first_of("\r\n") != std::string::npos) return row.row;
    }
    return std::nullopt;
}

}  // namespace

char separator_of(std::string_view text) {
    const std::string_view first = text.substr(0, text.find_first_of("\r\n"));
    if (first.starts_with(separator_line) && first.size() == separator_line.size() + 1) return first.back();
    const std::size_t begin = std::min(text.find_first_not_of("\r\n \t"), text.size());
    constexpr std::string_view separators = ",;\t";
    std::size_t counts[separators.size()] = {};
    bool quoted = false;
    for (const char c : text.substr(begin, text.find_first_of("\r\n", begin) - begin)) {
        if (c == '"') quoted = !quoted;
        const std::size_t which = separators.find(c);
        if (!quoted && which != std::string_view::npos) ++counts[which];
    }
    return separators[static_cast<std::size_t>(std::max_element(std::begin(counts), std::end(counts)) -
                                               std::begin(counts))];
}

std::vector<CsvRow> csv_rows(std::string_view text, char separator, const std::string& file) {
    // Strict first: a text that is lax about its quotation marks must not swallow a row.
    Parser strict(separator, CSV_STRICT | CSV_STRICT_FINI | CSV_REPALL_NL);
    std::vector<CsvRow> rows;
    if (strict.read(text)) {
        rows = std::move(strict.rows());
    } else {
        Parser lax(separator, CSV_STRICT_FINI | CSV_REPALL_NL);
        const bool ended = lax.read(text);
        const std::optional<std::size_t> over_lines = row_over_lines(lax.rows());
        if (!ended || over_lines) {
            throw InputError(
                fmt::format("{}: row {}", file, strict.row()),
                "a quotation mark too many or too few; inside a quoted cell it is written twice");
        }
        rows = std::move(lax.rows());
    }
    if (!rows.empty() && rows.front().row == 1 && text.starts_with(separator_line) &&
        text.find_first_of("\r\n") == separator_line.size() + 1)
        rows.erase(rows.begin());
    return rows;
}

}  // namespace landwidth
