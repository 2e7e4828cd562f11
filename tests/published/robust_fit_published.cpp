// The robust fit against the reference implementation of R's MASS: data/robust_fit.R.
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "golfer-profiles/pattern_learning.hpp"
#include "tests/catch.hpp"

using namespace landwidth;
using Catch::Matchers::WithinRel;

namespace {

std::vector<std::string> cells_of(const std::string& line) {
    std::vector<std::string> cells;
    std::istringstream text(line);
    for (std::string cell; std::getline(text, cell, ',');)
        cells.push_back(cell);
    return cells;
}

std::ifstream opened(const std::string& name, const std::string& header) {
    std::ifstream file(LANDWIDTH_TESTS_DIR "/published/data/" + name);
    std::string line;
    REQUIRE(std::getline(file, line));
    REQUIRE(line == header);
    return file;
}

// In yards: the fit knows no unit.
std::vector<ShotOffset> shots_of_set(const std::string& set) {
    std::ifstream file = opened("robust_fit_shots.csv", "set,carry_yd,side_yd");
    std::vector<ShotOffset> shots;
    for (std::string line; std::getline(file, line);)
        if (const auto cells = cells_of(line); cells.at(0) == set)
            shots.push_back({std::stod(cells.at(1)), std::stod(cells.at(2))});
    return shots;
}

}  // namespace

// Source: MASS::cov.trob, W. N. Venables and B. D. Ripley, Modern Applied Statistics with S, 4th ed. 2002,
// with tol = 1e-10: its `cov` is the scale matrix, the covariance times (dof - 2) / dof. The tolerance leaves
// room for both to stop short of the maximum.
TEST_CASE("the fit of a t is that of MASS::cov.trob", "[published][learning]") {
    constexpr double tolerance = 1e-7;
    std::ifstream file =
        opened("robust_fit.csv", "set,tail_dof,carry_yd,side_yd,carry_carry,carry_side,side_side");
    int cases = 0;
    for (std::string line; std::getline(file, line); ++cases) {
        CAPTURE(line);
        const auto cells = cells_of(line);
        const double dof = std::stod(cells.at(1));
        const Spread fit = fitted_spread(shots_of_set(cells.at(0)), dof);
        const double scale = (dof - 2.0) / dof;
        CHECK_THAT(fit.centre.carry_m, WithinRel(std::stod(cells.at(2)), tolerance));
        CHECK_THAT(fit.centre.side_m, WithinRel(std::stod(cells.at(3)), tolerance));
        CHECK_THAT(scale * fit.carry_sd_m * fit.carry_sd_m, WithinRel(std::stod(cells.at(4)), tolerance));
        CHECK_THAT(scale * fit.correlation * fit.carry_sd_m * fit.side_sd_m,
                   WithinRel(std::stod(cells.at(5)), tolerance));
        CHECK_THAT(scale * fit.side_sd_m * fit.side_sd_m, WithinRel(std::stod(cells.at(6)), tolerance));
    }
    CHECK(cases == 16);
}
