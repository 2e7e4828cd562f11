// Which clubs' patterns show what changes of a bag are about.
#include "planner/engine/bags/compared_clubs.hpp"

#include "planner/engine/bags/weighing.hpp"
#include "tests/catch.hpp"

using namespace landwidth;

namespace {

Club hit(const char* name) {
    Club club;
    club.name = name;
    club.pattern = ShotPattern{};
    club.pattern->usual = {{180.0, 0.0}, 10.0, 12.0, 0.0};
    return club;
}

// 0 driver, 1 3-wood, 2 5-wood, 3 iron, 4 and 5 on trial, 6 putter.
Golfer golfer() {
    Golfer made;
    for (const char* name : {"driver", "3-wood", "5-wood", "iron", "short driver", "driving iron"})
        made.clubs.push_back(hit(name));
    made.clubs.emplace_back().kind = ClubKind::putter;
    return made;
}

WeighedChange change(std::vector<std::size_t> in, std::vector<std::size_t> out,
                     const std::vector<std::pair<std::size_t, std::size_t>>& tee_clubs) {
    WeighedChange made{};
    made.change = {"", std::move(in), std::move(out)};
    CourseGain& course = made.courses.emplace_back();
    for (const auto& [before, after] : tee_clubs) {
        HoleGain& hole = course.holes.emplace_back();
        hole.before.club = before;
        hole.after.club = after;
    }
    return made;
}

std::vector<std::size_t> numbers(const std::vector<ComparedClub>& clubs) {
    std::vector<std::size_t> list;
    for (const ComparedClub& club : clubs)
        list.push_back(club.club);
    return list;
}

using Numbers = std::vector<std::size_t>;

}  // namespace

TEST_CASE("clubs that come in, then those they take over from, then those left at home", "[weigh]") {
    const std::vector<WeighedChange> changes{change({5}, {3}, {{1, 5}, {1, 5}, {0, 5}, {2, 2}}),
                                             change({4}, {0}, {{1, 4}, {0, 0}})};
    const std::vector<ComparedClub> clubs = compared_clubs(golfer(), changes);
    CHECK(numbers(clubs) == Numbers{5, 4, 1, 0, 3});
    CHECK(clubs[0].comes_in);
    CHECK(clubs[1].comes_in);
    CHECK_FALSE(clubs[2].comes_in);
    CHECK(numbers(compared_clubs(golfer(), changes, 1)) == Numbers{5, 4, 1, 3, 0});
}

TEST_CASE("a club left out is compared with those that come to its tees", "[weigh]") {
    CHECK(numbers(compared_clubs(golfer(), {change({}, {0}, {{0, 1}, {0, 1}, {0, 2}})})) == Numbers{0, 1, 2});
    CHECK(numbers(compared_clubs(golfer(), {change({}, {3}, {{0, 0}})})) == Numbers{3});
    CHECK(compared_clubs(golfer(), {change({}, {6}, {})}).empty());  // a putter has no pattern
}
