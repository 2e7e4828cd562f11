#include "courses/reading/tag_proposal.hpp"

#include <ogrsf_frmts.h>

#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <string_view>
#include <vector>

#include "courses/reading/tag_mapper.hpp"
#include "courses/reading/tag_mapping.hpp"
#include "courses/tags/ground_words.hpp"
#include "courses/tags/vocabulary.hpp"
#include "courses/text.hpp"

namespace landwidth {

namespace {

// A proposal needs no more to be made of.
constexpr int most_features = 100'000;
constexpr std::size_t most_remarks = 200;

// Columns that hold the number of a hole, its par or its stroke index under another name, as folded.
constexpr std::array<std::string_view, 8> number_columns{"hole",   "hole_no", "hole_nr", "hole_number",
                                                         "holeno", "hole no", "number",  "nr"};
constexpr std::array<std::string_view, 5> index_columns{"stroke_index", "strokeindex", "stroke index", "si",
                                                        "hcp"};

std::string tags_text(const Tags& tags) {
    std::string text;
    // golf=fairway before ref: what it is, then which.
    for (const bool ref : {false, true}) {
        for (const auto& [key, value] : tags) {
            if ((key == "ref") == ref) text += (text.empty() ? "" : " ") + key + "=" + tag_file_word(value);
        }
    }
    return text;
}

// Columns whose "green" is a colour, as folded.
constexpr std::array<std::string_view, 5> colour_columns{"colour", "color", "fill", "stroke", "marker-color"};

// The texts of one column, or the names of the layers.
class Texts {
  public:
    void add(const std::string& text, Drawn drawn) {
        ++all_;
        const std::optional<GroundWords> words = ground_words(text, drawn);
        if (!words || !words->what || text.find_first_of("*\"<\n") != std::string::npos) {
            ++unknown_[number_pattern(text)];
            return;
        }
        ++known_;
        Tags tags = words->tags;
        golf_ = golf_ || is_golf(role_of(tags));
        if (tags.contains("ref")) tags["ref"] = number_wildcard;
        const std::string plain = number_pattern(text);
        Seen& seen = seen_[folded(plain)];
        if (seen.text.empty()) seen.text = plain;
        seen.meanings[tags_text(tags)].insert(drawn);
    }

    bool clear() const { return golf_ || (known_ > 0 && 2 * known_ >= all_); }
    bool known() const { return known_ > 0; }

    // Lines in the order of the texts; a text of two meanings (trees as areas and as points) has the
    // commoner.
    std::string lines(const std::string& column) const {
        std::string text;
        for (const auto& [key, seen] : seen_) {
            const std::string where = tag_file_word(column) + " " + tag_file_word(seen.text);
            for (const auto& [meaning, drawn] : seen.meanings) {
                if (seen.meanings.size() == 1) text += where + " = " + meaning + "\n";
                for (auto shape = drawn.begin(); seen.meanings.size() > 1 && shape != drawn.end(); ++shape)
                    text += where + " " + std::string(shapes_word(*shape)) + " = " + meaning + "\n";
            }
        }
        std::size_t remarks = 0;
        for (const auto& [word, count] : unknown_) {
            if (remarks++ == most_remarks) {
                text += "# ... and " + std::to_string(unknown_.size() - most_remarks) + " more\n";
                break;
            }
            std::string line = trimmed(word.substr(0, word.find('\n')));
            text += "# not understood: " + column + " \"" + line + "\" (" + std::to_string(count) +
                    (count == 1 ? " feature)\n" : " features)\n");
        }
        return text;
    }

  private:
    struct Seen {
        std::string text;
        std::map<std::string, std::set<Drawn>> meanings;  // tags, and of which shapes
    };
    int all_ = 0;
    int known_ = 0;
    std::map<std::string, Seen> seen_;    // by the folded text
    bool golf_ = false;                   // golf ground is among what is known
    std::map<std::string, int> unknown_;  // by pattern
};

class Proposal {
  public:
    void look_at(OGRLayer& layer) {
        const OGRFeatureDefn& definition = *layer.GetLayerDefn();
        layer.ResetReading();
        while (const OGRFeatureUniquePtr feature{layer.GetNextFeature()}) {
            if (++features_ > most_features) return;
            const Drawn drawn = drawn_as(feature->GetGeometryRef());
            layers_.add(layer.GetName(), drawn);
            for (int i = 0; i < definition.GetFieldCount(); ++i)
                look_at(*feature, i, definition.GetFieldDefn(i)->GetNameRef(), drawn);
        }
    }

    std::string text(const std::string& file) const {
        std::string lines;
        for (const auto& [column, texts] : columns_) {
            if (texts.clear()) lines += texts.lines(column);
        }
        if (layers_.known()) lines += layers_.lines("layer");
        if (lines.empty()) return {};
        for (const auto& [column, key] : numbers_)
            lines += tag_file_word(column) + " <number> = " + key + "=<number>\n";
        return "# What the layers and columns of " + file +
               " seem to mean. Look it over, save it and give it with --tags.\n" + lines;
    }

  private:
    void look_at(OGRFeature& feature, int index, const std::string& column, Drawn drawn) {
        if (!feature.IsFieldSetAndNotNull(index)) return;
        const std::string text = trimmed(feature.GetFieldAsString(index));
        if (text.empty() || text.size() > 200) return;
        const std::string name = folded(column);
        if (const std::optional<int> number = whole_number_in(text)) {
            if (*number < 1 || *number > 36) return;
            if (std::find(number_columns.begin(), number_columns.end(), name) != number_columns.end())
                numbers_.emplace(column, "ref");
            if (std::find(index_columns.begin(), index_columns.end(), name) != index_columns.end())
                numbers_.emplace(column, "handicap");
            return;
        }
        if (std::ranges::find(colour_columns, name) == colour_columns.end())
            columns_[column].add(text, drawn);
    }

    int features_ = 0;
    Texts layers_;
    std::map<std::string, Texts> columns_;
    std::map<std::string, std::string> numbers_;  // the key for a column of numbers
};

}  // namespace

std::string proposed_tag_file(GDALDataset& dataset, const std::string& file) {
    Proposal proposal;
    for (OGRLayer* layer : dataset.GetLayers()) {
        if (layer->GetGeomType() != wkbNone) proposal.look_at(*layer);
    }
    return proposal.text(file);
}

}  // namespace landwidth
