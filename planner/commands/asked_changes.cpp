#include "planner/commands/asked_changes.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

#include "geometry/error.hpp"
#include "geometry/units.hpp"
#include "golfer-profiles/club_names.hpp"
#include "golfer-profiles/nearest_word.hpp"
#include "golfer-profiles/typical_club.hpp"

namespace landwidth {

namespace {

std::optional<std::size_t> number_of(const Golfer& golfer, std::string_view name) {
    const auto found =
        std::ranges::find_if(golfer.clubs, [&](const Club& club) { return same_name(club.name, name); });
    if (found == golfer.clubs.end()) return std::nullopt;
    return static_cast<std::size_t>(found - golfer.clubs.begin());
}

[[noreturn]] void no_such_club(const Golfer& golfer, std::string_view option, std::string_view name) {
    std::vector<std::string_view> names;
    for (const Club& club : golfer.clubs)
        names.push_back(club.name);
    const auto nearest = nearest_word(name, names);
    throw UsageError(
        fmt::format("{} {}: the profile has no club of that name{}; landwidth profile show lists them",
                    option, name, nearest ? fmt::format(", did you mean \"{}\"?", *nearest) : ""));
}

class Asked {
  public:
    explicit Asked(const Golfer& golfer) : result_{golfer, {}, {}} {}

    // A club that is not in the bag: on trial in the profile, or typical of its kind.
    std::size_t coming_in(std::string_view option, std::string_view name) {
        std::optional<std::size_t> club = known(name);
        if (!club) club = typical(name);
        if (!club) no_such_club(result_.golfer, option, name);
        const Club& found = result_.golfer.clubs[*club];
        if (found.in_bag)
            throw UsageError(fmt::format("{} {}: the club is in the bag already", option, name));
        if (!found.pattern)
            throw UsageError(fmt::format("{} {}: the club has no shot pattern", option, name));
        return *club;
    }

    std::size_t going_out(std::string_view option, std::string_view name) const {
        const std::optional<std::size_t> club = number_of(result_.golfer, name);
        if (!club) no_such_club(result_.golfer, option, name);
        const Club& found = result_.golfer.clubs[*club];
        if (!found.in_bag) throw UsageError(fmt::format("{} {}: the club is not in the bag", option, name));
        if (found.kind == ClubKind::putter)
            throw UsageError(fmt::format("{} {}: nobody putts without a putter", option, name));
        return *club;
    }

    const std::string& name(std::size_t club) const { return result_.golfer.clubs[club].name; }

    void add(BagChange change) { result_.changes.push_back(std::move(change)); }
    ChangesToWeigh result() && { return std::move(result_); }

  private:
    // Of that name, or of the usual name for it: the "7-iron" for "7i".
    std::optional<std::size_t> known(std::string_view name) const {
        if (const auto club = number_of(result_.golfer, name)) return club;
        const std::optional<ClubKind> kind = kind_by_name(name);
        const std::optional<std::string> usual = kind ? usual_name(*kind, name) : std::nullopt;
        return usual ? number_of(result_.golfer, *usual) : std::nullopt;
    }

    std::optional<std::size_t> typical(std::string_view name) {
        const std::optional<ClubKind> kind = kind_by_name(name);
        if (!kind || *kind == ClubKind::putter) return std::nullopt;
        const Golfer& golfer = result_.golfer;
        GolferRequest like{.name = golfer.name, .handicap_index = golfer.handicap_index, .hand = golfer.hand};
        for (const Club& club : golfer.clubs)
            if (club.kind == ClubKind::driver && is_playable(club))
                like.drive_total_yd = to_yards(club.pattern->usual.centre.carry_m + club.pattern->run_m);
        Club club = typical_club(like, *kind, name);
        club.in_bag = false;
        result_.warnings.push_back(fmt::format(
            "no shots with a {} are recorded: it is weighed with the pattern typical of the golfer's level",
            club.name));
        result_.golfer.clubs.push_back(std::move(club));
        return result_.golfer.clubs.size() - 1;
    }

    ChangesToWeigh result_;
};

std::string joined(const Asked& asked, const std::vector<std::size_t>& clubs) {
    std::string names;
    for (const std::size_t club : clubs)
        names += (names.empty() ? "" : ", ") + asked.name(club);
    return names;
}

}  // namespace

ChangesToWeigh changes_to_weigh(const Golfer& golfer, const AskedChanges& asked) {
    Asked reading(golfer);
    std::vector<std::size_t> out;
    for (const std::string& name : asked.dropped)
        out.push_back(reading.going_out("--drop", name));
    for (const std::string& name : asked.added) {
        const std::size_t club = reading.coming_in("--add", name);
        const std::string label =
            out.empty() ? fmt::format("with {}", reading.name(club))
                        : fmt::format("with {}, without {}", reading.name(club), joined(reading, out));
        reading.add({label, {club}, out});
    }
    if (asked.added.empty() && !out.empty())
        reading.add({fmt::format("without {}", joined(reading, out)), {}, out});
    for (const std::string& text : asked.replaced) {
        const std::size_t equals = text.find('=');
        if (equals == std::string::npos)
            throw UsageError(
                fmt::format("--replace {}: expected OLD=NEW, e.g. \"driver=driver, 44.5 in\"", text));
        const std::size_t old_club = reading.going_out("--replace", text.substr(0, equals));
        const std::size_t new_club = reading.coming_in("--replace", text.substr(equals + 1));
        reading.add({fmt::format("{} for {}", reading.name(new_club), reading.name(old_club)),
                     {new_club},
                     {old_club}});
    }
    ChangesToWeigh result = std::move(reading).result();
    if (result.changes.empty())
        throw UsageError("say what to weigh: --add CLUB, --drop CLUB or --replace OLD=NEW");
    return result;
}

}  // namespace landwidth
