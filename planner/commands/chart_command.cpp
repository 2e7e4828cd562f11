#include "planner/commands/chart_command.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <ostream>

#include "geometry/error.hpp"
#include "golfer-profiles/profile_file.hpp"
#include "planner/reports/chart_reports.hpp"
#include "planner/reports/display_length.hpp"

namespace landwidth {

namespace {

// An axis of the chart, in the units of the command line: whole numbers.
struct Axis {
    const char* option;
    int step;
    int lowest;
    int highest;
};
constexpr Axis widths{"--widths", 4, 8, 100};
constexpr Axis lengths{"--lengths", 20, 200, 700};

// "16-60": every step from the first to the last that fits.
std::vector<double> stations_m(const Axis& axis, const std::string& text, DisplayUnits units) {
    const auto wrong = [&](std::string_view why) {
        return UsageError(fmt::format("{} {}: {}; write two whole numbers of {} from {} to {}, such as {}-{}",
                                      axis.option, text, why, display_unit(units), axis.lowest, axis.highest,
                                      axis.lowest, axis.highest));
    };
    int from = 0;
    int to = 0;
    const char* const end = text.data() + text.size();
    const auto first = std::from_chars(text.data(), end, from);
    if (first.ec != std::errc{} || first.ptr == end || *first.ptr != '-') throw wrong("no range");
    const auto last = std::from_chars(first.ptr + 1, end, to);
    if (last.ec != std::errc{} || last.ptr != end) throw wrong("no range");
    if (from < axis.lowest || to > axis.highest) throw wrong("out of range");
    if (to - from < axis.step) throw wrong(fmt::format("spans less than a step of {}", axis.step));
    std::vector<double> stations;
    for (int value = from; value <= to; value += axis.step)
        stations.push_back(metres_of_display(value, units));
    return stations;
}

}  // namespace

void ChartCommand::setup(CLI::App& app) {
    const std::vector<std::string> troubles = chart_trouble_names();
    trouble_ = troubles.front();
    app.add_option("PROFILE", profile_, "the golfer: a profile file (landwidth profile new makes one)")
        ->required();
    app.add_option(
           "--trouble", trouble_,
           fmt::format("what lies beyond the rough beside the fairway: {}", fmt::join(troubles, ", ")))
        ->type_name("TROUBLE")
        ->check(CLI::IsMember(troubles).description(""))
        ->capture_default_str();
    app.add_option("--widths", widths_,
                   fmt::format("landing widths, in steps of {} (default: 16-60 yd, 16-56 m)", widths.step))
        ->type_name("FROM-TO");
    app.add_option(
           "--lengths", lengths_,
           fmt::format("lengths of the hole, in steps of {} (default: 280-560 yd, 260-520 m)", lengths.step))
        ->type_name("FROM-TO");
    app.add_option("--assume", assumed_,
                   "override a modelling assumption, e.g. chart_trouble_from_edge=10; repeatable")
        ->type_name("NAME=VALUE")
        ->allow_extra_args(false);
    output_.setup(app, {"text", "json", "html"});
    app.footer("Example: landwidth chart me.json --trouble trees --format html -o chart.html");
}

ChartRequest ChartCommand::request() const {
    const bool metres = output_.units() == DisplayUnits::metres;
    ChartRequest request;
    request.trouble = *chart_trouble_named(trouble_);
    request.widths_m = stations_m(widths,
                                  !widths_.empty() ? widths_
                                  : metres         ? "16-56"
                                                   : "16-60",
                                  output_.units());
    request.lengths_m = stations_m(lengths,
                                   !lengths_.empty() ? lengths_
                                   : metres          ? "260-520"
                                                     : "280-560",
                                   output_.units());
    for (const std::string& text : assumed_)
        override_assumption(request.assumptions, text);
    return request;
}

int ChartCommand::run(std::ostream& out, std::ostream& err) {
    output_.check();
    const ChartRequest request = this->request();
    const ProfileReading profile = read_profile(profile_);
    const Golfer& golfer = profile.golfer;
    DriverChart chart = driver_chart(golfer, request);
    chart.warnings.insert(chart.warnings.begin(), profile.warnings.begin(), profile.warnings.end());
    for (const std::string& warning : chart.warnings)
        err << "landwidth: warning: " << warning << '\n';

    const ChartView view{golfer, chart, output_.units()};
    if (output_.format() == "json") {
        output_.write(chart_json(view), out);
    } else if (output_.format() == "html") {
        output_.write(chart_html(view), out);
    } else {
        // On a terminal the warnings have just been shown.
        if (!output_.to_file()) chart.warnings.clear();
        output_.write(chart_text(view), out);
    }
    return 0;
}

}  // namespace landwidth
