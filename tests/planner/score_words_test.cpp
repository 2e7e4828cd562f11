// Scores, aims and losses as reports say them.
#include "planner/reports/score_words.hpp"

#include "tests/catch.hpp"
#include "tests/planner/plan_fixture.hpp"

using namespace landwidth;
using Catch::Matchers::WithinAbs;

TEST_CASE("scores have names relative to par, and strokes", "[scores]") {
    CHECK(score_name(ScoreToPar::eagle_or_better) == "eagle or better");
    CHECK(score_name(ScoreToPar::par) == "par");
    CHECK(score_name(ScoreToPar::triple_bogey_or_worse) == "triple bogey or worse");
    CHECK(score_strokes(ScoreToPar::eagle_or_better, 5) == "≤3");
    CHECK(score_strokes(ScoreToPar::eagle_or_better, 3) == "1");
    CHECK(score_strokes(ScoreToPar::birdie, 4) == "3");
    CHECK(score_strokes(ScoreToPar::double_bogey, 3) == "5");
    CHECK(score_strokes(ScoreToPar::triple_bogey_or_worse, 4) == "≥7");
}

TEST_CASE("shares of scores to par take in both open ends and add to 1", "[scores]") {
    // 1, 2, 3, ... 9 or more strokes.
    const ScoreDistribution scores{{0.0, 0.01, 0.02, 0.10, 0.30, 0.25, 0.15, 0.09, 0.05, 0.03}};
    CHECK_THAT(share_of(scores, ScoreToPar::eagle_or_better, 4), WithinAbs(0.03, 1e-12));
    CHECK_THAT(share_of(scores, ScoreToPar::birdie, 4), WithinAbs(0.10, 1e-12));
    CHECK_THAT(share_of(scores, ScoreToPar::double_bogey, 4), WithinAbs(0.15, 1e-12));
    CHECK_THAT(share_of(scores, ScoreToPar::triple_bogey_or_worse, 4), WithinAbs(0.17, 1e-12));
    for (const int par : {3, 4, 5}) {
        double sum = 0.0;
        for (const ScoreToPar score : all_scores_to_par)
            sum += share_of(scores, score, par);
        CHECK_THAT(sum, WithinAbs(1.0, 1e-12));
    }
}

TEST_CASE("the strokes that a share of the rounds stays within", "[scores]") {
    CHECK(strokes_within({}, 0.5) == 0);
    CHECK(strokes_within({{0.0, 0.0, 0.0, 1.0}}, 0.1) == 3);
    CHECK(strokes_within({{0.0, 0.0, 0.0, 1.0}}, 1.0) == 3);
    const ScoreDistribution scores{{0.0, 0.1, 0.4, 0.4, 0.1}};
    CHECK(strokes_within(scores, 0.1) == 1);
    CHECK(strokes_within(scores, 0.11) == 2);
    CHECK(strokes_within(scores, 0.5) == 2);
    CHECK(strokes_within(scores, 0.9) == 3);
    CHECK(strokes_within(scores, 1.0) == 4);
}

TEST_CASE("the round's spread is one sentence", "[scores]") {
    CHECK(round_score_words(fixture::two_holes().plan).empty());
    // Worked by hand: shares up to 6, 7, 8, 9, 10 strokes are .1163, .3612, .6595, .865, .9587.
    CHECK(round_score_words(fixture::own_field().plan) ==
          "Of ten such rounds one takes 6 strokes or fewer, five take 8 or fewer and nine 10 or fewer "
          "(standard deviation 1.4, the holes taken as independent).");
}

TEST_CASE("values and losses are in the units of the aim", "[scores]") {
    CHECK(aim_value_text(AimFor::strokes, 4.614) == "4.61");
    CHECK(aim_value_text(AimFor::stableford, 1.96) == "1.96");
    CHECK(aim_value_text(AimFor::par_or_better, 0.4251) == "42.5 %");
    CHECK(round_value_text(AimFor::stableford, 34.14, 1) == "34.1");
    CHECK(round_value_text(AimFor::par_or_better, 7.65, 2) == "7.65 holes");

    CHECK(loss_change_text(AimFor::strokes, 0.08) == "+0.08");
    CHECK(loss_change_text(AimFor::stableford, 0.05) == "-0.05");
    CHECK(loss_change_text(AimFor::par_or_better, 0.021) == "-2.1 %");
    for (const AimFor aim : {AimFor::strokes, AimFor::stableford, AimFor::par_or_better})
        CHECK(loss_change_text(aim, 0.0).starts_with("+0.0"));

    CHECK(loss_size_text(AimFor::strokes, 0.08) == "0.08");
    CHECK(loss_size_text(AimFor::stableford, 0.004) == "<0.01");
    CHECK(loss_size_text(AimFor::par_or_better, 0.021) == "2.1 %");
    CHECK(loss_size_text(AimFor::par_or_better, 0.0004) == "<0.1 %");

    CHECK(loss_words(AimFor::strokes, 0.08) == "0.08 more");
    CHECK(loss_words(AimFor::strokes, 0.001) == "less than 0.01 more");
    CHECK(loss_words(AimFor::stableford, 0.05) == "0.05 points");
    CHECK(loss_words(AimFor::par_or_better, 0.021) == "par or better on 2.1 % of the holes");
}

TEST_CASE("a loss is positive whichever way the aim counts", "[scores]") {
    const auto strokes = fixture::own_field().plan.holes[0].choices;
    CHECK_THAT(loss(AimFor::strokes, strokes[1], strokes[0]), WithinAbs(0.08, 1e-12));
    const auto points = fixture::own_field_for_points().plan.holes[0].choices;
    CHECK_THAT(loss(AimFor::stableford, points[1], points[0]), WithinAbs(0.11, 1e-12));
    const auto par = fixture::own_field_for_par().plan.holes[0].choices;
    CHECK_THAT(loss(AimFor::par_or_better, par[1], par[0]), WithinAbs(0.021, 1e-12));
}
