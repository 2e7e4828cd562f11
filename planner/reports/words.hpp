// The sentences and numbers that several reports share.
//
// Names come from the map and the profile as they are, shortened when very long; a report that has a markup
// escapes the whole sentence.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "planner/reports/plan_view.hpp"

namespace landwidth {

// "7 yd left of the centre line, at the left edge of the bunker 252 yd out".
std::string aim_words(const TeeChoice& choice, DisplayUnits units);

// The offset alone, for a column: "7 yd left", "centre".
std::string short_aim_words(const TeeChoice& choice, DisplayUnits units);

// The verdict of a hole in one or two sentences: club, aim, what happens to the ball, what the next club
// costs.
std::string verdict_words(const PlanView& view, std::size_t hole);

// Why the driver is not the club here: what it costs more and what it finds more of. Empty when a driver is
// the choice, or when none was among the choices.
std::string why_not_driver_words(const PlanView& view, std::size_t hole);

// Why two choices are not told apart: "as good as each other" or "not known yet".
std::string_view undecided_words(bool alike);

// How far to trust the verdict: the share of plausible patterns that agree, or that it is a toss-up. One
// sentence; empty when there was a single club.
std::string certainty_words(const HolePlan& hole);

// One sentence each: buildings, roads and neighbouring holes inside the pattern of the club chosen.
std::vector<std::string> caution_words(const PlanView& view, std::size_t hole);

// What figures hold for where no day and no ground was given; see setting_words.
inline constexpr std::string_view reference_setting = "in still air on level ground";

// The cautions and limits of any answer about a shot, one sentence each.
std::vector<std::string> cautions_of_any_shot(std::string_view setting = reference_setting);

// The cautions and limits every plan carries, one sentence each.
std::vector<std::string> standing_cautions(std::string_view setting = reference_setting);

// "58 %"; shares that would round to none or all without being so are "<1 %" and ">99 %".
std::string share_text(double share);

// Share of balls that finish in a bunker, among trees, in a penalty area or out of bounds.
double trouble_share(const TeeChoice& choice);

// With a capital letter at the start; a first character beyond ASCII stays as it is.
std::string capitalised(std::string text);

// A name fit for a sentence: at most `longest` characters, the rest an ellipsis; what is written from right
// to left does not carry the words behind it along.
std::string name_text(std::string_view name, std::size_t longest = 48);

}  // namespace landwidth
