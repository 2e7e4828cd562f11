// What a change of the bag is worth: exact where it can be known beforehand, against other ways of computing
// it elsewhere.
#include "planner/engine/bags/weighing.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "geometry/error.hpp"
#include "tests/catch.hpp"
#include "tests/planner/engine/solved_hole.hpp"

using namespace landwidth;
using namespace landwidth::fixture;
using Catch::Matchers::WithinAbs;

namespace {

std::size_t number_of(const Golfer& golfer, const std::string& name) {
    const auto found = std::ranges::find(golfer.clubs, name, &Club::name);
    REQUIRE(found != golfer.clubs.end());
    return static_cast<std::size_t>(found - golfer.clubs.begin());
}

// A club on trial that is another under a new name.
Golfer with_twin(Golfer golfer, const std::string& of, const std::string& name) {
    Club twin = golfer.clubs[number_of(golfer, of)];
    twin.name = name;
    twin.in_bag = false;
    golfer.clubs.push_back(twin);
    return golfer;
}

Weighing weighed(const std::vector<HoleParts>& parts, const Golfer& golfer,
                 const std::vector<BagChange>& changes) {
    std::vector<Hole> holes;
    for (const HoleParts& hole : parts)
        holes.push_back(invented_hole(hole));
    WeighRequest request;
    request.changes = changes;
    return weigh_bags({course_of(holes)}, golfer, request);
}

Course course_with(const HoleParts& parts) {
    return course_of({invented_hole(parts)});
}

}  // namespace

TEST_CASE("a second club of the same pattern is worth nothing", "[weighing]") {
    const Golfer golfer = with_twin(uneven_golfer(), "3-wood", "another 3-wood");
    const std::size_t twin = golfer.clubs.size() - 1;
    const Weighing result = weighed({eventful_par_5(), narrow_par_4()}, golfer, {{"with it", {twin}, {}}});
    const WeighedChange& change = result.changes.front();
    // Its shots come of the same pattern; what is left is that a choice among more shots finds slightly more.
    CHECK_THAT(change.gain, WithinAbs(0.0, 0.002));
    CHECK_THAT(result.strokes - change.strokes, WithinAbs(change.gain, 1e-9));
    CHECK(result.changes.front().courses.front().holes.size() == 2);
}

TEST_CASE("a club for its twin changes nothing that is expected, and is not sure", "[weighing]") {
    const Golfer golfer = with_twin(uneven_golfer(), "driver", "another driver");
    const std::size_t twin = golfer.clubs.size() - 1;
    const Weighing result = weighed({eventful_par_5(), narrow_par_4()}, golfer, {{"swap", {twin}, {0}}});
    const WeighedChange& change = result.changes.front();
    CHECK_THAT(change.gain, WithinAbs(0.0, 0.002));
    // The twins' true patterns are open and independent: either may be the better one.
    CHECK(change.low < 0.0);
    CHECK(change.high > 0.0);
    CHECK(change.chance > 0.35);
    CHECK(change.chance < 0.65);
    CHECK_FALSE(change.settled);
    REQUIRE(change.more);
    CHECK(change.more->chance_right > 0.5);
}

TEST_CASE("strokes with the changed bag are those of a plan with that bag", "[weighing]") {
    Golfer golfer = uneven_golfer();
    const std::size_t hybrid = number_of(golfer, "hybrid");
    const std::size_t wood = number_of(golfer, "3-wood");
    golfer.clubs[hybrid].in_bag = false;
    for (const HoleParts& parts : {eventful_par_5(), narrow_par_4()}) {
        const BagChange in{"with the hybrid", {hybrid}, {}};
        const BagChange swap{"the hybrid for the 3-wood", {hybrid}, {wood}};
        const Weighing result = weighed({parts}, golfer, {in, swap});
        const auto planned = [&](const Golfer& bag) {
            return plan_round(course_with(parts), bag, PlanRequest{}).expected_strokes;
        };
        // The cells of the tee fan are larger than those of a plan: 0.0058 was measured.
        CHECK_THAT(result.strokes, WithinAbs(planned(golfer), 0.007));
        // A plan solves the hole from nothing, the comparison from what is known: the search of the field
        // differs by this.
        CHECK_THAT(result.changes[0].strokes, WithinAbs(planned(with_change(golfer, in)), 0.012));
        CHECK_THAT(result.changes[1].strokes, WithinAbs(planned(with_change(golfer, swap)), 0.012));
    }
}

TEST_CASE("a full bag leaves at home what is missed least", "[weighing]") {
    Golfer golfer = uneven_golfer();
    // Fourteen clubs: three of them are wedges like another.
    Club wedge = golfer.clubs.back();
    while (golfer.clubs.size() < most_clubs) {
        wedge.name = "wedge " + std::to_string(golfer.clubs.size());
        wedge.pattern->usual.centre.carry_m *= 0.97;
        golfer.clubs.push_back(wedge);
    }
    golfer = with_twin(golfer, "5-iron", "new iron");
    Club& added = golfer.clubs.back();
    added.pattern->usual.centre.carry_m *= 1.06;
    const std::size_t number = golfer.clubs.size() - 1;
    const Weighing result = weighed({eventful_par_5(), narrow_par_4()}, golfer, {{"with it", {number}, {}}});
    const WeighedChange& change = result.changes.front();
    REQUIRE(change.missed.size() == most_clubs);
    CHECK(std::ranges::is_sorted(change.missed, {}, &MissedClub::strokes));
    CHECK(change.missed.front().strokes < 0.02);
    REQUIRE(change.change.out.size() == 1);
    CHECK(change.change.out.front() == change.missed.front().club);
    const auto of_driver = std::ranges::find(change.missed, std::size_t{0}, &MissedClub::club);
    CHECK(of_driver->strokes > 0.05);
    CHECK(clubs_carried(with_change(golfer, change.change)) == most_clubs);
}

TEST_CASE("a change that cannot be played is refused", "[weighing]") {
    Golfer golfer = uneven_golfer();
    const auto everything = [&] {
        std::vector<std::size_t> all(golfer.clubs.size());
        std::iota(all.begin(), all.end(), std::size_t{0});
        return all;
    };
    CHECK_THROWS_AS(weighed({narrow_par_4()}, golfer, {{"without all", {}, everything()}}), UsageError);
}

TEST_CASE("the same on every run and for any order of changes", "[weighing]") {
    const Golfer golfer = with_twin(uneven_golfer(), "3-wood", "another 3-wood");
    const std::size_t twin = golfer.clubs.size() - 1;
    const BagChange add{"add", {twin}, {}};
    const BagChange drop{"drop", {}, {1}};
    const Weighing one = weighed({narrow_par_4()}, golfer, {add, drop});
    const Weighing two = weighed({narrow_par_4()}, golfer, {drop, add});
    CHECK(one.changes[0].gain == two.changes[1].gain);
    CHECK(one.changes[1].gain == two.changes[0].gain);
    CHECK(one.changes[1].low == two.changes[0].low);
    CHECK(one.changes[1].chance == two.changes[0].chance);
    CHECK(one.changes[1].gain <= 0.002);
}

TEST_CASE("a change from a baseline of its own is the difference of two changes of today's bag",
          "[weighing]") {
    Golfer golfer = with_twin(uneven_golfer(), "driver", "driver, long");
    golfer = with_twin(golfer, "driver", "driver, short");
    const std::size_t longer = golfer.clubs.size() - 2;
    const std::size_t shorter = golfer.clubs.size() - 1;
    golfer.clubs[longer].pattern->usual.centre.carry_m += 8.0;
    golfer.clubs[longer].pattern->usual.side_sd_m *= 1.15;
    golfer.clubs[shorter].pattern->usual.centre.carry_m -= 8.0;
    golfer.clubs[shorter].pattern->usual.side_sd_m *= 0.85;
    const BagChange builds{"short for long", {shorter}, {longer}, {{longer}, {0}}};
    const BagChange back{"driver for long", {0}, {longer}, {{longer}, {0}}};
    const Weighing result =
        weighed({narrow_par_4()}, golfer, {{"long", {longer}, {0}}, {"short", {shorter}, {0}}, builds, back});
    const WeighedChange& of_long = result.changes[0];
    const WeighedChange& of_short = result.changes[1];
    const WeighedChange& change = result.changes[2];
    CHECK(of_long.baseline_strokes == Approx(result.strokes).margin(1e-9));
    CHECK_THAT(change.baseline_strokes, WithinAbs(of_long.strokes, 1e-9));
    CHECK_THAT(change.strokes, WithinAbs(of_short.strokes, 1e-9));
    CHECK_THAT(change.gain, WithinAbs(of_short.gain - of_long.gain, 1e-9));
    CHECK(change.courses[0].holes[0].before.club == of_long.courses[0].holes[0].after.club);
    // Draw by draw too: the means of the draws add up as the expected gains do.
    CHECK_THAT(change.drawn_mean, WithinAbs(of_short.drawn_mean - of_long.drawn_mean, 1e-9));
    // Back to the bag of today.
    CHECK_THAT(result.changes[3].strokes, WithinAbs(result.strokes, 1e-9));
    CHECK_THAT(result.changes[3].gain, WithinAbs(-of_long.gain, 1e-9));
}

TEST_CASE("what is supposed is weighed with the draws of the club it is made of", "[weighing]") {
    Golfer golfer = with_twin(uneven_golfer(), "driver", "as it is");
    golfer = with_twin(golfer, "driver", "narrower");
    const std::size_t same = golfer.clubs.size() - 2;
    const std::size_t narrower = golfer.clubs.size() - 1;
    const Supposition narrow{.carry_spread = 0.7, .side_spread = 0.7};
    golfer.clubs[narrower] = supposed_club(golfer.clubs[0], narrow, "narrower");
    // With the driver on the tee whatever happens: another tee club's draws do not cancel.
    for (const char* name : {"3-wood", "hybrid"})
        golfer.clubs[number_of(golfer, name)].in_bag = false;
    WeighRequest request;
    request.changes = {{"same", {same}, {0}}, {"narrower", {narrower}, {0}}};
    request.supposed = {{same, 0, {}, "nothing"}, {narrower, 0, narrow, "spread -30 %"}};
    const Weighing result = weigh_bags({course_with(narrow_par_4())}, golfer, request);
    const WeighedChange& of_same = result.changes[0];
    // The field is solved anew, which moves an aim by a ray and every draw by what that ray costs: 0.0016 of
    // the gain, 0.0151 of a draw and 0.0052 of their mean were measured.
    CHECK_THAT(of_same.gain, WithinAbs(0.0, 0.002));
    CHECK(of_same.low > -0.02);
    CHECK(of_same.high < 0.02);
    CHECK_THAT(of_same.drawn_mean, WithinAbs(0.0, 0.01));
    CHECK(of_same.verdict == BagVerdict::alike);
    CHECK_FALSE(of_same.more);
    const WeighedChange& of_narrower = result.changes[1];
    REQUIRE(of_narrower.courses[0].holes[0].before.club == 0);
    CHECK(of_narrower.gain > 0.02);
    CHECK(of_narrower.drawn_mean > 0.02);
    CHECK(of_narrower.chance > 0.95);
    CHECK(of_narrower.verdict == BagVerdict::saves);
    CHECK(result.supposed.size() == 2);
}

TEST_CASE("clubs that are hit on no hole are not compared", "[weighing]") {
    Golfer golfer = with_twin(uneven_golfer(), "driver", "unlikely driver");
    const std::size_t unlikely = golfer.clubs.size() - 1;
    for (const std::size_t club : {std::size_t{0}, unlikely})
        golfer.clubs[club].pattern->usual.side_sd_m = 70.0;
    const Weighing result = weighed({narrow_par_4()}, golfer, {{"unlikely", {unlikely}, {0}}});
    const WeighedChange& change = result.changes.front();
    REQUIRE(change.courses[0].holes[0].before.club != 0);
    CHECK(change.verdict == BagVerdict::not_compared);
    CHECK_FALSE(change.more);
    CHECK(change.low == change.high);
}

TEST_CASE("a baseline that fills the bag leaves out of both bags what is missed least", "[weighing]") {
    Golfer golfer = uneven_golfer();
    Club wedge = golfer.clubs.back();
    while (golfer.clubs.size() < most_clubs) {
        wedge.name = "wedge " + std::to_string(golfer.clubs.size());
        wedge.pattern->usual.centre.carry_m *= 0.97;
        golfer.clubs.push_back(wedge);
    }
    golfer = with_twin(golfer, "5-iron", "iron, one build");
    golfer = with_twin(golfer, "5-iron", "iron, another build");
    const std::size_t one = golfer.clubs.size() - 2;
    const std::size_t other = golfer.clubs.size() - 1;
    golfer.clubs[other].pattern->usual.centre.carry_m *= 1.05;
    const Weighing result = weighed({narrow_par_4()}, golfer, {{"builds", {other}, {one}, {{one}, {}}}});
    const WeighedChange& change = result.changes.front();
    REQUIRE(change.change.before.out.size() == 1);
    CHECK(change.change.before.out.front() == change.missed.front().club);
    CHECK(change.change.out == std::vector<std::size_t>{one});
    CHECK(clubs_carried(baseline_of(golfer, change.change)) == most_clubs);
    CHECK(clubs_carried(with_change(golfer, change.change)) == most_clubs);
    // Two more at once: nobody says what stays at home.
    CHECK_THROWS_AS(weighed({narrow_par_4()}, golfer, {{"both", {one, other}, {}}}), UsageError);
}

TEST_CASE("several clubs in and out are one change, and say what nobody has hit", "[weighing]") {
    Golfer golfer = with_twin(uneven_golfer(), "driver", "short driver");
    golfer = with_twin(golfer, "3-wood", "strong 3-wood");
    const std::size_t driver = golfer.clubs.size() - 2;
    const std::size_t wood = golfer.clubs.size() - 1;
    golfer.clubs[driver].pattern->usual.side_sd_m *= 0.8;
    golfer.clubs[wood].pattern->usual.centre.carry_m *= 1.04;
    const std::size_t old_wood = number_of(golfer, "3-wood");
    for (Club& club : golfer.clubs)
        club.pattern->shots = 30;
    golfer.clubs[0].pattern->shots = 0;
    const BagChange both{"both", {driver, wood}, {0, old_wood}};
    const Weighing result = weighed({narrow_par_4(), eventful_par_5()}, golfer, {both});
    const WeighedChange& change = result.changes.front();
    Golfer then = with_change(golfer, both);
    const auto planned = [&](const HoleParts& parts) {
        return plan_round(course_with(parts), then, PlanRequest{}).expected_strokes;
    };
    CHECK_THAT(change.strokes, WithinAbs(planned(narrow_par_4()) + planned(eventful_par_5()), 0.02));
    CHECK(change.baseline_without_shots == std::vector<std::size_t>{0});
}
