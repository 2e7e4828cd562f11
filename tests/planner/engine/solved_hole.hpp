// Holes solved for a golfer of the tests, with all that a field refers to.
#pragma once

#include "planner/engine/field/personal_field.hpp"
#include "tests/planner/engine/invented_hole.hpp"

namespace landwidth::fixture {

// The clubs of club_golfer() with long tails, mishits, and misses that fall short to the right.
Golfer uneven_golfer();

// 470 yd round a bend to the right, par 5: a red lake to the left, a yellow stream across, woods inside the
// bend and to the left of the green, sand by the landing place and the green, out of bounds on the right.
HoleParts eventful_par_5();
// 395 yd, straight: out of bounds left, a red pond short right of the green, woods on both sides, sand.
HoleParts narrow_par_4();

struct SolvedHole {
    Hole hole;
    Golfer golfer;
    Conditions day;
    EngineAssumptions assumptions;
    GolferGame game;
    LieRaster lies;
    PersonalField field;

    explicit SolvedHole(const HoleParts& parts, const Golfer& golfer = uneven_golfer(),
                        AimFor aim = AimFor::strokes, bool local_rule_e5 = false,
                        const EngineAssumptions& constants = default_assumptions().engine,
                        const Conditions& conditions = {});
    SolvedHole(const SolvedHole&) = delete;
    SolvedHole& operator=(const SolvedHole&) = delete;

    const PlayGrid& grid() const { return field.grid(); }
    // In play, with a shot to choose.
    bool is_open(int cell) const;
    double strokes_at(int cell) const {
        return double{field.strokes_layer().cost[static_cast<std::size_t>(cell)]};
    }
};

// Uniform numbers of a counter: the same whatever thread asks (G. Steele, D. Lea, C. Flood, OOPSLA 2014).
class CounterRandom {
  public:
    explicit CounterRandom(std::uint64_t stream) : counter_(stream << 40U) {}
    double uniform();  // [0, 1)

  private:
    std::uint64_t counter_;
};

}  // namespace landwidth::fixture
