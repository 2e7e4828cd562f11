// A log of recorded shots, CSV with a header, one row a shot: `club,carry_yd,side_yd` and any of
// `total_yd,ball_speed_mph,club_speed_mph,launch_deg,spin_rpm,peak_yd,date,session,build,note,result,
// strike_toe_mm,strike_up_mm`; or a log from the course,
// `club,start_lon,start_lat,finish_lon,finish_lat,target_lon,target_lat` (degrees, WGS 84), where side is
// measured from the line to the target. Units by suffix (_yd, _m, _ft; _mph, _mps, _kmh; _mm, _cm, _in on the
// face), in brackets, or in a row under the header; words of the trade for columns are known too
// (logs/log_columns).
//
// What can be read without doubt is read: comma, semicolon or tab between cells, decimal commas, units in
// cells ("212 m"), sides with letters ("12R"); rows of averages and headings between the shots are left out
// and told. A ball without a place that note or result (or the empty cell itself) calls lost is a lost ball,
// and so is one of a course log without a finish. What cannot be read is an error that names row and column.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "golfer-profiles/sessions/session_conditions.hpp"
#include "golfer-profiles/shot_pattern.hpp"

namespace landwidth {

struct LoggedShot {
    std::size_t row;  // in the file, as a spreadsheet counts: the header is row 1
    std::string club;
    std::string build;  // may be empty
    // Where the ball first landed; absent when only where it came to rest is known.
    std::optional<double> carry_m = {};
    std::optional<double> total_m = {};  // to where it came to rest
    double side_m = 0.0;                 // of the landing place, or of the place of rest when carry is absent
    std::optional<double> ball_speed_mps = {};
    std::optional<double> club_speed_mps = {};
    std::optional<double> launch_rad = {};
    std::optional<double> spin_rad_per_s = {};
    std::optional<double> peak_m = {};
    std::string date = {};
    std::string note = {};
    // What tells one session from another besides the date: a place, a bay, a name. May be empty.
    std::string session = {};
    // Hit and not found, or not finished: where it came down is not known, only that it was far out. Carry,
    // total and side then say nothing.
    bool lost = false;
    // Where on the face the ball was struck, from its centre: towards the toe and up positive.
    std::optional<double> strike_toe_m = {};
    std::optional<double> strike_up_m = {};
    // What the row, or the user for the whole log, says about the conditions it was hit in.
    SessionConditions conditions = {};
};

struct ShotLog {
    std::vector<LoggedShot> shots;  // in the order of the file
    // One sentence each, without the file's name: how units were read, columns that are not used, rows that
    // look like a slip of typing or of the unit, rows that are no shots. No shot is left out.
    std::vector<std::string> warnings;
};

// header of ours = header of the file: {"carry_yd", "Carry"}.
struct ColumnName {
    std::string ours;
    std::string theirs;
};

// Throws InputError with file, row and column for what cannot be read without doubt or cannot be a golf shot
// (a carry over 450 yd), UsageError for a mapping that names no column of the format.
ShotLog read_shot_log(const std::filesystem::path& path, const std::vector<ColumnName>& mapping);

}  // namespace landwidth
