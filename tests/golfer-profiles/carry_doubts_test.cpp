// Carries that are totals or metres: by ball speed.
#include "golfer-profiles/logs/carry_doubts.hpp"

#include <fstream>
#include <iterator>
#include <string>
#include <vector>

#include "tests/catch.hpp"
#include "tests/golfer-profiles/log_fixture.hpp"

using namespace landwidth;
using namespace landwidth::fixture;

namespace {

struct Mean {
    const char* club;
    double ball_speed_mph, launch_deg, spin_rpm, carry_yd;
};
// Means of tour players (published averages, from memory).
const std::vector<Mean> men{{"driver", 167, 10.9, 2686, 275},        {"3-wood", 158, 9.2, 3655, 243},
                            {"5-wood", 152, 9.4, 4350, 230},         {"3-iron", 142, 10.4, 4630, 212},
                            {"4-iron", 137, 11.0, 4836, 203},        {"5-iron", 132, 12.1, 5361, 194},
                            {"6-iron", 127, 14.1, 6231, 183},        {"7-iron", 120, 16.3, 7097, 172},
                            {"8-iron", 115, 18.1, 7998, 160},        {"9-iron", 109, 20.4, 8647, 148},
                            {"pitching wedge", 102, 24.2, 9304, 136}};
const std::vector<Mean> women{{"driver", 140, 13.2, 2611, 218},       {"3-wood", 132, 11.2, 2704, 195},
                              {"5-wood", 128, 12.1, 4501, 185},       {"7-wood", 123, 12.7, 4693, 174},
                              {"4-iron", 116, 14.3, 4801, 169},       {"5-iron", 112, 14.8, 5081, 161},
                              {"6-iron", 109, 17.1, 5943, 152},       {"7-iron", 104, 19.0, 6699, 141},
                              {"8-iron", 100, 20.8, 7494, 130},       {"9-iron", 93, 23.9, 7589, 119},
                              {"pitching wedge", 86, 25.6, 8403, 107}};

// Six shots about each mean, carries times a factor of the club.
template <typename Factor>
std::string log_text(const std::vector<Mean>& means, const Factor& factor, bool with_launch = true,
                     const std::string& carry = "carry_yd") {
    std::string text = "club," + carry + ",side_yd,ball_speed_mph,launch_deg,spin_rpm\n";
    for (const Mean& mean : means) {
        for (int i = 0; i < 6; ++i) {
            const double share = 1.0 + 0.01 * (i - 2.5);
            text += mean.club + ("," + std::to_string(mean.carry_yd * share * factor(mean))) + ",0," +
                    std::to_string(mean.ball_speed_mph * share);
            text += with_launch
                        ? "," + std::to_string(mean.launch_deg) + "," + std::to_string(mean.spin_rpm) + "\n"
                        : ",,\n";
        }
    }
    return text;
}

std::string doubt_in(const std::string& text) {
    for (const std::string& warning : log_of(text).warnings)
        if (contains(warning, "than their ball speeds usually give")) return warning;
    return {};
}

}  // namespace

TEST_CASE("carries are not doubted", "[log]") {
    const auto as_they_are = [](const Mean&) { return 1.0; };
    for (const bool with_launch : {true, false}) {
        REQUIRE(doubt_in(log_text(men, as_they_are, with_launch)).empty());
        REQUIRE(doubt_in(log_text(women, as_they_are, with_launch)).empty());
        for (const auto& means : {men, women}) {
            for (const Mean& mean : means) {
                CAPTURE(mean.club, with_launch);
                REQUIRE(doubt_in(log_text({mean}, as_they_are, with_launch)).empty());
            }
        }
    }
}

TEST_CASE("metres under a heading in yards are suspected", "[log]") {
    const auto in_metres = [](const Mean&) { return 0.9144; };
    for (const auto& means : {men, women}) {
        for (const bool with_launch : {true, false}) {
            const std::string doubt = doubt_in(log_text(means, in_metres, with_launch));
            REQUIRE(contains(
                doubt, "shorter than their ball speeds usually give; they may be metres read as yards"));
            REQUIRE(contains(doubt, "--column carry_m=\"carry_yd\""));
        }
    }
    REQUIRE(contains(doubt_in(log_text({men.front()}, in_metres)), "9 % shorter"));  // one club is enough
    const auto yards_for_metres = [](const Mean&) { return 1.0; };
    REQUIRE(contains(doubt_in(log_text(men, yards_for_metres, true, "carry_m")),
                     "yards read as metres: then say --column carry_yd=\"carry_m\""));
}

TEST_CASE("totals under a heading for carries are suspected", "[log]") {
    // A tenth and more for woods, hardly anything for wedges.
    const auto as_totals = [](const Mean& mean) {
        return mean.ball_speed_mph > 145 ? 1.11 : mean.ball_speed_mph > 105 ? 1.05 : 1.02;
    };
    const std::string doubt = doubt_in(log_text(men, as_totals));
    REQUIRE(contains(doubt, "they may be totals, run included: then say --column total_yd=\"carry_yd\""));
}

TEST_CASE("too little tells nothing", "[log]") {
    std::string four = "club,carry_yd,side_yd,ball_speed_mph\n";
    for (int i = 0; i < 4; ++i)
        four += "driver,180,0," + std::to_string(160 + i) + "\n";
    REQUIRE(doubt_in(four).empty());
    REQUIRE(!doubt_in(four + "driver,180,0,158\n").empty());
    REQUIRE(doubt_in("club,carry_yd,side_yd\ndriver,230,1\n").empty());
}

TEST_CASE("the demo's session is not doubted", "[log]") {
    std::ifstream file(LANDWIDTH_DEMO_DIR "/sessions/fitting.csv");
    const std::string text((std::istreambuf_iterator<char>(file)), std::istreambuf_iterator<char>());
    REQUIRE(log_of(text).shots.size() == 38);
    REQUIRE(doubt_in(text).empty());
}
