// Builds by their length: "driver, 45 in" where a log has no column for builds.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace landwidth {

// "44.5 in", "44.5\"", "113 cm": metres. Nothing for what cannot be the length of a club (18 to 60 in).
std::optional<double> build_length(std::string_view build);

struct NamedBuild {
    std::string club;   // "driver"
    std::string build;  // "45 in", as written
};
// A name that ends in the length of a club and begins with one whose kind is known: "driver, 45 in", "Driver
// 45in", "driver 45\"". Nothing for any other ("60 deg", "Driver 10.5").
std::optional<NamedBuild> build_in_name(std::string_view club);

}  // namespace landwidth
