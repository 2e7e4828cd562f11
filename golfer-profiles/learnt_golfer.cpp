#include "golfer-profiles/learnt_golfer.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <map>

#include "geometry/error.hpp"
#include "geometry/units.hpp"
#include "golfer-profiles/bag_joining.hpp"
#include "golfer-profiles/evidence/bag_draws.hpp"
#include "golfer-profiles/evidence/pattern_middle.hpp"
#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/known_shots.hpp"
#include "golfer-profiles/level_guess.hpp"
#include "golfer-profiles/order_statistics.hpp"
#include "golfer-profiles/preset_clubs.hpp"
#include "golfer-profiles/preset_numbers.hpp"
#include "golfer-profiles/sessions/prepare_sessions.hpp"
#include "golfer-profiles/typical_club.hpp"

namespace landwidth {
namespace {

double usual_carry_m(const LoggedClub& club) {
    std::vector<double> carries;
    for (const LandedShot& shot : club.shots)
        carries.push_back(shot.landing.carry_m);
    return median(std::move(carries));
}

// A pattern that a profile cannot hold comes of columns that are not what they seem.
void refuse_impossible(const LoggedClub& logged, const ShotPattern& pattern,
                       const std::vector<NamedLog>& logs) {
    constexpr double least_carry_yd = 1, most_side_yd = 150, most_run_yd = 120;
    const double carry = to_yards(pattern.usual.centre.carry_m);
    const double side = to_yards(pattern.usual.centre.side_m);
    const double run = to_yards(pattern.run_m);
    if (carry >= least_carry_yd && std::abs(side) <= most_side_yd && run <= most_run_yd) return;
    throw InputError(
        logs[logged.shots.front().log].file,
        fmt::format("the shots of {} carry {:.0f} yd, end {:.0f} yd to the side and run {:.0f} yd as a "
                    "rule, which no golfer's do; are columns or units mixed up?",
                    in_quotes(logged.name), carry, std::abs(side), run));
}

// The typical golfer that stands in for clubs the profile has not.
GolferRequest typical_of(const Golfer& onto, Reference reference) {
    GolferRequest request{.name = onto.name,
                          .handicap_index = onto.handicap_index,
                          .drive_total_yd = {},
                          .reference = reference,
                          .hand = onto.hand};
    const auto driver = std::find_if(onto.clubs.begin(), onto.clubs.end(),
                                     [](const Club& c) { return c.kind == ClubKind::driver && c.pattern; });
    if (driver != onto.clubs.end()) {
        const double drive = to_yards(driver->pattern->usual.centre.carry_m + driver->pattern->run_m);
        request.drive_total_yd = std::clamp(drive, shortest_drive_yd, longest_drive_yd);
    }
    return request;
}

// Without handicap and drive: as much longer or shorter than a golfer of the middle as the log is.
GolferRequest level_by_logs(const std::vector<LoggedClub>& clubs, GolferRequest typical) {
    constexpr double middle_handicap = 15.0;
    typical.handicap_index = middle_handicap;
    std::vector<double> ratios;
    for (const LoggedClub& club : clubs) {
        const ShotPattern known = *typical_club(typical, club.kind, club.club).pattern;
        if (!club.shots.empty()) ratios.push_back(usual_carry_m(club) / known.usual.centre.carry_m);
    }
    const double ratio = ratios.empty() ? 1.0 : median(std::move(ratios));
    return guessed_level(typical,
                         std::clamp(ratio * drive_yd_of(typical), shortest_drive_yd, longest_drive_yd));
}

class Learning {
  public:
    Learning(const std::vector<NamedLog>& logs, const LearnRequest& request)
        : logs_(logs), request_(request), logged_(logged_clubs(logs, request.kinds, request.carried)) {
        const LoggedClubs recorded = request.onto ? logged_ : LoggedClubs{};
        for (std::string& sentence : prepare_sessions(logged_, logs, request.sessions))
            logged_.warnings.push_back(std::move(sentence));
        result_.strikes = strike_effects(logs, logged_);
        result_.warnings = std::move(logged_.warnings);
        start();
        for (const Session& session : logged_.sessions)
            session_numbers_.push_back(number_of(session));
        number_shots();
        if (request.onto)
            for (std::string& sentence : leave_out_known(logged_, recorded, result_.golfer, logs))
                result_.warnings.push_back(std::move(sentence));
        check_room(result_.golfer, logged_.clubs, logs.front().file);
        for (const LoggedClub& club : logged_.clubs)
            add(club);
        fit();
    }

    LearntGolfer result() && { return std::move(result_); }

  private:
    void start() {
        if (request_.onto) {
            typical_ = typical_of(*request_.onto, request_.typical.reference);
            result_.golfer = *request_.onto;
            return;
        }
        typical_ = request_.typical;
        if (!request_.handicap_known && !typical_.drive_total_yd)
            typical_ = level_by_logs(logged_.clubs, typical_);
        result_.golfer = typical_golfer(typical_);
        result_.golfer.handicap_known = request_.handicap_known;
        for (Club& club : result_.golfer.clubs)
            if (club.pattern) club.learnt_from = LearntFrom{*club.pattern, {}};
        if (!request_.handicap_known)
            result_.warnings.push_back(
                fmt::format("no handicap is known: short game and putting are taken for those of golfers who "
                            "hit the ball as "
                            "far (handicap index {:g}, a guess); say --handicap",
                            typical_.handicap_index));
    }

    std::size_t number_of(const Session& session) {
        std::vector<Session>& known = result_.golfer.sessions;
        const auto same = std::ranges::find(known, session.label, &Session::label);
        if (same != known.end()) {
            same->weight = session.weight;
            return static_cast<std::size_t>(same - known.begin());
        }
        known.push_back(session);
        return known.size() - 1;
    }

    // When in its session each shot was hit: by its place among the session's shots of all clubs.
    void number_shots() {
        std::map<std::size_t, std::vector<std::pair<std::size_t, std::size_t>>> rows;
        for (const LoggedClub& club : logged_.clubs)
            for (const LandedShot& shot : club.shots)
                if (shot.session) rows[*shot.session].emplace_back(shot.log, shot.row);
        for (auto& [session, of_session] : rows) {
            std::ranges::sort(of_session);
            for (std::size_t i = 0; i < of_session.size(); ++i)
                when_[of_session[i]] = of_session.size() > 1 ? static_cast<double>(i) /
                                                                   static_cast<double>(of_session.size() - 1)
                                                             : 0.5;
        }
    }

    // Shots without date or session among others that have one are a session of their own.
    ShotTime time_of(const LandedShot& shot) {
        if (!shot.session) return {number_of({.label = "undated"}), 0.5};
        return {session_numbers_[*shot.session], when_.at({shot.log, shot.row})};
    }

    void add(const LoggedClub& logged) {
        Club* meant = club_meant(result_.golfer, logged, logged_.clubs);
        const bool own = request_.onto && meant != nullptr && meant->pattern;
        Club club = own ? *meant : typical_club(typical_, logged.kind, logged.club);
        if (!own || !club.learnt_from) club.learnt_from = LearntFrom{*club.pattern, {}};
        LearntClub learnt{
            .logged = logged,
            .club = {},
            .prior = club.learnt_from->prior,
            .source = own ? PriorSource::own : PriorSource::typical,
            .earlier_shots = club.learnt_from->prior.shots + static_cast<int>(club.learnt_from->shots.size()),
            .evidence = {},
            .recorded_share = 0.0};
        add_shots(logged, *club.learnt_from);
        if (meant == nullptr || logged.is_the_one_carried)
            club.name = logged.name;
        else
            club.name = meant->name;
        if (!logged.build.empty()) club.build_of = logged.club;
        if (logged.length_m) club.length_m = logged.length_m;
        if (logged.launch) club.launch = logged.launch;
        club.pattern->shots = learnt.earlier_shots + static_cast<int>(logged.shots.size()) + logged.lost;
        if (logged.run_m) club.pattern->run_m = *logged.run_m;
        const bool is_build = !logged.build.empty() && !logged.is_the_one_carried;
        const Joined joined = join_bag(result_.golfer, club, meant, is_build);
        numbers_.push_back(club.name);
        remark_joined(club.name, logged, joined);
        result_.clubs.push_back(std::move(learnt));
    }

    void add_shots(const LoggedClub& logged, LearntFrom& known) {
        const bool timed = !known.times.empty() || std::ranges::any_of(logged.shots, [](const LandedShot& s) {
            return s.session.has_value();
        });
        if (timed && known.times.empty())
            known.times.assign(known.shots.size(), {number_of({.label = "undated"}), 0.5});
        for (const LandedShot& shot : logged.shots) {
            known.shots.push_back(shot.landing);
            if (timed) known.times.push_back(time_of(shot));
        }
        known.lost += logged.lost;
    }

    Club& club_named(const std::string& name) {
        return *std::ranges::find_if(result_.golfer.clubs,
                                     [&](const Club& club) { return same_name(club.name, name); });
    }

    // Every club that is learnt from something takes what all shots say.
    void fit() {
        BagDraws draws = posterior_draws(result_.golfer, request_.weight, draws_of_middle);
        take(draws);
        result_.shapes = shapes_found(result_.golfer);
        if (!result_.shapes.empty()) {
            for (Club& club : result_.golfer.clubs)
                for (const ShapeFound& shape : result_.shapes)
                    if (club.pattern && club.learnt_from && same_name(family_of(club), shape.club))
                        club.pattern->ways = shape.ways;
            draws = posterior_draws(result_.golfer, request_.weight, draws_of_middle);
            take(draws);
        }
        for (std::size_t i = 0; i < result_.clubs.size(); ++i)
            finish(result_.clubs[i], numbers_[i], draws);
    }

    // A run that was measured or stated stays; a typical one goes with the carry.
    void take(const BagDraws& draws) {
        for (std::size_t i = 0; i < result_.golfer.clubs.size(); ++i) {
            Club& club = result_.golfer.clubs[i];
            if (!club.pattern || !club.learnt_from) continue;
            const ShotPattern before = *club.pattern;
            club.pattern = middle_of(draws[i]);
            club.pattern->shots = before.shots;
            club.pattern->run_m = before.run_m;
            if (has_typical_run(club))
                club.pattern->run_m *= club.pattern->usual.centre.carry_m / before.usual.centre.carry_m;
            if (before.shots == 0)
                club.note = "typical of the level, moved by what the recorded shots of other clubs show";
        }
    }

    bool has_typical_run(const Club& club) const {
        const auto at = static_cast<std::size_t>(std::ranges::find(numbers_, club.name) - numbers_.begin());
        if (at == numbers_.size()) return club.pattern->shots == 0;
        return result_.clubs[at].source == PriorSource::typical && !result_.clubs[at].logged.run_m;
    }

    void finish(LearntClub& learnt, const std::string& name, const BagDraws& draws) {
        Club& club = club_named(name);
        const auto number = static_cast<std::size_t>(&club - result_.golfer.clubs.data());
        const LoggedClub& logged = learnt.logged;
        if (!logged.shots.empty()) refuse_impossible(logged, *club.pattern, logs_);
        const std::vector<ShotOffset>& shots = club.learnt_from->shots;
        learnt.evidence = club_evidence(*club.pattern, shots, draws[number]);
        const double own = club.pattern->shots;
        learnt.recorded_share = own / (own + shots_known_otherwise(result_.golfer, number, request_.weight));
        club.note = note_for(learnt);
        if (shots.size() > most_learnt_shots) {
            result_.warnings.push_back(
                fmt::format("{}: over {} shots; the profile keeps the pattern and not the shots",
                            in_quotes(name), most_learnt_shots));
            club.learnt_from = LearntFrom{*club.pattern, {}};
        }
        learnt.club = club;
        remark_length(learnt);
    }

    static std::string note_for(const LearntClub& learnt) {
        const std::size_t shots = learnt.logged.shots.size();
        std::string note = fmt::format("learnt from {} recorded shot{}", shots, shots == 1 ? "" : "s");
        if (learnt.earlier_shots > 0) note += fmt::format(" and {} earlier ones", learnt.earlier_shots);
        note += learnt.source == PriorSource::own && learnt.earlier_shots == 0
                    ? ", with the pattern the profile stated before and the golfer's other clubs"
                    : ", with the golfer's other clubs and what is typical of the level";
        if (!learnt.logged.session_note.empty()) note += "; " + learnt.logged.session_note;
        note += learnt.logged.run_m ? "; run: median of the shots" : "; run: not recorded";
        return note;
    }

    void remark_joined(const std::string& name, const LoggedClub& logged, Joined joined) {
        if (!same_name(name, logged.name))
            result_.warnings.push_back(
                fmt::format("the shots of {} are taken for {}", in_quotes(logged.name), in_quotes(name)));
        if (joined == Joined::on_trial) {
            result_.warnings.push_back(
                fmt::format("{} is on trial, not in the bag: {}", in_quotes(name),
                            logged.build.empty() ? "14 clubs are carried already" : "a build of a club"));
        }
    }

    // What the level and the golfer's other clubs do not explain.
    void remark_length(const LearntClub& learnt) {
        constexpr double shots_that_tell = 3.0, least_fit = 0.7, most_fit = 1.4;
        if (static_cast<double>(learnt.logged.shots.size()) < shots_that_tell) return;
        const double known_m = learnt.prior.usual.centre.carry_m;
        const double usual_m = usual_carry_m(learnt.logged);
        const double fit = usual_m / known_m;
        if (fit >= least_fit && fit <= most_fit) return;
        result_.warnings.push_back(
            fmt::format("{}: the middle shot carries {:.0f} yd, where {:.0f} yd is typical of the level; are "
                        "club, unit and "
                        "handicap right?",
                        in_quotes(learnt.club.name), to_yards(usual_m), to_yards(known_m)));
    }

    const std::vector<NamedLog>& logs_;
    const LearnRequest& request_;
    LoggedClubs logged_;
    GolferRequest typical_;
    std::vector<std::size_t> session_numbers_;  // of logged_.sessions in the profile
    std::map<std::pair<std::size_t, std::size_t>, double> when_;
    std::vector<std::string> numbers_;  // of each of result_.clubs: its name in the profile
    LearntGolfer result_;
};

}  // namespace

std::span<const double> logged_mishit_chance(const LearntClub& club) {
    return std::span(club.evidence.mishit_chance).last(club.logged.shots.size());
}

LearntGolfer learnt_golfer(const std::vector<NamedLog>& logs, const LearnRequest& request) {
    return Learning(logs, request).result();
}

}  // namespace landwidth
