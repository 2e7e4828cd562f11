#include "planner/engine/bags/weighing.hpp"

#include <fmt/format.h>
#include <tbb/parallel_for.h>

#include <algorithm>
#include <functional>
#include <map>
#include <memory>
#include <numeric>
#include <set>
#include <span>

#include "geometry/error.hpp"
#include "golfer-profiles/evidence/bag_draws.hpp"
#include "planner/engine/bags/missed_clubs.hpp"
#include "planner/engine/likeness.hpp"

namespace landwidth {

namespace {

// A bag on every hole of every course: what the studies of it refer to, and what they found.
struct BagOnCourses {
    BagOnCourses(Golfer owner, std::shared_ptr<const BagFlights> flights,
                 const EngineAssumptions& assumptions, std::size_t holes)
        : golfer(std::move(owner)),
          game(golfer, std::move(flights), assumptions),
          studies(holes),
          options(holes),
          results(holes) {}

    Golfer golfer;
    GolferGame game;
    std::vector<std::unique_ptr<HoleStudy>> studies;
    std::vector<HoleStudy::Options> options;
    std::vector<BagOnHole> results;
    std::vector<std::vector<PlayedShots>> played;  // once asked for
};

// How many shots what is known of a club is worth.
double shots_known(const Golfer& golfer, std::size_t club, const GolferPrior& prior) {
    return golfer.clubs[club].pattern->shots + shots_known_otherwise(golfer, club, prior);
}

class Scales {
  public:
    Scales(const std::vector<Course>& courses, const Golfer& golfer, const WeighRequest& request)
        : courses_(courses),
          golfer_(golfer),
          request_(request),
          engine_(with_coarser_fan(request.assumptions).engine) {
        for (const Course& course : courses)
            for (const Hole& hole : course.holes)
                holes_.push_back(&hole);
        plan_.assumptions = with_coarser_fan(request.assumptions);
        plan_.local_rule_e5 = request.local_rule_e5;
        plan_.conditions = request.conditions;
        Golfer all = golfer;
        for (Club& club : all.clubs)
            club.in_bag = true;
        flights_ = std::make_shared<const BagFlights>(all, request.conditions, engine_);
        draws_ = drawn_with_suppositions(all, request.supposed, engine_.prior,
                                         static_cast<int>(engine_.weigh_draws));
        shots_ = bag_shots(all, *flights_, engine_, draws_);
        today_ = std::make_shared<BagOnCourses>(golfer, flights_, engine_, holes_.size());
        tbb::parallel_for(std::size_t{0}, holes_.size(), [&](std::size_t i) {
            today_->studies[i] =
                std::make_unique<HoleStudy>(*holes_[i], today_->golfer, today_->game, shots_, plan_, 0);
            today_->options[i] = today_->studies[i]->options();
            today_->results[i] = bag_on_hole(*today_->studies[i], today_->options[i]);
        });
    }

    Weighing weighing() {
        Weighing result{};
        result.assumptions = request_.assumptions;
        result.conditions = request_.conditions;
        result.supposed = request_.supposed;
        result.has_heights =
            std::ranges::any_of(holes_, [](const Hole* hole) { return hole->heights != nullptr; });
        result.warnings = flights_->doubts();
        result.course_strokes = strokes_by_course();
        result.strokes = mean(result.course_strokes);
        const std::vector<std::vector<MissedClub>> missed = missed_clubs();
        for (std::size_t i = 0; i < request_.changes.size(); ++i)
            result.changes.push_back(weighed(request_.changes[i], missed[i]));
        result.compared = compared_clubs(golfer_, result.changes);
        result.evidence = shot_evidence(golfer_, result.compared, draws_);
        return result;
    }

  private:
    using SharedBag = std::shared_ptr<BagOnCourses>;

    // A bag of the profile on every hole.
    SharedBag played_with(const Golfer& golfer) {
        const Exchange exchange = exchange_between(golfer_, golfer);
        if (exchange.empty()) return today_;
        if (const auto known = baselines_.find(exchange); known != baselines_.end()) return known->second;
        auto bag = std::make_shared<BagOnCourses>(golfer, flights_, engine_, holes_.size());
        tbb::parallel_for(std::size_t{0}, holes_.size(),
                          [&](std::size_t i) { play_hole_with(exchange, i, *bag); });
        return bag;
    }

    // Kept: several changes may start from it.
    SharedBag baseline(const BagChange& change) {
        const Golfer golfer = baseline_of(golfer_, change);
        SharedBag bag = played_with(golfer);
        if (bag != today_) baselines_.emplace(exchange_between(golfer_, golfer), bag);
        return bag;
    }

    void play_hole_with(const Exchange& change, std::size_t i, BagOnCourses& bag) const {
        HoleStudy& today = *today_->studies[i];
        const HoleStudy::Options& options = today_->options[i];
        const std::size_t usual = today_->results[i].club;
        bag.studies[i] = std::make_unique<HoleStudy>(today, bag.golfer, bag.game, shots_);
        HoleStudy& study = *bag.studies[i];
        const std::vector<HoleStudy::Asked> asked = clubs_to_try(options, change.in, today.coarse_rays());
        if (!study.personal()->is_as_base()) {
            bag.options[i] = study.options_of(asked);
            bag.results[i] = bag_on_hole(study, bag.options[i], usual);
            return;
        }
        // Behind the tee shot nothing changed: only the newcomers are looked at.
        bag.options[i] = options_kept(options, bag.golfer);
        const std::span<const HoleStudy::Asked> newcomers = std::span(asked).first(change.in.size());
        if (study.is_contender(newcomers)) add_options(bag.options[i], study.options_of(newcomers));
        if (bag.options[i].contenders.empty()) bag.options[i] = study.options();
        study.fan().settle(bag.options[i].search.replay_cost);
        const bool as_today = best_club(bag.options[i], usual) == usual;
        bag.results[i] = as_today ? today_->results[i] : bag_on_hole(study, bag.options[i], usual);
    }

    // The shots after the tee shots of a bag.
    const std::vector<std::vector<PlayedShots>>& played(BagOnCourses& bag) const {
        if (!bag.played.empty()) return bag.played;
        bag.played.resize(holes_.size());
        tbb::parallel_for(std::size_t{0}, holes_.size(), [&](std::size_t i) {
            HoleStudy& study = *bag.studies[i];
            // A fan that several bags share keeps the choices of the one that used it last.
            study.fan().settle(bag.options[i].search.replay_cost);
            bag.played[i] = played_shots(study, *bag.results[i].shots, bag.results[i].aim);
        });
        return bag.played;
    }

    // The bag's results where these clubs' shots from the ground are as open as those from the tee.
    std::vector<BagOnHole> with_ground_shots(BagOnCourses& bag, const std::vector<std::size_t>& clubs) const {
        std::vector<GroundShots> ground;
        for (const std::size_t club : clubs) {
            GroundShots shots(bag.golfer, club, draws_[club], bag.game);
            if (shots.any()) ground.push_back(std::move(shots));
        }
        std::vector<BagOnHole> holes = bag.results;
        if (ground.empty()) return holes;
        const std::vector<std::vector<PlayedShots>>& shots = played(bag);
        tbb::parallel_for(std::size_t{0}, holes_.size(), [&](std::size_t i) {
            add_ground_shots(*bag.studies[i], shots[i], ground, holes[i]);
        });
        return holes;
    }

    WeighedChange weighed(const BagChange& asked, const std::vector<MissedClub>& missed) {
        WeighedChange result{};
        result.change = asked;
        result.missed = missed;
        if (!missed.empty())
            (is_too_full(baseline_of(golfer_, asked)) ? result.change.before.out : result.change.out)
                .push_back(missed.front().club);
        const SharedBag before = baseline(result.change);
        const SharedBag after = played_with(with_change(golfer_, result.change));
        sum_up(with_ground_shots(*before, result.change.out), with_ground_shots(*after, result.change.in),
               result);
        result.baseline_without_shots = without_shots(result);
        return result;
    }

    std::vector<std::size_t> without_shots(const WeighedChange& change) const {
        std::set<std::size_t> clubs(change.change.out.begin(), change.change.out.end());
        for (const CourseGain& course : change.courses)
            for (const HoleGain& hole : course.holes)
                if (hole.before.club != hole.after.club) clubs.insert(hole.before.club);
        std::erase_if(clubs, [&](std::size_t club) {
            const std::optional<ShotPattern>& pattern = golfer_.clubs[club].pattern;
            return !pattern || pattern->shots > 0;
        });
        return {clubs.begin(), clubs.end()};
    }

    static bool is_too_full(const Golfer& golfer) { return clubs_carried(golfer) > most_clubs; }

    // For every change that makes the bag too full, the clubs that may stay at home, least missed first.
    std::vector<std::vector<MissedClub>> missed_clubs() const {
        std::vector<std::vector<MissedClub>> missed(request_.changes.size());
        Golfer all = golfer_;
        for (Club& club : all.clubs)
            club.in_bag = true;
        const GolferGame game(all, flights_, engine_);
        Newcomers newcomers{all, game, {}};
        std::vector<std::size_t> too_full;
        for (std::size_t i = 0; i < request_.changes.size(); ++i) {
            const BagChange& change = request_.changes[i];
            const Golfer before = baseline_of(golfer_, change);
            const Golfer after = with_change(golfer_, change);
            if (!is_too_full(before) && !is_too_full(after)) continue;
            too_full.push_back(i);
            newcomers.sets.push_back(exchange_between(golfer_, is_too_full(before) ? before : after).in);
        }
        if (too_full.empty()) return missed;
        const std::vector<std::vector<PlayedShots>>& shots = played(*today_);
        std::vector<std::vector<std::vector<double>>> by_hole(holes_.size());
        tbb::parallel_for(std::size_t{0}, holes_.size(), [&](std::size_t i) {
            by_hole[i] = missed_on_hole(*today_->studies[i], today_->options[i], shots[i], newcomers);
        });
        for (std::size_t set = 0; set < too_full.size(); ++set) {
            std::vector<MissedClub>& clubs = missed[too_full[set]];
            for (std::size_t club = 0; club < golfer_.clubs.size(); ++club) {
                if (!is_playable(golfer_.clubs[club]) || goes_out(request_.changes[too_full[set]], club))
                    continue;
                double sum = 0.0;
                for (const std::vector<std::vector<double>>& hole : by_hole)
                    sum += hole[set][club];
                clubs.push_back({club, sum / static_cast<double>(courses_.size())});
            }
            std::ranges::stable_sort(clubs, {}, &MissedClub::strokes);
        }
        return missed;
    }

    static bool goes_out(const BagChange& change, std::size_t club) {
        const auto among = [&](const std::vector<std::size_t>& clubs) {
            return std::ranges::find(clubs, club) != clubs.end();
        };
        return among(change.out) || among(change.before.out);
    }

    void sum_up(const std::vector<BagOnHole>& before, const std::vector<BagOnHole>& after,
                WeighedChange& result) const {
        const auto per_round = 1.0 / static_cast<double>(courses_.size());
        GainSums sums(static_cast<std::size_t>(engine_.weigh_draws), per_round);
        std::size_t i = 0;
        for (const Course& course : courses_) {
            CourseGain& sum = result.courses.emplace_back();
            for (std::size_t hole = 0; hole < course.holes.size(); ++hole, ++i) {
                sum.holes.push_back(sums.add(before[i], after[i]));
                sum.strokes += after[i].strokes;
                sum.gain += sum.holes.back().gain;
                result.baseline_strokes += per_round * before[i].strokes;
            }
            result.strokes += per_round * sum.strokes;
            result.gain += per_round * sum.gain;
        }
        judge(sums, result);
    }

    // A club that comes or goes.
    static bool is_hit_from_a_tee(const WeighedChange& change) {
        const auto among = [](const std::vector<std::size_t>& clubs, std::size_t club) {
            return std::ranges::find(clubs, club) != clubs.end();
        };
        return std::ranges::any_of(change.courses, [&](const CourseGain& course) {
            return std::ranges::any_of(course.holes, [&](const HoleGain& hole) {
                return among(change.change.out, hole.before.club) || among(change.change.in, hole.after.club);
            });
        });
    }

    void judge(const GainSums& sums, WeighedChange& result) const {
        result.drawn_mean = mean(sums.gains());
        result.chance = share_better(sums.gains());
        const Interval middle = middle_of(sums.gains());
        result.low = middle.low;
        result.high = middle.high;
        result.settled = std::max(result.chance, 1.0 - result.chance) >= engine_.settled_at;
        result.verdict = is_same(sums.gains()) && !is_hit_from_a_tee(result) ? BagVerdict::not_compared
                         : is_alike(middle, engine_.equal_within)            ? BagVerdict::alike
                         : !result.settled                                   ? BagVerdict::not_known
                         : result.chance > 0.5                               ? BagVerdict::saves
                                                                             : BagVerdict::costs;
        if (result.verdict == BagVerdict::not_known) result.more = more(result.gain, sums);
    }

    // More shots of a supposed club are shots of the club it is made of.
    std::size_t hit_with(std::size_t club) const {
        const auto supposed = std::ranges::find(request_.supposed, club, &SupposedClub::club);
        return supposed == request_.supposed.end() ? club : supposed->of;
    }

    std::optional<MoreShots> more(double gain, const GainSums& sums) const {
        std::map<std::size_t, std::vector<double>> parts;
        for (const auto& [club, drawn] : sums.by_club()) {
            std::vector<double>& part = parts[hit_with(club)];
            part.resize(drawn.size(), 0.0);
            std::ranges::transform(part, drawn, part.begin(), std::plus<>{});
        }
        std::vector<OpenClub> open;
        for (const auto& [club, drawn] : parts)
            open.push_back({club, shots_known(golfer_, club, engine_.prior), drawn});
        return more_shots(gain, open, engine_.settled_at, static_cast<int>(engine_.most_more_shots));
    }

    std::vector<double> strokes_by_course() const {
        std::vector<double> strokes;
        std::size_t i = 0;
        for (const Course& course : courses_) {
            strokes.push_back(0.0);
            for (std::size_t hole = 0; hole < course.holes.size(); ++hole, ++i)
                strokes.back() += tee_cost(today_->options[i].search.clubs, std::nullopt);
        }
        return strokes;
    }

    static double mean(const std::vector<double>& values) {
        return std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
    }

    const std::vector<Course>& courses_;
    const Golfer& golfer_;
    const WeighRequest& request_;
    const EngineAssumptions engine_;
    std::shared_ptr<const BagFlights> flights_;
    PlanRequest plan_;
    std::vector<const Hole*> holes_;  // of all courses, one after the other
    BagDraws draws_;                  // of all clubs of the profile
    BagShots shots_;                  // likewise
    std::shared_ptr<BagOnCourses> today_;
    std::map<Exchange, SharedBag> baselines_;  // by what they have otherwise than the bag of today
};

void check_bag(const Golfer& golfer, const std::string& label) {
    const std::size_t carried = clubs_carried(golfer);
    if (std::ranges::none_of(golfer.clubs, is_playable))
        throw UsageError(fmt::format("{}: that leaves no club to play with", label));
    // One too many: the one missed least stays at home.
    if (carried > most_clubs + 1)
        throw UsageError(fmt::format(
            "{}: that makes {} clubs; a golfer may carry at most {} (Rules of Golf 4.1b): say with "
            "--drop what stays at home",
            label, carried, most_clubs));
}

}  // namespace

Weighing weigh_bags(const std::vector<Course>& courses, const Golfer& golfer, const WeighRequest& request) {
    for (const BagChange& change : request.changes)
        for (const Golfer& bag : {baseline_of(golfer, change), with_change(golfer, change)})
            check_bag(bag, change.label);
    return Scales(courses, golfer, request).weighing();
}

}  // namespace landwidth
