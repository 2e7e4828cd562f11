#include "planner/engine/bags/weighing.hpp"

#include <fmt/format.h>
#include <tbb/parallel_for.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <memory>
#include <numeric>
#include <span>

#include "geometry/error.hpp"
#include "golfer-profiles/evidence/bag_draws.hpp"
#include "planner/engine/bags/missed_clubs.hpp"

namespace landwidth {

namespace {

constexpr double interval_share = 0.90;

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

double share_positive(const std::vector<double>& values) {
    const auto count = std::ranges::count_if(values, [](double value) { return value > 0.0; });
    return static_cast<double>(count) / static_cast<double>(values.size());
}

// Between the two nearest of the sorted values.
double quantile_of(const std::vector<double>& sorted, double share) {
    const double place = share * static_cast<double>(sorted.size() - 1);
    const auto below = static_cast<std::size_t>(place);
    const std::size_t above = std::min(below + 1, sorted.size() - 1);
    return sorted[below] + (place - static_cast<double>(below)) * (sorted[above] - sorted[below]);
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
        draws_ = drawn_bags(all, engine_.prior, static_cast<int>(engine_.weigh_draws));
        shots_ = bag_shots(all, *flights_, engine_, draws_);
        today_ = std::make_unique<BagOnCourses>(golfer, flights_, engine_, holes_.size());
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
        result.has_heights =
            std::ranges::any_of(holes_, [](const Hole* hole) { return hole->heights != nullptr; });
        result.warnings = flights_->doubts();
        result.course_strokes = strokes_by_course();
        result.strokes = mean(result.course_strokes);
        const std::vector<std::vector<MissedClub>> missed = missed_clubs();
        for (std::size_t i = 0; i < request_.changes.size(); ++i)
            result.changes.push_back(weighed(request_.changes[i], missed[i]));
        result.compared = compared_clubs(golfer_, result.changes);
        return result;
    }

  private:
    // The bag of today with the change, on every hole.
    std::unique_ptr<BagOnCourses> changed(const BagChange& change) const {
        auto bag =
            std::make_unique<BagOnCourses>(with_change(golfer_, change), flights_, engine_, holes_.size());
        tbb::parallel_for(std::size_t{0}, holes_.size(),
                          [&](std::size_t i) { play_hole_with(change, i, *bag); });
        return bag;
    }

    void play_hole_with(const BagChange& change, std::size_t i, BagOnCourses& bag) const {
        HoleStudy& today = *today_->studies[i];
        const HoleStudy::Options& options = today_->options[i];
        bag.studies[i] = std::make_unique<HoleStudy>(today, bag.golfer, bag.game, shots_);
        HoleStudy& study = *bag.studies[i];
        const std::vector<HoleStudy::Asked> asked = clubs_to_try(options, change.in, today.coarse_rays());
        if (!study.personal()->is_as_base()) {
            bag.options[i] = study.options_of(asked);
            bag.results[i] = bag_on_hole(study, bag.options[i]);
            return;
        }
        // Behind the tee shot nothing changed: only the newcomers are looked at.
        bag.options[i] = options_kept(options, bag.golfer);
        const std::span<const HoleStudy::Asked> newcomers = std::span(asked).first(change.in.size());
        if (study.is_contender(newcomers)) add_options(bag.options[i], study.options_of(newcomers));
        if (bag.options[i].contenders.empty()) bag.options[i] = study.options();
        study.fan().settle(bag.options[i].search.replay_cost);
        const bool as_today = best_club(bag.options[i]) == today_->results[i].club;
        bag.results[i] = as_today ? today_->results[i] : bag_on_hole(study, bag.options[i]);
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

    WeighedChange weighed(const BagChange& asked, const std::vector<MissedClub>& missed) const {
        WeighedChange result{};
        result.change = asked;
        result.missed = missed;
        if (!missed.empty()) result.change.out.push_back(missed.front().club);
        const std::unique_ptr<BagOnCourses> bag = changed(result.change);
        sum_up(with_ground_shots(*today_, result.change.out), with_ground_shots(*bag, result.change.in),
               result);
        return result;
    }

    bool is_too_full(const BagChange& change) const {
        return clubs_carried(with_change(golfer_, change)) > most_clubs;
    }

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
            if (!is_too_full(request_.changes[i])) continue;
            too_full.push_back(i);
            newcomers.sets.push_back(request_.changes[i].in);
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
                if (!is_playable(golfer_.clubs[club])) continue;
                double sum = 0.0;
                for (const std::vector<std::vector<double>>& hole : by_hole)
                    sum += hole[set][club];
                clubs.push_back({club, sum / static_cast<double>(courses_.size())});
            }
            std::ranges::stable_sort(clubs, {}, &MissedClub::strokes);
        }
        return missed;
    }

    void sum_up(const std::vector<BagOnHole>& before, const std::vector<BagOnHole>& after,
                WeighedChange& result) const {
        std::vector<double> gains(static_cast<std::size_t>(engine_.weigh_draws), 0.0);
        std::map<std::size_t, std::vector<double>> by_club;
        const auto per_round = 1.0 / static_cast<double>(courses_.size());
        std::size_t i = 0;
        for (const Course& course : courses_) {
            CourseGain& sum = result.courses.emplace_back();
            for (std::size_t hole = 0; hole < course.holes.size(); ++hole, ++i) {
                sum.holes.push_back(hole_gain(before[i], after[i]));
                sum.strokes += after[i].strokes;
                sum.gain += sum.holes.back().gain;
                add_drawn(before[i], per_round, gains, by_club);
                add_drawn(after[i], -per_round, gains, by_club);
            }
            result.strokes += per_round * sum.strokes;
            result.gain += per_round * sum.gain;
        }
        result.chance = share_positive(gains);
        std::ranges::sort(gains);
        result.low = quantile_of(gains, 0.5 * (1.0 - interval_share));
        result.high = quantile_of(gains, 0.5 * (1.0 + interval_share));
        result.settled = std::max(result.chance, 1.0 - result.chance) >= engine_.settled_at;
        if (!result.settled) result.more = more(result.gain, by_club);
    }

    std::optional<MoreShots> more(double gain,
                                  const std::map<std::size_t, std::vector<double>>& by_club) const {
        std::vector<OpenClub> open;
        for (const auto& [club, drawn] : by_club)
            open.push_back(
                {club,
                 golfer_.clubs[club].pattern->shots + shots_known_otherwise(golfer_, club, engine_.prior),
                 drawn});
        return more_shots(gain, open, engine_.settled_at, static_cast<int>(engine_.most_more_shots));
    }

    static HoleGain hole_gain(const BagOnHole& before, const BagOnHole& after) {
        HoleGain hole{before, after, before.strokes - after.strokes, {}};
        std::vector<double> gains = drawn_strokes(before);
        const std::vector<double> then = drawn_strokes(after);
        if (gains == then) return hole;
        for (std::size_t draw = 0; draw < gains.size(); ++draw)
            gains[draw] -= then[draw];
        hole.chance = share_positive(gains);
        return hole;
    }

    // A hole's strokes in every draw to the sum, and what each club makes of them.
    static void add_drawn(const BagOnHole& hole, double factor, std::vector<double>& sum,
                          std::map<std::size_t, std::vector<double>>& by_club) {
        for (double& strokes : sum)
            strokes += factor * hole.strokes;
        for (const DrawnPart& part : hole.drawn) {
            std::vector<double>& own = by_club[part.club];
            own.resize(sum.size(), 0.0);
            for (std::size_t draw = 0; draw < sum.size(); ++draw) {
                sum[draw] += factor * part.strokes[draw];
                own[draw] += factor * part.strokes[draw];
            }
        }
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
    std::unique_ptr<BagOnCourses> today_;
};

void check(const Golfer& golfer, const BagChange& change) {
    const Golfer after = with_change(golfer, change);
    const std::size_t carried = clubs_carried(after);
    if (std::ranges::none_of(after.clubs, is_playable))
        throw UsageError(fmt::format("{}: that leaves no club to play with", change.label));
    const bool may_choose = change.out.empty() && carried == most_clubs + 1;
    if (carried > most_clubs && !may_choose)
        throw UsageError(
            fmt::format("{}: that makes {} clubs; a golfer may carry at most {} (Rules of Golf 4.1b)",
                        change.label, carried, most_clubs));
}

}  // namespace

Weighing weigh_bags(const std::vector<Course>& courses, const Golfer& golfer, const WeighRequest& request) {
    for (const BagChange& change : request.changes)
        check(golfer, change);
    return Scales(courses, golfer, request).weighing();
}

}  // namespace landwidth
