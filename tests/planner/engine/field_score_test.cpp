// The score on a hole as the plan states it against two million holes played: the tee shot on the hole's own
// ground, then the golfer's choices over the grid.
#include <algorithm>
#include <cmath>
#include <thread>

#include "planner/engine/relief.hpp"
#include "tests/catch.hpp"
#include "tests/planner/engine/ball_walk.hpp"
#include "tests/planner/engine/flown_heights.hpp"

using namespace landwidth;
using namespace landwidth::fixture;
using Catch::Matchers::WithinAbs;

namespace {

constexpr std::uint64_t threads = 2;
constexpr int holes_per_thread = 1'000'000;
constexpr std::size_t most_strokes = 21;
constexpr double woods_m = 12.0, walk_step_m = 0.25;

class PlayedHoles {
  public:
    PlayedHoles(const SolvedHole& solved, const Club& tee_club, const TeeChoice& choice, double replayed)
        : solved_(solved),
          pattern_(*tee_club.pattern),
          heights_(tee_club),
          aim_(along_bearing(choice.aim)),
          replayed_(replayed) {}

    std::vector<double> shares() const {
        std::vector<std::vector<double>> counts(threads, std::vector<double>(most_strokes, 0.0));
        std::vector<std::thread> workers;
        for (std::uint64_t worker = 0; worker < threads; ++worker)
            workers.emplace_back([&, worker] {
                BallWalk walk(solved_);
                CounterRandom random(77 + worker);
                for (int hole = 0; hole < holes_per_thread; ++hole)
                    counts[worker][std::min(strokes(walk, random), most_strokes - 1)] += 1.0;
            });
        for (std::thread& worker : workers)
            worker.join();
        std::vector<double> shares(most_strokes);
        for (std::size_t n = 0; n < most_strokes; ++n)
            shares[n] = (counts[0][n] + counts[1][n]) / (static_cast<double>(threads) * holes_per_thread);
        return shares;
    }

  private:
    struct Ball {
        Point place;
        Lie lie;
        int used;
    };
    double run_m(Lie landed) const {
        const EngineAssumptions& a = solved_.assumptions;
        if (landed == Lie::teeing_area || landed == Lie::fairway) return pattern_.run_m;
        if (landed == Lie::rough) return pattern_.run_m * a.run_share_rough;
        if (landed == Lie::green) return pattern_.run_m * a.run_share_green;
        if (landed == Lie::trees) return pattern_.run_m * a.run_share_trees;
        return 0.0;
    }

    Point tee_shot(CounterRandom& random) const {
        const LieRaster& lies = solved_.lies;
        const Point tee = solved_.hole.line.tee();
        const ShotOffset shot = drawn_shot(pattern_, random);
        const Point landing = tee + shot.carry_m * aim_ + shot.side_m * to_the_right(aim_);
        const double carry = distance(tee, landing);
        const Point way = unit(landing - tee);
        // The first woods while the ball rises to their tops, then while it comes down from there.
        const auto low = [&](double on) { return heights_.height_m(on, carry) < woods_m; };
        const auto is_wood = [&](double on) { return lies.at(tee + on * way) == Lie::trees; };
        double risen = 0.0;
        for (; risen < carry && low(risen); risen += walk_step_m)
            if (is_wood(risen)) return tee + risen * way;
        double stopped = -1.0;
        for (double on = carry; on > risen && low(on); on -= walk_step_m)
            if (is_wood(on)) stopped = on;
        if (stopped >= 0.0) return tee + stopped * way;
        const double run = run_m(lies.at(landing));
        for (double on = 0.0; on < run; on += lies.step_m()) {
            const Lie there = lies.at(landing + on * way);
            if (there == Lie::bunker || is_penalty_area(there)) return landing + on * way;
        }
        return landing + run * way;
    }

    Ball after_tee_shot(CounterRandom& random) const {
        const EngineAssumptions& a = solved_.assumptions;
        const Point tee = solved_.hole.line.tee();
        const Ball again{tee, Lie::teeing_area, 2};
        const Point place = tee_shot(random);
        const Lie lie = solved_.lies.at(place);
        if (lie == Lie::out_of_bounds) return again;
        if (lie == Lie::trees && random.uniform() < a.trees_lost_share) return again;
        if (!is_penalty_area(lie)) return {place, lie, 1};
        const Point way = unit(place - tee);
        Point crossing = place;
        while (solved_.lies.at(crossing) == lie)
            crossing = crossing - solved_.lies.step_m() * way;
        const ReliefGround ground{solved_.lies, solved_.field, solved_.hole.line.pin(), a.club_length_m,
                                  a.back_on_line_reach_m};
        const auto drop = penalty_area_relief(ground, lie, crossing, 2);
        if (!drop || drop->cost > replayed_) return again;
        return {drop->place, drop->lie, 2};
    }

    std::size_t holed(const CloseShares& shares, int used, CounterRandom& random) const {
        double left = random.uniform();
        std::size_t n = 1;
        while (n + 1 < shares.size() && left >= shares[n])
            left -= shares[n++];
        return static_cast<std::size_t>(used) + n;
    }

    std::size_t strokes(BallWalk& walk, CounterRandom& random) const {
        const PlayGrid& grid = solved_.grid();
        const HoleOut& hole_out = solved_.game.hole_out();
        const Ball ball = after_tee_shot(random);
        const double left = distance(ball.place, grid.pin());
        if (hole_out.is_close(ball.lie, left))
            return holed(hole_out.shares(ball.lie, left), ball.used, random);
        int cell = solved_.field.cell_of(ball.place, ball.lie);
        for (int used = ball.used; used < static_cast<int>(most_strokes);) {
            if (!solved_.is_open(cell)) {
                // Somewhere on the cell.
                const Point within = (random.uniform() - 0.5) * grid.step_right() +
                                     (random.uniform() - 0.5) * grid.step_along();
                const Point place =
                    grid.lie(cell) == Lie::green ? grid.centre(cell) + within : grid.centre(cell);
                return holed(hole_out.shares(grid.lie(cell), distance(place, grid.pin())), used, random);
            }
            const BallWalk::Next next = walk.play(cell, used, random);
            cell = next.cell;
            used += next.strokes;
        }
        return most_strokes - 1;
    }

    const SolvedHole& solved_;
    const ShotPattern& pattern_;
    FlownHeights heights_;
    Point aim_;
    double replayed_;
};

void check_score(const HoleParts& parts) {
    const Golfer golfer = uneven_golfer();
    const SolvedHole solved(parts, golfer);
    const HolePlan plan = plan_round(course_of({solved.hole}), golfer, {}).holes.front();
    const TeeChoice& best = plan.choices.front();
    const PlayedHoles played(solved, golfer.clubs[best.club], best, 2.0 + best.expected_strokes);
    const std::vector<double> shares = played.shares();
    double largest = 0.0;
    for (int score = 0; score < static_cast<int>(most_strokes); ++score) {
        INFO("score " << score);
        const double stated = best.score.between(score, score);
        CHECK_THAT(stated, WithinAbs(shares[static_cast<std::size_t>(score)], 0.005));
        largest = std::max(largest, std::abs(stated - shares[static_cast<std::size_t>(score)]));
    }
    WARN("largest difference of a share: " << largest);
}

}  // namespace

TEST_CASE("two million holes: a par 5 with water, woods and sand", "[score]") {
    check_score(eventful_par_5());
}

TEST_CASE("two million holes: a narrow par 4", "[score]") {
    check_score(narrow_par_4());
}
