#include "planner/commands/session_options.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>
#include <filesystem>
#include <iterator>
#include <optional>
#include <string_view>

#include "geometry/error.hpp"
#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/nearest_word.hpp"
#include "golfer-profiles/sessions/said_conditions.hpp"
#include "planner/commands/typed_quantities.hpp"

namespace landwidth {
namespace {

constexpr std::array<std::string_view, 10> condition_names{
    "temperature", "altitude", "pressure", "humidity", "wind", "line", "ball", "surface", "indoors", "air"};

struct Said {
    std::string_view name;
    std::string value;
};

// "temperature=8C, ball=range" as names and values.
std::vector<Said> said_in(const std::string& text) {
    std::vector<Said> all;
    std::string_view rest = text;
    while (!rest.empty()) {
        const std::size_t comma = std::min(rest.find(','), rest.size());
        const std::string_view part = trimmed(rest.substr(0, comma));
        rest.remove_prefix(std::min(comma + 1, rest.size()));
        const std::size_t equals = part.find('=');
        const std::string_view name = trimmed(part.substr(0, equals));
        const std::string_view value =
            equals == std::string_view::npos ? std::string_view() : trimmed(part.substr(equals + 1));
        if (name.empty() || value.empty()) {
            throw UsageError(
                fmt::format("--session {}: conditions are written name=value with a comma between "
                            "them: --session \"temperature=8C, wind=12mph@against\"",
                            in_quotes(text)));
        }
        const auto known = std::find_if(condition_names.begin(), condition_names.end(),
                                        [&](std::string_view n) { return same_name(n, name); });
        if (known == condition_names.end()) {
            const auto nearest = nearest_word(name, condition_names);
            throw UsageError(fmt::format(
                "--session {}: there is no condition {}; {}they are {}", in_quotes(text), in_quotes(name),
                nearest ? fmt::format("did you mean {}? ", *nearest) : "", fmt::join(condition_names, ", ")));
        }
        if (std::any_of(all.begin(), all.end(), [&](const Said& s) { return s.name == *known; }))
            throw UsageError(fmt::format("--session {}: {} is said twice", in_quotes(text), *known));
        all.push_back({*known, std::string(value)});
    }
    return all;
}

template <typename Named>
auto typed_word(std::string_view option, const std::string& typed, const Named& named,
                std::string_view words) {
    const auto value = named(typed);
    if (!value) throw UsageError(fmt::format("{} {}: {} is expected", option, in_quotes(typed), words));
    return value;
}

// "12mph@against", or "12mph@240" where the bearing of the line of the shots is known.
ShotWind typed_shot_wind(const std::string& typed, const std::optional<std::string>& line) {
    constexpr std::string_view option = "--session wind";
    const std::size_t at = typed.find('@');
    if (at != std::string::npos) {
        if (const auto from = wind_from_named(trimmed(std::string_view(typed).substr(at + 1))))
            return {typed_wind_speed_mps(option, trimmed(std::string_view(typed).substr(0, at))), *from};
    } else if (const double speed = typed_wind_speed_mps(option, typed); speed == 0.0) {
        return {0.0, 0.0};
    } else {
        throw UsageError(
            fmt::format("{} {}: where it came from is missing; write 12mph@against (or behind, left, "
                        "right, against-left, ...)",
                        option, in_quotes(typed)));
    }
    const Wind wind = typed_wind(option, typed);
    if (!line) {
        throw UsageError(fmt::format(
            "{} {}: a bearing from north needs the one the shots were hit on: add line=250 (or line=WSW), or "
            "say against, behind, left, right, against-left, ...",
            option, in_quotes(typed)));
    }
    // The line is typed as the bearing of a wind is.
    const Wind as_wind = typed_wind("--session line", fmt::format("1mph@{}", *line));
    return {wind.speed_mps, wind.from.radians - as_wind.from.radians};
}

// Which of the logs a --session is for ("bay.csv: indoors=yes"), and the rest of it; nothing: all of them.
struct ForLog {
    std::optional<std::string> file;
    std::string conditions;
};

ForLog for_log(const std::string& text) {
    const std::size_t equals = text.find('=');
    const std::size_t colon = equals == std::string::npos ? text.rfind(':') : text.rfind(':', equals);
    if (colon == std::string::npos) return {std::nullopt, text};
    return {std::string(trimmed(std::string_view(text).substr(0, colon))), text.substr(colon + 1)};
}

bool is_of(const NamedLog& log, const std::string& file) {
    return log.file == file || std::filesystem::path(log.file).filename() == file;
}

}  // namespace

SessionConditions typed_session(const std::string& text) {
    SessionConditions said;
    std::optional<std::string> wind, line;
    for (const auto& [name, value] : said_in(text)) {
        const std::string option = fmt::format("--session {}", name);
        if (name == "temperature") said.weather.temperature_k = typed_temperature_k(option, value);
        if (name == "altitude") said.weather.altitude_m = typed_altitude_m(option, value);
        if (name == "pressure") said.weather.pressure_pa = typed_pressure_pa(option, value);
        if (name == "humidity") said.weather.humidity = typed_humidity(option, value);
        if (name == "wind") wind = value;
        if (name == "line") line = value;
        if (name == "ball") said.ball = typed_word(option, value, ball_named, "course or range");
        if (name == "surface") said.surface = typed_word(option, value, surface_named, "grass, mat or tee");
        if (name == "indoors") said.indoors = typed_word(option, value, yes_or_no, "yes or no");
        if (name == "air") {
            said.air = typed_word(option, value, carry_air_named,
                                  "as-hit or reference (carries are given as of 15 C, sea level, still air)");
        }
    }
    if (wind) said.wind = typed_shot_wind(*wind, line);
    if (line && !wind) throw UsageError("--session line: goes with a wind: wind=12mph@240, line=250");
    std::string problem = contradiction_in(said);
    if (problem.empty() && said.air == CarryAir::reference && says_air(said))
        problem =
            "air=reference says that carries are given as of the reference day; with air or wind beside it "
            "they would be corrected twice";
    if (!problem.empty()) throw UsageError(fmt::format("--session {}: {}", in_quotes(text), problem));
    return said;
}

void SessionOptions::setup(CLI::App& app) {
    app.add_option(
           "--session", sessions_,
           "what the shots were hit in, as far as it differs from still air of 15 C at sea level and a "
           "course ball: \"temperature=8C, altitude=1600m, wind=12mph@against, ball=range, surface=mat, "
           "indoors=yes, air=reference\"; of one log: \"bay.csv: ball=range\"; repeatable")
        ->type_name("CONDITIONS")
        ->allow_extra_args(false);
}

std::vector<std::string> SessionOptions::complete(std::vector<NamedLog>& logs) const {
    std::vector<std::optional<SessionConditions>> said(logs.size());
    for (const std::string& text : sessions_) {
        const auto [file, conditions_text] = for_log(text);
        const SessionConditions conditions = typed_session(conditions_text);
        bool found = false;
        for (std::size_t i = 0; i < logs.size(); ++i) {
            if (file && !is_of(logs[i], *file)) continue;
            if (said[i]) {
                throw UsageError(
                    fmt::format("--session {}: conditions of {} are said twice; write them into one",
                                in_quotes(text), logs[i].file));
            }
            said[i] = conditions;
            found = true;
        }
        if (!found)
            throw UsageError(
                fmt::format("--session {}: no log {} is given", in_quotes(text), in_quotes(*file)));
    }
    std::vector<std::string> warnings;
    for (std::size_t i = 0; i < logs.size(); ++i)
        for (const std::string& words :
             complete_conditions(logs[i].log, said[i].value_or(SessionConditions{})))
            warnings.push_back(fmt::format("{}: {}", logs[i].file, words));
    return warnings;
}

}  // namespace landwidth
