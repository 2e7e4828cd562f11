#include "planner/reports/text_table.hpp"

#include <locale.h>
#include <wchar.h>

#include <algorithm>
#include <numeric>
#include <stdexcept>
#include <utility>

namespace landwidth {
namespace {

// A name shortened to this many characters can still be told from others, as a rule.
constexpr std::size_t narrowest_elastic = 4;
constexpr std::string_view ellipsis = "\u2026";
constexpr std::string_view replacement = "\ufffd";

// The C library's UTF-8 decoder and character widths, whatever locale the program runs in; for this thread
// and only as long as it lives.
class Utf8Characters {
  public:
    Utf8Characters() : locale_(::newlocale(LC_CTYPE_MASK, "C.UTF-8", nullptr)) {
        if (locale_ == nullptr) throw std::runtime_error("the C library has no C.UTF-8 locale");
        previous_ = ::uselocale(locale_);
    }
    Utf8Characters(const Utf8Characters&) = delete;
    Utf8Characters& operator=(const Utf8Characters&) = delete;
    ~Utf8Characters() {
        ::uselocale(previous_);
        ::freelocale(locale_);
    }

    struct Character {
        std::string_view bytes;
        std::size_t width;
    };
    // Takes the next character off a text that is not empty.
    Character next(std::string_view& text) const {
        wchar_t code = 0;
        mbstate_t state{};
        const std::size_t taken = ::mbrtowc(&code, text.data(), text.size(), &state);
        if (taken == 0 || taken > text.size()) {
            text.remove_prefix(1);
            return {replacement, 1};
        }
        const std::string_view bytes = text.substr(0, taken);
        text.remove_prefix(taken);
        if (code == L'\n' || code == L'\t' || code == L'\r' || code == L' ') return {" ", 1};
        const int width = ::wcwidth(code);
        if (width < 0) return {replacement, 1};
        return {bytes, static_cast<std::size_t>(width)};
    }

  private:
    locale_t locale_;
    locale_t previous_;
};

std::size_t width_of(const Utf8Characters& characters, std::string_view text) {
    std::size_t width = 0;
    while (!text.empty())
        width += characters.next(text).width;
    return width;
}

// As many whole characters as fit, taken off `text`; at least one, so that a caller gets on.
std::string take(const Utf8Characters& characters, std::string_view& text, std::size_t width) {
    std::string taken;
    std::size_t used = 0;
    while (!text.empty()) {
        std::string_view rest = text;
        const Utf8Characters::Character character = characters.next(rest);
        if (used + character.width > width && !taken.empty()) break;
        used += character.width;
        taken += character.bytes;
        text = rest;
    }
    return taken;
}

}  // namespace

std::size_t display_width(std::string_view utf8) {
    return width_of(Utf8Characters(), utf8);
}

std::string on_one_line(std::string_view utf8) {
    const Utf8Characters characters;
    std::string line;
    while (!utf8.empty())
        line += characters.next(utf8).bytes;
    return line;
}

std::string shortened(std::string_view utf8, std::size_t width) {
    const Utf8Characters characters;
    if (width_of(characters, utf8) <= width) return on_one_line(utf8);
    if (width <= 1) return std::string(ellipsis);
    std::string start = take(characters, utf8, width - 1);
    if (width_of(characters, start) > width - 1) start.clear();  // a wide character where one column is left
    while (start.ends_with(' '))
        start.pop_back();
    return start.append(ellipsis);
}

std::string wrapped(std::string_view utf8, std::string_view first, std::size_t width) {
    const Utf8Characters characters;
    const std::string text = on_one_line(utf8);
    const std::string hanging(width_of(characters, first), ' ');
    const std::size_t room = std::max<std::size_t>(width > hanging.size() ? width - hanging.size() : 0, 2);

    std::string lines;
    std::string line;
    const auto finish_line = [&] {
        lines.append(lines.empty() ? std::string(first) : hanging).append(line).append("\n");
        line.clear();
    };
    for (std::size_t start = 0; start < text.size();) {
        const std::size_t end = std::min(text.find(' ', start), text.size());
        std::string_view word = std::string_view(text).substr(start, end - start);
        start = end + 1;
        if (word.empty()) continue;
        if (!line.empty() && width_of(characters, line) + 1 + width_of(characters, word) > room)
            finish_line();
        while (width_of(characters, word) > room) {
            line = take(characters, word, room);
            finish_line();
        }
        if (!line.empty()) line += ' ';
        line += word;
    }
    if (!line.empty() || lines.empty()) finish_line();
    return lines;
}

TextTable::TextTable(std::vector<Column> columns) : columns_(std::move(columns)) {}

void TextTable::add_row(std::vector<std::string> cells) {
    if (cells.size() != columns_.size())
        throw std::logic_error("a row with another number of cells than columns");
    for (std::string& cell : cells)
        cell = on_one_line(cell);
    rows_.push_back(std::move(cells));
}

std::vector<std::size_t> TextTable::widths_within(std::size_t width, std::size_t& gap) const {
    std::vector<std::size_t> widths;
    for (std::size_t c = 0; c < columns_.size(); ++c) {
        std::size_t widest = display_width(columns_[c].heading);
        for (const auto& row : rows_)
            widest = std::max(widest, display_width(row[c]));
        widths.push_back(widest);
    }
    const auto total = [&] {
        return std::accumulate(widths.begin(), widths.end(), std::size_t{0}) + gap * (columns_.size() - 1);
    };
    const auto shrink_elastic = [&](std::size_t narrowest) {
        while (total() > width) {
            std::size_t widest = columns_.size();
            for (std::size_t c = 0; c < columns_.size(); ++c) {
                if (!columns_[c].elastic || widths[c] <= narrowest) continue;
                if (widest == columns_.size() || widths[c] > widths[widest]) widest = c;
            }
            if (widest == columns_.size()) return;
            --widths[widest];
        }
    };
    gap = 2;
    if (total() > width) gap = 1;
    shrink_elastic(narrowest_elastic);
    return widths;
}

std::string TextTable::text(std::size_t width, std::size_t indent) const {
    if (columns_.empty()) return "";
    std::size_t gap = 0;
    const std::vector<std::size_t> widths = widths_within(width - std::min(indent, width), gap);
    std::string all;
    const auto add_line = [&](const auto& cell_of) {
        std::string line(indent, ' ');
        for (std::size_t c = 0; c < columns_.size(); ++c) {
            const std::string cell = shortened(cell_of(c), widths[c]);
            const std::string blanks(widths[c] - display_width(cell), ' ');
            if (c > 0) line.append(gap, ' ');
            line += columns_[c].align == Align::left ? cell + blanks : blanks + cell;
        }
        while (line.ends_with(' '))
            line.pop_back();
        all += line + "\n";
    };
    add_line([&](std::size_t c) { return columns_[c].heading; });
    for (const auto& row : rows_)
        add_line([&](std::size_t c) { return row[c]; });
    return all;
}

}  // namespace landwidth
