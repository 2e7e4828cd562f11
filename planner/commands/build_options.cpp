#include "planner/commands/build_options.hpp"

#include <fmt/format.h>

#include <array>
#include <cmath>

#include "geometry/error.hpp"
#include "geometry/units.hpp"
#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/nearest_word.hpp"
#include "golfer-profiles/profile_file.hpp"
#include "planner/commands/build_limits.hpp"
#include "planner/reports/display_length.hpp"

namespace landwidth {
namespace {

// A ball leaves no face faster than about 1.5 times the club's speed; a clean strike is faster than the club.
constexpr double least_own_smash = 0.8;
constexpr double most_own_smash = 1.56;

// Without its parts nothing is told of a club altered by more: neither speed and carry nor lie. Assumption.
constexpr double most_altered_m = 6.0 * metres_per_inch;

// What the trade weighs a head by: about a point of swing weight.
constexpr double shown_head_step_kg = 2.0 * kilograms_per_gram;

constexpr std::array kinds{ClubKind::driver, ClubKind::mini_driver,  ClubKind::fairway_wood,
                           ClubKind::hybrid, ClubKind::driving_iron, ClubKind::iron,
                           ClubKind::wedge,  ClubKind::putter};

std::vector<std::string> kind_names() {
    std::vector<std::string> names;
    for (const ClubKind kind : kinds)
        names.emplace_back(club_kind_name(kind));
    return names;
}

CLI::Option* number(CLI::App& app, const char* name, std::optional<double>& value, const char* unit,
                    const char* help) {
    return app.add_option(name, value, help)->type_name(unit);
}

std::optional<SwingWeight> swing_weight_typed(const std::string& text, std::string_view option) {
    if (text.empty()) return std::nullopt;
    const auto weight = swing_weight_of_text(text);
    if (!weight) {
        throw UsageError(fmt::format(
            "{} {}: a letter A to G and a number from 0 to below 10 are expected, as in D2 or D2.5", option,
            in_quotes(text)));
    }
    return weight;
}

const Club& profile_club(const Golfer& golfer, const std::string& file, const std::string& name) {
    if (const Club* club = golfer.club(name)) return *club;
    std::vector<std::string_view> names;
    for (const Club& club : golfer.clubs)
        names.push_back(club.name);
    std::string builds;
    for (const Club& club : golfer.clubs)
        if (same_name(family_of(club), name))
            builds += (builds.empty() ? "" : " and ") + in_quotes(club.name);
    if (!builds.empty())
        throw UsageError(
            fmt::format("--club {}: {} has it in builds: name one, {}", in_quotes(name), file, builds));
    const auto nearest = nearest_word(name, names);
    throw UsageError(fmt::format("--club {}: {} has no club of that name{}", in_quotes(name), file,
                                 nearest ? fmt::format("; did you mean {}?", in_quotes(*nearest)) : ""));
}

// What the profile knows and what was typed may not both be there: which of them holds is not ours to say.
void take(std::optional<double>& known, const std::optional<double>& from_profile, std::string_view option,
          const std::string& file) {
    if (!from_profile) return;
    if (known)
        throw UsageError(fmt::format("{}: {} has that for this club; leave the option out", option, file));
    known = from_profile;
}

void check_own_smash(const KnownFlight& flight) {
    if (!flight.club_speed_mps || !flight.ball_speed_mps) return;
    const double smash = *flight.ball_speed_mps / *flight.club_speed_mps;
    if (smash >= least_own_smash && smash <= most_own_smash) return;
    throw UsageError(fmt::format(
        "club speed {:.4g} mph and ball speed {:.4g} mph do not go together: the ball is {:.2f} times as "
        "fast, "
        "and {:g} to {:g} is expected",
        *flight.club_speed_mps / metres_per_second_per_mph,
        *flight.ball_speed_mps / metres_per_second_per_mph, smash, least_own_smash, most_own_smash));
}

}  // namespace

void BuildOptions::setup(CLI::App& app) {
    app_ = &app;
    setup_club(app);
    setup_wishes(app);
    setup_flight(app);
    app.add_option("--assume", assumed_, "override an assumption, e.g. head_centre=0.7; repeatable")
        ->type_name("NAME=VALUE")
        ->allow_extra_args(false);
}

std::optional<double> BuildOptions::within(const std::optional<double>& value, const char* option,
                                           const BuildLimits& limits) const {
    if (!value) return std::nullopt;
    return landwidth::within(value, option, app_->get_option(option)->results().back(), limits);
}

void BuildOptions::setup_club(CLI::App& app) {
    auto* profile =
        app.add_option("PROFILE", profile_, "take length, carry and ball speed from this profile");
    auto* club =
        app.add_option("--club", club_, "the club of the profile")->type_name("NAME")->needs(profile);
    app.add_option("--kind", kind_, "the kind of club, without a profile (default: driver)")
        ->type_name("KIND")
        ->check(CLI::IsMember(kind_names()).description(""))
        ->excludes(profile);
    profile->needs(club);
    number(app, "--length", length_, "IN", "length, inches");
    number(app, "--head", head_, "G", "the head's weight, grams");
    number(app, "--shaft", shaft_, "G", "the shaft's weight as it sits in the club, grams");
    number(app, "--grip", grip_, "G", "the grip's weight with its tape, grams");
    number(app, "--shaft-length", shaft_length_, "IN",
           "length of the shaft in the club (default: the club's)");
    number(app, "--shaft-balance", shaft_balance_, "SHARE",
           "where the shaft balances, from the butt, of its length (default: 0.5)");
    number(app, "--total", total_, "G", "the whole club on a scale, grams");
    number(app, "--balance", balance_, "IN", "balance point of the club from the butt, inches");
    app.add_option("--swing-weight", swing_weight_, "swing weight as measured, D2 or D2.5")->type_name("SW");
}

void BuildOptions::setup_wishes(CLI::App& app) {
    number(app, "--to-length", to_length_, "IN", "the length wished for, inches");
    app.add_option("--cut", cut_, "where the shaft is shortened: butt or tip")
        ->type_name("END")
        ->check(CLI::IsMember({"butt", "tip"}).description(""))
        ->capture_default_str();
    number(app, "--to-head", to_head_, "G", "another head, grams");
    number(app, "--to-shaft", to_shaft_, "G", "another shaft, grams, at the length wished for");
    number(app, "--to-shaft-balance", to_shaft_balance_, "SHARE", "where that balances, as --shaft-balance");
    number(app, "--to-grip", to_grip_, "G", "another grip with its tape, grams");
    app.add_option("--to-swing-weight", to_swing_weight_,
                   "find the head for this swing weight (default: what the club has now)")
        ->type_name("SW");
    number(
        app, "--to-inertia", to_inertia_, "KGCM2",
        "find the head for this moment of inertia about the butt, kg cm2 (default: what the club has now)");
    number(app, "--lie", lie_, "DEG", "the club's lie, degrees: how lie moves with length");
    number(app, "--loft", loft_, "DEG", "the club's loft, degrees, beside --lie");
}

void BuildOptions::setup_flight(CLI::App& app) {
    number(app, "--club-speed", club_speed_, "MPH", "club speed with the club as it is");
    number(app, "--ball-speed", ball_speed_, "MPH", "ball speed with the club as it is");
    number(app, "--carry", carry_, "LENGTH", "carry with the club as it is, in --units");
}

void BuildOptions::take_profile_club(KnownClub& club, std::vector<std::string>& warnings) const {
    if (profile_.empty()) return;
    const ProfileReading reading = read_profile(profile_);
    for (const std::string& warning : reading.warnings)
        warnings.push_back(fmt::format("{}: {}", profile_, warning));
    const Club& of_profile = profile_club(reading.golfer, profile_, club_);
    club.name = of_profile.name;
    club.kind = of_profile.kind;
    take(club.length_m, of_profile.length_m, "--length", profile_);
    take(club.loft_rad, of_profile.loft_rad, "--loft", profile_);
    if (of_profile.pattern)
        take(club.flight.carry_m, of_profile.pattern->usual.centre.carry_m, "--carry", profile_);
    if (of_profile.launch) {
        take(club.flight.ball_speed_mps, of_profile.launch->ball_speed_mps, "--ball-speed", profile_);
    }
}

BuildOptions::KnownClub BuildOptions::known_club(DisplayUnits units,
                                                 std::vector<std::string>& warnings) const {
    // 30 to 450 yd, and about as much in metres.
    const BuildLimits carry_limits{30.0, 450.0, display_unit(units), metres_of_display(1.0, units)};
    KnownClub club;
    if (!kind_.empty()) club.kind = club_kind_named(kind_).value();
    club.name = club_kind_name(club.kind);
    club.length_m = within(length_, "--length", build_length_limits);
    club.lie_rad = within(lie_, "--lie", lie_limits);
    club.loft_rad = within(loft_, "--loft", loft_limits);
    club.flight = {.club_speed_mps = within(club_speed_, "--club-speed", club_speed_limits),
                   .ball_speed_mps = within(ball_speed_, "--ball-speed", ball_speed_limits),
                   .carry_m = within(carry_, "--carry", carry_limits)};
    take_profile_club(club, warnings);
    check_own_smash(club.flight);
    return club;
}

BuildWishes BuildOptions::wishes() const {
    BuildWishes wishes{
        .length_m = within(to_length_, "--to-length", build_length_limits),
        .cut_end = cut_ == "tip" ? CutEnd::tip : CutEnd::butt,
        .head_kg = within(to_head_, "--to-head", head_limits),
        .shaft_kg = within(to_shaft_, "--to-shaft", shaft_limits),
        .shaft_balance_share = within(to_shaft_balance_, "--to-shaft-balance", shaft_balance_limits),
        .grip_kg = within(to_grip_, "--to-grip", grip_limits),
        .swing_weight = swing_weight_typed(to_swing_weight_, "--to-swing-weight"),
        .inertia_kg_m2 = within(to_inertia_, "--to-inertia", inertia_limits)};
    if (wishes.head_kg && wishes.swing_weight)
        throw UsageError("--to-swing-weight finds the head that --to-head names; leave one of them out");
    if (wishes.head_kg && wishes.inertia_kg_m2)
        throw UsageError("--to-inertia finds the head that --to-head names; leave one of them out");
    if (wishes.shaft_balance_share && !wishes.shaft_kg)
        throw UsageError("--to-shaft-balance goes with the weight of the new shaft, --to-shaft");
    return wishes;
}

std::optional<ClubWeights> BuildOptions::weighed_club() const {
    const auto total = within(total_, "--total", total_limits);
    const auto balance = within(balance_, "--balance", balance_limits);
    const auto weight = swing_weight_typed(swing_weight_, "--swing-weight");
    if (total && balance && weight)
        throw UsageError(
            "two of --total, --balance and --swing-weight give the third; leave one of them out");
    if (total && balance) return ClubWeights{*total, *balance, swing_weight_of(*total, *balance)};
    if (total && weight) return ClubWeights{*total, balance_of(*weight, *total), *weight};
    if (balance && weight) {
        const auto sum = total_of(*weight, *balance);
        if (!sum || *sum < total_limits.low * total_limits.si || *sum > total_limits.high * total_limits.si) {
            throw UsageError(
                fmt::format("--balance {:g} and --swing-weight {} do not go together: no club of {:g} to "
                            "{:g} g has both",
                            *balance_, swing_weight_, total_limits.low, total_limits.high));
        }
        return ClubWeights{*sum, *balance, *weight};
    }
    return std::nullopt;
}

std::optional<TypedParts> BuildOptions::typed_parts(std::optional<double> length_m) const {
    if (!head_ && !shaft_ && !grip_ && !shaft_length_ && !shaft_balance_) return std::nullopt;
    TypedParts typed{.length_m = length_m,
                     .head_kg = within(head_, "--head", head_limits),
                     .shaft_kg = within(shaft_, "--shaft", shaft_limits),
                     .shaft_length_m = within(shaft_length_, "--shaft-length", build_length_limits),
                     .shaft_balance_share = within(shaft_balance_, "--shaft-balance", shaft_balance_limits),
                     .grip_kg = within(grip_, "--grip", grip_limits),
                     .total_kg = within(total_, "--total", total_limits),
                     .balance_m = within(balance_, "--balance", balance_limits),
                     .swing_weight = swing_weight_typed(swing_weight_, "--swing-weight")};
    // Balance and swing weight together are a total too.
    if (const auto weighed = weighed_club()) typed.total_kg = weighed->total_kg;
    return typed;
}

void BuildOptions::check_enough(const KnownClub& club, const BuildWishes& wishes, bool has_parts,
                                bool weighed) const {
    const bool measured = total_ || balance_ || !swing_weight_.empty();
    if (!has_parts && measured && !weighed)
        throw UsageError(
            "two of --total, --balance and --swing-weight are needed; the third follows from them");
    if (!has_parts && !wishes.length_only()) {
        throw UsageError(
            "another head, shaft, grip or swing weight needs the parts of the club as it is: "
            "--head (or --total), --shaft, --grip and --length");
    }
    if (!club.length_m && wishes.length_m) {
        throw UsageError(profile_.empty()
                             ? std::string("--to-length needs the length as it is: --length")
                             : fmt::format("{} does not give the length of {}: say it with --length",
                                           profile_, club.name));
    }
    const bool by_parts = has_parts || weighed;
    if (wishes.length_m && club.length_m && !by_parts &&
        std::abs(*wishes.length_m - *club.length_m) > most_altered_m)
        throw UsageError(
            fmt::format("--to-length {:g}: no club is altered by {:g} in; rules on length say something of "
                        "an inch or two",
                        *wishes.length_m / metres_per_inch,
                        std::abs(*wishes.length_m - *club.length_m) / metres_per_inch));
    if (!club.length_m && !weighed && !has_parts)
        throw UsageError(
            "say what the club is, with --length, its parts or what it weighs; landwidth build --help shows "
            "examples");
    const bool flight = club_speed_ || ball_speed_ || carry_;
    if (flight && club.kind == ClubKind::putter) throw UsageError("speed and carry say nothing of a putter");
    if (flight && !wishes.length_m)
        throw UsageError("--club-speed, --ball-speed and --carry go with --to-length");
    if (lie_ && !wishes.length_m) throw UsageError("--lie goes with --to-length");
    if (loft_ && !lie_) throw UsageError("--loft goes with --lie: it is what a tipped head turns");
    if (wishes.length_m && *wishes.length_m == *club.length_m)
        throw UsageError("--to-length is the length the club has already");
    if (wishes.length_m && wishes.cut_end == CutEnd::tip && *wishes.length_m > *club.length_m)
        throw UsageError("--cut tip: a shaft is not made longer at its tip");
    const auto balance = within(balance_, "--balance", balance_limits);
    if (balance && club.length_m && *balance >= *club.length_m)
        throw UsageError(fmt::format("--balance {:g} lies beyond the end of a club of {:.4g} in", *balance_,
                                     *club.length_m / metres_per_inch));
}

void BuildOptions::add_length_answers(BuildView& view, const KnownClub& club,
                                      const BuildAssumptions& assumptions) const {
    const double from_m = view.length_m.value();
    view.verdicts = length_verdicts(view.kind, view.wishes.length_m.value_or(from_m));
    if (!view.wishes.length_m) return;
    const double to_m = *view.wishes.length_m;
    view.silence = length_silence(view.kind, from_m, to_m, assumptions.length);
    view.length_reach_m = assumptions.length.reach_m;
    view.flight = length_change(view.kind, from_m, to_m, club.flight, assumptions.length);
    if (club.lie_rad) {
        view.lie = lie_change(*club.lie_rad, club.loft_rad, from_m, to_m, assumptions.lie_per_length,
                              view.silence.has_value());
    }
    if (view.parts && view.silence) view.parts->thumb_points.reset();
    // Nobody asks how fast a putter is swung.
    if (view.kind == ClubKind::putter) view.silence.reset();
}

void BuildOptions::add_parts_answers(BuildView& view, const TypedParts& typed,
                                     const BuildAssumptions& assumptions) const {
    const SolvedParts solved = solve_parts(typed, assumptions);
    if (view.wishes.length_m && view.length_m.value() - *view.wishes.length_m >= solved.parts.shaft_length_m)
        throw UsageError("--to-length leaves nothing of the shaft");
    view.head_centre_measured = solved.head_centre_measured;
    view.parts = change_build(solved.parts, view.wishes, assumptions.thumb);
    const ClubParts& after = view.parts->after;
    view.head_step = head_change(after, shown_head_step_kg, assumptions.head);
    const auto keep = [&](std::optional<ClubParts>& restored, std::optional<HeadChange>& head) {
        if (restored && !is_within(restored->head_kg, head_limits)) restored.reset();
        if (restored) head = head_change(after, restored->head_kg - after.head_kg, assumptions.head);
    };
    keep(view.parts->restored, view.restored_head);
    keep(view.parts->restored_inertia, view.restored_inertia_head);
}

BuildView BuildOptions::answer(DisplayUnits units, std::vector<std::string>& warnings) const {
    const KnownClub club = known_club(units, warnings);
    BuildAssumptions assumptions = default_build_assumptions(club.kind);
    override_build_assumptions(assumptions, assumed_);
    const BuildWishes wanted = wishes();
    const auto weighed = weighed_club();
    const auto typed = typed_parts(club.length_m);
    check_enough(club, wanted, typed.has_value(), weighed.has_value());

    BuildView view{.club = club.name,
                   .kind = club.kind,
                   .length_m = club.length_m,
                   .wishes = wanted,
                   .known = club.flight,
                   .assumptions = list_build_assumptions(assumptions, club.kind),
                   .units = units};
    if (typed) {
        add_parts_answers(view, *typed, assumptions);
    } else {
        view.weighed = weighed;
    }
    if (club.length_m) add_length_answers(view, club, assumptions);
    return view;
}

}  // namespace landwidth
