// Puts tags on the features of a map by what the user said its layers and columns mean.
#pragma once

#include <ogr_feature.h>

#include <map>
#include <string>
#include <vector>

#include "courses/finding.hpp"
#include "courses/reading/tag_mapping.hpp"
#include "courses/tags/ground_words.hpp"

namespace landwidth {

// How a shape was drawn; a line that closes counts as an area.
Drawn drawn_as(const OGRGeometry* shape);

// Where the rules find their texts in one layer: the field of each rule, or none.
struct MappedLayer {
    std::string name;
    std::vector<int> fields;
};

class TagMapper {
  public:
    // The mapping must outlive the mapper.
    explicit TagMapper(const TagMapping& mapping) : mapping_(mapping), uses_(mapping.rules.size()) {}

    MappedLayer layer(const OGRFeatureDefn& definition, const std::string& name);
    // Adds the tags of every rule that fits; what the rules say goes before what the feature says of itself.
    void add_tags(const MappedLayer& layer, OGRFeature& feature, Tags& tags);
    // Warnings: a rule that nothing fits, tags that say nothing about the ground, words that are not known.
    // Throws InputError for a column that no layer has, naming `columns`, those that there are.
    void finish(const std::string& file, const std::vector<std::string>& columns,
                std::vector<Finding>& findings) const;

  private:
    struct Use {
        bool column_known = false;
        int matches = 0;
        // Tags it gave, wildcards filled in, that say nothing about the ground: in how many features.
        std::map<std::string, int> says_nothing;
        // By number_pattern; of features that nothing says anything about.
        std::map<std::string, int> unknown_words;
    };
    std::string text_of(const MappedLayer& layer, std::size_t rule, OGRFeature& feature) const;
    static void tell_use(const TagRule& rule, const Use& use, std::vector<Finding>& findings);
    bool apply(std::size_t rule, const std::string& text, Drawn drawn, Tags& mapped);

    const TagMapping& mapping_;
    std::vector<Use> uses_;
};

}  // namespace landwidth
