#include "golfer-profiles/club_groups.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <iterator>
#include <optional>
#include <set>
#include <unordered_map>
#include <utility>

#include "geometry/error.hpp"
#include "golfer-profiles/club_names.hpp"
#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/nearest_word.hpp"

namespace landwidth {
namespace {

std::optional<ClubKind> kind_said(const std::vector<KindOfClub>& kinds, std::string_view name) {
    const auto said =
        std::find_if(kinds.begin(), kinds.end(), [&](const auto& k) { return same_name(k.club, name); });
    return said == kinds.end() ? std::nullopt : std::optional(said->kind);
}

std::string joined(const std::vector<std::string>& names) {
    std::vector<std::string> quoted;
    std::transform(names.begin(), names.end(), std::back_inserter(quoted),
                   [](const std::string& name) { return in_quotes(name); });
    return fmt::format("{}", fmt::join(quoted, " and "));
}

// The spellings met of one club or one build.
struct Spellings {
    std::vector<std::string> met;
    // `name` when it was so written first, but for case; else how it was.
    const std::string& first_or(const std::string& name) {
        const auto is_known = [&](const std::string& m) { return same_name(m, name); };
        if (std::none_of(met.begin(), met.end(), is_known)) met.push_back(name);
        return same_name(met.front(), name) ? name : met.front();
    }
};

// "44 in" of "driver, 44 in" for the driver.
std::string build_alone(const std::string& club, const std::string& build) {
    if (build_key(club, build).empty()) return {};
    std::string_view rest = build;
    if (rest.size() > club.size() && same_name(rest.substr(0, club.size()), club)) {
        rest.remove_prefix(club.size());
        rest.remove_prefix(std::min(rest.find_first_not_of(" ,\t"), rest.size()));
    }
    return std::string(rest.empty() ? std::string_view(build) : rest);
}

class Grouping {
  public:
    Grouping(const std::vector<NamedLog>& logs, const std::vector<KindOfClub>& kinds)
        : logs_(logs), kinds_(kinds) {}

    void add(const LoggedShot& shot, std::size_t log) {
        // A spelling is worked out once, not for every shot.
        const std::string spelling = shot.club + '\n' + shot.build;
        auto known = by_spelling_.find(spelling);
        if (known == by_spelling_.end()) known = by_spelling_.emplace(spelling, group_of(shot, log)).first;
        groups_[known->second].members.push_back({&shot, log});
    }

    std::vector<ShotGroup> take() { return std::move(groups_); }

    void tell(std::vector<std::string>& warnings) const {
        for (const std::string& key : keys_in_order_) {
            const std::vector<std::string>& met = spellings_.at(key).met;
            if (met.size() > 1) {
                warnings.push_back(fmt::format("{} are taken for one {}", joined(met),
                                               key.find('\n') == std::string::npos ? "club" : "build"));
            }
        }
    }

  private:
    Spellings& spellings_of(const std::string& key) {
        const auto [found, is_new] = spellings_.try_emplace(key);
        if (is_new) keys_in_order_.push_back(key);
        return found->second;
    }

    std::size_t group_of(const LoggedShot& shot, std::size_t log) {
        auto kind = kind_said(kinds_, shot.club);
        if (!kind && !shot.build.empty())
            kind = kind_said(kinds_, fmt::format("{}, {}", shot.club, shot.build));
        if (!kind) kind = kind_by_name(shot.club);
        const std::string club = club_key(kind, shot.club);
        ShotGroup group{.club = std::string(trimmed(shot.club)),
                        .build = build_alone(shot.club, std::string(trimmed(shot.build))),
                        .kind = kind.value_or(ClubKind::iron),
                        .members = {{&shot, log}}};
        if (!kind) {
            throw InputError(place_of(group, logs_),
                             fmt::format("the name {} does not tell what kind of club it is; say so with "
                                         "--kind \"{}=hybrid\" (driver, mini-driver, fairway-wood, hybrid, "
                                         "driving-iron, iron, wedge)",
                                         in_quotes(shot.club), shot.club));
        }
        group.club = spellings_of(club).first_or(group.club);
        const std::string build = build_key(shot.club, shot.build);
        const std::string key = club + '\n' + build;
        if (!build.empty()) group.build = spellings_of(key).first_or(group.build);
        const auto [found, is_new] = by_key_.emplace(key, groups_.size());
        if (is_new) {
            group.members.clear();
            groups_.push_back(std::move(group));
        }
        return found->second;
    }

    const std::vector<NamedLog>& logs_;
    const std::vector<KindOfClub>& kinds_;
    std::vector<ShotGroup> groups_;
    std::unordered_map<std::string, std::size_t> by_spelling_, by_key_;
    std::unordered_map<std::string, Spellings> spellings_;  // by club, and by club and build
    std::vector<std::string> keys_in_order_;
};

template <typename Names>
std::string nearest_hint(std::string_view word, const Names& names) {
    const auto nearest = nearest_word(word, std::vector<std::string_view>(names.begin(), names.end()));
    return nearest ? fmt::format("; did you mean {}?", in_quotes(*nearest)) : "";
}

void check_kinds(const std::vector<KindOfClub>& kinds, const std::vector<NamedLog>& logs) {
    if (kinds.empty()) return;
    std::set<std::string> clubs, builds;
    for (const NamedLog& log : logs) {
        for (const LoggedShot& shot : log.log.shots) {
            clubs.insert(shot.club);
            if (!shot.build.empty()) builds.insert(fmt::format("{}, {}", shot.club, shot.build));
        }
    }
    for (const KindOfClub& said : kinds) {
        const auto is_said = [&](const std::string& name) { return same_name(name, said.club); };
        if (std::any_of(clubs.begin(), clubs.end(), is_said) ||
            std::any_of(builds.begin(), builds.end(), is_said))
            continue;
        throw UsageError(fmt::format("--kind {}: no shot is of such a club{}", in_quotes(said.club),
                                     nearest_hint(said.club, clubs)));
    }
}

bool is_build_of(const ShotGroup& group, const std::string& club) {
    return !group.build.empty() && club_key(group.kind, group.club) == club;
}

// Whether `name` ("1W, 45.5in") is a way to write this build.
bool names_build(std::string_view name, const ShotGroup& group) {
    if (same_name(name, group.name())) return true;
    const std::size_t comma = name.find(',');
    if (comma == std::string_view::npos) return false;
    const std::string_view club = trimmed(name.substr(0, comma));
    const bool same_club =
        same_name(club, group.club) || club_key(group.kind, club) == club_key(group.kind, group.club);
    return same_club && build_key(group.club, name.substr(comma + 1)) == build_key(group.club, group.build);
}

// The build of each entry of `carried`.
std::vector<const ShotGroup*> asked_builds(const std::vector<std::string>& carried,
                                           const std::vector<ShotGroup>& groups) {
    std::vector<const ShotGroup*> asked;
    for (const std::string& name : carried) {
        const auto found = std::find_if(groups.begin(), groups.end(), [&](const ShotGroup& g) {
            return !g.build.empty() && names_build(name, g);
        });
        if (found == groups.end()) {
            std::vector<std::string> names;
            for (const ShotGroup& group : groups)
                if (!group.build.empty()) names.push_back(group.name());
            throw UsageError(
                fmt::format("--carried {}: no shot is of such a build{}{}", in_quotes(name),
                            names.empty() ? "" : fmt::format("; the builds are {}", joined(names)),
                            nearest_hint(name, names)));
        }
        for (const ShotGroup* other : asked) {
            if (other != &*found && is_build_of(*other, club_key(found->kind, found->club)))
                throw UsageError(
                    fmt::format("--carried {}: {} is asked for already; one build of a club is "
                                "carried",
                                in_quotes(name), in_quotes(other->name())));
        }
        asked.push_back(&*found);
    }
    return asked;
}

void choose_carried(std::vector<ShotGroup>& groups, const std::vector<std::string>& carried,
                    std::vector<std::string>& warnings) {
    const std::vector<const ShotGroup*> asked = asked_builds(carried, groups);
    for (ShotGroup& first : groups) {
        const std::string club = club_key(first.kind, first.club);
        std::vector<ShotGroup*> builds;
        bool club_itself = false;
        for (ShotGroup& group : groups) {
            if (club_key(group.kind, group.club) != club) continue;
            if (group.build.empty())
                club_itself = true;
            else
                builds.push_back(&group);
        }
        if (builds.empty() || builds.front() != &first || first.kind == ClubKind::putter) continue;
        const auto wanted = std::find_if(builds.begin(), builds.end(), [&](const ShotGroup* b) {
            return std::find(asked.begin(), asked.end(), b) != asked.end();
        });
        if (club_itself) {
            if (wanted == builds.end()) continue;
            throw UsageError(
                fmt::format("--carried {}: shots of {} without a build are of the one in the bag; "
                            "give them a build, or leave --carried out",
                            in_quotes((*wanted)->name()), in_quotes(first.club)));
        }
        ShotGroup& one = wanted != builds.end()
                             ? **wanted
                             : **std::max_element(builds.begin(), builds.end(), [](auto* a, auto* b) {
                                   return a->members.size() < b->members.size();
                               });
        one.is_the_one_carried = true;
        const std::string_view why = wanted != builds.end() ? "as --carried says"
                                     : builds.size() == 1   ? "there is no other"
                                                            : "it has the most shots; --carried says another";
        warnings.push_back(
            fmt::format("every shot of {} is of a build; {} is taken for the one in the bag: {}",
                        in_quotes(first.club), in_quotes(one.name()), why));
    }
}

}  // namespace

std::vector<ShotGroup> shot_groups(const std::vector<NamedLog>& logs, const RepeatedRows& repeated,
                                   const std::vector<KindOfClub>& kinds,
                                   const std::vector<std::string>& carried,
                                   std::vector<std::string>& warnings) {
    check_kinds(kinds, logs);
    Grouping grouping(logs, kinds);
    for (std::size_t log = 0; log < logs.size(); ++log) {
        const std::vector<LoggedShot>& shots = logs[log].log.shots;
        for (std::size_t i = 0; i < shots.size(); ++i)
            if (!repeated.repeats[log][i]) grouping.add(shots[i], log);
    }
    grouping.tell(warnings);
    std::vector<ShotGroup> groups = grouping.take();
    choose_carried(groups, carried, warnings);
    return groups;
}

std::string place_of(const ShotGroup& group, const std::vector<NamedLog>& logs) {
    const ShotGroup::Member& first = group.members.front();
    return fmt::format("{}: row {}", logs[first.log].file, first.shot->row);
}

}  // namespace landwidth
