#include "planner/engine/tour_table.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace landwidth {

namespace {

constexpr double none = std::numeric_limits<double>::quiet_NaN();

constexpr std::array rows{
    TourRow{10, {none, 2.18, 2.34, 2.43, 3.45}},  TourRow{20, {none, 2.40, 2.59, 2.53, 3.51}},
    TourRow{30, {none, 2.52, 2.70, 2.66, 3.57}},  TourRow{40, {none, 2.60, 2.78, 2.82, 3.71}},
    TourRow{50, {none, 2.66, 2.87, 2.92, 3.79}},  TourRow{60, {none, 2.70, 2.91, 3.15, 3.83}},
    TourRow{70, {none, 2.72, 2.93, 3.21, 3.84}},  TourRow{80, {none, 2.75, 2.96, 3.24, 3.84}},
    TourRow{90, {none, 2.77, 2.99, 3.24, 3.82}},  TourRow{100, {2.92, 2.80, 3.02, 3.23, 3.80}},
    TourRow{120, {2.99, 2.85, 3.08, 3.21, 3.78}}, TourRow{140, {2.97, 2.91, 3.15, 3.22, 3.80}},
    TourRow{160, {2.99, 2.98, 3.23, 3.28, 3.81}}, TourRow{180, {3.05, 3.08, 3.31, 3.40, 3.82}},
    TourRow{200, {3.12, 3.19, 3.42, 3.55, 3.87}}, TourRow{220, {3.17, 3.32, 3.53, 3.70, 3.92}},
    TourRow{240, {3.25, 3.45, 3.64, 3.84, 3.97}}, TourRow{260, {3.45, 3.58, 3.74, 3.93, 4.03}},
    TourRow{280, {3.65, 3.69, 3.83, 4.00, 4.10}}, TourRow{300, {3.71, 3.78, 3.90, 4.04, 4.20}},
    TourRow{320, {3.79, 3.84, 3.95, 4.12, 4.31}}, TourRow{340, {3.86, 3.88, 4.02, 4.26, 4.44}},
    TourRow{360, {3.92, 3.95, 4.11, 4.41, 4.56}}, TourRow{380, {3.96, 4.03, 4.21, 4.55, 4.66}},
    TourRow{400, {3.99, 4.11, 4.30, 4.69, 4.75}}, TourRow{420, {4.02, 4.19, 4.40, 4.83, 4.84}},
    TourRow{440, {4.08, 4.27, 4.49, 4.97, 4.94}}, TourRow{460, {4.17, 4.34, 4.58, 5.11, 5.03}},
    TourRow{480, {4.28, 4.42, 4.68, 5.25, 5.13}}, TourRow{500, {4.41, 4.50, 4.77, 5.40, 5.22}},
    TourRow{520, {4.54, 4.58, 4.87, 5.54, 5.32}}, TourRow{540, {4.65, 4.66, 4.96, 5.68, 5.41}},
    TourRow{560, {4.74, 4.74, 5.06, 5.82, 5.51}}, TourRow{580, {4.79, 4.82, 5.15, 5.96, 5.60}},
    TourRow{600, {4.82, 4.89, 5.25, 6.10, 5.70}},
};
constexpr std::size_t first_tee_row = 9;

struct Node {
    double x;
    double y;
};

double on_line(Node a, Node b, double x) {
    const double share = (x - a.x) / (b.x - a.x);
    return (1.0 - share) * a.y + share * b.y;
}

// One-putt shares: 99, 96, 88, 77, 50, 40, 23, 15, 7, 4, 3, 2 %; three-putt shares 2 % at 20 ft, 6 % at 32
// ft, 10 % at 40 ft, linear between and falling to none at 5 ft; 17 and 23 % at 50 and 60 ft from memory.
struct PuttNode {
    double distance_ft, one, three;
};
constexpr std::array putts{
    PuttNode{0, 1.0, 0.0},
    PuttNode{2, 0.99, 0.0},
    PuttNode{3, 0.96, 0.0},
    PuttNode{4, 0.88, 0.0},
    PuttNode{5, 0.77, 0.0},
    PuttNode{8, 0.50, 0.02 * 3.0 / 15.0},
    PuttNode{10, 0.40, 0.02 * 5.0 / 15.0},
    PuttNode{15, 0.23, 0.02 * 10.0 / 15.0},
    PuttNode{20, 0.15, 0.02},
    PuttNode{30, 0.07, 0.02 + 0.04 * 10.0 / 12.0},
    PuttNode{40, 0.04, 0.10},
    PuttNode{50, 0.03, 0.17},
    PuttNode{60, 0.02, 0.23},
};

}  // namespace

std::span<const TourRow> tour_table() {
    return rows;
}

double tour_strokes(TourLie lie, Yards distance) {
    const auto column = static_cast<std::size_t>(lie);
    const auto begin = rows.begin() + (lie == TourLie::tee ? first_tee_row : 0);
    auto above = std::upper_bound(begin, rows.end(), distance.value,
                                  [](double d, const TourRow& row) { return d < row.distance_yd; });
    above = std::clamp(above, begin + 1, rows.end() - 1);
    const auto node = [&](const TourRow& row) { return Node{row.distance_yd, row.strokes[column]}; };
    return on_line(node(*(above - 1)), node(*above), distance.value);
}

PuttShares tour_putt_shares(double distance_ft) {
    auto above = std::upper_bound(putts.begin(), putts.end(), distance_ft,
                                  [](double d, const PuttNode& node) { return d < node.distance_ft; });
    above = std::clamp(above, putts.begin() + 1, putts.end() - 1);
    const PuttNode& a = *(above - 1);
    const PuttNode& b = *above;
    const double one = on_line({a.distance_ft, a.one}, {b.distance_ft, b.one}, distance_ft);
    const double three = on_line({a.distance_ft, a.three}, {b.distance_ft, b.three}, distance_ft);
    return {std::clamp(one, 0.0, 1.0), std::clamp(three, 0.0, 1.0)};
}

double tour_putts(double distance_ft) {
    const PuttShares shares = tour_putt_shares(distance_ft);
    return 2.0 - shares.one + shares.three;
}

}  // namespace landwidth
