// Shares as log odds: the scale on which the share of mishits is modelled, averaged and moved.
#pragma once

#include <cmath>

namespace landwidth {

// Of a share in (0, 1); 0 for one half.
inline double log_odds_of(double share) {
    return std::log(share / (1.0 - share));
}

// In [0, 1], for any log odds.
inline double share_of_log_odds(double log_odds) {
    return 1.0 / (1.0 + std::exp(-log_odds));
}

}  // namespace landwidth
