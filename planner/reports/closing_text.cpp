#include "planner/reports/closing_text.hpp"

#include <fmt/format.h>

#include "planner/reports/text_table.hpp"

namespace landwidth {

std::string bulleted(std::string_view heading, const std::vector<std::string>& sentences) {
    if (sentences.empty()) return {};
    std::string text = fmt::format("\n{}\n", heading);
    for (const std::string& sentence : sentences)
        text += wrapped(sentence, "- ");
    return text;
}

std::string map_line(const Course& course) {
    return wrapped(fmt::format("Map: {}{}{}", course.source, course.attribution.empty() ? "" : ", ",
                               course.attribution));
}

}  // namespace landwidth
