// Shot logs written for a test.
#pragma once

#include <fstream>
#include <string>
#include <string_view>
#include <vector>

#include "geometry/error.hpp"
#include "golfer-profiles/shot_log.hpp"
#include "tests/planner/temporary_folder.hpp"

namespace landwidth::fixture {

inline ShotLog log_of(std::string_view bytes, const std::vector<ColumnName>& mapping = {}) {
    const TemporaryFolder folder;
    const std::filesystem::path path = folder.file("shots.csv");
    std::ofstream(path, std::ios::binary) << bytes;
    return read_shot_log(path, mapping);
}

// What the refusal says after the folder; "read" when the log is read after all.
inline std::string refusal_of(std::string_view bytes, const std::vector<ColumnName>& mapping = {}) {
    try {
        log_of(bytes, mapping);
    } catch (const Error& error) {
        const std::string words = error.what();
        const std::size_t name = words.find("shots.csv");
        return name == std::string::npos ? words : words.substr(name);
    }
    return "read";
}

inline bool contains(const std::string& text, std::string_view part) {
    return text.find(part) != std::string::npos;
}

}  // namespace landwidth::fixture
