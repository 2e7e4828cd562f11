#include "geometry/lie.hpp"

namespace landwidth {

std::string_view lie_name(Lie lie) {
    switch (lie) {
        case Lie::teeing_area:
            return "teeing area";
        case Lie::fairway:
            return "fairway";
        case Lie::rough:
            return "rough";
        case Lie::bunker:
            return "bunker";
        case Lie::trees:
            return "trees";
        case Lie::green:
            return "green";
        case Lie::penalty_yellow:
            return "yellow penalty area";
        case Lie::penalty_red:
            return "red penalty area";
        case Lie::out_of_bounds:
            return "out of bounds";
    }
    return "unknown lie";
}

}  // namespace landwidth
