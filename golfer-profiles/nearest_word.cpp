#include "golfer-profiles/nearest_word.hpp"

#include <algorithm>
#include <numeric>
#include <string>
#include <vector>

namespace landwidth {
namespace {

std::string folded(std::string_view word) {
    std::string result(word);
    for (char& c : result) {
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
        if (c == '-' || c == ' ') c = '_';
    }
    return result;
}

// Optimal string alignment distance (Levenshtein with swaps of neighbours), three rows at a time.
std::size_t edits(const std::string& a, const std::string& b) {
    std::vector<std::size_t> before_last(b.size() + 1);
    std::vector<std::size_t> last(b.size() + 1);
    std::vector<std::size_t> row(b.size() + 1);
    std::iota(last.begin(), last.end(), std::size_t{0});
    for (std::size_t i = 1; i <= a.size(); ++i) {
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t replace = last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
            row[j] = std::min({replace, last[j] + 1, row[j - 1] + 1});
            const bool swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
            if (swapped) row[j] = std::min(row[j], before_last[j - 2] + 1);
        }
        std::swap(before_last, last);
        std::swap(last, row);
    }
    return last[b.size()];
}

}  // namespace

std::optional<std::string_view> nearest_word(std::string_view word,
                                             std::span<const std::string_view> candidates) {
    constexpr std::size_t longest = 64;  // nobody mistypes a key into something longer
    if (word.empty() || word.size() > longest) return std::nullopt;
    const std::string wanted = folded(word);
    std::optional<std::string_view> nearest;
    std::size_t fewest = longest;
    for (const std::string_view candidate : candidates) {
        const std::size_t distance = edits(wanted, folded(candidate));
        const std::size_t too_far = std::max<std::size_t>(1, std::max(word.size(), candidate.size()) / 3) + 1;
        if (distance < fewest && distance < too_far) {
            nearest = candidate;
            fewest = distance;
        }
    }
    return nearest;
}

}  // namespace landwidth
