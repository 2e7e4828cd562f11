// Catch2, version 2 or 3. Use what both have: REQUIRE_THAT(x, Catch::Matchers::WithinAbs(y, margin)) and not
// Approx, which the two keep in different namespaces.
#pragma once

#if __has_include(<catch2/catch_all.hpp>)
#include <catch2/catch_all.hpp>
#else
#include <catch2/catch.hpp>
#endif
