// The two tables that say what a tag means.
#include <set>
#include <string>

#include "courses/tags/vocabulary.hpp"
#include "tests/catch.hpp"

using namespace landwidth;

TEST_CASE("Every row of the table of tags is what that tag alone is read as", "[roles]") {
    REQUIRE_FALSE(tag_meanings().empty());
    for (const TagMeaning& tag : tag_meanings()) {
        const bool any = tag.value == any_value;
        const Tags tags{{std::string(tag.key), any ? "of_no_row" : std::string(tag.value)}};
        INFO(tag.key << "=" << tag.value);
        CHECK(role_of(tags) == tag.role);
        CHECK(FeatureTags(tags).role() == tag.role);
    }
    CHECK(role_of_tag("natural", "of_no_row") == Role::none);
    CHECK(role_of_tag("golf", "") == Role::none);
}

TEST_CASE("A tag stands in the table once, before the row for any other value", "[roles]") {
    std::set<std::pair<std::string_view, std::string_view>> seen;
    for (const TagMeaning& tag : tag_meanings()) {
        INFO(tag.key << "=" << tag.value);
        CHECK_FALSE(seen.contains({tag.key, any_value}));
        CHECK(seen.emplace(tag.key, tag.value).second);
    }
}

TEST_CASE("Every role is reached by a tag, but for those that take two", "[roles]") {
    std::set<Role> reached{Role::none, Role::yellow_penalty_area, Role::other_sport};
    for (const TagMeaning& tag : tag_meanings())
        reached.insert(tag.role);
    std::set<std::string_view> names;
    for (const RoleMeaning& meaning : role_meanings()) {
        INFO(meaning.name);
        CHECK(reached.contains(meaning.role));
        CHECK(names.insert(meaning.name).second);
        CHECK(&meaning_of(meaning.role) == &meaning);
        // Golf ground is drawn for golf, and only that.
        if (meaning.lie) CHECK(meaning.golf == (meaning.evidence == Evidence::golf_area));
        CHECK(form_of(meaning.role, {}) != Form::line_or_area);
    }
    CHECK(form_of(Role::road, {{"area", "yes"}}) == Form::area);
    CHECK(form_of(Role::road, {}) == Form::line);
}

TEST_CASE("A feature given other tags has another role", "[roles]") {
    MapFeature feature{"way/1", "lines", "a.osm", Tags{{"golf", "green"}}, LonLat{}};
    CHECK(feature.role() == Role::green);
    feature.tags = Tags{{"natural", "wood"}};
    CHECK(feature.role() == Role::trees);
}
