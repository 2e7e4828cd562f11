#include "planner/commands/golfer_options.hpp"

#include <fmt/format.h>

#include <charconv>

#include "geometry/error.hpp"

namespace landwidth {

namespace {

// "14", "-2.3", and as golfers write it, "+2.3" for better than scratch.
double handicap_of_text(const std::string& typed) {
    const bool plus = typed.starts_with('+');
    const char* first = typed.data() + (plus ? 1 : 0);
    const char* end = typed.data() + typed.size();
    double value = 0.0;
    const auto [stopped, error] = std::from_chars(first, end, value);
    if (error != std::errc() || stopped != end || (plus && value < 0.0)) {
        throw UsageError(
            fmt::format("--handicap {}: a number is expected; a plus handicap is written +2.3", typed));
    }
    return plus ? -value : value;
}

}  // namespace

void GolferOptions::setup(CLI::App& app) {
    handicap_option_ =
        app.add_option("--handicap", handicap_, "handicap index, 14.2; better than scratch as +2.3")
            ->type_name("INDEX");
    women_option_ = app.add_flag("--women", women_, "go by the women's published numbers, not the men's");
    left_handed_option_ = app.add_flag("--left-handed", left_handed_, "mirror the shot patterns");
    app.add_option("--name", name_, "the golfer's name")->type_name("TEXT");
}

GolferRequest GolferOptions::request(const std::string& name) const {
    return {.name = name_.empty() ? name : name_,
            .handicap_index = handicap_.empty() ? 0.0 : handicap_of_text(handicap_),
            .drive_total_yd = {},
            .reference = women_ ? Reference::women : Reference::men,
            .hand = hand()};
}

}  // namespace landwidth
