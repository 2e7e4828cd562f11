#include "planner/reports/json_pieces.hpp"

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

#include "planner/reports/rounded.hpp"

namespace landwidth {

namespace {

// The contract's keys. A teeing area is closely mown and plays as fairway; it does not tell red from yellow.
constexpr std::array<const char*, 7> share_keys{"fairway", "rough",   "bunker",       "trees",
                                                "green",   "penalty", "out_of_bounds"};

std::size_t share_key_of(Lie lie) {
    switch (lie) {
        case Lie::teeing_area:
        case Lie::fairway:
            return 0;
        case Lie::rough:
            return 1;
        case Lie::bunker:
            return 2;
        case Lie::trees:
            return 3;
        case Lie::green:
            return 4;
        case Lie::penalty_yellow:
        case Lie::penalty_red:
            return 5;
        case Lie::out_of_bounds:
            return 6;
    }
    return 1;
}

}  // namespace

double json_yards(double metres) {
    return rounded(to_yards(metres), 1);
}

Json json_place(const PlaneFrame& frame, Point point) {
    const LonLat place = frame.to_lonlat(point);
    return {rounded(place.lon_deg, 8), rounded(place.lat_deg, 8)};
}

Json json_optional(const std::optional<double>& value, int decimals) {
    if (!value) return nullptr;
    return rounded(*value, decimals);
}

std::vector<double> parts_of_shares(std::vector<double> shares) {
    double left_over = share_parts;
    for (double& share : shares) {
        share = std::round(share_parts * share);
        left_over -= share;
    }
    *std::max_element(shares.begin(), shares.end()) += left_over;
    return shares;
}

Json json_shares(const std::array<double, lie_count>& lies) {
    std::vector<double> shares(share_keys.size(), 0.0);
    for (const Lie lie : all_lies)
        shares[share_key_of(lie)] += lies[index_of(lie)];
    shares = parts_of_shares(std::move(shares));
    Json json = Json::object();
    for (std::size_t i = 0; i < shares.size(); ++i)
        json[share_keys[i]] = shares[i] / share_parts + 0.0;
    return json;
}

const char* json_lie(Lie lie) {
    return share_keys[share_key_of(lie)];
}

Json json_assumptions(const Assumptions& assumptions) {
    Json json = Json::object();
    for (const AssumptionEntry& entry : list_assumptions(assumptions)) {
        // Nine decimals take off the traces of converting units and nothing of the value.
        Json one{{"value", rounded(entry.value, 9)},
                 {"unit", entry.unit},
                 {"source", entry.source},
                 {"meaning", entry.meaning}};
        if (entry.overridden) one["overridden"] = true;
        json[entry.name] = std::move(one);
    }
    return json;
}

std::string json_text(const Json& json) {
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace landwidth
