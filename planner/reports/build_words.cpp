#include "planner/reports/build_words.hpp"

#include <fmt/format.h>

#include <stdexcept>

#include "geometry/units.hpp"
#include "planner/reports/rounded.hpp"

namespace landwidth {

std::string swing_weight_words(SwingWeight weight) {
    if (const auto text = swing_weight_text(weight)) return *text;
    return weight.points() < 0.0 ? "below A0" : "above G9.9";
}

std::string inches_text(double length_m) {
    return fmt::format("{} in", rounded(length_m / metres_per_inch, 2));
}

std::string length_verdict_words(LengthVerdict verdict, double length_m) {
    const std::string length = inches_text(length_m);
    switch (verdict) {
        case LengthVerdict::shorter_than_rules:
            return fmt::format("{} is against the rules: a club measures at least 18 in.", length);
        case LengthVerdict::longer_than_rules:
            return fmt::format("{} is against the rules: no club but the putter measures more than 48 in.",
                               length);
        case LengthVerdict::longer_than_local_rule:
            return fmt::format("{} is against the rules wherever Model Local Rule G-10 (46 in) is in force.",
                               length);
        case LengthVerdict::seldom_still_a_driver:
            return fmt::format(
                "{} is below the lengths most driver fittings end at, 44.5 to 45.5 in; a club shorter than "
                "that off "
                "the tee is seldom still a driver: weigh a second tee club against it.",
                length);
        case LengthVerdict::usual_driver:
            return fmt::format("{} is within the lengths most driver fittings end at, 44.5 to 45.5 in.",
                               length);
        case LengthVerdict::longer_than_usual_driver:
            return fmt::format("{} is above the lengths most driver fittings end at, 44.5 to 45.5 in.",
                               length);
        case LengthVerdict::extreme_driver:
            return fmt::format("{} is extreme for a driver: most fittings end at 44.5 to 45.5 in.", length);
    }
    throw std::logic_error("a length verdict without words");
}

std::string_view length_rules_words() {
    return "Equipment Rules (from memory): at least 18 in and, the putter excepted, at most 48 in, or 46 in "
           "where Model Local Rule G-10 is in force; the committee decides.";
}

const std::vector<std::string>& trial_words() {
    static const std::vector<std::string> sentences{
        "These are ranges of common practice for golfers at large and no forecast for this one.",
        "How often the face is found and how far shots spread to the sides changes with the build, and "
        "no table tells by how much.",
        "A trial beats this table: hit both builds in turn, a dozen shots or more of each, and compare the "
        "recorded shots.",
    };
    return sentences;
}

const std::vector<std::string>& build_cautions() {
    static const std::vector<std::string> sentences{
        "Work on a club belongs to a qualified builder: heat, adhesives and solvents, lead tape and powder, "
        "graphite dust.",
        "An altered club must still conform; local rules and the committee decide.",
        "Check that head and grip sit fast before the first swing, and let nobody stand within reach of "
        "it.",
    };
    return sentences;
}

}  // namespace landwidth
