#include "tests/benchmarks/demo_round.hpp"

#include "courses/assembly/course_assembly.hpp"
#include "courses/reading/map_source.hpp"
#include "golfer-profiles/profile_file.hpp"
#include "planner/engine/hole_study.hpp"

namespace landwidth::bench {

std::filesystem::path map_path() {
    return std::filesystem::path(LANDWIDTH_DEMO_DIR) / "wrackholm.osm";
}

std::filesystem::path profile_path(std::size_t number) {
    const std::string file = std::string(golfer_names.at(number)) + ".json";
    return std::filesystem::path(LANDWIDTH_DEMO_DIR) / "golfers" / file;
}

const Course& demo_course() {
    static const Course course = assemble_course(read_map(map_path()), {}, default_assumptions().map);
    return course;
}

DemoGolfer::DemoGolfer(std::size_t number)
    : golfer(read_profile(profile_path(number)).golfer),
      flights(std::make_shared<const BagFlights>(golfer, request.conditions, request.assumptions.engine)),
      bag(bag_shots(golfer, *flights, request.assumptions.engine,
                    drawn_bags(golfer, request.assumptions.engine.prior,
                               static_cast<int>(request.assumptions.engine.confidence_draws)))),
      game(golfer, flights, request.assumptions.engine) {}

const DemoGolfer& demo_golfer(std::size_t number) {
    static std::array<std::unique_ptr<const DemoGolfer>, golfer_names.size()> made;
    std::unique_ptr<const DemoGolfer>& golfer = made.at(number);
    if (!golfer) golfer = std::make_unique<const DemoGolfer>(number);
    return *golfer;
}

DemoField::DemoField(const Hole& hole, const DemoGolfer& golfer)
    : lies(hole.lies, golfer.game.assumptions().lie_cell_m),
      field(golfer.game, hole, lies,
            {club_length(golfer.golfer, golfer.game.assumptions()),
             golfer.game.assumptions().back_on_line_reach_m, golfer.request.local_rule_e5},
            GolferAim(golfer.request.aim_for, hole.par, 0)) {}

const RoundPlan& demo_plan(std::size_t number) {
    static std::array<std::unique_ptr<const RoundPlan>, golfer_names.size()> made;
    std::unique_ptr<const RoundPlan>& plan = made.at(number);
    if (!plan) {
        const DemoGolfer& golfer = demo_golfer(number);
        plan = std::make_unique<const RoundPlan>(plan_round(demo_course(), golfer.golfer, golfer.request));
    }
    return *plan;
}

}  // namespace landwidth::bench
