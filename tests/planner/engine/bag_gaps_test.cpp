#include "planner/engine/bags/bag_gaps.hpp"

#include <algorithm>
#include <cmath>

#include "geometry/error.hpp"
#include "golfer-profiles/learnt_golfer.hpp"
#include "golfer-profiles/presets.hpp"
#include "tests/catch.hpp"

namespace landwidth {
namespace {

constexpr double yd = metres_per_yard;

Club club(const char* name, ClubKind kind, double carry_yd, double sd_yd = 8.0) {
    return {.name = name,
            .kind = kind,
            .pattern =
                ShotPattern{.usual = {{carry_yd * yd, 0.0}, sd_yd * yd, 12.0 * yd, 0.0}, .run_m = 15.0 * yd}};
}

// In no order: a driver, a wide gap, two that overlap, one on trial and a putter.
Golfer golfer() {
    Golfer golfer{.name = "A. Golfer", .handicap_index = 12.0, .clubs = {}, .note = {}};
    golfer.clubs = {club("5-iron", ClubKind::iron, 170),          club("driver", ClubKind::driver, 220, 12),
                    club("4-iron", ClubKind::iron, 173),          club("mini", ClubKind::mini_driver, 197),
                    {.name = "putter", .kind = ClubKind::putter}, club("8-iron", ClubKind::iron, 140)};
    golfer.clubs[3].in_bag = false;
    return golfer;
}

}  // namespace

TEST_CASE("clubs stand in order of carry, without the putter and those on trial; gaps by hand") {
    const Golfer who = golfer();
    const BagGaps gaps = bag_gaps(who, default_assumptions());
    REQUIRE(gaps.clubs.size() == 4);
    const std::vector<std::size_t> order{1, 2, 0, 5};
    for (std::size_t i = 0; i < order.size(); ++i) {
        REQUIRE(gaps.clubs[i].club == order[i]);
        const CarriedClub& carried = gaps.clubs[i];
        REQUIRE(carried.carry_90_m.low < carried.carry_m);
        REQUIRE(carried.carry_90_m.high > carried.carry_m);
        REQUIRE(std::abs(carried.total_m - carried.carry_m - 15.0 * yd) < 1e-9);
        REQUIRE(carried.descent_rad > 0.3);
        REQUIRE(carried.descent_rad < 1.2);
        REQUIRE(carried.shots == 0);
    }
    REQUIRE(gaps.gaps.size() == 3);
    const double by_hand[] = {47.0, 3.0, 30.0};
    const GapStanding standing[] = {GapStanding::wide, GapStanding::overlap, GapStanding::wide};
    for (std::size_t i = 0; i < 3; ++i) {
        CAPTURE(i);
        REQUIRE(std::abs(gaps.gaps[i].gap_m / yd - by_hand[i]) < 1e-9);
        REQUIRE(gaps.gaps[i].standing == standing[i]);
        REQUIRE(gaps.gaps[i].gap_90_m.low <= gaps.gaps[i].gap_m);
        REQUIRE(gaps.gaps[i].gap_90_m.high >= gaps.gaps[i].gap_m);
        REQUIRE(gaps.gaps[i].sure > 0.0);
        REQUIRE(gaps.gaps[i].sure <= 1.0);
    }
    REQUIRE_FALSE(gaps.warnings.empty());
}

TEST_CASE("the slot behind the driver: its middle, what fills it, and where other clubs would stand") {
    const Golfer who = golfer();
    const BagGaps gaps = bag_gaps(who, default_assumptions());
    REQUIRE(gaps.slot);
    const TeeSlot& slot = *gaps.slot;
    REQUIRE(slot.driver == 0);
    REQUIRE(slot.next == 1);
    REQUIRE(slot.has_room);
    REQUIRE(std::abs(slot.carry_m / yd - 196.5) < 1e-9);
    REQUIRE(std::abs(slot.total_m / yd - 211.5) < 1e-9);
    // A quarter of 47 yd from either end.
    REQUIRE(std::abs(slot.fills_m.low / yd - 184.75) < 1e-9);
    REQUIRE(std::abs(slot.fills_m.high / yd - 208.25) < 1e-9);
    const auto mini =
        std::ranges::find_if(slot.candidates, [](const SlotCandidate& c) { return c.on_trial; });
    REQUIRE(mini != slot.candidates.end());
    REQUIRE(mini->club.name == "mini");
    REQUIRE(mini->place == SlotPlace::fills);
    REQUIRE(slot.candidates.size() == 7);
    REQUIRE(std::ranges::is_sorted(slot.candidates, std::ranges::greater{}, &SlotCandidate::carry_m));
    for (const SlotCandidate& candidate : slot.candidates)
        REQUIRE((candidate.place == SlotPlace::fills) ==
                (candidate.carry_m >= slot.fills_m.low && candidate.carry_m <= slot.fills_m.high));
}

TEST_CASE("a club close behind the driver has taken the slot; without a driver there is none") {
    Golfer who = golfer();
    who.clubs[3].in_bag = true;
    who.clubs[3].pattern->usual.centre.carry_m = 209 * yd;
    const BagGaps taken = bag_gaps(who, default_assumptions());
    REQUIRE(taken.slot);
    REQUIRE_FALSE(taken.slot->has_room);
    REQUIRE(who.clubs[taken.clubs[taken.slot->next].club].name == "mini");

    who.clubs[1].in_bag = false;
    REQUIRE_FALSE(bag_gaps(who, default_assumptions()).slot);
    Golfer alone = golfer();
    for (Club& other : alone.clubs)
        other.in_bag = other.kind == ClubKind::driver;
    REQUIRE_FALSE(bag_gaps(alone, default_assumptions()).slot);
    REQUIRE(bag_gaps(alone, default_assumptions()).gaps.empty());
    for (Club& other : alone.clubs)
        other.in_bag = other.kind == ClubKind::putter;
    REQUIRE_THROWS_AS(bag_gaps(alone, default_assumptions()), InputError);
}

TEST_CASE("a drive beyond every preset has gaps, and no typical clubs") {
    Golfer who = golfer();
    who.clubs[1].pattern->usual.centre.carry_m = 375 * yd;
    const BagGaps gaps = bag_gaps(who, default_assumptions());
    REQUIRE(gaps.slot);
    REQUIRE(gaps.slot->candidates.size() == 1);
    REQUIRE(gaps.slot->candidates.front().on_trial);
}

TEST_CASE("the limits are assumptions that can be changed; the same golfer gives the same gaps") {
    const Golfer who = golfer();
    Assumptions strict = default_assumptions();
    override_assumption(strict, "gap_wide=40");
    override_assumption(strict, "gap_overlap=0.5");
    const BagGaps gaps = bag_gaps(who, strict);
    REQUIRE(gaps.gaps[0].standing == GapStanding::wide);
    REQUIRE(gaps.gaps[1].standing == GapStanding::even);
    REQUIRE(gaps.gaps[2].standing == GapStanding::even);
    const BagGaps again = bag_gaps(who, strict);
    for (std::size_t i = 0; i < gaps.gaps.size(); ++i) {
        REQUIRE(gaps.gaps[i].sure == again.gaps[i].sure);
        REQUIRE(gaps.gaps[i].gap_90_m.low == again.gaps[i].gap_90_m.low);
    }
}

TEST_CASE("recorded shots make the interval of a carry narrower") {
    Golfer who = golfer();
    const double before = [&] {
        const Range open = bag_gaps(who, default_assumptions()).clubs[0].carry_90_m;
        return open.high - open.low;
    }();
    Club& driver = who.clubs[1];
    driver.learnt_from = LearntFrom{*driver.pattern, {}};
    for (int i = 0; i < 60; ++i)
        driver.learnt_from->shots.push_back(
            {(220.0 + 12.0 * std::sin(1.7 * i)) * yd, 12.0 * yd * std::cos(2.3 * i)});
    driver.pattern->shots = 60;
    const BagGaps gaps = bag_gaps(who, default_assumptions());
    REQUIRE(gaps.clubs[0].shots == 60);
    REQUIRE(gaps.clubs[0].carry_90_m.high - gaps.clubs[0].carry_90_m.low < 0.5 * before);
}

}  // namespace landwidth
