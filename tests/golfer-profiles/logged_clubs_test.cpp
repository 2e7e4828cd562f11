// From logs to clubs: grouping, builds, kinds, landing places of shots known by their end.
#include "golfer-profiles/logged_clubs.hpp"

#include <cmath>

#include "golfer-profiles/run_by_kind.hpp"
#include "tests/catch.hpp"
#include "tests/golfer-profiles/log_fixture.hpp"

using namespace landwidth;
using namespace landwidth::fixture;
using Catch::Matchers::WithinAbs;

namespace {

double yards(double value) {
    return value * 0.9144;  // by definition
}

LoggedClubs clubs_of(std::string_view text, const std::vector<KindOfClub>& kinds = {}) {
    return logged_clubs({{"a.csv", log_of(text)}}, kinds);
}

}  // namespace

TEST_CASE("shots are grouped by club and build, over several logs", "[log]") {
    const LoggedClubs logged = logged_clubs(
        {{"a.csv", log_of("club,build,carry_yd,side_yd\nDriver,,230,1\ndriver,44.5 in,225,2\n7i,,150,0\n")},
         {"b.csv", log_of("club,carry_yd,side_yd\n driver ,232,3\n")}},
        {});
    REQUIRE(logged.clubs.size() == 3);
    REQUIRE(logged.clubs[0].name == "Driver");
    REQUIRE(logged.clubs[0].shots.size() == 2);
    REQUIRE(logged.clubs[0].shots[1].log == 1);
    REQUIRE(logged.clubs[0].shots[1].row == 2);
    REQUIRE(!logged.clubs[0].length_m);
    REQUIRE(logged.clubs[1].name == "driver, 44.5 in");
    REQUIRE(logged.clubs[1].kind == ClubKind::driver);
    REQUIRE_THAT(*logged.clubs[1].length_m, WithinAbs(44.5 * 0.0254, 1e-12));
    REQUIRE(logged.clubs[2].kind == ClubKind::iron);
}

TEST_CASE("a shot known by its end alone landed before it, in its own direction", "[log]") {
    const LoggedClubs by_kind = clubs_of("club,total_yd,side_yd\ndriver,250,20\n");
    const double share = run_share_of_carry(ClubKind::driver);
    const ShotOffset landing = by_kind.clubs.front().shots.front().landing;
    REQUIRE_THAT(landing.carry_m * (1 + share), WithinAbs(yards(250), 1e-9));
    REQUIRE_THAT(landing.side_m / landing.carry_m, WithinAbs(20.0 / 250.0, 1e-12));
    REQUIRE(by_kind.warnings.size() == 1);
    REQUIRE(!by_kind.clubs.front().run_m);

    // The other shots of the club ran a tenth of their carry.
    const LoggedClubs by_shots =
        clubs_of("club,carry_yd,total_yd,side_yd\ndriver,230,253,0\ndriver,,242,0\ndriver,230,253,5\n");
    REQUIRE_THAT(by_shots.clubs.front().shots[1].landing.carry_m, WithinAbs(yards(220), 1e-9));
    REQUIRE_THAT(*by_shots.clubs.front().run_m, WithinAbs(yards(23), 1e-9));
}

TEST_CASE("a club's launch is the middle of its shots with all three numbers", "[log]") {
    const LoggedClubs logged = clubs_of(
        "club,carry_yd,side_yd,ball_speed_mph,launch_deg,spin_rpm\n"
        "driver,230,0,150,12,2500\ndriver,230,0,152,13,2600\ndriver,230,0,154,17,2900\ndriver,230,0,200,,"
        "100\n");
    const Launch launch = *logged.clubs.front().launch;
    REQUIRE_THAT(launch.ball_speed_mps, WithinAbs(152 * 0.44704, 1e-9));
    REQUIRE_THAT(launch.launch_rad, WithinAbs(13 * std::acos(-1.0) / 180, 1e-12));
    REQUIRE(!clubs_of("club,carry_yd,side_yd,ball_speed_mph\ndriver,230,0,150\n").clubs.front().launch);
}

TEST_CASE("a club whose name tells nothing needs a word", "[log]") {
    const std::string text = "club,carry_yd,side_yd\nold faithful,180,0\n";
    REQUIRE_THROWS_WITH(clubs_of(text),
                        Catch::Matchers::StartsWith("a.csv: row 2: the name \"old faithful\" does not tell"));
    REQUIRE(clubs_of(text, {{"Old Faithful", ClubKind::hybrid}}).clubs.front().kind == ClubKind::hybrid);
    REQUIRE_THROWS_AS(clubs_of(text, {{"old", ClubKind::hybrid}, {"old faithful", ClubKind::iron}}),
                      UsageError);
}

TEST_CASE("putts are left aside", "[log]") {
    const LoggedClubs logged = clubs_of("club,carry_yd,side_yd\nputter,5,0\n7i,150,0\nputter,2,0\n");
    REQUIRE(logged.clubs.size() == 1);
    REQUIRE(logged.warnings.front() == "2 putts are left aside");
}
