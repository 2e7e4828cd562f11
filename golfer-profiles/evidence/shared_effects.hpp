// Moves of the sampler for one trait: what golfer, club and build have of it. Not for use outside of this
// room.
#pragma once

#include <Eigen/Cholesky>
#include <Eigen/Core>
#include <cmath>

#include "golfer-profiles/counter_bits.hpp"
#include "golfer-profiles/evidence/golfer_model.hpp"

namespace landwidth {

double standard_normal(CounterBits& bits);
double uniform(CounterBits& bits);
double gamma_variate(double shape, CounterBits& bits);  // scale 1

// The golfer's and the clubs' effects and their weights given the builds' values. `off`: of each build, its
// value less the typical one.
void draw_shared(const GolferModel& model, Trait trait, const Eigen::VectorXd& off, SharedEffects& effects,
                 CounterBits& bits);

// What values a build may have. Mishits are fewer than the usual shots, or they were the usual ones; a spread
// is no less than a fifth of the typical one (an assumption): shots that are all alike are rounded, or were
// not recorded, and are no golfer without any spread.
struct TraitRange {
    double lowest, highest;
    bool holds(double value) const { return value >= lowest && value <= highest; }
};
TraitRange range_of(const ModelBuild& build, Trait trait);

// One draw of everything shared before any shot, and the builds' values less typical.
Eigen::VectorXd draw_trait_before_shots(const GolferModel& model, Trait trait, SharedEffects& effects,
                                        CounterBits& bits);

// The covariance of the builds' values about the typical ones, with the weights as they stand.
Eigen::MatrixXd covariance_of_builds(const GolferModel& model, Trait trait, const SharedEffects& effects);

// By random walks (N. Metropolis et al., 1953): every build by itself, the builds of a club together with it,
// all builds together with the golfer. `log_likelihood(build, value)` of what the build's shots say;
// `shots(build)`: of how many the value is told, which sets the length of the steps.
template <class LogLikelihood, class Shots>
class TraitWalk {
  public:
    TraitWalk(const GolferModel& model, GolferState& state, Trait trait, LogLikelihood log_likelihood,
              Shots shots, CounterBits& bits)
        : model_(model),
          state_(state),
          trait_(trait),
          sds_(model.sds[static_cast<std::size_t>(trait)]),
          effects_(state.shared[static_cast<std::size_t>(trait)]),
          log_likelihood_(log_likelihood),
          shots_(shots),
          bits_(bits),
          now_(model.builds.size()) {
        for (std::size_t i = 0; i < now_.size(); ++i)
            now_[i] = log_likelihood_(i, of(state.builds[i], trait));
    }

    void walk() {
        for (std::size_t i = 0; i < now_.size(); ++i)
            move_build(i);
        for (std::size_t family = 0; family < model_.families; ++family)
            move_family(family);
        move_golfer();
    }

  private:
    static constexpr double step = 2.0;

    double& value(std::size_t build) { return of(state_.builds[build], trait_); }

    void move_build(std::size_t i) {
        const ModelBuild& build = model_.builds[i];
        const double mean = of(build.typical, trait_) + effects_.golfer + effects_.family[build.family];
        const double told = shots_(i);
        if (!(told > 0.0)) {
            const double drawn = mean + sds_.build * standard_normal(bits_);
            if (range_of(build, trait_).holds(drawn))
                value(i) = drawn;  // else it stays: as good a draw from what is allowed
            return;
        }
        const double tried = value(i) + step_of(told + 1.0 / (sds_.build * sds_.build));
        if (!range_of(build, trait_).holds(tried)) return;
        const double then = log_likelihood_(i, tried);
        const double before = (value(i) - mean) / sds_.build, after = (tried - mean) / sds_.build;
        if (accepted(then - now_[i] + 0.5 * (before * before - after * after))) {
            value(i) = tried;
            now_[i] = then;
        }
    }

    void move_family(std::size_t family) {
        double& effect = effects_.family[family];
        const double precision = effects_.family_weight[family] / (sds_.club * sds_.club);
        move_together([&](std::size_t i) { return model_.builds[i].family == family; }, effect, precision);
    }

    void move_golfer() {
        const double precision = effects_.golfer_weight / (sds_.golfer * sds_.golfer);
        move_together([](std::size_t) { return true; }, effects_.golfer, precision);
    }

    template <class Among>
    void move_together(Among among, double& effect, double precision) {
        double told = 0.0;
        for (std::size_t i = 0; i < now_.size(); ++i)
            if (among(i)) told += shots_(i);
        const double by = step_of(told + precision);
        double change = 0.5 * precision * (effect * effect - (effect + by) * (effect + by));
        tried_ = now_;
        for (std::size_t i = 0; i < now_.size(); ++i) {
            if (among(i) && !range_of(model_.builds[i], trait_).holds(value(i) + by)) return;
            if (!among(i) || !(shots_(i) > 0.0)) continue;
            tried_[i] = log_likelihood_(i, value(i) + by);
            change += tried_[i] - now_[i];
        }
        if (!accepted(change)) return;
        effect += by;
        now_.swap(tried_);
        for (std::size_t i = 0; i < now_.size(); ++i)
            if (among(i)) value(i) += by;
    }

    double step_of(double precision) { return step / std::sqrt(precision) * standard_normal(bits_); }
    bool accepted(double log_ratio) { return log_ratio >= 0.0 || uniform(bits_) < std::exp(log_ratio); }

    const GolferModel& model_;
    GolferState& state_;
    Trait trait_;
    LevelSds sds_;
    SharedEffects& effects_;
    LogLikelihood log_likelihood_;
    Shots shots_;
    CounterBits& bits_;
    std::vector<double> now_, tried_;
};

}  // namespace landwidth
