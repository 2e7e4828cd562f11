// What a golfer aims for and how likely each score is, as reports say it.
#pragma once

#include <array>
#include <string>
#include <string_view>

#include "planner/reports/plan_view.hpp"

namespace landwidth {

// The names of scores, best to worst; all that is better than the first or worse than the last counts there.
enum class ScoreToPar { eagle_or_better, birdie, par, bogey, double_bogey, triple_bogey_or_worse };
inline constexpr std::array<ScoreToPar, 6> all_scores_to_par{
    ScoreToPar::eagle_or_better, ScoreToPar::birdie,       ScoreToPar::par,
    ScoreToPar::bogey,           ScoreToPar::double_bogey, ScoreToPar::triple_bogey_or_worse};

// "eagle or better", "birdie", ...
std::string_view score_name(ScoreToPar score);
// The strokes of such a score on a hole of that par: "≤3", "4", "≥8".
std::string score_strokes(ScoreToPar score, int par);
double share_of(const ScoreDistribution& scores, ScoreToPar score, int par);

// The fewest strokes that at least such a share of the rounds (or holes) stays within. `share` in (0, 1]; 0
// for an empty distribution.
int strokes_within(const ScoreDistribution& scores, double share);

// One sentence on the spread of the round's score; empty where there is no distribution.
std::string round_score_words(const RoundPlan& plan);

// The head of a column of aim values: "Strokes", "Points", "Par or better".
std::string_view aim_heading(AimFor aim);

// An aim value of a hole: "4.61", "1.83", "42.5 %".
std::string aim_value_text(AimFor aim, double value);

// An aim value of a round: "86.23", "34.10", "7.65 holes". With `decimals` as the table has them.
std::string round_value_text(AimFor aim, double value, int decimals);

// How much worse a choice is than the best one, in the units of the aim; about >= 0.
double loss(AimFor aim, const TeeChoice& choice, const TeeChoice& best);

// A loss in the direction in which the value moves: "+0.08" strokes, "-0.05" points, "-2.1 %" (of all holes).
std::string loss_change_text(AimFor aim, double loss);

// The bare size of a loss: "0.08", "0.05", "2.1 %"; "<0.01" and "<0.1 %" for what rounds to nothing.
std::string loss_size_text(AimFor aim, double loss);

// A loss as the end of a sentence that starts with "... costs": "0.08 more", "0.05 points", "par or better on
// 2.1 % of the holes".
std::string loss_words(AimFor aim, double loss);

// Which table the strokes come from, without a full stop.
std::string field_words(FieldKind field);

}  // namespace landwidth
