#include "planner/commands/profile_learn.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <ostream>
#include <string_view>
#include <utility>

#include "geometry/error.hpp"
#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/logs/column_file.hpp"
#include "golfer-profiles/logs/log_columns.hpp"
#include "golfer-profiles/profile_file.hpp"
#include "golfer-profiles/shot_log.hpp"
#include "planner/engine/assumptions.hpp"
#include "planner/reports/output_file.hpp"

namespace landwidth {

namespace {

// The two sides of "ours=theirs". `at` is where the equals sign stands.
std::pair<std::string, std::string> split(std::string_view option, const std::string& text, std::size_t at) {
    const std::string_view whole = text;
    const std::string_view left = trimmed(whole.substr(0, at));
    const std::string_view right = at == std::string::npos ? "" : trimmed(whole.substr(at + 1));
    if (left.empty() || right.empty())
        throw UsageError(
            fmt::format("{} {}: two words with = between them are expected", option, in_quotes(text)));
    return {std::string(left), std::string(right)};
}

KindOfClub kind_in(const std::string& text) {
    const auto [club, kind_name] = split("--kind", text, text.rfind('='));
    const auto kind = club_kind_named(kind_name);
    if (!kind)
        throw UsageError(
            fmt::format("--kind {}: the kinds are driver, mini-driver, fairway-wood, hybrid, "
                        "driving-iron, iron, wedge and putter",
                        in_quotes(text)));
    return {club, *kind};
}

// How a report is written, by the end of its name.
std::string (*report_form(const std::filesystem::path& file))(const LearnView&) {
    const std::string end = file.extension().string();
    if (end == ".html" || end == ".htm") return learn_html;
    if (end == ".json") return learn_json;
    if (end == ".txt") return learn_text;
    throw UsageError(
        fmt::format("--report {}: the form goes by the end of the name: .html, .json or .txt is expected",
                    file.string()));
}

}  // namespace

void ProfileLearnCommand::setup(CLI::App& app) {
    app.add_option("SHOTS", logs_, "shot logs: CSV files, one row a shot, with a header")->required();
    app.add_option("--column", columns_,
                   "which column of the logs holds what, e.g. carry_yd=\"Carry\"; repeatable")
        ->type_name("OURS=THEIRS")
        ->allow_extra_args(false);
    session_.setup(app);
    app.add_option("--columns", column_file_,
                   "a file of such lines, ours = theirs; what --column says goes before it")
        ->type_name("FILE");
    auto* onto =
        app.add_option("--onto", onto_, "a profile whose clubs the shots are added to")->type_name("PROFILE");
    golfer_.setup(app);
    onto->excludes(golfer_.handicap_option())->excludes(golfer_.left_handed_option());
    app.add_option("--kind", kinds_,
                   "what a club is whose name does not tell, e.g. \"old faithful=hybrid\"; "
                   "repeatable")
        ->type_name("NAME=KIND")
        ->allow_extra_args(false);
    app.add_option("--carried", carried_,
                   "which build is in the bag where every shot of a club is of a build, e.g. \"driver, 45.5 "
                   "in\"; repeatable; otherwise the one with the most shots")
        ->type_name("CLUB, BUILD")
        ->allow_extra_args(false);
    app.add_option("--assume", assumed_,
                   "override a modelling assumption, e.g. build_spread_differs=0.05; repeatable")
        ->type_name("NAME=VALUE")
        ->allow_extra_args(false);
    app.add_option("--units", units_, "lengths in the summary: yards or metres")
        ->type_name("UNIT")
        ->check(CLI::IsMember({"yards", "metres"}).description(""))
        ->capture_default_str();
    app.add_option("--report", reports_,
                   "also write what the shots say and what is made of them: a page for a name that ends in "
                   ".html, else .json or .txt; repeatable")
        ->type_name("FILE")
        ->allow_extra_args(false);
    output_.setup_file(app);
    app.footer(
        "A log has the columns club, carry_yd (or total_yd) and side_yd, right positive or as 12R, and may "
        "have\n"
        "total_yd, build, ball_speed_mph, club_speed_mph, launch_deg, spin_rpm, peak_yd, date, session, "
        "note, result,\n"
        "strike_toe_mm and strike_up_mm; with _m, _ft, _mps and _kmh for other units. A ball without a place "
        "that\n"
        "note or result call lost counts as lost. What a shot was hit in: temperature_c, altitude_m, "
        "pressure_hpa,\n"
        "humidity_pct, wind_mph with wind_from_deg (clockwise from the line of the shot: 0 or against, 90 or "
        "right,\n"
        "180 or behind), ball (course, range), surface (grass, mat, tee), indoors (yes, no), air (as-hit, "
        "reference).\n"
        "A log from the course has club, start_lon, start_lat, finish_lon,\n"
        "finish_lat, target_lon and target_lat: the shots that were full swings from good lies.\n"
        "Example: landwidth profile learn session.csv --handicap 10 --column carry_yd=\"Carry\" -o me.json\n"
        "Example: landwidth profile learn session.csv --handicap 10 -o me.json --report me.html\n"
        "Example: landwidth profile learn round.csv --onto me.json -o me-too.json");
}

LearnRequest ProfileLearnCommand::request(const Assumptions& assumptions, std::ostream& err) const {
    LearnRequest request{.typical = {},
                         .handicap_known = golfer_.has_handicap() || !onto_.empty(),
                         .onto = {},
                         .kinds = {},
                         .weight = assumptions.engine.prior};
    request.sessions = {.range_ball_loss = assumptions.engine.range_ball_loss,
                        .bay_widening = assumptions.engine.bay_widening,
                        .half_life_days = assumptions.engine.session_half_life_days,
                        .curve_share = assumptions.engine.curve_share};
    for (const std::string& text : kinds_)
        request.kinds.push_back(kind_in(text));
    request.carried = carried_;
    if (onto_.empty()) {
        request.typical = golfer_.request("learnt golfer");
        return request;
    }
    ProfileReading reading = read_profile(onto_);
    for (const std::string& warning : reading.warnings)
        err << fmt::format("landwidth: warning: {}: {}\n", onto_, warning);
    request.onto = std::move(reading.golfer);
    if (!golfer_.name().empty()) request.onto->name = golfer_.name();
    request.typical.reference = golfer_.women() ? Reference::women : Reference::men;
    return request;
}

std::vector<ColumnName> ProfileLearnCommand::columns() const {
    std::vector<ColumnName> typed;
    for (const std::string& text : columns_) {
        auto [ours, theirs] = split("--column", text, text.find('='));
        typed.push_back({std::move(ours), std::move(theirs)});
    }
    check_mapping(typed);
    return column_file_.empty() ? typed : combined(std::move(typed), read_column_file(column_file_));
}

void ProfileLearnCommand::check_reports() const {
    std::vector<std::filesystem::path> files = reports_;
    if (output_.to_file()) files.push_back(output_.file());
    for (const std::filesystem::path& file : reports_) {
        report_form(file);
        output_.refuse_input("--report", file);
        if (std::ranges::count(files, file.lexically_normal(), &std::filesystem::path::lexically_normal) > 1)
            throw UsageError(fmt::format("--report {}: another result goes to that file", file.string()));
        check_writable(file, output_.force());
    }
}

void ProfileLearnCommand::write_reports(const LearnView& view, std::ostream& err) const {
    for (const std::filesystem::path& file : reports_) {
        write_file(file, report_form(file)(view), output_.force());
        err << fmt::format("wrote {}\n", file.string());
    }
}

int ProfileLearnCommand::run(std::ostream& out, std::ostream& err) {
    output_.check();
    check_reports();
    const std::vector<ColumnName> mapping = columns();
    Assumptions assumptions = default_assumptions();
    for (const std::string& text : assumed_)
        override_assumption(assumptions, text);
    const LearnRequest learn = request(assumptions, err);
    std::vector<std::string> warnings;
    const auto warn = [&](const std::string& warning) {
        err << "landwidth: warning: " << warning << '\n';
        warnings.push_back(warning);
    };
    std::vector<NamedLog> logs;
    for (const std::string& file : logs_) {
        logs.push_back({file, read_shot_log(file, mapping)});
        for (const std::string& warning : logs.back().log.warnings)
            warn(fmt::format("{}: {}", file, warning));
    }
    for (const std::string& warning : session_.complete(logs))
        warn(warning);
    const LearntGolfer learnt = learnt_golfer(logs, learn);
    for (const std::string& warning : learnt.warnings)
        warn(warning);
    output_.write(profile_text(learnt.golfer), out);
    const DisplayUnits units = units_ == "metres" ? DisplayUnits::metres : DisplayUnits::yards;
    const LearnView summary{learnt, logs, units, assumptions, {}, false};
    (output_.to_file() ? out : err) << learn_text(summary);
    if (output_.to_file())
        err << fmt::format("wrote {}: {} clubs, {} of them learnt\n", output_.file().string(),
                           learnt.golfer.clubs.size(), learnt.clubs.size());
    write_reports({learnt, logs, units, assumptions, std::move(warnings)}, err);
    return 0;
}

}  // namespace landwidth
