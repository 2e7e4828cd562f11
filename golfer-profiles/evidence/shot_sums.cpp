#include "golfer-profiles/evidence/shot_sums.hpp"

#include <Eigen/LU>
#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <tuple>

#include "golfer-profiles/evidence/log_odds.hpp"
#include "golfer-profiles/evidence/shared_effects.hpp"
#include "golfer-profiles/order_statistics.hpp"

namespace landwidth {

namespace {

// The densities of a build's usual shots and mishits at a place, up to a factor that they share.
class PartDensities {
  public:
    PartDensities(const ModelBuild& build, const Traits& traits, double tail_dof, const MishitPlace& mishits)
        : usual_(usual_parts(build, traits, tail_dof)),
          tail_dof_(tail_dof),
          mishits_(mishits),
          inverse_sd_((-mishits.log_sd).array().exp()),
          mishit_constant_(-std::numeric_limits<double>::infinity()) {
        if (!build.has_mishits) return;
        const double log_odds = of(traits, Trait::logit_mishits);
        const double log_share = -std::log1p(std::exp(-log_odds));
        usual_constant_ = log_share - log_odds;
        mishit_constant_ = log_share - mishits.log_sd.sum();
    }

    const UsualParts& usual() const { return usual_; }
    double squared_distance(std::size_t way, const Eigen::Vector2d& off) const {
        const Eigen::Vector2d from_way = off - usual_.parts[way].offset;
        return from_way.dot(usual_.parts[way].precision * from_way);
    }
    double log_way(std::size_t way, double squared_distance) const {
        const UsualPart& part = usual_.parts[way];
        return usual_constant_ + part.log_share + part.log_root - tail_loss(squared_distance, tail_dof_);
    }
    double log_mishit(const Eigen::Vector2d& place) const {
        return mishit_constant_ - 0.5 * (place - mishits_.centre).cwiseProduct(inverse_sd_).squaredNorm();
    }

  private:
    UsualParts usual_;
    double tail_dof_;
    double usual_constant_ = 0.0;
    MishitPlace mishits_;
    Eigen::Vector2d inverse_sd_;
    double mishit_constant_;
};

std::vector<PartDensities> densities_of(const GolferModel& model, const GolferState& state,
                                        const MishitPlace& mishits) {
    std::vector<PartDensities> densities;
    for (std::size_t i = 0; i < model.builds.size(); ++i)
        densities.emplace_back(model.builds[i], state.builds[i], model.tails[state.tail].tail_dof, mishits);
    return densities;
}

double log_sum(double a, double b) {
    const double larger = std::max(a, b);
    return std::isinf(larger) ? larger : larger + std::log1p(std::exp(std::min(a, b) - larger));
}

// The usual shots that a pattern stands for whose shots are not at hand.
double known_usual(const ModelBuild& build) {
    const double mishits = build.has_mishits ? share_of_log_odds(of(build.known, Trait::logit_mishits)) : 0.0;
    return build.known_shots * (1.0 - mishits);
}

}  // namespace

ShotSums::ShotSums(const GolferModel& model)
    : model_(model), usual_(model.builds.size()), known_(model.builds.size()), mishits_(model.builds.size()) {
    for (std::size_t i = 0; i < model.builds.size(); ++i) {
        std::vector<ModelShot> shots = model.builds[i].shots;
        std::ranges::sort(shots, {}, [](const ModelShot& shot) {
            return std::tuple(shot.place.x(), shot.place.y(), shot.session, shot.when);
        });
        for (const ModelShot& shot : shots)
            shots_.push_back({shot.place, i, shot.session, shot.when, shot.weight, false});
        for (int lost = 0; lost < model.builds[i].lost; ++lost)
            shots_.push_back({Eigen::Vector2d::Zero(), i, std::nullopt, 0.0, 1.0, true});
    }
}

Eigen::Vector2d ShotSums::centre_of(const Shot& shot, const GolferState& state) const {
    const Traits& traits = state.builds[shot.build];
    Eigen::Vector2d centre(of(traits, Trait::carry), of(traits, Trait::direction));
    if (shot.session) centre += state.days[*shot.session];
    return centre + shot.when * state.trend;
}

void ShotSums::place_lost_balls(const GolferState& state, CounterBits& bits) {
    constexpr int most_tries = 2000;
    for (Shot& shot : shots_) {
        if (!shot.lost) continue;
        const Traits& traits = state.builds[shot.build];
        const double share =
            model_.builds[shot.build].has_mishits ? share_of_log_odds(of(traits, Trait::logit_mishits)) : 0.0;
        const Eigen::Matrix2d root = scale_of(traits).llt().matrixL();
        const double dof = model_.tails[state.tail].tail_dof;
        for (int tries = 0; tries < most_tries; ++tries) {
            const bool mishit = uniform(bits) < share;
            const double first = standard_normal(bits);
            const Eigen::Vector2d normal(first, standard_normal(bits));
            const double weight = std::isinf(dof) ? 1.0 : gamma_variate(0.5 * dof, bits) / (0.5 * dof);
            shot.place = mishit ? Eigen::Vector2d(state.mishit.centre.array() +
                                                  state.mishit.log_sd.array().exp() * normal.array())
                                : Eigen::Vector2d(centre_of(shot, state) + root * normal / std::sqrt(weight));
            if (std::abs(shot.place.y()) > model_.lost_beyond) break;
        }
        // A golfer so straight that no ball of the pattern goes there: the nearest place that does.
        if (std::abs(shot.place.y()) <= model_.lost_beyond)
            shot.place.y() = std::copysign(model_.lost_beyond, shot.place.y());
    }
}

void ShotSums::label(const GolferState& state, CounterBits& bits) {
    const std::vector<PartDensities> densities = densities_of(model_, state, state.mishit);
    std::ranges::fill(mishits_, 0.0);
    mishit_sums_ = {};
    for (Shot& shot : shots_) {
        const PartDensities& density = densities[shot.build];
        const Eigen::Vector2d off = shot.place - centre_of(shot, state);
        shot.mishit = false;
        shot.way = 0;
        shot.distance = density.squared_distance(0, off);
        double log_usual = density.log_way(0, shot.distance);
        if (density.usual().count > 1) {
            const double other_distance = density.squared_distance(1, off);
            const double other = density.log_way(1, other_distance);
            if (uniform(bits) * (1.0 + std::exp(log_usual - other)) < 1.0) {
                shot.way = 1;
                shot.distance = other_distance;
            }
            log_usual = log_sum(log_usual, other);
        }
        if (!model_.builds[shot.build].has_mishits) continue;
        const double odds = std::exp(log_usual - density.log_mishit(shot.place));
        if (uniform(bits) * (1.0 + odds) >= 1.0) continue;
        shot.mishit = true;
        mishits_[shot.build] += shot.weight;
        mishit_sums_.count += shot.weight;
        mishit_sums_.sum += shot.weight * shot.place;
        mishit_sums_.squares += shot.weight * shot.place.cwiseAbs2();
    }
    for (std::size_t i = 0; i < model_.builds.size(); ++i) {
        const ModelBuild& build = model_.builds[i];
        if (build.has_mishits)
            mishits_[i] += build.known_shots * share_of_log_odds(of(build.known, Trait::logit_mishits));
    }
}

// One logarithm for many shots.
double ShotSums::summed_tail_loss(double tail_dof) const {
    constexpr double far_from_overflow = 1e200;
    double plain = 0.0;
    double logs = 0.0;
    double product = 1.0;
    for (const Shot& shot : shots_) {
        if (shot.mishit) continue;
        plain += shot.distance;
        product *= 1.0 + shot.distance / tail_dof;
        if (product > far_from_overflow) {
            logs += std::log(product);
            product = 1.0;
        }
    }
    if (std::isinf(tail_dof)) return 0.5 * plain;
    return 0.5 * (tail_dof + 2.0) * (logs + std::log(product));
}

void ShotSums::weigh(double tail_dof, CounterBits& bits) {
    for (Shot& shot : shots_) {
        if (shot.mishit) continue;
        const double gamma = std::isinf(tail_dof) ? 1.0
                                                  : gamma_variate(0.5 * (tail_dof + 2.0), bits) /
                                                        (0.5 * (tail_dof + shot.distance));
        shot.precision = shot.weight * gamma;
    }
}

void ShotSums::add_to_places(const GolferState& state, Eigen::Index each, Eigen::MatrixXd& precision,
                             Eigen::VectorXd& pull) const {
    const auto builds = static_cast<Eigen::Index>(model_.builds.size());
    std::vector<UsualParts> usual;
    for (std::size_t i = 0; i < model_.builds.size(); ++i)
        usual.push_back(usual_parts(model_.builds[i], state.builds[i], model_.tails[state.tail].tail_dof));
    const auto add = [&](Eigen::Index at, Eigen::Index other, double factor, const Eigen::Matrix2d& block) {
        for (const Eigen::Index row : {0, 1})
            for (const Eigen::Index column : {0, 1})
                precision(row * each + at, column * each + other) += factor * block(row, column);
    };
    struct Reading {
        Eigen::Index unknown;
        double factor;
    };
    const auto read = [&](const std::vector<Reading>& readings, double weight, const Eigen::Matrix2d& scale,
                          const Eigen::Vector2d& place) {
        const Eigen::Vector2d told = weight * scale * place;
        for (const auto& [unknown, factor] : readings) {
            pull[unknown] += factor * told.x();
            pull[each + unknown] += factor * told.y();
            for (const auto& [other, its_factor] : readings)
                add(unknown, other, weight * factor * its_factor, scale);
        }
    };
    std::vector<Reading> readings;
    struct Sums {
        double weight = 0.0;
        Eigen::Vector2d places = Eigen::Vector2d::Zero();
    };
    std::vector<std::array<Sums, 2>> alone(model_.builds.size());
    for (const Shot& shot : shots_) {
        if (shot.mishit) continue;
        const UsualPart& part = usual[shot.build].parts[shot.way];
        const Eigen::Vector2d place = shot.place - part.offset;
        if (!shot.session && shot.when == 0.0) {  // only its build is unknown: added up first
            Sums& sums = alone[shot.build][shot.way];
            sums.weight += shot.precision;
            sums.places += shot.precision * place;
            continue;
        }
        readings = {{static_cast<Eigen::Index>(shot.build), 1.0}};
        if (shot.session) readings.push_back({builds + static_cast<Eigen::Index>(*shot.session), 1.0});
        if (model_.has_trend) readings.push_back({each - 1, shot.when});
        read(readings, shot.precision, part.precision, place);
    }
    for (std::size_t i = 0; i < model_.builds.size(); ++i) {
        const ModelBuild& build = model_.builds[i];
        readings = {{static_cast<Eigen::Index>(i), 1.0}};
        for (std::size_t way = 0; way < usual[i].count; ++way) {
            const Sums& sums = alone[i][way];
            if (sums.weight > 0.0)
                read(readings, sums.weight, usual[i].parts[way].precision, sums.places / sums.weight);
        }
        if (build.known_shots > 0.0) {
            read(readings, known_usual(build), scale_of(state.builds[i]).inverse(),
                 {of(build.known, Trait::carry), of(build.known, Trait::direction)});
        }
    }
}

void ShotSums::sum_up(const GolferState& state) {
    std::ranges::fill(usual_, std::array<PartSums, 2>{});
    for (const Shot& shot : shots_) {
        if (shot.mishit) continue;
        const Eigen::Vector2d off = shot.place - centre_of(shot, state);
        PartSums& sums = usual_[shot.build][shot.way];
        sums.count += shot.weight;
        sums.weight += shot.precision;
        sums.sum += shot.precision * off;
        sums.squares += shot.precision * off * off.transpose();
    }
    for (std::size_t i = 0; i < model_.builds.size(); ++i) {
        const ModelBuild& build = model_.builds[i];
        if (!(build.known_shots > 0.0)) continue;
        const double usual = known_usual(build);
        const Eigen::Vector2d off(of(build.known, Trait::carry) - of(state.builds[i], Trait::carry),
                                  of(build.known, Trait::direction) - of(state.builds[i], Trait::direction));
        known_[i] = {usual, usual, usual * off, usual * (scale_of(build.known) + off * off.transpose())};
    }
}

double ShotSums::log_likelihood_of_spread(std::size_t build, const Traits& traits, double tail_dof) const {
    const auto of_part = [](const PartSums& sums, const UsualPart& part) {
        const Eigen::Matrix2d squares = sums.squares - sums.sum * part.offset.transpose() -
                                        part.offset * sums.sum.transpose() +
                                        sums.weight * part.offset * part.offset.transpose();
        return sums.count * part.log_root - 0.5 * part.precision.cwiseProduct(squares).sum();
    };
    const ModelBuild& own = model_.builds[build];
    const UsualParts usual = usual_parts(own, traits, tail_dof);
    double sum = 0.0;
    for (std::size_t way = 0; way < usual.count; ++way)
        sum += of_part(usual_[build][way], usual.parts[way]);
    if (own.known_shots > 0.0) {
        const Eigen::Matrix2d precision = scale_of(traits).inverse();
        sum += of_part(known_[build],
                       {0.0, Eigen::Vector2d::Zero(), precision, 0.5 * std::log(precision.determinant())});
    }
    return sum;
}

double ShotSums::log_likelihood(const GolferState& state, const MishitPlace& mishits) const {
    const std::vector<PartDensities> densities = densities_of(model_, state, mishits);
    double sum = 0.0;
    for (const Shot& shot : shots_) {
        const PartDensities& density = densities[shot.build];
        const Eigen::Vector2d off = shot.place - centre_of(shot, state);
        double log_density = density.log_mishit(shot.place);
        for (std::size_t way = 0; way < density.usual().count; ++way)
            log_density = log_sum(log_density, density.log_way(way, density.squared_distance(way, off)));
        sum += shot.weight * log_density;
    }
    return sum;
}

std::optional<Eigen::Vector2d> ShotSums::middle_of(std::size_t build) const {
    std::vector<double> along, across;
    for (const Shot& shot : shots_) {
        if (shot.build != build || shot.lost) continue;
        along.push_back(shot.place.x());
        across.push_back(shot.place.y());
    }
    if (along.empty()) return std::nullopt;
    return Eigen::Vector2d(median(std::move(along)), median(std::move(across)));
}

}  // namespace landwidth
