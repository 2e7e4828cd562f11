// The part of ShotRows that reads what a shot was hit in.
#include <fmt/format.h>

#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/logs/shot_rows.hpp"

namespace landwidth {
namespace {

// What `named` makes of a cell; nothing for an empty one.
template <typename Named>
auto word_in(const LogCell& cell, const Named& named, std::string_view words) -> decltype(named(cell.text)) {
    if (cell.is_empty()) return std::nullopt;
    const auto value = named(trimmed(cell.text));
    if (!value) cell.refuse(fmt::format("{} is expected", words));
    return value;
}

}  // namespace

SessionConditions ShotRows::conditions_in(const CsvRow& row) {
    SessionConditions said;
    said.weather = {.temperature_k = quantity_in(row, LogField::temperature),
                    .altitude_m = quantity_in(row, LogField::altitude),
                    .pressure_pa = quantity_in(row, LogField::pressure),
                    .humidity = quantity_in(row, LogField::humidity)};
    said.wind = wind_in(row);
    if (const LogColumn* column = columns_.column(LogField::ball))
        said.ball = word_in(cell_of(row, *column), ball_named, "course or range");
    if (const LogColumn* column = columns_.column(LogField::surface))
        said.surface = word_in(cell_of(row, *column), surface_named, "grass, mat or tee");
    if (const LogColumn* column = columns_.column(LogField::indoors))
        said.indoors = word_in(cell_of(row, *column), yes_or_no, "yes or no");
    if (const LogColumn* column = columns_.column(LogField::air)) {
        said.air = word_in(cell_of(row, *column), carry_air_named,
                           "as-hit or reference (carries are given as of 15 C, sea level, still air)");
    }
    const std::string problem = contradiction_in(said);
    if (problem.empty()) return said;
    const LogField field = said.weather.pressure_pa ? LogField::pressure : LogField::wind;
    cell_of(row, *columns_.column(field)).refuse(problem);
}

std::optional<ShotWind> ShotRows::wind_in(const CsvRow& row) {
    const std::optional<double> speed = quantity_in(row, LogField::wind);
    const LogColumn* column = columns_.column(LogField::wind_from);
    std::optional<double> from;
    if (column != nullptr && !cell_of(row, *column).is_empty()) {
        from = wind_from_named(trimmed(row.cells[column->index]));
        if (!from) {
            from = quantity_in(row, LogField::wind_from);
            winds_by_angle_ = true;
        }
    }
    if (speed && *speed == 0.0) return ShotWind{0.0, 0.0};
    if (speed && from) return ShotWind{*speed, *from};
    if (speed) {
        cell_of(row, *columns_.column(LogField::wind))
            .refuse(
                "where the wind came from is missing; a column wind_from_deg says it, clockwise from the "
                "line of the shot: against (0), right (90), behind (180), left (270)");
    }
    if (from) cell_of(row, *column).refuse("where a wind came from, and no speed; a column wind_mph says it");
    return std::nullopt;
}

std::string ShotRows::wind_remark() const {
    return fmt::format(
        "column {}: read as degrees clockwise from the line of the shot, 0 against it, 90 from the "
        "right; not as a bearing from north",
        in_quotes(columns_.column(LogField::wind_from)->heading));
}

}  // namespace landwidth
