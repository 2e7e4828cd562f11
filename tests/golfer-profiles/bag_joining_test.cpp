// Which club of a profile a logged one is.
#include "golfer-profiles/bag_joining.hpp"

#include <string>
#include <vector>

#include "geometry/error.hpp"
#include "geometry/units.hpp"
#include "golfer-profiles/club_names.hpp"
#include "golfer-profiles/presets.hpp"
#include "tests/catch.hpp"

using namespace landwidth;

namespace {

Golfer bag() {
    return typical_golfer({.name = "typical", .handicap_index = 11.0, .drive_total_yd = {}});
}

LoggedClub logged(const std::string& club, const std::string& build = "", bool is_the_one_carried = false) {
    LoggedClub result{.name = build.empty() ? club : club + ", " + build,
                      .club = club,
                      .build = build,
                      .kind = *kind_by_name(club)};
    result.is_the_one_carried = is_the_one_carried;
    return result;
}

std::string meant(Golfer& golfer, const LoggedClub& club, const std::vector<LoggedClub>& all = {}) {
    const Club* found = club_meant(golfer, club, all);
    return found == nullptr ? "" : found->name;
}

}  // namespace

TEST_CASE("a logged club is the one of its name under any spelling", "[log]") {
    Golfer golfer = bag();
    REQUIRE(meant(golfer, logged("1W")) == "driver");
    REQUIRE(meant(golfer, logged("7i")) == "7-iron");
    REQUIRE(meant(golfer, logged("SW")) == "sand wedge");
    REQUIRE(meant(golfer, logged("2-iron")).empty());
}

TEST_CASE("two wedges of a log are never one of the profile", "[log]") {
    Golfer golfer = bag();
    const LoggedClub sand = logged("SW"), by_loft = logged("56 deg");
    REQUIRE(meant(golfer, by_loft) == "sand wedge");  // alone, it is
    REQUIRE(meant(golfer, sand, {sand, by_loft}) == "sand wedge");
    REQUIRE(meant(golfer, by_loft, {sand, by_loft}).empty());
    // Of two lofts the nearer one: the preset lob wedge has 60 deg.
    const LoggedClub low = logged("58 deg"), high = logged("60 deg");
    REQUIRE(golfer.club("lob wedge")->loft_rad == 60 * radians_per_degree);
    REQUIRE(meant(golfer, low, {low, high}).empty());
    REQUIRE(meant(golfer, high, {low, high}) == "lob wedge");
    // Nothing tells which of these is the gap wedge.
    const LoggedClub a = logged("AW"), u = logged("UW");
    REQUIRE(meant(golfer, a, {a, u}).empty());
    REQUIRE(meant(golfer, u, {a, u}).empty());
}

TEST_CASE("a build is its club only when it stands for it", "[log]") {
    Golfer golfer = bag();
    REQUIRE(meant(golfer, logged("driver", "44 in")).empty());
    REQUIRE(meant(golfer, logged("1W", "44 in", true)) == "driver");
    golfer.clubs[0].name = "driver, 44 in";
    REQUIRE(meant(golfer, logged("1W", "44.0\"")) == "driver, 44 in");
    REQUIRE(meant(golfer, logged("driver", "45 in")).empty());
}

TEST_CASE("more clubs than there is room for", "[log]") {
    Golfer golfer = bag();
    std::vector<LoggedClub> all;
    const std::size_t room = most_known_clubs - golfer.clubs.size();
    for (std::size_t i = 0; i < room; ++i)
        all.push_back(logged("driver", "head " + std::to_string(i)));
    all.push_back(logged("7i"));
    REQUIRE_NOTHROW(check_room(golfer, all, "a.csv"));
    all.push_back(logged("driver", "one more"));
    REQUIRE_THROWS_WITH(
        check_room(golfer, all, "a.csv"),
        Catch::Matchers::StartsWith("a.csv: " + std::to_string(room + 1) + " clubs and builds"));
}
