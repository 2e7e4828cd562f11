#include "planner/reports/output_file.hpp"

#include <signal.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <future>

#include "geometry/error.hpp"
#include "tests/catch.hpp"
#include "tests/planner/temporary_folder.hpp"

namespace landwidth {
namespace {

namespace fs = std::filesystem;
using fixture::content_of;
using fixture::put;
using fixture::TemporaryFolder;

std::string refusal(const std::function<void()>& act) {
    try {
        act();
    } catch (const OutputError& error) {
        return error.what();
    }
    return "not refused";
}

bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

// Nobody tells root that a folder is read-only.
bool is_root() {
    return ::geteuid() == 0;
}

TEST_CASE("a new file holds the content and nothing is left beside it", "[output_file]") {
    const TemporaryFolder folder;
    SECTION("text") {
        write_file(folder.file("plan.txt"), "one\ntwo\n", false);
        CHECK(content_of(folder.file("plan.txt")) == "one\ntwo\n");
    }
    SECTION("nothing at all") {
        write_file(folder.file("plan.txt"), "", false);
        CHECK(fs::file_size(folder.file("plan.txt")) == 0);
    }
    SECTION("more than one write takes, NUL bytes included") {
        std::string content(5'000'000, '\0');
        content.back() = 'x';
        write_file(folder.file("plan.txt"), content, false);
        CHECK(content_of(folder.file("plan.txt")) == content);
    }
    CHECK(folder.entries() == 1);
}

TEST_CASE("a new file has the rights the user's mask leaves", "[output_file]") {
    const TemporaryFolder folder;
    const mode_t old = ::umask(027);
    write_file(folder.file("plan.txt"), "x", false);
    ::umask(old);
    CHECK((fs::status(folder.file("plan.txt")).permissions() & fs::perms::mask) == fs::perms{0640});
}

TEST_CASE("an existing file is refused and stays, unless forced", "[output_file]") {
    const TemporaryFolder folder;
    const fs::path target = folder.file("plan.json");
    put(target, "old");
    fs::permissions(target, fs::perms{0600});

    const std::string words = refusal([&] { write_file(target, "new", false); });
    CHECK(has(words, "plan.json: exists already"));
    CHECK(has(words, "--force"));
    CHECK(content_of(target) == "old");
    CHECK(refusal([&] { check_writable(target, false); }) == words);
    CHECK_NOTHROW(check_writable(target, true));

    write_file(target, "new", true);
    CHECK(content_of(target) == "new");
    CHECK((fs::status(target).permissions() & fs::perms::mask) == fs::perms{0600});
    CHECK(folder.entries() == 1);
}

TEST_CASE("a file that appears while ours is written is refused as well", "[output_file]") {
    const TemporaryFolder folder;
    const fs::path target = folder.file("plan.gpkg");
    const std::string words = refusal([&] {
        write_file_with(target, false, [&](const fs::path& path) {
            put(path, "ours");
            put(target, "theirs");
        });
    });
    CHECK(has(words, "exists already"));
    CHECK(content_of(target) == "theirs");
    CHECK(folder.entries() == 1);
}

TEST_CASE("what cannot be written says why, on one line", "[output_file]") {
    const TemporaryFolder folder;
    put(folder.file("a-file"), "x");
    fs::create_directory(folder.file("a-folder"));
    struct Case {
        fs::path target;
        std::string words;
    };
    const Case cases[] = {
        {folder.file("missing") / "plan.txt", "missing does not exist; create it first"},
        {folder.file("a-file") / "plan.txt", "a-file is not a folder"},
        {folder.file("a-folder"), "is a folder; give a file name"},
        {folder.file("a-folder") / "", "names a folder; give a file name"},
        {folder.file(std::string(300, 'n')), "give a shorter name"},
        {fs::path(""), "give a file name"},
    };
    for (const Case& one : cases) {
        CAPTURE(one.target.string());
        const std::string words = refusal([&] { write_file(one.target, "x", false); });
        CHECK(has(words, one.words));
        CHECK(words.find('\n') == std::string::npos);
        CHECK(refusal([&] { write_file_with(one.target, true, [](const fs::path&) {}); }) != "not refused");
    }
    CHECK(folder.entries() == 2);
    CHECK(content_of(folder.file("a-file")) == "x");
}

TEST_CASE("a folder that takes no files is reported", "[output_file]") {
    if (is_root()) {
        // A file system on which even root cannot create a file.
        const std::string words = refusal([] { write_file("/proc/landwidth-plan.txt", "x", false); });
        CHECK(has(words, "/proc/landwidth-plan.txt: cannot write"));
        return;
    }
    const TemporaryFolder folder;
    fs::permissions(folder.path(), fs::perms{0500});
    const std::string words = refusal([&] { write_file(folder.file("plan.txt"), "x", false); });
    fs::permissions(folder.path(), fs::perms{0700});
    CHECK(has(words, "cannot write there"));
}

TEST_CASE("a full disk is called full", "[output_file]") {
    CHECK(has(refusal([] { write_file("/dev/full", "x", false); }), "/dev/full: disk full"));
    CHECK(has(
        refusal([] { write_file_with("/dev/full", false, [](const fs::path& path) { put(path, "x"); }); }),
        "/dev/full: disk full"));
}

TEST_CASE("a disk that fills up half-way leaves the old file", "[output_file]") {
    const TemporaryFolder folder;
    const fs::path target = folder.file("plan.txt");
    put(target, "old");
    // A child of its own, since a limit on the size of files once lowered stays.
    const pid_t child = ::fork();
    REQUIRE(child >= 0);
    if (child == 0) {
        ::signal(SIGXFSZ, SIG_IGN);
        const rlimit limit{1 << 16, 1 << 16};
        ::setrlimit(RLIMIT_FSIZE, &limit);
        const std::string words = refusal([&] { write_file(target, std::string(1 << 20, 'x'), true); });
        ::_exit(has(words, "disk full") ? 7 : 8);
    }
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    REQUIRE(WIFEXITED(status));
    CHECK(WEXITSTATUS(status) == 7);
    CHECK(content_of(target) == "old");
    CHECK(folder.entries() == 1);
}

TEST_CASE("a pipe and the null device are written to and stay what they are", "[output_file]") {
    write_file("/dev/null", "x", false);
    CHECK(fs::is_character_file("/dev/null"));

    const TemporaryFolder folder;
    const fs::path pipe = folder.file("pipe");
    REQUIRE(::mkfifo(pipe.c_str(), 0600) == 0);
    for (const bool through_file : {false, true}) {
        auto reader = std::async(std::launch::async, [&] { return content_of(pipe); });
        const std::string content(200'000, 'p');
        if (through_file) {
            write_file_with(pipe, false, [&](const fs::path& path) { put(path, content); });
        } else {
            write_file(pipe, content, false);
        }
        CHECK(reader.get() == content);
    }
    CHECK(fs::is_fifo(pipe));
    CHECK(folder.entries() == 1);
}

TEST_CASE("a link stays a link and its file is replaced", "[output_file]") {
    const TemporaryFolder folder;
    fs::create_directory(folder.file("real"));
    put(folder.file("real") / "plan.txt", "old");
    fs::create_symlink("real/plan.txt", folder.file("link.txt"));
    write_file(folder.file("link.txt"), "new", true);
    CHECK(fs::is_symlink(folder.file("link.txt")));
    CHECK(content_of(folder.file("real") / "plan.txt") == "new");
    CHECK(has(refusal([&] { write_file(folder.file("link.txt"), "newer", false); }), "exists already"));
}

TEST_CASE("a writer gets a free name with the target's extension, on the target's file system",
          "[output_file]") {
    const TemporaryFolder folder;
    const fs::path target = folder.file("plan.gpkg");
    write_file_with(target, false, [&](const fs::path& path) {
        CHECK_FALSE(fs::exists(path));
        CHECK(path.extension() == ".gpkg");
        CHECK_FALSE(fs::exists(target));
        put(path, "database");
    });
    CHECK(content_of(target) == "database");
    CHECK(folder.entries() == 1);
}

TEST_CASE("a writer that fails leaves the old file and no other", "[output_file]") {
    const TemporaryFolder folder;
    const fs::path target = folder.file("plan.gpkg");
    put(target, "old");
    const auto write = [](const fs::path& path) {
        put(path, "half a data");
        put(path.string() + "-journal", "rest");
        throw OutputError("plan.gpkg", "the writer's own words");
    };
    CHECK(refusal([&] { write_file_with(target, true, write); }) == "plan.gpkg: the writer's own words");
    CHECK(content_of(target) == "old");
    CHECK(folder.entries() == 1);
    CHECK(has(refusal([&] { write_file_with(target, true, [](const fs::path&) {}); }), "cannot write it"));
    CHECK(content_of(target) == "old");
}

TEST_CASE("a run killed half-way leaves the old file", "[output_file]") {
    const TemporaryFolder folder;
    const fs::path target = folder.file("plan.gpkg");
    put(target, "old");
    const pid_t child = ::fork();
    REQUIRE(child >= 0);
    if (child == 0) {
        write_file_with(target, true, [](const fs::path& path) {
            put(path, "half a data");
            ::kill(::getpid(), SIGKILL);
        });
        ::_exit(0);
    }
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    REQUIRE(WIFSIGNALED(status));
    CHECK(content_of(target) == "old");
}

}  // namespace
}  // namespace landwidth
