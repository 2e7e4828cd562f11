#include "golfer-profiles/evidence/shared_effects.hpp"

#include <boost/random/gamma_distribution.hpp>
#include <boost/random/normal_distribution.hpp>
#include <boost/random/uniform_01.hpp>
#include <cmath>
#include <limits>

namespace landwidth {

namespace {

// Half of the 4 degrees of freedom of what differs between golfers and between clubs.
constexpr double half_dof = 2.0;
// A spread is no less than the typical one over this.
constexpr double least_spread = 5.0;

// w of a normal effect N(0, sd^2 / w) that is a t in all.
double weight_given(double effect, double sd, CounterBits& bits) {
    const double off = effect / sd;
    return gamma_variate(half_dof + 0.5, bits) / (half_dof + 0.5 * off * off);
}

struct Pull {
    double precision = 0.0, sum = 0.0;
    void add(double value, double its_precision) {
        precision += its_precision;
        sum += its_precision * value;
    }
    double draw(CounterBits& bits) const {
        return sum / precision + standard_normal(bits) / std::sqrt(precision);
    }
};

}  // namespace

double standard_normal(CounterBits& bits) {
    return boost::random::normal_distribution<double>()(bits);
}

double uniform(CounterBits& bits) {
    return boost::random::uniform_01<double>()(bits);
}

double gamma_variate(double shape, CounterBits& bits) {
    return boost::random::gamma_distribution<double>(shape)(bits);
}

// First the golfer with the clubs summed out, then each club given the golfer.
void draw_shared(const GolferModel& model, Trait trait, const Eigen::VectorXd& off, SharedEffects& effects,
                 CounterBits& bits) {
    const LevelSds& sds = model.sds[static_cast<std::size_t>(trait)];
    const double build_precision = 1.0 / (sds.build * sds.build);
    std::vector<Pull> families(model.families);
    for (std::size_t i = 0; i < model.builds.size(); ++i)
        families[model.builds[i].family].add(off[static_cast<Eigen::Index>(i)], build_precision);
    Pull golfer{effects.golfer_weight / (sds.golfer * sds.golfer), 0.0};
    for (std::size_t f = 0; f < families.size(); ++f) {
        const double variance = sds.club * sds.club / effects.family_weight[f] + 1.0 / families[f].precision;
        golfer.add(families[f].sum / families[f].precision, 1.0 / variance);
    }
    effects.golfer = golfer.draw(bits);
    effects.golfer_weight = weight_given(effects.golfer, sds.golfer, bits);
    for (std::size_t f = 0; f < families.size(); ++f) {
        Pull club{effects.family_weight[f] / (sds.club * sds.club), 0.0};
        club.add(families[f].sum / families[f].precision - effects.golfer, families[f].precision);
        effects.family[f] = club.draw(bits);
        effects.family_weight[f] = weight_given(effects.family[f], sds.club, bits);
    }
}

namespace {

Eigen::VectorXd any_draw(const GolferModel& model, Trait trait, SharedEffects& effects, CounterBits& bits) {
    const LevelSds& sds = model.sds[static_cast<std::size_t>(trait)];
    const auto effect = [&](double sd, double& weight) {
        weight = gamma_variate(half_dof, bits) / half_dof;
        return sd / std::sqrt(weight) * standard_normal(bits);
    };
    effects.golfer = effect(sds.golfer, effects.golfer_weight);
    for (std::size_t f = 0; f < model.families; ++f)
        effects.family[f] = effect(sds.club, effects.family_weight[f]);
    Eigen::VectorXd off(static_cast<Eigen::Index>(model.builds.size()));
    for (std::size_t i = 0; i < model.builds.size(); ++i) {
        off[static_cast<Eigen::Index>(i)] =
            effects.golfer + effects.family[model.builds[i].family] + sds.build * standard_normal(bits);
    }
    return off;
}

}  // namespace

TraitRange range_of(const ModelBuild& build, Trait trait) {
    constexpr double infinite = std::numeric_limits<double>::infinity();
    if (trait == Trait::logit_mishits) return {-infinite, 0.0};
    if (trait == Trait::log_along || trait == Trait::log_across)
        return {of(build.typical, trait) - std::log(least_spread), infinite};
    return {-infinite, infinite};
}

Eigen::VectorXd draw_trait_before_shots(const GolferModel& model, Trait trait, SharedEffects& effects,
                                        CounterBits& bits) {
    constexpr int most_tries = 1000;
    for (int tries = 1;; ++tries) {
        const Eigen::VectorXd off = any_draw(model, trait, effects, bits);
        bool allowed = true;
        for (std::size_t i = 0; i < model.builds.size(); ++i)
            allowed =
                allowed && range_of(model.builds[i], trait)
                               .holds(of(model.builds[i].typical, trait) + off[static_cast<Eigen::Index>(i)]);
        if (allowed || tries == most_tries) return off;
    }
}

Eigen::MatrixXd covariance_of_builds(const GolferModel& model, Trait trait, const SharedEffects& effects) {
    const LevelSds& sds = model.sds[static_cast<std::size_t>(trait)];
    const auto count = static_cast<Eigen::Index>(model.builds.size());
    Eigen::MatrixXd covariance =
        Eigen::MatrixXd::Constant(count, count, sds.golfer * sds.golfer / effects.golfer_weight);
    for (Eigen::Index i = 0; i < count; ++i) {
        const std::size_t family = model.builds[static_cast<std::size_t>(i)].family;
        for (Eigen::Index j = 0; j < count; ++j)
            if (model.builds[static_cast<std::size_t>(j)].family == family)
                covariance(i, j) += sds.club * sds.club / effects.family_weight[family];
        covariance(i, i) += sds.build * sds.build;
    }
    return covariance;
}

}  // namespace landwidth
