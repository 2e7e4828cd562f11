// Rows of a log to shots: each cell by its column's meaning, within the range of what a golf ball does.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "golfer-profiles/logs/csv_rows.hpp"
#include "golfer-profiles/logs/decimal_marks.hpp"
#include "golfer-profiles/logs/log_cell.hpp"
#include "golfer-profiles/logs/log_columns.hpp"
#include "golfer-profiles/shot_log.hpp"

namespace landwidth {

class ShotRows {
  public:
    // `rows` are all rows of the file, the header first. All arguments outlive this.
    ShotRows(const std::vector<CsvRow>& rows, const LogColumns& columns, const std::string& file);

    // In the order of the rows. Throws InputError with file, row and column.
    std::vector<LoggedShot> read();
    // After read(): how mixed units and mixed forms of sides were taken, and which shots for lost. One
    // sentence each.
    std::vector<std::string> remarks() const;

  private:
    LoggedShot shot_of(const CsvRow& row);
    LogCell cell_of(const CsvRow& row, const LogColumn& column) const;
    std::string text_in(const CsvRow& row, LogField field) const;
    std::optional<double> quantity_in(const CsvRow& row, LogField field);
    double side_in(const CsvRow& row);
    void read_positions(const CsvRow& row, LoggedShot& shot) const;
    SessionConditions conditions_in(const CsvRow& row);
    std::optional<ShotWind> wind_in(const CsvRow& row);
    std::string wind_remark() const;
    void read_distances(const CsvRow& row, LoggedShot& shot);
    bool has_nothing(const CsvRow& row, LogField field) const;
    bool is_said_lost(const CsvRow& row) const;
    void count(const LogColumn& column, const LogNumber& number);

    const std::vector<CsvRow>& rows_;
    const LogColumns& columns_;
    const std::string& file_;
    DecimalMarks marks_;
    // How many numbers of a field were in which unit, by its suffix.
    std::map<LogField, std::map<std::string, std::size_t>> units_;
    bool winds_by_angle_ = false;
    std::size_t lettered_sides_ = 0, signed_sides_ = 0, plain_sides_ = 0;  // other than 0
    std::size_t other_results_ = 0;                                        // that say nothing of a lost ball
    std::vector<std::size_t> lost_rows_, found_rows_;  // found: said to be lost, with a place all the same
};

}  // namespace landwidth
