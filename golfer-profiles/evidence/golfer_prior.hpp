// One model of a golfer, behind all clubs: what is shared by them and what differs, and what is known of
// golfers before any shot is seen.
//
// A golfer is one person. Golfer, club and build of a club are nested: every club's pattern is the typical
// one of the golfer's level, moved by what is the golfer's own (all clubs alike), by what is the club's, and
// by what is the build's. In relative numbers, so that clubs compare: carries as shares of the club's typical
// carry L, sides as tangents (side / L), spreads as logarithms. Six numbers of a build b of club c:
//
//   carry       mean carry                             0 is the typical one
//   direction   mean direction, a tangent              0 is the typical one
//   log a, log d  logarithms of the scale of the usual shot along and across the line
//   twist       atanh of the correlation of the two
//   logit p     of the share of mishits, at most 0: more than half of the shots are the usual ones
//
// Each is t_b = typical + g + k_c + e_b, independent of the other five, with
//
//   g    normal of standard deviation s.golfer / sqrt(w), w ~ gamma(2, 2): a t with 4 degrees of freedom, so
//        that a golfer unlike the level is believed after some fifteen shots (heavy tails: K. Lange, R.
//        Little and J. Taylor, J. Am. Statist. Assoc. 84, 1989)
//   k_c  likewise with s.club and a w of the club's own
//   e_b  normal of standard deviation s.build
//
// A shot of build b in session s, `when` of the session gone by (-1/2 at its first shot, 1/2 at its last):
// with chance 1 - p usual, a bivariate t about (carry_b, direction_b) + day_s + when x trend, with scale
// matrix from (a, d, twist)_b and degrees of freedom that all clubs share; with chance p a mishit, a normal
// with a diagonal covariance (the profile format has no correlation of mishits) about a place of the golfer's
// own, the same for all clubs in relative numbers. Mishits are of one of two kinds, decided by the shots:
// short as the typical ones are, or wide: as long as the usual shot and far off line. day_s and trend are
// normal, and only there when the log tells sessions; days only when it tells two or more, since one day says
// nothing of how days differ. A lost ball is a shot of which only |side| > lost_beyond is known.
//
// Everything that follows is a draw from the posterior of all of this at once. What two builds share cancels
// in their comparison; how many shots stand behind each says how well it is known and not which is better.
//
// Sources: that t mixtures fit golfers and normals do not: S. Ko, thesis, Columbia 2012; M. Broadie and S. Ko
// 2009. That golfers of one level differ, clubs of one golfer less and builds least is common practice; the
// numbers are assumptions, none is fitted to the golfers of tests/benchmarks.
#pragma once

namespace landwidth {

// One standard deviation between golfers of a level, clubs of a golfer, builds of a club.
struct LevelSds {
    double golfer, club, build;
};

struct GolferPrior {
    // Assumptions, all of them, unless a source stands beside.
    LevelSds carry{0.10, 0.04, 0.012};         // share of the carry
    LevelSds direction{0.070, 0.021, 0.0105};  // tangent: 4, 1.2 and 0.6 degrees
    LevelSds log_spread{0.40, 0.15, 0.09};     // of log a and of log d
    LevelSds twist{0.25, 0.15, 0.05};          // atanh of the correlation
    LevelSds logit_mishits{1.2, 0.4, 0.2};     // log odds of a mishit
    // Of the logarithm of the degrees of freedom, and of the place (share of the carry along, tangent across)
    // and log spread of mishits about the typical.
    double log_tail_differs = 0.5;
    double mishit_along = 0.10, mishit_across = 0.09, log_mishit_spread = 0.35;
    // How often a golfer's mishits are wide rather than short; the scale of such, in the usual shot's.
    double wide_mishits = 0.3;
    double wide_mishit_scale = 2.5;
    // How far a day's carries (share) and directions (tangent) lie from the golfer's own; how far they move
    // from the first shot of a session to the last.
    double day_carry = 0.015, day_direction = 0.014;
    double trend_carry = 0.015, trend_direction = 0.009;
    // Without a handicap the golfer's own standard deviations are so many times larger.
    double unknown_level = 1.5;
    // A ball that was not found lies at least so far off line, as a tangent.
    double lost_beyond = 0.1;
};

}  // namespace landwidth
