#include "planner/reports/score_words.hpp"

#include <fmt/format.h>

#include <cmath>
#include <limits>

namespace landwidth {
namespace {

// What rounds to nothing is said to be less than the smallest number shown.
constexpr double smallest_strokes = 0.005;
constexpr double smallest_share = 0.0005;

int strokes_of(ScoreToPar score, int par) {
    return par - 2 + static_cast<int>(score);
}

}  // namespace

std::string_view score_name(ScoreToPar score) {
    switch (score) {
        case ScoreToPar::eagle_or_better:
            return "eagle or better";
        case ScoreToPar::birdie:
            return "birdie";
        case ScoreToPar::par:
            return "par";
        case ScoreToPar::bogey:
            return "bogey";
        case ScoreToPar::double_bogey:
            return "double bogey";
        case ScoreToPar::triple_bogey_or_worse:
            return "triple bogey or worse";
    }
    return "";
}

std::string score_strokes(ScoreToPar score, int par) {
    const int strokes = strokes_of(score, par);
    if (score == ScoreToPar::triple_bogey_or_worse) return fmt::format("≥{}", strokes);
    if (score == ScoreToPar::eagle_or_better && strokes > 1) return fmt::format("≤{}", strokes);
    return fmt::format("{}", strokes);
}

double share_of(const ScoreDistribution& scores, ScoreToPar score, int par) {
    const int strokes = strokes_of(score, par);
    if (score == ScoreToPar::eagle_or_better) return scores.between(0, strokes);
    if (score == ScoreToPar::triple_bogey_or_worse) {
        return scores.between(strokes, std::numeric_limits<int>::max());
    }
    return scores.between(strokes, strokes);
}

int strokes_within(const ScoreDistribution& scores, double share) {
    // Sums of shares fall short of 1 by rounding.
    constexpr double rounding = 1e-9;
    double sum = 0.0;
    for (std::size_t n = 0; n < scores.shares.size(); ++n) {
        sum += scores.shares[n];
        if (sum >= share - rounding) return static_cast<int>(n);
    }
    return scores.empty() ? 0 : static_cast<int>(scores.shares.size()) - 1;
}

std::string round_score_words(const RoundPlan& plan) {
    if (plan.score.empty()) return {};
    return fmt::format(
        "Of ten such rounds one takes {} strokes or fewer, five take {} or fewer and nine {} or fewer "
        "(standard deviation {:.1f}, the holes taken as independent).",
        strokes_within(plan.score, 0.1), strokes_within(plan.score, 0.5), strokes_within(plan.score, 0.9),
        std::sqrt(plan.score.variance()));
}

std::string_view aim_heading(AimFor aim) {
    switch (aim) {
        case AimFor::strokes:
            break;
        case AimFor::stableford:
            return "Points";
        case AimFor::par_or_better:
            return "Par or better";
    }
    return "Strokes";
}

std::string aim_value_text(AimFor aim, double value) {
    return aim == AimFor::par_or_better ? fmt::format("{:.1f} %", 100.0 * value)
                                        : fmt::format("{:.2f}", value);
}

std::string round_value_text(AimFor aim, double value, int decimals) {
    return fmt::format("{:.{}f}{}", value, decimals, aim == AimFor::par_or_better ? " holes" : "");
}

double loss(AimFor aim, const TeeChoice& choice, const TeeChoice& best) {
    return aim == AimFor::strokes ? choice.expected_strokes - best.expected_strokes
                                  : best.aim_value - choice.aim_value;
}

std::string loss_change_text(AimFor aim, double loss) {
    // Adding 0 turns -0 into 0.
    if (aim == AimFor::par_or_better)
        return fmt::format("{:+.1f} %", std::round(-1000.0 * loss) / 10.0 + 0.0);
    const double change = aim == AimFor::strokes ? loss : -loss;
    return fmt::format("{:+.2f}", std::round(100.0 * change) / 100.0 + 0.0);
}

std::string loss_size_text(AimFor aim, double loss) {
    if (aim == AimFor::par_or_better) {
        return loss < smallest_share ? std::string("<0.1 %") : fmt::format("{:.1f} %", 100.0 * loss);
    }
    return loss < smallest_strokes ? std::string("<0.01") : fmt::format("{:.2f}", loss);
}

std::string loss_words(AimFor aim, double loss) {
    switch (aim) {
        case AimFor::strokes:
            break;
        case AimFor::stableford:
            return loss < smallest_strokes ? "less than 0.01 points" : fmt::format("{:.2f} points", loss);
        case AimFor::par_or_better:
            return fmt::format("par or better on {} of the holes",
                               loss < smallest_share ? std::string("less than 0.1 %")
                                                     : fmt::format("{:.1f} %", 100.0 * loss));
    }
    return loss < smallest_strokes ? "less than 0.01 more" : fmt::format("{:.2f} more", loss);
}

std::string field_words(FieldKind field) {
    return field == FieldKind::personal ? "valued for this golfer's own clubs, shot by shot to the hole"
                                        : "the published tour table, adjusted to the handicap";
}

}  // namespace landwidth
