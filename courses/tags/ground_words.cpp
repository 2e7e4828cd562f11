#include "courses/tags/ground_words.hpp"

#include <algorithm>
#include <array>
#include <string>
#include <vector>

#include "courses/text.hpp"

namespace landwidth {

namespace {

// More holes than this no course counts through; a larger number is something else.
constexpr int highest_hole = 36;

struct Word {
    std::string_view phrase;  // in the singular, except where the plural is another thing
    Drawn drawn;              // unknown: whatever the shape
    std::string_view key;
    std::string_view value;
};

// Of two lines with one phrase the first that fits the shape counts.
constexpr std::array words{
    Word{"hole", Drawn::line, "golf", "hole"},
    Word{"hole line", Drawn::unknown, "golf", "hole"},
    Word{"centre line", Drawn::unknown, "golf", "hole"},
    Word{"centreline", Drawn::unknown, "golf", "hole"},
    Word{"center line", Drawn::unknown, "golf", "hole"},
    Word{"centerline", Drawn::unknown, "golf", "hole"},
    Word{"line of play", Drawn::unknown, "golf", "hole"},
    Word{"green", Drawn::unknown, "golf", "green"},
    Word{"fairway", Drawn::unknown, "golf", "fairway"},
    Word{"rough", Drawn::unknown, "golf", "rough"},
    Word{"semi rough", Drawn::unknown, "golf", "rough"},
    Word{"deep rough", Drawn::unknown, "golf", "rough"},
    Word{"bunker", Drawn::unknown, "golf", "bunker"},
    Word{"sand bunker", Drawn::unknown, "golf", "bunker"},
    Word{"fairway bunker", Drawn::unknown, "golf", "bunker"},
    Word{"greenside bunker", Drawn::unknown, "golf", "bunker"},
    Word{"green bunker", Drawn::unknown, "golf", "bunker"},
    Word{"sand trap", Drawn::unknown, "golf", "bunker"},
    Word{"sand", Drawn::unknown, "natural", "sand"},
    Word{"beach", Drawn::unknown, "natural", "beach"},
    Word{"tee", Drawn::unknown, "golf", "tee"},
    Word{"tee box", Drawn::unknown, "golf", "tee"},
    Word{"tee boxe", Drawn::unknown, "golf", "tee"},
    Word{"teeing area", Drawn::unknown, "golf", "tee"},
    Word{"teeing ground", Drawn::unknown, "golf", "tee"},
    Word{"pin", Drawn::unknown, "golf", "pin"},
    Word{"flag", Drawn::unknown, "golf", "pin"},
    Word{"flagstick", Drawn::unknown, "golf", "pin"},
    Word{"cup", Drawn::unknown, "golf", "pin"},
    Word{"hole location", Drawn::unknown, "golf", "pin"},
    Word{"water hazard", Drawn::unknown, "golf", "water_hazard"},
    Word{"yellow penalty area", Drawn::unknown, "golf", "water_hazard"},
    Word{"lateral water hazard", Drawn::unknown, "golf", "lateral_water_hazard"},
    Word{"lateral hazard", Drawn::unknown, "golf", "lateral_water_hazard"},
    Word{"red penalty area", Drawn::unknown, "golf", "lateral_water_hazard"},
    Word{"penalty area", Drawn::unknown, "golf", "lateral_water_hazard"},
    Word{"water", Drawn::line, "waterway", "stream"},
    Word{"water", Drawn::unknown, "natural", "water"},
    Word{"pond", Drawn::unknown, "natural", "water"},
    Word{"lake", Drawn::unknown, "natural", "water"},
    Word{"stream", Drawn::area, "natural", "water"},
    Word{"stream", Drawn::unknown, "waterway", "stream"},
    Word{"creek", Drawn::area, "natural", "water"},
    Word{"creek", Drawn::unknown, "waterway", "stream"},
    Word{"brook", Drawn::area, "natural", "water"},
    Word{"brook", Drawn::unknown, "waterway", "stream"},
    Word{"river", Drawn::area, "natural", "water"},
    Word{"river", Drawn::unknown, "waterway", "river"},
    Word{"ditch", Drawn::area, "natural", "water"},
    Word{"ditch", Drawn::unknown, "waterway", "ditch"},
    Word{"coastline", Drawn::unknown, "natural", "coastline"},
    Word{"tree", Drawn::point, "natural", "tree"},
    Word{"tree", Drawn::line, "natural", "tree_row"},
    Word{"tree", Drawn::unknown, "natural", "wood"},
    Word{"tree row", Drawn::area, "natural", "wood"},
    Word{"tree row", Drawn::unknown, "natural", "tree_row"},
    Word{"wood", Drawn::unknown, "natural", "wood"},
    Word{"woodland", Drawn::unknown, "natural", "wood"},
    Word{"forest", Drawn::unknown, "natural", "wood"},
    Word{"scrub", Drawn::unknown, "natural", "scrub"},
    Word{"bush", Drawn::unknown, "natural", "scrub"},
    Word{"gorse", Drawn::unknown, "natural", "scrub"},
    Word{"heath", Drawn::unknown, "natural", "heath"},
    Word{"heather", Drawn::unknown, "natural", "heath"},
    Word{"wetland", Drawn::unknown, "natural", "wetland"},
    Word{"marsh", Drawn::unknown, "natural", "wetland"},
    Word{"out of bounds", Drawn::unknown, "golf", "out_of_bounds"},
    Word{"ob", Drawn::unknown, "golf", "out_of_bounds"},
    Word{"course boundary", Drawn::line, "golf", "out_of_bounds"},
    Word{"course boundary", Drawn::unknown, "leisure", "golf_course"},
    Word{"boundary", Drawn::line, "golf", "out_of_bounds"},
    Word{"boundary", Drawn::unknown, "leisure", "golf_course"},
    Word{"golf course", Drawn::area, "leisure", "golf_course"},
    Word{"driving range", Drawn::unknown, "golf", "driving_range"},
    Word{"cart path", Drawn::unknown, "golf", "cartpath"},
    Word{"buggy path", Drawn::unknown, "golf", "cartpath"},
    Word{"path", Drawn::unknown, "golf", "path"},
    Word{"footpath", Drawn::unknown, "highway", "footway"},
    Word{"road", Drawn::unknown, "highway", "service"},
    Word{"building", Drawn::unknown, "building", "yes"},
    Word{"clubhouse", Drawn::unknown, "golf", "clubhouse"},
    Word{"fence", Drawn::unknown, "barrier", "fence"},
    Word{"wall", Drawn::unknown, "barrier", "wall"},
    Word{"hedge", Drawn::unknown, "barrier", "hedge"},
};

// Words that tell one piece of ground from another of the same kind.
constexpr std::array<std::string_view, 21> sides{
    "left",  "right", "front", "back", "middle", "centre", "center", "main", "upper", "lower", "inner",
    "outer", "north", "south", "east", "west",   "a",      "b",      "c",    "d",     "e"};

// Names of tees.
constexpr std::array<std::string_view, 20> tees{"white",   "yellow",       "red",     "blue",    "black",
                                                "gold",    "silver",       "green",   "orange",  "purple",
                                                "forward", "ladies",       "women's", "men's",   "senior",
                                                "medal",   "championship", "junior",  "seniors", "juniors"};

template <std::size_t N>
bool is_one_of(std::string_view word, const std::array<std::string_view, N>& list) {
    return std::find(list.begin(), list.end(), word) != list.end();
}

std::vector<std::string> words_in(std::string_view text) {
    std::string plain = folded(text);
    for (char& c : plain) {
        if (std::string_view("_-/:,.()#|\t").find(c) != std::string_view::npos) c = ' ';
    }
    return list_items(plain, " ");
}

// "3", "03", "3rd" as the number of a hole.
std::optional<int> hole_number(std::string_view word) {
    for (const std::string_view ending : {"st", "nd", "rd", "th"}) {
        if (word.size() > ending.size() && word.ends_with(ending)) word.remove_suffix(ending.size());
    }
    if (word.empty() || word.find_first_not_of("0123456789") != std::string_view::npos) return std::nullopt;
    const std::optional<int> number = whole_number_in(word);
    return number && *number >= 1 && *number <= highest_hole ? number : std::nullopt;
}

using Words = std::vector<std::string>;

// Takes "hole 3", "hole no 3", "hole3", "h3" or "3rd hole" out of the words.
std::optional<int> take_hole(Words& text) {
    for (auto at = text.begin(); at != text.end(); ++at) {
        for (const std::string_view together : {"hole", "h"}) {
            if (!at->starts_with(together)) continue;
            if (const auto number = hole_number(std::string_view(*at).substr(together.size()))) {
                text.erase(at);
                return number;
            }
        }
        if (*at != "hole") continue;
        auto next = at + 1;
        if (next != text.end() && (*next == "no" || *next == "nr" || *next == "number")) ++next;
        if (next != text.end()) {
            if (const auto number = hole_number(*next)) {
                text.erase(at, next + 1);
                return number;
            }
        }
        if (at != text.begin()) {
            if (const auto number = hole_number(*(at - 1))) {
                text.erase(at - 1, at + 1);
                return number;
            }
        }
    }
    return std::nullopt;
}

// Takes numbers and sides out; answers with the number where there is just one.
std::optional<int> take_counters(Words& text) {
    std::vector<int> numbers;
    std::erase_if(text, [&numbers](const std::string& word) {
        const std::optional<int> number = hole_number(word);
        if (number) numbers.push_back(*number);
        return number || is_one_of(word, sides);
    });
    return numbers.size() == 1 ? std::optional(numbers.front()) : std::nullopt;
}

const Word* look_up(const std::string& phrase, Drawn drawn) {
    for (const Word& word : words) {
        if (word.phrase == phrase && (word.drawn == Drawn::unknown || word.drawn == drawn)) return &word;
    }
    return nullptr;
}

std::string joined(const Words& text) {
    std::string phrase;
    for (const std::string& word : text)
        phrase += (phrase.empty() ? "" : " ") + word;
    return phrase;
}

const Word* word_of(const Words& text, Drawn drawn) {
    std::string phrase = joined(text);
    if (const Word* word = look_up(phrase, drawn)) return word;
    for (const std::string_view plural : {"s", "es"}) {
        if (!phrase.ends_with(plural)) continue;
        if (const Word* word = look_up(phrase.substr(0, phrase.size() - plural.size()), drawn)) return word;
    }
    return nullptr;
}

// Takes the name of the tee out of "white tee", "tee white", "tees, ladies".
std::string take_tee(Words& text) {
    if (text.size() < 2) return {};
    const auto is_tee = [](const std::string& word) { return word == "tee" || word == "tees"; };
    if (std::none_of(text.begin(), text.end(), is_tee)) return {};
    Words names;
    std::erase_if(text, [&names](const std::string& word) {
        const bool name = is_one_of(word, tees);
        if (name) names.push_back(word);
        return name;
    });
    return joined(names);
}

}  // namespace

std::optional<GroundWords> ground_words(std::string_view text, Drawn drawn) {
    Words rest = words_in(text);
    std::optional<int> hole = take_hole(rest);
    GroundWords result;
    if (rest.empty() && hole) rest = {"hole"};
    const std::string tee = take_tee(rest);
    const std::optional<int> number = take_counters(rest);
    if (const Word* word = word_of(rest, drawn)) {
        result.what = true;
        result.tags.emplace(word->key, word->value);
        if (!tee.empty()) result.tags.emplace("tee", tee);
        // A number without "hole" is that of the hole on what every hole has one of; else it counts bunkers.
        const bool one_a_hole = word->value == "hole" || word->value == "green" || word->value == "tee" ||
                                word->value == "fairway" || word->value == "pin";
        if (!hole && one_a_hole) hole = number;
    }
    if (hole) result.tags.emplace("ref", std::to_string(*hole));
    return result.tags.empty() ? std::nullopt : std::optional(std::move(result));
}

}  // namespace landwidth
