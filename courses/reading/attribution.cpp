#include "courses/reading/attribution.hpp"

#include <cpl_string.h>
#include <ogrsf_frmts.h>

#include <array>

#include "courses/text.hpp"

namespace landwidth {

namespace {

constexpr std::array<std::string_view, 3> keys{"attribution", "copyright", "license"};

std::string from_metadata(GDALMajorObject& object) {
    for (const std::string_view key : keys) {
        for (char** item = object.GetMetadata(); item != nullptr && *item != nullptr; ++item) {
            const std::string_view text(*item);
            const std::size_t sign = text.find('=');
            if (sign != std::string_view::npos && folded(text.substr(0, sign)) == key) {
                std::string value = trimmed(text.substr(sign + 1));
                if (!value.empty()) return value;
            }
        }
    }
    return {};
}

// The string of a top-level member of a GeoJSON file, as far as it stands before the features.
std::string from_json_head(std::string_view head) {
    head = head.substr(0, head.find("\"features\""));
    for (const std::string_view key : keys) {
        std::size_t at = head.find("\"" + std::string(key) + "\"");
        if (at == std::string_view::npos) continue;
        at = head.find_first_not_of(" \t\r\n:", at + key.size() + 2);
        if (at == std::string_view::npos || head[at] != '"') continue;
        const std::size_t end = head.find('"', at + 1);
        if (end != std::string_view::npos) return trimmed(head.substr(at + 1, end - at - 1));
    }
    return {};
}

}  // namespace

std::string attribution_from(std::string_view statement) {
    const std::string words = folded(statement);
    if (words.find("openstreetmap") != std::string::npos) return "(c) OpenStreetMap contributors, ODbL";
    return in_one_line(statement);
}

std::string attribution_of(GDALDataset& dataset, std::string_view head, bool openstreetmap) {
    std::string statement = from_metadata(dataset);
    for (OGRLayer* layer : dataset.GetLayers()) {
        if (statement.empty()) statement = from_metadata(*layer);
    }
    if (statement.empty() && trimmed(head).starts_with('{')) statement = from_json_head(head);
    if (statement.empty() && openstreetmap) statement = "OpenStreetMap";
    return attribution_from(statement);
}

}  // namespace landwidth
