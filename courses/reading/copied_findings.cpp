#include "courses/reading/copied_findings.hpp"

#include "courses/text.hpp"

namespace landwidth {

namespace {

// What cannot be read is no reason to be silent.
Severity severity_called(std::string_view name) {
    for (const Severity severity : {Severity::error, Severity::note}) {
        if (folded(name) == severity_name(severity)) return severity;
    }
    return Severity::warning;
}

}  // namespace

FindingFields::FindingFields(const OGRFeatureDefn& layer)
    : severity_(layer.GetFieldIndex(copy_field::severity)),
      hole_(layer.GetFieldIndex(copy_field::hole)),
      feature_(layer.GetFieldIndex(copy_field::feature)),
      message_(layer.GetFieldIndex(copy_field::message)),
      advice_(layer.GetFieldIndex(copy_field::advice)),
      told_again_(layer.GetFieldIndex(copy_field::told_again)),
      place_(layer.GetFieldIndex(copy_field::place)) {
    if (severity_ >= 0 && advice_ >= 0) finding_ = layer.GetFieldIndex(copy_field::finding);
}

std::string_view FindingFields::text(OGRFeature& feature, int index) const {
    return index >= 0 && feature.IsFieldSetAndNotNull(index) ? feature.GetFieldAsString(index) : "";
}

bool FindingFields::is_finding(OGRFeature& feature) const {
    return finding_ >= 0 && feature.IsFieldSetAndNotNull(finding_);
}

bool FindingFields::is_told_again(OGRFeature& feature) const {
    return folded(text(feature, told_again_)) == until_removed;
}

bool FindingFields::has_place(OGRFeature& feature) const {
    return folded(text(feature, place_)) == own_place;
}

Finding FindingFields::read(OGRFeature& feature) const {
    return {.severity = severity_called(text(feature, severity_)),
            .code = in_one_line(text(feature, finding_)),
            .feature = in_one_line(text(feature, feature_)),
            .hole = in_one_line(text(feature, hole_)),
            .place = std::nullopt,
            .message = in_one_line(text(feature, message_)),
            .advice = in_one_line(text(feature, advice_))};
}

}  // namespace landwidth
