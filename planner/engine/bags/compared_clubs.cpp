#include "planner/engine/bags/compared_clubs.hpp"

#include <algorithm>
#include <functional>

#include "planner/engine/bags/weighing.hpp"

namespace landwidth {

namespace {

// By number of the club: on how many holes of all courses and changes it gives way on the tee or comes there.
std::vector<int> exchanges_on_tees(const Golfer& golfer, const std::vector<WeighedChange>& changes) {
    std::vector<int> holes(golfer.clubs.size(), 0);
    for (const WeighedChange& change : changes)
        for (const CourseGain& course : change.courses)
            for (const HoleGain& hole : course.holes) {
                if (hole.before.club == hole.after.club) continue;
                ++holes.at(hole.before.club);
                ++holes.at(hole.after.club);
            }
    return holes;
}

class Comparison {
  public:
    explicit Comparison(const Golfer& golfer) : golfer_(golfer) {}

    // Whether it was not there yet.
    bool add(std::size_t number, bool comes_in) {
        const Club& club = golfer_.clubs.at(number);
        if (!club.pattern || std::ranges::find(clubs_, number, &ComparedClub::club) != clubs_.end())
            return false;
        clubs_.push_back({number, comes_in});
        return true;
    }

    std::vector<ComparedClub> clubs() && { return std::move(clubs_); }

  private:
    const Golfer& golfer_;
    std::vector<ComparedClub> clubs_;
};

}  // namespace

std::vector<ComparedClub> compared_clubs(const Golfer& golfer, const std::vector<WeighedChange>& changes,
                                         std::size_t most_others) {
    Comparison comparison(golfer);
    for (const WeighedChange& change : changes)
        for (const std::size_t club : change.change.in)
            comparison.add(club, true);
    const std::vector<int> holes = exchanges_on_tees(golfer, changes);
    std::vector<std::size_t> order;
    for (std::size_t club = 0; club < holes.size(); ++club)
        if (holes[club] > 0) order.push_back(club);
    std::ranges::stable_sort(order, std::greater<>{}, [&](std::size_t club) { return holes[club]; });
    std::size_t others = 0;
    for (const std::size_t club : order)
        if (others < most_others && comparison.add(club, false)) ++others;
    for (const WeighedChange& change : changes)
        for (const std::size_t club : change.change.out)
            comparison.add(club, false);
    return std::move(comparison).clubs();
}

}  // namespace landwidth
