// What a command writes is never what it reads.
#include "planner/commands/output_options.hpp"

#include <CLI/Config.hpp>
#include <CLI/Formatter.hpp>
#include <filesystem>
#include <fstream>

#include "geometry/error.hpp"
#include "tests/catch.hpp"
#include "tests/planner/temporary_folder.hpp"

namespace landwidth {
namespace {

struct Typed {
    fixture::TemporaryFolder folder;
    std::string log = folder.file("log.csv").string(), map = folder.file("map.osm").string();

    Typed() {
        for (const std::string& file : {log, map})
            std::ofstream(file) << "something";
    }
    void check(const std::string& options) const {
        CLI::App app;
        OutputOptions output;
        std::vector<std::string> files, profiles, reports;
        app.add_option("FILES", files);
        app.add_option("--ground", files);
        app.add_option("--onto", profiles);
        app.add_option("--report", reports);
        output.setup(app, {"text"});
        app.parse(options);
        output.check();
        for (const std::string& report : reports)
            output.refuse_input("--report", report);
    }
};

TEST_CASE("an input is not written over, --force or not", "[output]") {
    const Typed typed;
    const std::string other = typed.folder.file("other.csv").string();
    CHECK_THROWS_AS(typed.check(typed.log + " -o " + typed.log + " --force"), UsageError);
    CHECK_THROWS_WITH(typed.check(typed.log + " -o " + typed.log),
                      Catch::Matchers::Contains("this command reads that file (FILES)"));
    CHECK_THROWS_AS(typed.check(other + " --ground " + typed.map + " -o " + typed.map + " --force"),
                    UsageError);
    CHECK_THROWS_AS(typed.check(typed.log + " --report " + typed.log), UsageError);
    // Under another name, and in a folder that is read as a whole.
    const std::string link = typed.folder.file("link.csv").string();
    std::filesystem::create_symlink(typed.log, link);
    CHECK_THROWS_AS(typed.check(typed.log + " -o " + link + " --force"), UsageError);
    const std::string whole = std::filesystem::path(typed.log).parent_path().string();
    CHECK_THROWS_AS(typed.check(whole + " -o " + typed.map + " --force"), UsageError);
    CHECK(std::filesystem::file_size(typed.log) == 9);
}

TEST_CASE("other files are written, and a profile is learnt onto in place", "[output]") {
    const Typed typed;
    const std::string other = typed.folder.file("other.csv").string();
    CHECK_NOTHROW(typed.check(typed.log + " -o " + other));
    CHECK_NOTHROW(typed.check(typed.log + " -o " + typed.map + " --force"));
    CHECK_NOTHROW(typed.check(typed.log + " --onto " + typed.map + " -o " + typed.map + " --force"));
}

}  // namespace
}  // namespace landwidth
