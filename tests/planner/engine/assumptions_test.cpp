#include "planner/engine/assumptions.hpp"

#include <algorithm>
#include <set>

#include "geometry/error.hpp"
#include "geometry/units.hpp"
#include "tests/catch.hpp"

using namespace landwidth;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

TEST_CASE("every assumption has a name of its own, a unit, a meaning and a source", "[assumptions]") {
    std::set<std::string> names;
    for (const AssumptionEntry& entry : list_assumptions(default_assumptions())) {
        CHECK(names.insert(entry.name).second);
        CHECK_FALSE(entry.unit.empty());
        CHECK_FALSE(entry.meaning.empty());
        CHECK_FALSE(entry.source.empty());
        CHECK_FALSE(entry.overridden);
    }
    CHECK(names.count("trees_lost_share") == 1);
}

TEST_CASE("an override is in the unit listed and is told from the default", "[assumptions]") {
    Assumptions assumptions = default_assumptions();
    override_assumption(assumptions, "hole_margin=150");
    CHECK_THAT(assumptions.map.hole_margin_m, WithinAbs(Yards{150}.metres(), 1e-12));
    const auto entries = list_assumptions(assumptions);
    const auto entry = std::ranges::find(entries, "hole_margin", &AssumptionEntry::name);
    REQUIRE(entry != entries.end());
    CHECK(entry->overridden);
    CHECK_THAT(entry->value, WithinAbs(150.0, 1e-9));
    CHECK(std::ranges::count(entries, true, &AssumptionEntry::overridden) == 1);
}

TEST_CASE("a wrong override says what is wrong", "[assumptions]") {
    Assumptions assumptions = default_assumptions();
    CHECK_THROWS_WITH(override_assumption(assumptions, "tree_lost_share=0.1"), Contains("trees_lost_share"));
    CHECK_THROWS_WITH(override_assumption(assumptions, "trees_lost_share"), Contains("name=value"));
    CHECK_THROWS_WITH(override_assumption(assumptions, "trees_lost_share=much"), Contains("not a number"));
    CHECK_THROWS_WITH(override_assumption(assumptions, "trees_lost_share=nan"), Contains("not a number"));
    CHECK_THROWS_WITH(override_assumption(assumptions, "trees_lost_share=1.5"), Contains("from 0 to 1"));
    CHECK_THROWS_AS(override_assumption(assumptions, "=1"), UsageError);
}
