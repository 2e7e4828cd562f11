// Sentences and numbers that the reports of a club build share.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "golfer-profiles/length_change.hpp"
#include "golfer-profiles/swing_weight.hpp"

namespace landwidth {

// "D2.5"; off the letters, "below A0" or "above G9.9".
std::string swing_weight_words(SwingWeight weight);

// "44.5 in", to a hundredth.
std::string inches_text(double length_m);

// What the rules and the trade say about this length, one sentence.
std::string length_verdict_words(LengthVerdict verdict, double length_m);

// The limits of the rules, whatever the length; one sentence.
std::string_view length_rules_words();

// Why the ranges decide nothing, one sentence each.
const std::vector<std::string>& trial_words();

// The cautions every report of a build carries, one sentence each.
const std::vector<std::string>& build_cautions();

}  // namespace landwidth
