// Which club to record more shots of, and about how many, before a comparison of two bags is settled.
//
// The expected value of sample information (H. Raiffa and R. Schlaifer, Applied Statistical Decision Theory,
// 1961): before the shots are hit, what they will say is a distribution. A club's pattern known from n shots
// (the prior's worth among them) that is then hit m more times moves the expected gain by a normal of
// variance v m / (m + n), v being the variance the club's pattern gives the gain today; v n / (m + n) is
// left. Exact for the mean of a normal with a conjugate prior, an approximation here; see tests/benchmarks
// for how near.
#pragma once

#include <optional>
#include <span>
#include <vector>

namespace landwidth {

// What is open about a gain because of one club.
struct OpenClub {
    std::size_t club;           // number in the profile
    double shots_known;         // recorded and worth of the prior
    std::vector<double> drawn;  // the club's part of the gain in every draw of its pattern, strokes a round
};

struct MoreShots {
    std::size_t club;
    int shots;            // more, of this club
    double chance_right;  // expected chance that the better bag is then chosen
    double worth;         // expected gain by choosing after these shots instead of now, strokes a round
    bool settles;         // chance_right reaches what was asked for; else the club is the one that tells most
};

// How likely the bag chosen today, by the sign of the mean gain, is the better one: a normal of this mean and
// variance.
double chance_right_now(double mean, double variance);

// The club that settles it with the fewest shots, at most `most_shots`; where none does, the one that tells
// most with that many. Absent when nothing is open. `mean`: of the gain, strokes a round. settled_at in (0.5,
// 1).
std::optional<MoreShots> more_shots(double mean, std::span<const OpenClub> clubs, double settled_at,
                                    int most_shots);

}  // namespace landwidth
