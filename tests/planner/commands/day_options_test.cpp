// What the options of the day mean in SI; what they refuse stands in tests/corpus/commands.
#include "planner/commands/day_options.hpp"

#include <CLI/Config.hpp>
#include <CLI/Formatter.hpp>

#include "geometry/error.hpp"
#include "planner/commands/typed_quantities.hpp"
#include "tests/catch.hpp"

namespace landwidth {
namespace {

using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

Conditions typed(const std::string& options) {
    CLI::App app;
    DayOptions day;
    day.setup(app);
    app.parse(options);
    return day.conditions();
}

TEST_CASE("no option is the reference day", "[day_options]") {
    CHECK(is_reference_day(typed("")));
    CHECK(is_reference_day(typed("--wind 0mph@0")));
    CHECK(is_reference_day(typed("--fairway ordinary --altitude 0m")));
    CHECK_FALSE(is_reference_day(typed("--wind 1mph@0")));
    CHECK_THROWS_AS(typed("--wind 0mph@0 --gusts 5mph"), UsageError);
    CHECK_FALSE(is_reference_day(typed("--rough firm")));
    CHECK_FALSE(is_reference_day(typed("--humidity 1%")));
}

TEST_CASE("a wind in every unit and by every name of its direction", "[day_options]") {
    // By definition: a mile of 1609.344 m, a nautical mile of 1852 m.
    for (const auto& [text, mps] : std::vector<std::pair<std::string, double>>{{"12mph", 5.36448},
                                                                               {"12 MPH", 5.36448},
                                                                               {"18kmh", 5.0},
                                                                               {"18km/h", 5.0},
                                                                               {"5m/s", 5.0},
                                                                               {"5mps", 5.0},
                                                                               {"10kn", 5.144444},
                                                                               {"10knots", 5.144444},
                                                                               {"60mph", 26.8224},
                                                                               {"0.5m/s", 0.5}}) {
        INFO(text);
        CHECK_THAT(typed_wind_speed_mps("--wind", text), WithinRel(mps, 1e-6));
    }
    for (const auto& [text, degrees] : std::vector<std::pair<std::string, double>>{{"240", 240.0},
                                                                                   {"240deg", 240.0},
                                                                                   {" 240 ", 240.0},
                                                                                   {"0", 0.0},
                                                                                   {"360", 0.0},
                                                                                   {"N", 0.0},
                                                                                   {"wsw", 247.5},
                                                                                   {"NW", 315.0},
                                                                                   {"ESE", 112.5}}) {
        INFO(text);
        CHECK_THAT(typed_wind("--wind", "12mph@" + text).from.degrees(), WithinAbs(degrees, 1e-9));
    }
    const Conditions gusty = typed("--wind 12mph@240 --gusts 18mph");
    REQUIRE(gusty.wind);
    CHECK_THAT(gusty.wind->gusts_mps.value(), WithinRel(8.04672, 1e-6));
    CHECK_FALSE(typed("--wind 12mph@240").wind->gusts_mps);
}

TEST_CASE("a wind card takes speed and gusts, and leaves the day without wind", "[day_options]") {
    CLI::App app;
    DayOptions day;
    day.setup(app);
    day.setup_wind_card(app);
    app.parse("--wind-card 12mph --gusts 18mph --fairway firm");
    const std::optional<Wind> wind = day.wind_card();
    REQUIRE(wind);
    CHECK_THAT(wind->speed_mps, WithinRel(5.36448, 1e-6));
    CHECK_THAT(wind->gusts_mps.value(), WithinRel(8.04672, 1e-6));
    CHECK_FALSE(day.conditions().wind);
    CHECK(day.conditions().fairway == Firmness::firm);
}

TEST_CASE("air from temperature, altitude or pressure, and humidity", "[day_options]") {
    CHECK_THAT(typed("--temperature 8C").weather.temperature_k, WithinAbs(281.15, 1e-9));
    CHECK_THAT(typed("--temperature -5C").weather.temperature_k, WithinAbs(268.15, 1e-9));
    CHECK_THAT(typed("--temperature 50F").weather.temperature_k, WithinAbs(283.15, 1e-9));
    CHECK_THAT(typed_temperature_k("--temperature", "8 °C"), WithinAbs(281.15, 1e-9));
    CHECK_THAT(typed("--pressure 1002hPa").weather.pressure_pa, WithinAbs(100200.0, 1e-6));
    CHECK_THAT(typed("--pressure 1002mbar").weather.pressure_pa, WithinAbs(100200.0, 1e-6));
    // NIST SP 811: 1 inHg (conventional) is 3386.389 Pa.
    CHECK_THAT(typed("--pressure 29.92inHg").weather.pressure_pa, WithinAbs(101320.8, 0.1));
    CHECK(typed("--pressure 1002hPa").weather.temperature_k == standard_weather(0.0).temperature_k);
    CHECK_THAT(typed("--humidity 60%").weather.humidity, WithinAbs(0.6, 1e-12));
    // ISO 2533 at 1600 m: 277.75 K, 835.2 hPa (834.9 to 835.6 between its rows of 1500 and 1700 m).
    const Weather high = typed("--altitude 1600m").weather;
    CHECK_THAT(high.temperature_k, WithinAbs(277.75, 0.01));
    CHECK_THAT(high.pressure_pa, WithinAbs(83524.0, 50.0));
    CHECK(typed("--altitude 5280ft").weather == standard_weather(5280.0 * metres_per_foot));
    const Weather warm = typed("--altitude 1600m --temperature 30C").weather;
    CHECK_THAT(warm.temperature_k, WithinAbs(303.15, 1e-9));
    CHECK(warm.pressure_pa == high.pressure_pa);
}

TEST_CASE("firmness by its words", "[day_options]") {
    const Conditions day = typed("--fairway firm --rough soft");
    CHECK(day.fairway == Firmness::firm);
    CHECK(day.rough == Firmness::soft);
}

TEST_CASE("slips are refused with what was probably meant", "[day_options]") {
    const auto said = [](const std::string& options) -> std::string {
        try {
            typed(options);
        } catch (const UsageError& error) {
            return error.what();
        }
        return "";
    };
    CHECK(said("--temperature 60C").ends_with("was 60F meant?"));
    CHECK_FALSE(said("--temperature -60C").ends_with("meant?"));
    CHECK(said("--altitude 5280m").ends_with("was 5280ft meant?"));
    CHECK(said("--pressure 29.9hPa").ends_with("was 29.9inHg meant?"));
    CHECK(said("--pressure 1002inHg").ends_with("was 1002hPa meant?"));
    CHECK(said("--temperature 50C").empty());
    CHECK_FALSE(said("--temperature 50.1C").empty());
    CHECK(said("--wind 60mph@0").empty());
    CHECK_FALSE(said("--wind 60.1mph@0").empty());
    CHECK(said("--wind 10kn@0 --gusts 10kn").empty());
}

}  // namespace
}  // namespace landwidth
