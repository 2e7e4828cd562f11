#include <fmt/format.h>

#include <array>
#include <cmath>
#include <nlohmann/json.hpp>

#include "geometry/units.hpp"
#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/nearest_word.hpp"
#include "golfer-profiles/profile_format.hpp"
#include "golfer-profiles/run_by_kind.hpp"

namespace landwidth {
namespace {

using Json = nlohmann::json;
using Words = std::string_view;

constexpr std::array<Words, 8> golfer_keys{"format",     "name",    "handicap_index", "hand",
                                           "short_game", "putting", "clubs",          "note"};
constexpr std::array<Words, 1> level_keys{"level"};
constexpr std::array<Words, 7> club_keys{"name",    "kind",   "length_in", "loft_deg",
                                         "pattern", "launch", "note"};
constexpr std::array<Words, 9> pattern_keys{"carry_yd", "carry_sd_yd", "side_yd", "side_sd_yd", "correlation",
                                            "run_yd",   "tail_dof",    "mishit",  "shots"};
constexpr std::array<Words, 5> mishit_keys{"share", "carry_yd", "carry_sd_yd", "side_yd", "side_sd_yd"};
constexpr std::array<Words, 3> launch_keys{"ball_speed_mph", "launch_deg", "spin_rpm"};
constexpr std::array<Words, 3> level_names{"tour", "scratch", "handicap"};
constexpr std::array<Words, 8> kinds{"driver",       "mini-driver", "fairway-wood", "hybrid",
                                     "driving-iron", "iron",        "wedge",        "putter"};

// Wide enough for any golfer who ever lived, narrow enough to catch a slip of the keyboard or of the unit.
constexpr NumberRule index_rule{"a handicap index (plus handicaps negative)", -10, 54};
constexpr NumberRule carry_rule{"a carry in yards", 1, 450};
constexpr NumberRule sd_rule{"a standard deviation", 0, 150, true};
constexpr NumberRule side_rule{"a mean side offset in yards (right positive)", -150, 150};
constexpr NumberRule correlation_rule{"a correlation", -1, 1, true, true};
constexpr NumberRule run_rule{"a run-out in yards", 0, 120};
constexpr NumberRule dof_rule{"the number of degrees of freedom (absent: a normal)", 2, 1e6, true};
constexpr NumberRule shots_rule{"the number of recorded shots (0: a preset)", 0, 1e6};
constexpr NumberRule share_rule{"a share of shots (0.08 for 8 %)", 0, 1, false, true};
constexpr NumberRule mishit_carry_rule{"a carry in yards", 0, 450};
constexpr NumberRule length_rule{"a club length in inches", 10, 60};
constexpr NumberRule loft_rule{"a loft in degrees", 0, 80};
constexpr NumberRule ball_speed_rule{"a ball speed in miles per hour", 10, 260};
constexpr NumberRule launch_rule{"a launch angle in degrees", -10, 80};
constexpr NumberRule spin_rule{"a spin in revolutions per minute", 0, 15000};

double metres(std::optional<double> yards) {
    return Yards{yards.value_or(0.0)}.metres();
}

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

Mishit mishit_of(JsonFields& mishit) {
    Mishit result{};
    result.share = mishit.number("share", share_rule).value_or(0.0);
    result.spread.centre.carry_m = metres(mishit.number("carry_yd", mishit_carry_rule));
    result.spread.carry_sd_m = metres(mishit.number("carry_sd_yd", sd_rule));
    result.spread.centre.side_m = metres(mishit.number("side_yd", side_rule));
    result.spread.side_sd_m = metres(mishit.number("side_sd_yd", sd_rule));
    return result;
}

ShotPattern pattern_of(JsonFields& pattern, ClubKind kind, FieldNotes& notes) {
    ShotPattern result{};
    Spread& usual = result.usual;
    usual.centre.carry_m = metres(pattern.number("carry_yd", carry_rule));
    usual.carry_sd_m = metres(pattern.number("carry_sd_yd", sd_rule));
    usual.centre.side_m = metres(pattern.number("side_yd", side_rule));
    usual.side_sd_m = metres(pattern.number("side_sd_yd", sd_rule));
    usual.correlation = pattern.optional_number("correlation", correlation_rule).value_or(0.0);
    result.run_m = pattern.has("run_yd") ? metres(pattern.optional_number("run_yd", run_rule))
                                         : run_share_of_carry(kind) * usual.centre.carry_m;
    result.tail_dof =
        pattern.optional_number("tail_dof", dof_rule).value_or(std::numeric_limits<double>::infinity());
    if (const Json* object = pattern.optional_object("mishit")) {
        JsonFields mishit(*object, pattern.place().inside("mishit"), mishit_keys, notes);
        result.mishit = mishit_of(mishit);
    }
    result.shots = pattern.whole_number("shots", shots_rule).value_or(0);
    return result;
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

Club club_of(JsonFields& club, FieldNotes& notes) {
    Club result;
    result.name = name_of(club);
    result.kind = kind_of(club);
    if (const auto inches = club.optional_number("length_in", length_rule))
        result.length_m = *inches * metres_per_inch;
    if (const auto degrees = club.optional_number("loft_deg", loft_rule))
        result.loft_rad = *degrees * radians_per_degree;
    // Only the putter may do without: its strokes go by distance and the level of the putting.
    const bool may_lack_pattern = result.kind == ClubKind::putter;
    const Json* pattern = may_lack_pattern ? club.optional_object("pattern")
                                           : club.object("pattern", "every club but the putter needs one");
    if (pattern != nullptr) {
        JsonFields fields(*pattern, club.place().inside("pattern"), pattern_keys, notes);
        result.pattern = pattern_of(fields, result.kind, notes);
    }
    if (const Json* launch = club.optional_object("launch")) {
        JsonFields fields(*launch, club.place().inside("launch"), launch_keys, notes);
        result.launch = launch_of(fields);
    }
    result.note = club.optional_text("note").value_or("");
    return result;
}

void check_bag(const std::vector<Club>& clubs, FieldNotes& notes) {
    if (clubs.size() > most_clubs) {
        notes.errors.push_back(fmt::format(
            "clubs: {} clubs; a golfer may carry at most {} (Rules of Golf 4.1b)", clubs.size(), most_clubs));
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
    const auto has_pattern = [](const Club& club) { return club.kind != ClubKind::putter || club.pattern; };
    if (std::none_of(clubs.begin(), clubs.end(), has_pattern)) {
        notes.errors.emplace_back("clubs: no club has a pattern; at least one is needed to play with");
    }
}

std::vector<Club> clubs_of(JsonFields& fields, FieldNotes& notes) {
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
        result.push_back(club_of(club, notes));
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
    result.clubs = clubs_of(fields, notes);
    result.note = fields.optional_text("note").value_or("");
    return result;
}

}  // namespace landwidth
