// The lists of findings: what they say, and that all of it is used.
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <set>
#include <string>

#include "courses/findings/finding_kinds.hpp"
#include "courses/tags/feature_findings.hpp"
#include "tests/catch.hpp"

using namespace landwidth;

namespace {

bool is_kebab_case(std::string_view code) {
    const bool plain = std::ranges::all_of(code, [](char c) { return (c >= 'a' && c <= 'z') || c == '-'; });
    return plain && !code.empty() && code.front() != '-' && code.back() != '-' &&
           code.find("--") == std::string_view::npos;
}

// "..." at the end of a list is no full stop.
bool is_a_sentence_without_stop(std::string_view text) {
    const bool stop = text.ends_with('.') && !text.ends_with("...");
    return !text.empty() && !stop && text.back() != ' ' && text.front() != ' ' &&
           text.find("  ") == std::string_view::npos;
}

std::string sources_of_courses() {
    namespace fs = std::filesystem;
    std::string all;
    for (const auto& entry : fs::recursive_directory_iterator(fs::path(LANDWIDTH_TESTS_DIR) / "../courses")) {
        if (!entry.is_regular_file()) continue;
        std::ifstream file(entry.path());
        all.append(std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>());
    }
    return all;
}

}  // namespace

TEST_CASE("every kind of findings is told once, in words that hold", "[findings]") {
    std::set<std::string_view> names;
    std::set<std::string_view> words;
    for (const FindingKind& kind : finding_kinds()) {
        INFO(kind.name);
        CHECK(names.insert(kind.name).second);
        // Two kinds that say the same are one.
        CHECK(words.insert(kind.words).second);
        CHECK(is_kebab_case(kind.code()));
        const bool has_wording = kind.name.size() > kind.code().size();
        if (has_wording) CHECK(is_kebab_case(kind.name.substr(kind.code().size() + 1)));
        CHECK(is_a_sentence_without_stop(kind.words));
        CHECK(is_a_sentence_without_stop(kind.advice));
        // What depends on a role needs a feature.
        CHECK((fixed_severity(kind.weight).has_value() || kind.bears == Bears::on_feature));
    }
    REQUIRE(names.size() > 80);
}

TEST_CASE("the wordings of a code stand next to each other and bear on the same", "[findings]") {
    std::map<std::string_view, Bears> seen;
    std::string_view last;
    for (const FindingKind& kind : finding_kinds()) {
        INFO(kind.name);
        const auto [known, is_new] = seen.emplace(kind.code(), kind.bears);
        CHECK((is_new || kind.code() == last));
        CHECK(known->second == kind.bears);
        last = kind.code();
    }
}

TEST_CASE("every kind of findings is told somewhere", "[findings]") {
    const std::string sources = sources_of_courses();
    for (const FindingKind& kind : finding_kinds()) {
        INFO(kind.name);
        CHECK(sources.find("<\"" + std::string(kind.name) + "\">") != std::string::npos);
    }
}

TEST_CASE("a finding is filled in as its kind says", "[findings]") {
    const Finding lost =
        finding_on<"ring-thin/way">({"way/7", "lines", "a.osm", Tags{{"highway", "path"}}, LonLat{}},
                                    LonLat{1.0, 2.0}, "1 of its 2 points is");
    CHECK(lost.severity == Severity::note);
    CHECK(lost.code == "ring-thin");
    CHECK(lost.feature == "way/7");
    CHECK(lost.hole.empty());
    CHECK(lost.place == LonLat{1.0, 2.0});
    CHECK(lost.message ==
          "highway=path has fewer than two points (1 of its 2 points is not in the file) and is left out");
    CHECK(lost.advice == "draw it or remove the way");
    const MapFeature green{"feature 3", "greens", "a.gpkg", Tags{{"golf", "green"}}, LonLat{}};
    CHECK(finding_on<"shape-missing">(green, std::nullopt).severity == Severity::warning);
    CHECK(finding_on<"shape-missing">(green, std::nullopt).feature == "layer greens, feature 3");
    const Finding tee = finding_on_hole<"tee-missing">("way/1", "4", std::nullopt, "white", "");
    CHECK(tee.hole == "4");
    CHECK(tee.severity == Severity::warning);
    CHECK(tee.advice == "map the tee with golf=tee and tee=white, or choose another");
    CHECK(finding_about<"heights-coarse">("a.asc", "30").feature == "a.asc");
}
