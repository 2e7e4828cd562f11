#include "planner/commands/asked_changes.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <set>
#include <utility>

#include "geometry/error.hpp"
#include "planner/commands/club_choice.hpp"

namespace landwidth {

namespace {

// Clubs of a profile that are carried.
using Carried = std::set<std::size_t>;

Exchange between(const Carried& from, const Carried& to) {
    Exchange exchange;
    std::ranges::set_difference(to, from, std::back_inserter(exchange.in));
    std::ranges::set_difference(from, to, std::back_inserter(exchange.out));
    return exchange;
}

// A change on its way: what is carried without it and with it.
class Draft {
  public:
    explicit Draft(const ClubChoice& clubs) : clubs_(clubs) {
        for (std::size_t club = 0; club < clubs.golfer().clubs.size(); ++club)
            if (clubs.golfer().clubs[club].in_bag) today_.insert(club);
        before_ = now_ = today_;
    }

    void add(std::string_view option, std::size_t club) {
        refuse_carried(option, club);
        now_.insert(club);
        label(fmt::format("with {}", name(club)));
    }

    void drop(std::string_view option, std::size_t club) {
        refuse_putter(option, club);
        if (!now_.contains(club))
            throw UsageError(fmt::format("{} {}: the club is not in the bag", option, name(club)));
        now_.erase(club);
    }

    void replace(std::string_view option, std::size_t old_club, std::size_t new_club) {
        refuse_putter(option, old_club);
        if (old_club == new_club)
            throw UsageError(fmt::format("{} {}: that is one club and no change", option, name(old_club)));
        if (!now_.contains(old_club)) start_with(option, old_club, new_club);
        refuse_carried(option, new_club);
        now_.erase(old_club);
        now_.insert(new_club);
        label(fmt::format("{} for {}", name(new_club), name(old_club)));
    }

    void label(const std::string& words) { label_ += (label_.empty() ? "" : ", ") + words; }

    bool is_empty() const { return between(before_, now_).empty(); }
    BagChange change() && {
        Exchange exchange = between(before_, now_);
        return {std::move(label_), std::move(exchange.in), std::move(exchange.out), between(today_, before_)};
    }

  private:
    const Club& at(std::size_t club) const { return clubs_.golfer().clubs[club]; }
    const std::string& name(std::size_t club) const { return at(club).name; }

    void refuse_carried(std::string_view option, std::size_t club) const {
        if (now_.contains(club))
            throw UsageError(fmt::format("{} {}: the club is in the bag already", option, name(club)));
    }

    void refuse_putter(std::string_view option, std::size_t club) const {
        if (at(club).kind == ClubKind::putter)
            throw UsageError(fmt::format("{} {}: nobody putts without a putter", option, name(club)));
    }

    // A club that is not in the bag gives way to another: the bag to compare with carries it, in the place of
    // the club that is a build of the same (a driver by whatever name: of the driver).
    void start_with(std::string_view option, std::size_t old_club, std::size_t new_club) {
        if (!at(old_club).pattern)
            throw UsageError(fmt::format("{} {}: the club has no shot pattern", option, name(old_club)));
        if (today_.contains(old_club))
            throw UsageError(fmt::format("{} {}: another of these changes takes it out of the bag", option,
                                         name(old_club)));
        if (const std::optional<std::size_t> place = place_of(option, old_club, new_club)) {
            before_.erase(*place);
            now_.erase(*place);
        }
        before_.insert(old_club);
        now_.insert(old_club);
    }

    std::optional<std::size_t> place_of(std::string_view option, std::size_t old_club,
                                        std::size_t new_club) const {
        const std::string build = ClubChoice::build_of(at(old_club));
        std::vector<std::size_t> same =
            carried([&](const Club& club) { return same_name(ClubChoice::build_of(club), build); });
        // Two drivers by names of their own are two builds of what a bag has one of.
        if (same.empty() && at(old_club).kind == ClubKind::driver)
            same = carried([](const Club& club) { return club.kind == ClubKind::driver; });
        if (std::ranges::find(same, new_club) != same.end()) return new_club;
        if (same.size() > 1)
            throw UsageError(
                fmt::format("{} {}: the bag has the {} and the {}, and whose place it has is not clear; "
                            "leave one of them "
                            "at home first (\"in_bag\": false in the profile)",
                            option, name(old_club), name(same[0]), name(same[1])));
        if (same.empty()) return std::nullopt;
        if (!before_.contains(same.front()))
            throw UsageError(
                fmt::format("{} {}: its place in the bag is that of the {}, which another of "
                            "these changes brings in",
                            option, name(old_club), name(same.front())));
        return same.front();
    }

    std::vector<std::size_t> carried(const auto& wanted) const {
        std::vector<std::size_t> found;
        for (const std::size_t club : now_)
            if (wanted(at(club))) found.push_back(club);
        return found;
    }

    const ClubChoice& clubs_;
    Carried today_, before_, now_;
    std::string label_;
};

class Asked {
  public:
    Asked(const Golfer& golfer, const AskedChanges& asked) : clubs_(golfer), asked_(asked) {
        // First all clubs, so that every change knows them.
        for (const std::string& text : asked.supposed)
            clubs_.supposed("--suppose", text);
        for (const std::string& name : asked.dropped)
            dropped_.push_back(clubs_.in_profile("--drop", name));
        for (const std::string& name : asked.added)
            added_.push_back(clubs_.to_hit("--add", name));
        for (const std::string& text : asked.replaced)
            replaced_.push_back(replacement(text));
    }

    ChangesToWeigh result() && {
        if (asked_.together) {
            one_of_all();
        } else {
            each_alone();
        }
        if (changes_.empty())
            throw UsageError(
                "say what to weigh: --add CLUB, --drop CLUB, --replace OLD=NEW or --suppose \"CLUB: "
                "CHANGE\"");
        return {clubs_.golfer(), std::move(changes_), clubs_.suppositions(), clubs_.warnings()};
    }

  private:
    std::pair<std::size_t, std::size_t> replacement(const std::string& text) {
        const std::size_t equals = text.find('=');
        if (equals == std::string::npos)
            throw UsageError(
                fmt::format("--replace {}: expected OLD=NEW, e.g. \"driver=driver, 44.5 in\"", text));
        const std::size_t old_club = clubs_.in_profile("--replace", text.substr(0, equals));
        return {old_club, clubs_.to_hit("--replace", text.substr(equals + 1))};
    }

    std::string without_words() const {
        std::string names;
        for (const std::size_t club : dropped_)
            names += (names.empty() ? "" : ", ") + clubs_.golfer().clubs[club].name;
        return fmt::format("without {}", names);
    }

    void drop_all(Draft& draft) const {
        for (const std::size_t club : dropped_)
            draft.drop("--drop", club);
    }

    // In place of the clubs they are made of, those that no other change names.
    std::vector<SupposedClub> supposed_alone() const {
        const auto is_named = [&](const SupposedClub& supposed) {
            return std::ranges::find(added_, supposed.club) != added_.end() ||
                   std::ranges::find(replaced_, supposed.club, &Replacement::first) != replaced_.end() ||
                   std::ranges::find(replaced_, supposed.club, &Replacement::second) != replaced_.end();
        };
        std::vector<SupposedClub> alone = clubs_.suppositions();
        std::erase_if(alone, is_named);
        return alone;
    }

    void each_alone() {
        for (const std::size_t club : added_) {
            Draft draft(clubs_);
            drop_all(draft);
            draft.add("--add", club);
            if (!dropped_.empty()) draft.label(without_words());
            changes_.push_back(std::move(draft).change());
        }
        if (added_.empty() && !dropped_.empty()) {
            Draft draft(clubs_);
            drop_all(draft);
            draft.label(without_words());
            changes_.push_back(std::move(draft).change());
        }
        const auto replaced = [&](std::string_view option, std::size_t old_club, std::size_t new_club) {
            Draft draft(clubs_);
            draft.replace(option, old_club, new_club);
            changes_.push_back(std::move(draft).change());
        };
        for (const auto& [old_club, new_club] : replaced_)
            replaced("--replace", old_club, new_club);
        for (const SupposedClub& supposed : supposed_alone())
            replaced("--suppose", supposed.of, supposed.club);
    }

    void one_of_all() {
        Draft draft(clubs_);
        drop_all(draft);
        for (const auto& [old_club, new_club] : replaced_)
            draft.replace("--replace", old_club, new_club);
        for (const SupposedClub& supposed : supposed_alone())
            draft.replace("--suppose", supposed.of, supposed.club);
        for (const std::size_t club : added_)
            draft.add("--add", club);
        if (!dropped_.empty()) draft.label(without_words());
        if (draft.is_empty()) return;
        changes_.push_back(std::move(draft).change());
    }

    using Replacement = std::pair<std::size_t, std::size_t>;

    ClubChoice clubs_;
    const AskedChanges& asked_;
    std::vector<std::size_t> dropped_, added_;
    std::vector<Replacement> replaced_;
    std::vector<BagChange> changes_;
};

}  // namespace

ChangesToWeigh changes_to_weigh(const Golfer& golfer, const AskedChanges& asked) {
    return Asked(golfer, asked).result();
}

}  // namespace landwidth
