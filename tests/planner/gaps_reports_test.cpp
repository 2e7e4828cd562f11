#include "planner/reports/gaps_reports.hpp"

#include <nlohmann/json.hpp>
#include <sstream>

#include "golfer-profiles/presets.hpp"
#include "planner/reports/text_table.hpp"
#include "tests/catch.hpp"
#include "tests/planner/page_checks.hpp"

namespace landwidth {
namespace {

struct Made {
    Golfer golfer = preset_golfer("bogey-man");
    BagGaps gaps = bag_gaps(golfer, default_assumptions());
    GapsView view(DisplayUnits units = DisplayUnits::yards) const { return {golfer, gaps, units}; }
};

std::string on_a_line(std::string text) {
    for (char& c : text)
        if (c == '\n') c = ' ';
    return text;
}

void require_narrow(const std::string& text) {
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);) {
        CAPTURE(line);
        REQUIRE(display_width(line) <= report_width);
    }
}

}  // namespace

TEST_CASE("the gaps of the bogey man as text, by hand: driver 180, 3-wood 150") {
    const Made made;
    const std::string text = gaps_text(made.view());
    require_narrow(text);
    REQUIRE(holds(text, "Gaps in the bag of bogey-man"));
    const std::string line = on_a_line(text);
    REQUIRE(holds(line, "Driver and 3-wood: a wide gap, 30 yd"));
    REQUIRE(holds(line, "in the middle of it carries about 165 and goes "));
    REQUIRE(holds(line, "typical"));
    REQUIRE(holds(line, "mini-driver"));
    REQUIRE(holds(line, "--add CLUB"));
    require_narrow(gaps_text(made.view(DisplayUnits::metres)));
    REQUIRE(holds(on_a_line(gaps_text(made.view(DisplayUnits::metres))), "Lengths in metres"));
}

TEST_CASE("long names keep the lines narrow, and names are no markup") {
    Made made;
    made.golfer.name = std::string(100, 'W');
    for (Club& club : made.golfer.clubs)
        club.name = "<b>&" + std::string(90, 'W') + club.name.substr(0, 4);
    require_narrow(gaps_text(made.view()));
    const std::string html = gaps_html(made.view());
    check_self_contained(html);
    check_identifiers(html);
    REQUIRE_FALSE(holds(html, "<b>"));
}

TEST_CASE("gaps as JSON: units in the names, intervals around the figures, a slot with its candidates") {
    const Made made;
    const auto json = nlohmann::json::parse(gaps_json(made.view()));
    REQUIRE(json["format"] == "landwidth-gaps/1");
    REQUIRE(json["clubs"].size() == 13);
    REQUIRE(json["gaps"].size() == 12);
    REQUIRE(json["clubs"][0]["carry_yd"] == 180.0);
    REQUIRE(json["clubs"][0]["typical"] == true);
    REQUIRE(json["gaps"][0]["gap_yd"] == 30.0);
    REQUIRE(json["gaps"][0]["standing"] == "wide");
    for (const auto& club : json["clubs"]) {
        REQUIRE(club["carry_90_yd"][0] < club["carry_yd"]);
        REQUIRE(club["carry_90_yd"][1] > club["carry_yd"]);
    }
    REQUIRE(json["tee_slot"]["carry_yd"] == 165.0);
    REQUIRE(json["tee_slot"]["candidates"].size() >= 3);
    REQUIRE(json["assumptions"]["gap_wide"]["value"] == 20.0);
    REQUIRE(nlohmann::json::parse(gaps_json(made.view(DisplayUnits::metres)))["clubs"][0]["carry_m"] ==
            164.6);
}

TEST_CASE("the page says what the text says and draws every club") {
    const Made made;
    const std::string html = gaps_html(made.view());
    check_self_contained(html);
    check_identifiers(html);
    REQUIRE(holds(html, "class=\"slot\""));
    std::size_t bars = 0;
    for (auto at = html.find("class=\"sure\""); at != std::string::npos;
         at = html.find("class=\"sure\"", at + 1))
        ++bars;
    REQUIRE(bars == 13);
    REQUIRE(holds(html, "Wide gaps and overlaps"));
    REQUIRE(holds(html, "A second tee club"));
}

TEST_CASE("gaps that are shown are the differences of carries that are shown") {
    Made made;
    // 180.4 and 150.5 yd: 180 and 151, so 29 and not 30.
    for (CarriedClub& club : made.gaps.clubs)
        if (club.club < 2) club.carry_m = (club.club == 0 ? 180.4 : 150.5) * metres_per_yard;
    REQUIRE(holds(on_a_line(gaps_text(made.view())), "a wide gap, 29 yd"));
}

}  // namespace landwidth
