// How a ball runs on after it lands: bounces and roll by landing angle, speed and spin, firmness and slope.
//
// Bounce by A. R. Penner (The physics of golf: the optimum loft of a driver, Am. J. Phys. 69, 2001, and what
// followed from it; constants from memory, see run_out.cpp), rolling by a constant friction. Calibrated so
// that the published standard golfers run as far as the USGA Course Rating System guide says (scratch man 25
// yd on 225, bogey man 20 on 180): one constant for both, so within some 12 %. Used against a club's own run;
// high wedges stop where they land, so such a run may be 0.
#pragma once

namespace landwidth {

enum class Firmness { soft, ordinary, firm };

// How a ball meets the ground.
struct Impact {
    double speed_mps;       // > 0
    double angle_rad;       // below the horizon, (0, pi/2]
    double spin_rad_per_s;  // backspin, >= 0
};

// Rise of the ground per metre in the direction of travel, and to its right; flat: 0. [-1, 1].
struct Slope {
    double along = 0.0;
    double right = 0.0;
};

struct RunOut {
    double along_m;  // may be below 0: a ball that spins or rolls back
    double right_m;
};

// At most 150 m: on ground too steep to hold a rolling ball the grass holds it in the end (assumption).
// Throws std::invalid_argument for what is out of these ranges or not finite. About 4 microseconds.
RunOut run_out(const Impact& impact, Firmness firmness, const Slope& slope);

}  // namespace landwidth
