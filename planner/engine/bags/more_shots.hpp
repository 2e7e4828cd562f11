// Which club to record more shots of, and about how many, before a comparison of two bags is settled.
//
// The expected value of sample information (H. Raiffa and R. Schlaifer, Applied Statistical Decision Theory,
// 1961): before the shots are hit, what they will say is a distribution. Clubs share what is open about their
// golfer, so the parts of a gain that go with them do not vary independently and their variances need not add
// up to the gain's. What knowing a club's pattern would explain of the gain is, to first order,
//
//     v = Cov(gain, part)^2 / Var(part),
//
// never more than Var(gain): for a club whose part is independent of the others' just Var(part), for two
// builds whose parts cancel next to nothing. A club whose pattern is known from n shots (the prior's worth
// among them) and then hit m more times moves the expected gain by a normal of variance v m / (m + n);
// Var(gain) less that is left. Exact for the mean of a normal with a conjugate prior, an approximation here;
// see tests/benchmarks for how near.
#pragma once

#include <optional>
#include <span>
#include <vector>

namespace landwidth {

// What is open about a gain because of one club. The parts of all clubs, draw by draw, add up to the gain's.
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
