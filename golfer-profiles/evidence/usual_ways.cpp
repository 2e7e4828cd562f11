#include "golfer-profiles/evidence/usual_ways.hpp"

#include <Eigen/Cholesky>
#include <Eigen/LU>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "golfer-profiles/evidence/golfer_model.hpp"
#include "golfer-profiles/evidence/shared_effects.hpp"

namespace landwidth {

namespace {

constexpr int most_sets = 150, most_as_odd = 1;
// So many shots tell; more are passed over evenly.
constexpr std::size_t most_looked_at = 600;
constexpr int rounds = 60;
// A way holds at least so much of the shots, and its spread leans on a usual one worth so many.
constexpr double least_share = 0.12, worth = 4.0, usual_spread = 0.7;

struct StandardShot {
    Eigen::Vector2d place;  // in the usual shot's standard deviations
};

struct Part {
    double share = 1.0;
    Eigen::Vector2d centre = Eigen::Vector2d::Zero();
    Eigen::Matrix2d scale = Eigen::Matrix2d::Identity();
};
using Parts = std::vector<Part>;

double log_density(const Part& part, const Eigen::Matrix2d& precision, double tail_dof,
                   const Eigen::Vector2d& place) {
    const Eigen::Vector2d off = place - part.centre;
    return std::log(part.share) + 0.5 * std::log(precision.determinant()) -
           tail_loss(off.dot(precision * off), tail_dof);
}

struct Fit {
    Parts parts;
    double log_likelihood;
};

Fit fitted(Parts parts, const std::vector<StandardShot>& shots, double tail_dof) {
    double likelihood = 0.0;
    std::vector<double> chance(parts.size());
    for (int round = 0; round < rounds; ++round) {
        struct Sums {
            double count = 0.0, weight = 0.0;
            Eigen::Vector2d sum = Eigen::Vector2d::Zero();
            Eigen::Matrix2d squares = Eigen::Matrix2d::Zero();
        };
        std::vector<Sums> sums(parts.size());
        std::vector<Eigen::Matrix2d> precision;
        for (const Part& part : parts)
            precision.push_back(part.scale.inverse());
        const double before = likelihood;
        likelihood = 0.0;
        for (const StandardShot& shot : shots) {
            double all = 0.0;
            for (std::size_t i = 0; i < parts.size(); ++i)
                all += chance[i] = std::exp(log_density(parts[i], precision[i], tail_dof, shot.place));
            likelihood += std::log(all);
            for (std::size_t i = 0; i < parts.size(); ++i) {
                const Eigen::Vector2d off = shot.place - parts[i].centre;
                const double count = chance[i] / all;
                const double weight = std::isinf(tail_dof) ? count
                                                           : count * (tail_dof + 2.0) /
                                                                 (tail_dof + off.dot(precision[i] * off));
                sums[i].count += count;
                sums[i].weight += weight;
                sums[i].sum += weight * shot.place;
                sums[i].squares += weight * shot.place * shot.place.transpose();
            }
        }
        double all = 0.0;
        for (const Sums& part : sums)
            all += part.count;
        for (std::size_t i = 0; i < parts.size(); ++i) {
            parts[i].centre = sums[i].sum / sums[i].weight;
            const Eigen::Matrix2d spread =
                sums[i].squares - sums[i].weight * parts[i].centre * parts[i].centre.transpose();
            parts[i].scale = (worth * usual_spread * usual_spread * Eigen::Matrix2d::Identity() + spread) /
                             (worth + sums[i].count);
            parts[i].share = std::clamp(sums[i].count / all, least_share, 1.0);
        }
        double shares = 0.0;
        for (const Part& part : parts)
            shares += part.share;
        for (Part& part : parts)
            part.share /= shares;
        if (round > 5 && std::abs(likelihood - before) < 1e-4) break;
    }
    return {std::move(parts), likelihood};
}

struct Comparison {
    double gain;  // of two over one, log likelihood
    Parts two;
};

Comparison compared(const std::vector<StandardShot>& shots, double tail_dof) {
    const double one = fitted({Part{}}, shots, tail_dof).log_likelihood;
    Fit best{{}, -std::numeric_limits<double>::infinity()};
    const Eigen::Matrix2d scale = usual_spread * usual_spread * Eigen::Matrix2d::Identity();
    // Left and right; a few far right, a few far left.
    for (const auto& [share, side] : {std::pair(0.5, 0.8), std::pair(0.75, 1.3), std::pair(0.75, -1.3)}) {
        const double other = -side * (1.0 - share) / share;
        Fit fit = fitted({Part{share, {0.0, other}, scale}, Part{1.0 - share, {0.0, side}, scale}}, shots,
                         tail_dof);
        if (fit.log_likelihood > best.log_likelihood) best = std::move(fit);
    }
    return {best.log_likelihood - one, std::move(best.parts)};
}

// Shots of a family, each set on the middle and the spread of its own build's.
struct FamilyShots {
    std::string name;
    std::vector<StandardShot> shots;
    double tail_dof = 0.0, correlation = 0.0;
};

// All but those that fall far short: a second way may be what the one t took for wide mishits.
std::vector<Eigen::Vector2d> not_short(const Club& club) {
    constexpr double short_share = 0.8;
    std::vector<Eigen::Vector2d> places;
    for (const ShotOffset& shot : club.learnt_from->shots)
        if (shot.carry_m >= short_share * club.pattern->usual.centre.carry_m)
            places.emplace_back(shot.carry_m, shot.side_m);
    return places;
}

void add_standardised(const std::vector<Eigen::Vector2d>& places, FamilyShots& family) {
    const auto count = static_cast<double>(places.size());
    Eigen::Vector2d mean = Eigen::Vector2d::Zero();
    for (const Eigen::Vector2d& place : places)
        mean += place / count;
    Eigen::Matrix2d covariance = Eigen::Matrix2d::Zero();
    for (const Eigen::Vector2d& place : places)
        covariance += (place - mean) * (place - mean).transpose() / count;
    const Eigen::Vector2d sd = covariance.diagonal().cwiseSqrt();
    if (!(sd.minCoeff() > 0.0)) return;
    for (const Eigen::Vector2d& place : places)
        family.shots.push_back({(place - mean).cwiseQuotient(sd)});
    family.correlation = covariance(0, 1) / sd.prod();
}

std::vector<FamilyShots> families_of(const Golfer& golfer) {
    constexpr std::size_t fewest_of_build = 5;  // fewer have no spread of their own
    std::vector<FamilyShots> families;
    for (const Club& club : golfer.clubs) {
        if (!club.pattern || !club.learnt_from) continue;
        const std::vector<Eigen::Vector2d> places = not_short(club);
        if (places.size() < fewest_of_build) continue;
        const std::string name(family_of(club));
        auto family =
            std::ranges::find_if(families, [&](const FamilyShots& f) { return same_name(f.name, name); });
        if (family == families.end()) family = families.insert(families.end(), FamilyShots{name, {}});
        add_standardised(places, *family);
        family->tail_dof = club.pattern->tail_dof;
    }
    return families;
}

// Two heaps and not a heap with a wide rim: that is what mishits are for.
bool are_apart(const std::array<Way, 2>& ways) {
    constexpr double least_apart = 1.8, most_unlike = 2.5;
    const double wider = std::max(ways[0].side_spread, ways[1].side_spread);
    const double narrower = std::min(ways[0].side_spread, ways[1].side_spread);
    return std::abs(ways[0].side_sds - ways[1].side_sds) > least_apart * std::sqrt(wider * narrower) &&
           wider < most_unlike * narrower;
}

void thin_out(std::vector<StandardShot>& shots) {
    std::ranges::sort(shots, {}, [](const StandardShot& s) { return std::pair(s.place.y(), s.place.x()); });
    if (shots.size() <= most_looked_at) return;
    std::vector<StandardShot> kept;
    for (std::size_t i = 0; i < most_looked_at; ++i)
        kept.push_back(shots[i * shots.size() / most_looked_at]);
    shots = std::move(kept);
}

// Ways with other shares, and where their whole then lies, in deviations of the whole before.
struct SharedOut {
    std::array<Way, 2> ways;
    Eigen::Vector2d mean, sd;
};

SharedOut shared_out(const std::array<Way, 2>& ways, double share_of_second) {
    SharedOut result{ways, {}, {}};
    result.ways[0].share = 1.0 - share_of_second;
    result.ways[1].share = share_of_second;
    const auto settle = [&](Eigen::Index axis, double Way::*offset, double Way::*spread) {
        double mean = 0.0, squares = 0.0;
        for (const Way& way : result.ways)
            mean += way.share * way.*offset;
        for (const Way& way : result.ways)
            squares += way.share * (std::pow(way.*offset - mean, 2) + std::pow(way.*spread, 2));
        const double sd = std::sqrt(squares);
        for (Way& way : result.ways) {
            way.*offset = (way.*offset - mean) / sd;
            way.*spread /= sd;
        }
        result.mean[axis] = mean;
        result.sd[axis] = sd;
    };
    settle(0, &Way::carry_sds, &Way::carry_spread);
    settle(1, &Way::side_sds, &Way::side_spread);
    return result;
}

std::array<Way, 2> ways_of(const Parts& parts, double tail_dof) {
    const double sd_of_scale = std::isinf(tail_dof) ? 1.0 : std::sqrt(tail_dof / (tail_dof - 2.0));
    std::array<Way, 2> ways{};
    for (std::size_t i = 0; i < ways.size(); ++i) {
        const double along = std::sqrt(parts[i].scale(0, 0)), across = std::sqrt(parts[i].scale(1, 1));
        ways[i] = {parts[i].share,      parts[i].centre.x(),  parts[i].centre.y(),
                   sd_of_scale * along, sd_of_scale * across, parts[i].scale(0, 1) / (along * across)};
    }
    return shared_out(ways, ways[1].share).ways;
}

// A set of as many shots from the one t.
std::vector<StandardShot> drawn_set(const FamilyShots& family, CounterBits& bits) {
    const double dof = family.tail_dof;
    const double scale = std::isinf(dof) ? 1.0 : std::sqrt((dof - 2.0) / dof);
    const double rho = family.correlation;
    std::vector<StandardShot> set;
    for (std::size_t i = 0; i < family.shots.size(); ++i) {
        const double first = standard_normal(bits), second = standard_normal(bits);
        const double weight = std::isinf(dof) ? 1.0 : gamma_variate(0.5 * dof, bits) / (0.5 * dof);
        const Eigen::Vector2d place(first, rho * first + std::sqrt(1.0 - rho * rho) * second);
        set.push_back({scale / std::sqrt(weight) * place});
    }
    return set;
}

}  // namespace

std::array<Way, 2> with_share(const std::array<Way, 2>& ways, double share_of_second) {
    return shared_out(ways, share_of_second).ways;
}

void go_ways(ShotPattern& pattern, double share_of_second) {
    const SharedOut out = shared_out(*pattern.ways, share_of_second);
    Spread& usual = pattern.usual;
    usual.centre.carry_m += out.mean.x() * usual.carry_sd_m;
    usual.centre.side_m += out.mean.y() * usual.side_sd_m;
    usual.carry_sd_m *= out.sd.x();
    usual.side_sd_m *= out.sd.y();
    pattern.ways = out.ways;
}

std::vector<ShapeFound> shapes_found(const Golfer& golfer) {
    std::vector<ShapeFound> found;
    for (FamilyShots& family : families_of(golfer)) {
        if (family.shots.size() < fewest_for_shape) continue;
        const std::size_t shots = family.shots.size();
        thin_out(family.shots);
        const Comparison recorded = compared(family.shots, family.tail_dof);
        CounterBits bits(mixed(shots));
        const std::array<Way, 2> ways = ways_of(recorded.two, family.tail_dof);
        if (!are_apart(ways)) continue;
        int as_odd = 0, drawn = 0;
        while (drawn < most_sets && as_odd <= most_as_odd) {
            ++drawn;
            if (compared(drawn_set(family, bits), family.tail_dof).gain >= recorded.gain) ++as_odd;
        }
        if (as_odd > most_as_odd) continue;
        found.push_back({family.name, ways, shots, as_odd, drawn});
    }
    return found;
}

}  // namespace landwidth
