#include "planner/reports/score_bars.hpp"

#include <fmt/format.h>

#include "planner/reports/html_table.hpp"
#include "planner/reports/html_text.hpp"
#include "planner/reports/score_words.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

// The full breadth is 100 %, on every hole: bars of two holes compare.
std::string bar(double share) {
    return fmt::format(
        "<svg class=\"share-bar\" viewBox=\"0 0 100 10\" preserveAspectRatio=\"none\" "
        "aria-hidden=\"true\"><rect width=\"{:.1f}\" height=\"10\"/></svg>",
        100.0 * share);
}

}  // namespace

std::string score_bars(const ScoreDistribution& scores, int par) {
    if (scores.empty()) return {};
    HtmlTable table("scores", {{"Score"}, {"Strokes"}, {"How often"}});
    for (const ScoreToPar score : all_scores_to_par) {
        const double share = share_of(scores, score, par);
        table.add_row({std::string(score_name(score)), score_strokes(score, par),
                       fmt::format("<span>{}</span>{}", sentence(share_text(share)), bar(share))},
                      score == ScoreToPar::par ? "at-par" : "");
    }
    return table.html();
}

}  // namespace landwidth
