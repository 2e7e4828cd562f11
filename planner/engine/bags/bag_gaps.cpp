#include "planner/engine/bags/bag_gaps.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "geometry/error.hpp"
#include "golfer-profiles/carry_overlap.hpp"
#include "golfer-profiles/club_flight.hpp"
#include "golfer-profiles/evidence/bag_draws.hpp"
#include "golfer-profiles/order_statistics.hpp"
#include "golfer-profiles/typical_club.hpp"
#include "planner/engine/preset_patterns.hpp"

namespace landwidth {
namespace {

constexpr double interval_share = 0.90;

// Kinds that golfers hit off the tee instead of a driver, under names that the presets know.
constexpr std::array<std::pair<ClubKind, const char*>, 6> tee_clubs{{
    {ClubKind::mini_driver, "mini-driver"},
    {ClubKind::fairway_wood, "3-wood"},
    {ClubKind::fairway_wood, "5-wood"},
    {ClubKind::hybrid, "2-hybrid"},
    {ClubKind::hybrid, "3-hybrid"},
    {ClubKind::driving_iron, "driving iron"},
}};

double carry_of(const ShotPattern& pattern) {
    return pattern.usual.centre.carry_m;
}

double descent_of(const Club& club) {
    const ClubFlight flight(club);
    return fly(flight.launch_for(flight.carry_m()), reference_air(), flight.aerodynamics()).landing_angle_rad;
}

Range interval_of(std::vector<double> values) {
    std::ranges::sort(values);
    return {quantile(values, 0.5 * (1.0 - interval_share)), quantile(values, 0.5 * (1.0 + interval_share))};
}

GapStanding standing_of(double gap_m, double overlap_chance, const GapLimits& limits) {
    if (overlap_chance >= limits.overlap_chance) return GapStanding::overlap;
    return gap_m > limits.wide_m ? GapStanding::wide : GapStanding::even;
}

class Bag {
  public:
    Bag(const Golfer& golfer, const Assumptions& assumptions)
        : golfer_(golfer),
          limits_(assumptions.engine.gaps),
          draws_(drawn_bags(golfer, assumptions.engine.prior,
                            static_cast<int>(assumptions.engine.weigh_draws))) {
        for (std::size_t club = 0; club < golfer.clubs.size(); ++club)
            if (is_playable(golfer.clubs[club])) order_.push_back(club);
        if (order_.empty())
            throw InputError("profile of " + golfer.name,
                             "no club in the bag but the putter has a shot pattern; landwidth profile new "
                             "or profile learn makes one");
        std::ranges::stable_sort(order_, [&](std::size_t a, std::size_t b) {
            return carry_of(pattern(a)) > carry_of(pattern(b));
        });
    }

    BagGaps gaps() const {
        BagGaps result;
        for (const std::size_t club : order_)
            result.clubs.push_back(carried(club));
        for (std::size_t i = 0; i + 1 < order_.size(); ++i)
            result.gaps.push_back(gap(i));
        result.slot = slot(result);
        return result;
    }

  private:
    const ShotPattern& pattern(std::size_t club) const { return *golfer_.clubs[club].pattern; }

    CarriedClub carried(std::size_t club) const {
        const ShotPattern& shots = pattern(club);
        std::vector<double> carries;
        for (const ShotPattern& drawn : draws_[club])
            carries.push_back(carry_of(drawn));
        return {.club = club,
                .carry_m = carry_of(shots),
                .carry_90_m = interval_of(std::move(carries)),
                .carry_sd_m = shots.usual.carry_sd_m,
                .run_m = shots.run_m,
                .total_m = carry_of(shots) + shots.run_m,
                .descent_rad = descent_of(golfer_.clubs[club]),
                .shots = shots.shots};
    }

    CarryGap gap(std::size_t longer) const {
        const std::size_t a = order_[longer];
        const std::size_t b = order_[longer + 1];
        CarryGap gap{};
        gap.longer = longer;
        gap.shorter = longer + 1;
        gap.gap_m = carry_of(pattern(a)) - carry_of(pattern(b));
        gap.overlap_chance = chance_longer_is_shorter(pattern(a), pattern(b));
        gap.standing = standing_of(gap.gap_m, gap.overlap_chance, limits_);
        std::vector<double> gaps;
        std::size_t alike = 0;
        for (std::size_t i = 0; i < draws_[a].size(); ++i) {
            const double drawn_m = carry_of(draws_[a][i]) - carry_of(draws_[b][i]);
            gaps.push_back(drawn_m);
            const double chance = chance_longer_is_shorter(draws_[a][i], draws_[b][i]);
            if (standing_of(drawn_m, chance, limits_) == gap.standing) ++alike;
        }
        gap.sure = static_cast<double>(alike) / static_cast<double>(gaps.size());
        gap.gap_90_m = interval_of(std::move(gaps));
        return gap;
    }

    std::optional<TeeSlot> slot(const BagGaps& bag) const {
        const auto driver = std::ranges::find_if(bag.clubs, [&](const CarriedClub& club) {
            return golfer_.clubs[club.club].kind == ClubKind::driver;
        });
        if (driver == bag.clubs.end() || driver + 1 == bag.clubs.end()) return std::nullopt;
        const CarriedClub& next = *(driver + 1);
        const double gap_m = driver->carry_m - next.carry_m;
        const double edge_m = limits_.slot_edge_share * gap_m;
        TeeSlot slot{.driver = static_cast<std::size_t>(driver - bag.clubs.begin()),
                     .next = static_cast<std::size_t>(driver - bag.clubs.begin()) + 1,
                     .gap_m = gap_m,
                     .has_room = gap_m > limits_.wide_m,
                     .room_sure = 0.0,
                     .carry_m = 0.5 * (driver->carry_m + next.carry_m),
                     .total_m = 0.5 * (driver->total_m + next.total_m),
                     .fills_m = {next.carry_m + edge_m, driver->carry_m - edge_m},
                     .candidates = {}};
        const auto& longer = draws_[driver->club];
        const auto& shorter = draws_[next.club];
        std::size_t alike = 0;
        for (std::size_t i = 0; i < longer.size(); ++i)
            if ((carry_of(longer[i]) - carry_of(shorter[i]) > limits_.wide_m) == slot.has_room) ++alike;
        slot.room_sure = static_cast<double>(alike) / static_cast<double>(longer.size());
        slot.candidates = candidates(slot, *driver, next);
        return slot;
    }

    std::vector<SlotCandidate> candidates(const TeeSlot& slot, const CarriedClub& driver,
                                          const CarriedClub& next) const {
        std::vector<SlotCandidate> found;
        const auto add = [&](Club club, bool on_trial) {
            const double carry_m = carry_of(*club.pattern);
            const double run_m = club.pattern->run_m;
            const double descent_rad = descent_of(club);
            const SlotPlace place = carry_m > driver.carry_m      ? SlotPlace::longer_than_driver
                                    : carry_m > slot.fills_m.high ? SlotPlace::near_driver
                                    : carry_m >= slot.fills_m.low ? SlotPlace::fills
                                    : carry_m >= next.carry_m     ? SlotPlace::near_next
                                                                  : SlotPlace::shorter_than_next;
            found.push_back({std::move(club), on_trial, carry_m, carry_m + run_m, descent_rad, place});
        };
        for (const Club& club : golfer_.clubs)
            if (!club.in_bag && club.pattern) add(club, true);
        const GolferRequest like = request_like(golfer_);
        for (const auto& [kind, name] : tee_clubs)
            if (has_typical_club(like) && golfer_.club(name) == nullptr)
                add(typical_club(like, kind, name), false);
        std::ranges::stable_sort(found, std::ranges::greater{}, &SlotCandidate::carry_m);
        return found;
    }

    const Golfer& golfer_;
    const GapLimits& limits_;
    BagDraws draws_;
    std::vector<std::size_t> order_;  // of the playable clubs, the longest carry first
};

}  // namespace

BagGaps bag_gaps(const Golfer& golfer, const Assumptions& assumptions) {
    BagGaps result = Bag(golfer, assumptions).gaps();
    if (auto warning = preset_patterns_warning(golfer)) result.warnings.push_back(std::move(*warning));
    result.assumptions = assumptions;
    return result;
}

}  // namespace landwidth
