#include "planner/reports/next_shot_words.hpp"

#include <fmt/format.h>

#include <cmath>

#include "planner/reports/display_length.hpp"
#include "planner/reports/score_words.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

// Good lies go without saying.
bool worth_telling(Lie lie) {
    return lie != Lie::fairway && lie != Lie::teeing_area && lie != Lie::green;
}

// "5-iron", but "sand wedge, 60 % swing," in front of more words.
std::string leading(const std::string& club) {
    return club.ends_with("swing") ? club + "," : club;
}

std::string shot_words(const PlanView& view, const PlannedShot& shot) {
    const std::string club = leading(swing_words(view, shot.club, shot.swing));
    const std::string leave = length_text(shot.leave_m, view.units);
    const std::string_view lie = lie_name(shot.lie);
    switch (shot.purpose) {
        case ShotPurpose::to_the_green:
            return fmt::format(
                "{} from {}{} {}", club, length_text(shot.to_hole_m, view.units),
                worth_telling(shot.lie) ? fmt::format(" in the {}", lie) : std::string(),
                shot.leave_lie == Lie::green ? "to the green" : "at the green, leaving " + leave);
        case ShotPurpose::lay_up:
            return fmt::format(
                "{} {}{}, laying up to {}", club, length_text(distance(shot.from, shot.leave), view.units),
                worth_telling(shot.lie) ? fmt::format(" from the {}", lie) : std::string(), leave);
        case ShotPurpose::advance:
            return fmt::format(
                "{} {}{}, leaving {}", club, length_text(distance(shot.from, shot.leave), view.units),
                worth_telling(shot.lie) ? fmt::format(" from the {}", lie) : std::string(), leave);
        case ShotPurpose::recovery:
            return fmt::format("{} out of the {} to {}", club, lie, leave);
    }
    return club;
}

std::string alternative_words(const PlanView& view, const PlannedShot::Alternative& other) {
    const std::string club = swing_words(view, other.club, other.swing);
    const std::string costs = loss_words(view.plan.aim_for, other.margin);
    switch (other.purpose) {
        case ShotPurpose::to_the_green:
            return fmt::format("going for it with the {} costs {}", leading(club), costs);
        case ShotPurpose::lay_up:
            return fmt::format("laying up with the {} to {} costs {}", leading(club),
                               length_text(other.leave_m, view.units), costs);
        case ShotPurpose::advance:
            return fmt::format("playing on with the {} to {} costs {}", leading(club),
                               length_text(other.leave_m, view.units), costs);
        case ShotPurpose::recovery:
            return fmt::format("playing out with the {} to {} costs {}", leading(club),
                               length_text(other.leave_m, view.units), costs);
    }
    return {};
}

}  // namespace

std::string_view purpose_name(ShotPurpose purpose) {
    switch (purpose) {
        case ShotPurpose::to_the_green:
            return "to the green";
        case ShotPurpose::lay_up:
            return "lay-up";
        case ShotPurpose::advance:
            return "advance";
        case ShotPurpose::recovery:
            return "recovery";
    }
    return "";
}

std::string swing_words(const PlanView& view, std::size_t club, double swing) {
    const std::string name = name_text(view.golfer.clubs.at(club).name);
    const double percent = std::round(100.0 * swing);
    return percent >= 100.0 ? name : fmt::format("{}, {:.0f} % swing", name, percent);
}

std::vector<std::string> next_shot_words(const PlanView& view, std::size_t hole) {
    std::vector<std::string> sentences;
    for (const PlannedShot& shot : view.plan.holes.at(hole).next) {
        std::string words = shot_words(view, shot);
        if (shot.alternative) words += " (" + alternative_words(view, *shot.alternative) + ")";
        sentences.push_back(std::move(words));
    }
    return sentences;
}

}  // namespace landwidth
