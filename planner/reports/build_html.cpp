#include "planner/reports/build_document.hpp"
#include "planner/reports/build_picture.hpp"
#include "planner/reports/page_parts.hpp"

namespace landwidth {
namespace {

constexpr std::string_view build_style = R"css(
.build { width: auto; }
.build th, .build td { padding-right: 1rem; }
.assumptions { font-size: .85rem; }
@media (max-width: 44rem) {
  .build { font-size: .85rem; }
  .build th, .build td { padding-right: .5rem; }
}
)css";

}  // namespace

std::string build_html(const BuildView& view) {
    std::string style(build_style);
    style += build_picture_style();
    return document_html(build_document(view, view.parts ? build_picture(*view.parts) : std::string()), style,
                         details("Assumptions", assumptions_table(view.assumptions)));
}

}  // namespace landwidth
