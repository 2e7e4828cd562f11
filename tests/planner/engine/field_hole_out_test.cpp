// Close to the hole: shares and means; the aims in points.
#include <algorithm>
#include <numeric>

#include "planner/engine/field/hole_out.hpp"
#include "tests/catch.hpp"
#include "tests/planner/engine/invented_hole.hpp"

using namespace landwidth;
using namespace landwidth::fixture;
using Catch::Matchers::WithinAbs;

namespace {

struct Game {
    Golfer golfer = club_golfer();
    EngineAssumptions assumptions = default_assumptions().engine;
    StrokesByDistance table;
    HoleOut hole_out;

    explicit Game(double handicap)
        : golfer(of_handicap(handicap)), table(golfer, assumptions), hole_out(table, golfer, assumptions) {}
    static Golfer of_handicap(double handicap) {
        Golfer golfer = club_golfer();
        golfer.handicap_index = handicap;
        return golfer;
    }
};

constexpr std::array handicaps{-5.0, 0.0, 8.0, 18.0, 28.0, 54.0};

double sum(const CloseShares& shares) {
    return std::accumulate(shares.begin(), shares.end(), 0.0);
}

double mean(const CloseShares& shares) {
    double strokes = 0.0;
    for (std::size_t n = 0; n < shares.size(); ++n)
        strokes += static_cast<double>(n) * shares[n];
    return strokes;
}

}  // namespace

TEST_CASE("shares of holing out are shares, and their mean is the table's", "[hole-out]") {
    for (const double handicap : handicaps) {
        const Game game(handicap);
        for (const Lie lie : {Lie::green, Lie::fairway, Lie::rough, Lie::bunker, Lie::trees})
            // Half metres: the nodes of the table. Closer than two metres off the green the table knows of
            // balls holed from there, and is below one stroke and a putt.
            for (double distance_m = lie == Lie::green ? 0.5 : 2.0; distance_m <= 27.5; distance_m += 0.5) {
                const CloseShares shares = game.hole_out.shares(lie, distance_m);
                INFO(handicap << ", " << lie_name(lie) << ", " << distance_m << " m");
                CHECK_THAT(sum(shares), WithinAbs(1.0, 1e-12));
                CHECK(std::ranges::all_of(shares, [](double share) { return share >= 0.0; }));
                CHECK(shares[0] == 0.0);
                CHECK_THAT(mean(shares), WithinAbs(game.hole_out.strokes(lie, distance_m), 1e-9));
            }
    }
}

TEST_CASE("a putt takes one stroke at the hole, and more the longer it is", "[hole-out]") {
    for (const double handicap : handicaps) {
        const Game game(handicap);
        CHECK_THAT(game.hole_out.shares(Lie::green, 0.0)[1], WithinAbs(1.0, 1e-9));
        double last = 0.0;
        for (double distance_m = 0.0; distance_m < 30.0; distance_m += 0.5) {
            const double strokes = game.hole_out.strokes(Lie::green, distance_m);
            CHECK(strokes >= last);
            last = strokes;
        }
    }
}

TEST_CASE("close is the green, and the short game's reach off it", "[hole-out]") {
    const Game game(10.0);
    CHECK(game.hole_out.is_close(Lie::green, 50.0));
    CHECK(game.hole_out.is_close(Lie::rough, yd(30, 0).x));
    CHECK_FALSE(game.hole_out.is_close(Lie::rough, yd(30.1, 0).x));
}

TEST_CASE("the cost of an aim is its mean over the shares", "[hole-out]") {
    const Game game(18.0);
    const double distance_m = yd(20, 0).x;
    CHECK(game.hole_out.cost(Lie::rough, distance_m, GolferAim(AimFor::strokes, 4, 0), 3) ==
          game.hole_out.strokes(Lie::rough, distance_m));
    const CloseShares shares = game.hole_out.shares(Lie::rough, distance_m);
    // Two used of a par 4: two more make par, three one over, one more a birdie.
    CHECK_THAT(game.hole_out.cost(Lie::rough, distance_m, GolferAim(AimFor::stableford, 4, 0), 2),
               WithinAbs(-(3.0 * shares[1] + 2.0 * shares[2] + shares[3]), 1e-12));
    CHECK_THAT(game.hole_out.cost(Lie::rough, distance_m, GolferAim(AimFor::par_or_better, 4, 0), 2),
               WithinAbs(-(shares[1] + shares[2]), 1e-12));
}

TEST_CASE("Rule 21.1b: points by the score against the target", "[golfer-aim]") {
    const GolferAim plain(AimFor::stableford, 4, 0);
    const std::array points{0.0, 5.0, 4.0, 3.0, 2.0, 1.0, 0.0, 0.0};  // a hole in one on a par 4: three under
    for (int strokes = 1; strokes < 8; ++strokes) {
        CHECK(plain.cost(strokes) == -points[static_cast<std::size_t>(strokes)]);
        CHECK(plain.value(plain.cost(strokes)) == points[static_cast<std::size_t>(strokes)]);
        CHECK(GolferAim(AimFor::stableford, 4, 1).cost(strokes + 1) == plain.cost(strokes));
        CHECK(GolferAim(AimFor::stableford, 4, -1).cost(strokes) == plain.cost(strokes + 1));
        CHECK(GolferAim(AimFor::strokes, 4, 1).cost(strokes) == strokes);
        CHECK(GolferAim(AimFor::par_or_better, 4, 1).cost(strokes) == (strokes <= 4 ? -1.0 : 0.0));
    }
}

TEST_CASE("hopeless is when not even holing the next stroke gains anything", "[golfer-aim]") {
    for (const AimFor aim_for : {AimFor::stableford, AimFor::par_or_better})
        for (const int par : {3, 4, 5})
            for (const int received : {-1, 0, 1, 2}) {
                const GolferAim aim(aim_for, par, received);
                CHECK(aim.cost(aim.hopeless_from() + 1) == 0.0);
                CHECK(aim.cost(aim.hopeless_from()) < 0.0);
            }
}

TEST_CASE("handicap strokes go to the holes by their index", "[golfer-aim]") {
    std::vector<Hole> holes;
    for (int i = 0; i < 18; ++i) {
        holes.push_back(invented_hole(straight_hole(350, 30)));
        holes.back().stroke_index = (i * 5) % 18 + 1;  // 5 has no factor in common with 18: every index once
    }
    const Course course = course_of(holes);
    for (const double handicap : {-3.0, 0.0, 0.4, 7.0, 18.0, 20.2, 36.0, 54.0}) {
        const std::vector<int> received = strokes_received(course, handicap);
        CHECK(std::accumulate(received.begin(), received.end(), 0) == std::lround(handicap));
        for (std::size_t a = 0; a < holes.size(); ++a)
            for (std::size_t b = 0; b < holes.size(); ++b)
                if (*holes[a].stroke_index < *holes[b].stroke_index)
                    REQUIRE((received[a] == received[b] || received[a] == received[b] + 1));
    }
    Course unmarked = course;
    unmarked.holes[4].stroke_index.reset();
    const std::vector<int> none = strokes_received(unmarked, 20.0);
    CHECK(std::ranges::all_of(none, [](int strokes) { return strokes == 0; }));
}
