#include "courses/reading/cut_areas.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <tuple>

#include "courses/reading/box_edge.hpp"

namespace landwidth {

namespace {

constexpr std::size_t none = std::numeric_limits<std::size_t>::max();
// Missing points follow each other as those there do: a cut end lies within some segments' length of the box.
// Then another end must be this much nearer to be what it meant to go to. (Assumptions.)
constexpr double reach_in_segments = 2.0;
constexpr double much_nearer = 0.25;
// More open ends than this go to the box, where there is one, without looking for a nearer end.
constexpr std::size_t most_ends = 400;

struct Candidate {
    std::vector<OutlinePart> rings;
    std::size_t golf_inside = 0;
    std::size_t contradictions = 0;
    double area = 0.0;

    auto rank() const { return std::tie(golf_inside, contradictions, area); }
};

// OutlinePart i has the ends 2i (its front) and 2i + 1 (its back).
class Closing {
  public:
    Closing(std::vector<OutlinePart> stretches, const std::optional<MapExtent>& box,
            const std::vector<LonLat>& golf)
        : golf_(golf) {
        if (box) edge_.emplace(*box);
        for (OutlinePart& stretch : joined(std::move(stretches))) {
            if (stretch.closed()) {
                rings_.push_back(std::move(stretch));
            } else if (edge_) {
                for (LonLatPath& piece : edge_->pieces_inside(stretch.path))
                    open_.push_back(std::move(piece));
            } else {
                open_.push_back(std::move(stretch.path));
            }
        }
        std::erase_if(open_, [](const LonLatPath& path) { return path.size() < 2; });
    }

    CutArea close() {
        link_ends();
        std::vector<Candidate> candidates;
        if (!at_box_.empty()) {
            candidates = {along_box(0), along_box(1)};
        } else if (!open_.empty()) {
            candidates = {candidate(follow(0))};
        } else if (edge_ && only_inner_rings()) {
            // The box lies within an outer ring of which nothing is there, or its islands are all there is.
            candidates = {candidate({{edge_->ring(), RingRole::outer}}), candidate({})};
        }
        CutArea result;
        std::vector<OutlinePart> rings = rings_;
        if (!candidates.empty()) {
            const auto best =
                std::min_element(candidates.begin(), candidates.end(),
                                 [](const Candidate& a, const Candidate& b) { return a.rank() < b.rank(); });
            result.along_box = edge_ && (!at_box_.empty() || open_.empty()) && !best->rings.empty();
            std::move(best->rings.begin(), best->rings.end(), std::back_inserter(rings));
        }
        result.polygons = areas_of(rings);
        return result;
    }

  private:
    LonLat end(std::size_t index) const {
        const LonLatPath& path = open_[index / 2];
        return index % 2 == 0 ? path.front() : path.back();
    }

    bool only_inner_rings() const {
        return !rings_.empty() && std::all_of(rings_.begin(), rings_.end(), [](const OutlinePart& ring) {
            return ring.role == RingRole::inner;
        });
    }

    // Ends that go straight to each other, nearest pairs first; the others go to the box.
    void link_ends() {
        const std::size_t count = 2 * open_.size();
        straight_.assign(count, none);
        std::vector<double> to_box(count, std::numeric_limits<double>::infinity());
        const double reach = reach_in_segments * longest_segment();
        for (std::size_t i = 0; edge_ && i < count; ++i) {
            to_box[i] = geodesic_distance(end(i), edge_->nearest(end(i)));
            if (to_box[i] <= reach) to_box[i] *= much_nearer;
        }
        struct Pair {
            double gap;
            std::size_t a, b;
        };
        std::vector<Pair> pairs;
        for (std::size_t a = 0; a < count && (!edge_ || count <= most_ends); ++a) {
            for (std::size_t b = a + 1; b < count; ++b) {
                if (a / 2 == b / 2 && open_[a / 2].size() < 3) continue;
                const double gap = gap_between(end(a), end(b));
                if (gap < to_box[a] + to_box[b]) pairs.push_back({gap, a, b});
            }
        }
        std::sort(pairs.begin(), pairs.end(), [](const Pair& p, const Pair& q) {
            return std::tie(p.gap, p.a, p.b) < std::tie(q.gap, q.a, q.b);
        });
        for (const Pair& pair : pairs) {
            if (straight_[pair.a] != none || straight_[pair.b] != none) continue;
            straight_[pair.a] = pair.b;
            straight_[pair.b] = pair.a;
        }
        place_at_box_.assign(count, none);
        for (std::size_t i = 0; edge_ && i < count; ++i) {
            if (straight_[i] == none) at_box_.push_back(i);
        }
        std::sort(at_box_.begin(), at_box_.end(), [this](std::size_t a, std::size_t b) {
            return std::pair(edge_->turn(end(a)), a) < std::pair(edge_->turn(end(b)), b);
        });
        for (std::size_t k = 0; k < at_box_.size(); ++k)
            place_at_box_[at_box_[k]] = k;
    }

    double longest_segment() const {
        double longest = 0.0;
        for (const LonLatPath& path : open_) {
            for (std::size_t i = 1; i < path.size(); ++i)
                longest = std::max(longest, gap_between(path[i - 1], path[i]));
        }
        return longest;
    }

    static double gap_between(LonLat a, LonLat b) {
        // Good to a thousandth over the width of a map, and fast.
        const double east = std::remainder(b.lon_deg - a.lon_deg, 360.0) *
                            std::cos(0.5 * (a.lat_deg + b.lat_deg) * radians_per_degree);
        return 111'200.0 * std::hypot(east, b.lat_deg - a.lat_deg);
    }

    // The ends at the box in the order they come along it are joined first to second, third to fourth and so
    // on, or second to third, ..., last to first.
    Candidate along_box(std::size_t first) const { return candidate(follow(first)); }

    std::vector<OutlinePart> follow(std::size_t first) const {
        std::vector<OutlinePart> rings;
        std::vector<bool> done(open_.size(), false);
        for (std::size_t i = 0; i < open_.size(); ++i) {
            if (done[i]) continue;
            OutlinePart ring{{}, RingRole::outer};
            std::size_t at = 2 * i;
            while (!done[at / 2]) {
                done[at / 2] = true;
                const LonLatPath& path = open_[at / 2];
                if (at % 2 == 0) {
                    ring.path.insert(ring.path.end(), path.begin(), path.end());
                } else {
                    ring.path.insert(ring.path.end(), path.rbegin(), path.rend());
                }
                const std::size_t far_end = at ^ 1U;
                at = straight_[far_end];
                if (at == none) at = go_along(far_end, first, ring.path);
                if (at == none) break;
            }
            if (ring.path.size() < 3) continue;
            ring.path.push_back(ring.path.front());
            rings.push_back(std::move(ring));
        }
        return rings;
    }

    // From an end along the box to the one it is joined with there.
    std::size_t go_along(std::size_t from, std::size_t first, LonLatPath& path) const {
        if (place_at_box_[from] == none) return none;
        const std::size_t count = at_box_.size();
        const std::size_t here = place_at_box_[from];
        const bool onward = here % 2 == first;
        const std::size_t to = at_box_[(here + (onward ? 1 : count - 1)) % count];
        edge_->go(end(from), end(to), onward, path);
        return to;
    }

    Candidate candidate(std::vector<OutlinePart> rings) const {
        Candidate result;
        result.rings = std::move(rings);
        const auto inside = [&](LonLat place) {
            bool in = false;
            for (const OutlinePart& ring : result.rings)
                in = in != is_inside(place, ring.path);
            return in;
        };
        const auto in_an_inner_ring = [&](LonLat place) {
            return std::any_of(rings_.begin(), rings_.end(), [&](const OutlinePart& ring) {
                return ring.role == RingRole::inner && is_inside(place, ring.path);
            });
        };
        for (const LonLat& place : golf_) {
            if (inside(place) && !in_an_inner_ring(place)) ++result.golf_inside;
        }
        for (const OutlinePart& ring : rings_) {
            if (ring.role == RingRole::unsaid) continue;
            const bool should = ring.role == RingRole::inner;
            if (inside(ring.path.front()) != should && (should || !in_an_inner_ring(ring.path.front())))
                ++result.contradictions;
        }
        for (const OutlinePart& ring : result.rings)
            result.area += degree_area(ring.path);
        return result;
    }

    const std::vector<LonLat>& golf_;
    std::optional<BoxEdge> edge_;
    std::vector<OutlinePart> rings_;
    std::vector<LonLatPath> open_;
    std::vector<std::size_t> straight_;
    std::vector<std::size_t> at_box_;        // ends, in the order they come along the box
    std::vector<std::size_t> place_at_box_;  // of an end in that order
};

}  // namespace

CutArea cut_area(std::vector<OutlinePart> stretches, const std::optional<MapExtent>& box,
                 const std::vector<LonLat>& golf) {
    return Closing(std::move(stretches), box, golf).close();
}

}  // namespace landwidth
