#include "golfer-profiles/learnt_golfer.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <iterator>

#include "geometry/error.hpp"
#include "geometry/units.hpp"
#include "golfer-profiles/bag_joining.hpp"
#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/order_statistics.hpp"
#include "golfer-profiles/pattern_learning.hpp"
#include "golfer-profiles/preset_clubs.hpp"
#include "golfer-profiles/preset_numbers.hpp"
#include "golfer-profiles/typical_club.hpp"

namespace landwidth {
namespace {

// A golfer further from the typical length of the level than this is taken to be so far; and so many shots
// tell the length. Assumptions.
constexpr double least_scale = 0.75, most_scale = 1.3;
constexpr double shots_that_tell = 3.0;
// A profile holds the shots behind a club up to this number; beyond it the pattern says enough.
constexpr std::size_t most_shots_kept = 400;

std::vector<ShotOffset> landings_of(const LoggedClub& club) {
    std::vector<ShotOffset> landings;
    std::transform(club.shots.begin(), club.shots.end(), std::back_inserter(landings),
                   [](const LandedShot& shot) { return shot.landing; });
    return landings;
}

double usual_carry_m(const LoggedClub& club) {
    std::vector<double> carries;
    for (const LandedShot& shot : club.shots)
        carries.push_back(shot.landing.carry_m);
    return median(std::move(carries));
}

double scale_for(const LoggedClub& club, const ShotPattern& typical) {
    const double ratio =
        std::clamp(usual_carry_m(club) / typical.usual.centre.carry_m, least_scale, most_scale);
    return std::pow(ratio, std::min(1.0, static_cast<double>(club.shots.size()) / shots_that_tell));
}

// What is known of a club before its new shots.
struct Before {
    Club club;  // name, kind, length, loft, launch and note to start from
    ShotPattern prior;
    double run_m;                   // until the new shots tell
    std::vector<ShotOffset> shots;  // earlier ones, to be fitted with the new ones
    PriorSource source;
    double scale;
};

Before typical_before(const LoggedClub& logged, const GolferRequest& typical) {
    Club club = typical_club(typical, logged.kind, logged.club);
    const double scale = scale_for(logged, *club.pattern);
    const ShotPattern prior = scaled_pattern(*club.pattern, scale);
    return {std::move(club), prior, prior.run_m, {}, PriorSource::typical, scale};
}

Before own_before(const Club& own) {
    const double run_m = own.pattern->run_m;
    if (!own.learnt_from) return {own, *own.pattern, run_m, {}, PriorSource::own, 1.0};
    return {own, own.learnt_from->prior, run_m, own.learnt_from->shots, PriorSource::own, 1.0};
}

// A log learnt from twice would count double.
void refuse_known_shots(const LoggedClub& logged, const std::vector<ShotOffset>& earlier,
                        const std::vector<NamedLog>& logs) {
    constexpr std::size_t coincidence = 3;  // so few may be alike by chance
    constexpr double same_m = 1e-6;
    if (logged.shots.size() < coincidence) return;
    const bool all_known = std::all_of(logged.shots.begin(), logged.shots.end(), [&](const LandedShot& shot) {
        return std::any_of(earlier.begin(), earlier.end(), [&](const ShotOffset& e) {
            return std::abs(e.carry_m - shot.landing.carry_m) < same_m &&
                   std::abs(e.side_m - shot.landing.side_m) < same_m;
        });
    });
    if (!all_known) return;
    throw InputError(
        logs[logged.shots.front().log].file,
        fmt::format("the profile has learnt from these shots of {} already", in_quotes(logged.name)));
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

std::string note_for(const LearntClub& learnt) {
    const std::size_t shots = learnt.logged.shots.size();
    std::string note = fmt::format("learnt from {} recorded shot{}", shots, shots == 1 ? "" : "s");
    if (learnt.source == PriorSource::own)
        note += learnt.earlier_shots > 0 ? fmt::format(" and {} earlier ones", learnt.earlier_shots)
                                         : ", leaning on the pattern of the profile";
    else
        note += fmt::format(", leaning on a typical club scaled by {:.2f}", learnt.prior_scale);
    note += learnt.logged.run_m ? "; run: median of the shots" : "; run: not recorded";
    return note;
}

LearntClub learnt_club(const LoggedClub& logged, Before before, const PatternPrior& weight,
                       const std::vector<NamedLog>& logs) {
    refuse_known_shots(logged, before.shots, logs);
    std::vector<ShotOffset> shots = before.shots;
    const std::vector<ShotOffset> recorded = landings_of(logged);
    shots.insert(shots.end(), recorded.begin(), recorded.end());
    const PatternFit fit = learnt_pattern(shots, before.prior, weight);
    const auto first_new = static_cast<std::ptrdiff_t>(before.shots.size());
    const double behind = static_cast<double>(fit.pattern.shots);
    LearntClub learnt{.logged = logged,
                      .club = std::move(before.club),
                      .prior = before.prior,
                      .source = before.source,
                      .prior_scale = before.scale,
                      .earlier_shots = before.prior.shots + static_cast<int>(before.shots.size()),
                      .usual_carry_m = usual_carry_m(logged),
                      .mishit_chance = {fit.mishit_chance.begin() + first_new, fit.mishit_chance.end()},
                      .recorded_share = behind / (behind + weight.worth_shots)};
    Club& club = learnt.club;
    if (before.source == PriorSource::typical) club.name = logged.name;
    if (logged.length_m) club.length_m = logged.length_m;
    if (logged.launch) club.launch = logged.launch;
    club.pattern = fit.pattern;
    club.pattern->run_m = logged.run_m.value_or(before.run_m);
    refuse_impossible(logged, *club.pattern, logs);
    club.note = note_for(learnt);
    club.learnt_from.reset();
    if (shots.size() <= most_shots_kept) club.learnt_from = LearntFrom{learnt.prior, std::move(shots)};
    return learnt;
}

bool is_driver(const LoggedClub& club) {
    return club.kind == ClubKind::driver;
}

// What a golfer's drives are in all, for the typical bag: the learnt driver's, or as much longer or shorter
// than typical as the clubs in the log are.
double drive_yd_for(const std::vector<LoggedClub>& clubs, const LearnRequest& request,
                    const std::vector<NamedLog>& logs) {
    const GolferRequest& typical = request.typical;
    const auto driver = std::find_if(clubs.begin(), clubs.end(), is_driver);
    double drive = drive_yd_of(typical);
    if (driver != clubs.end()) {
        const LearntClub learnt =
            learnt_club(*driver, typical_before(*driver, typical), request.weight, logs);
        drive = to_yards(learnt.club.pattern->usual.centre.carry_m + learnt.club.pattern->run_m);
    } else {
        std::vector<double> scales;
        for (const LoggedClub& club : clubs)
            scales.push_back(scale_for(club, *typical_club(typical, club.kind, club.club).pattern));
        drive *= median(std::move(scales));
    }
    return std::clamp(std::round(drive * 10.0) / 10.0, shortest_drive_yd, longest_drive_yd);
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

// The profile before the shots, and the typical golfers that logged clubs are compared with. The shots that
// told a golfer's length must not be compared with themselves.
struct Start {
    Golfer golfer;
    GolferRequest for_drivers;
    GolferRequest for_others;
};

Start start_of(const std::vector<LoggedClub>& clubs, const LearnRequest& request,
               const std::vector<NamedLog>& logs) {
    if (request.onto) {
        const GolferRequest typical = typical_of(*request.onto, request.typical.reference);
        return {*request.onto, typical, typical};
    }
    GolferRequest lengthened = request.typical;
    lengthened.drive_total_yd = drive_yd_for(clubs, request, logs);
    Golfer golfer = typical_golfer(lengthened);
    golfer.note = fmt::format(
        "Clubs in the shot log are learnt from it; the others are typical of handicap index {} with a drive "
        "of {:.0f} yd. Each club says where its numbers come from.",
        lengthened.handicap_index, *lengthened.drive_total_yd);
    const bool driver_told = std::any_of(clubs.begin(), clubs.end(), is_driver);
    return {std::move(golfer), request.typical, driver_told ? lengthened : request.typical};
}

// Where a club's place in the profile is worth a word.
void remark(const LearntClub& learnt, Joined joined, std::vector<std::string>& warnings) {
    const std::string& name = learnt.club.name;
    if (!same_name(name, learnt.logged.name))
        warnings.push_back(
            fmt::format("the shots of {} are taken for {}", in_quotes(learnt.logged.name), in_quotes(name)));
    // The prior has been scaled as far as it may be; beyond this not even that fits.
    constexpr double least_fit = 0.8, most_fit = 1.25;
    const double known_m = learnt.prior.usual.centre.carry_m;
    const double fit = learnt.usual_carry_m / known_m;
    if (static_cast<double>(learnt.logged.shots.size()) >= shots_that_tell &&
        (fit < least_fit || fit > most_fit)) {
        warnings.push_back(fmt::format(
            "{}: the middle shot carries {:.0f} yd, where the level allows for {:.0f} yd; are club, unit and "
            "handicap right?",
            in_quotes(name), to_yards(learnt.usual_carry_m), to_yards(known_m)));
    }
    if (joined == Joined::on_trial) {
        warnings.push_back(
            fmt::format("{} is on trial, not in the bag: {}", in_quotes(name),
                        learnt.logged.build.empty() ? "14 clubs are carried already" : "a build of a club"));
    }
    if (!learnt.club.learnt_from) {
        warnings.push_back(fmt::format("{}: over {} shots; the profile keeps the pattern and not the shots",
                                       in_quotes(name), most_shots_kept));
    }
}

}  // namespace

LearntGolfer learnt_golfer(const std::vector<NamedLog>& logs, const LearnRequest& request) {
    LoggedClubs logged = logged_clubs(logs, request.kinds, request.carried);
    Start start = start_of(logged.clubs, request, logs);
    check_room(start.golfer, logged.clubs, logs.front().file);
    LearntGolfer result{std::move(start.golfer), {}, std::move(logged.warnings)};
    for (const LoggedClub& club : logged.clubs) {
        Club* meant = club_meant(result.golfer, club, logged.clubs);
        const bool own = request.onto && meant != nullptr && meant->pattern;
        const GolferRequest& typical = is_driver(club) ? start.for_drivers : start.for_others;
        LearntClub learnt =
            learnt_club(club, own ? own_before(*meant) : typical_before(club, typical), request.weight, logs);
        if (meant != nullptr && !club.is_the_one_carried) learnt.club.name = meant->name;
        const Joined joined =
            join_bag(result.golfer, learnt.club, meant, !club.build.empty() && !club.is_the_one_carried);
        remark(learnt, joined, result.warnings);
        result.clubs.push_back(std::move(learnt));
    }
    return result;
}

}  // namespace landwidth
