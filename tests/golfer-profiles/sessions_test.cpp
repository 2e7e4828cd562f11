// Conditions of logs: what rows and options say, what is done about it, and that it is done once.
#include <cmath>
#include <numbers>
#include <stdexcept>

#include "golfer-profiles/order_statistics.hpp"
#include "golfer-profiles/sessions/bay_widening.hpp"
#include "golfer-profiles/sessions/prepare_sessions.hpp"
#include "golfer-profiles/sessions/said_conditions.hpp"
#include "tests/catch.hpp"
#include "tests/golfer-profiles/launches.hpp"
#include "tests/golfer-profiles/log_fixture.hpp"

using namespace landwidth;
using namespace landwidth::fixture;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

SessionConditions conditions_of(std::string_view headings, std::string_view cells) {
    const std::string text =
        "club,carry_yd,side_yd," + std::string(headings) + "\ndriver,230,1," + std::string(cells) + "\n";
    return log_of(text).shots.front().conditions;
}

std::string refused(std::string_view headings, std::string_view cells) {
    return refusal_of("club,carry_yd,side_yd," + std::string(headings) + "\ndriver,230,1," +
                      std::string(cells) + "\n");
}

struct Prepared {
    LoggedClubs clubs;
    std::vector<std::string> said;
};

Prepared prepared(const std::string& text, const SessionAssumptions& assumptions = {},
                  const SessionConditions& for_all = {}) {
    std::vector<NamedLog> logs{{"a.csv", log_of(text)}};
    complete_conditions(logs.front().log, for_all);
    Prepared result{logged_clubs(logs, {}), {}};
    result.said = prepare_sessions(result.clubs, logs, assumptions);
    return result;
}

const ShotOffset& first_landing(const Prepared& prepared) {
    return prepared.clubs.clubs.front().shots.front().landing;
}

std::string all_of(const std::vector<std::string>& sentences) {
    std::string text;
    for (const std::string& sentence : sentences)
        text += sentence + "\n";
    return text;
}

}  // namespace

TEST_CASE("rows say what they were hit in", "[log]") {
    const SessionConditions said = conditions_of(
        "temperature_f,altitude_ft,humidity_pct,wind_mph,wind_from_deg,ball,surface,indoors,air",
        "50,5280,60,10,90,Range,mat,no,as-hit");
    REQUIRE_THAT(*said.weather.temperature_k, WithinAbs(283.15, 1e-9));
    REQUIRE_THAT(*said.weather.altitude_m, WithinAbs(1609.344, 1e-9));
    REQUIRE_THAT(*said.weather.humidity, WithinAbs(0.6, 1e-12));
    REQUIRE(!said.weather.pressure_pa);
    REQUIRE_THAT(said.wind->speed_mps, WithinAbs(4.4704, 1e-9));
    REQUIRE_THAT(said.wind->from_rad, WithinAbs(0.5 * std::numbers::pi, 1e-12));
    REQUIRE(said.ball == BallUsed::range);
    REQUIRE(said.surface == HitFrom::mat);
    REQUIRE(said.indoors == false);
    REQUIRE(said.air == CarryAir::as_hit);
    REQUIRE_THAT(*conditions_of("temperature_c,pressure_hpa", "-3,1002").weather.pressure_pa,
                 WithinAbs(100200, 1e-6));
    REQUIRE_THAT(*conditions_of("temperature_c", "46 F").weather.temperature_k, WithinAbs(280.927778, 1e-6));
    REQUIRE(conditions_of("wind_kmh,wind_from_deg", "18,behind").wind->from_rad == std::numbers::pi);
    REQUIRE(conditions_of("wind_mph", "0").wind == ShotWind{0.0, 0.0});
    REQUIRE(conditions_of("ball,temperature_c,indoors,wind_mph", ",,-,") == SessionConditions{});
}

TEST_CASE("conditions that cannot be are refused with row and column", "[log]") {
    REQUIRE_THAT(refused("temperature_c", "60"),
                 Contains("row 2, column \"temperature_c\": \"60\": that is 60 °C; -20 to 50 °C"));
    REQUIRE_THAT(refused("temperature_c", "8 mph"), Contains("is no unit of temperature"));
    REQUIRE_THAT(refused("altitude_m", "9000"), Contains("row 2, column \"altitude_m\""));
    REQUIRE_THAT(refused("pressure_hpa", "29.6"), Contains("row 2, column \"pressure_hpa\""));
    REQUIRE_THAT(refused("wind_mph", "12"), Contains("where the wind came from is missing"));
    REQUIRE_THAT(refused("wind_mph,wind_from_deg", "12,"), Contains("where the wind came from is missing"));
    REQUIRE_THAT(refused("wind_mph,wind_from_deg", "12,upwards"),
                 Contains("row 2, column \"wind_from_deg\""));
    REQUIRE_THAT(refused("wind_from_deg", "90"), Contains("and no speed"));
    REQUIRE_THAT(refused("wind_mph,wind_from_deg,indoors", "12,0,yes"), Contains("indoors and a wind"));
    REQUIRE_THAT(refused("altitude_m,pressure_hpa", "100,1002"), Contains("both say how thick the air is"));
    REQUIRE_THAT(refused("ball", "soft"), Contains("course or range is expected"));
    REQUIRE_THAT(refused("surface", "sand"), Contains("grass, mat or tee is expected"));
    REQUIRE_THAT(refused("indoors", "maybe"), Contains("yes or no is expected"));
    REQUIRE_THAT(refused("air", "thin"), Contains("as-hit or reference"));
}

TEST_CASE("degrees of the wind are told to be against the line") {
    const ShotLog log = log_of("club,carry_yd,side_yd,wind_mph,wind_from_deg\ndriver,230,1,5,30\n");
    REQUIRE_THAT(all_of(log.warnings), Contains("clockwise from the line of the shot"));
    REQUIRE(log_of("club,carry_yd,side_yd,wind_mph,wind_from_deg\ndriver,230,1,5,left\n").warnings.empty());
}

TEST_CASE("winds blow from where they are said to") {
    const auto flow = [](double from_deg) {
        return *flow_of({.wind = ShotWind{10.0, from_deg * radians_per_degree}});
    };
    REQUIRE_THAT(flow(0).along_mps, WithinAbs(-10, 1e-9));
    REQUIRE_THAT(flow(90).right_mps, WithinAbs(-10, 1e-9));
    REQUIRE_THAT(flow(180).along_mps, WithinAbs(10, 1e-9));
    REQUIRE_THAT(flow(270).right_mps, WithinAbs(10, 1e-9));
    REQUIRE_THAT(*wind_from_named("Behind-left"), WithinRel(225 * radians_per_degree, 1e-12));
    REQUIRE(!wind_from_named("240"));
}

TEST_CASE("nothing is brought from the reference day") {
    REQUIRE(!flow_of({}));
    REQUIRE(!flow_of({.weather = {.temperature_k = 288.15}, .wind = ShotWind{0.0, 1.0}}));
    REQUIRE(!flow_of({.weather = {.temperature_k = 300.0}, .air = CarryAir::reference}));
    REQUIRE(flow_of({.weather = {.temperature_k = 300.0}, .air = CarryAir::as_hit}));
    REQUIRE(!flow_of({.ball = BallUsed::range, .surface = HitFrom::mat, .indoors = true}));
}

TEST_CASE("a row goes before what is said for all, and saying both is told") {
    ShotLog log = log_of(
        "club,carry_yd,side_yd,temperature_c,pressure_hpa,indoors\n"
        "driver,230,1,8,,no\ndriver,231,2,,990,yes\n");
    const auto said = complete_conditions(log, {.weather = {.temperature_k = 300.0, .altitude_m = 900.0},
                                                .wind = ShotWind{5.0, 0.0},
                                                .ball = BallUsed::range});
    const SessionConditions &first = log.shots[0].conditions, &second = log.shots[1].conditions;
    REQUIRE_THAT(*first.weather.temperature_k, WithinAbs(281.15, 1e-9));
    REQUIRE(first.weather.altitude_m == 900.0);
    REQUIRE(first.wind);
    REQUIRE(second.weather.temperature_k == 300.0);
    REQUIRE(!second.weather.altitude_m);
    REQUIRE(!second.wind);
    REQUIRE(second.ball == BallUsed::range);
    REQUIRE_THAT(all_of(said), Contains("--session and 1 row says the temperature; there the row holds"));
    REQUIRE_THAT(all_of(said), Contains("altitude or pressure"));
    REQUIRE_THAT(all_of(said), Contains("1 carries from indoors are computed ones"));
}

TEST_CASE("carries as of the reference day are never corrected, whatever the air was") {
    const std::string text = "club,carry_yd,side_yd,temperature_c\ndriver,230,1,2\ndriver,240,3,2\n";
    const Prepared kept = prepared(text, {}, {.air = CarryAir::reference});
    REQUIRE(first_landing(kept) == ShotOffset{Yards{230}.metres(), Yards{1}.metres()});
    ShotLog log = log_of(text);
    REQUIRE_THAT(all_of(complete_conditions(log, {.air = CarryAir::reference})),
                 Contains("would count twice"));
    REQUIRE(first_landing(prepared(text)).carry_m > Yards{231}.metres());
}

TEST_CASE("shots are brought to the reference day once, and it is told") {
    const std::string text =
        "club,carry_yd,side_yd,date\ndriver,230,1,2026-05-02\ndriver,240,3,2026-05-02\n7i,150,0,2026-05-02\n";
    const SessionConditions windy{.wind = ShotWind{10 * metres_per_second_per_mph, 0.0}};
    std::vector<NamedLog> logs{{"a.csv", log_of(text)}};
    complete_conditions(logs.front().log, windy);
    LoggedClubs clubs = logged_clubs(logs, {});
    const auto said = prepare_sessions(clubs, logs, {});
    REQUIRE(clubs.clubs[0].shots[0].landing.carry_m > Yards{240}.metres());
    REQUIRE_THAT(all_of(said),
                 Contains("a.csv, 2026-05-02: 3 shots (wind 10 mph against) brought to the reference day"));
    REQUIRE(clubs.clubs[0].session_note == "2 of them brought to the reference day");
    REQUIRE_THROWS_AS(prepare_sessions(clubs, logs, {}), std::logic_error);
}

TEST_CASE("without a word on conditions nothing changes but that sessions are known") {
    const std::string text =
        "club,carry_yd,side_yd,date\ndriver,230.3,1.7,2.5.2026\ndriver,240,3,2026-05-02\n7i,150,0,\n";
    const Prepared plain = prepared(text);
    REQUIRE(plain.said.empty());
    REQUIRE(first_landing(plain) == ShotOffset{Yards{230.3}.metres(), Yards{1.7}.metres()});
    REQUIRE(plain.clubs.sessions.size() == 1);
    REQUIRE(plain.clubs.sessions.front().label == "2026-05-02");
    REQUIRE(plain.clubs.clubs[0].shots[1].session == std::size_t{0});
    REQUIRE(!plain.clubs.clubs[1].shots[0].session);
    REQUIRE_THAT(all_of(prepared("club,carry_yd,side_yd,date\n7i,150,0,3/4/2026\n").said),
                 Contains("the first in row 2: \"3/4/2026\""));
}

TEST_CASE("a range ball is corrected only when it is said to be one") {
    const std::string text = "club,carry_yd,side_yd\ndriver,190,9.5\n";
    const Prepared range = prepared(text, {.range_ball_loss = 0.05}, {.ball = BallUsed::range});
    REQUIRE_THAT(first_landing(range).carry_m, WithinAbs(Yards{200}.metres(), 1e-9));
    REQUIRE_THAT(first_landing(range).side_m, WithinAbs(Yards{10}.metres(), 1e-9));
    REQUIRE_THAT(all_of(range.said), Contains("range balls are taken to lose 5 %"));
    REQUIRE(first_landing(prepared(text, {.range_ball_loss = 0.05})).carry_m == Yards{190}.metres());
}

TEST_CASE("shots of a bay are widened when asked for, and told of otherwise") {
    const std::string text = "club,carry_yd,side_yd\ndriver,220,-10\ndriver,230,0\ndriver,240,20\n";
    const SessionConditions mat{.surface = HitFrom::mat};
    const Prepared told = prepared(text, {}, mat);
    REQUIRE(first_landing(told) == ShotOffset{Yards{220}.metres(), Yards{-10}.metres()});
    REQUIRE_THAT(all_of(told.said), Contains("--assume bay_widening=1.25"));
    const Prepared wide = prepared(text, {.bay_widening = 1.25}, mat);
    REQUIRE_THAT(first_landing(wide).carry_m, WithinAbs(Yards{217.5}.metres(), 1e-9));
    REQUIRE_THAT(first_landing(wide).side_m, WithinAbs(Yards{-12.5}.metres(), 1e-9));
    REQUIRE(wide.clubs.clubs.front().session_note == "spread of 3 from a bay widened by 1.25");
    REQUIRE(prepared(text, {.bay_widening = 1.25}).said.empty());
}

TEST_CASE("widening leaves the middle and moves a far mishit no further than the edge of the usual") {
    std::vector<ShotOffset> shots;
    for (int i = -10; i <= 10; ++i)
        shots.push_back({200.0 + i, 2.0 * i});
    shots.push_back({120.0, 60.0});
    const std::vector<ShotOffset> before = shots;
    std::vector<ShotOffset*> places;
    for (ShotOffset& shot : shots)
        places.push_back(&shot);
    widen(places, 1.2);
    REQUIRE_THAT(shots[0].carry_m - 200.0, WithinRel(1.2 * (before[0].carry_m - 200.0), 0.05));
    const double moved = std::hypot(shots.back().carry_m - 120.0, shots.back().side_m - 60.0);
    REQUIRE(moved < 0.2 * 80.0);
    REQUIRE(moved > 0.5);
    std::vector<ShotOffset> short_ones{{2.0, 0.0}, {100.0, 0.0}, {101.0, 0.0}};
    widen({&short_ones[0], &short_ones[1], &short_ones[2]}, 2.0);
    REQUIRE(short_ones[0].carry_m > 0.0);
}
