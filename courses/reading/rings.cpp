#include "courses/reading/rings.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <optional>
#include <tuple>

namespace landwidth {

namespace {

struct ByPlace {
    bool operator()(const LonLat& a, const LonLat& b) const {
        return std::tie(a.lon_deg, a.lat_deg) < std::tie(b.lon_deg, b.lat_deg);
    }
};

class Joining {
  public:
    explicit Joining(std::vector<OutlinePart> stretches)
        : stretches_(std::move(stretches)), used_(stretches_.size(), false) {
        for (std::size_t i = 0; i < stretches_.size(); ++i) {
            if (stretches_[i].closed() || stretches_[i].path.empty()) continue;
            ends_.emplace(stretches_[i].path.front(), i);
            ends_.emplace(stretches_[i].path.back(), i);
        }
    }

    std::vector<OutlinePart> join() {
        std::vector<OutlinePart> chains;
        for (std::size_t i = 0; i < stretches_.size(); ++i) {
            if (used_[i] || stretches_[i].path.empty()) continue;
            used_[i] = true;
            OutlinePart chain = std::move(stretches_[i]);
            if (!chain.closed()) {
                extend(chain);
                std::reverse(chain.path.begin(), chain.path.end());
                extend(chain);
                std::reverse(chain.path.begin(), chain.path.end());
            }
            chains.push_back(std::move(chain));
        }
        return chains;
    }

  private:
    // Goes on at the back until it closes or nothing meets it.
    void extend(OutlinePart& chain) {
        while (!chain.closed()) {
            const std::optional<std::size_t> next = next_at(chain.path.back(), chain.role);
            if (!next) return;
            used_[*next] = true;
            LonLatPath& more = stretches_[*next].path;
            if (more.front() != chain.path.back()) std::reverse(more.begin(), more.end());
            chain.path.insert(chain.path.end(), more.begin() + 1, more.end());
            if (chain.role == RingRole::unsaid) chain.role = stretches_[*next].role;
        }
    }

    std::optional<std::size_t> next_at(LonLat place, RingRole role) const {
        std::optional<std::size_t> any;
        const auto [first, last] = ends_.equal_range(place);
        for (auto end = first; end != last; ++end) {
            if (used_[end->second]) continue;
            if (stretches_[end->second].role == role) return end->second;
            if (!any) any = end->second;
        }
        return any;
    }

    std::vector<OutlinePart> stretches_;
    std::vector<bool> used_;
    std::multimap<LonLat, std::size_t, ByPlace> ends_;
};

// A place of the ring that is no place of the other, where there is one.
LonLat place_off(const LonLatPath& ring, const LonLatPath& other) {
    for (const LonLat& place : ring) {
        if (std::find(other.begin(), other.end(), place) == other.end()) return place;
    }
    return ring.front();
}

bool is_around(const LonLatPath& outer, const LonLatPath& inner) {
    return is_inside(place_off(inner, outer), outer);
}

}  // namespace

std::vector<OutlinePart> joined(std::vector<OutlinePart> stretches) {
    return Joining(std::move(stretches)).join();
}

bool is_inside(LonLat place, const LonLatPath& ring) {
    bool inside = false;
    for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
        const LonLat& a = ring[i];
        const LonLat& b = ring[j];
        if ((a.lat_deg > place.lat_deg) == (b.lat_deg > place.lat_deg)) continue;
        const double share = (place.lat_deg - a.lat_deg) / (b.lat_deg - a.lat_deg);
        if (place.lon_deg < a.lon_deg + share * (b.lon_deg - a.lon_deg)) inside = !inside;
    }
    return inside;
}

double degree_area(const LonLatPath& ring) {
    double twice = 0.0;
    for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
        twice += (ring[j].lon_deg - ring[i].lon_deg) *
                 (ring[j].lat_deg + ring[i].lat_deg - 2.0 * ring.front().lat_deg);
    }
    return 0.5 * std::abs(twice);
}

std::vector<LonLatPolygon> areas_of(const std::vector<OutlinePart>& rings) {
    std::vector<bool> inner(rings.size(), false);
    for (std::size_t i = 0; i < rings.size(); ++i) {
        inner[i] = rings[i].role == RingRole::inner;
        if (rings[i].role != RingRole::unsaid) continue;
        for (std::size_t k = 0; k < rings.size(); ++k) {
            if (k != i && is_around(rings[k].path, rings[i].path)) inner[i] = !inner[i];
        }
    }
    std::vector<LonLatPolygon> areas;
    std::vector<double> sizes;
    for (std::size_t i = 0; i < rings.size(); ++i) {
        if (inner[i]) continue;
        areas.push_back({rings[i].path, {}});
        sizes.push_back(degree_area(rings[i].path));
    }
    for (std::size_t i = 0; i < rings.size(); ++i) {
        if (!inner[i]) continue;
        std::optional<std::size_t> owner;
        for (std::size_t k = 0; k < areas.size(); ++k) {
            if (owner && sizes[k] >= sizes[*owner]) continue;
            if (is_around(areas[k].outer, rings[i].path)) owner = k;
        }
        if (owner) areas[*owner].inners.push_back(rings[i].path);
    }
    return areas;
}

}  // namespace landwidth
