#include <nlohmann/json.hpp>
#include <sstream>

#include "golfer-profiles/presets.hpp"
#include "planner/reports/profile_text.hpp"
#include "planner/reports/text_table.hpp"
#include "tests/catch.hpp"

namespace landwidth {
namespace {

bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

void require_narrow(const std::string& text) {
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);) {
        CAPTURE(line);
        REQUIRE(display_width(line) <= report_width);
    }
}

struct Shown {
    Golfer golfer = preset_golfer("bogey-man");
    std::vector<ClubSummary> clubs = bag_summary(golfer, Yards{15}.metres());
    BagView view(DisplayUnits units = DisplayUnits::yards) const {
        return {golfer, clubs, Yards{15}.metres(), units};
    }
};

}  // namespace

TEST_CASE("a bag without clubs to hit is still a text") {
    Golfer golfer;
    golfer.name = "x";
    golfer.clubs.push_back({.name = "putter", .kind = ClubKind::putter});
    const std::string text = bag_text({golfer, {}, 10.0});
    REQUIRE(has(text, "In the bag without a pattern: putter."));
    require_narrow(text);
}

TEST_CASE("the table of a bag fits the terminal whatever the names") {
    Shown shown;
    shown.golfer.name = std::string(100, 'W');
    shown.clubs[3].name = std::string(100, 'W');
    require_narrow(bag_text(shown.view()));
    require_narrow(bag_text(shown.view(DisplayUnits::metres)));
}

TEST_CASE("the table of a bag, by hand: bogey man's driver is 180 + 20 yd") {
    const Shown shown;
    const std::string yards = bag_text(shown.view());
    REQUIRE(has(yards, "bogey-man, handicap index 20, right-handed"));
    REQUIRE(has(yards, "within 15 yd"));
    REQUIRE(has(yards, "180   20    200     20.0"));
    REQUIRE(has(yards, "not measured"));
    REQUIRE(has(bag_text(shown.view(DisplayUnits::metres)), "165   18    183     18.3"));
}

TEST_CASE("a club on trial is marked, and not counted as carried") {
    Shown shown;
    REQUIRE_FALSE(has(bag_text(shown.view()), "on trial"));
    shown.golfer.clubs[1].in_bag = false;
    shown.golfer.clubs.push_back({.name = "old putter", .kind = ClubKind::putter, .in_bag = false});
    shown.clubs = bag_summary(shown.golfer, Yards{15}.metres());
    const std::string text = bag_text(shown.view());
    REQUIRE(has(text, shown.golfer.clubs[1].name + " *"));
    REQUIRE_FALSE(has(text, shown.golfer.clubs[0].name + " *"));
    REQUIRE(has(text, "*: a club on trial, not in the bag; a plan leaves it out."));
    REQUIRE_FALSE(has(text, "old putter"));
    const auto json = nlohmann::json::parse(bag_json(shown.view()));
    REQUIRE(json["clubs"][0]["in_bag"] == true);
    REQUIRE(json["clubs"][1]["in_bag"] == false);
}

TEST_CASE("better than scratch is written with a plus") {
    Shown shown;
    shown.golfer.handicap_index = -2.3;
    REQUIRE(has(bag_text(shown.view()), "handicap index +2.3"));
}

TEST_CASE("the bag as JSON has the unit in its names") {
    const Shown shown;
    const auto yards = nlohmann::json::parse(bag_json(shown.view()));
    REQUIRE(yards["golfer"]["handicap_index"] == 20);
    REQUIRE(yards["half_width_yd"] == 15.0);
    REQUIRE(yards["clubs"].size() == 13);
    REQUIRE(yards["clubs"][0]["club"] == "driver");
    REQUIRE(yards["clubs"][0]["total_yd"] == 200.0);
    REQUIRE(yards["clubs"][0]["shots"] == 0);
    const auto metres = nlohmann::json::parse(bag_json(shown.view(DisplayUnits::metres)));
    REQUIRE(metres["clubs"][0]["carry_m"] == 164.6);
    REQUIRE(metres["half_width_m"] == 13.7);
}

TEST_CASE("the outcome of a check stands in its last line") {
    ProfileCheck check;
    check.errors = {"clubs[0] \"a\": kind is missing"};
    check.warnings = {"age is not a known key"};
    const std::string bad = check_text(check, "me.json");
    REQUIRE(has(bad, "error    clubs[0] \"a\": kind is missing\n"));
    REQUIRE(has(bad, "warning  age is not a known key\n"));
    REQUIRE(has(bad, "me.json is not a valid profile: 1 error, 1 warning.\n"));
    check.errors.clear();
    check.golfer = preset_golfer("scratch-woman");
    REQUIRE(has(check_text(check, "me.json"), "me.json is a valid profile: scratch-woman, handicap index 0"));
}

}  // namespace landwidth
