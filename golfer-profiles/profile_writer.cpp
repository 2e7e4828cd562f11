#include <fmt/format.h>

#include <cmath>
#include <cstdlib>
#include <nlohmann/json.hpp>
#include <stdexcept>

#include "geometry/error.hpp"
#include "geometry/units.hpp"
#include "golfer-profiles/profile_file.hpp"
#include "golfer-profiles/profile_format.hpp"

namespace landwidth {
namespace {

using Json = nlohmann::ordered_json;

// 222 rather than 222.0: people read this.
Json plain(double value) {
    constexpr double exact_integers = 9e15;
    if (std::trunc(value) == value && std::abs(value) < exact_integers) return static_cast<long long>(value);
    return value;
}

// A value that changed its unit, without the noise in the last digits that the change brings.
Json in_unit(double value, double unit) {
    return plain(std::strtod(fmt::format("{:.10g}", value / unit).c_str(), nullptr));
}

Json yards(double metres) {
    return in_unit(metres, metres_per_yard);
}

Json level_json(const Level& level) {
    if (const double* index = std::get_if<double>(&level)) return {{"level", plain(*index)}};
    switch (std::get<NamedLevel>(level)) {
        case NamedLevel::tour:
            return {{"level", "tour"}};
        case NamedLevel::scratch:
            return {{"level", "scratch"}};
        case NamedLevel::handicap:
            break;
    }
    return {{"level", "handicap"}};
}

Json mishit_json(const Mishit& mishit) {
    const Spread& spread = mishit.spread;
    if (spread.correlation != 0.0)
        throw std::logic_error("profile_text: the format has no correlation of mishits");
    return {{"share", plain(mishit.share)},
            {"carry_yd", yards(spread.centre.carry_m)},
            {"carry_sd_yd", yards(spread.carry_sd_m)},
            {"side_yd", yards(spread.centre.side_m)},
            {"side_sd_yd", yards(spread.side_sd_m)}};
}

Json pattern_json(const ShotPattern& pattern) {
    const Spread& usual = pattern.usual;
    Json result = {{"carry_yd", yards(usual.centre.carry_m)},
                   {"carry_sd_yd", yards(usual.carry_sd_m)},
                   {"side_yd", yards(usual.centre.side_m)},
                   {"side_sd_yd", yards(usual.side_sd_m)}};
    if (usual.correlation != 0.0) result["correlation"] = plain(usual.correlation);
    result["run_yd"] = yards(pattern.run_m);
    if (!std::isinf(pattern.tail_dof)) result["tail_dof"] = plain(pattern.tail_dof);
    if (pattern.mishit) result["mishit"] = mishit_json(*pattern.mishit);
    if (pattern.ways)
        for (const Way& way : *pattern.ways)
            result["ways"].push_back({{"share", plain(way.share)},
                                      {"carry_sds", plain(way.carry_sds)},
                                      {"side_sds", plain(way.side_sds)},
                                      {"carry_spread", plain(way.carry_spread)},
                                      {"side_spread", plain(way.side_spread)},
                                      {"correlation", plain(way.correlation)}});
    result["shots"] = pattern.shots;
    return result;
}

Json learnt_json(const LearntFrom& learnt) {
    Json shots = Json::array();
    for (std::size_t i = 0; i < learnt.shots.size(); ++i) {
        shots.push_back({yards(learnt.shots[i].carry_m), yards(learnt.shots[i].side_m)});
        if (learnt.times.empty()) continue;
        shots.back().push_back(learnt.times[i].session);
        shots.back().push_back(plain(learnt.times[i].when));
    }
    Json result = {{"prior", pattern_json(learnt.prior)}, {"shots_yd", std::move(shots)}};
    if (learnt.lost > 0) result["lost"] = learnt.lost;
    return result;
}

Json launch_json(const Launch& launch) {
    return {{"ball_speed_mph", in_unit(launch.ball_speed_mps, metres_per_second_per_mph)},
            {"launch_deg", in_unit(launch.launch_rad, radians_per_degree)},
            {"spin_rpm", in_unit(launch.spin_rad_per_s, radians_per_second_per_rpm)}};
}

Json club_json(const Club& club) {
    Json result = {{"name", club.name}, {"kind", std::string(club_kind_name(club.kind))}};
    if (!club.build_of.empty()) result["build_of"] = club.build_of;
    if (club.length_m) result["length_in"] = in_unit(*club.length_m, metres_per_inch);
    if (club.loft_rad) result["loft_deg"] = in_unit(*club.loft_rad, radians_per_degree);
    if (club.pattern) result["pattern"] = pattern_json(*club.pattern);
    if (club.learnt_from) result["learnt_from"] = learnt_json(*club.learnt_from);
    if (club.launch) result["launch"] = launch_json(*club.launch);
    if (!club.in_bag) result["in_bag"] = false;
    if (!club.note.empty()) result["note"] = club.note;
    return result;
}

Json golfer_json(const Golfer& golfer) {
    Json result = {{"format", std::string(profile_format)},
                   {"name", golfer.name},
                   {"handicap_index", plain(golfer.handicap_index)},
                   {"handicap_known", golfer.handicap_known},
                   {"hand", golfer.hand == Hand::left ? "left" : "right"},
                   {"short_game", level_json(golfer.short_game)},
                   {"putting", level_json(golfer.putting)}};
    if (golfer.handicap_known) result.erase("handicap_known");
    if (!golfer.note.empty()) result["note"] = golfer.note;
    for (const Session& session : golfer.sessions) {
        Json entry = {{"label", session.label}};
        if (session.weight != 1.0) entry["weight"] = plain(session.weight);
        result["sessions"].push_back(std::move(entry));
    }
    result["clubs"] = Json::array();
    for (const Club& club : golfer.clubs)
        result["clubs"].push_back(club_json(club));
    return result;
}

// On one line, with spaces.
std::string one_line(const Json& value) {
    if (value.is_array()) {
        std::string result = "[";
        for (const Json& item : value)
            result += fmt::format("{}{}", result.size() > 1 ? ", " : "", one_line(item));
        return result + "]";
    }
    if (!value.is_object()) return value.dump();
    std::string result = "{";
    for (const auto& [key, item] : value.items()) {
        result += fmt::format("{}{}: {}", result.size() > 1 ? ", " : "", Json(key).dump(), one_line(item));
    }
    return result + "}";
}

std::string laid_out(const Json& value, std::size_t indent);

constexpr std::size_t line_length = 110;

// As many keys on a line as fit; a value that does not fit on a line of its own is laid out below its key.
std::string laid_out_object(const Json& object, std::size_t indent) {
    const std::string inner(indent + 2, ' ');
    std::string result = "{";
    std::string line;
    std::size_t left = object.size();
    for (const auto& [key, value] : object.items()) {
        const std::string name = Json(key).dump() + ": ";
        const std::string comma = --left > 0 ? "," : "";
        const std::string flat = fmt::format("{}{}{}", name, one_line(value), comma);
        if (!line.empty() && inner.size() + line.size() + 1 + flat.size() <= line_length) {
            line += fmt::format(" {}", flat);
            continue;
        }
        if (!line.empty()) result += fmt::format("\n{}{}", inner, line);
        const bool fits = inner.size() + flat.size() <= line_length;
        line = fits ? flat : fmt::format("{}{}{}", name, laid_out(value, indent + 2), comma);
    }
    return result + "\n" + inner + line + "\n" + std::string(indent, ' ') + "}";
}

// As many entries on a line as fit.
std::string filled_list(const Json& list, std::size_t indent) {
    const std::string inner(indent + 2, ' ');
    std::string result = "[";
    std::string line;
    for (std::size_t i = 0; i < list.size(); ++i) {
        const std::string entry = one_line(list[i]) + (i + 1 < list.size() ? "," : "");
        if (!line.empty() && inner.size() + line.size() + 1 + entry.size() > line_length) {
            result += fmt::format("\n{}{}", inner, line);
            line.clear();
        }
        line += fmt::format("{}{}", line.empty() ? "" : " ", entry);
    }
    return result + "\n" + inner + line + "\n" + std::string(indent, ' ') + "]";
}

// For a person who edits one club, or one number of it, at a time: short objects on one line, each entry of a
// list on lines of its own, but pairs of numbers as they fit.
std::string laid_out(const Json& value, std::size_t indent) {
    if (!value.is_structured() || value.empty()) return value.dump();
    if (value.is_object()) {
        std::string flat = one_line(value);
        return flat.size() + indent <= line_length ? flat : laid_out_object(value, indent);
    }
    if (value.front().is_array()) return filled_list(value, indent);
    const std::string inner(indent + 2, ' ');
    std::string result = "[\n";
    for (std::size_t i = 0; i < value.size(); ++i) {
        result +=
            fmt::format("{}{}{}\n", inner, laid_out(value[i], indent + 2), i + 1 < value.size() ? "," : "");
    }
    return result + std::string(indent, ' ') + "]";
}

}  // namespace

std::string profile_text(const Golfer& golfer) {
    std::string text;
    try {
        text = laid_out(golfer_json(golfer), 0) + "\n";
        // Nobody shall find out later, from a file that cannot be read any more.
        static_cast<void>(parse_profile(text, "profile_text"));
    } catch (const nlohmann::json::exception&) {
        throw std::logic_error("profile_text: a text of the golfer is not UTF-8");
    } catch (const InputError& error) {
        throw std::logic_error(error.what());
    }
    return text;
}

}  // namespace landwidth
