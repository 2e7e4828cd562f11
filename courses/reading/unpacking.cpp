#include "courses/reading/unpacking.hpp"

#include <cpl_vsi.h>
#include <fcntl.h>

#include <algorithm>
#include <osmium/io/bzip2_compression.hpp>
#include <osmium/io/gzip_compression.hpp>
#include <string_view>

#include "courses/text.hpp"
#include "geometry/error.hpp"

namespace landwidth {

class UnpackedFile::Source {
  public:
    Source() = default;
    virtual ~Source() = default;
    Source(const Source&) = delete;
    Source& operator=(const Source&) = delete;
    virtual std::string read() = 0;
};

namespace {

struct CloseFile {
    void operator()(VSILFILE* file) const { VSIFCloseL(file); }
};
using GdalFile = std::unique_ptr<VSILFILE, CloseFile>;

osmium::io::file_compression packing_of(const std::string& path) {
    const GdalFile file(VSIFOpenL(path.c_str(), "rb"));
    if (!file) return osmium::io::file_compression::none;
    std::string head(4, '\0');
    head.resize(VSIFReadL(head.data(), 1, head.size(), file.get()));
    if (head.starts_with("\x1F\x8B")) return osmium::io::file_compression::gzip;
    if (head.starts_with("BZh")) return osmium::io::file_compression::bzip2;
    return osmium::io::file_compression::none;
}

// "/vsigzip//maps/course.osm.gz" -> "/maps/course.osm.gz".
std::string without_gzip(const std::string& gdal_path) {
    constexpr std::string_view gzip = "/vsigzip/";
    return gdal_path.starts_with(gzip) ? gdal_path.substr(gzip.size()) : gdal_path;
}

}  // namespace

class UnpackedFile::GdalSource : public UnpackedFile::Source {
  public:
    explicit GdalSource(GdalFile file) : file_(std::move(file)) {}
    std::string read() override {
        std::string part(1U << 16U, '\0');
        part.resize(VSIFReadL(part.data(), 1, part.size(), file_.get()));
        return part;
    }

  private:
    GdalFile file_;
};

class UnpackedFile::PackedSource : public UnpackedFile::Source {
  public:
    PackedSource(osmium::io::file_compression packing, int descriptor)
        : decompressor_(osmium::io::CompressionFactory::instance().create_decompressor(packing, descriptor)) {
    }
    std::string read() override {
        std::string part = decompressor_->read();
        // Closing tells whether the end is one.
        if (part.empty()) decompressor_->close();
        return part;
    }

  private:
    std::unique_ptr<osmium::io::Decompressor> decompressor_;  // closes the descriptor
};

UnpackedFile::UnpackedFile(const std::string& gdal_path, std::string file) : file_(std::move(file)) {
    const std::string path = without_gzip(gdal_path);
    const osmium::io::file_compression packing = packing_of(path);
    const bool plain = packing == osmium::io::file_compression::none;
    const int descriptor = plain ? -1 : ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor >= 0) {
        source_ = std::make_unique<PackedSource>(packing, descriptor);
        return;
    }
    GdalFile plain_file(VSIFOpenL(plain ? path.c_str() : gdal_path.c_str(), "rb"));
    if (!plain_file) throw InputError(file_, "cannot be read; check that it exists and that you may read it");
    source_ = std::make_unique<GdalSource>(std::move(plain_file));
}

UnpackedFile::~UnpackedFile() = default;

std::string UnpackedFile::read() {
    try {
        return source_->read();
    } catch (const std::exception& failure) {
        throw InputError(file_, std::string("the file is damaged and cannot be unpacked to its end (") +
                                    in_one_line(failure.what()) + "); export or download it again");
    }
}

std::string UnpackedFile::read_all(std::size_t most) {
    std::string text;
    for (std::string part = read(); !part.empty(); part = read()) {
        if (text.size() + part.size() > most) {
            throw InputError(file_, "holds more than " + std::to_string(most / 1'000'000) +
                                        " MB; cut the course out of it, or save it as .osm.pbf");
        }
        text += part;
    }
    return text;
}

std::string unpacked_head(const std::string& gdal_path, std::size_t count) {
    std::string head;
    try {
        UnpackedFile file(gdal_path, gdal_path);
        while (head.size() < count) {
            const std::string part = file.read();
            if (part.empty()) break;
            head += part;
        }
    } catch (const InputError&) {
        // What came before the damage tells.
    }
    head.resize(std::min(head.size(), count));
    return head;
}

}  // namespace landwidth
