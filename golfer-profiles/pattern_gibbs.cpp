#include "golfer-profiles/pattern_gibbs.hpp"

#include <Eigen/Cholesky>
#include <Eigen/LU>
#include <algorithm>
#include <boost/random/beta_distribution.hpp>
#include <boost/random/chi_squared_distribution.hpp>
#include <boost/random/gamma_distribution.hpp>
#include <boost/random/normal_distribution.hpp>
#include <boost/random/uniform_01.hpp>
#include <cmath>

namespace landwidth {

namespace {

// Sweeps: before the first draw, and from one to the next. Measured on simulated golfers with 8 to 1000
// shots: so far apart the autocorrelation of the usual shots' numbers is below 0.15 and that of the mishits'
// at most 0.3.
constexpr int burn_in = 50;
constexpr int thinning = 3;

// Logarithms of the share and of its rest are taken.
constexpr double smallest_share = 1e-9, largest_share = 1.0 - 1e-9;

double standard_normal(CounterBits& bits) {
    return boost::random::normal_distribution<double>()(bits);
}

double chi_squared(double dof, CounterBits& bits) {
    return boost::random::chi_squared_distribution<double>(dof)(bits);
}

Eigen::Vector2d normal(const Eigen::Vector2d& mean, const Eigen::Matrix2d& precision, CounterBits& bits) {
    const double first = standard_normal(bits);
    const double second = standard_normal(bits);
    return mean + precision.llt().matrixU().solve(Eigen::Vector2d(first, second));
}

// By the decomposition of M. Bartlett (1933): with `scatter` = L L' and A lower triangular, A's diagonal the
// roots of chi2(n) and chi2(n - 1) and a standard normal below, L A'^-1 times its transpose.
Eigen::Matrix2d inverse_wishart(double n, const Eigen::Matrix2d& scatter, CounterBits& bits) {
    const double first = std::sqrt(chi_squared(n, bits));
    const double second = std::sqrt(chi_squared(n - 1.0, bits));
    const double below = standard_normal(bits);
    Eigen::Matrix2d upper;  // A'^-1
    upper << 1.0 / first, -below / (first * second), 0.0, 1.0 / second;
    const Eigen::Matrix2d root = scatter.llt().matrixL() * upper;
    return root * root.transpose();
}

double drawn_share(double mishits, double others, CounterBits& bits) {
    boost::random::beta_distribution<double> beta(mishits + 0.5, others + 0.5);
    return std::clamp(beta(bits), smallest_share, largest_share);
}

// What the shots of one part say about its centre and its spread.
struct PartSums {
    double count = 0.0;
    double weight = 0.0;
    Eigen::Vector2d sum = Eigen::Vector2d::Zero();      // of weighted shots
    Eigen::Matrix2d squares = Eigen::Matrix2d::Zero();  // weighted, about the present centre

    void add(double shot_weight, const Eigen::Vector2d& shot, const Eigen::Vector2d& centre) {
        const Eigen::Vector2d off = shot - centre;
        count += 1.0;
        weight += shot_weight;
        sum += shot_weight * shot;
        squares += shot_weight * off * off.transpose();
    }
};

class Sampler {
  public:
    Sampler(const PatternModel& model, std::span<const ShotOffset> shots, const MixtureState& start,
            CounterBits& bits)
        : model_(model), state_(start), bits_(bits), tail_chances_(model.tails.size()) {
        for (const ShotOffset& shot : shots)
            shots_.push_back(plane_vector(shot));
    }

    void sweep() {
        draw_labels();
        draw_tail();
        draw_weights();
        draw_usual();
        if (model_.has_mishits) draw_mishits();
    }

    const MixtureState& state() const { return state_; }

  private:
    void draw_labels();
    void draw_tail();
    void draw_weights();
    void draw_usual();
    void draw_mishits();

    const PatternModel& model_;
    std::vector<Eigen::Vector2d> shots_;
    MixtureState state_;
    CounterBits& bits_;
    // Of the present sweep: the usual shots and their squared distances; sums over both parts.
    std::vector<Eigen::Vector2d> usual_shots_;
    std::vector<double> distances_;
    std::vector<double> tail_chances_;
    PartSums usual_, mishits_;
};

void Sampler::draw_labels() {
    const MixtureDensity density(state_);
    boost::random::uniform_01<double> uniform;
    usual_shots_.clear();
    distances_.clear();
    mishits_ = {};
    for (const Eigen::Vector2d& shot : shots_) {
        const double distance = density.squared_distance(shot);
        if (model_.has_mishits) {
            const double odds = std::exp(density.log_usual(distance) - density.log_mishit(shot));
            if (uniform(bits_) * (1.0 + odds) < 1.0) {
                mishits_.add(1.0, shot, state_.mishit_centre);
                continue;
            }
        }
        usual_shots_.push_back(shot);
        distances_.push_back(distance);
    }
}

// The sum of tail_loss over shots, with one logarithm for many of them.
double summed_tail_loss(const std::vector<double>& distances, double tail_dof) {
    constexpr double far_from_overflow = 1e200;
    double plain = 0.0;
    double logs = 0.0;
    double product = 1.0;
    for (const double distance : distances) {
        plain += distance;
        product *= 1.0 + distance / tail_dof;
        if (product > far_from_overflow) {
            logs += std::log(product);
            product = 1.0;
        }
    }
    if (std::isinf(tail_dof)) return 0.5 * plain;
    return 0.5 * (tail_dof + 2.0) * (logs + std::log(product));
}

void Sampler::draw_tail() {
    double highest = -std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < tail_chances_.size(); ++i) {
        const PatternModel::Tail& tail = model_.tails[i];
        tail_chances_[i] = tail.log_prior - summed_tail_loss(distances_, tail.tail_dof);
        highest = std::max(highest, tail_chances_[i]);
    }
    double all = 0.0;
    for (double& chance : tail_chances_)
        all += chance = std::exp(chance - highest);
    double left = all * boost::random::uniform_01<double>()(bits_);
    std::size_t drawn = 0;
    while (drawn + 1 < tail_chances_.size() && (left -= tail_chances_[drawn]) >= 0.0)
        ++drawn;
    state_.tail_dof = model_.tails[drawn].tail_dof;
}

void Sampler::draw_weights() {
    usual_ = {};
    const double dof = state_.tail_dof;
    boost::random::gamma_distribution<double> gamma(std::isinf(dof) ? 1.0 : 0.5 * (dof + 2.0));
    for (std::size_t i = 0; i < usual_shots_.size(); ++i) {
        const double weight = std::isinf(dof) ? 1.0 : gamma(bits_) / (0.5 * (dof + distances_[i]));
        usual_.add(weight, usual_shots_[i], state_.centre);
    }
}

void Sampler::draw_usual() {
    state_.scale = inverse_wishart(model_.worth + PatternModel::scale_surplus + usual_.count,
                                   model_.worth * model_.scale + usual_.squares, bits_);
    const Eigen::Matrix2d shot_precision = state_.scale.inverse();
    const Eigen::Matrix2d precision = model_.centre_precision + usual_.weight * shot_precision;
    const Eigen::Vector2d pull = model_.centre_precision * model_.centre + shot_precision * usual_.sum;
    state_.centre = normal(precision.inverse() * pull, precision, bits_);
}

void Sampler::draw_mishits() {
    const double count = mishits_.count;
    state_.share = drawn_share(model_.worth * model_.share + count,
                               model_.worth * (1.0 - model_.share) + usual_.count, bits_);
    for (const int axis : {0, 1}) {
        const double squares =
            model_.mishit_worth * model_.mishit_variance[axis] + mishits_.squares(axis, axis);
        const double variance =
            squares / chi_squared(model_.mishit_worth + PatternModel::variance_surplus + count, bits_);
        const double known = model_.mishit_centre_precision[axis];
        const double precision = known + count / variance;
        state_.mishit_variance[axis] = variance;
        state_.mishit_centre[axis] =
            (known * model_.mishit_centre[axis] + mishits_.sum[axis] / variance) / precision +
            standard_normal(bits_) / std::sqrt(precision);
    }
}

}  // namespace

// With no shots every conditional of the sampler but the centres' is the prior itself, and the centres do not
// depend on the rest: one sweep is one independent draw.
MixtureState drawn_before_shots(const PatternModel& model, CounterBits& bits) {
    Sampler sampler(model, {}, model.typical(), bits);
    sampler.sweep();
    return sampler.state();
}

std::vector<MixtureState> drawn_after_shots(const PatternModel& model, std::span<const ShotOffset> shots,
                                            const MixtureState& start, CounterBits& bits, int count) {
    Sampler sampler(model, shots, start, bits);
    for (int sweep = 0; sweep < burn_in; ++sweep)
        sampler.sweep();
    std::vector<MixtureState> draws;
    for (int draw = 0; draw < count; ++draw) {
        for (int sweep = 0; sweep < thinning; ++sweep)
            sampler.sweep();
        draws.push_back(sampler.state());
    }
    return draws;
}

}  // namespace landwidth
