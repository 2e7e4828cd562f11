#include "courses/ground/ground_units.hpp"

#include <array>
#include <string>

#include "courses/text.hpp"
#include "geometry/units.hpp"

namespace landwidth {

std::optional<double> metres_per_height_unit(std::string_view name) {
    // By definition (US survey foot: 1200/3937 m).
    constexpr double metres_per_survey_foot = 1200.0 / 3937.0;
    struct Unit {
        std::string_view name;
        double metres;
    };
    static constexpr std::array<Unit, 16> units{{{"m", 1.0},
                                                 {"metre", 1.0},
                                                 {"metres", 1.0},
                                                 {"meter", 1.0},
                                                 {"meters", 1.0},
                                                 {"ft", metres_per_foot},
                                                 {"foot", metres_per_foot},
                                                 {"feet", metres_per_foot},
                                                 {"international foot", metres_per_foot},
                                                 {"us survey foot", metres_per_survey_foot},
                                                 {"us survey feet", metres_per_survey_foot},
                                                 {"foot us", metres_per_survey_foot},
                                                 {"ft us", metres_per_survey_foot},
                                                 {"us ft", metres_per_survey_foot},
                                                 {"sft", metres_per_survey_foot},
                                                 {"ftus", metres_per_survey_foot}}};
    // "US_survey_foot", "us-ft" and "US survey foot" are one.
    std::string plain = folded(name);
    for (char& c : plain)
        if (c == '_' || c == '-') c = ' ';
    for (const Unit& unit : units)
        if (plain == unit.name) return unit.metres;
    return std::nullopt;
}

}  // namespace landwidth
