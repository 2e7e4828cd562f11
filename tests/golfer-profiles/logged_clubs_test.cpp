// From logs to clubs: grouping, builds, kinds, landing places of shots known by their end.
#include "golfer-profiles/logged_clubs.hpp"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

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

LoggedClubs clubs_of(std::string_view text, const std::vector<KindOfClub>& kinds = {},
                     const std::vector<std::string>& carried = {}) {
    return logged_clubs({{"a.csv", log_of(text)}}, kinds, carried);
}

bool says(const LoggedClubs& logged, std::string_view part) {
    return std::any_of(logged.warnings.begin(), logged.warnings.end(),
                       [&](const std::string& warning) { return contains(warning, part); });
}

std::vector<std::string> names_of(const LoggedClubs& logged) {
    std::vector<std::string> names;
    for (const LoggedClub& club : logged.clubs)
        names.push_back(club.name);
    return names;
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

TEST_CASE("spellings are one club within and across logs, and it is told", "[log]") {
    const LoggedClubs logged =
        logged_clubs({{"a.csv", log_of("club,carry_yd,side_yd\ndriver,230,1\n7i,150,0\n1W,228,2\n")},
                      {"b.csv", log_of("club,carry_yd,side_yd\n7 Iron,152,0\nDr,231,3\n")}},
                     {});
    REQUIRE(names_of(logged) == std::vector<std::string>{"driver", "7i"});
    REQUIRE(logged.clubs[0].shots.size() == 3);
    REQUIRE(logged.clubs[0].shots[2].log == 1);
    REQUIRE(logged.clubs[0].shots[2].row == 3);
    REQUIRE(says(logged, "\"driver\" and \"1W\" and \"Dr\" are taken for one club"));
    REQUIRE(says(logged, "\"7i\" and \"7 Iron\" are taken for one club"));
    REQUIRE(!says(clubs_of("club,carry_yd,side_yd\nDriver,230,1\ndriver,232,1\n"), "taken for one"));
}

TEST_CASE("two wedges stay two", "[log]") {
    const LoggedClubs logged = clubs_of(
        "club,carry_yd,side_yd\n58 deg,80,0\n60 deg,72,0\nlob wedge,70,0\nSW,90,0\n56 deg,92,0\nLW "
        "58,79,1\nLW 60,71,1\n");
    REQUIRE(names_of(logged) ==
            std::vector<std::string>{"58 deg", "60 deg", "lob wedge", "SW", "56 deg", "LW 58", "LW 60"});
    REQUIRE(logged.warnings.empty());
}

TEST_CASE("where all shots are of builds, one build is the club in the bag", "[log]") {
    const std::string text =
        "club,build,carry_yd,side_yd\ndriver,44 in,230,1\n1W,45.5 "
        "in,235,2\nDr,\"45.5\"\"\",236,3\n7i,,150,0\n"
        "driver,\"driver, 44.0in\",231,4\ndriver,45.5 Inch,233,-3\n";
    const LoggedClubs logged = clubs_of(text);
    REQUIRE(names_of(logged) == std::vector<std::string>{"driver, 44 in", "driver, 45.5 in", "7i"});
    REQUIRE(logged.clubs[0].shots.size() == 2);
    REQUIRE(logged.clubs[1].shots.size() == 3);
    REQUIRE(logged.clubs[1].club == "driver");
    REQUIRE(logged.clubs[1].build == "45.5 in");
    REQUIRE(!logged.clubs[0].is_the_one_carried);
    REQUIRE(logged.clubs[1].is_the_one_carried);
    REQUIRE(!logged.clubs[2].is_the_one_carried);
    REQUIRE(says(
        logged,
        "every shot of \"driver\" is of a build; \"driver, 45.5 in\" is taken for the one in the bag: it "
        "has the most shots"));

    const LoggedClubs asked = clubs_of(text, {}, {"1w, 44\""});
    REQUIRE(asked.clubs[0].is_the_one_carried);
    REQUIRE(!asked.clubs[1].is_the_one_carried);
    REQUIRE(says(asked, "as --carried says"));

    REQUIRE_THROWS_AS(clubs_of(text, {}, {"driver, 43 in"}), UsageError);
    REQUIRE_THROWS_AS(clubs_of(text, {}, {"driver, 44 in", "driver, 45.5 in"}), UsageError);
    REQUIRE_THROWS_AS(clubs_of(text + "driver,,230,5\n", {}, {"driver, 44 in"}), UsageError);
}

TEST_CASE("of equally many shots the first build is carried, and none beside shots without a build",
          "[log]") {
    const std::string two = "club,build,carry_yd,side_yd\ndriver,44 in,230,1\ndriver,45 in,235,2\n";
    REQUIRE(clubs_of(two).clubs[0].is_the_one_carried);
    REQUIRE(!clubs_of(two).clubs[1].is_the_one_carried);
    for (const LoggedClub& club : clubs_of(two + "driver,,232,0\n").clubs)
        REQUIRE(!club.is_the_one_carried);
    // A build called as the club is no build.
    const LoggedClubs same = clubs_of("club,build,carry_yd,side_yd\ndriver,Driver,230,1\ndriver,,235,2\n");
    REQUIRE(names_of(same) == std::vector<std::string>{"driver"});
    const LoggedClubs only = clubs_of("club,build,carry_yd,side_yd\ndriver,44 in,230,1\n");
    REQUIRE(only.clubs[0].is_the_one_carried);
    REQUIRE(says(only, "there is no other"));
}

TEST_CASE("lost balls are counted beside the shots", "[log]") {
    const LoggedClubs logged =
        clubs_of("club,carry_yd,side_yd,note\ndriver,230,1,\ndriver,,,lost in the gorse\n3w,,,OB\n");
    REQUIRE(logged.clubs[0].shots.size() == 1);
    REQUIRE(logged.clubs[0].lost == 1);
    REQUIRE(logged.clubs[1].shots.empty());
    REQUIRE(logged.clubs[1].lost == 1);
    REQUIRE(says(logged, "\"driver\": 1 of 2 shots were lost or not finished"));
}

TEST_CASE("a session is a day and a place, whatever the hour", "[log]") {
    const LoggedClubs logged = clubs_of(
        "club,carry_yd,side_yd,date,session\n7i,150,0,2026-05-01 10:31,Bay "
        "3\n7i,151,0,2026-05-01T11:02:07,bay "
        "3\n7i,152,0,2026-05-01,bay 4\n7i,153,0,2026-05-02,\n7i,154,0,,bay 4\n7i,155,0,,\n");
    std::vector<std::string> labels;
    for (const Session& session : logged.sessions) {
        labels.push_back(session.label);
        REQUIRE(session.weight == 1.0);
    }
    REQUIRE(labels ==
            std::vector<std::string>{"2026-05-01, Bay 3", "2026-05-01, bay 4", "2026-05-02", "bay 4"});
    std::vector<std::optional<std::size_t>> of_shots;
    for (const LandedShot& shot : logged.clubs[0].shots)
        of_shots.push_back(shot.session);
    REQUIRE(of_shots == std::vector<std::optional<std::size_t>>{0, 0, 1, 2, 3, std::nullopt});
    REQUIRE(clubs_of("club,carry_yd,side_yd\n7i,150,0\n").sessions.empty());
}

TEST_CASE("what is read and not used is said", "[log]") {
    const LoggedClubs logged = clubs_of(
        "club,carry_yd,side_yd,peak_yd,club_speed_mph,note\ndriver,230,1,30,100,topped\ndriver,231,1,,,\n");
    REQUIRE(logged.warnings.size() == 3);
    REQUIRE(logged.warnings[0] == "peak heights are read and not used");
    REQUIRE(contains(logged.warnings[1], "club speeds are read for checking"));
    REQUIRE(contains(logged.warnings[2],
                     "(1 of them): a shot noted as a mishit is judged by where it came down"));
}

TEST_CASE("more clubs than a profile holds is one line", "[log]") {
    std::string text = "club,build,carry_yd,side_yd\n";
    for (int i = 0; i < 40; ++i)
        text += "driver,head " + std::to_string(i) + ",230,1\n";
    REQUIRE(clubs_of(text).clubs.size() == 40);
    REQUIRE_THROWS_WITH(clubs_of(text + "7i,,150,0\n"),
                        Catch::Matchers::StartsWith("a.csv: 41 clubs and builds, and a profile holds 40"));
}

TEST_CASE("builds named in the column of the club are builds of it", "[log]") {
    const LoggedClubs logged = clubs_of(
        "club,carry_yd,side_yd\n\"driver, 45 in\",240,5\nDriver 45in,243,-5\n\"driver 45\"\"\",238,1\n"
        "\"driver, 44 in\",236,2\n58 deg,80,1\nDriver 10.5,239,1\n");
    REQUIRE(names_of(logged) ==
            std::vector<std::string>{"driver, 45 in", "driver, 44 in", "58 deg", "Driver 10.5"});
    REQUIRE(logged.clubs[0].shots.size() == 3);
    REQUIRE(logged.clubs[0].club == "driver");
    REQUIRE(logged.clubs[0].build == "45 in");
    REQUIRE_THAT(*logged.clubs[0].length_m, WithinAbs(45 * 0.0254, 1e-12));
    REQUIRE(logged.clubs[0].is_the_one_carried);
    // As a column of its own says it.
    const LoggedClubs by_column =
        clubs_of("club,build,carry_yd,side_yd\ndriver,\"45 in\",240,5\n\"driver, 45 in\",,243,-5\n");
    REQUIRE(names_of(by_column) == std::vector<std::string>{"driver, 45 in"});
}
