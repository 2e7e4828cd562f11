#include "planner/engine/driver_chart.hpp"

#include <fmt/format.h>
#include <tbb/parallel_for.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "geometry/error.hpp"
#include "planner/engine/hole_study.hpp"
#include "planner/engine/preset_patterns.hpp"

namespace landwidth {

namespace {

bool is_driver(const Golfer& golfer, std::size_t club) {
    return golfer.clubs[club].kind == ClubKind::driver;
}

void require_both_sides(const Golfer& golfer, const BagShots& bag) {
    const auto driver = [&](const ClubShots& shots) { return is_driver(golfer, shots.club); };
    if (std::ranges::none_of(bag.clubs, driver))
        throw InputError("profile of " + golfer.name,
                         "a driver chart needs a driver, and the bag has none with a shot pattern; give the "
                         "club of kind driver a pattern");
    if (std::ranges::all_of(bag.clubs, driver))
        throw InputError("profile of " + golfer.name,
                         "a driver chart weighs the driver against another tee club, and the bag has none "
                         "with a shot pattern; add one");
}

// The cheapest of the driver side, or of the other.
std::optional<std::size_t> cheapest(const Golfer& golfer, const AimSearch& search, bool driver) {
    std::optional<std::size_t> best;
    const auto cost = [&](std::size_t i) { return search.clubs[i].outcome.total(search.replay_cost); };
    for (std::size_t i = 0; i < search.clubs.size(); ++i)
        if (is_driver(golfer, search.clubs[i].club) == driver && (!best || cost(i) < cost(*best))) best = i;
    return best;
}

ChartClub chart_club(const AimedClub& aimed, double replay_cost) {
    return {aimed.club, aimed.outcome.total(replay_cost), aimed.standard_error};
}

ChartCell weighed(HoleStudy& study, const Golfer& golfer, double toss_up_below) {
    const HoleStudy::Options options = study.options();
    const AimSearch& search = options.search;
    const std::optional<std::size_t> driver = cheapest(golfer, search, true);
    const std::optional<std::size_t> control = cheapest(golfer, search, false);
    if (!driver || !control)
        throw InputError("profile of " + golfer.name,
                         "besides the driver no club of the bag is long enough from the tee to be weighed "
                         "against it (--assume tee_club_floor lowers what is long enough)");
    ChartCell cell{.driver = chart_club(search.clubs[*driver], search.replay_cost),
                   .control = chart_club(search.clubs[*control], search.replay_cost),
                   .driver_saves = 0.0,
                   .confidence = 1.0,
                   .toss_up = false};
    cell.driver_saves = cell.control.expected_strokes - cell.driver.expected_strokes;
    const std::array contenders{options.contenders[*driver], options.contenders[*control]};
    const std::array aimed{search.clubs[*driver], search.clubs[*control]};
    cell.confidence = confidence_in(study.fan(), contenders, aimed, cell.driver_saves >= 0.0 ? 0 : 1,
                                    search.replay_cost, study.coarse_rays())
                          .share;
    const double noise = 2.0 * std::hypot(cell.driver.standard_error, cell.control.standard_error);
    cell.toss_up = std::abs(cell.driver_saves) < noise || cell.confidence < toss_up_below;
    return cell;
}

std::optional<EvenWidth> break_even(const DriverChart& chart, std::size_t length) {
    for (std::size_t wider = chart.widths_m.size() - 1; wider > 0; --wider) {
        const double below = chart.cell(wider - 1, length).driver_saves;
        const double above = chart.cell(wider, length).driver_saves;
        if ((below < 0.0) == (above < 0.0)) continue;
        const double part = below / (below - above);
        return EvenWidth{std::lerp(chart.widths_m[wider - 1], chart.widths_m[wider], part), above >= 0.0};
    }
    return std::nullopt;
}

}  // namespace

DriverChart driver_chart(const Golfer& golfer, const ChartRequest& request) {
    PlanRequest plan;
    plan.assumptions = with_coarser_fan(request.assumptions);
    const EngineAssumptions& assumptions = plan.assumptions.engine;
    const auto flights = std::make_shared<const BagFlights>(golfer, Conditions{}, assumptions);
    const BagShots bag =
        bag_shots(golfer, *flights, assumptions,
                  drawn_bags(golfer, assumptions.prior, static_cast<int>(assumptions.confidence_draws)));
    require_both_sides(golfer, bag);
    const GolferGame game(golfer, flights, assumptions);

    DriverChart chart{
        request.trouble, request.widths_m, request.lengths_m, {}, {}, {}, request.assumptions, {}};
    const std::size_t lengths = chart.lengths_m.size();
    chart.cells.resize(chart.widths_m.size() * lengths);
    chart.pars.resize(lengths);
    tbb::parallel_for(std::size_t{0}, chart.widths_m.size(), [&](std::size_t width) {
        const Hole longest =
            chart_hole(chart.widths_m[width], chart.lengths_m.back(), chart.trouble, request.assumptions);
        const HoleStudy solved(longest, golfer, game, bag, plan, 0);
        for (std::size_t length = 0; length < lengths; ++length) {
            const Hole hole = chart_hole_shortened(longest, chart.lengths_m[length], request.assumptions);
            HoleStudy study(solved, hole, game);
            chart.cells[width * lengths + length] = weighed(study, golfer, assumptions.toss_up_below);
            if (width == 0) chart.pars[length] = hole.par;
        }
    });
    for (std::size_t length = 0; length < lengths; ++length)
        chart.break_evens.push_back(break_even(chart, length));
    if (std::optional<std::string> presets = preset_patterns_warning(golfer))
        chart.warnings.push_back(*std::move(presets));
    return chart;
}

}  // namespace landwidth
