#include "golfer-profiles/pattern_em.hpp"

#include <Eigen/LU>
#include <algorithm>
#include <cmath>

namespace landwidth {

namespace {

constexpr int most_rounds = 5000;

double mishit_chance_at(const MixtureDensity& density, const Eigen::Vector2d& shot, double squared_distance) {
    return 1.0 / (1.0 + std::exp(density.log_usual(squared_distance) - density.log_mishit(shot)));
}

// What one pass over the shots leaves for the next estimate.
struct Expectation {
    std::vector<double> usual_weight;  // of each shot: the chance of usual times the weight of the t
    std::vector<double> mishit;        // of each shot: the chance of mishit
    double mishits = 0.0;
};

void expect(Expectation& e, const MixtureState& state, std::span<const ShotOffset> shots) {
    const MixtureDensity density(state);
    const double dof = state.tail_dof;
    e.mishits = 0.0;
    for (std::size_t i = 0; i < shots.size(); ++i) {
        const Eigen::Vector2d shot = plane_vector(shots[i]);
        const double distance = density.squared_distance(shot);
        const double mishit = state.share > 0.0 ? mishit_chance_at(density, shot, distance) : 0.0;
        const double weight = std::isinf(dof) ? 1.0 : (dof + 2.0) / (dof + distance);
        e.mishit[i] = mishit;
        e.usual_weight[i] = (1.0 - mishit) * weight;
        e.mishits += mishit;
    }
}

// A weighted mean that leans on a known centre: precision-weighted.
Eigen::Vector2d leaning_mean(std::span<const ShotOffset> shots, const std::vector<double>& weights,
                             const Eigen::Matrix2d& shot_precision, const Eigen::Vector2d& known,
                             const Eigen::Matrix2d& known_precision) {
    double weight = 0.0;
    Eigen::Vector2d sum = Eigen::Vector2d::Zero();
    for (std::size_t i = 0; i < shots.size(); ++i) {
        weight += weights[i];
        sum += weights[i] * (plane_vector(shots[i]) - known);
    }
    const Eigen::Matrix2d precision = known_precision + weight * shot_precision;
    return known + precision.inverse() * (shot_precision * sum);
}

Eigen::Matrix2d scatter(std::span<const ShotOffset> shots, const std::vector<double>& weights,
                        const Eigen::Vector2d& centre) {
    Eigen::Matrix2d sum = Eigen::Matrix2d::Zero();
    for (std::size_t i = 0; i < shots.size(); ++i) {
        const Eigen::Vector2d off = plane_vector(shots[i]) - centre;
        sum += weights[i] * off * off.transpose();
    }
    return sum;
}

MixtureState maximised(const PatternModel& model, std::span<const ShotOffset> shots, const Expectation& e,
                       MixtureState state) {
    const auto count = static_cast<double>(shots.size());
    state.centre =
        leaning_mean(shots, e.usual_weight, state.scale.inverse(), model.centre, model.centre_precision);
    state.scale = (model.worth * model.scale + scatter(shots, e.usual_weight, state.centre)) /
                  (model.worth + count - e.mishits);
    if (!model.has_mishits) return state;
    state.share = (model.worth * model.share + e.mishits) / (model.worth + count);
    state.mishit_centre = leaning_mean(shots, e.mishit, state.mishit_variance.cwiseInverse().asDiagonal(),
                                       model.mishit_centre, model.mishit_centre_precision.asDiagonal());
    state.mishit_variance = (model.mishit_worth * model.mishit_variance +
                             scatter(shots, e.mishit, state.mishit_centre).diagonal()) /
                            (model.mishit_worth + e.mishits);
    return state;
}

double relative_change(const MixtureState& from, const MixtureState& to) {
    const Eigen::Array2d sd = from.scale.diagonal().array().sqrt();
    double change = ((to.centre - from.centre).array() / sd).abs().maxCoeff();
    change =
        std::max(change, (to.scale - from.scale).cwiseAbs().maxCoeff() / from.scale.diagonal().minCoeff());
    if (!(from.share > 0.0)) return change;
    const Eigen::Array2d mishit_variance = from.mishit_variance.array();
    change = std::max(change, std::abs(to.share - from.share));
    change = std::max(
        change, ((to.mishit_centre - from.mishit_centre).array() / mishit_variance.sqrt()).abs().maxCoeff());
    return std::max(change,
                    ((to.mishit_variance.array() - mishit_variance) / mishit_variance).abs().maxCoeff());
}

double log_likelihood(const MixtureState& state, std::span<const ShotOffset> shots) {
    const MixtureDensity density(state);
    double sum = 0.0;
    for (const ShotOffset& shot : shots) {
        const Eigen::Vector2d place = plane_vector(shot);
        const double usual = density.log_usual(density.squared_distance(place));
        const double mishit = density.log_mishit(place);
        const double larger = std::max(usual, mishit);
        sum += larger + std::log(std::exp(usual - larger) + std::exp(mishit - larger));
    }
    return sum;
}

double log_prior(const PatternModel& model, std::size_t tail, const MixtureState& state) {
    const Eigen::Vector2d off = state.centre - model.centre;
    double sum = model.tails[tail].log_prior - 0.5 * off.dot(model.centre_precision * off) -
                 0.5 * model.worth *
                     (std::log(state.scale.determinant()) + (model.scale * state.scale.inverse()).trace());
    if (!model.has_mishits) return sum;
    const Eigen::Array2d variance = state.mishit_variance.array();
    const Eigen::Vector2d mishit_off = state.mishit_centre - model.mishit_centre;
    sum +=
        model.worth * (model.share * std::log(state.share) + (1.0 - model.share) * std::log1p(-state.share));
    sum -= 0.5 * model.mishit_centre_precision.dot(mishit_off.cwiseAbs2());
    return sum - 0.5 * model.mishit_worth * (variance.log() + model.mishit_variance.array() / variance).sum();
}

}  // namespace

PenalisedFit penalised_fit(const PatternModel& model, std::span<const ShotOffset> shots, std::size_t tail,
                           MixtureState start, double least_change) {
    MixtureState state = start;
    state.tail_dof = model.tails[tail].tail_dof;
    Expectation e{std::vector<double>(shots.size()), std::vector<double>(shots.size())};
    for (int round = 0; round < most_rounds; ++round) {
        expect(e, state, shots);
        const MixtureState next = maximised(model, shots, e, state);
        const double change = relative_change(state, next);
        state = next;
        if (!(change >= least_change)) break;  // not a number: the scale collapsed, see the header
    }
    return {state, log_likelihood(state, shots) + log_prior(model, tail, state)};
}

std::vector<double> mishit_chances(const MixtureState& state, std::span<const ShotOffset> shots) {
    const MixtureDensity density(state);
    std::vector<double> chances;
    for (const ShotOffset& shot : shots) {
        const Eigen::Vector2d place = plane_vector(shot);
        chances.push_back(
            state.share > 0.0 ? mishit_chance_at(density, place, density.squared_distance(place)) : 0.0);
    }
    return chances;
}

}  // namespace landwidth
