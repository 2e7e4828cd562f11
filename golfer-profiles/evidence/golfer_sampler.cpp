#include "golfer-profiles/evidence/golfer_sampler.hpp"

#include <Eigen/LU>
#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "golfer-profiles/evidence/shared_effects.hpp"
#include "golfer-profiles/evidence/shot_sums.hpp"

namespace landwidth {

namespace {

// Sweeps: before the first draw, and of a trial that tells where to start from.
constexpr int burn_in = 80, trial = 40;
// From one draw to the next. Few shots can be read in more than one way (a wide pattern, or a narrow one with
// mishits), and a chain goes from one reading to the other once in some hundred sweeps; many shots leave one.
int sweeps_between_draws(const GolferModel& model) {
    constexpr std::size_t few = 300, many = 2000;
    std::size_t shots = 0;
    for (const ModelBuild& build : model.builds)
        shots += build.shots.size();
    return shots <= few ? 16 : shots <= many ? 8 : 3;
}
// Walks of the spreads and shares a sweep: they only read sums.
constexpr int walks = 2;

MishitPlace mishit_before_shots(const GolferModel& model, std::size_t kind, CounterBits& bits) {
    MishitPlace place = model.mishits[kind];
    for (const Eigen::Index axis : {0, 1}) {
        place.centre[axis] += model.mishit_centre_sd[axis] * standard_normal(bits);
        place.log_sd[axis] += model.log_mishit_spread * standard_normal(bits);
    }
    return place;
}

// Where a chain begins: the kind of its mishits; the usual shot in the middle of the shots or where it is
// typical.
struct Start {
    std::size_t mishit_kind;
    bool near_shots;
};

class Sampler {
  public:
    Sampler(const GolferModel& model, CounterBits& bits, const Start& start)
        : model_(model), state_(typical_state(model)), shots_(model), bits_(bits) {
        state_.mishit_kind = start.mishit_kind;
        state_.mishit = model.mishits[start.mishit_kind];
        if (start.near_shots) start_near_shots();
    }

    void sweep() {
        shots_.place_lost_balls(state_, bits_);
        shots_.label(state_, bits_);
        draw_tail();
        shots_.weigh(model_.tails[state_.tail].tail_dof, bits_);
        draw_places();
        shots_.sum_up(state_);
        for (int walk = 0; walk < walks; ++walk) {
            walk_spreads();
            walk_shares();
        }
        draw_effects();
        draw_mishit_place();
        try_other_mishits();
    }

    const GolferState& state() const { return state_; }
    // Up to a constant, of the shots and of what the golfer has of every trait.
    double log_density() const {
        double sum = shots_.log_likelihood(state_, state_.mishit);
        for (std::size_t t = 0; t < trait_count; ++t)
            sum -= 2.5 * std::log1p(0.25 * std::pow(state_.shared[t].golfer / model_.sds[t].golfer, 2));
        const MishitPlace& typical = model_.mishits[state_.mishit_kind];
        const Eigen::Vector2d off =
            (state_.mishit.centre - typical.centre).cwiseQuotient(model_.mishit_centre_sd);
        const Eigen::Vector2d wider = (state_.mishit.log_sd - typical.log_sd) / model_.log_mishit_spread;
        return sum - 0.5 * (off.squaredNorm() + wider.squaredNorm());
    }

  private:
    // Where the middle of the shots lies, so that the first sweeps need not travel.
    void start_near_shots() {
        for (std::size_t i = 0; i < model_.builds.size(); ++i) {
            const auto middle = shots_.middle_of(i);
            if (!middle) continue;
            of(state_.builds[i], Trait::carry) = middle->x();
            of(state_.builds[i], Trait::direction) = middle->y();
        }
    }

    void draw_tail();
    void draw_places();
    void walk_spreads();
    void walk_shares();
    void draw_effects();
    void draw_mishit_place();
    void try_other_mishits();

    const GolferModel& model_;
    GolferState state_;
    ShotSums shots_;
    CounterBits& bits_;
};

void Sampler::draw_tail() {
    std::vector<double> chances(model_.tails.size());
    double highest = -std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < chances.size(); ++i) {
        chances[i] = model_.tails[i].log_prior - shots_.summed_tail_loss(model_.tails[i].tail_dof);
        highest = std::max(highest, chances[i]);
    }
    double all = 0.0;
    for (double& chance : chances)
        all += chance = std::exp(chance - highest);
    double left = all * uniform(bits_);
    std::size_t drawn = 0;
    while (drawn + 1 < chances.size() && (left -= chances[drawn]) >= 0.0)
        ++drawn;
    state_.tail = drawn;
}

// The unknowns of one axis after the other: builds, days, trend.
void Sampler::draw_places() {
    const auto builds = static_cast<Eigen::Index>(model_.builds.size());
    const auto days = static_cast<Eigen::Index>(model_.sessions);
    const Eigen::Index each = builds + days + (model_.has_trend ? 1 : 0);
    Eigen::MatrixXd precision = Eigen::MatrixXd::Zero(2 * each, 2 * each);
    Eigen::VectorXd pull = Eigen::VectorXd::Zero(2 * each);
    for (const Eigen::Index axis : {0, 1}) {
        const Trait trait = axis == 0 ? Trait::carry : Trait::direction;
        const Eigen::Index first = axis * each;
        const Eigen::MatrixXd prior =
            covariance_of_builds(model_, trait, state_.shared[static_cast<std::size_t>(trait)]).inverse();
        precision.block(first, first, builds, builds) = prior;
        Eigen::VectorXd typical(builds);
        for (Eigen::Index i = 0; i < builds; ++i)
            typical[i] = of(model_.builds[static_cast<std::size_t>(i)].typical, trait);
        pull.segment(first, builds) = prior * typical;
        for (Eigen::Index day = 0; day < days; ++day)
            precision(first + builds + day, first + builds + day) = std::pow(model_.day_sd[axis], -2);
        if (model_.has_trend)
            precision(first + each - 1, first + each - 1) = std::pow(model_.trend_sd[axis], -2);
    }
    shots_.add_to_places(state_, each, precision, pull);
    const Eigen::LLT<Eigen::MatrixXd> root(precision);
    Eigen::VectorXd drawn = root.matrixL().solve(pull);
    for (double& entry : drawn)
        entry += standard_normal(bits_);
    root.matrixU().solveInPlace(drawn);
    for (Eigen::Index i = 0; i < builds; ++i) {
        of(state_.builds[static_cast<std::size_t>(i)], Trait::carry) = drawn[i];
        of(state_.builds[static_cast<std::size_t>(i)], Trait::direction) = drawn[each + i];
    }
    for (Eigen::Index day = 0; day < days; ++day)
        state_.days[static_cast<std::size_t>(day)] = {drawn[builds + day], drawn[each + builds + day]};
    if (model_.has_trend) state_.trend = {drawn[each - 1], drawn[2 * each - 1]};
}

void Sampler::walk_spreads() {
    const double tail_dof = model_.tails[state_.tail].tail_dof;
    for (const Trait trait : {Trait::log_along, Trait::log_across, Trait::twist}) {
        const auto log_likelihood = [&](std::size_t i, double value) {
            Traits tried = state_.builds[i];
            of(tried, trait) = value;
            return shots_.log_likelihood_of_spread(i, tried, tail_dof);
        };
        const double information = trait == Trait::twist ? 1.0 : 2.0;
        TraitWalk(
            model_, state_, trait, log_likelihood,
            [&](std::size_t i) { return information * shots_.usual(i); }, bits_)
            .walk();
    }
}

void Sampler::walk_shares() {
    const auto log_likelihood = [&](std::size_t i, double value) {
        const double usual = shots_.usual(i);
        // log p = -log(1 + exp(-value)), log(1 - p) = log p - value
        return -(shots_.mishits(i) + usual) * std::log1p(std::exp(-value)) - usual * value;
    };
    const auto shots = [&](std::size_t i) {
        if (!model_.builds[i].has_mishits) return 0.0;
        const double all = shots_.mishits(i) + shots_.usual(i);
        const double share = (shots_.mishits(i) + 0.5) / (all + 1.0);
        return all * share * (1.0 - share);
    };
    TraitWalk(model_, state_, Trait::logit_mishits, log_likelihood, shots, bits_).walk();
}

void Sampler::draw_effects() {
    Eigen::VectorXd off(static_cast<Eigen::Index>(model_.builds.size()));
    for (std::size_t t = 0; t < trait_count; ++t) {
        const auto trait = static_cast<Trait>(t);
        for (std::size_t i = 0; i < model_.builds.size(); ++i)
            off[static_cast<Eigen::Index>(i)] =
                of(state_.builds[i], trait) - of(model_.builds[i].typical, trait);
        draw_shared(model_, trait, off, state_.shared[t], bits_);
    }
}

void Sampler::draw_mishit_place() {
    const MishitPlace& typical = model_.mishits[state_.mishit_kind];
    const AxisSums sums = shots_.mishit_sums();
    for (const Eigen::Index axis : {0, 1}) {
        double& centre = state_.mishit.centre[axis];
        double& log_sd = state_.mishit.log_sd[axis];
        const double known = std::pow(model_.mishit_centre_sd[axis], -2);
        const double precision = known + sums.count * std::exp(-2.0 * log_sd);
        const double pull = known * typical.centre[axis] + sums.sum[axis] * std::exp(-2.0 * log_sd);
        centre = pull / precision + standard_normal(bits_) / std::sqrt(precision);
        const double squares =
            sums.squares[axis] - 2.0 * centre * sums.sum[axis] + sums.count * centre * centre;
        const auto log_density = [&](double value) {
            const double off = (value - typical.log_sd[axis]) / model_.log_mishit_spread;
            return -sums.count * value - 0.5 * squares * std::exp(-2.0 * value) - 0.5 * off * off;
        };
        const double step = 2.0 / std::sqrt(2.0 * sums.count + std::pow(model_.log_mishit_spread, -2));
        const double tried = log_sd + step * standard_normal(bits_);
        if (std::log(uniform(bits_)) < log_density(tried) - log_density(log_sd)) log_sd = tried;
    }
}

// An independent proposal from the prior, labels summed out: where few mishits tell, it is taken often.
void Sampler::try_other_mishits() {
    const std::size_t kind = uniform(bits_) < model_.wide_mishits ? 1 : 0;
    const MishitPlace place = mishit_before_shots(model_, kind, bits_);
    const double change = shots_.log_likelihood(state_, place) - shots_.log_likelihood(state_, state_.mishit);
    if (!(std::log(uniform(bits_)) < change)) return;
    state_.mishit_kind = kind;
    state_.mishit = place;
}

// Two heaps of shots can be told apart in more than one way, and where shots are many no chain goes from one
// to the other: the start whose trial finds the densest place.
Start best_start(const GolferModel& model, CounterBits& bits) {
    Start best{0, true};
    double highest = -std::numeric_limits<double>::infinity();
    for (const Start& start : {Start{0, true}, Start{1, true}, Start{0, false}, Start{1, false}}) {
        Sampler sampler(model, bits, start);
        double density = 0.0;
        for (int sweep = 0; sweep < trial; ++sweep) {
            sampler.sweep();
            if (2 * sweep >= trial) density += sampler.log_density();
        }
        if (density <= highest) continue;
        highest = density;
        best = start;
    }
    return best;
}

}  // namespace

GolferState drawn_before_shots(const GolferModel& model, bool short_mishits, CounterBits& bits) {
    GolferState state = typical_state(model);
    for (std::size_t t = 0; t < trait_count; ++t) {
        const Eigen::VectorXd off =
            draw_trait_before_shots(model, static_cast<Trait>(t), state.shared[t], bits);
        for (std::size_t i = 0; i < model.builds.size(); ++i)
            state.builds[i][t] += off[static_cast<Eigen::Index>(i)];
    }
    for (Eigen::Vector2d& day : state.days)
        for (const Eigen::Index axis : {0, 1})
            day[axis] = model.day_sd[axis] * standard_normal(bits);
    if (model.has_trend)
        for (const Eigen::Index axis : {0, 1})
            state.trend[axis] = model.trend_sd[axis] * standard_normal(bits);
    double left = 0.0;
    for (const ModelTail& tail : model.tails)
        left += std::exp(tail.log_prior);
    left *= uniform(bits);
    state.tail = 0;
    while (state.tail + 1 < model.tails.size() &&
           (left -= std::exp(model.tails[state.tail].log_prior)) >= 0.0)
        ++state.tail;
    const bool wide = uniform(bits) < model.wide_mishits && !short_mishits;
    state.mishit_kind = wide ? 1 : 0;
    state.mishit = mishit_before_shots(model, state.mishit_kind, bits);
    return state;
}

std::vector<GolferState> drawn_after_shots(const GolferModel& model, CounterBits& bits, int count) {
    Sampler sampler(model, bits, best_start(model, bits));
    for (int sweep = 0; sweep < burn_in; ++sweep)
        sampler.sweep();
    const int thinning = sweeps_between_draws(model);
    std::vector<GolferState> draws;
    for (int draw = 0; draw < count; ++draw) {
        for (int sweep = 0; sweep < thinning; ++sweep)
            sampler.sweep();
        draws.push_back(sampler.state());
    }
    return draws;
}

}  // namespace landwidth
