#include "golfer-profiles/known_shots.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>
#include <optional>

#include "geometry/error.hpp"
#include "geometry/units.hpp"
#include "golfer-profiles/bag_joining.hpp"
#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/logs/other_rows.hpp"
#include "golfer-profiles/logs/repeated_rows.hpp"

namespace landwidth {
namespace {

// Of each club of the logs, of each of its shots.
using Places = std::vector<std::vector<ShotOffset>>;
using Marks = std::vector<std::vector<bool>>;

Places places_of(const LoggedClubs& clubs) {
    Places places;
    for (const LoggedClub& club : clubs.clubs) {
        places.emplace_back();
        for (const LandedShot& shot : club.shots)
            places.back().push_back(shot.landing);
    }
    return places;
}

// A row that says what a profile keeps, and no more; clubs by number, which no spelling makes one.
LoggedShot bare(std::size_t row, std::size_t club, const ShotOffset& place) {
    return {.row = row,
            .club = fmt::format("#{}", club),
            .build = {},
            .carry_m = place.carry_m,
            .side_m = place.side_m};
}

class Comparison {
  public:
    Comparison(LoggedClubs& clubs, Golfer& onto) : clubs_(clubs), onto_(onto) {
        for (const LoggedClub& club : clubs.clubs) {
            const Club* meant = club_meant(onto, club, clubs.clubs);
            kept_.push_back(meant != nullptr && meant->learnt_from ? &*meant->learnt_from : nullptr);
            names_.push_back(meant != nullptr ? meant->name : club.name);
        }
    }

    Marks best_of(const Places& recorded) const {
        const Places prepared = places_of(clubs_);
        Marks best = known_among(recorded);
        if (recorded == prepared) return best;
        for (const Places& places : {prepared, snapped(prepared)}) {
            Marks marks = known_among(places);
            if (count(marks) > count(best)) best = std::move(marks);
        }
        return best;
    }

    static std::size_t count(const Marks& marks) {
        std::size_t all = 0;
        for (const std::vector<bool>& club : marks)
            all += static_cast<std::size_t>(std::ranges::count(club, true));
        return all;
    }

    // Shots of sessions that the profile names too, and that are not found in it.
    std::optional<std::string> not_compared(const Marks& marks) const {
        std::vector<std::string> names;
        for (std::size_t i = 0; i < names_.size(); ++i)
            if (kept_[i] != nullptr && shares_a_session(i, marks[i])) names.push_back(in_quotes(names_[i]));
        if (names.empty()) return std::nullopt;
        return fmt::format(
            "{}: the profile has shots of the same session, and these are not among them as far as "
            "can be compared (not where conditions, balls or a bay were allowed for in one of the two only); "
            "shots that are the same count twice",
            fmt::join(names, ", "));
    }

    // Patterns learnt from shots that are not kept.
    std::optional<std::string> not_kept() const {
        std::vector<std::string> names;
        for (std::size_t i = 0; i < names_.size(); ++i)
            if (kept_[i] != nullptr && kept_[i]->prior.shots > 0) names.push_back(in_quotes(names_[i]));
        if (names.empty()) return std::nullopt;
        return fmt::format(
            "{}: the profile states shots that it does not keep; whether these are among them cannot "
            "be told",
            fmt::join(names, ", "));
    }

    void take_out(const Marks& marks) {
        for (std::size_t i = 0; i < clubs_.clubs.size(); ++i) {
            LoggedClub& club = clubs_.clubs[i];
            const auto known = static_cast<std::size_t>(std::ranges::count(marks[i], true));
            if (known == 0) continue;
            if (known == kept_[i]->shots.size()) club.lost -= std::min(club.lost, kept_[i]->lost);
            std::vector<LandedShot> others;
            for (std::size_t shot = 0; shot < club.shots.size(); ++shot)
                if (!marks[i][shot]) others.push_back(club.shots[shot]);
            club.shots = std::move(others);
        }
        std::erase_if(clubs_.clubs,
                      [](const LoggedClub& club) { return club.shots.empty() && club.lost == 0; });
    }

  private:
    Marks known_among(const Places& places) const {
        NamedLog before{"the profile", {}}, now{"the log", {}};
        for (std::size_t i = 0; i < places.size(); ++i) {
            if (kept_[i] == nullptr) continue;
            for (const ShotOffset& place : kept_[i]->shots)
                before.log.shots.push_back(bare(before.log.shots.size(), i, place));
            for (const ShotOffset& place : places[i])
                now.log.shots.push_back(bare(now.log.shots.size(), i, place));
        }
        const std::vector<bool> known = repeated_from(before, now);
        Marks marks;
        std::size_t at = 0;
        for (std::size_t i = 0; i < places.size(); ++i) {
            marks.emplace_back(places[i].size());
            if (kept_[i] == nullptr) continue;
            for (std::size_t shot = 0; shot < places[i].size(); ++shot)
                marks[i][shot] = known[at++];
        }
        return marks;
    }

    // Shots as near to a kept one as other shots beside them may move them take its place.
    Places snapped(Places places) const {
        constexpr double near_m = Yards{0.05}.metres();
        for (std::size_t i = 0; i < places.size(); ++i) {
            if (kept_[i] == nullptr) continue;
            std::vector<ShotOffset> left = kept_[i]->shots;
            for (ShotOffset& place : places[i]) {
                const auto found = std::ranges::find_if(left, [&](const ShotOffset& kept) {
                    return std::abs(kept.carry_m - place.carry_m) < near_m &&
                           std::abs(kept.side_m - place.side_m) < near_m;
                });
                if (found == left.end()) continue;
                place = *found;
                left.erase(found);
            }
        }
        return places;
    }

    bool shares_a_session(std::size_t club, const std::vector<bool>& known) const {
        if (std::ranges::count(known, true) > 0) return false;
        return std::ranges::any_of(clubs_.clubs[club].shots, [&](const LandedShot& shot) {
            return shot.session && std::ranges::any_of(kept_[club]->times, [&](const ShotTime& time) {
                       return same_name(onto_.sessions[time.session].label,
                                        clubs_.sessions[*shot.session].label);
                   });
        });
    }

    LoggedClubs& clubs_;
    const Golfer& onto_;
    std::vector<const LearntFrom*> kept_;  // of each club of the logs; nullptr: nothing
    std::vector<std::string> names_;       // in the profile
};

// One sentence a log.
void tell(const Marks& marks, const LoggedClubs& clubs, const std::vector<NamedLog>& logs,
          std::vector<std::string>& said) {
    std::vector<std::vector<std::size_t>> rows(logs.size());
    for (std::size_t i = 0; i < marks.size(); ++i)
        for (std::size_t shot = 0; shot < marks[i].size(); ++shot)
            if (marks[i][shot])
                rows[clubs.clubs[i].shots[shot].log].push_back(clubs.clubs[i].shots[shot].row);
    for (std::size_t log = 0; log < logs.size(); ++log) {
        if (rows[log].empty()) continue;
        std::ranges::sort(rows[log]);
        said.push_back(
            fmt::format("{}: {} of {} shots left out, {}: the profile has learnt from them already; each "
                        "shot counts once",
                        logs[log].file, rows[log].size(), logs[log].log.shots.size(), row_words(rows[log])));
    }
}

}  // namespace

std::vector<std::string> leave_out_known(LoggedClubs& clubs, const LoggedClubs& recorded, Golfer& onto,
                                         const std::vector<NamedLog>& logs) {
    Comparison comparison(clubs, onto);
    const Marks marks = comparison.best_of(places_of(recorded));
    std::vector<std::string> said;
    if (auto sentence = comparison.not_compared(marks)) said.push_back(std::move(*sentence));
    if (auto sentence = comparison.not_kept()) said.push_back(std::move(*sentence));
    tell(marks, clubs, logs, said);
    comparison.take_out(marks);
    if (clubs.clubs.empty())
        throw InputError(logs.front().file,
                         "the profile has learnt from these shots already, from every one");
    return said;
}

}  // namespace landwidth
