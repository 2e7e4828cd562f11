// Widths as mappers tag them.
#include <array>

#include "courses/tags/vocabulary.hpp"
#include "courses/text.hpp"
#include "geometry/units.hpp"

namespace landwidth {

namespace {

// Wider than any watercourse, path or tree: a typing error.
constexpr double widest_m = 2000.0;

// "10'6\"", "10 ft 6 in", "10'": feet, and inches if any.
std::optional<double> feet_and_inches(const std::string& text, const std::string& foot,
                                      const std::string& inch) {
    const std::size_t mark = text.find(foot);
    if (mark == std::string::npos) return std::nullopt;
    const std::optional<double> feet = number_in(text.substr(0, mark));
    if (!feet) return std::nullopt;
    std::string rest = trimmed(text.substr(mark + foot.size()));
    if (rest.empty()) return *feet * metres_per_foot;
    if (rest.ends_with(inch)) rest.resize(rest.size() - inch.size());
    const std::optional<double> inches = number_in(rest);
    if (!inches) return std::nullopt;
    return *feet * metres_per_foot + *inches * metres_per_inch;
}

std::optional<double> with_unit(const std::string& text) {
    struct Unit {
        std::string_view name;
        double metres;
    };
    static constexpr std::array<Unit, 13> units{{{"metres", 1.0},
                                                 {"meters", 1.0},
                                                 {"metre", 1.0},
                                                 {"meter", 1.0},
                                                 {"cm", 0.01},
                                                 {"feet", metres_per_foot},
                                                 {"foot", metres_per_foot},
                                                 {"ft", metres_per_foot},
                                                 {"yards", metres_per_yard},
                                                 {"yard", metres_per_yard},
                                                 {"yd", metres_per_yard},
                                                 {"m", 1.0},
                                                 {"", 1.0}}};
    for (const Unit& unit : units) {
        if (!text.ends_with(unit.name)) continue;
        const std::optional<double> value = number_in(text.substr(0, text.size() - unit.name.size()));
        if (value) return *value * unit.metres;
    }
    return std::nullopt;
}

}  // namespace

std::optional<double> length_in_metres(const std::string& text) {
    std::string plain = folded(text);
    for (const std::string_view about : {"~", "ca.", "c."}) {
        if (plain.starts_with(about)) plain.erase(0, about.size());
    }
    // A comma is a decimal comma here: nobody maps widths in thousands.
    if (const std::size_t comma = plain.find(','); comma != std::string::npos) plain[comma] = '.';
    std::optional<double> metres = with_unit(plain);
    if (!metres) metres = feet_and_inches(plain, "'", "\"");
    if (!metres) metres = feet_and_inches(plain, "ft", "in");
    if (!metres || !(*metres > 0.0) || *metres > widest_m) return std::nullopt;
    return metres;
}

TaggedWidth tagged_width(const Tags& tags) {
    TaggedWidth width;
    for (const char* key : {"width", "est_width", "width:average"}) {
        const auto found = tags.find(key);
        if (found == tags.end()) continue;
        width.metres = length_in_metres(found->second);
        if (width.metres) return {width.metres, {}};
        if (width.unreadable.empty()) width.unreadable = std::string(key) + "=" + found->second;
    }
    return width;
}

double assumed_width(const Tags& tags, const MapAssumptions& assumptions) {
    const auto found = tags.find("waterway");
    const std::string kind = found == tags.end() ? std::string() : folded(found->second);
    if (kind == "ditch" || kind == "drain") return assumptions.ditch_width_m;
    if (kind == "river" || kind == "canal") return assumptions.river_width_m;
    return assumptions.stream_width_m;
}

}  // namespace landwidth
