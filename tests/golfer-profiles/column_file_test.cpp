// Which column is which, kept in a file.
#include "golfer-profiles/logs/column_file.hpp"

#include <fstream>
#include <string>

#include "tests/catch.hpp"
#include "tests/golfer-profiles/log_fixture.hpp"

using namespace landwidth;
using namespace landwidth::fixture;

namespace {

std::vector<ColumnName> read(const std::string& text) {
    const TemporaryFolder folder;
    const std::filesystem::path path = folder.file("columns.txt");
    std::ofstream(path, std::ios::binary) << text;
    return read_column_file(path);
}

std::string refusal(const std::string& text) {
    try {
        read(text);
    } catch (const InputError& error) {
        const std::string words = error.what();
        return words.substr(words.find("columns.txt"));
    }
    return "read";
}

}  // namespace

TEST_CASE("lines of a file of columns", "[log]") {
    const auto mapping = read(
        "# the bay\r\n\r\ncarry_m = Carry\r\n  side_m=\"Off = target #1\"\n#club = X\nclub = Shot # Club");
    REQUIRE(mapping.size() == 3);
    REQUIRE(mapping[0].ours == "carry_m");
    REQUIRE(mapping[0].theirs == "Carry");
    REQUIRE(mapping[1].theirs == "Off = target #1");
    REQUIRE(mapping[2].theirs == "Shot # Club");
}

TEST_CASE("a file of columns that cannot be read", "[log]") {
    REQUIRE(
        contains(refusal("carry_m Carry\n"), "columns.txt: line 1: \"carry_m Carry\": a column of ours ="));
    REQUIRE(contains(refusal("#\ncarry_m =\n"), "columns.txt: line 2: "));
    REQUIRE(contains(refusal("\ncary_m = Carry\n"),
                     "columns.txt: line 2: \"cary_m\": there is no such column; did you mean \"carry_m\"?"));
    REQUIRE(contains(refusal("carry_m = A\ncarry_m = B\n"),
                     "columns.txt: line 2: \"carry_m\" or \"B\" is named twice"));
    REQUIRE(contains(refusal("carry_m = A\nside_m = a\n"), "columns.txt: line 2: "));
    REQUIRE(contains(refusal("# nothing\n"), "columns.txt: no line says which column is which"));
    REQUIRE(contains(refusal(""), "columns.txt: the file is empty"));
}

TEST_CASE("what is typed goes before the file", "[log]") {
    const auto mapping = combined({{"carry_yd", "Flight"}, {"note", "Side"}},
                                  {{"carry_m", "Carry"}, {"side_m", "side"}, {"club", "Stick"}});
    REQUIRE(mapping.size() == 3);
    REQUIRE(mapping[0].ours == "carry_yd");
    REQUIRE(mapping[1].ours == "note");
    REQUIRE(mapping[2].theirs == "Stick");
}
