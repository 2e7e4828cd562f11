// The bytes of a file, unpacked on the way: plain, .gz and .bz2 (told by their first bytes), inside a .zip.
#pragma once

#include <filesystem>
#include <memory>
#include <string>

namespace landwidth {

class UnpackedFile {
  public:
    // `gdal_path` serves for what only GDAL's file system reaches (/vsizip/...). Throws InputError naming
    // `file` when it cannot be opened.
    UnpackedFile(const std::string& gdal_path, std::string file);
    ~UnpackedFile();
    UnpackedFile(const UnpackedFile&) = delete;
    UnpackedFile& operator=(const UnpackedFile&) = delete;

    // The next bytes, some at a time; empty at the end. Throws InputError when the packing is damaged.
    std::string read();
    // All that is left. Throws InputError beyond `most` bytes.
    std::string read_all(std::size_t most);

  private:
    class Source;
    class GdalSource;
    class PackedSource;
    std::unique_ptr<Source> source_;
    std::string file_;
};

// The first bytes of the file once unpacked, at most `count`; empty when it cannot be read. Never throws for
// what the file holds.
std::string unpacked_head(const std::string& gdal_path, std::size_t count);

}  // namespace landwidth
