// The findings of one hole while it is put together. What bears on a feature and not on the hole alone
// (a stream's width, a wood's ring) is reported once, however many holes the feature belongs to.
#pragma once

#include <set>
#include <string>
#include <utility>
#include <vector>

#include "courses/assembly/feature_shapes.hpp"
#include "courses/finding.hpp"
#include "courses/tags/map_feature.hpp"

namespace landwidth {

class FeatureNotes {
  public:
    RepairLog& repairs() { return repairs_; }

    void add(Severity severity, const char* code, const MapFeature& feature, std::optional<LonLat> place,
             std::string message, std::string advice) {
        add(severity, code, feature, nullptr, place, std::move(message), std::move(advice));
    }
    // Of two features: once a pair.
    void add(Severity severity, const char* code, const MapFeature& feature, const MapFeature* other,
             std::optional<LonLat> place, std::string message, std::string advice) {
        const std::string pair = other == nullptr ? "" : "\n" + other->layer + "\n" + other->id;
        if (!reported_.emplace(code, feature.layer + "\n" + feature.id + pair).second) return;
        findings_.push_back(
            {severity, code, feature.label(), "", place, std::move(message), std::move(advice)});
    }
    void append_to(std::vector<Finding>& findings) const {
        findings.insert(findings.end(), findings_.begin(), findings_.end());
        findings.insert(findings.end(), repairs_.findings().begin(), repairs_.findings().end());
    }

  private:
    RepairLog repairs_;
    std::set<std::pair<std::string, std::string>> reported_;
    std::vector<Finding> findings_;
};

}  // namespace landwidth
