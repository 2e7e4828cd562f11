#include <fmt/format.h>

#include <array>
#include <cmath>
#include <nlohmann/json.hpp>

#include "geometry/units.hpp"
#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/nearest_word.hpp"
#include "golfer-profiles/pattern_reader.hpp"
#include "golfer-profiles/profile_format.hpp"

namespace landwidth {
namespace {

using Json = nlohmann::json;
using Words = std::string_view;

constexpr std::array<Words, 10> golfer_keys{"format", "name",       "handicap_index", "handicap_known",
                                            "hand",   "short_game", "putting",        "sessions",
                                            "clubs",  "note"};
constexpr std::array<Words, 2> session_keys{"label", "weight"};
constexpr std::array<Words, 1> level_keys{"level"};
constexpr std::array<Words, 10> club_keys{"name",    "kind",        "build_of", "length_in", "loft_deg",
                                          "pattern", "learnt_from", "launch",   "in_bag",    "note"};
constexpr std::array<Words, 3> launch_keys{"ball_speed_mph", "launch_deg", "spin_rpm"};
constexpr std::array<Words, 3> level_names{"tour", "scratch", "handicap"};
constexpr std::array<Words, 8> kinds{"driver",       "mini-driver", "fairway-wood", "hybrid",
                                     "driving-iron", "iron",        "wedge",        "putter"};

// Wide enough for any golfer who ever lived, narrow enough to catch a slip of the keyboard or of the unit.
constexpr NumberRule index_rule{"a handicap index (plus handicaps negative)", -10, 54};
constexpr NumberRule weight_rule{"the weight of a session's shots", 0, 1, true};
constexpr NumberRule length_rule{"a club length in inches", 10, 60};
constexpr NumberRule loft_rule{"a loft in degrees", 0, 80};
constexpr NumberRule ball_speed_rule{"a ball speed in miles per hour", 10, 260};
constexpr NumberRule launch_rule{"a launch angle in degrees", -10, 80};
constexpr NumberRule spin_rule{"a spin in revolutions per minute", 0, 15000};

std::string did_you_mean(std::string_view word, std::span<const Words> candidates) {
    const auto nearest = nearest_word(word, candidates);
    return nearest ? fmt::format("did you mean \"{}\"? ", *nearest) : std::string();
}

bool right_format(JsonFields& fields) {
    const auto format =
        fields.text("format", fmt::format("a profile begins with \"format\": \"{}\"", profile_format));
    if (!format || *format == profile_format) return format.has_value();
    fields.error("format",
                 fmt::format(" is {}; this program reads \"{}\"", in_quotes(*format), profile_format));
    return false;
}

std::string name_of(JsonFields& fields) {
    const auto name = fields.text("name", "a name in quotes is expected");
    if (!name) return {};
    if (const std::string problem = name_problem(*name); !problem.empty())
        fields.error("name", " " + problem);
    return std::string(trimmed(*name));
}

Hand hand_of(JsonFields& fields) {
    const auto hand = fields.text("hand", "write \"right\" or \"left\"");
    if (hand && *hand != "right" && *hand != "left") {
        fields.error("hand", fmt::format(" is {}; write \"right\" or \"left\"", in_quotes(*hand)));
    }
    return hand && *hand == "left" ? Hand::left : Hand::right;
}

Level level_of(JsonFields& fields, Words part, FieldNotes& notes) {
    const Json* object = fields.object(
        part, fmt::format(R"(write "{}": {{"level": "handicap"}} to go by the handicap index)", part));
    if (object == nullptr) return NamedLevel::handicap;
    JsonFields level(*object, fields.place().inside(part), level_keys, notes);
    constexpr Words expected = "a handicap number, \"tour\", \"scratch\" or \"handicap\" is expected";
    const Json* value = level.required("level", expected);
    if (value == nullptr) return NamedLevel::handicap;
    if (value->is_number()) return level.number("level", index_rule).value_or(0.0);
    if (*value == "tour") return NamedLevel::tour;
    if (*value == "scratch") return NamedLevel::scratch;
    if (*value != "handicap") {
        const std::string hint =
            value->is_string() ? did_you_mean(value->get<std::string>(), level_names) : "";
        level.error("level", fmt::format(" is {}; {}{}", shown(*value), hint, expected));
    }
    return NamedLevel::handicap;
}

ClubKind kind_of(JsonFields& club) {
    const auto name = club.text("kind", "one of these is expected: " + listed(kinds));
    if (!name) return ClubKind::iron;
    const auto kind = club_kind_named(*name);
    if (!kind) {
        club.error("kind", fmt::format(" is {}; {}the kinds are {}", in_quotes(*name),
                                       did_you_mean(*name, kinds), listed(kinds)));
    }
    return kind.value_or(ClubKind::iron);
}

Launch launch_of(JsonFields& launch) {
    return {
        .ball_speed_mps =
            metres_per_second_per_mph * launch.number("ball_speed_mph", ball_speed_rule).value_or(0.0),
        .launch_rad = radians_per_degree * launch.number("launch_deg", launch_rule).value_or(0.0),
        .spin_rad_per_s = radians_per_second_per_rpm * launch.number("spin_rpm", spin_rule).value_or(0.0)};
}

FieldPlace place_of_club(const Json& club, std::size_t index) {
    std::string item = fmt::format("clubs[{}]", index);
    const auto name = club.find("name");
    if (name != club.end() && name->is_string())
        item += " " + in_quotes(trimmed(name->get_ref<const std::string&>()));
    return {std::move(item), {}};
}

Club club_of(JsonFields& club, std::size_t sessions, FieldNotes& notes) {
    Club result;
    result.name = name_of(club);
    result.kind = kind_of(club);
    result.build_of = std::string(trimmed(club.optional_text("build_of").value_or("")));
    if (const auto inches = club.optional_number("length_in", length_rule))
        result.length_m = *inches * metres_per_inch;
    if (const auto degrees = club.optional_number("loft_deg", loft_rule))
        result.loft_rad = *degrees * radians_per_degree;
    // Only the putter may do without: its strokes go by distance and the level of the putting.
    const bool may_lack_pattern = result.kind == ClubKind::putter;
    const Json* pattern = may_lack_pattern ? club.optional_object("pattern")
                                           : club.object("pattern", "every club but the putter needs one");
    if (pattern != nullptr) {
        result.pattern = pattern_of_json(*pattern, club.place().inside("pattern"), result.kind, notes);
    }
    if (const Json* learnt = club.optional_object("learnt_from")) {
        result.learnt_from =
            learnt_from_json(*learnt, club.place().inside("learnt_from"), result.kind, sessions, notes);
        if (pattern == nullptr && may_lack_pattern)
            club.error("learnt_from", " stands without a pattern; give the club both or neither");
    }
    if (const Json* launch = club.optional_object("launch")) {
        JsonFields fields(*launch, club.place().inside("launch"), launch_keys, notes);
        result.launch = launch_of(fields);
    }
    result.in_bag = club.optional_truth("in_bag").value_or(true);
    result.note = club.optional_text("note").value_or("");
    return result;
}

void check_bag(const std::vector<Club>& clubs, FieldNotes& notes) {
    const auto carried = static_cast<std::size_t>(std::ranges::count_if(clubs, &Club::in_bag));
    if (carried > most_clubs) {
        notes.errors.push_back(
            fmt::format("clubs: {} clubs; a golfer may carry at most {} (Rules of Golf 4.1b); those on trial "
                        "are marked \"in_bag\": false",
                        carried, most_clubs));
    }
    if (clubs.size() > most_known_clubs) {
        notes.errors.push_back(fmt::format("clubs: {} clubs; with those on trial at most {} are known",
                                           clubs.size(), most_known_clubs));
    }
    for (std::size_t later = 1; later < clubs.size(); ++later) {
        for (std::size_t earlier = 0; earlier < later; ++earlier) {
            if (clubs[later].name.empty() || !same_name(clubs[earlier].name, clubs[later].name)) continue;
            notes.errors.push_back(
                fmt::format("clubs[{}] {}: the name is taken by clubs[{}]; give each club its own", later,
                            in_quotes(clubs[later].name), earlier));
            break;
        }
    }
    const auto has_pattern = [](const Club& club) {
        return club.in_bag && (club.kind != ClubKind::putter || club.pattern);
    };
    if (std::none_of(clubs.begin(), clubs.end(), has_pattern)) {
        notes.errors.emplace_back(carried == clubs.size()
                                      ? "clubs: no club has a pattern; at least one is needed to play with"
                                      : "clubs: no club in the bag has a pattern; at least one is needed to "
                                        "play with");
    }
}

std::vector<Session> sessions_of(JsonFields& fields, FieldNotes& notes) {
    std::vector<Session> result;
    if (!fields.has("sessions")) return result;
    const Json* list = fields.list("sessions", "a list of sessions is expected");
    if (list == nullptr) return result;
    for (std::size_t i = 0; i < list->size(); ++i) {
        const std::string place = fmt::format("sessions[{}]", i);
        if (!(*list)[i].is_object()) {
            notes.errors.push_back(
                fmt::format("{} is {}; a session is an object {{\"label\": ...}}", place, shown((*list)[i])));
            continue;
        }
        JsonFields session((*list)[i], {place, {}}, session_keys, notes);
        result.push_back(
            {session.text("label", "what tells the session from others is expected").value_or(""),
             session.optional_number("weight", weight_rule).value_or(1.0)});
    }
    return result;
}

std::vector<Club> clubs_of(JsonFields& fields, std::size_t sessions, FieldNotes& notes) {
    std::vector<Club> result;
    const Json* list = fields.list("clubs", "a list of clubs is expected");
    if (list == nullptr) return result;
    for (std::size_t i = 0; i < list->size(); ++i) {
        const Json& item = (*list)[i];
        if (!item.is_object()) {
            notes.errors.push_back(
                fmt::format("clubs[{}] is {}; a club is an object {{...}}", i, shown(item)));
            result.emplace_back();
            continue;
        }
        JsonFields club(item, place_of_club(item, i), club_keys, notes);
        result.push_back(club_of(club, sessions, notes));
    }
    check_bag(result, notes);
    return result;
}

}  // namespace

Golfer golfer_of_json(const Json& root, FieldNotes& notes) {
    Golfer result;
    if (!root.is_object()) {
        notes.errors.push_back(fmt::format("the file holds {}; a profile is an object {{...}}", shown(root)));
        return result;
    }
    FieldNotes format_only;
    JsonFields format(root, {}, golfer_keys, format_only);
    if (!right_format(format)) {
        // The keys of another format would only be noise.
        notes.errors.insert(notes.errors.end(), format_only.errors.begin(), format_only.errors.end());
        return result;
    }
    JsonFields fields(root, {}, golfer_keys, notes);
    result.name = name_of(fields);
    result.handicap_index = fields.number("handicap_index", index_rule).value_or(0.0);
    result.hand = hand_of(fields);
    result.short_game = level_of(fields, "short_game", notes);
    result.putting = level_of(fields, "putting", notes);
    result.handicap_known = fields.optional_truth("handicap_known").value_or(true);
    result.sessions = sessions_of(fields, notes);
    result.clubs = clubs_of(fields, result.sessions.size(), notes);
    result.note = fields.optional_text("note").value_or("");
    return result;
}

}  // namespace landwidth
