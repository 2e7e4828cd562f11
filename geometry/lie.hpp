// What the ball lies on. The terms are those of the Rules of Golf and of the published strokes tables.
#pragma once

#include <array>
#include <cstdint>
#include <string_view>

namespace landwidth {

enum class Lie : std::uint8_t {
    teeing_area,
    fairway,
    rough,
    bunker,
    trees,  // woods and scrub: a recovery shot
    green,  // of this hole; another hole's green is mapped as fairway (the ball is dropped off it,
            // Rule 13.1f)
    penalty_yellow,
    penalty_red,
    out_of_bounds,
};

inline constexpr std::size_t lie_count = 9;

inline constexpr std::array<Lie, lie_count> all_lies{
    Lie::teeing_area, Lie::fairway,        Lie::rough,       Lie::bunker,        Lie::trees,
    Lie::green,       Lie::penalty_yellow, Lie::penalty_red, Lie::out_of_bounds,
};

constexpr std::size_t index_of(Lie lie) {
    return static_cast<std::size_t>(lie);
}

constexpr bool is_penalty_area(Lie lie) {
    return lie == Lie::penalty_yellow || lie == Lie::penalty_red;
}

// A ball there is played as it lies.
constexpr bool is_in_play(Lie lie) {
    return !is_penalty_area(lie) && lie != Lie::out_of_bounds;
}

// "fairway", "red penalty area", "out of bounds", ...: words for a person.
std::string_view lie_name(Lie lie);

}  // namespace landwidth
