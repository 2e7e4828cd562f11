// The sentences about what was learnt from recorded shots; they begin with the club they are of.
#pragma once

#include <string>
#include <vector>

#include "planner/reports/learn_reports.hpp"

namespace landwidth {

// Why the model's figures are not those of the recorded shots; empty where no shot is at hand.
std::string why_differs_words(const LearnView& view, const LearntClub& club);
std::vector<std::string> why_differs_words(const LearnView& view);

// What was known of each club before any shot.
std::vector<std::string> prior_words(const LearnView& view);

// Clubs whose shots go two ways, by what that means on the ground.
std::vector<std::string> shape_words(const LearnView& view);

// What a place on the face did.
std::vector<std::string> strike_words(const LearnView& view);

// The shots of the logs that were taken for mishits, with file, row and reason; of a club with many of them
// the first. Of shots learnt from earlier their number.
std::vector<std::string> mishit_words(const LearnView& view);

}  // namespace landwidth
