#include "courses/reading/osm_completeness.hpp"

#include <algorithm>
#include <cstdio>
#include <map>
#include <set>
#include <unordered_map>

#include "courses/tags/vocabulary.hpp"
#include "courses/text.hpp"

namespace landwidth {

namespace {

class Losses {
  public:
    Losses(const OsmDocument& document, const std::string& file, std::vector<MapFeature>& features,
           std::vector<Finding>& findings)
        : document_(document), file_(file), features_(features), findings_(findings) {
        for (const MapFeature& feature : features)
            read_.insert(feature.id);
        for (const OsmNode& node : document.nodes)
            places_.emplace(node.id, node.place);
        for (const OsmWay& way : document.ways)
            ways_.insert(way.id);
    }

    void report() {
        for (const OsmRelation& relation : document_.relations)
            check(relation);
        for (const OsmWay& way : document_.ways)
            check(way);
    }

  private:
    void check(const OsmRelation& relation) {
        const Tags tags = tags_of(relation);
        const auto type = tags.find("type");
        if (type == tags.end() || type->second != "multipolygon") return;
        std::vector<std::string> missing;
        for (const OsmMember& member : relation.members) {
            if (member.kind != 'w') continue;
            if (!ways_.contains(member.id)) missing.push_back("way/" + std::to_string(member.id));
        }
        const std::string id = "relation/" + std::to_string(relation.id);
        const Role role = role_of(tags);
        if (role == Role::none || role == Role::other_sport || read_.contains(id)) return;
        const std::string why = missing.empty() ? "its rings do not close"
                                                : "the file lacks its members " + enumeration(missing, 5);
        findings_.push_back({is_golf(role) ? Severity::warning : Severity::note, "relation-incomplete", id,
                             "", place_of(relation),
                             tag_words(tags) + " could not be built and is left out: " + why,
                             "export a larger area with all members, or repair the relation"});
    }

    std::optional<LonLat> place_of(const OsmRelation& relation) const {
        for (const OsmMember& member : relation.members) {
            if (member.kind != 'w') continue;
            for (const OsmWay& way : document_.ways) {
                if (way.id != member.id) continue;
                if (const LonLatPath path = path_of(way); !path.empty()) return path.front();
            }
        }
        return std::nullopt;
    }

    LonLatPath path_of(const OsmWay& way) const {
        LonLatPath path;
        for (const std::int64_t node : way.nodes) {
            if (const auto found = places_.find(node); found != places_.end()) path.push_back(found->second);
        }
        return path;
    }

    void check(const OsmWay& way) {
        if (way.tags.empty()) return;
        const Tags tags = tags_of(way);
        const Role role = role_of(tags);
        if (role == Role::none || role == Role::other_sport) return;
        const std::string id = "way/" + std::to_string(way.id);
        LonLatPath path = path_of(way);
        const std::optional<LonLat> place = path.empty() ? std::nullopt : std::optional(path.front());
        const Severity severity = is_golf(role) ? Severity::warning : Severity::note;
        if (path.size() < way.nodes.size()) {
            findings_.push_back({severity, "points-missing", id, "", place,
                                 std::to_string(way.nodes.size() - path.size()) + " of the " +
                                     std::to_string(way.nodes.size()) + " points of " + tag_words(tags) +
                                     " are not in the file; its shape is what is left",
                                 "export a larger area, with all points of the ways in it"});
        }
        if (read_.contains(id) || path.size() >= 2) return;
        if (role == Role::hole) {
            features_.push_back({id, "lines", file_, tags, std::vector<LonLatPath>{std::move(path)}});
        } else {
            findings_.push_back({severity, "ring-thin", id, "", place,
                                 tag_words(tags) + " has fewer than two points and is left out",
                                 "draw it or remove the way"});
        }
    }

    const OsmDocument& document_;
    const std::string& file_;
    std::vector<MapFeature>& features_;
    std::vector<Finding>& findings_;
    std::set<std::string> read_;
    std::set<std::int64_t> ways_;
    std::unordered_map<std::int64_t, LonLat> places_;
};

}  // namespace

void report_losses(const OsmDocument& document, const std::string& file, std::vector<MapFeature>& features,
                   std::vector<Finding>& findings) {
    Losses(document, file, features, findings).report();
}

void report_losses(const std::vector<std::string>& remarks, const std::vector<MapFeature>& features,
                   std::vector<Finding>& findings) {
    std::map<std::string, const MapFeature*> golf;
    for (const MapFeature& feature : features) {
        if (is_golf(role_of(feature.tags))) golf.emplace(feature.id, &feature);
    }
    std::vector<std::string> relations;
    std::vector<std::string> ways;
    for (const std::string& remark : remarks) {
        long long id = 0;
        int found = 0;
        int wanted = 0;
        if (std::sscanf(remark.c_str(), "OSM: Relation %lld has missing ways", &id) == 1 &&
            remark.find("missing ways") != std::string::npos) {
            relations.push_back("relation/" + std::to_string(id));
        } else if (std::sscanf(remark.c_str(), "OSM: Way %lld with %d nodes", &id, &found) == 2) {
            ways.push_back("way/" + std::to_string(id));
        } else if (std::sscanf(remark.c_str(), "OSM: For way %lld, got only %d nodes instead of %d", &id,
                               &found, &wanted) == 3) {
            const auto feature = golf.find("way/" + std::to_string(id));
            if (feature == golf.end()) continue;
            findings.push_back(
                {Severity::warning, "points-missing", feature->first, "", place_of(feature->second->shape),
                 std::to_string(wanted - found) + " of the " + std::to_string(wanted) + " points of " +
                     tag_words(feature->second->tags) + " are not in the file; its shape is what is left",
                 "export a larger area, with all points of the ways in it"});
        }
    }
    if (!relations.empty()) {
        findings.push_back({Severity::warning, "relation-incomplete", relations.front(), "", std::nullopt,
                            enumeration(relations, 5) +
                                " could not be built and are left out: the file lacks members of theirs",
                            "if one of them belongs to the course, export a larger area with all members"});
    }
    if (!ways.empty()) {
        findings.push_back({Severity::warning, "ring-thin", ways.front(), "", std::nullopt,
                            enumeration(ways, 5) + " have fewer than two points in the file and are left out",
                            "if one of them belongs to the course, draw it anew or export a larger area"});
    }
}

}  // namespace landwidth
