// The statistical model of one club's pattern that its fit and its posterior draws share. Not for use outside
// of this room.
//
// A shot is a mishit with chance `share`, then normal with a diagonal covariance (the profile format has no
// correlation of mishits); otherwise it is bivariate t. Before any shot is seen, with n0 the worth of the
// prior pattern in shots (PatternPrior::worth_shots, and the shots behind that pattern):
//
//   centre          normal about the prior pattern's; in carry and side independent, with the standard
//                   deviations carry_differs_share x carry and tan(direction_differs) x carry. Shots behind
//                   the prior pattern add the information about the centre that such shots hold.
//   scale matrix    inverse Wishart(n0 + 5/3, n0 S0) about the prior pattern's S0
//   tail            the logarithm of the degrees of freedom normal about the prior pattern's, on a grid; the
//                   standard deviation log_tail_differs falls with sqrt(n0 / worth_shots)
//   share           beta(n0 s0 + 1/2, n0 (1 - s0) + 1/2) about the prior pattern's s0
//   mishits         worth m0 = max(4, n0 s0) shots: below 4 a mishit part that is seldom seen could be
//                   anything, a second heap of good shots as well. Variances m0 v0 / chi2(m0 + 2/3); centre
//                   normal, variance v0 / m0 and that between golfers (as above) added.
//
// The 5/3 and 2/3 put the median of every standard deviation on the prior pattern's: an element of the
// diagonal is n0 S0 / chi2(n0 + 2/3), and the median of chi2(k) is k - 2/3 nearly. So the prior pattern is
// the typical golfer, not the narrowest or the mean of the squares.
#pragma once

#include <Eigen/Core>
#include <limits>
#include <vector>

#include "golfer-profiles/pattern_prior.hpp"
#include "golfer-profiles/shot_pattern.hpp"

namespace landwidth {

// Metres: carry, side.
inline Eigen::Vector2d plane_vector(const ShotOffset& shot) {
    return {shot.carry_m, shot.side_m};
}

// The unknowns of the model. Without a mishit part `share` is 0 and the rest of it stands idle.
struct MixtureState {
    Eigen::Vector2d centre = Eigen::Vector2d::Zero();
    Eigen::Matrix2d scale = Eigen::Matrix2d::Zero();  // of the t; the covariance where tail_dof is infinite
    double tail_dof = std::numeric_limits<double>::infinity();
    double share = 0.0;
    Eigen::Vector2d mishit_centre = Eigen::Vector2d::Zero();
    Eigen::Vector2d mishit_variance = Eigen::Vector2d::Zero();
};

struct PatternModel {
    struct Tail {
        double tail_dof;
        double log_prior;  // up to a constant; 0 at the prior pattern's
    };

    double worth = 0.0;  // n0
    Eigen::Vector2d centre = Eigen::Vector2d::Zero();
    Eigen::Matrix2d centre_precision = Eigen::Matrix2d::Zero();
    Eigen::Matrix2d scale = Eigen::Matrix2d::Zero();  // S0
    // Ascending: neighbours differ by the fourth root of 2, the last is infinite.
    std::vector<Tail> tails = {};
    std::size_t usual_tail = 0;  // where the prior pattern's stands among them
    bool has_mishits = false;
    double share = 0.0;         // s0
    double mishit_worth = 0.0;  // m0
    Eigen::Vector2d mishit_centre = Eigen::Vector2d::Zero();
    Eigen::Vector2d mishit_centre_precision = Eigen::Vector2d::Zero();
    Eigen::Vector2d mishit_variance = Eigen::Vector2d::Zero();  // v0

    static constexpr double scale_surplus = 5.0 / 3.0;
    static constexpr double variance_surplus = 2.0 / 3.0;

    // The prior pattern itself.
    MixtureState typical() const;
};

PatternModel pattern_model(const ShotPattern& prior, const PatternPrior& weight);

// The scale matrix of a spread, and back to what a profile can hold: deviations up to largest_sd_m, a
// correlation clear of 1.
Eigen::Matrix2d scale_matrix(const Spread& spread, double tail_dof);
Spread spread_of(const Eigen::Vector2d& centre, const Eigen::Matrix2d& scale, double tail_dof);

// A pattern as a state of the model.
MixtureState state_of(const ShotPattern& pattern);

// The state as a pattern, with the run and the number of shots given.
ShotPattern pattern_of(const MixtureState& state, const ShotPattern& prior, double run_m, int shots);

// The densities of the two parts at a shot, up to a factor that they share.
class MixtureDensity {
  public:
    explicit MixtureDensity(const MixtureState& state);
    // Squared Mahalanobis distance from the usual centre, in scale units.
    double squared_distance(const Eigen::Vector2d& shot) const;
    // Logarithms, with the part's share in them; -infinity for a mishit part of share 0.
    double log_usual(double squared_distance) const;
    double log_mishit(const Eigen::Vector2d& shot) const;

  private:
    Eigen::Vector2d centre_;
    Eigen::Matrix2d precision_;
    double tail_dof_;
    double usual_constant_;
    bool has_mishits_;
    Eigen::Vector2d mishit_centre_;
    Eigen::Vector2d mishit_precision_;
    double mishit_constant_;
};

// log(1 + d / dof) (dof + 2) / 2: what a bivariate t's log density loses at squared distance d; d / 2 for the
// normal. The rest of the density does not depend on dof in two dimensions.
double tail_loss(double squared_distance, double tail_dof);

}  // namespace landwidth
