#include "tests/planner/plan_fixture.hpp"

#include <cmath>
#include <limits>
#include <optional>
#include <utility>

namespace landwidth::fixture {
namespace {

constexpr LonLat open_sea{-20.0, 47.0};

Region polygon(Ring ring) {
    return Region::repaired({.outer = std::move(ring), .inners = {}}).region;
}

Region oval(Point centre, double half_width, double half_length) {
    Ring ring;
    for (int i = 0; i < 24; ++i) {
        const double angle = i * 0.2617993877991494;  // 15 degrees
        ring.push_back(centre + Point{half_width * std::cos(angle), half_length * std::sin(angle)});
    }
    return polygon(std::move(ring));
}

Hole bending_par4() {
    const LineOfPlay line({{0.0, 0.0}, {0.0, 230.0}, {70.0, 353.0}});
    const std::vector<LieLayer> layers{
        {Lie::teeing_area, Region::box({{-5.0, -8.0}, {5.0, 6.0}})},
        {Lie::fairway, Region::around({{0.0, 140.0}, {-1.0, 190.0}, {4.0, 236.0}, {54.0, 325.0}}, 17.0)},
        {Lie::green, oval({70.0, 353.0}, 11.0, 14.0)},
        {Lie::bunker, oval({-3.0, 212.0}, 4.0, 7.0)},
        {Lie::bunker, oval({24.0, 219.0}, 5.0, 9.0)},
        {Lie::bunker, oval({86.0, 342.0}, 4.0, 8.0)},
        {Lie::penalty_red,
         polygon({{-75.0, 120.0}, {-34.0, 150.0}, {-27.0, 205.0}, {-40.0, 262.0}, {-80.0, 270.0}})},
        {Lie::trees, polygon({{26.0, 60.0}, {52.0, 60.0}, {55.0, 215.0}, {33.0, 200.0}, {24.0, 130.0}})},
    };
    const Region inside = Region::box({{-200.0, -100.0}, {60.0, 220.0}})
                              .joined_with(Region::box({{-200.0, 220.0}, {140.0, 480.0}}));
    return Hole{
        .ref = "1",
        .name = "Long Ness",
        .feature = "way/101",
        .par = 4,
        .par_inferred = false,
        .stroke_index = 5,
        .tee = "white",
        .frame = PlaneFrame(open_sea),
        .line = line,
        .lies = LiePartition({{-150.0, -80.0}, {200.0, 450.0}}, layers, inside),
        .surroundings = {
            {Surrounding::Kind::building, Region::box({{-52.0, 300.0}, {-38.0, 312.0}}), "Pump house"},
            {Surrounding::Kind::path,
             Region::around({{14.0, -10.0}, {20.0, 120.0}, {22.0, 250.0}, {60.0, 380.0}}, 1.2), ""}}};
}

Hole par3_over_water() {
    const LineOfPlay line({{0.0, 0.0}, {-146.0, 0.0}});
    const std::vector<LieLayer> layers{
        {Lie::teeing_area, Region::box({{-6.0, -5.0}, {7.0, 5.0}})},
        {Lie::green, oval({-146.0, 0.0}, 13.0, 10.0)},
        {Lie::bunker, oval({-140.0, 19.0}, 7.0, 4.0)},
        {Lie::penalty_yellow, polygon({{-118.0, -50.0}, {-70.0, -60.0}, {-62.0, 45.0}, {-112.0, 40.0}})},
    };
    return Hole{.ref = "2",
                .name = "",
                .feature = "way/102",
                .par = 3,
                .par_inferred = true,
                .stroke_index = std::nullopt,
                .tee = "white",
                .frame = PlaneFrame({-20.003, 47.002}),
                .line = line,
                .lies = LiePartition({{-260.0, -120.0}, {100.0, 120.0}}, layers, std::nullopt),
                .surroundings = {}};
}

Club club(std::string name, ClubKind kind, double carry_m, double carry_sd_m, double side_sd_m) {
    ShotPattern pattern;
    pattern.usual = {{carry_m, 2.0}, carry_sd_m, side_sd_m, -0.2};
    pattern.tail_dof = 8.0;
    pattern.run_m = kind == ClubKind::iron ? 5.0 : 14.0;
    pattern.shots = kind == ClubKind::driver ? 24 : 0;
    Club made;
    made.name = std::move(name);
    made.kind = kind;
    made.pattern = pattern;
    return made;
}

Golfer golfer() {
    Golfer made;
    made.name = "A. Golfer";
    made.handicap_index = 14.2;
    made.clubs = {club("driver", ClubKind::driver, 206.0, 13.0, 19.0),
                  club("3-wood", ClubKind::fairway_wood, 189.0, 12.0, 15.0),
                  club("5-iron", ClubKind::iron, 158.0, 9.0, 11.0),
                  club("6-iron", ClubKind::iron, 150.0, 8.5, 10.0),
                  club("7-iron", ClubKind::iron, 141.0, 8.0, 9.5)};
    Club putter;
    putter.name = "putter";
    putter.kind = ClubKind::putter;
    made.clubs.push_back(putter);
    return made;
}

// Shares in the order of enum Lie.
using Shares = std::array<double, lie_count>;

TeeChoice choice(std::size_t club, double aim_rad, double carry_m, double strokes, const Shares& lies) {
    return {.club = club,
            .aim = aim_rad,
            .aim_bearing = {aim_rad},
            .aim_point = carry_m * along_bearing(aim_rad),
            .description = {.offset_m = 0.0, .sighting = std::nullopt},
            .expected_strokes = strokes,
            .aim_value = strokes,
            .standard_error = 0.001,
            .score = {},
            .lies = lies,
            .lost_share = 0.0,
            .leave_mean_m = 150.0,
            .leave_sd_m = 14.0,
            .landing = std::nullopt,
            .cautions = {},
            .day = {.carry_m = carry_m}};
}

HolePlan par4_plan() {
    TeeChoice wood = choice(1, -0.0339, 189.0, 4.61, {0.0, 0.58, 0.29, 0.04, 0.03, 0.0, 0.0, 0.05, 0.01});
    wood.description = {.offset_m = -6.4,
                        .sighting = Sighting{Lie::bunker, Sighting::Mark::left_edge, 210.3, 0.2}};
    wood.leave_mean_m = 163.0;
    wood.leave_sd_m = 15.0;
    wood.landing = FairwayCut{-11.4, 22.6};
    wood.cautions = {{Surrounding::Kind::path, "", 0.02}};
    TeeChoice driver = choice(0, -0.0262, 206.0, 4.69, {0.0, 0.44, 0.28, 0.08, 0.05, 0.0, 0.0, 0.12, 0.03});
    driver.description.offset_m = -5.4;
    driver.leave_mean_m = 146.0;
    driver.landing = FairwayCut{-12.6, 21.4};
    TeeChoice iron = choice(2, 0.0, 158.0, 4.83, {0.0, 0.71, 0.25, 0.0, 0.02, 0.0, 0.0, 0.02, 0.0});
    iron.leave_mean_m = 205.0;
    iron.leave_sd_m = 11.0;
    return {.choices = {wood, driver, iron},
            .verdict = {.best = 0, .margin = 0.08, .over = 1, .confidence = 0.83, .toss_up = false},
            .break_evens =
                BreakEvens{
                    .landing_width = BreakEven{34.0, 26.0}, .side_sd = {15.0, 20.1}, .carry = {189.0, 183.0}},
            .next = {},
            .cost_map = std::nullopt,
            .plays_as_m = 371.5,
            .rise_m = 0.0,
            .tail_wind_mps = 0.0,
            .cross_wind_mps = 0.0,
            .strokes_received = 0,
            .always_driver = 4.69,
            .never_driver = 4.61};
}

HolePlan par3_plan() {
    constexpr double west = -1.5707963267948966;
    TeeChoice seven = choice(4, west, 141.0, 3.42, {0.0, 0.0, 0.47, 0.06, 0.0, 0.41, 0.06, 0.0, 0.0});
    seven.leave_mean_m = 9.0;
    seven.leave_sd_m = 7.0;
    TeeChoice six = choice(3, west, 150.0, 3.43, {0.0, 0.0, 0.51, 0.06, 0.0, 0.40, 0.03, 0.0, 0.0});
    six.leave_mean_m = 10.0;
    six.leave_sd_m = 7.5;
    return {.choices = {seven, six},
            .verdict = {.best = 0, .margin = 0.01, .over = 1, .confidence = 0.54, .toss_up = true},
            .break_evens =
                BreakEvens{
                    .landing_width = std::nullopt, .side_sd = {9.5, std::nullopt}, .carry = {141.0, 141.1}},
            .next = {},
            .cost_map = std::nullopt,
            .plays_as_m = 146.0,
            .rise_m = 0.0,
            .tail_wind_mps = 0.0,
            .cross_wind_mps = 0.0,
            .strokes_received = 0,
            .always_driver = 3.42,
            .never_driver = 3.42};
}

std::vector<PlannedShot> par4_next() {
    constexpr std::size_t three_wood = 1;
    constexpr std::size_t seven_iron = 4;
    constexpr std::size_t sand_wedge = 6;
    const Point drive{-6.9, 203.0};
    const Point short_of_green{44.0, 312.0};
    return {{.club = seven_iron,
             .swing = 1.0,
             .purpose = ShotPurpose::lay_up,
             .from = drive,
             .lie = Lie::fairway,
             .to_hole_m = 166.0,
             .aim_point = {42.0, 308.0},
             .leave = short_of_green,
             .leave_lie = Lie::fairway,
             .leave_m = 48.0,
             .aim_value = 3.61,
             .alternative = PlannedShot::Alternative{.club = three_wood,
                                                     .swing = 1.0,
                                                     .purpose = ShotPurpose::to_the_green,
                                                     .leave_m = 11.0,
                                                     .margin = 0.12}},
            {.club = sand_wedge,
             .swing = 0.6,
             .purpose = ShotPurpose::to_the_green,
             .from = short_of_green,
             .lie = Lie::fairway,
             .to_hole_m = 48.0,
             .aim_point = {70.0, 353.0},
             .leave = {69.0, 350.0},
             .leave_lie = Lie::green,
             .leave_m = 3.2,
             .aim_value = 2.75,
             .alternative = std::nullopt}};
}

// Dearer with the distance to the hole, by one stroke left of x = -40 m; nothing out of bounds.
CostMap par4_costs() {
    CostMap map{.corner = {-90.0, -40.0},
                .along_row = {4.0, 0.0},
                .along_rows = {0.0, 4.0},
                .columns = 50,
                .rows = 110,
                .strokes = {}};
    for (int row = 0; row < map.rows; ++row) {
        for (int column = 0; column < map.columns; ++column) {
            const Point p = map.corner + (column + 0.5) * map.along_row + (row + 0.5) * map.along_rows;
            const double cost = 1.6 + distance(p, {70.0, 353.0}) / 130.0 + (p.x < -40.0 ? 1.0 : 0.0);
            const bool out = p.x > 60.0 && p.y < 220.0;
            map.strokes.push_back(out ? std::numeric_limits<float>::quiet_NaN() : static_cast<float>(cost));
        }
    }
    return map;
}

}  // namespace

PlanFixture two_holes() {
    return {.course = {.name = "Example Holm",
                       .source = "holm.osm",
                       .attribution = "invented data of the Landwidth tests",
                       .holes = {bending_par4(), par3_over_water()},
                       .findings = {{.severity = Severity::warning,
                                     .code = "ring-repaired",
                                     .feature = "way/77",
                                     .hole = "1",
                                     .place = open_sea,
                                     .message = "the outline of the bunker crosses itself and was repaired",
                                     .advice = "redraw it in the map"},
                                    {.severity = Severity::note,
                                     .code = "par-inferred",
                                     .feature = "way/102",
                                     .hole = "2",
                                     .place = std::nullopt,
                                     .message = "the hole has no par; 3 was inferred from its length",
                                     .advice = "tag the hole with its par"}}},
            .golfer = golfer(),
            .plan = {.field = FieldKind::published,
                     .aim_for = AimFor::strokes,
                     .holes = {par4_plan(), par3_plan()},
                     .par = 7,
                     .expected_strokes = 8.03,
                     .aim_value = 8.03,
                     .score = {},
                     .always_driver = 8.11,
                     .never_driver = 8.03,
                     .conditions = {},
                     .has_heights = false,
                     .assumptions = default_assumptions(),
                     .warnings = {"most patterns are presets: record shots to be surer"}}};
}

PlanFixture own_field() {
    PlanFixture made = two_holes();
    made.golfer.clubs.push_back(club("sand wedge", ClubKind::wedge, 70.0, 5.0, 5.0));
    made.plan.field = FieldKind::personal;
    HolePlan& par4 = made.plan.holes[0];
    par4.next = par4_next();
    par4.cost_map = par4_costs();
    par4.choices[0].score.shares = {0.0, 0.0, 0.01, 0.11, 0.38, 0.32, 0.13, 0.04, 0.01};
    HolePlan& par3 = made.plan.holes[1];
    par3.choices[0].score.shares = {0.0, 0.0, 0.12, 0.44, 0.35, 0.08, 0.01};
    made.plan.score = sum_of({par4.choices[0].score, par3.choices[0].score});
    return made;
}

PlanFixture windy_day() {
    PlanFixture made = own_field();
    made.plan.conditions = {.wind = Wind{12.0 * metres_per_second_per_mph, Bearing::from_degrees(240.0),
                                         18.0 * metres_per_second_per_mph},
                            .weather = {.temperature_k = 281.15, .pressure_pa = 100200.0, .humidity = 0.6},
                            .fairway = Firmness::soft,
                            .rough = Firmness::ordinary};
    made.plan.has_heights = true;
    HolePlan& par4 = made.plan.holes[0];
    par4.plays_as_m = 362.1;
    par4.rise_m = 5.5;
    par4.tail_wind_mps = 2.68;
    par4.cross_wind_mps = 4.65;
    par4.choices[0].day = {.carry_m = 194.0,
                           .drift_m = 8.2,
                           .run_m = 11.0,
                           .peak_m = 24.0,
                           .landing_angle_rad = 0.7,
                           .stopped_share = 0.031};
    par4.choices[1].day = {.carry_m = 211.0,
                           .drift_m = 9.4,
                           .run_m = 13.0,
                           .peak_m = 27.0,
                           .landing_angle_rad = 0.66,
                           .stopped_share = 0.009};
    HolePlan& par3 = made.plan.holes[1];
    par3.plays_as_m = 158.0;
    par3.rise_m = -0.2;
    par3.tail_wind_mps = -4.65;
    par3.cross_wind_mps = 2.68;
    par3.choices[0].day = {
        .carry_m = 130.0, .drift_m = 4.6, .run_m = 2.0, .peak_m = 26.0, .landing_angle_rad = 0.9};
    par3.choices[1].day = {
        .carry_m = 138.0, .drift_m = 0.3, .run_m = 2.0, .peak_m = 25.0, .landing_angle_rad = 0.88};
    return made;
}

PlanFixture own_field_for_points() {
    PlanFixture made = own_field();
    made.plan.aim_for = AimFor::stableford;
    made.plan.aim_value = 3.58;
    made.plan.always_driver = 3.47;
    made.plan.never_driver = 3.58;
    const auto set = [&](std::size_t hole, std::vector<double> points, int received) {
        HolePlan& plan = made.plan.holes[hole];
        for (std::size_t i = 0; i < points.size(); ++i)
            plan.choices[i].aim_value = points[i];
        plan.verdict.margin = points[0] - points[1];
        plan.strokes_received = received;
    };
    set(0, {1.96, 1.85, 1.71}, 1);
    set(1, {1.62, 1.618}, 0);
    return made;
}

PlanFixture own_field_for_par() {
    PlanFixture made = own_field();
    made.plan.aim_for = AimFor::par_or_better;
    made.plan.aim_value = 1.06;
    made.plan.always_driver = 1.039;
    made.plan.never_driver = 1.06;
    const auto set = [&](std::size_t hole, std::vector<double> shares) {
        HolePlan& plan = made.plan.holes[hole];
        for (std::size_t i = 0; i < shares.size(); ++i)
            plan.choices[i].aim_value = shares[i];
        plan.verdict.margin = shares[0] - shares[1];
    };
    set(0, {0.5, 0.479, 0.44});
    set(1, {0.56, 0.5598});
    return made;
}

PlanFixture hostile_names() {
    PlanFixture made = two_holes();
    made.course.name = "<script>alert('x')</script> & \"Sons\"";
    made.course.source = "a<b>&c.osm";
    made.course.attribution = "© <b>mappers</b> & \"friends\"";
    made.course.holes[0].name = "\u202Eגולף\u202C </svg> \U0001F3CC";
    made.course.holes[0].ref = "1<a href='x'>";
    made.course.holes[0].tee = std::string("bad\x01\xff\xfe tee");
    made.course.holes[1].name = std::string(5000, 'W');
    made.course.holes[1].ref = "]]> --> 2";
    made.course.findings[0].message = "<img src=x onerror=y> & more";
    made.golfer.name = "O'Neil <i>\"&\"</i>";
    made.golfer.clubs[0].name = "<driver>";
    made.golfer.clubs[1].name = "עץ 3 & \"long\"";
    made.golfer.clubs[3].name = std::string(300, 'i');
    made.plan.warnings = {"<b>&amp;</b>"};
    made.plan.holes[0].choices[0].cautions[0].label = "</desc><path>";
    return made;
}

}  // namespace landwidth::fixture
