#include "golfer-profiles/run_by_kind.hpp"

namespace landwidth {

double run_share_of_carry(ClubKind kind) {
    switch (kind) {
        // USGA Course Rating System guide: scratch man 25 on 225 yd, bogey man 20 on 180 yd. The mini-driver
        // as the driver, by assumption.
        case ClubKind::driver:
        case ClubKind::mini_driver:
            return 1.0 / 9.0;
        // The same guide's second shots, halfway between 20 on 200 yd and 20 on 150 yd.
        case ClubKind::fairway_wood:
            return 0.7 / 6.0;
        // Assumptions: the steeper a ball comes down, the less it runs.
        case ClubKind::driving_iron:
            return 0.10;
        case ClubKind::hybrid:
            return 0.08;
        case ClubKind::iron:
            return 0.05;
        case ClubKind::wedge:
            return 0.02;
        case ClubKind::putter:
            break;
    }
    return 0.0;
}

}  // namespace landwidth
