// A change of club build as a document: what text and page say.
#pragma once

#include <string>

#include "planner/reports/build_reports.hpp"
#include "planner/reports/document.hpp"

namespace landwidth {

// `picture` is HTML for the page, drawn beside the parts where they are known.
Document build_document(const BuildView& view, std::string picture = {});

}  // namespace landwidth
