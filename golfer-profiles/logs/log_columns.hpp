// Which column of a log holds what: the names of the format, the headings of the file, and the user's mapping
// between them.
//
// Headings are compared without regard to the case of letters; "Ball Speed (mph)", "Ball Speed, MPH" and
// "ball-speed mph" are "ball_speed_mph". Words of the trade stand for ours where the log has none of ours
// ("Offline (yd)" is side_yd); a unit may stand in a row of its own under the headings, and need not stand
// where there is only one (deg, rpm).
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "golfer-profiles/logs/csv_rows.hpp"
#include "golfer-profiles/logs/log_units.hpp"
#include "golfer-profiles/shot_log.hpp"

namespace landwidth {

enum class LogField {
    club,
    build,
    date,
    note,
    carry,
    side,
    total,
    peak,
    ball_speed,
    club_speed,
    launch,
    spin,
    temperature,
    altitude,
    pressure,
    humidity,
    wind,
    wind_from,
    ball,
    surface,
    indoors,
    air,
    result,
    session,
    strike_toe,
    strike_up,
    start_lon,
    start_lat,
    finish_lon,
    finish_lat,
    target_lon,
    target_lat
};
inline constexpr std::size_t log_fields = static_cast<std::size_t>(LogField::target_lat) + 1;

// The kind of quantity of a field with a unit; nothing for texts and for degrees on earth.
std::optional<Measure> measure_of(LogField field);
bool is_position(LogField field);

struct LogColumn {
    LogField field;
    std::optional<LogUnit> unit;  // of its numbers where the cell writes none
    std::size_t index;            // of the cell in its row
    std::string heading;          // as in the file
};

class LogColumns {
  public:
    // `rows` are all rows of the file, the header first. Throws UsageError for a mapping that names no column
    // of ours or one twice, InputError for a column that is missing, headed like another, or the second one
    // with numbers for the same quantity. `units`: what stands in a row of units, a text for each heading;
    // empty when there is no such row.
    LogColumns(const std::vector<CsvRow>& rows, const std::vector<ColumnName>& mapping,
               const std::string& file, const std::vector<std::string>& units = {});

    // nullptr when the file has none.
    const LogColumn* column(LogField field) const;
    const std::vector<LogColumn>& used() const { return used_; }
    const std::vector<std::string>& unused() const { return unused_; }
    // Those of the unused ones that would be ours if their unit were known, one sentence each.
    const std::vector<std::string>& without_unit() const { return without_unit_; }
    bool holds_positions() const { return column(LogField::start_lon) != nullptr; }

  private:
    void add(LogColumn column, const std::vector<CsvRow>& rows, const std::string& place);
    void check_complete(const std::vector<std::string>& headings, const std::string& place) const;

    std::vector<LogColumn> used_;
    std::vector<std::string> unused_;
    std::vector<std::string> without_unit_;
};

// Why a mapping cannot name this column of ours, as a sentence: there is none; empty when it can.
std::string problem_of_column(std::string_view ours);
// Whether two columns of ours hold one quantity, in whatever unit: carry_yd and carry_m.
bool means_same_quantity(std::string_view ours, std::string_view other);
// Throws UsageError for a mapping that names no column of the format or one twice.
void check_mapping(const std::vector<ColumnName>& mapping);

}  // namespace landwidth
