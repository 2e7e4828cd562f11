#include "golfer-profiles/sessions/said_conditions.hpp"

#include <fmt/format.h>

#include <array>

namespace landwidth {
namespace {

// How many rows say a condition that is said for all as well.
struct SaidTwice {
    std::string_view what;
    std::size_t rows = 0;
};

class Completion {
  public:
    explicit Completion(const SessionConditions& said) : said_(said) {}

    void complete(SessionConditions& row) {
        const auto take = [](auto& value, const auto& all, SaidTwice& twice) {
            if (value && all) ++twice.rows;
            if (!value) value = all;
        };
        const bool row_is_indoors = row.indoors.value_or(false);
        const bool row_has_wind = row.wind && row.wind->speed_mps > 0.0;
        take(row.weather.temperature_k, said_.weather.temperature_k, temperature_);
        take(row.weather.humidity, said_.weather.humidity, humidity_);
        const bool thickness = row.weather.altitude_m || row.weather.pressure_pa;
        if (thickness && (said_.weather.altitude_m || said_.weather.pressure_pa)) ++thickness_.rows;
        if (!thickness) {
            row.weather.altitude_m = said_.weather.altitude_m;
            row.weather.pressure_pa = said_.weather.pressure_pa;
        }
        if (row_is_indoors && said_.wind)
            ++wind_.rows;
        else
            take(row.wind, said_.wind, wind_);
        if (row_has_wind && said_.indoors.value_or(false))
            ++indoors_.rows;
        else
            take(row.indoors, said_.indoors, indoors_);
        take(row.ball, said_.ball, ball_);
        take(row.surface, said_.surface, surface_);
        take(row.air, said_.air, air_);
        count(row);
    }

    std::vector<std::string> words() const {
        std::vector<std::string> said;
        for (const SaidTwice* twice :
             {&temperature_, &thickness_, &humidity_, &wind_, &ball_, &surface_, &indoors_, &air_}) {
            if (twice->rows > 0)
                said.push_back(fmt::format("--session and {} {} {} the {}; there the row holds", twice->rows,
                                           twice->rows == 1 ? "row" : "rows",
                                           twice->rows == 1 ? "says" : "say", twice->what));
        }
        if (air_unused_ > 0)
            said.push_back(
                fmt::format("air and wind of {} shots are not used: their carries are given as of the "
                            "reference day already, and correcting them would count twice",
                            air_unused_));
        if (computed_for_air_ > 0)
            said.push_back(
                fmt::format("{} carries from indoors are computed ones; the air that is said is taken for "
                            "the air they were computed for, not that of the bay",
                            computed_for_air_));
        if (computed_ > 0)
            said.push_back(
                fmt::format("{} carries from indoors are computed ones and are taken as of the reference "
                            "day (15 C, sea level); if they were computed for other air, say which: "
                            "--session \"temperature=25C, altitude=0m\"; else air=reference",
                            computed_));
        return said;
    }

  private:
    void count(const SessionConditions& row) {
        const bool reference = row.air == CarryAir::reference;
        if (reference && says_air(row)) ++air_unused_;
        if (!row.indoors.value_or(false) || reference) return;
        ++(says_air(row) ? computed_for_air_ : computed_);
    }

    const SessionConditions& said_;
    SaidTwice temperature_{"temperature"}, thickness_{"altitude or pressure"}, humidity_{"humidity"},
        wind_{"wind"}, ball_{"ball"}, surface_{"surface"}, indoors_{"roof"}, air_{"air of the carries"};
    std::size_t air_unused_ = 0, computed_for_air_ = 0, computed_ = 0;
};

}  // namespace

std::vector<std::string> complete_conditions(ShotLog& log, const SessionConditions& said) {
    Completion completion(said);
    for (LoggedShot& shot : log.shots)
        completion.complete(shot.conditions);
    return completion.words();
}

}  // namespace landwidth
