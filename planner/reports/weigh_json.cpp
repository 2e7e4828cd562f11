#include "geometry/units.hpp"
#include "planner/reports/day_words.hpp"
#include "planner/reports/json_assumptions.hpp"
#include "planner/reports/json_day.hpp"
#include "planner/reports/json_evidence.hpp"
#include "planner/reports/json_pieces.hpp"
#include "planner/reports/rounded.hpp"
#include "planner/reports/weigh_reports.hpp"
#include "planner/reports/weigh_setting_words.hpp"
#include "planner/reports/weigh_words.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {

namespace {

constexpr int share_decimals = 4;

class WeighJson {
  public:
    explicit WeighJson(const WeighView& view) : view_(view) {}

    Json json() const {
        Json courses = Json::array();
        for (std::size_t i = 0; i < view_.courses.size(); ++i) {
            const Course& course = view_.courses[i];
            courses.push_back(
                {{"name", course.name},
                 {"source", course.source},
                 {"attribution", course.attribution},
                 {"holes", course.holes.size()},
                 {"expected_strokes", rounded(view_.weighing.course_strokes[i], stroke_decimals)}});
        }
        Json changes = Json::array();
        for (const WeighedChange& change : view_.weighing.changes)
            changes.push_back(json_change(change));
        Json shots = Json::object();
        for (const auto& [club, evidence] : view_.weighing.evidence)
            shots[name(club)] = json_evidence(evidence, DisplayUnits::yards);
        Json supposed = Json::object();
        for (const SupposedClub& club : view_.weighing.supposed)
            supposed[name(club.club)] = json_supposed(club);
        return {{"format", "landwidth-weighing/1"},
                {"golfer", {{"name", view_.golfer.name}}},
                {"courses", std::move(courses)},
                {"straight_holes", json_straight()},
                {"supposed", std::move(supposed)},
                {"day", json_day(view_.weighing.conditions)},
                {"has_heights", view_.weighing.has_heights},
                {"expected_strokes", rounded(view_.weighing.strokes, stroke_decimals)},
                {"changes", std::move(changes)},
                {"shots", std::move(shots)},
                {"assumptions", json_assumptions(list_assumptions(view_.weighing.assumptions))},
                {"warnings", view_.weighing.warnings},
                {"cautions",
                 standing_cautions(setting_words(view_.weighing.conditions, view_.weighing.has_heights))}};
    }

  private:
    const std::string& name(std::size_t club) const { return view_.golfer.clubs.at(club).name; }

    Json names(const std::vector<std::size_t>& clubs) const {
        Json list = Json::array();
        for (const std::size_t club : clubs)
            list.push_back(name(club));
        return list;
    }

    // What holes there are where no course was given; null where one was.
    Json json_straight() const {
        if (!view_.weighing.straight) return nullptr;
        const StraightHoles& straight = *view_.weighing.straight;
        Json trouble = "mix";
        if (straight.trouble) trouble = chart_trouble_name(*straight.trouble);
        Json holes = Json::array();
        for (const StraightHole& hole : straight.holes)
            holes.push_back({{"landing_width_yd", json_yards(hole.width_m)},
                             {"length_yd", json_yards(hole.length_m)},
                             {"trouble", chart_trouble_name(hole.trouble)}});
        return {
            {"words", straight_words(view_)}, {"trouble", std::move(trouble)}, {"holes", std::move(holes)}};
    }

    Json json_supposed(const SupposedClub& club) const {
        const Supposition& s = club.supposition;
        return {{"of", name(club.of)},
                {"with", club.words},
                {"carry_spread_factor", rounded(s.carry_spread, share_decimals)},
                {"side_spread_factor", rounded(s.side_spread, share_decimals)},
                {"carry_factor", rounded(s.carry_factor, share_decimals)},
                {"carry_more_yd", json_yards(s.carry_m)},
                {"side_more_yd", json_yards(s.side_m)},
                {"mishit_factor", rounded(s.mishit_factor, share_decimals)},
                {"mishit_share_more", rounded(s.mishit_share, share_decimals)},
                {"ball_speed_more_mph", rounded(s.ball_speed_mps / metres_per_second_per_mph, 2)},
                {"ball_speed_carry_more_yd", json_yards(s.speed_carry_m)}};
    }

    Json json_baseline(const WeighedChange& change) const {
        return {{"is_bag_of_today", !has_baseline(change)},
                {"in", names(change.change.before.in)},
                {"out", names(change.change.before.out)},
                {"expected_strokes", rounded(change.baseline_strokes, stroke_decimals)}};
    }

    Json json_bag(const BagOnHole& bag) const {
        return {{"club", name(bag.club)},
                {"expected_strokes", rounded(bag.strokes, stroke_decimals)},
                {"lies", json_shares(bag.lies)},
                {"leave_yd", json_yards(bag.leave_mean_m)}};
    }

    Json json_holes(const WeighedChange& change) const {
        Json holes = Json::array();
        for (std::size_t c = 0; c < view_.courses.size(); ++c)
            for (std::size_t h = 0; h < view_.courses[c].holes.size(); ++h) {
                const Hole& hole = view_.courses[c].holes[h];
                const HoleGain& gain = change.courses[c].holes[h];
                Json one{{"course", c},
                         {"ref", hole.ref},
                         {"par", hole.par},
                         {"length_yd", json_yards(hole.line.length())},
                         {"saves_strokes", rounded(gain.gain, stroke_decimals)},
                         {"confidence", json_optional(gain.chance, share_decimals)},
                         {"before", json_bag(gain.before)},
                         {"after", json_bag(gain.after)}};
                if (const std::string why = why_words(gain, DisplayUnits::yards); !why.empty())
                    one["why"] = why;
                holes.push_back(std::move(one));
            }
        return holes;
    }

    Json json_change(const WeighedChange& change) const {
        Json missed = Json::array();
        for (const MissedClub& club : change.missed)
            missed.push_back(
                {{"club", name(club.club)}, {"strokes", rounded(club.strokes, stroke_decimals)}});
        Json supposed = Json::object();
        for (const SupposedClub& club : supposed_in(view_, change))
            supposed[name(club.club)] = json_supposed(club);
        Json more = nullptr;
        if (change.more)
            more = {{"club", name(change.more->club)},
                    {"shots", change.more->shots},
                    {"chance_right", rounded(change.more->chance_right, share_decimals)},
                    {"worth_strokes", rounded(change.more->worth, stroke_decimals)},
                    {"settles", change.more->settles}};
        return {
            {"label", change.change.label},
            {"in", names(change.change.in)},
            {"out", names(change.change.out)},
            {"baseline", json_baseline(change)},
            {"baseline_without_shots", names(change.baseline_without_shots)},
            {"supposed", std::move(supposed)},
            {"expected_strokes", rounded(change.strokes, stroke_decimals)},
            {"saves_strokes", rounded(change.gain, stroke_decimals)},
            {"drawn_mean", rounded(change.drawn_mean, stroke_decimals)},
            {"interval_90", {rounded(change.low, stroke_decimals), rounded(change.high, stroke_decimals)}},
            {"confidence", change.verdict == BagVerdict::not_compared
                               ? Json()
                               : Json(rounded(change.chance, share_decimals))},
            {"settled", change.settled},
            {"verdict", verdict_word(change.verdict)},
            {"standing", standing(change)},
            {"next_step", next_step_words(view_, change)},
            {"more_shots", std::move(more)},
            {"missed", std::move(missed)},
            {"holes", json_holes(change)}};
    }

    const WeighView& view_;
};

}  // namespace

std::string weigh_json(const WeighView& view) {
    return json_text(WeighJson(view).json());
}

}  // namespace landwidth
