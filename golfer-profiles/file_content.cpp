#include "golfer-profiles/file_content.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstring>
#include <fstream>

#include "geometry/error.hpp"

namespace landwidth {

std::string file_content(const std::filesystem::path& path, std::size_t most_bytes, std::string_view what) {
    std::error_code error;
    if (std::filesystem::is_directory(path, error)) {
        throw InputError(path.string(), fmt::format("is a folder; a {} is a file", what));
    }
    errno = 0;
    std::ifstream file(path, std::ios::binary);
    if (!file) {
        throw InputError(path.string(), fmt::format("cannot be read: {}",
                                                    errno != 0 ? std::strerror(errno) : "unknown cause"));
    }
    // By pieces, because a device tells no size and may have no end.
    std::string text;
    std::array<char, 1U << 16U> piece{};
    while (file && text.size() <= most_bytes) {
        file.read(piece.data(), piece.size());
        text.append(piece.data(), static_cast<std::size_t>(file.gcount()));
    }
    if (file.bad()) throw InputError(path.string(), "cannot be read to its end");
    if (text.size() > most_bytes) {
        throw InputError(path.string(), fmt::format("is over {} MB; that is no {}", most_bytes >> 20U, what));
    }
    return text;
}

}  // namespace landwidth
