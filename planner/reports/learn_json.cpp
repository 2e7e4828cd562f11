#include "planner/reports/display_length.hpp"
#include "planner/reports/json_assumptions.hpp"
#include "planner/reports/json_evidence.hpp"
#include "planner/reports/json_pieces.hpp"
#include "planner/reports/learn_reports.hpp"
#include "planner/reports/learn_words.hpp"
#include "planner/reports/rounded.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

constexpr int share_decimals = 4;

class AsJson {
  public:
    explicit AsJson(const LearnView& view)
        : view_(view), suffix_(view.units == DisplayUnits::yards ? "_yd" : "_m") {}

    Json json() const {
        const Golfer& golfer = view_.learnt.golfer;
        Json logs = Json::array();
        for (const NamedLog& log : view_.logs)
            logs.push_back(log.file);
        Json clubs = Json::array();
        for (const LearntClub& club : view_.learnt.clubs)
            clubs.push_back(json_club(club));
        return {{"format", "landwidth-learning/1"},
                {"golfer",
                 {{"name", golfer.name},
                  {"handicap_index", golfer.handicap_index},
                  {"handicap_known", golfer.handicap_known}}},
                {"logs", std::move(logs)},
                {"clubs", std::move(clubs)},
                {"two_ways", shape_words(view_)},
                {"strikes", strike_words(view_)},
                {"warnings", view_.warnings},
                {"assumptions", json_assumptions(list_assumptions(view_.assumptions))},
                {"cautions", cautions_of_any_shot()}};
    }

  private:
    double length(double metres) const { return rounded(in_display_units(metres, view_.units), 1); }

    // The shots of the logs, in the order of the logs.
    Json json_shots(const LearntClub& club) const {
        const std::span<const double> chances = logged_mishit_chance(club);
        Json shots = Json::array();
        for (std::size_t i = 0; i < chances.size(); ++i) {
            const LandedShot& shot = club.logged.shots[i];
            shots.push_back({{"log", shot.log},
                             {"row", shot.row},
                             {"carry" + suffix_, length(shot.landing.carry_m)},
                             {"side" + suffix_, length(shot.landing.side_m)},
                             {"mishit_chance", rounded(chances[i], share_decimals)}});
        }
        return shots;
    }

    Json json_prior(const LearntClub& club) const {
        const Spread& usual = club.prior.usual;
        return {
            {"source", club.source == PriorSource::typical ? "typical" : "own"},
            {"earlier_shots", club.earlier_shots},
            {"carry" + suffix_, length(usual.centre.carry_m)},
            {"carry_sd" + suffix_, length(usual.carry_sd_m)},
            {"side_sd" + suffix_, length(usual.side_sd_m)},
            {"mishit_share", rounded(club.prior.mishit ? club.prior.mishit->share : 0.0, share_decimals)}};
    }

    Json json_club(const LearntClub& learnt) const {
        const Club& club = learnt.club;
        Json json{{"club", club.name},
                  {"kind", std::string(club_kind_name(club.kind))},
                  {"in_bag", club.in_bag},
                  {"shots", club.pattern->shots},
                  {"lost", learnt.logged.lost},
                  {"run" + suffix_, length(club.pattern->run_m)},
                  {"from_own_shots", rounded(learnt.recorded_share, share_decimals)}};
        json.update(json_evidence(learnt.evidence, view_.units));
        json["why"] = why_differs_words(view_, learnt);
        json["known_before"] = json_prior(learnt);
        json["logged_shots"] = json_shots(learnt);
        return json;
    }

    const LearnView& view_;
    std::string suffix_;
};

}  // namespace

std::string learn_json(const LearnView& view) {
    return json_text(AsJson(view).json());
}

}  // namespace landwidth
