#include "planner/reports/assumptions_json.hpp"

#include <utility>

#include "planner/reports/rounded.hpp"

namespace landwidth {

namespace {

using Json = nlohmann::ordered_json;

}  // namespace

Json assumptions_json(const Assumptions& assumptions) {
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

}  // namespace landwidth
