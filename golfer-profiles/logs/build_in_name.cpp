#include "golfer-profiles/logs/build_in_name.hpp"

#include <algorithm>

#include "geometry/units.hpp"
#include "golfer-profiles/club_names.hpp"
#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/logs/decimal_marks.hpp"
#include "golfer-profiles/logs/log_units.hpp"

namespace landwidth {

std::optional<double> build_length(std::string_view build) {
    const std::string text = in_small_letters(trimmed(build));
    const std::size_t end = std::min(text.find_first_not_of("0123456789.,"), text.size());
    const auto number = DecimalMarks().value(std::string_view(text).substr(0, end));
    const std::string_view unit = trimmed(std::string_view(text).substr(end));
    if (!number) return std::nullopt;
    const bool inches = unit == "in" || unit == "inch" || unit == "inches" || unit == "\"" || unit == "''" ||
                        unit == "\u2033";
    const double length = inches ? *number * metres_per_inch : unit == "cm" ? *number / 100.0 : 0.0;
    constexpr double shortest = 18 * metres_per_inch, longest = 60 * metres_per_inch;
    return length >= shortest && length <= longest ? std::optional(length) : std::nullopt;
}

std::optional<NamedBuild> build_in_name(std::string_view club) {
    constexpr std::string_view between = " ,\t";
    const std::string_view name = trimmed(club);
    // The last number and what follows it, or the number before ("44,5 in").
    for (std::size_t at = name.size(); at-- > 1;) {
        const bool begins_number =
            name[at] >= '0' && name[at] <= '9' && between.find(name[at - 1]) != std::string_view::npos;
        if (!begins_number || !build_length(name.substr(at))) continue;
        std::string_view head = name.substr(0, at);
        head = head.substr(0, head.find_last_not_of(between) + 1);
        if (head.empty() || !kind_by_name(head)) return std::nullopt;
        return NamedBuild{std::string(head), std::string(name.substr(at))};
    }
    return std::nullopt;
}

}  // namespace landwidth
