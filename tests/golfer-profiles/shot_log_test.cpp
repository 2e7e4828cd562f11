// Shot logs as people and apps write them: what is read, and how.
#include "golfer-profiles/shot_log.hpp"

#include <cmath>
#include <string>

#include "geometry/units.hpp"
#include "tests/catch.hpp"
#include "tests/golfer-profiles/log_fixture.hpp"

using namespace landwidth;
using namespace landwidth::fixture;
using Catch::Matchers::WithinAbs;

namespace {

double yards(double value) {
    return value * 0.9144;  // by definition
}

std::string utf16(std::string_view ascii, bool little) {
    std::string bytes = little ? "\xff\xfe" : "\xfe\xff";
    for (const char c : ascii)
        bytes += little ? std::string{c, '\0'} : std::string{'\0', c};
    return bytes;
}

}  // namespace

TEST_CASE("the columns of the format are read in SI", "[log]") {
    const ShotLog log = log_of(
        "club,carry_yd,side_yd,total_yd,ball_speed_mph,club_speed_mph,launch_deg,spin_rpm,peak_yd,date,build,"
        "note\n"
        "driver,231.5,-12,250,150,102,12.5,2700,32,2026-05-01,44.5 in,\"windy, cold\"\n");
    REQUIRE(log.warnings.empty());
    REQUIRE(log.shots.size() == 1);
    const LoggedShot& shot = log.shots.front();
    REQUIRE(shot.row == 2);
    REQUIRE(shot.club == "driver");
    REQUIRE(shot.build == "44.5 in");
    REQUIRE(shot.note == "windy, cold");
    REQUIRE(shot.date == "2026-05-01");
    REQUIRE_THAT(*shot.carry_m, WithinAbs(yards(231.5), 1e-9));
    REQUIRE_THAT(shot.side_m, WithinAbs(yards(-12), 1e-9));
    REQUIRE_THAT(*shot.total_m, WithinAbs(yards(250), 1e-9));
    REQUIRE_THAT(*shot.ball_speed_mps, WithinAbs(150 * 0.44704, 1e-9));
    REQUIRE_THAT(*shot.club_speed_mps, WithinAbs(102 * 0.44704, 1e-9));
    REQUIRE_THAT(*shot.launch_rad, WithinAbs(12.5 * std::acos(-1.0) / 180, 1e-12));
    REQUIRE_THAT(*shot.spin_rad_per_s, WithinAbs(2700 * 2 * std::acos(-1.0) / 60, 1e-9));
    REQUIRE_THAT(*shot.peak_m, WithinAbs(yards(32), 1e-9));
}

TEST_CASE("one file in many dresses gives the same shots", "[log]") {
    const std::string plain = "club,carry_yd,side_yd\ndriver,231.5,12\n3-wood,215,-4.5\n";
    const std::string dresses[] = {
        "\xef\xbb\xbf" + plain,
        utf16(plain, true),
        utf16(plain, false),
        "club,carry_yd,side_yd\r\ndriver,231.5,12\r\n3-wood,215,-4.5\r\n",
        "club,carry_yd,side_yd\rdriver,231.5,12\r3-wood,215,-4.5\r",
        "club,carry_yd,side_yd\ndriver,231.5,12\n3-wood,215,-4.5",
        " Club , CARRY_YD ,Side (yd)\n driver , 231.5 , 12 \n3-wood,215,-4.5\n",
        "club;carry_yd;side_yd\ndriver;231,5;12\n3-wood;215;-4,5\n",
        "club\tcarry_yd\tside_yd\ndriver\t231,5\t12\n3-wood\t215\t-4,5\n",
        "club,carry_yd,side_yd\ndriver,\"231,5\",12\n3-wood,215,\"-4,5\"\n",
        "\"club\",\"carry_yd\",\"side_yd\"\n\"driver\",\"231.5\",\"12\"\n\"3-wood\",\"215\",\"-4.5\"\n",
        "club,carry_yd,side_yd\ndriver,231.5 yd,12R\n3-wood,215yd,4.5 left\n",
        "club,carry_yd,side_yd\ndriver,231.5 yards,R 12\n3-wood,215,L4.5\n",
        "club,carry_yd,side_yd\ndriver,231.5,12 yd r\n3-wood,215,\u22124.5\n",
        "club,carry_m,side_m\ndriver,211.6836,10.9728\n3-wood,196.596,-4.1148\n",
        "club,carry_yd,side_m\ndriver,211.6836 m,10.9728\n3-wood,196.596m,-4.1148\n",
        "club,carry_yd,side_yd,,\ndriver,231.5,12,,\n3-wood,215,-4.5,,\n",
        "club,carry_yd,side_yd\ndriver,231.5,12,\n3-wood,215,-4.5,\n",
        "club,carry_yd,carry_m,side_yd\ndriver,231.5,,12\n3-wood,215,,-4.5\n",
    };
    for (const std::string& dress : dresses) {
        CAPTURE(dress);
        const ShotLog log = log_of(dress);
        REQUIRE(log.shots.size() == 2);
        REQUIRE(log.shots[0].club == "driver");
        REQUIRE(log.shots[0].row == 2);
        REQUIRE(log.shots[1].row == 3);
        REQUIRE_THAT(*log.shots[0].carry_m, WithinAbs(yards(231.5), 1e-9));
        REQUIRE_THAT(log.shots[0].side_m, WithinAbs(yards(12), 1e-9));
        REQUIRE_THAT(*log.shots[1].carry_m, WithinAbs(yards(215), 1e-9));
        REQUIRE_THAT(log.shots[1].side_m, WithinAbs(yards(-4.5), 1e-9));
    }
}

TEST_CASE("rows are counted as a spreadsheet counts them", "[log]") {
    const ShotLog log = log_of(
        "sep=,\n\nclub,carry_yd,side_yd,note\r\n\r\ndriver,230,0,\"two\nlines\"\r\n,,,\ndriver,231,0,x\n");
    REQUIRE(log.shots.size() == 2);
    REQUIRE(log.shots[0].row == 5);
    REQUIRE(log.shots[0].note == "two\nlines");
    REQUIRE(log.shots[1].row == 7);
}

TEST_CASE("an inch mark is no quotation mark that swallows rows", "[log]") {
    const ShotLog log = log_of(
        "club,build,carry_yd,side_yd\ndriver,44.5\",230,1\ndriver,45\",231,2\ndriver,\"45.5\"\"\",232,3\n");
    REQUIRE(log.shots.size() == 3);
    REQUIRE(log.shots[0].build == "44.5\"");
    REQUIRE(log.shots[1].build == "45\"");
    REQUIRE(log.shots[2].build == "45.5\"");
    REQUIRE(contains(refusal_of("club,build,carry_yd,side_yd\ndriver,\"44.5\" cut,230,1\ndriver,x,231,2\n"
                                "driver,\"y\",232,3\n"),
                     "row 2: a quotation mark too many or too few"));
}

TEST_CASE("headings are mapped to ours", "[log]") {
    const ShotLog log = log_of("Player,Club Type,Carry,Lateral,Smash\nA,driver,210,5R,1.48\n",
                               {{"club", "club type"}, {"carry_m", " Carry "}, {"side_yd", "Lateral"}});
    REQUIRE_THAT(*log.shots.front().carry_m, WithinAbs(210.0, 1e-9));
    REQUIRE_THAT(log.shots.front().side_m, WithinAbs(yards(5), 1e-9));
    REQUIRE(log.warnings.size() == 1);
    REQUIRE(log.warnings.front() == "columns are not used: \"Player\", \"Smash\"");
}

TEST_CASE("other units of speed", "[log]") {
    const ShotLog log = log_of(
        "club,carry_yd,side_yd,ball_speed_kmh,club_speed_mps\ndriver,230,0,240,45\ndriver,230,0,150 mph,45 "
        "m/s\n");
    REQUIRE_THAT(*log.shots[0].ball_speed_mps, WithinAbs(240 / 3.6, 1e-9));
    REQUIRE_THAT(*log.shots[0].club_speed_mps, WithinAbs(45, 1e-9));
    REQUIRE_THAT(*log.shots[1].ball_speed_mps, WithinAbs(150 * 0.44704, 1e-9));
    REQUIRE(log.warnings.front() == "column \"ball_speed_kmh\": read as the cells say, 1 in kmh, 1 in mph");
}

TEST_CASE("mixed units and mixed sides are told with their numbers", "[log]") {
    const ShotLog log =
        log_of("club,carry_yd,side_yd\ndriver,212 m,12R\ndriver,231,-4\ndriver,235yd,3\ndriver,233,0\n");
    REQUIRE(log.shots.size() == 4);
    REQUIRE(log.warnings.size() == 2);
    REQUIRE(log.warnings[0] == "column \"carry_yd\": read as the cells say, 1 in m, 3 in yd");
    REQUIRE(contains(log.warnings[1], "1 sides with a letter, 1 with a sign, 1 with neither"));
    REQUIRE(log.shots[3].side_m == 0.0);
}

TEST_CASE("what was not measured is absent, not 0", "[log]") {
    const ShotLog log = log_of(
        "club,carry_yd,side_yd,total_yd,spin_rpm\ndriver,230,0,,-\ndriver,,3,250,n/"
        "a\ndriver,231,0,240,2500\n");
    REQUIRE(!log.shots[0].total_m);
    REQUIRE(!log.shots[0].spin_rad_per_s);
    REQUIRE(!log.shots[1].carry_m);
    REQUIRE_THAT(*log.shots[1].total_m, WithinAbs(yards(250), 1e-9));
    REQUIRE(!log.shots[1].spin_rad_per_s);
    REQUIRE(log.shots[2].spin_rad_per_s);
}

TEST_CASE("positions on a course become distances along and across the line", "[log]") {
    // At the equator a thousandth of a degree of longitude is 111.3195 m (WGS 84 equatorial radius 6378137
    // m); of latitude 110.5743 m (its flattening): by definition of the ellipsoid.
    const ShotLog log = log_of(
        "club,start_lon,start_lat,finish_lon,finish_lat,target_lon,target_lat\n"
        "driver,0,0,0.002,-0.0001,0.003,0\n"
        "driver,0,0,-0.0001,0.002,0,0.003\n");
    REQUIRE(!log.shots[0].carry_m);
    REQUIRE_THAT(*log.shots[0].total_m, WithinAbs(222.639, 1e-2));
    REQUIRE_THAT(log.shots[0].side_m, WithinAbs(11.0574, 1e-3));  // to the south, eastward: right
    REQUIRE_THAT(*log.shots[1].total_m, WithinAbs(221.149, 1e-2));
    REQUIRE_THAT(log.shots[1].side_m, WithinAbs(-11.1319, 1e-3));  // to the west, northward: left
}

TEST_CASE("a hundred thousand rows are read, none lost", "[log]") {
    std::string text = "club,carry_yd,side_yd\n";
    for (int i = 0; i < 100000; ++i)
        text += "driver," + std::to_string(200 + i % 50) + "," + std::to_string(i % 41 - 20) + "\n";
    const ShotLog log = log_of(text);
    REQUIRE(log.shots.size() == 100000);
    REQUIRE(log.shots.back().row == 100001);
    REQUIRE(log.warnings.empty());
}

TEST_CASE("one shot and identical shots are logs", "[log]") {
    REQUIRE(log_of("club,carry_yd,side_yd\ndriver,230,5\n").shots.size() == 1);
    std::string same = "club,carry_yd,side_yd\n";
    for (int i = 0; i < 12; ++i)
        same += "driver,230,5\n";
    const ShotLog log = log_of(same);
    REQUIRE(log.shots.size() == 12);
    REQUIRE(log.warnings.size() == 1);
    REQUIRE(contains(log.warnings[0], "are they recorded?"));
}

TEST_CASE("shots that look like slips are told and kept", "[log]") {
    const std::string usual =
        "club,carry_yd,side_yd\ndriver,231,5\ndriver,228,-3\ndriver,235,2\ndriver,229,8\ndriver,233,-6\n"
        "driver,230,1\ndriver,227,4\n";
    const auto told = [&](const std::string& row) {
        const ShotLog log = log_of(usual + row + "\n");
        REQUIRE(log.shots.size() == 8);
        return log.warnings.empty() ? std::string() : log.warnings.front();
    };
    REQUIRE(told("driver,226,2").empty());
    REQUIRE(told("driver,190,20").empty());  // an ordinary mishit
    REQUIRE(contains(told("driver,23.1,2"), "row 9, \"driver\": 23 yd where 230 is usual; is a digit lost"));
    REQUIRE(contains(told("driver,23,2"), "is a digit lost"));
    REQUIRE(contains(told("driver,210.5,2"), "if it were metres read as yards"));
    REQUIRE(contains(told("driver,251.5,2"), "if it were yards read as metres"));
    REQUIRE(contains(told("driver,330,2"), "hard to believe"));
    REQUIRE(contains(told("driver,60,0"), "is it a full shot?"));
    REQUIRE(contains(told("driver,100,150"), "150 yd to the side of a shot of 100 yd"));
}

TEST_CASE("units stand in brackets, behind a comma, in a row of their own, or go without saying", "[log]") {
    const std::string cells = "driver,231.5,12,150,12.5,2700\n";
    const std::string headers[] = {
        "Club,Carry (yd),Side (yds),Ball Speed (mph),Launch Angle (deg),Spin Rate (rpm)\n",
        "club,Carry [yards],\"Offline, yd\",Ball Speed [MPH],Launch Angle,Spin\n",
        "Club,Carry Distance (yd),Lateral (yd),ball-speed mph,launch deg,Spin Rate\n",
        "Club,Carry,Side,Ball Speed,Launch Angle,Spin Rate\n,yd,yd,mph,deg,rpm\n",
        "Club,Carry,Side Carry,Ball Speed,Launch,Backspin\n,[yd],(yards),[mph],\u00b0,rpm\n",
        "Club,Carry (yd),Side,Ball Speed,Launch,Spin\nunits,yd,yd,mph,,\n",
    };
    for (const std::string& header : headers) {
        CAPTURE(header);
        const ShotLog log = log_of(header + cells);
        REQUIRE(log.shots.size() == 1);
        REQUIRE(log.warnings.empty());
        const LoggedShot& shot = log.shots.front();
        REQUIRE_THAT(*shot.carry_m, WithinAbs(yards(231.5), 1e-9));
        REQUIRE_THAT(shot.side_m, WithinAbs(yards(12), 1e-9));
        REQUIRE_THAT(*shot.ball_speed_mps, WithinAbs(150 * 0.44704, 1e-9));
        REQUIRE_THAT(*shot.launch_rad, WithinAbs(12.5 * std::acos(-1.0) / 180, 1e-12));
        REQUIRE_THAT(*shot.spin_rad_per_s, WithinAbs(2700 * 2 * std::acos(-1.0) / 60, 1e-9));
    }
    // The row of a unit is a row: what follows keeps its number.
    REQUIRE(log_of("Club,Carry,Side\n,m,m\ndriver,210,1\n").shots.front().row == 3);
    REQUIRE_THAT(*log_of("Club,Carry,Side\n,m,m\ndriver,210,1\n").shots.front().carry_m,
                 WithinAbs(210, 1e-9));
}

TEST_CASE("a word of the trade gives way to a column of ours", "[log]") {
    const ShotLog log = log_of("club,carry_yd,side_yd,Offline (yd),Ball Speed\ndriver,230,5,7,150\n");
    REQUIRE_THAT(log.shots.front().side_m, WithinAbs(yards(5), 1e-9));
    REQUIRE(log.warnings.size() == 2);
    REQUIRE(log.warnings[0] == "columns are not used: \"Offline (yd)\", \"Ball Speed\"");
    REQUIRE(log.warnings[1] ==
            "column \"Ball Speed\" has no unit; say it with --column ball_speed_mph=\"Ball Speed\"");
}

TEST_CASE("averages and headings between shots are left out and told", "[log]") {
    const ShotLog log = log_of(
        "Shot,Club,Carry (yd),Side (yd)\n1,driver,230,5\n2,driver,234,5\nAverage,driver,232,5\nStd. "
        "Dev.,,2,0\n"
        "Shot,Club,Carry (yd),Side (yd)\n1,7i,150,0\n,7i avg,150,0\n,Mean,150\n,TOTAL,614,10\n");
    REQUIRE(log.shots.size() == 3);
    REQUIRE(log.shots[2].row == 7);
    REQUIRE(log.warnings.size() == 3);
    REQUIRE(log.warnings[0] == "row 6 left out: the headings again");
    REQUIRE(log.warnings[1] == "rows 4, 5 and 8 to 10 left out: averages and the like, no shots");
    REQUIRE(contains(log.warnings[2], "not used: \"Shot\""));
    REQUIRE(contains(refusal_of("club,carry_yd,side_yd\nAverage,230,1\n"), "no shots under it"));
    // A note may speak of averages.
    REQUIRE(log_of("club,carry_yd,side_yd,note\ndriver,230,5,average\n").shots.size() == 1);
    const std::string shots = "club,carry_yd,side_yd,note\ndriver,230,5,\ndriver,234,9,\ndriver,238,1,thin\n";
    for (const char* note : {"average", "Session mean", "avg. of all shots", "std dev"}) {
        CAPTURE(note);
        const ShotLog noted = log_of(shots + "driver,234,5," + note + "\n");
        REQUIRE(noted.shots.size() == 3);
        REQUIRE(noted.warnings[0] == "row 5 left out: averages and the like, no shots");
    }
    REQUIRE(log_of(shots + "driver,234,5,an average strike\ndriver,231,2,max\n").shots.size() == 5);
}

TEST_CASE("a ball without a place that is called lost is a lost ball", "[log]") {
    const ShotLog log = log_of(
        "club,carry_yd,side_yd,note,result,ball_speed_mph\ndriver,230,5,,fairway,150\ndriver,,,lost "
        "ball,,151\ndriver,,,,OB,152\ndriver,lost,,,,153\ndriver,-,-,not found,,\ndriver,228,40,nearly lost "
        "it,,\n");
    std::vector<bool> lost;
    for (const LoggedShot& shot : log.shots)
        lost.push_back(shot.lost);
    REQUIRE(lost == std::vector<bool>{false, true, true, true, true, false});
    REQUIRE(!log.shots[1].carry_m);
    REQUIRE_THAT(*log.shots[1].ball_speed_mps, WithinAbs(151 * 0.44704, 1e-9));
    REQUIRE(log.warnings.size() == 3);
    REQUIRE(log.warnings[0] == "column \"result\": read for lost balls and not used otherwise");
    REQUIRE(contains(log.warnings[1], "rows 3 to 6: lost or not finished"));
    REQUIRE(contains(log.warnings[2], "row 7: said to be lost or out of bounds, but with a place"));

    const ShotLog course = log_of(
        "club,start_lon,start_lat,finish_lon,finish_lat,target_lon,target_lat\ndriver,0,0,,,0.003,0\n"
        "driver,0,0,0.002,-0.0001,0.003,0\n");
    REQUIRE(course.shots[0].lost);
    REQUIRE(!course.shots[1].lost);
    REQUIRE(contains(refusal_of("club,start_lon,start_lat,finish_lon,finish_lat,target_lon,target_lat\n"
                                "driver,0,0,0.002,,0.003,0\n"),
                     "column \"finish_lat\": empty"));
    REQUIRE(
        contains(refusal_of("club,carry_yd,side_yd,note\ndriver,,,windy\n"), "empty: a number is expected"));
    REQUIRE(
        contains(refusal_of("club,carry_yd,side_yd,note\ndriver,,5,lost\n"), "empty: a number is expected"));
}

TEST_CASE("places on the face are read in their units", "[log]") {
    const ShotLog log = log_of(
        "club,carry_yd,side_yd,strike_toe_mm,Strike Up (cm)\ndriver,230,5,-12,0.5\ndriver,231,5,0.5 in,\n");
    REQUIRE_THAT(*log.shots[0].strike_toe_m, WithinAbs(-0.012, 1e-12));
    REQUIRE_THAT(*log.shots[0].strike_up_m, WithinAbs(0.005, 1e-12));
    REQUIRE_THAT(*log.shots[1].strike_toe_m, WithinAbs(0.0127, 1e-12));
    REQUIRE(!log.shots[1].strike_up_m);
    REQUIRE(contains(refusal_of("club,carry_yd,side_yd,strike_toe_mm\ndriver,230,5,90\n"), "-60 to 60 mm"));
    REQUIRE(contains(refusal_of("club,carry_yd,side_yd,strike_toe_mm\ndriver,230,5,3 yd\n"),
                     "no unit of a place on the face"));
}

TEST_CASE("rows doubted for one reason are told in one line", "[log]") {
    std::string rows = "club,carry_yd,side_yd\n";
    for (const char* shot :
         {"231,5", "228,-3", "235,2", "229,8", "233,-6", "230,1", "227,4", "23,2", "22.8,1", "60,0"})
        rows += "driver," + std::string(shot) + "\n";
    const ShotLog log = log_of(rows);
    REQUIRE(log.warnings.size() == 2);
    REQUIRE(log.warnings[0].starts_with("rows 9 and 10, \"driver\": 23 yd where "));
    REQUIRE(contains(log.warnings[0], "is a digit lost"));
    REQUIRE(log.warnings[1].starts_with("row 11, \"driver\": 60 yd where "));
}

TEST_CASE("totals that are the carries teach no run", "[log]") {
    std::string rows = "club,carry_yd,total_yd,side_yd\n";
    for (const char* shot : {"231,231,5", "228,228,-3", "235,235,2", "229,229,8", "233,233,-6"})
        rows += "driver," + std::string(shot) + "\n";
    const ShotLog log = log_of(rows);
    REQUIRE(log.warnings.size() == 1);
    REQUIRE(contains(log.warnings[0], "total and carry are the same in all 5 rows that have both"));
    REQUIRE(!log.shots.front().total_m);
    REQUIRE_THAT(*log.shots.front().carry_m, WithinAbs(yards(231), 1e-9));
    const ShotLog ran = log_of(rows + "driver,230,250,1\n");
    REQUIRE(ran.warnings.empty());
    REQUIRE(ran.shots.front().total_m);
}

TEST_CASE("numbers that most shots of a club share are asked about once", "[log]") {
    std::string rows = "club,carry_yd,side_yd\n";
    for (int i = 0; i < 6; ++i)
        rows += "driver," + std::to_string(228 + i) + ",0\n7i,150," + std::to_string(3 * i - 7) + "\n";
    const ShotLog log = log_of(rows);
    REQUIRE(log.warnings.size() == 1);
    REQUIRE(contains(
        log.warnings[0],
        "sides of \"driver\": 6 of 6 are 0 yd; carries of \"7i\": 6 of 6 are 150 yd; are they recorded?"));
    // Three of five alike may be honest.
    REQUIRE(log_of("club,carry_yd,side_yd\npw,110,0\npw,108,0\npw,112,0\npw,111,3\npw,107,-2\n")
                .warnings.empty());
}
