// The findings of one hole while it is put together. What bears on a feature and not on the hole alone
// (a stream's width, a wood's ring) is reported once, however many holes the feature belongs to.
#pragma once

#include <set>
#include <string>
#include <utility>
#include <vector>

#include "courses/assembly/feature_shapes.hpp"
#include "courses/finding.hpp"
#include "courses/tags/feature_findings.hpp"

namespace landwidth {

class FeatureNotes {
  public:
    RepairLog& repairs() { return repairs_; }

    template <KindName kind, typename... Args>
    void add(const MapFeature& feature, std::optional<LonLat> place, const Args&... args) {
        if (is_new(kind_of<kind>.code(), key_of(feature)))
            findings_.push_back(finding_on<kind>(feature, place, args...));
    }
    // Of two features: once a pair.
    template <KindName kind, typename... Args>
    void add_pair(const MapFeature& feature, const MapFeature& other, std::optional<LonLat> place,
                  const Args&... args) {
        if (is_new(kind_of<kind>.code(), key_of(feature) + "\n" + key_of(other)))
            findings_.push_back(finding_on<kind>(feature, place, args...));
    }
    void append_to(std::vector<Finding>& findings) const {
        findings.insert(findings.end(), findings_.begin(), findings_.end());
        findings.insert(findings.end(), repairs_.findings().begin(), repairs_.findings().end());
    }

  private:
    static std::string key_of(const MapFeature& feature) { return feature.layer + "\n" + feature.id; }
    bool is_new(std::string_view code, std::string key) {
        return reported_.emplace(code, std::move(key)).second;
    }

    RepairLog repairs_;
    std::set<std::pair<std::string, std::string>> reported_;
    std::vector<Finding> findings_;
};

}  // namespace landwidth
