// The demo course and its four golfers: what every benchmark runs on.
#pragma once

#include <array>
#include <filesystem>
#include <memory>
#include <string>

#include "courses/course.hpp"
#include "golfer-profiles/profile.hpp"
#include "planner/engine/bag_shots.hpp"
#include "planner/engine/field/personal_field.hpp"
#include "planner/engine/round_plan.hpp"

namespace landwidth::bench {

inline constexpr std::array golfer_names{"short-straight", "long-wild", "bogey", "scratch-woman"};

std::filesystem::path map_path();
// Of golfer_names[number].
std::filesystem::path profile_path(std::size_t number);

// The course as assembled with the default assumptions, read once.
const Course& demo_course();

// A golfer with everything that is made once for a round.
struct DemoGolfer {
    explicit DemoGolfer(std::size_t number);

    PlanRequest request;
    Golfer golfer;
    std::shared_ptr<const BagFlights> flights;
    BagShots bag;
    GolferGame game;
};
const DemoGolfer& demo_golfer(std::size_t number);

// A hole's field as the plan solves it.
struct DemoField {
    DemoField(const Hole& hole, const DemoGolfer& golfer);

    LieRaster lies;
    PersonalField field;
};

// The plan with the default assumptions, made once.
const RoundPlan& demo_plan(std::size_t number);

}  // namespace landwidth::bench
