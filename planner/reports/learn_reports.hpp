// The forms of what was learnt from recorded shots: club by club the recorded shots by themselves beside what
// the model makes of them and why the two differ, then what was known before, what was taken for a mishit.
#pragma once

#include <string>
#include <vector>

#include "golfer-profiles/learnt_golfer.hpp"
#include "planner/engine/assumptions.hpp"
#include "planner/reports/document.hpp"
#include "planner/reports/plan_view.hpp"

namespace landwidth {

struct LearnView {
    const LearntGolfer& learnt;
    const std::vector<NamedLog>& logs;
    DisplayUnits units = DisplayUnits::yards;
    const Assumptions& assumptions;
    std::vector<std::string> warnings = {};  // of the logs and of learning
    // Text and page end with warnings and cautions. A summary that a terminal shows beside the warnings does
    // without.
    bool stands_alone = true;
};

// What text and page say. `picture` is HTML for the page.
Document learn_document(const LearnView& view, std::string picture = {});

std::string learn_text(const LearnView& view);

// The same as a page, with the shots of every club drawn behind its pattern.
std::string learn_html(const LearnView& view);

// One object, "landwidth-learning/1": lengths in the units of the view with the unit in the name, 90 %
// intervals as [low, high].
std::string learn_json(const LearnView& view);

}  // namespace landwidth
