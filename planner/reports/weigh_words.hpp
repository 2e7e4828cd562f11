// The sentences that the reports of a comparison of bags share.
#pragma once

#include <string>

#include "planner/reports/weigh_reports.hpp"

namespace landwidth {

// "+0.38", "-0.02", "0.00": strokes saved.
std::string gain_text(double strokes);

// What the draws say of a change, in words that files keep: "saves", "costs", "alike", "not-known",
// "not-compared".
std::string verdict_word(BagVerdict verdict);
// In older words that files keep too: "pays", "costs strokes", "no difference", "open", "not compared".
std::string standing(const WeighedChange& change);

// The same as the end of a sentence that begins "so the change": "pays", "costs strokes", "is as good", "is
// not known yet", "is hit on no hole".
std::string standing_words(const WeighedChange& change);

// How likely the change is for the better or the worse, whichever is likelier: "likely to help, 77 %".
std::string chance_words(const WeighedChange& change);
// For a column: "77 %", "-" where nothing was compared.
std::string helps_text(const WeighedChange& change);

// What is asked, in one sentence.
std::string question_words(const WeighView& view);

// Holes on which the change shows: another club from the tee, or strokes that can be seen in two decimals.
bool shows(const HoleGain& hole);

// How many holes of all courses the clubs that come in are hit on from the tee.
int holes_with_new_club(const WeighedChange& change);

// Why the changed bag plays a hole better or worse: what the balls from the tee find more and less of, and
// what is left. Empty when the tee shot stays the same.
std::string why_words(const HoleGain& hole, DisplayUnits units);

// The same for a column: the largest change, and how much further is left (+) or nearer (-).
std::string short_why_words(const HoleGain& hole, DisplayUnits units);

// How sure, in one sentence.
std::string sureness_words(const WeighedChange& change);

// What to do next, in one or two sentences.
std::string next_step_words(const WeighView& view, const WeighedChange& change);

// What stays at home and how little it is missed; empty where the bag was not full. One sentence.
std::string left_at_home_words(const WeighView& view, const WeighedChange& change);

// "a round of 18 holes", "a round, the mean of 2 courses".
std::string round_words(const WeighView& view);

}  // namespace landwidth
