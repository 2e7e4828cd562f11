#include "planner/engine/field/lie_effects.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace landwidth {

namespace {

constexpr double most_mishits = 0.6;

bool is_wood(ClubKind kind) {
    return kind == ClubKind::driver || kind == ClubKind::mini_driver || kind == ClubKind::fairway_wood;
}

bool is_tee_only(ClubKind kind) {
    return kind == ClubKind::driver || kind == ClubKind::mini_driver;
}

struct Effect {
    double carry = 1.0;
    double spread = 1.0;
    double mishits = 0.0;  // added to the share
};

std::optional<Effect> effect_of(ClubKind kind, Stance stance, const EngineAssumptions& a) {
    if (kind == ClubKind::putter || (stance != Stance::tee && is_tee_only(kind))) return std::nullopt;
    switch (stance) {
        case Stance::tee:
        case Stance::fairway:
            return Effect{};
        case Stance::rough:
            return Effect{
                is_wood(kind) || kind == ClubKind::hybrid ? a.rough_carry_woods : a.rough_carry_irons,
                a.rough_spread, a.rough_mishits};
        case Stance::bunker:
            if (is_wood(kind)) return std::nullopt;
            return Effect{a.bunker_carry, a.bunker_spread, a.bunker_mishits};
        case Stance::trees:
            if (is_wood(kind)) return std::nullopt;
            return Effect{1.0, a.recovery_spread, 0.0};
    }
    return std::nullopt;
}

void scale(Spread& spread, double carry, double sd) {
    spread.centre.carry_m *= carry;
    spread.centre.side_m *= carry;
    spread.carry_sd_m *= sd;
    spread.side_sd_m *= sd;
}

}  // namespace

Stance stance_on(Lie lie) {
    switch (lie) {
        case Lie::teeing_area:
            return Stance::tee;
        case Lie::fairway:
        case Lie::green:
            return Stance::fairway;
        case Lie::rough:
            return Stance::rough;
        case Lie::bunker:
            return Stance::bunker;
        case Lie::trees:
            return Stance::trees;
        default:
            throw std::logic_error("a ball out of play has no stance");
    }
}

double run_share(Lie landed_on, const EngineAssumptions& assumptions) {
    switch (landed_on) {
        case Lie::teeing_area:
        case Lie::fairway:
            return 1.0;
        case Lie::rough:
            return assumptions.run_share_rough;
        case Lie::green:
            return assumptions.run_share_green;
        case Lie::trees:
            return assumptions.run_share_trees;
        default:
            return 0.0;
    }
}

std::optional<ShotPattern> pattern_from(const Club& club, Stance stance, double swing,
                                        const EngineAssumptions& assumptions) {
    if (!club.pattern) return std::nullopt;
    const std::optional<Effect> effect = effect_of(club.kind, stance, assumptions);
    if (!effect) return std::nullopt;
    ShotPattern pattern = *club.pattern;
    const double carry = effect->carry * swing;
    const double sd = effect->carry * effect->spread * std::pow(swing, assumptions.partial_swing_spread);
    scale(pattern.usual, carry, sd);
    if (pattern.mishit) {
        scale(pattern.mishit->spread, carry, sd);
        pattern.mishit->share = std::min(pattern.mishit->share + effect->mishits, most_mishits);
    }
    pattern.run_m = stance == Stance::trees ? assumptions.recovery_run * pattern.usual.centre.carry_m
                                            : pattern.run_m * carry;
    return pattern;
}

}  // namespace landwidth
