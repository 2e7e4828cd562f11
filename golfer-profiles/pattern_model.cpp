#include "golfer-profiles/pattern_model.hpp"

#include <Eigen/LU>
#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace landwidth {

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();

// Below, a variance hardly exists; above, a t is a normal to the eye.
constexpr double fattest_tail = 3.0, thinnest_tail = 60.0;
// A correlation further from 0 is one line of shots; the format and the densities need an ellipse.
constexpr double strongest_correlation = 0.9999;
constexpr double least_mishit_worth = 4.0;
constexpr double largest_share = 0.999;

// Covariance to scale matrix.
double scale_share(double tail_dof) {
    return std::isinf(tail_dof) ? 1.0 : (tail_dof - 2.0) / tail_dof;
}

// Fisher information of one shot about the centre, of that of a normal with the same scale matrix.
double centre_information(double tail_dof) {
    return std::isinf(tail_dof) ? 1.0 : (tail_dof + 2.0) / (tail_dof + 4.0);
}

// Steps of the fourth root of 2 down and up from the typical value; infinity takes the place of the next one
// up, and `thinnest_tail`'s where it is typical itself.
void set_tails(PatternModel& model, double typical, double log_differs) {
    if (!(log_differs > 0.0)) {
        model.tails = {{typical, 0.0}};
        model.usual_tail = 0;
        return;
    }
    const double middle = std::isinf(typical) ? thinnest_tail : typical;
    const auto place = [&](int step) { return middle * std::exp2(0.25 * step); };
    const auto add = [&](double tail_dof, int step) {
        const double off = 0.25 * step * std::numbers::ln2 / log_differs;
        model.tails.push_back({tail_dof, -0.5 * off * off});
    };
    int step = 0;
    while (place(step - 1) >= fattest_tail)
        --step;
    for (; step < 0; ++step)
        add(place(step), step);
    model.usual_tail = model.tails.size();
    if (!std::isinf(typical)) {
        do
            add(place(step), step);
        while (place(++step) < thinnest_tail);
    }
    add(infinite, step);
}

Eigen::Vector2d variance_between_golfers(double carry_m, const PatternPrior& weight) {
    return {std::pow(weight.carry_differs_share * carry_m, 2),
            std::pow(std::tan(weight.direction_differs_rad) * carry_m, 2)};
}

void set_mishits(PatternModel& model, const MixtureState& typical, const Eigen::Vector2d& between) {
    model.has_mishits = typical.share > 0.0;
    model.share = typical.share;
    model.mishit_worth = std::max(least_mishit_worth, model.worth * model.share);
    model.mishit_centre = typical.mishit_centre;
    model.mishit_variance = typical.mishit_variance;
    model.mishit_centre_precision = (model.mishit_variance / model.mishit_worth + between).cwiseInverse();
}

}  // namespace

PatternModel pattern_model(const ShotPattern& prior, const PatternPrior& weight) {
    PatternModel model;
    model.worth = weight.worth_shots + prior.shots;
    const MixtureState typical = state_of(prior);
    model.scale = typical.scale;
    model.centre = typical.centre;
    const Eigen::Vector2d between = variance_between_golfers(prior.usual.centre.carry_m, weight);
    set_mishits(model, typical, between);
    model.centre_precision = between.cwiseInverse().asDiagonal();
    model.centre_precision +=
        prior.shots * (1.0 - model.share) * centre_information(prior.tail_dof) * model.scale.inverse();
    set_tails(model, prior.tail_dof, weight.log_tail_differs * std::sqrt(weight.worth_shots / model.worth));
    return model;
}

MixtureState PatternModel::typical() const {
    return {centre, scale, tails[usual_tail].tail_dof, share, mishit_centre, mishit_variance};
}

Eigen::Matrix2d scale_matrix(const Spread& spread, double tail_dof) {
    const double both = spread.correlation * spread.carry_sd_m * spread.side_sd_m;
    Eigen::Matrix2d covariance;
    covariance << spread.carry_sd_m * spread.carry_sd_m, both, both, spread.side_sd_m * spread.side_sd_m;
    return scale_share(tail_dof) * covariance;
}

Spread spread_of(const Eigen::Vector2d& centre, const Eigen::Matrix2d& scale, double tail_dof) {
    const Eigen::Matrix2d covariance = scale / scale_share(tail_dof);
    const double carry_sd = std::sqrt(covariance(0, 0));
    const double side_sd = std::sqrt(covariance(1, 1));
    return {
        {centre.x(), centre.y()},
        std::min(carry_sd, largest_sd_m),
        std::min(side_sd, largest_sd_m),
        std::clamp(covariance(0, 1) / (carry_sd * side_sd), -strongest_correlation, strongest_correlation)};
}

MixtureState state_of(const ShotPattern& pattern) {
    const Spread& mishits = pattern.mishit ? pattern.mishit->spread : pattern.usual;
    return {plane_vector(pattern.usual.centre),
            scale_matrix(pattern.usual, pattern.tail_dof),
            pattern.tail_dof,
            pattern.mishit ? pattern.mishit->share : 0.0,
            plane_vector(mishits.centre),
            {mishits.carry_sd_m * mishits.carry_sd_m, mishits.side_sd_m * mishits.side_sd_m}};
}

ShotPattern pattern_of(const MixtureState& state, const ShotPattern& prior, double run_m, int shots) {
    ShotPattern pattern{.usual = spread_of(state.centre, state.scale, state.tail_dof),
                        .tail_dof = state.tail_dof,
                        .run_m = run_m,
                        .mishit = prior.mishit,
                        .shots = shots};
    if (pattern.mishit && pattern.mishit->share > 0.0) {
        const Eigen::Matrix2d variances = state.mishit_variance.asDiagonal();
        pattern.mishit = {std::min(state.share, largest_share),
                          spread_of(state.mishit_centre, variances, infinite)};
    }
    return pattern;
}

MixtureDensity::MixtureDensity(const MixtureState& state)
    : centre_(state.centre),
      precision_(state.scale.inverse()),
      tail_dof_(state.tail_dof),
      usual_constant_(std::log1p(-state.share) - 0.5 * std::log(state.scale.determinant())),
      has_mishits_(state.share > 0.0),
      mishit_centre_(state.mishit_centre),
      mishit_precision_(state.mishit_variance.cwiseInverse()),
      mishit_constant_(has_mishits_ ? std::log(state.share) - 0.5 * std::log(state.mishit_variance.prod())
                                    : -infinite) {}

double MixtureDensity::squared_distance(const Eigen::Vector2d& shot) const {
    const Eigen::Vector2d off = shot - centre_;
    return off.dot(precision_ * off);
}

double MixtureDensity::log_usual(double squared_distance) const {
    return usual_constant_ - tail_loss(squared_distance, tail_dof_);
}

double MixtureDensity::log_mishit(const Eigen::Vector2d& shot) const {
    if (!has_mishits_) return -infinite;
    return mishit_constant_ - 0.5 * mishit_precision_.dot((shot - mishit_centre_).cwiseAbs2());
}

double tail_loss(double squared_distance, double tail_dof) {
    if (std::isinf(tail_dof)) return 0.5 * squared_distance;
    return 0.5 * (tail_dof + 2.0) * std::log1p(squared_distance / tail_dof);
}

}  // namespace landwidth
