#include "golfer-profiles/evidence/golfer_model.hpp"

#include <Eigen/LU>
#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <string_view>
#include <utility>

#include "golfer-profiles/evidence/log_odds.hpp"
#include "golfer-profiles/order_statistics.hpp"

namespace landwidth {

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();
// Below, a variance hardly exists; above, a t is a normal to the eye.
constexpr double fattest_tail = 3.0, thinnest_tail = 60.0;
// A correlation further from 0 is one line of shots; the format and the densities need an ellipse.
constexpr double strongest_correlation = 0.9999;
constexpr double least_share = 1e-4, most_share = 0.49;
constexpr double least_ratio = 0.6, most_ratio = 1.7;
constexpr double shots_that_tell = 3.0;

// Standard deviation to scale of a t.
double scale_share(double tail_dof) {
    return std::isinf(tail_dof) ? 1.0 : std::sqrt((tail_dof - 2.0) / tail_dof);
}

// A pattern in relative numbers of length L.
Traits traits_of(const ShotPattern& pattern, double length_m) {
    const Spread& usual = pattern.usual;
    const double scale = scale_share(pattern.tail_dof);
    Traits traits{};
    of(traits, Trait::carry) = usual.centre.carry_m / length_m - 1.0;
    of(traits, Trait::direction) = usual.centre.side_m / length_m;
    of(traits, Trait::log_along) = std::log(scale * usual.carry_sd_m / length_m);
    of(traits, Trait::log_across) = std::log(scale * usual.side_sd_m / length_m);
    of(traits, Trait::twist) =
        std::atanh(std::clamp(usual.correlation, -strongest_correlation, strongest_correlation));
    of(traits, Trait::logit_mishits) =
        log_odds_of(std::clamp(pattern.mishit ? pattern.mishit->share : 0.0, least_share, most_share));
    return traits;
}

// Known beforehand at L times the ratio that the golfer is guessed to be longer: spreads grow with the
// length, the mean carry stays where the prior has it.
Traits typical_traits(const ShotPattern& known, double length_m) {
    Traits traits = traits_of(known, known.usual.centre.carry_m);
    of(traits, Trait::carry) = known.usual.centre.carry_m / length_m - 1.0;
    return traits;
}

const ShotPattern& known_before(const Club& club) {
    return club.learnt_from ? club.learnt_from->prior : *club.pattern;
}

void add_evidence(const Club& club, const Golfer& golfer, bool days_differ, ModelBuild& build) {
    const ShotPattern& before = known_before(club);
    if (before.shots > 0) {
        build.known_shots = before.shots;
        build.known = traits_of(before, build.length_m);
    }
    if (!club.learnt_from) return;
    const LearntFrom& learnt = *club.learnt_from;
    build.lost = learnt.lost;
    for (std::size_t i = 0; i < learnt.shots.size(); ++i) {
        ModelShot shot{
            {learnt.shots[i].carry_m / build.length_m - 1.0, learnt.shots[i].side_m / build.length_m}, {}};
        if (!learnt.times.empty()) {
            const ShotTime& time = learnt.times[i];
            shot.weight = golfer.sessions[time.session].weight;
            shot.when = time.when - 0.5;
            if (days_differ) shot.session = time.session;
        }
        build.shots.push_back(shot);
    }
}

// Steps of the fourth root of 2 down and up from the typical value; infinity takes the place of the next one
// up, and `thinnest_tail`'s where it is typical itself.
void set_tails(GolferModel& model, double typical, double log_differs) {
    if (!(log_differs > 0.0)) {
        model.tails = {{typical, 0.0}};
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

// The golfer's mishits are one place for all clubs: the mean of what is typical of each.
void set_mishits(GolferModel& model, const Golfer& golfer, const GolferPrior& prior) {
    double clubs = 0.0;
    MishitPlace typical;
    double along = 0.0, across = 0.0;
    for (const ModelBuild& build : model.builds) {
        const ShotPattern& known = known_before(golfer.clubs[build.club]);
        along += of(build.typical, Trait::log_along);
        across += of(build.typical, Trait::log_across);
        if (!known.mishit) continue;
        const Spread& spread = known.mishit->spread;
        const double carry = known.usual.centre.carry_m;
        clubs += 1.0;
        typical.centre += Eigen::Vector2d(spread.centre.carry_m / carry - 1.0, spread.centre.side_m / carry);
        typical.log_sd +=
            Eigen::Vector2d(std::log(spread.carry_sd_m / carry), std::log(spread.side_sd_m / carry));
    }
    if (clubs > 0.0) typical = {typical.centre / clubs, typical.log_sd / clubs};
    const double wider = std::log(prior.wide_mishit_scale);
    const auto builds = static_cast<double>(model.builds.size());
    model.mishits = {typical,
                     MishitPlace{{0.0, 0.0}, {along / builds + 0.5 * wider, across / builds + wider}}};
    model.wide_mishits = prior.wide_mishits;
    model.mishit_centre_sd = {prior.mishit_along, prior.mishit_across};
    model.log_mishit_spread = prior.log_mishit_spread;
}

}  // namespace

bool GolferModel::has_evidence() const {
    return std::ranges::any_of(builds, [](const ModelBuild& build) {
        return !build.shots.empty() || build.lost > 0 || build.known_shots > 0.0;
    });
}

GolferModel golfer_model(const Golfer& golfer, const GolferPrior& prior, double length_ratio) {
    GolferModel model;
    const double wider = golfer.handicap_known ? 1.0 : prior.unknown_level;
    model.sds = {prior.carry,      prior.direction, prior.log_spread,
                 prior.log_spread, prior.twist,     prior.logit_mishits};
    for (LevelSds& sds : model.sds)
        sds.golfer *= wider;
    const bool days_differ = golfer.sessions.size() > 1;
    model.sessions = days_differ ? golfer.sessions.size() : 0;
    model.has_trend = !golfer.sessions.empty();
    std::vector<std::string_view> families;
    std::vector<double> log_tails;
    for (std::size_t club = 0; club < golfer.clubs.size(); ++club) {
        const Club& own = golfer.clubs[club];
        if (!own.pattern) continue;
        const std::string_view name = family_of(own);
        auto family = std::ranges::find_if(families, [&](std::string_view f) { return same_name(f, name); });
        if (family == families.end()) family = families.insert(families.end(), name);
        const ShotPattern& known = known_before(own);
        ModelBuild build{.club = club,
                         .family = static_cast<std::size_t>(family - families.begin()),
                         .length_m = length_ratio * known.usual.centre.carry_m};
        build.typical = typical_traits(known, build.length_m);
        build.has_mishits = known.mishit.has_value();
        build.ways = own.pattern->ways;
        add_evidence(own, golfer, days_differ, build);
        log_tails.push_back(known.tail_dof);
        model.builds.push_back(std::move(build));
    }
    model.families = families.size();
    set_tails(model, log_tails.empty() ? infinite : median(log_tails), prior.log_tail_differs);
    if (!model.builds.empty()) set_mishits(model, golfer, prior);
    model.day_sd = {prior.day_carry, prior.day_direction};
    model.trend_sd = {prior.trend_carry, prior.trend_direction};
    model.lost_beyond = prior.lost_beyond;
    return model;
}

double usual_length_ratio(const Golfer& golfer) {
    std::vector<double> ratios;
    double shots = 0.0;
    for (const Club& club : golfer.clubs) {
        if (!club.learnt_from || club.learnt_from->shots.empty()) continue;
        std::vector<double> carries;
        for (const ShotOffset& shot : club.learnt_from->shots)
            carries.push_back(shot.carry_m);
        shots += static_cast<double>(carries.size());
        ratios.push_back(median(std::move(carries)) / club.learnt_from->prior.usual.centre.carry_m);
    }
    if (ratios.empty()) return 1.0;
    const double ratio = std::clamp(median(std::move(ratios)), least_ratio, most_ratio);
    return std::pow(ratio, std::min(1.0, shots / shots_that_tell));
}

GolferState typical_state(const GolferModel& model) {
    GolferState state;
    for (const ModelBuild& build : model.builds)
        state.builds.push_back(build.typical);
    for (SharedEffects& effects : state.shared) {
        effects.family.assign(model.families, 0.0);
        effects.family_weight.assign(model.families, 1.0);
    }
    state.days.assign(model.sessions, Eigen::Vector2d::Zero());
    state.tail = model.usual_tail;
    state.mishit = model.mishits[0];
    return state;
}

Eigen::Matrix2d scale_of(const Traits& traits) {
    const double along = std::exp(of(traits, Trait::log_along));
    const double across = std::exp(of(traits, Trait::log_across));
    const double both = std::tanh(of(traits, Trait::twist)) * along * across;
    Eigen::Matrix2d scale;
    scale << along * along, both, both, across * across;
    return scale;
}

// Offsets of ways are told in standard deviations, which are longer than scales where the tail is fat.
UsualParts usual_parts(const ModelBuild& build, const Traits& traits, double tail_dof) {
    UsualParts result;
    const auto set = [](UsualPart& part, const Eigen::Matrix2d& scale) {
        part.precision = scale.inverse();
        part.log_root = 0.5 * std::log(part.precision.determinant());
    };
    if (!build.ways) {
        set(result.parts[0], scale_of(traits));
        return result;
    }
    result.count = 2;
    const double along = std::exp(of(traits, Trait::log_along)),
                 across = std::exp(of(traits, Trait::log_across));
    const double sd_of_scale = 1.0 / scale_share(tail_dof);
    for (std::size_t i = 0; i < result.count; ++i) {
        const Way& way = (*build.ways)[i];
        UsualPart& part = result.parts[i];
        part.log_share = std::log(way.share);
        part.offset = sd_of_scale * Eigen::Vector2d(along * way.carry_sds, across * way.side_sds);
        Traits own = traits;
        of(own, Trait::log_along) += std::log(way.carry_spread);
        of(own, Trait::log_across) += std::log(way.side_spread);
        of(own, Trait::twist) =
            std::atanh(std::clamp(way.correlation, -strongest_correlation, strongest_correlation));
        set(part, scale_of(own));
    }
    return result;
}

ShotPattern pattern_in(const GolferModel& model, const GolferState& state, std::size_t build,
                       const ShotPattern& own) {
    // A ball lands in front of the golfer; a wide prior of a short club need not know that.
    constexpr double shortest_carry_m = Yards{1.0}.metres();
    const Traits& traits = state.builds[build];
    const double length = model.builds[build].length_m;
    const double tail_dof = model.tails[state.tail].tail_dof;
    const auto sd = [&](double log_scale) {
        return std::min(length * std::exp(log_scale) / scale_share(tail_dof), largest_sd_m);
    };
    ShotPattern pattern{.usual = {{std::max(length * (1.0 + of(traits, Trait::carry)), shortest_carry_m),
                                   length * of(traits, Trait::direction)},
                                  sd(of(traits, Trait::log_along)),
                                  sd(of(traits, Trait::log_across)),
                                  std::clamp(std::tanh(of(traits, Trait::twist)), -strongest_correlation,
                                             strongest_correlation)},
                        .tail_dof = tail_dof,
                        .run_m = own.run_m,
                        .mishit = {},
                        .ways = own.ways,
                        .shots = own.shots};
    if (model.builds[build].has_mishits) {
        const MishitPlace& place = state.mishit;
        const auto mishit_sd = [&](double log_sd) {
            return std::min(length * std::exp(log_sd), largest_sd_m);
        };
        pattern.mishit =
            Mishit{share_of_log_odds(of(traits, Trait::logit_mishits)),
                   {{std::max(length * (1.0 + place.centre.x()), 0.0), length * place.centre.y()},
                    mishit_sd(place.log_sd.x()),
                    mishit_sd(place.log_sd.y()),
                    0.0}};
    }
    return pattern;
}

double tail_loss(double squared_distance, double tail_dof) {
    if (std::isinf(tail_dof)) return 0.5 * squared_distance;
    return 0.5 * (tail_dof + 2.0) * std::log1p(squared_distance / tail_dof);
}

}  // namespace landwidth
