#include "planner/reports/output_file.hpp"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <random>
#include <string>
#include <system_error>
#include <utility>

#include "geometry/error.hpp"

namespace landwidth {
namespace {

namespace fs = std::filesystem;

[[noreturn]] void refuse(const fs::path& target, const std::string& problem) {
    throw OutputError(target.string(), problem);
}

// The operating system's reason, and what to do about the common ones.
[[noreturn]] void refuse_for(const fs::path& target, int error) {
    const std::string words = std::generic_category().message(error);
    switch (error) {
        case ENOSPC:
        case EDQUOT:
        case EFBIG:
            refuse(target, fmt::format("disk full ({}); free some space or write somewhere else", words));
        case EACCES:
        case EPERM:
        case EROFS:
            refuse(target, fmt::format("cannot write there ({}); write to a folder of your own", words));
        case ENAMETOOLONG:
            refuse(target, fmt::format("cannot write it ({}); give a shorter name", words));
        default:
            refuse(target, fmt::format("cannot write it ({})", words));
    }
}

class OpenFile {
  public:
    OpenFile(const fs::path& path, int flags) : descriptor_(::open(path.c_str(), flags | O_CLOEXEC, 0666)) {}
    OpenFile(const OpenFile&) = delete;
    OpenFile& operator=(const OpenFile&) = delete;
    ~OpenFile() {
        if (is_open()) ::close(descriptor_);
    }
    bool is_open() const { return descriptor_ >= 0; }
    int descriptor() const { return descriptor_; }
    // 0, or the error: a network file system may keep a full disk to itself until here.
    int close() { return ::close(std::exchange(descriptor_, -1)) == 0 ? 0 : errno; }

  private:
    int descriptor_;
};

// 0 or the error.
int write_all(int descriptor, std::string_view content) {
    while (!content.empty()) {
        const ssize_t written = ::write(descriptor, content.data(), content.size());
        if (written < 0 && errno != EINTR) return errno;
        if (written > 0) content.remove_prefix(static_cast<std::size_t>(written));
    }
    return 0;
}

void write_through(const fs::path& path, int flags, std::string_view content, const fs::path& target) {
    OpenFile file(path, O_WRONLY | flags);
    if (!file.is_open()) refuse_for(target, errno);
    if (const int error = write_all(file.descriptor(), content)) refuse_for(target, error);
    if (const int error = file.close()) refuse_for(target, error);
}

// On the disk before the rename, else a power cut could leave the new name on an empty file.
void flush_to_disk(const fs::path& path, const fs::path& target) {
    const OpenFile file(path, O_RDONLY);
    if (!file.is_open()) refuse_for(target, errno);
    if (::fsync(file.descriptor()) != 0 && errno != EINVAL && errno != ENOTSUP) refuse_for(target, errno);
}

// A folder of our own, removed with all it holds: a database leaves journals beside its file when it fails.
class TemporaryFolder {
  public:
    TemporaryFolder(const fs::path& parent, const fs::path& target) {
        std::random_device random;
        for (int attempt = 0; attempt < 16; ++attempt) {
            path_ = parent / fmt::format(".landwidth-{:08x}{:08x}", random(), random());
            if (::mkdir(path_.c_str(), 0700) == 0) return;
            if (errno != EEXIST) refuse_for(target, errno);
        }
        refuse_for(target, EEXIST);
    }
    TemporaryFolder(const TemporaryFolder&) = delete;
    TemporaryFolder& operator=(const TemporaryFolder&) = delete;
    ~TemporaryFolder() {
        std::error_code ignored;
        fs::remove_all(path_, ignored);
    }
    const fs::path& path() const { return path_; }

  private:
    fs::path path_;
};

fs::path folder_of(const fs::path& target) {
    return target.has_parent_path() ? target.parent_path() : fs::path(".");
}

// A pipe, a terminal, /dev/full: nothing to replace, the bytes go straight in.
bool is_special(const fs::path& target) {
    std::error_code ignored;
    const fs::file_status status = fs::status(target, ignored);
    return fs::exists(status) && !fs::is_regular_file(status) && !fs::is_directory(status);
}

std::string taken_words() {
    return "exists already; choose another name or overwrite it with --force";
}

// 0 or the error; EEXIST when the name is taken, decided by the file system itself, so that nobody's file is
// lost who writes it meanwhile.
int rename_to_free_name(const fs::path& finished, const fs::path& target) {
    if (::renameat2(AT_FDCWD, finished.c_str(), AT_FDCWD, target.c_str(), RENAME_NOREPLACE) == 0) return 0;
    if (errno != EINVAL && errno != ENOSYS) return errno;
    // File systems that do not know the flag may still know hard links, which refuse a taken name as well.
    if (::link(finished.c_str(), target.c_str()) == 0) return 0;
    if (errno != EPERM && errno != ENOTSUP) return errno;
    // Neither (some memory sticks): a look before, which leaves a gap of microseconds.
    std::error_code ignored;
    if (fs::exists(fs::symlink_status(target, ignored))) return EEXIST;
    return ::rename(finished.c_str(), target.c_str()) == 0 ? 0 : errno;
}

void give_name(const fs::path& finished, const fs::path& target, bool force) {
    if (!force) {
        const int error = rename_to_free_name(finished, target);
        if (error == EEXIST) refuse(target, taken_words());
        if (error != 0) refuse_for(target, error);
    } else if (::rename(finished.c_str(), target.c_str()) != 0) {
        refuse_for(target, errno);
    }
}

// Best effort: not every file system lets a folder be flushed, and the file is complete either way.
void flush_folder(const fs::path& folder) {
    const OpenFile handle(folder, O_RDONLY | O_DIRECTORY);
    if (handle.is_open()) static_cast<void>(::fsync(handle.descriptor()));
}

void replace_atomically(const fs::path& target, bool force,
                        const std::function<void(const fs::path&)>& write) {
    std::error_code ignored;
    // A link stays a link: what it points to is replaced.
    const fs::path real = fs::is_symlink(target, ignored) && fs::exists(target, ignored)
                              ? fs::canonical(target, ignored)
                              : target;
    const TemporaryFolder folder(folder_of(real), target);
    const fs::path finished = folder.path() / real.filename();
    write(finished);
    flush_to_disk(finished, target);
    const fs::file_status old = fs::status(real, ignored);
    if (fs::is_regular_file(old)) fs::permissions(finished, old.permissions(), ignored);
    give_name(finished, real, force);
    flush_folder(folder_of(real));
}

}  // namespace

void check_writable(const fs::path& target, bool force) {
    if (!target.has_filename()) refuse(target, "names a folder; give a file name");
    const fs::path folder = folder_of(target);
    std::error_code error;
    const fs::file_status folder_status = fs::status(folder, error);
    if (folder_status.type() == fs::file_type::not_found) {
        refuse(target, fmt::format("the folder {} does not exist; create it first", folder.string()));
    }
    if (error) refuse_for(target, error.value());
    if (!fs::is_directory(folder_status)) {
        refuse(target, fmt::format("{} is not a folder", folder.string()));
    }
    const fs::file_status status = fs::status(target, error);
    if (status.type() == fs::file_type::none) refuse_for(target, error.value());
    if (fs::is_directory(status)) refuse(target, "is a folder; give a file name");
    if (is_special(target)) return;
    if (!force && fs::exists(fs::symlink_status(target, error))) refuse(target, taken_words());
    if (::access(folder.c_str(), W_OK | X_OK) != 0) refuse_for(target, errno);
}

void write_file(const fs::path& target, std::string_view content, bool force) {
    check_writable(target, force);
    if (is_special(target)) {
        write_through(target, 0, content, target);
        return;
    }
    replace_atomically(target, force,
                       [&](const fs::path& path) { write_through(path, O_CREAT | O_EXCL, content, target); });
}

void write_file_with(const fs::path& target, bool force, const std::function<void(const fs::path&)>& write) {
    check_writable(target, force);
    if (!is_special(target)) {
        replace_atomically(target, force, write);
        return;
    }
    std::error_code error;
    const fs::path anywhere = fs::temp_directory_path(error);
    if (error) refuse_for(target, error.value());
    const TemporaryFolder folder(anywhere, target);
    const fs::path finished = folder.path() / target.filename();
    write(finished);
    OpenFile source(finished, O_RDONLY);
    if (!source.is_open()) refuse_for(target, errno);
    OpenFile sink(target, O_WRONLY);
    if (!sink.is_open()) refuse_for(target, errno);
    std::string block(1 << 16, '\0');
    ssize_t taken = 0;
    while ((taken = ::read(source.descriptor(), block.data(), block.size())) > 0) {
        if (const int failed =
                write_all(sink.descriptor(), {block.data(), static_cast<std::size_t>(taken)})) {
            refuse_for(target, failed);
        }
    }
    if (taken < 0) refuse_for(target, errno);
    if (const int failed = sink.close()) refuse_for(target, failed);
}

}  // namespace landwidth
