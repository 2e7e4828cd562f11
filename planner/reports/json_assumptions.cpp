#include "planner/reports/json_assumptions.hpp"

#include <utility>

#include "planner/reports/rounded.hpp"

namespace landwidth {

nlohmann::ordered_json json_assumptions(const std::vector<AssumptionEntry>& entries) {
    using Json = nlohmann::ordered_json;
    Json json = Json::object();
    for (const AssumptionEntry& entry : entries) {
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

}  // namespace landwidth
