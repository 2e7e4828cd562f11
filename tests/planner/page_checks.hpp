// What must hold for every HTML page of the program.
#pragma once

#include <string>

namespace landwidth {

bool holds(const std::string& text, const std::string& part);

// Well-formed XML; no script, nothing fetched from elsewhere, no link out of the page.
void check_self_contained(const std::string& html);

// No identifier twice, no reference to one that is not there.
void check_identifiers(const std::string& html);

}  // namespace landwidth
