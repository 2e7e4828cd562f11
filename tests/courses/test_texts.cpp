// What mappers type into tags: names, lists, numbers of holes, widths, packed strings.
#include "courses/assembly/hole_refs.hpp"
#include "courses/reading/tag_reading.hpp"
#include "courses/tags/vocabulary.hpp"
#include "courses/text.hpp"
#include "tests/catch.hpp"
#include "tests/courses/map_builder.hpp"

using namespace landwidth;
using Strings = std::vector<std::string>;

TEST_CASE("folding compares names without regard to case", "[texts]") {
    REQUIRE(folded("").empty());
    REQUIRE(folded("   ").empty());
    REQUIRE(folded("  Old \t COURSE ") == "old course");
    REQUIRE(folded("ÅRØSUND") == folded("årøsund"));
    REQUIRE(folded("ŽĎÁR") == folded("žďár"));
    REQUIRE(folded("ΛΙΝΚΣ") == folded("λινκσ"));
    REQUIRE(folded("ГОЛЬФ Ё") == folded("гольф ё"));
    REQUIRE(folded("高尔夫") == "高尔夫");
    REQUIRE(folded("\xC3") == "\xC3");    // cut off in a letter
    REQUIRE(folded("\xC3(") == "\xC3(");  // no UTF-8
    REQUIRE(folded("a×b") == "a×b");      // among letters but none
}

TEST_CASE("lists, numbers and enumerations", "[texts]") {
    REQUIRE(list_items("").empty());
    REQUIRE(list_items(" ; ;").empty());
    REQUIRE(list_items("white; blue;") == Strings{"white", "blue"});
    REQUIRE(number_in(" 4.5 ") == 4.5);
    REQUIRE(number_in("+4") == 4.0);
    REQUIRE_FALSE(number_in("4 m"));
    REQUIRE_FALSE(number_in("nan"));
    REQUIRE_FALSE(number_in("1e999"));
    REQUIRE_FALSE(number_in(""));
    REQUIRE(whole_number_in("4.0") == 4);
    REQUIRE_FALSE(whole_number_in("4.5"));
    REQUIRE(enumeration({}).empty());
    REQUIRE(enumeration({"a"}) == "a");
    REQUIRE(enumeration({"a", "b", "c"}) == "a, b and c");
    REQUIRE(enumeration({"a", "b", "c", "d"}, 2) == "a, b and 2 more");
}

TEST_CASE("numbers of holes as typed", "[texts]") {
    for (const char* text : {"1", "01", " 1 ", "Hole 1", "hole #1", "No. 1", "#1", "H1", "1st", "1."})
        REQUIRE(plain_ref(text) == "1");
    REQUIRE(plain_ref("7A") == "7a");
    REQUIRE(plain_ref("18") == "18");
    REQUIRE(plain_ref("abc") == "abc");
    REQUIRE(plain_ref("A1") == "A1");
    REQUIRE(plain_ref("Hole") == "Hole");
    REQUIRE(plain_ref("99999999999999999999") == "99999999999999999999");
    REQUIRE(refs_in("").empty());
    REQUIRE(refs_in("1;10") == Strings{"1", "10"});
    REQUIRE(refs_in("1/10") == Strings{"1", "10"});
    REQUIRE(refs_in("01, 10") == Strings{"1", "10"});
    REQUIRE(refs_in("4;4") == Strings{"4"});
    REQUIRE(refs_in("Red; Blue") == Strings{"Red; Blue"});
    REQUIRE(number_of_ref("7b") == 7);
    REQUIRE_FALSE(number_of_ref("b7"));
}

TEST_CASE("widths with and without units", "[texts]") {
    const auto metres = [](const char* text) { return length_in_metres(text).value_or(-1.0); };
    const auto near = [](double value) { return Catch::Matchers::WithinAbs(value, 1e-9); };
    for (const char* text : {"3", "3 m", "3m", "3.0 metres", "~3", "3,0 m", "300 cm"})
        REQUIRE_THAT(metres(text), near(3.0));
    // By definition: a foot is 0.3048 m, an inch 0.0254 m.
    REQUIRE_THAT(metres("10'"), near(3.048));
    REQUIRE_THAT(metres("6 ft"), near(1.8288));
    REQUIRE_THAT(metres("10'6\""), near(3.048 + 6 * 0.0254));
    REQUIRE_THAT(metres("10 ft 6 in"), near(3.048 + 6 * 0.0254));
    REQUIRE_THAT(metres("2 yd"), near(1.8288));
    for (const char* text : {"", "narrow", "0", "-2", "2-3", "nan", "1e9", "m", "'", "3 km"})
        REQUIRE_FALSE(length_in_metres(text));

    REQUIRE(tagged_width({{"width", "2"}, {"est_width", "5"}}).metres == 2.0);
    REQUIRE(tagged_width({{"est_width", "5"}}).metres == 5.0);
    REQUIRE(tagged_width({{"width", "wide"}, {"est_width", "5"}}).metres == 5.0);
    REQUIRE(tagged_width({{"width", "wide"}}).unreadable == "width=wide");
    REQUIRE_FALSE(tagged_width({}).metres);

    const MapAssumptions& a = test::assumptions();
    REQUIRE(assumed_width({{"waterway", "stream"}}, a) == a.stream_width_m);
    REQUIRE(assumed_width({{"waterway", "Ditch"}}, a) == a.ditch_width_m);
    REQUIRE(assumed_width({{"waterway", "drain"}}, a) == a.ditch_width_m);
    REQUIRE(assumed_width({{"waterway", "river"}}, a) == a.river_width_m);
    REQUIRE(assumed_width({{"waterway", "canal"}}, a) == a.river_width_m);
    REQUIRE(assumed_width({}, a) == a.stream_width_m);
}

TEST_CASE("tags packed in a string", "[texts]") {
    Tags tags{{"golf", "green"}};
    REQUIRE(add_packed_tags("", tags));
    REQUIRE(add_packed_tags(R"("golf"=>"tee","Tee"=>"white;blue", "name"=>"A \"B\" \\ C","x"=>NULL)", tags));
    REQUIRE(tags == Tags{{"golf", "green"}, {"tee", "white;blue"}, {"name", "A \"B\" \\ C"}});

    Tags json;
    REQUIRE(add_packed_tags(R"({"golf":"hole","par":4,"lit":true,"list":["a","b"],"none":null})", json));
    REQUIRE(json == Tags{{"golf", "hole"}, {"par", "4"}, {"lit", "yes"}, {"list", "a;b"}, {"none", ""}});

    // Cut off: what came before counts.
    Tags cut;
    REQUIRE_FALSE(add_packed_tags(R"("golf"=>"tee","tee"=>"whi)", cut));
    REQUIRE(cut == Tags{{"golf", "tee"}});
    for (const char* text :
         {"\"golf\"=>", "\"golf\"", "golf", "\"golf\"=>\"tee\" \"x\"", "{\"golf\":", "{", "[]", "=>"})
        REQUIRE_FALSE(add_packed_tags(text, cut));
}

TEST_CASE("field names are led back to keys", "[texts]") {
    for (const char* field :
         {"golf:course:name", "GOLF_COURSE_NAME", "golf_cours", "golf:cours", "golf:cou_1"})
        REQUIRE(tag_key(field, "Skerrymoor") == "golf:course:name");
    REQUIRE(tag_key("golf_cours", "18_hole") == "golf:course");
    REQUIRE(tag_key("golf_course", "Skerrymoor") == "golf:course");
    REQUIRE(tag_key("Golf", "green") == "golf");
    REQUIRE(tag_key("intermitte", "yes") == "intermittent");
}

TEST_CASE("the vocabulary", "[texts]") {
    const auto role = [](const Tags& tags) { return role_of(tags); };
    REQUIRE(role({}) == Role::none);
    REQUIRE(role({{"golf", "hole"}}) == Role::hole);
    REQUIRE(role({{"golf", "Green"}}) == Role::green);
    REQUIRE(role({{"golf", "water_hazard"}, {"natural", "water"}}) == Role::yellow_penalty_area);
    REQUIRE(role({{"golf", "lateral_water_hazard"}, {"natural", "water"}}) == Role::red_penalty_area);
    REQUIRE(role({{"golf", "bunker"}, {"natural", "sand"}}) == Role::bunker);
    REQUIRE(role({{"golf", "rough"}, {"natural", "wood"}}) == Role::trees);
    REQUIRE(role({{"golf", "cartpath"}, {"highway", "service"}}) == Role::path);
    REQUIRE(role({{"golf", "fringe"}}) == Role::other_golf);
    REQUIRE(role({{"golf", "no"}}) == Role::none);
    REQUIRE(role({{"leisure", "golf_course"}}) == Role::boundary);
    REQUIRE(role({{"leisure", "golf_course"}, {"golf:course", "driving_range"}}) == Role::driving_range);
    REQUIRE(role({{"leisure", "park"}}) == Role::none);
    REQUIRE(role({{"natural", "scrub"}}) == Role::trees);
    REQUIRE(role({{"landuse", "forest"}}) == Role::trees);
    REQUIRE(role({{"landuse", "reservoir"}}) == Role::water);
    REQUIRE(role({{"waterway", "ditch"}}) == Role::watercourse);
    REQUIRE(role({{"waterway", "weir"}}) == Role::none);
    REQUIRE(role({{"highway", "residential"}}) == Role::road);
    REQUIRE(role({{"highway", "footway"}}) == Role::path);
    REQUIRE(role({{"highway", "proposed"}}) == Role::none);
    REQUIRE(role({{"building", "no"}}) == Role::none);
    REQUIRE(role({{"building", "house"}}) == Role::building);
    // Other games and courses out of use.
    REQUIRE(role({{"golf", "hole"}, {"sport", "disc_golf"}}) == Role::other_sport);
    REQUIRE(role({{"golf", "hole"}, {"sport", "golf;disc_golf"}}) == Role::hole);
    REQUIRE(role({{"golf", "green"}, {"disused", "yes"}}) == Role::other_sport);
    REQUIRE(role({{"disc_golf", "hole"}}) == Role::none);
    // A pond stays a pond, whichever game it was tagged for.
    REQUIRE(role({{"natural", "water"}, {"sport", "disc_golf"}}) == Role::water);
}
