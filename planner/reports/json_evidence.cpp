#include "planner/reports/json_evidence.hpp"

#include <string>

#include "planner/reports/display_length.hpp"
#include "planner/reports/rounded.hpp"

namespace landwidth {

namespace {

class AsJson {
  public:
    explicit AsJson(DisplayUnits units)
        : units_(units), suffix_(units == DisplayUnits::yards ? "_yd" : "_m") {}

    Json recorded(const RawShots& raw) const {
        if (raw.shots == 0) return nullptr;
        Json json{{"shots", raw.shots}};
        add(json, "carry", raw, raw.carry);
        add(json, "side", raw, raw.side);
        return json;
    }
    Json model(const OpenPattern& open) const {
        Json json = Json::object();
        add(json, "carry", open.carry);
        add(json, "side", open.side);
        add(json, "carry_sd", open.carry_sd);
        add(json, "side_sd", open.side_sd);
        json["mishit_share"] = share(open.mishit_share.middle);
        json["mishit_share_90"] = {share(open.mishit_share.low), share(open.mishit_share.high)};
        return json;
    }

  private:
    double length(double metres) const { return rounded(in_display_units(metres, units_), 1); }
    static double share(double value) { return rounded(value, 4); }
    void add(Json& json, const std::string& of, const RawShots& raw, const RawFigures& figures) const {
        json[of + "_mean" + suffix_] = length(figures.mean);
        json[of + "_sd" + suffix_] = raw.shots > 1 ? Json(length(figures.sd)) : Json(nullptr);
        json[of + "_median" + suffix_] = length(figures.median);
        json[of + "_90" + suffix_] = {length(figures.low), length(figures.high)};
    }
    void add(Json& json, const std::string& of, const OpenFigure& figure) const {
        json[of + suffix_] = length(figure.middle);
        json[of + "_90" + suffix_] = {length(figure.low), length(figure.high)};
    }

    DisplayUnits units_;
    std::string suffix_;
};

}  // namespace

Json json_evidence(const ClubEvidence& evidence, DisplayUnits units) {
    const AsJson as_json(units);
    return {{"recorded", as_json.recorded(evidence.raw)},
            {"recorded_without_mishits", as_json.recorded(evidence.raw_usual)},
            {"model", as_json.model(evidence.open)}};
}

}  // namespace landwidth
