#include "courses/reading/tag_mapper.hpp"

#include <fmt/format.h>
#include <ogr_geometry.h>

#include <algorithm>
#include <set>

#include "courses/findings/finding_kinds.hpp"
#include "courses/reading/tag_reading.hpp"
#include "courses/tags/vocabulary.hpp"
#include "courses/text.hpp"
#include "geometry/error.hpp"

namespace landwidth {

namespace {

// Of texts that a finding lists: nobody looks through more in one sentence.
constexpr std::size_t most_texts = 200;

bool is_layer(const TagRule& rule) {
    return folded(rule.column) == "layer";
}

bool says_what(const Tags& tags) {
    return std::any_of(tags.begin(), tags.end(), [](const auto& tag) { return says_what_it_is(tag.first); });
}

// Adds what is not there yet, and nothing that says what it is where that is known.
void add(const Tags& more, Tags& tags) {
    const bool known = says_what(tags);
    for (const auto& [key, value] : more) {
        if (!known || !says_what_it_is(key)) tags.emplace(key, value);
    }
}

std::string replaced(std::string text, std::string_view what, const std::string& by) {
    for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + by.size()))
        text.replace(at, what.size(), by);
    return text;
}

std::string filled_in(const std::string& value, const Wildcards& wildcards) {
    return trimmed(replaced(replaced(value, "*", wildcards.any), number_wildcard, wildcards.number));
}

std::string where_words(const TagRule& rule) {
    return rule.place +
           (rule.by_words
                ? ""
                : ", " + rule.column + " " + tag_file_word(rule.value) +
                      (rule.drawn == Drawn::unknown ? "" : " " + std::string(shapes_word(rule.drawn))));
}

bool says_no_ground(const Tags& tags) {
    const Role role = role_of(tags);
    return role == Role::none || role == Role::other_golf;
}

// Whether its tags, one that says what a feature is among them, are only known where they are filled in.
bool has_wildcard(const TagRule& rule) {
    return std::ranges::any_of(rule.tags, [](const auto& tag) {
        return says_what_it_is(tag.first) && (tag.second.find('*') != std::string::npos ||
                                              tag.second.find(number_wildcard) != std::string::npos);
    });
}

// "mole hill" (3) and "Oak <number>" (60): texts and of how many features.
std::string counted(const std::map<std::string, int>& texts, std::string_view quote) {
    std::vector<std::string> items;
    for (const auto& [text, count] : texts)
        items.push_back(fmt::format("{0}{1}{0} ({2})", quote, text, count));
    return enumeration(items, most_texts);
}

}  // namespace

Drawn drawn_as(const OGRGeometry* shape) {
    if (shape == nullptr) return Drawn::unknown;
    switch (shape->getDimension()) {
        case 0:
            return Drawn::point;
        case 1:
            break;
        default:
            return Drawn::area;
    }
    if (wkbFlatten(shape->getGeometryType()) != wkbLineString) return Drawn::line;
    const OGRLineString& line = *shape->toLineString();
    return line.getNumPoints() > 3 && line.get_IsClosed() != 0 ? Drawn::area : Drawn::line;
}

MappedLayer TagMapper::layer(const OGRFeatureDefn& definition, const std::string& name) {
    MappedLayer layer{name, {}};
    for (std::size_t i = 0; i < mapping_.rules.size(); ++i) {
        const std::string column = folded(mapping_.rules[i].column);
        int field = -1;
        for (int k = 0; k < definition.GetFieldCount() && field < 0; ++k) {
            if (folded(definition.GetFieldDefn(k)->GetNameRef()) == column) field = k;
        }
        if (field >= 0 || is_layer(mapping_.rules[i])) uses_[i].column_known = true;
        layer.fields.push_back(field);
    }
    return layer;
}

// Some formats keep the layer a shape was drawn on in a column of that name.
std::string TagMapper::text_of(const MappedLayer& layer, std::size_t rule, OGRFeature& feature) const {
    const int field = layer.fields[rule];
    if (field >= 0 && feature.IsFieldSetAndNotNull(field)) {
        const std::string text = trimmed(feature.GetFieldAsString(field));
        if (!is_layer(mapping_.rules[rule])) return text;
        const bool names_it =
            mapping_.rules[rule].by_words || matched(mapping_.rules[rule].value, text).has_value();
        if (!text.empty() && names_it) return text;
    }
    return is_layer(mapping_.rules[rule]) ? layer.name : std::string();
}

bool TagMapper::apply(std::size_t number, const std::string& text, Drawn drawn, Tags& mapped) {
    const TagRule& rule = mapping_.rules[number];
    if (rule.by_words) {
        const std::optional<GroundWords> words = ground_words(text, drawn);
        if (!words) return false;
        add(words->tags, mapped);
        return true;
    }
    if (rule.drawn != Drawn::unknown && rule.drawn != drawn) return false;
    const std::optional<Wildcards> wildcards = matched(rule.value, text);
    if (!wildcards) return false;
    Tags tags;
    for (const auto& [key, value] : rule.tags) {
        if (std::string full = filled_in(value, *wildcards); !full.empty())
            tags.emplace(key, std::move(full));
    }
    if (says_what(tags) && says_no_ground(tags)) ++uses_[number].says_nothing[tag_words(tags)];
    add(tags, mapped);
    return true;
}

void TagMapper::add_tags(const MappedLayer& layer, OGRFeature& feature, Tags& tags) {
    const Drawn drawn = drawn_as(feature.GetGeometryRef());
    Tags mapped;
    std::vector<std::pair<std::size_t, std::string>> not_known;
    for (std::size_t i = 0; i < mapping_.rules.size(); ++i) {
        const std::string text = text_of(layer, i, feature);
        if (text.empty()) continue;
        if (apply(i, text, drawn, mapped)) {
            ++uses_[i].matches;
        } else if (mapping_.rules[i].by_words) {
            not_known.emplace_back(i, text);
        }
    }
    if (says_what(mapped)) std::erase_if(tags, [](const auto& tag) { return says_what_it_is(tag.first); });
    for (auto& [key, value] : mapped)
        tags.insert_or_assign(key, std::move(value));
    if (role_of(tags) != Role::none) return;
    for (auto& [rule, text] : not_known)
        ++uses_[rule].unknown_words[number_pattern(text)];
}

void TagMapper::finish(const std::string& file, const std::vector<std::string>& columns,
                       std::vector<Finding>& findings) const {
    for (std::size_t i = 0; i < mapping_.rules.size(); ++i) {
        const TagRule& rule = mapping_.rules[i];
        const Use& use = uses_[i];
        if (!use.column_known) {
            std::set<std::string> names(columns.begin(), columns.end());
            throw InputError(rule.place,
                             "no layer of " + file + " has a column \"" + rule.column + "\"; there is " +
                                 (names.empty() ? "none at all" : enumeration({names.begin(), names.end()})));
        }
        tell_use(rule, use, findings);
    }
}

void TagMapper::tell_use(const TagRule& rule, const Use& use, std::vector<Finding>& findings) {
    if (!rule.by_words && use.matches == 0)
        findings.push_back(finding_on_course<"tag-rule-unmatched">(where_words(rule)));
    if (has_wildcard(rule)) {
        // What it says shows in what it was laid over.
        if (!use.says_nothing.empty())
            findings.push_back(finding_on_course<"tag-rule-says-nothing/some">(
                where_words(rule), counted(use.says_nothing, "")));
    } else if (const Tags tags(rule.tags.begin(), rule.tags.end()); says_what(tags) && says_no_ground(tags)) {
        findings.push_back(finding_on_course<"tag-rule-says-nothing">(where_words(rule), tag_words(tags)));
    }
    if (!use.unknown_words.empty())
        findings.push_back(
            finding_on_course<"words-unknown">(rule.place, counted(use.unknown_words, "\"")));
}

}  // namespace landwidth
