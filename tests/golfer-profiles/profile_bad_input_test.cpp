// Every way a profile can be wrong gets one line that says what, where and what to do.
#include <cmath>
#include <filesystem>
#include <string>

#include "geometry/error.hpp"
#include "golfer-profiles/profile_file.hpp"
#include "tests/catch.hpp"

using namespace landwidth;

namespace {

const std::string valid =
    R"({ "format": "landwidth-profile/1", "name": "A. Golfer", "handicap_index": 14.2, "hand": "right",
  "short_game": {"level": "handicap"}, "putting": {"level": 3},
  "clubs": [
    { "name": "driver", "kind": "driver", "length_in": 45.5,
      "pattern": { "carry_yd": 222, "carry_sd_yd": 14, "side_yd": 4, "side_sd_yd": 20, "correlation": -0.2,
                   "run_yd": 18, "tail_dof": 8,
                   "mishit": {"share": 0.08, "carry_yd": 165, "carry_sd_yd": 25, "side_yd": 8, "side_sd_yd": 30},
                   "shots": 24 },
      "launch": {"ball_speed_mph": 143, "launch_deg": 12.5, "spin_rpm": 2900} },
    { "name": "3-wood", "kind": "fairway-wood",
      "pattern": { "carry_yd": 205, "carry_sd_yd": 12, "side_yd": 0, "side_sd_yd": 16, "shots": 0 } },
    { "name": "putter", "kind": "putter" } ] }
)";

// The valid profile with the first `from` replaced.
std::string with(const std::string& from, const std::string& to, std::string text = valid) {
    const std::size_t at = text.find(from);
    REQUIRE(at != std::string::npos);
    return text.replace(at, from.size(), to);
}

std::string error_of(const std::string& text) {
    try {
        parse_profile(text, "me.json");
    } catch (const InputError& error) {
        return error.what();
    }
    return "no error";
}

void require_line(const std::string& message) {
    CAPTURE(message);
    REQUIRE(message.find("me.json: ") == 0);
    REQUIRE(message.find('\n') == std::string::npos);
    REQUIRE(message.find("json.exception") == std::string::npos);
}

void require_error(const std::string& text, const std::string& expected) {
    const std::string message = error_of(text);
    require_line(message);
    CAPTURE(message, expected);
    REQUIRE(message == "me.json: " + expected);
}

void require_error_with(const std::string& text, const std::string& part) {
    const std::string message = error_of(text);
    require_line(message);
    CAPTURE(message, part);
    REQUIRE(message.find(part) != std::string::npos);
}

void require_warning(const std::string& text, const std::string& expected) {
    const ProfileReading reading = parse_profile(text, "me.json");
    CAPTURE(expected);
    REQUIRE(reading.warnings.size() == 1);
    REQUIRE(reading.warnings.front() == expected);
}

}  // namespace

TEST_CASE("the design's own example reads without a warning") {
    const ProfileReading reading = parse_profile(valid, "me.json");
    REQUIRE(reading.warnings.empty());
    REQUIRE(reading.golfer.putting == Level{3.0});
    const ShotPattern& driver = reading.golfer.clubs[0].pattern.value();
    REQUIRE(driver.usual.centre == ShotOffset{222 * 0.9144, 4 * 0.9144});
    REQUIRE(driver.usual.correlation == -0.2);
    REQUIRE(driver.tail_dof == 8);
    REQUIRE(driver.mishit.value().share == 0.08);
    REQUIRE(driver.shots == 24);
    REQUIRE(reading.golfer.clubs[0].launch.value().ball_speed_mps == 143 * 0.44704);
}

TEST_CASE("what may be absent has its meaning") {
    const Club wood = parse_profile(valid, "me.json").golfer.clubs.at(1);
    REQUIRE_FALSE(wood.length_m.has_value());
    REQUIRE_FALSE(wood.launch.has_value());
    const ShotPattern& pattern = wood.pattern.value();
    REQUIRE(std::isinf(pattern.tail_dof));
    REQUIRE(pattern.usual.correlation == 0);
    REQUIRE_FALSE(pattern.mishit.has_value());
    // By kind: 20 on 200 yd and 20 on 150 yd, halfway, are 0.117 of the carry.
    REQUIRE(std::abs(pattern.run_m / pattern.usual.centre.carry_m - 0.11667) < 1e-4);
}

TEST_CASE("a byte-order mark and a file without a final newline are fine") {
    REQUIRE(error_of("\xef\xbb\xbf" + valid) == "no error");
    REQUIRE(error_of(valid.substr(0, valid.size() - 1)) == "no error");
}

TEST_CASE("what is not JSON is told with line and column") {
    require_error("", "the file is empty");
    require_error(" \n", "the file is empty");
    require_error("\xff\xfe{", "UTF-16 text; save the file as UTF-8");
    require_error_with("hello", "line 1, column 1: not JSON at \"hello\"");
    require_error(valid.substr(0, 150),
                  "line 2, column 54: the file ends in the middle of the JSON; is it cut off?");
    require_error(with("222,", "222, // mine\n"),
                  "line 5, column 37: not JSON at \"//\": JSON has no comments; delete it");
    require_error_with(with("\"3-wood\",", "\"3-wood\", # x\n"),
                       "line 10, column 25: not JSON at \"#\": JSON has no comments");
    require_error_with(with("\"shots\": 0 }", "\"shots\": 0, }"),
                       "line 11, column 100: not JSON at \"}\": delete the comma before the closing bracket");
    require_error_with(with("\"putter\" } ]", "\"putter\" }, ]"),
                       "delete the comma before the closing bracket");
    require_error_with(with("\"right\"", "'right'"),
                       "not JSON at \"'right'\": texts and keys stand in plain double quotes");
    require_error_with(with("\"right\"", "\u201cright\u201d"), "texts and keys stand in plain double quotes");
    require_error_with(with("right\",", "right,"), "a text in quotes stays on one line");
    require_error_with(with("14.2,", "14.2"), "not JSON at \"hand\": a comma or colon is missing before it");
    require_error_with(with("\"length_in\"", "length_in"), "line 4, column 43: not JSON at \"length_in\"");
    require_error_with(with("222", "NaN"), "line 5, column 32: not JSON at \"NaN\": numbers are written as");
    require_error_with(with("222", "-Infinity"),
                       "line 5, column 32: not JSON at \"-Infinity\": numbers are written as");
    require_error_with(with("14.2", "+2.3"), "not JSON at \"+2.3\": numbers are written as");
    require_error_with(with("A. Golfer", "A\xff"), "not UTF-8 text; save the file as UTF-8");
    require_error_with(valid + "}", "line 13, column 1: not JSON at \"}\"");
}

TEST_CASE("a number too large for any computer is told with its place") {
    require_error(with("222", "1e999"), "line 5, column 32: the number 1e999 is too large");
    require_error_with(with("14.2", "-1e999"), "the number -1e999 is too large");
}

TEST_CASE("deep nesting neither crashes nor passes") {
    require_error_with(std::string(200000, '['), "the file ends in the middle of the JSON");
    require_error_with(std::string(100000, '[') + std::string(100000, ']'), "the file holds a list");
}

TEST_CASE("JSON that is no profile") {
    require_error("[]", "the file holds a list; a profile is an object {...}");
    require_error("12", "the file holds 12; a profile is an object {...}");
    require_error("{}", "format is missing; a profile begins with \"format\": \"landwidth-profile/1\"");
    require_error(with("profile/1", "profile/2"),
                  "format is \"landwidth-profile/2\"; this program reads \"landwidth-profile/1\"");
    require_error(with("\"landwidth-profile/1\"", "1"), "format is 1; a text in quotes is expected");
}

TEST_CASE("a value out of range is told with the bound it breaks") {
    require_error(with("\"carry_sd_yd\": 12", "\"carry_sd_yd\": -4"),
                  "clubs[1] \"3-wood\": pattern.carry_sd_yd is -4; a standard deviation must be more than 0");
    require_error(with("\"side_sd_yd\": 16", "\"side_sd_yd\": 0"),
                  "clubs[1] \"3-wood\": pattern.side_sd_yd is 0; a standard deviation must be more than 0");
    require_error(with("-0.2", "2"),
                  "clubs[0] \"driver\": pattern.correlation is 2; a correlation must be less than 1");
    require_error(with("-0.2", "-1"),
                  "clubs[0] \"driver\": pattern.correlation is -1; a correlation must be more than -1");
    require_error_with(with("\"tail_dof\": 8", "\"tail_dof\": 2"),
                       "pattern.tail_dof is 2; the number of degrees of freedom");
    require_error_with(with("0.08", "1"),
                       "pattern.mishit.share is 1; a share of shots (0.08 for 8 %) must be less than 1");
    require_error_with(with("0.08", "-0.1"), "must be at least 0");
    require_error_with(with("222", "1e308"),
                       "pattern.carry_yd is 1e+308; a carry in yards must be at most 450");
    require_error_with(with("222", "0"), "a carry in yards must be at least 1");
    require_error_with(with("\"run_yd\": 18", "\"run_yd\": -1"),
                       "pattern.run_yd is -1; a run-out in yards must be at least 0");
    require_error_with(with("14.2", "55"),
                       "handicap_index is 55; a handicap index (plus handicaps negative) must be at most 54");
    require_error_with(with("\"level\": 3", "\"level\": 60"), "putting.level is 60");
    require_error_with(with("\"shots\": 24", "\"shots\": 2.5"),
                       "pattern.shots is 2.5; the number of recorded shots");
    require_error_with(with("\"shots\": 24", "\"shots\": -1"), "must be at least 0");
    require_error_with(with("45.5", "455"), "length_in is 455; a club length in inches must be at most 60");
    require_error_with(with("143", "-143"), "launch.ball_speed_mph is -143");
}

TEST_CASE("a value of the wrong type is told as it stands") {
    require_error(with("222", "\"222\""),
                  "clubs[0] \"driver\": pattern.carry_yd is the text \"222\"; a carry in yards is a number, "
                  "without quotes");
    require_error_with(with("222", "null"), "pattern.carry_yd is null; a carry in yards is a number");
    require_error_with(with("\"tail_dof\": 8", "\"tail_dof\": null"), "pattern.tail_dof is null");
    require_error_with(with("222", "true"), "pattern.carry_yd is true");
    require_error_with(with("222", "[222]"), "pattern.carry_yd is a list");
    require_error_with(with("\"A. Golfer\"", "7"), "name is 7; a text in quotes is expected");
    require_error_with(with("{\"level\": 3}", "3"), "putting is 3; an object {...} is expected");
    require_error_with(with("\"level\": 3", "\"level\": \"Tour\""),
                       "putting.level is the text \"Tour\"; did you mean \"tour\"?");
    require_error_with(with("\"level\": 3", "\"level\": true"), "putting.level is true; a handicap number,");
    require_error_with(with("\"right\"", "\"Right\""), "hand is \"Right\"; write \"right\" or \"left\"");
    require_error_with(with("fairway-wood", "fairway wood"),
                       "kind is \"fairway wood\"; did you mean \"fairway-wood\"?");
    require_error_with(with("{ \"name\": \"putter\", \"kind\": \"putter\" }", "\"putter\""),
                       "clubs[2] is the text \"putter\"; a club is an object {...}");
}

TEST_CASE("a missing key is told with what is expected, or the key that was probably meant") {
    require_error(with("\"hand\": \"right\",", ""), "hand is missing; write \"right\" or \"left\"");
    require_error_with(
        with("\"short_game\": {\"level\": \"handicap\"},", ""),
        "short_game is missing; write \"short_game\": {\"level\": \"handicap\"} to go by the handicap index");
    require_error_with(with("\"level\": 3", ""), "putting.level is missing; a handicap number,");
    require_error(with("\"carry_sd_yd\": 12", "\"carry_sdyd\": 12"),
                  "clubs[1] \"3-wood\": pattern.carry_sd_yd is missing; is \"carry_sdyd\" meant to be it?");
    require_error_with(with(", \"shots\": 0", ""),
                       "pattern.shots is missing; the number of recorded shots (0: a preset) is expected");
    require_error_with(with("\"name\": \"3-wood\", ", ""), "clubs[1]: name is missing");
    require_error_with(with("\"spin_rpm\"", "\"spin\""), "launch.spin_rpm is missing");
}

TEST_CASE("a bag that cannot be played") {
    require_error(with("\"3-wood\"", "\" DRIVER\""),
                  "clubs[1] \"DRIVER\": the name is taken by clubs[0]; give each club its own");
    require_error_with(with("\"3-wood\"", "\"\""), "clubs[1] \"\": name is empty");
    require_error_with(with("\"3-wood\"", "\"3\\nwood\""),
                       "clubs[1] \"3\\nwood\": name contains a control character");
    require_error_with(with("\"kind\": \"putter\"", "\"kind\": \"wedge\""),
                       "clubs[2] \"putter\": pattern is missing; every club but the putter needs one");
    require_error_with(
        with(valid.substr(valid.find("{ \"name\": \"driver\""),
                          valid.find("{ \"name\": \"putter\"") - valid.find("{ \"name\": \"driver\"")),
             ""),
        "clubs: no club has a pattern");
    std::string fifteen = "{ \"name\": \"putter\", \"kind\": \"putter\" }";
    for (int i = 4; i <= 15; ++i)
        fifteen += ", { \"name\": \"putter " + std::to_string(i) + "\", \"kind\": \"putter\" }";
    require_error(with("{ \"name\": \"putter\", \"kind\": \"putter\" }", fifteen),
                  "clubs: 15 clubs; a golfer may carry at most 14 (Rules of Golf 4.1b); those on trial are "
                  "marked \"in_bag\": false");
}

TEST_CASE("a key that stands twice is an error") {
    require_error(with("\"carry_yd\": 205", "\"carry_yd\": 205, \"carry_yd\": 210"),
                  "the key \"clubs[1].pattern.carry_yd\" stands twice in one object; keep one of them");
    require_error_with(with("\"hand\"", "\"name\": \"B\", \"hand\""), "the key \"name\" stands twice");
}

TEST_CASE("a check tells everything at once, the reader the first and how many more") {
    const std::string text =
        with("222", "-1", with("\"shots\": 0", "\"shots\": \"none\"", with("\"right\"", "\"both\"")));
    const ProfileCheck check = check_profile_text(text, "me.json");
    REQUIRE_FALSE(check.golfer.has_value());
    REQUIRE(check.errors.size() == 3);
    require_error_with(
        text,
        "hand is \"both\"; write \"right\" or \"left\" (2 more; \"landwidth profile check\" lists them)");
}

TEST_CASE("unknown keys are warnings with the nearest known key") {
    require_warning(with("\"correlation\"", "\"corelation\""),
                    "clubs[0] \"driver\": pattern.corelation is not a known key and is ignored; did you mean "
                    "\"correlation\"?");
    require_warning(
        with("\"hand\"", "\"age\": 41, \"hand\""),
        "age is not a known key and is ignored; known here: format, name, handicap_index, handicap_known, "
        "hand, short_game, putting, sessions, clubs, note");
    require_warning(with("{\"share\"", "{\"Share \\n\": 1, \"share\""),
                    "clubs[0] \"driver\": pattern.mishit.\"Share \\n\" is not a known key and is ignored; "
                    "did you mean \"share\"?");
}

TEST_CASE("legal values that are hard to believe are warnings") {
    require_warning(with("\"carry_yd\": 205", "\"carry_yd\": 240"),
                    "clubs[1] \"3-wood\": pattern.carry_yd is 240; that is past \"driver\" with 222");
    require_warning(with("\"side_sd_yd\": 20", "\"side_sd_yd\": 60"),
                    "clubs[0] \"driver\": pattern.side_sd_yd is 60; more than a fifth of the carry is wider "
                    "than most beginners; "
                    "is it one standard deviation?");
    require_warning(with("45.5", "50"),
                    "clubs[0] \"driver\": length_in is 50; the Equipment Rules allow 18 to 48 in for every "
                    "club but the putter");
    require_warning(
        with("\"side_sd_yd\": 30", "\"side_sd_yd\": 20", with("\"carry_yd\": 165", "\"carry_yd\": 230")),
        "clubs[0] \"driver\": pattern.mishit.carry_yd is 230; a mishit that carries past the usual shot, and "
        "no "
        "wider of the line");
    // Wide misses go far, as learnt from a fast golfer's shots.
    CHECK(parse_profile(with("\"carry_yd\": 165", "\"carry_yd\": 230"), "me.json").warnings.empty());
}

TEST_CASE("a file that cannot be read is told with its name") {
    const auto error_of_file = [](const std::filesystem::path& path) -> std::string {
        try {
            read_profile(path);
        } catch (const InputError& error) {
            return error.what();
        }
        return "no error";
    };
    REQUIRE(error_of_file("no/such/file.json") ==
            "no/such/file.json: cannot be read: No such file or directory");
    REQUIRE(error_of_file(".") == ".: is a folder; a profile is a file");
    REQUIRE(error_of_file("/dev/zero") == "/dev/zero: is over 4 MB; that is no profile");
    REQUIRE(error_of_file("/dev/null") == "/dev/null: the file is empty");
}
