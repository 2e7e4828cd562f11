// What the layers and columns of a map without golf tags mean, as the user says it.
//
// Short: --tags layer takes what the layers are called, --tags type what the column "type" says, by the words
// of ground_words ("greens", "Hole 3 fairway"). In a file, one "where = tags" a line:
//
//     # drawn by the greenkeeper
//     layer greens          = golf=green
//     type "cart path"      = golf=cartpath
//     type lake             = golf=water_hazard name="The Pond"
//     name "Hole <number> fairway" = golf=fairway ref=<number>
//     remark *              = note=*
//     layer trees points    = natural=tree
//     layer trees areas     = natural=wood
//
// Where is a column and its value, or `layer` and a layer's name (also a column of that name), and, where it
// matters, `points`, `lines` or `areas`. They are compared without regard to case. <number> stands for a
// whole number, * for any text; in a tag, for what the first of its kind in the line's value stood for. A
// value with blanks or an equals sign stands in quotation marks. A line that begins with # is a remark. Of
// several lines that fit a feature the first says what it is; later ones only add what is not said yet.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "courses/tags/ground_words.hpp"

namespace landwidth {

struct TagRule {
    std::string column;            // as typed; "layer" for the layer's name
    std::string value;             // a * for any text
    Drawn drawn = Drawn::unknown;  // shapes of this kind only; unknown: all
    std::vector<std::pair<std::string, std::string>> tags;
    bool by_words = false;  // no value and no tags: whatever the words say
    std::string place;      // "course.tags: line 3" or "--tags type", for messages
};

struct TagMapping {
    std::vector<TagRule> rules;  // in the order given

    bool empty() const { return rules.empty(); }
};

// What --tags was given, in order: a text with a dot or a slash in it is a file, any other the name of a
// column, or "layer". Throws InputError with file and line: a line that is no rule, a tag without "=", a file
// that is not there or says nothing.
TagMapping tag_mapping(const std::vector<std::string>& given);
TagMapping read_tag_file(const std::filesystem::path& path);

// What a pattern's first <number> and first * stood for in a text; empty without one.
struct Wildcards {
    std::string number;
    std::string any;
};
inline constexpr std::string_view number_wildcard = "<number>";
// The runs of digits as wildcards: "Hole 3 fairway" is "Hole <number> fairway".
std::string number_pattern(std::string_view text);
// Absent when the text is not of the pattern.
std::optional<Wildcards> matched(std::string_view pattern, std::string_view text);

// "points", "lines" or "areas"; empty for unknown.
std::string_view shapes_word(Drawn drawn);

// As it stands in a file of tags: in quotation marks where it must.
std::string tag_file_word(std::string_view text);

}  // namespace landwidth
