// The model of one golfer against an outside reference: the same posterior by JAGS (M. Plummer, JAGS: a
// program for analysis of Bayesian graphical models using Gibbs sampling, DSC 2003), a general sampler that
// was told the model in its own language and shares no line with ours. data/one_golfer.R has it; the shots
// are simulated. Restricted to what both can say alike: no mishits, no sessions, 6 degrees of freedom.

#include <algorithm>
#include <cmath>
#include <fstream>
#include <map>
#include <numeric>
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

struct Summary {
    double mean, sd, q05, q95;
};

template <class Value>
Summary summary_of(const std::vector<GolferState>& draws, Value value) {
    std::vector<double> values;
    for (const GolferState& draw : draws)
        values.push_back(value(draw));
    std::ranges::sort(values);
    const auto count = static_cast<double>(values.size());
    const auto at = [&](double share) { return values[static_cast<std::size_t>(share * count)]; };
    const double mean = std::accumulate(values.begin(), values.end(), 0.0) / count;
    double squares = 0.0;
    for (const double v : values)
        squares += (v - mean) * (v - mean);
    return {mean, std::sqrt(squares / (count - 1.0)), at(0.05), at(0.95)};
}

// Four standard errors of a difference of two runs, in standard deviations of the posterior. Least effective
// sizes of what is compared, measured by R's coda: JAGS 4700 (column `effective`), ours of 16000 draws 7400
// for means and 11000 for squares. A mean's is sqrt(1/n), a standard deviation's sqrt((kurtosis - 1)/(4 n))
// with kurtoses up to 3.8, a 5 % quantile's about 2.1 sqrt(1/n).
constexpr int draws_compared = 16000;
constexpr double mean_allowed = 0.07, sd_allowed = 0.05, quantile_allowed = 0.13;

}  // namespace

TEST_CASE("one golfer's posterior is that of an outside sampler [JAGS 4, M. Plummer 2003]") {
    const Case golfer = one_golfer();
    REQUIRE(golfer.builds == std::vector<std::string>{"driver", "driver, 44 in", "3-wood"});
    REQUIRE(golfer.model.families == 2);
    CounterBits bits(11);
    const std::vector<GolferState> draws = drawn_after_shots(golfer.model, bits, draws_compared);

    std::map<std::pair<std::string, std::string>, Summary> ours;
    for (const auto& [name, trait] : compared_traits()) {
        for (std::size_t b = 0; b < golfer.builds.size(); ++b)
            ours[{golfer.builds[b], name}] =
                summary_of(draws, [&, t = trait](const GolferState& s) { return of(s.builds[b], t); });
        const auto number = static_cast<std::size_t>(trait);
        ours[{"golfer less typical", name}] =
            summary_of(draws, [=](const GolferState& s) { return s.shared[number].golfer; });
        ours[{golfer.builds[0] + " minus " + golfer.builds[1], name}] = summary_of(
            draws, [t = trait](const GolferState& s) { return of(s.builds[0], t) - of(s.builds[1], t); });
    }

    const auto reference = rows_of("one_golfer_jags.csv");
    REQUIRE(reference.size() == ours.size());
    for (const std::vector<std::string>& row : reference) {
        const Summary& own = ours.at({row.at(0), row.at(1)});
        const Summary theirs{std::stod(row.at(2)), std::stod(row.at(3)), std::stod(row.at(4)),
                             std::stod(row.at(5))};
        const double mean_off = (own.mean - theirs.mean) / theirs.sd;
        const double sd_off = own.sd / theirs.sd - 1.0;
        const double q05_off = (own.q05 - theirs.q05) / theirs.sd;
        const double q95_off = (own.q95 - theirs.q95) / theirs.sd;
        CAPTURE(row.at(0), row.at(1));
        CHECK(std::abs(mean_off) < mean_allowed);
        CHECK(std::abs(sd_off) < sd_allowed);
        CHECK(std::abs(q05_off) < quantile_allowed);
        CHECK(std::abs(q95_off) < quantile_allowed);
    }
}

}  // namespace landwidth
