#include "planner/commands/day_options.hpp"

#include <fmt/format.h>

#include "geometry/error.hpp"
#include "golfer-profiles/json_text.hpp"
#include "planner/commands/typed_quantities.hpp"

namespace landwidth {
namespace {

const CLI::Validator& a_firmness() {
    static const CLI::Validator validator = CLI::IsMember({"soft", "ordinary", "firm"}).description("");
    return validator;
}

Firmness firmness_of(const std::string& word) {
    return word == "soft" ? Firmness::soft : word == "firm" ? Firmness::firm : Firmness::ordinary;
}

// What gusts reach; nothing for nothing typed.
std::optional<double> gusts_of(const std::optional<std::string>& typed, const Wind& wind) {
    if (!typed) return std::nullopt;
    const double gusts_mps = typed_wind_speed_mps("--gusts", *typed);
    if (wind.speed_mps == 0.0)
        throw UsageError("--gusts " + *typed + ": still air has no gusts; give the mean wind with them");
    if (gusts_mps < wind.speed_mps) {
        throw UsageError(fmt::format(
            "--gusts {}: gusts reach at least the speed of the wind, {:.3g} mph; leave --gusts out for a "
            "steady wind",
            in_quotes(*typed), wind.speed_mps / metres_per_second_per_mph));
    }
    return gusts_mps;
}

}  // namespace

void DayOptions::setup(CLI::App& app) {
    app.add_option("--wind", wind_,
                   "the wind and where it blows from, degrees from true north or a point of the compass: "
                   "12mph@240, 5m/s@WSW, 20km/h@N, 10kn@90")
        ->type_name("SPEED@FROM");
    app.add_option("--gusts", gusts_, "what gusts reach, e.g. 18mph: every ball meets a wind of its own")
        ->type_name("SPEED");
    app.add_option("--temperature", temperature_,
                   "of the air, 8C or 46F (default: the standard one of the altitude)")
        ->type_name("DEGREES");
    app.add_option("--altitude", altitude_, "of the course above sea level, 5280ft or 1600m")
        ->type_name("HEIGHT");
    app.add_option("--pressure", pressure_,
                   "of the air, 1002hPa or 29.6inHg, as measured at the course and not reduced to sea level; "
                   "in place of --altitude")
        ->type_name("PRESSURE");
    app.add_option("--humidity", humidity_, "relative, 60% (default: dry air)")->type_name("PERCENT");
    app.add_option("--fairway", fairway_, "how firm the fairways are: soft, ordinary, firm")
        ->type_name("FIRMNESS")
        ->check(a_firmness())
        ->capture_default_str();
    app.add_option("--rough", rough_, "how firm the ground of the rough is: soft, ordinary, firm")
        ->type_name("FIRMNESS")
        ->check(a_firmness())
        ->capture_default_str();
}

void DayOptions::setup_wind_card(CLI::App& app) {
    app.add_option("--wind-card", wind_card_,
                   "in place of a plan a card: the club on every tee in still air and with a wind of this "
                   "speed from eight directions, e.g. 12mph")
        ->type_name("SPEED");
}

Weather DayOptions::weather() const {
    if (altitude_ && pressure_) {
        throw UsageError(
            "--altitude and --pressure both say how thick the air is: give the pressure if it was measured "
            "at the course, else the altitude");
    }
    WeatherReport report;
    if (altitude_) report.altitude_m = typed_altitude_m("--altitude", *altitude_);
    if (pressure_) report.pressure_pa = typed_pressure_pa("--pressure", *pressure_);
    if (temperature_) report.temperature_k = typed_temperature_k("--temperature", *temperature_);
    if (humidity_) report.humidity = typed_humidity("--humidity", *humidity_);
    return weather_of(report);
}

Conditions DayOptions::conditions() const {
    Conditions conditions{
        .weather = weather(), .fairway = firmness_of(fairway_), .rough = firmness_of(rough_)};
    if (wind_) {
        conditions.wind = typed_wind("--wind", *wind_);
        conditions.wind->gusts_mps = gusts_of(gusts_, *conditions.wind);
    } else if (gusts_ && !wind_card_) {
        throw UsageError("--gusts goes with --wind: write --wind 12mph@240 --gusts 18mph");
    }
    return conditions;
}

std::optional<Wind> DayOptions::wind_card() const {
    if (!wind_card_) return std::nullopt;
    if (wind_)
        throw UsageError("--wind-card takes the wind from eight directions: leave out --wind, or the card");
    Wind wind{typed_wind_speed_mps("--wind-card", *wind_card_), Bearing{}};
    if (wind.speed_mps == 0.0) throw UsageError("--wind-card: a card needs a wind, e.g. 12mph");
    wind.gusts_mps = gusts_of(gusts_, wind);
    return wind;
}

}  // namespace landwidth
