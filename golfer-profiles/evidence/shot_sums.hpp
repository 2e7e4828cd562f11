// The recorded shots of a golfer as the sampler sees them: which are mishits in the present sweep, and what
// they add up to. Not for use outside of this room.
#pragma once

#include <Eigen/Core>
#include <array>
#include <optional>
#include <vector>

#include "golfer-profiles/counter_bits.hpp"
#include "golfer-profiles/evidence/golfer_model.hpp"

namespace landwidth {

// What the usual shots of a build that went one way say about its spread: about the build's centre, weighted.
struct PartSums {
    double count = 0.0, weight = 0.0;
    Eigen::Vector2d sum = Eigen::Vector2d::Zero();
    Eigen::Matrix2d squares = Eigen::Matrix2d::Zero();
};

struct AxisSums {
    double count = 0.0;
    Eigen::Vector2d sum = Eigen::Vector2d::Zero(), squares = Eigen::Vector2d::Zero();
};

class ShotSums {
  public:
    // The order of a build's shots does not matter.
    explicit ShotSums(const GolferModel& model);

    // Where the lost balls lay: from the build's pattern, at least so far off line.
    void place_lost_balls(const GolferState& state, CounterBits& bits);
    // Which shots were mishits, with the weights of the t summed out.
    void label(const GolferState& state, CounterBits& bits);
    // The gamma weights that make the t of the usual shots a mixture of normals.
    void weigh(double tail_dof, CounterBits& bits);
    // The spread of usual shots about the state's centres, and of how many.
    void sum_up(const GolferState& state);

    // Of the usual shots of the present sweep.
    double summed_tail_loss(double tail_dof) const;
    // Adds what the usual shots say of builds, days and trend; `each` unknowns of an axis, carry first.
    void add_to_places(const GolferState& state, Eigen::Index each, Eigen::MatrixXd& precision,
                       Eigen::VectorXd& pull) const;
    double usual(std::size_t build) const {
        return usual_[build][0].count + usual_[build][1].count + known_[build].count;
    }
    double mishits(std::size_t build) const { return mishits_[build]; }
    AxisSums mishit_sums() const { return mishit_sums_; }
    double log_likelihood_of_spread(std::size_t build, const Traits& traits, double tail_dof) const;

    // Of all shots with the labels summed out, and mishits at this place.
    double log_likelihood(const GolferState& state, const MishitPlace& mishits) const;
    // Of a build's shots, where it has any.
    std::optional<Eigen::Vector2d> middle_of(std::size_t build) const;

  private:
    struct Shot {
        Eigen::Vector2d place;
        std::size_t build;
        std::optional<std::size_t> session;
        double when, weight;
        bool lost, mishit = false;
        std::size_t way = 0;
        double distance = 0.0;   // squared Mahalanobis, of a usual one, from the middle of its way
        double precision = 1.0;  // the gamma weight times `weight`
    };
    Eigen::Vector2d centre_of(const Shot& shot, const GolferState& state) const;

    const GolferModel& model_;
    std::vector<Shot> shots_;                     // build by build
    std::vector<std::array<PartSums, 2>> usual_;  // by build, by way
    std::vector<PartSums> known_;                 // by build, of shots that are not at hand
    std::vector<double> mishits_;
    AxisSums mishit_sums_;
};

}  // namespace landwidth
