#include "tests/planner/weigh_fixture.hpp"

namespace landwidth::fixture {
namespace {

constexpr std::size_t driver = 0, wood = 1, iron5 = 2, iron7 = 4, shorter_driver = 6;

Club driver_on_trial() {
    ShotPattern pattern;
    pattern.usual = {{200.0, -2.0}, 12.0, 15.0, -0.1};
    pattern.tail_dof = 8.0;
    pattern.run_m = 14.0;
    pattern.mishit = Mishit{0.12, {{150.0, 5.0}, 20.0, 25.0, 0.0}};
    pattern.shots = 4;
    Club club;
    club.name = "driver, 44 in";
    club.kind = ClubKind::driver;
    club.pattern = pattern;
    club.in_bag = false;
    club.learnt_from = LearntFrom{pattern, {{205.0, 4.0}, {193.0, -12.0}, {201.0, -3.0}, {120.0, 30.0}}};
    return club;
}

// Of four shots the last was a mishit.
ClubEvidence driver_evidence() {
    const std::vector<ShotOffset> shots = driver_on_trial().learnt_from->shots;
    return {.raw = raw_figures(shots),
            .raw_usual = raw_figures(std::span(shots).first(3)),
            .open = {{200, 190, 209}, {-2, -9, 5}, {12, 8, 17}, {15, 11, 22}, {0.12, 0.04, 0.27}},
            .mishit_chance = {0.01, 0.02, 0.01, 0.97}};
}

BagOnHole bag(std::size_t club, double strokes, std::array<double, lie_count> lies, double leave_m) {
    return {.club = club, .aim = 0.0, .strokes = strokes, .lies = lies, .leave_mean_m = leave_m, .drawn = {}};
}

// Shares in the order of enum Lie.
const BagOnHole first_today = bag(wood, 4.61, {0.0, 0.58, 0.29, 0.04, 0.03, 0.0, 0.0, 0.05, 0.01}, 163.0);
const BagOnHole first_then =
    bag(shorter_driver, 4.46, {0.0, 0.49, 0.35, 0.04, 0.03, 0.0, 0.0, 0.05, 0.04}, 153.0);
const BagOnHole second = bag(iron7, 3.42, {0.0, 0.0, 0.4, 0.05, 0.0, 0.5, 0.05, 0.0, 0.0}, 20.0);

WeighedChange shorter_for_driver() {
    WeighedChange change{};
    change.change = {"driver, 44 in for driver", {shorter_driver}, {driver}};
    change.courses = {
        {{{first_today, first_then, 0.15, 0.88}, {second, second, 0.0, std::nullopt}}, 7.88, 0.15}};
    change.strokes = 7.88;
    change.gain = 0.15;
    change.low = -0.04;
    change.high = 0.31;
    change.chance = 0.91;
    change.settled = false;
    change.drawn_mean = 0.14;
    change.baseline_strokes = 8.03;
    change.verdict = BagVerdict::not_known;
    change.more = MoreShots{shorter_driver, 9, 0.95, 0.02, true};
    return change;
}

WeighedChange without_iron() {
    WeighedChange change{};
    change.change = {"without 5-iron", {}, {iron5}};
    change.courses = {
        {{{first_today, first_today, 0.0, std::nullopt}, {second, second, 0.0, std::nullopt}}, 8.03, 0.0}};
    change.strokes = 8.03;
    change.baseline_strokes = 8.03;
    change.settled = true;
    change.verdict = BagVerdict::alike;
    return change;
}

}  // namespace

WeighFixture two_changes() {
    PlanFixture plan = two_holes();
    WeighFixture made{{std::move(plan.course)}, std::move(plan.golfer), {}};
    made.golfer.clubs.push_back(driver_on_trial());
    made.weighing = {.course_strokes = {8.03},
                     .strokes = 8.03,
                     .changes = {shorter_for_driver(), without_iron()},
                     .compared = {{shorter_driver, true}, {wood, false}, {driver, false}, {iron5, false}},
                     .evidence = {{shorter_driver, driver_evidence()}},
                     .assumptions = default_assumptions(),
                     .warnings = {"few shots of the driver, 44 in are recorded"}};
    return made;
}

WeighFixture builds_compared() {
    WeighFixture made = two_changes();
    Club supposed = made.golfer.clubs.back();
    supposed.name = "driver, 44 in (supposed)";
    supposed.learnt_from.reset();
    made.golfer.clubs.push_back(supposed);
    const std::size_t number = made.golfer.clubs.size() - 1;
    made.weighing.supposed = {{number, shorter_driver, {.side_spread = 0.9}, "side spread -10 %"}};
    WeighedChange& change = made.weighing.changes.front();
    change.change = {"driver, 44 in (supposed) for driver, 44 in",
                     {number},
                     {shorter_driver},
                     {{shorter_driver}, {driver}}};
    change.baseline_strokes = 8.01;
    change.baseline_without_shots = {driver, wood};
    made.weighing.compared = {{number, true}, {shorter_driver, false}};
    made.weighing.changes.pop_back();
    return made;
}

WeighFixture without_course() {
    WeighFixture made = two_changes();
    made.weighing.straight = StraightHoles{{{24.0 * 0.9144, 320.0 * 0.9144, ChartTrouble::trees},
                                            {36.0 * 0.9144, 540.0 * 0.9144, ChartTrouble::out_left}},
                                           std::nullopt};
    return made;
}

WeighFixture hostile_weighing() {
    WeighFixture made = two_changes();
    PlanFixture hostile = hostile_names();
    hostile.golfer.clubs.push_back(made.golfer.clubs.back());
    made.courses = {std::move(hostile.course)};
    made.golfer = std::move(hostile.golfer);
    made.golfer.clubs.back().name = "</text><script>\"44\"";
    made.weighing.changes[0].change.label = "</text><script>\"44\" for <driver>";
    made.weighing.changes[1].change.label = "without " + std::string(5000, 'W');
    made.weighing.warnings = {"<b>&amp;</b>"};
    return made;
}

WeighFixture two_courses() {
    WeighFixture made = two_changes();
    Course second_course = made.courses.front();
    second_course.name = "Far Holm";
    made.courses.push_back(std::move(second_course));
    made.weighing.course_strokes = {8.03, 8.03};
    for (WeighedChange& change : made.weighing.changes) {
        const CourseGain same = change.courses.front();
        change.courses.push_back(same);
    }
    return made;
}

}  // namespace landwidth::fixture
