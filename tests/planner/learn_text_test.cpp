// The summary of what was learnt from recorded shots.
#include "planner/reports/learn_text.hpp"

#include <string>

#include "tests/catch.hpp"

using namespace landwidth;

namespace {

constexpr PatternPrior weight{10, 0.08, 0.035, 0.5};

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
        golfer.clubs.push_back({.logged = logged,
                                .club = club,
                                .prior = pattern,
                                .source = PriorSource::typical,
                                .prior_scale = 1.08,
                                .earlier_shots = 0,
                                .usual_carry_m = 176.0,
                                .mishit_chance = {0.02, 0.97},
                                .recorded_share = 2.0 / 12.0});
    }

    std::string text() const { return learn_text({golfer, logs, weight, DisplayUnits::metres}); }
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
    REQUIRE(contains(text, "driver: a typical one of the level, scaled by 1.08 to 200 m of carry"));
    REQUIRE(contains(text, "a typical pattern counts as 10 shots"));
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
