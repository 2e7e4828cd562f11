#include "golfer-profiles/logs/lost_balls.hpp"

#include <algorithm>
#include <string>

#include "golfer-profiles/logs/log_units.hpp"

namespace landwidth {
namespace {

// As plain_words writes them.
constexpr std::string_view lost_words[]{" lost ",       " lost ball ",    " ball lost ", " not found ",
                                        " unfinished ", " not finished ", " ob ",        " o b ",
                                        " oob ",        " out of bounds "};

// Small letters, a space around every word, nothing else.
std::string plain_words(std::string_view text) {
    std::string words = " ";
    for (const char c : in_small_letters(text)) {
        const bool in_word =
            (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || static_cast<unsigned char>(c) >= 0x80;
        if (in_word)
            words += c;
        else if (words.back() != ' ')
            words += ' ';
    }
    return words.back() == ' ' ? words : words + ' ';
}

}  // namespace

bool says_lost(std::string_view note) {
    if (note.empty()) return false;
    const std::string words = plain_words(note);
    return std::any_of(std::begin(lost_words), std::end(lost_words),
                       [&](std::string_view lost) { return words.find(lost) != std::string::npos; });
}

bool says_only_lost(std::string_view cell) {
    // Nearly every cell is a number: no work for those.
    const std::size_t first = cell.find_first_not_of(" \t");
    if (first == std::string_view::npos ||
        std::string_view("lLbBnNuUoO").find(cell[first]) == std::string_view::npos)
        return false;
    const std::string words = plain_words(cell);
    return std::find(std::begin(lost_words), std::end(lost_words), words) != std::end(lost_words);
}

}  // namespace landwidth
