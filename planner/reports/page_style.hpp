// The style sheet of the HTML report, embedded in the page: screen, narrow screen and A4 print.
#pragma once

#include <string_view>

namespace landwidth {

std::string_view page_style();

}  // namespace landwidth
