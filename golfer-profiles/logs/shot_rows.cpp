#include "golfer-profiles/logs/shot_rows.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>

#include "geometry/error.hpp"
#include "geometry/units.hpp"
#include "golfer-profiles/air.hpp"
#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/logs/build_in_name.hpp"
#include "golfer-profiles/logs/course_positions.hpp"
#include "golfer-profiles/logs/lost_balls.hpp"
#include "golfer-profiles/logs/other_rows.hpp"
#include "golfer-profiles/profile.hpp"

namespace landwidth {
namespace {

// What a golf ball does, with room for the longest hitters; beyond it is a slip of the keyboard or of the
// unit. In the unit people think in.
struct FieldRange {
    double low, high;
    std::string_view unit;
};

FieldRange range_of(LogField field) {
    switch (field) {
        case LogField::carry:
            return {0, 450, "yd"};
        case LogField::total:
            return {0, 550, "yd"};
        case LogField::side:
            return {-300, 300, "yd"};
        case LogField::peak:
            return {0, 100, "yd"};
        case LogField::ball_speed:
            return {0, 260, "mph"};
        case LogField::club_speed:
            return {10, 170, "mph"};
        case LogField::launch:
            return {-30, 80, "deg"};
        case LogField::temperature:
            return {coldest_c, hottest_c, "°C"};
        case LogField::altitude:
            return {lowest_place_m, highest_place_m, "m"};
        case LogField::pressure:
            return {thinnest_air_pa / pascals_per_hpa, densest_air_pa / pascals_per_hpa, "hPa"};
        case LogField::humidity:
            return {0, 100, "%"};
        case LogField::wind:
            return {0, strongest_wind_mph, "mph"};
        case LogField::wind_from:
            return {-180, 360, "deg"};
        case LogField::strike_toe:
        case LogField::strike_up:
            return {-60, 60, "mm"};
        default:
            return {0, 15000, "rpm"};
    }
}

void check_range(const LogCell& cell, LogField field, double si) {
    const FieldRange range = range_of(field);
    const double value = unit_written(range.unit)->of_si(si);
    const double rounding = 1e-9 * (range.high - range.low);
    if (value >= range.low - rounding && value <= range.high + rounding) return;
    if (field == LogField::carry && value < 0) cell.refuse("a carry cannot be negative");
    if (field == LogField::total && value < 0) cell.refuse("a total cannot be negative");
    cell.refuse(fmt::format("that is {:.0f} {}; {:g} to {:g} {} is possible. Is a digit or the unit wrong?",
                            value, range.unit, range.low, range.high, range.unit));
}

std::string counted_units(const std::map<std::string, std::size_t>& units) {
    std::vector<std::string> words;
    for (const auto& [unit, shots] : units)
        words.push_back(fmt::format("{} in {}", shots, unit));
    return fmt::format("{}", fmt::join(words, ", "));
}

void check_width(const CsvRow& row, std::size_t width, const std::string& file) {
    if (row.cells.size() == width) return;
    const bool only_blanks_more =
        row.cells.size() > width &&
        std::all_of(row.cells.begin() + static_cast<std::ptrdiff_t>(width), row.cells.end(),
                    [](const std::string& cell) { return trimmed(cell).empty(); });
    if (only_blanks_more) return;
    throw InputError(fmt::format("{}: row {}", file, row.row),
                     fmt::format("{} cells under {} headings; {}", row.cells.size(), width,
                                 row.cells.size() > width
                                     ? "a cell with a separator in it (a decimal comma?) stands in quotes"
                                     : "is the row cut off?"));
}

}  // namespace

ShotRows::ShotRows(const std::vector<CsvRow>& rows, const LogColumns& columns, const std::string& file)
    : rows_(rows), columns_(columns), file_(file) {
    for (std::size_t i = 1; i < rows_.size(); ++i) {
        check_width(rows_[i], rows_.front().cells.size(), file_);
        for (const LogColumn& column : columns_.used()) {
            if (measure_of(column.field) || is_position(column.field))
                marks_.note(digits_in(rows_[i].cells[column.index]));
        }
    }
}

std::vector<LoggedShot> ShotRows::read() {
    std::vector<LoggedShot> shots;
    shots.reserve(rows_.size());
    for (std::size_t i = 1; i < rows_.size(); ++i)
        shots.push_back(shot_of(rows_[i]));
    return shots;
}

LogCell ShotRows::cell_of(const CsvRow& row, const LogColumn& column) const {
    return {row.cells[column.index], row.row, column.heading, file_};
}

std::string ShotRows::text_in(const CsvRow& row, LogField field) const {
    const LogColumn* column = columns_.column(field);
    return column == nullptr ? std::string() : std::string(trimmed(row.cells[column->index]));
}

void ShotRows::count(const LogColumn& column, const LogNumber& number) {
    ++units_[column.field][std::string(number.written.value_or(*column.unit).suffix)];
}

std::optional<double> ShotRows::quantity_in(const CsvRow& row, LogField field) {
    const LogColumn* column = columns_.column(field);
    if (column == nullptr) return std::nullopt;
    const LogCell cell = cell_of(row, *column);
    if (cell.is_empty()) return std::nullopt;
    const LogNumber number = number_of(cell, *measure_of(field), marks_);
    const double si = number.si(*column->unit);
    check_range(cell, field, si);
    count(*column, number);
    return si;
}

double ShotRows::side_in(const CsvRow& row) {
    const LogColumn& column = *columns_.column(LogField::side);
    const LogCell cell = cell_of(row, column);
    if (cell.is_empty()) cell.refuse("a number is expected; without a side the shot has no place");
    const LogSide side = side_of(cell, marks_);
    const double si = side.number.si(*column.unit);
    check_range(cell, LogField::side, si);
    count(column, side.number);
    if (si != 0.0) {
        ++(side.form == SideForm::letter ? lettered_sides_
           : side.form == SideForm::sign ? signed_sides_
                                         : plain_sides_);
    }
    return si;
}

bool ShotRows::has_nothing(const CsvRow& row, LogField field) const {
    const LogColumn* column = columns_.column(field);
    if (column == nullptr) return true;
    const LogCell cell = cell_of(row, *column);
    return cell.is_empty() || says_only_lost(cell.text);
}

bool ShotRows::is_said_lost(const CsvRow& row) const {
    const bool in_a_cell = std::any_of(columns_.used().begin(), columns_.used().end(), [&](const auto& used) {
        return used.field >= LogField::carry && says_only_lost(row.cells[used.index]);
    });
    return in_a_cell || says_lost(text_in(row, LogField::result)) || says_lost(text_in(row, LogField::note));
}

void ShotRows::read_positions(const CsvRow& row, LoggedShot& shot) const {
    const auto degrees = [&](LogField field) {
        return bare_number_of(cell_of(row, *columns_.column(field)), marks_);
    };
    shot.lost = has_nothing(row, LogField::finish_lon) && has_nothing(row, LogField::finish_lat);
    if (shot.lost) return;
    const ShotPositions positions{{degrees(LogField::start_lon), degrees(LogField::start_lat)},
                                  {degrees(LogField::finish_lon), degrees(LogField::finish_lat)},
                                  {degrees(LogField::target_lon), degrees(LogField::target_lat)}};
    const ShotOffset rest = offset_at_rest(positions, fmt::format("{}: row {}", file_, row.row));
    shot.total_m = rest.carry_m;
    shot.side_m = rest.side_m;
}

void ShotRows::read_distances(const CsvRow& row, LoggedShot& shot) {
    shot.lost = has_nothing(row, LogField::carry) && has_nothing(row, LogField::total) &&
                has_nothing(row, LogField::side) && is_said_lost(row);
    if (shot.lost) return;
    shot.carry_m = quantity_in(row, LogField::carry);
    shot.total_m = quantity_in(row, LogField::total);
    if (!shot.carry_m && !shot.total_m) {
        const LogColumn* carry = columns_.column(LogField::carry);
        cell_of(row, carry != nullptr ? *carry : *columns_.column(LogField::total))
            .refuse(
                "a number is expected; a shot needs a carry or a total, or the word lost in a column note or "
                "result");
    }
    constexpr double longest_known_by_total_yd = 450;  // as the longest carry
    if (!shot.carry_m && *shot.total_m > Yards{longest_known_by_total_yd}.metres()) {
        cell_of(row, *columns_.column(LogField::total))
            .refuse(fmt::format("over {:g} yd, without a carry beside it; is a digit or the unit wrong?",
                                longest_known_by_total_yd));
    }
    shot.side_m = side_in(row);
}

LoggedShot ShotRows::shot_of(const CsvRow& row) {
    LoggedShot shot;
    shot.row = row.row;
    shot.club = text_in(row, LogField::club);
    const auto refuse_name = [&](LogField field, const std::string& name) {
        if (const std::string problem = name_problem(name); !problem.empty())
            cell_of(row, *columns_.column(field)).refuse(fmt::format("the name {}", problem));
    };
    refuse_name(LogField::club, shot.club);
    shot.build = text_in(row, LogField::build);
    if (!shot.build.empty()) {
        refuse_name(LogField::build, shot.build);
    } else if (auto named = build_in_name(shot.club)) {
        shot.club = std::move(named->club);
        shot.build = std::move(named->build);
    }
    shot.date = text_in(row, LogField::date);
    shot.note = text_in(row, LogField::note);
    shot.session = text_in(row, LogField::session);
    const std::string result = text_in(row, LogField::result);
    other_results_ += result.empty() || says_lost(result) ? 0 : 1;
    if (columns_.holds_positions())
        read_positions(row, shot);
    else
        read_distances(row, shot);
    if (shot.lost)
        lost_rows_.push_back(row.row);
    else if (is_said_lost(row))
        found_rows_.push_back(row.row);
    shot.peak_m = quantity_in(row, LogField::peak);
    shot.ball_speed_mps = quantity_in(row, LogField::ball_speed);
    shot.club_speed_mps = quantity_in(row, LogField::club_speed);
    shot.launch_rad = quantity_in(row, LogField::launch);
    shot.spin_rad_per_s = quantity_in(row, LogField::spin);
    shot.conditions = conditions_in(row);
    shot.strike_toe_m = quantity_in(row, LogField::strike_toe);
    shot.strike_up_m = quantity_in(row, LogField::strike_up);
    return shot;
}

std::vector<std::string> ShotRows::remarks() const {
    std::vector<std::string> said;
    for (const LogColumn& column : columns_.used()) {
        const auto units = units_.find(column.field);
        if (units == units_.end()) continue;
        const bool as_headed =
            units->second.size() == 1 && units->second.begin()->first == column.unit->suffix;
        if (as_headed) continue;
        said.push_back(fmt::format("column {}: read as the cells say, {}", in_quotes(column.heading),
                                   counted_units(units->second)));
    }
    if (winds_by_angle_) said.push_back(wind_remark());
    if (lettered_sides_ > 0 && signed_sides_ + plain_sides_ > 0) {
        said.push_back(
            fmt::format("column {}: {} sides with a letter, {} with a sign, {} with neither; those with "
                        "neither are read as right of the line",
                        in_quotes(columns_.column(LogField::side)->heading), lettered_sides_, signed_sides_,
                        plain_sides_));
    }
    if (other_results_ > 0) {
        said.push_back(fmt::format("column {}: read for lost balls and not used otherwise",
                                   in_quotes(columns_.column(LogField::result)->heading)));
    }
    if (!lost_rows_.empty()) {
        said.push_back(
            fmt::format("{}: lost or not finished; hit, but not known where to", row_words(lost_rows_)));
    }
    if (!found_rows_.empty()) {
        said.push_back(fmt::format("{}: said to be lost or out of bounds, but with a place; that is used",
                                   row_words(found_rows_)));
    }
    return said;
}

}  // namespace landwidth
