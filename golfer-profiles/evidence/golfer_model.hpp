// The model of golfer_prior.hpp for one golfer: typical numbers, recorded shots, and the states that
// golfer_sampler draws. Not for use outside of this room.
#pragma once

#include <Eigen/Core>
#include <array>
#include <cstddef>
#include <optional>
#include <vector>

#include "golfer-profiles/evidence/golfer_prior.hpp"
#include "golfer-profiles/profile.hpp"

namespace landwidth {

// The six numbers of a build, in this order.
enum class Trait { carry, direction, log_along, log_across, twist, logit_mishits };
inline constexpr std::size_t trait_count = 6;
using Traits = std::array<double, trait_count>;
inline double& of(Traits& traits, Trait trait) {
    return traits[static_cast<std::size_t>(trait)];
}
inline double of(const Traits& traits, Trait trait) {
    return traits[static_cast<std::size_t>(trait)];
}

// Where mishits come down, in relative numbers: share of the carry short of (-) or past the typical one,
// tangent of the side.
struct MishitPlace {
    Eigen::Vector2d centre = Eigen::Vector2d::Zero();
    Eigen::Vector2d log_sd = Eigen::Vector2d::Zero();
};

struct ModelShot {
    Eigen::Vector2d place;  // relative
    std::optional<std::size_t> session;
    double when = 0.0;    // [-1/2, 1/2]
    double weight = 1.0;  // (0, 1]
};

// A build of a club, or a club that has none.
struct ModelBuild {
    std::size_t club;    // number in the profile
    std::size_t family;  // builds of one club have the same
    double length_m;     // L: typical carry, at the length of this golfer as guessed beforehand
    Traits typical{};
    std::vector<ModelShot> shots = {};
    int lost = 0;
    // A pattern that so many shots are behind which are not at hand: they count as if they had shown just it.
    double known_shots = 0.0;
    Traits known = {};
    bool has_mishits = true;                      // a pattern of the profile without any has none
    std::optional<std::array<Way, 2>> ways = {};  // of the usual shot, as the profile's pattern says
};

// What can be the degrees of freedom: neighbours differ by the fourth root of 2, the last is infinite.
struct ModelTail {
    double tail_dof;
    double log_prior;  // up to a constant
};

struct GolferModel {
    std::vector<ModelBuild> builds;
    std::size_t families = 0;
    std::size_t sessions = 0;  // whose days differ; 0 for one alone
    bool has_trend = false;
    std::array<LevelSds, trait_count> sds{};
    std::vector<ModelTail> tails;
    std::size_t usual_tail = 0;
    std::array<MishitPlace, 2> mishits{};  // typical: short, wide
    double wide_mishits = 0.0;             // chance of the second kind before any shot
    Eigen::Vector2d mishit_centre_sd = Eigen::Vector2d::Zero();
    double log_mishit_spread = 0.0;
    Eigen::Vector2d day_sd = Eigen::Vector2d::Zero(), trend_sd = Eigen::Vector2d::Zero();
    double lost_beyond = 0.0;

    // Whether anything recorded stands behind any club.
    bool has_evidence() const;
};

// Of every club with a pattern. The typical numbers are learnt_from's prior where there is one, else the
// pattern itself.
//
// `length_ratio`: how many times the typical carries this golfer is guessed to hit beforehand. It sets the
// scale in which relative numbers are taken and tells the model nothing: the prior stays about the typical
// carry. See usual_length_ratio.
GolferModel golfer_model(const Golfer& golfer, const GolferPrior& prior, double length_ratio);

// The middle of what the clubs' recorded carries are to their typical ones, in [0.6, 1.7]; near 1 where few
// shots tell.
double usual_length_ratio(const Golfer& golfer);

// What is shared and what differs of one trait, beside the builds' own values.
struct SharedEffects {
    double golfer = 0.0, golfer_weight = 1.0;
    std::vector<double> family, family_weight;
};

struct GolferState {
    std::vector<Traits> builds;  // typical numbers included
    std::array<SharedEffects, trait_count> shared;
    std::vector<Eigen::Vector2d> days;
    Eigen::Vector2d trend = Eigen::Vector2d::Zero();
    std::size_t tail = 0;
    std::size_t mishit_kind = 0;
    MishitPlace mishit;
};

// Nothing but the typical golfer.
GolferState typical_state(const GolferModel& model);

// The scale matrix in relative numbers.
Eigen::Matrix2d scale_of(const Traits& traits);

// The usual shot as one t, or as the two ways it goes.
struct UsualPart {
    double log_share = 0.0;
    Eigen::Vector2d offset = Eigen::Vector2d::Zero();  // from the build's centre
    Eigen::Matrix2d precision = Eigen::Matrix2d::Identity();
    double log_root = 0.0;  // half the logarithm of the precision's determinant
};
struct UsualParts {
    std::array<UsualPart, 2> parts;
    std::size_t count = 1;
};
UsualParts usual_parts(const ModelBuild& build, const Traits& traits, double tail_dof);

// The pattern of a build in a state; run and number of shots are `own`'s. Standard deviations up to
// largest_sd_m, a correlation clear of 1.
ShotPattern pattern_in(const GolferModel& model, const GolferState& state, std::size_t build,
                       const ShotPattern& own);

// log(1 + d / dof) (dof + 2) / 2: what a bivariate t's log density loses at squared distance d; d / 2 for the
// normal. The rest of the density does not depend on dof in two dimensions.
double tail_loss(double squared_distance, double tail_dof);

}  // namespace landwidth
