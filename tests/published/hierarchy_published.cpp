// The model of one golfer against an outside reference: the same posterior by JAGS (M. Plummer, JAGS: a
// program for analysis of Bayesian graphical models using Gibbs sampling, DSC 2003), a general sampler that
// was told the model in its own language and shares no line with ours. data/one_golfer.R has it; the shots
// are simulated. Restricted to what both can say alike: no mishits, no sessions, 6 degrees of freedom.

#include <cmath>
#include <fstream>
#include <map>
#include <sstream>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

#include "golfer-profiles/evidence/golfer_sampler.hpp"
#include "tests/catch.hpp"

namespace landwidth {
namespace {

// Both files are written by one_golfer.R's side: names in quotes, never one within.
std::vector<std::vector<std::string>> rows_of(const std::string& name) {
    const std::string path = std::string(LANDWIDTH_TESTS_DIR) + "/published/data/" + name;
    std::ifstream file(path);
    std::vector<std::vector<std::string>> rows;
    std::string line;
    std::getline(file, line);  // the header
    while (std::getline(file, line)) {
        std::vector<std::string> cells(1);
        bool quoted = false;
        for (const char c : line) {
            if (c == '"')
                quoted = !quoted;
            else if (c == ',' && !quoted)
                cells.emplace_back();
            else
                cells.back() += c;
        }
        rows.push_back(std::move(cells));
    }
    if (rows.empty()) throw std::runtime_error(path + ": no rows; restore it from the repository");
    return rows;
}

const std::vector<std::pair<std::string, Trait>>& compared_traits() {
    static const std::vector<std::pair<std::string, Trait>> traits{{"carry", Trait::carry},
                                                                   {"direction", Trait::direction},
                                                                   {"log_along", Trait::log_along},
                                                                   {"log_across", Trait::log_across},
                                                                   {"twist", Trait::twist}};
    return traits;
}

struct Case {
    GolferModel model;
    std::vector<std::string> builds;  // names, in the order of their first shots
};

// one_golfer.R has the same typical club.
Case one_golfer() {
    const GolferPrior prior;
    Case result;
    GolferModel& model = result.model;
    model.sds = {prior.carry,      prior.direction, prior.log_spread,
                 prior.log_spread, prior.twist,     prior.logit_mishits};
    model.tails = {{6.0, 0.0}};
    // No club has mishits; their place is drawn all the same and needs a spread.
    model.mishit_centre_sd = {prior.mishit_along, prior.mishit_across};
    model.log_mishit_spread = prior.log_mishit_spread;
    std::map<std::string, std::size_t> families;
    for (const std::vector<std::string>& row : rows_of("one_golfer_shots.csv")) {
        if (result.builds.empty() || result.builds.back() != row.at(0)) {
            const std::size_t family = families.try_emplace(row.at(1), families.size()).first->second;
            ModelBuild build{.club = model.builds.size(), .family = family, .length_m = 200.0};
            of(build.typical, Trait::log_along) = std::log(0.06);
            of(build.typical, Trait::log_across) = std::log(0.09);
            of(build.typical, Trait::twist) = -0.1;
            build.has_mishits = false;
            model.builds.push_back(std::move(build));
            result.builds.push_back(row.at(0));
        }
        model.builds.back().shots.push_back(ModelShot{{std::stod(row.at(2)), std::stod(row.at(3))}, {}});
    }
    model.families = families.size();
    return result;
}

struct Moments {
    double mean, sd;
};

template <class Value>
Moments moments_of(const std::vector<GolferState>& draws, Value value) {
    const auto count = static_cast<double>(draws.size());
    double sum = 0.0, squares = 0.0;
    for (const GolferState& draw : draws)
        sum += value(draw);
    for (const GolferState& draw : draws)
        squares += std::pow(value(draw) - sum / count, 2);
    return {sum / count, std::sqrt(squares / (count - 1.0))};
}

}  // namespace

TEST_CASE("one golfer's posterior is that of an outside sampler [JAGS 4, M. Plummer 2003]") {
    const Case golfer = one_golfer();
    REQUIRE(golfer.builds == std::vector<std::string>{"driver", "driver, 44 in", "3-wood"});
    REQUIRE(golfer.model.families == 2);
    CounterBits bits(11);
    const std::vector<GolferState> draws = drawn_after_shots(golfer.model, bits, 4000);

    std::map<std::pair<std::string, std::string>, Moments> ours;
    for (const auto& [name, trait] : compared_traits()) {
        for (std::size_t b = 0; b < golfer.builds.size(); ++b)
            ours[{golfer.builds[b], name}] =
                moments_of(draws, [&, t = trait](const GolferState& s) { return of(s.builds[b], t); });
        ours[{golfer.builds[0] + " minus " + golfer.builds[1], name}] = moments_of(
            draws, [t = trait](const GolferState& s) { return of(s.builds[0], t) - of(s.builds[1], t); });
    }

    const auto reference = rows_of("one_golfer_jags.csv");
    REQUIRE(reference.size() == ours.size());
    for (const std::vector<std::string>& row : reference) {
        const Moments& own = ours.at({row.at(0), row.at(1)});
        const double mean = std::stod(row.at(2)), sd = std::stod(row.at(3));
        CAPTURE(row.at(0), row.at(1), mean, sd, own.mean, own.sd, (own.mean - mean) / sd, own.sd / sd);
        CHECK(std::abs(own.mean - mean) < 0.1 * sd);
        CHECK(std::abs(own.sd / sd - 1.0) < 0.08);
    }
}

}  // namespace landwidth
