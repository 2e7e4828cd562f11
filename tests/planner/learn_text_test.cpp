// The summary of what was learnt from recorded shots.
#include "planner/reports/learn_text.hpp"

#include <string>
#include <vector>

#include "tests/catch.hpp"

using namespace landwidth;

namespace {

// A driver with two shots, the second a mishit to the left.
struct Learnt {
    std::vector<NamedLog> logs{{"folder/a.csv", {}}, {"folder/b.csv", {}}};
    LearntGolfer golfer;

    Learnt() {
        Club club;
        club.name = "driver";
        club.kind = ClubKind::driver;
        ShotPattern pattern;
        pattern.usual = {{200.0, 3.0}, 12.0, 20.0, 0.0};
        pattern.mishit = Mishit{0.1, {{150.0, 0.0}, 20.0, 30.0, 0.0}};
        pattern.run_m = 20.0;
        pattern.shots = 2;
        club.pattern = pattern;
        LoggedClub logged{.name = "driver", .club = "driver", .build = {}, .kind = ClubKind::driver};
        logged.shots = {{{202.0, 5.0}, 0, 2}, {{150.0, -47.0}, 1, 12}};
        golfer.clubs.push_back(
            {.logged = logged,
             .club = club,
             .prior = pattern,
             .source = PriorSource::typical,
             .earlier_shots = 0,
             .raw = raw_figures(std::vector<ShotOffset>{{202.0, 5.0}, {150.0, -47.0}}),
             .open = {{200, 190, 212}, {3, -6, 11}, {12, 8, 17}, {20, 13, 31}, {0.1, 0.02, 0.25}},
             .mishit_chance = {0.02, 0.97},
             .recorded_share = 2.0 / 12.0});
    }

    std::string text() const { return learn_text({golfer, logs, DisplayUnits::metres}); }
};

bool contains(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

}  // namespace

TEST_CASE("the summary tells the pattern and what it leans on", "[report]") {
    const std::string text = Learnt().text();
    REQUIRE(
        contains(text,
                 "club    shots  mishits  carry  run  side  carry sd  side sd  mishit share  from shots\n"
                 "driver      2        1    200   20    3R      12.0     20.0          10 %        17 %"));
    REQUIRE(contains(text, "driver: typical of the level, 200 m of carry, side sd 20.0"));
}

TEST_CASE("the recorded numbers stand beside what the evidence leaves open", "[report]") {
    const std::string text = Learnt().text();
    REQUIRE(contains(
        text, "driver  2         176  36.8     176    153 to 199        21L  36.8     21L     44L to 2R"));
    REQUIRE(contains(text, "driver  190 to 212  6L to 11R  8.0 to 17.0  13.0 to 31.0   2 % to 25 %"));
}

TEST_CASE("a miss to both sides is told", "[report]") {
    Learnt learnt;
    REQUIRE(!contains(learnt.text(), "two ways"));
    learnt.golfer.shapes.push_back(
        {.club = "driver",
         .ways = {Way{0.7, 0.0, -0.5, 1.0, 0.6, 0.0}, Way{0.3, 0.0, 1.2, 1.0, 0.5, 0.0}},
         .shots = 40,
         .as_odd = 0,
         .drawn = 150});
    REQUIRE(contains(learnt.text(), "driver: 70 % about 7 m left, 30 % about 27 m right"));
}

TEST_CASE("every mishit is told with file, row and reason", "[report]") {
    Learnt learnt;
    REQUIRE(contains(learnt.text(),
                     "driver, b.csv row 12: 150 m, 50 m short of the usual, 50 m left of it (97 % sure)"));
    learnt.logs.pop_back();
    learnt.golfer.clubs.front().logged.shots[1].log = 0;
    REQUIRE(contains(learnt.text(), "driver, row 12: 150 m"));
    learnt.golfer.clubs.front().mishit_chance = {0.0, 0.5};
    REQUIRE(contains(learnt.text(), "No shot was taken for a mishit."));
}
