// What was learnt from recorded shots, as text, page and JSON.
#include "planner/reports/learn_reports.hpp"

#include <nlohmann/json.hpp>
#include <span>
#include <sstream>
#include <string>
#include <vector>

#include "planner/reports/text_table.hpp"
#include "tests/catch.hpp"
#include "tests/planner/page_checks.hpp"

using namespace landwidth;

namespace {

// A driver with two shots, the second a mishit to the left.
struct Learnt {
    std::vector<NamedLog> logs{{"folder/a.csv", {}}, {"folder/b.csv", {}}};
    LearntGolfer golfer;

    Learnt() {
        Club club;
        club.name = "driver";
        club.kind = ClubKind::driver;
        ShotPattern pattern;
        pattern.usual = {{200.0, 3.0}, 12.0, 20.0, 0.0};
        pattern.mishit = Mishit{0.1, {{150.0, 0.0}, 20.0, 30.0, 0.0}};
        pattern.run_m = 20.0;
        club.pattern = pattern;
        club.pattern->shots = 2;
        const std::vector<ShotOffset> shots{{202.0, 5.0}, {150.0, -47.0}};
        club.learnt_from = LearntFrom{pattern, shots};
        LoggedClub logged{.name = "driver", .club = "driver", .build = {}, .kind = ClubKind::driver};
        logged.shots = {{{202.0, 5.0}, 0, 2}, {{150.0, -47.0}, 1, 12}};
        golfer.clubs.push_back(
            {.logged = logged,
             .club = club,
             .prior = pattern,
             .source = PriorSource::typical,
             .earlier_shots = 0,
             .evidence =
                 {.raw = raw_figures(shots),
                  .raw_usual = raw_figures(std::span(shots).first(1)),
                  .open = {{200, 190, 212}, {3, -6, 11}, {12, 8, 17}, {20, 13, 31}, {0.1, 0.02, 0.25}},
                  .mishit_chance = {0.02, 0.97}},
             .recorded_share = 2.0 / 12.0});
    }

    LearnView view(DisplayUnits units = DisplayUnits::metres) const {
        return {golfer, logs, units, assumptions, {"is the driver <b>a driver?"}};
    }
    std::string text() const { return learn_text(view()); }
    Assumptions assumptions = default_assumptions();
};

bool contains(const std::string& text, const std::string& part) {
    return holds(text, part);
}

std::string on_a_line(std::string text) {
    std::string words;
    for (const char c : text)
        if (c != '\n' && (c != ' ' || !words.ends_with(' ')))
            words += c;
        else if (c == '\n' && !words.ends_with(' '))
            words += ' ';
    return words;
}

}  // namespace

TEST_CASE("the summary tells the pattern and what it leans on", "[report]") {
    const std::string text = Learnt().text();
    REQUIRE(
        contains(text,
                 "club    shots  mishits  carry  run  side  carry sd  side sd  mishit share  from shots\n"
                 "driver      2        1    200   20    3R      12.0     20.0          10 %        17 %"));
    REQUIRE(contains(text, "driver: typical of the level, 200 m of carry, side sd 20.0"));
}

TEST_CASE("the recorded numbers stand beside what the evidence leaves open", "[report]") {
    const std::string text = Learnt().text();
    REQUIRE(contains(
        text, "driver  2         176  36.8     176    153 to 199        21L  36.8     21L     44L to 2R"));
    REQUIRE(contains(text, "driver  190 to 212  6L to 11R  8.0 to 17.0  13.0 to 31.0   2 % to 25 %"));
}

TEST_CASE("a miss to both sides is told", "[report]") {
    Learnt learnt;
    REQUIRE(!contains(learnt.text(), "two ways"));
    learnt.golfer.shapes.push_back(
        {.club = "driver",
         .ways = {Way{0.7, 0.0, -0.5, 1.0, 0.6, 0.0}, Way{0.3, 0.0, 1.2, 1.0, 0.5, 0.0}},
         .shots = 40,
         .as_odd = 0,
         .drawn = 150});
    REQUIRE(contains(learnt.text(), "driver: 70 % about 7 m left, 30 % about 27 m right"));
}

TEST_CASE("every mishit is told with file, row and reason", "[report]") {
    Learnt learnt;
    REQUIRE(contains(learnt.text(),
                     "driver, b.csv row 12: 150 m, 50 m short of the usual, 50 m left of it (97 % sure)"));
    learnt.logs.pop_back();
    learnt.golfer.clubs.front().logged.shots[1].log = 0;
    REQUIRE(contains(learnt.text(), "driver, row 12: 150 m"));
    learnt.golfer.clubs.front().evidence.mishit_chance = {0.0, 0.5};
    REQUIRE(contains(learnt.text(), "No shot was taken for a mishit."));
}

TEST_CASE("mishits among shots learnt from earlier are counted, not listed", "[report]") {
    Learnt learnt;
    learnt.golfer.clubs.front().evidence.mishit_chance = {0.8, 0.1, 0.02, 0.97};
    const std::string text = learnt.text();
    REQUIRE(contains(text, "driver      2        2    200"));
    REQUIRE(contains(text, "b.csv row 12: 150 m"));
    REQUIRE(contains(text, "driver: 1 of the earlier shots\n"));
}

TEST_CASE("each club says why the model's figures are not the recorded ones", "[report]") {
    Learnt learnt;
    LearntClub& club = learnt.golfer.clubs.front();
    REQUIRE(
        contains(on_a_line(learnt.text()),
                 "driver: carry 200 and not 176, side 3R and not 21L, carry sd 12.0 and not 36.8, side sd "
                 "20.0 and not 36.8, mishits 10 % and not 1 of 2, because 1 shot taken for a mishit stands "
                 "apart; 2 shots are few, so 83 % of the spread comes from the golfer's "
                 "other clubs and the level."));
    club.logged.lost = 2;
    club.prior.shots = 30;
    club.recorded_share = 0.95;
    club.club.learnt_from->times = {{0, 0.0}, {1, 0.0}};
    learnt.golfer.golfer.sessions = {{"2026-01-05", 0.5}, {"2026-11-01", 1.0}};
    REQUIRE(contains(on_a_line(learnt.text()),
                     "2 lost balls count among the wide ones; 30 earlier shots are known by their pattern "
                     "only; 2 sessions have a shift of their own each, and older ones weigh less."));
    // Within half of what is left open, and of what a reader takes for the same.
    club.evidence.open = {
        {177.0, 165.0, 189.0}, {-20.0, -31.0, -9.0}, {36.9, 30, 44}, {36.0, 30, 44}, {0.48, 0.4, 0.6}};
    REQUIRE(contains(
        on_a_line(learnt.text()),
        "driver: much as recorded: carry 177, side 20L, carry sd 36.9, side sd 36.0, mishits 48 %."));
    // A mean that differs is never called recorded.
    club.evidence.open.side = {-40.0, -55.0, -25.0};
    club.evidence.mishit_chance = {0.0, 0.0};
    club.evidence.open.mishit_share = {0.0, 0.0, 0.1};
    club.logged.lost = 0;
    club.prior.shots = 0;
    club.club.learnt_from->times.clear();
    REQUIRE(contains(on_a_line(learnt.text()),
                     "driver: side 40L and not 21L, because shots far out weigh less than those near the "
                     "middle."));
    club.evidence.raw = {};
    REQUIRE(!contains(learnt.text(), "much as recorded"));
}

TEST_CASE("text and page end with warnings and cautions unless a terminal has told them", "[report]") {
    const Learnt learnt;
    REQUIRE(contains(learnt.text(), "Is the driver <b>a driver?\n"));
    REQUIRE(contains(learnt.text(), "thunderstorm"));
    LearnView summary = learnt.view();
    summary.stands_alone = false;
    REQUIRE(!contains(learn_text(summary), "Keep in mind"));
    std::istringstream lines(learnt.text());
    for (std::string line; std::getline(lines, line);)
        REQUIRE(display_width(line) <= report_width);
}

TEST_CASE("the name of a file keeps its letters", "[report]") {
    Learnt learnt;
    learnt.logs[0].file = "sd.csv";
    LearnView view = learnt.view();
    view.warnings = {"sd.csv: 2 shots left out"};
    REQUIRE(contains(learn_text(view), "- sd.csv: 2 shots left out."));
}

TEST_CASE("the page says what the text says and draws the shots behind the pattern", "[report]") {
    Learnt learnt;
    learnt.golfer.golfer.name = "<i>A. Golfer</i>";
    learnt.golfer.clubs.push_back(learnt.golfer.clubs.front());
    learnt.golfer.clubs.back().club.name = "driver, 44 in";
    learnt.golfer.clubs.push_back(learnt.golfer.clubs.front());
    learnt.golfer.clubs.back().club.name = "7-iron";
    const std::string html = learn_html(learnt.view());
    check_self_contained(html);
    check_identifiers(html);
    REQUIRE(!holds(html, "<i>"));
    REQUIRE(!holds(html, "<b>"));
    for (const char* part : {"driver: carry 200 and not 176, side 3R", "190 to 212", "44L to 2R",
                             "b.csv row 12", "<bdi>driver, 44 in</bdi>: 2 shots, 1 taken for a mishit"}) {
        INFO(part);
        REQUIRE(holds(html, part));
    }
    // Builds over each other, and the signs told once.
    const auto count = [&](const std::string& part) {
        std::size_t found = 0;
        for (auto at = html.find(part); at != std::string::npos; at = html.find(part, at + 1))
            ++found;
        return found;
    };
    REQUIRE(count("<figure class=\"patterns\">") == 2);
    REQUIRE(count("Where the ball lands, seen from above") == 1);
    // A profile that does not keep so many shots does not call the pattern typical.
    for (LearntClub& club : learnt.golfer.clubs)
        club.club.learnt_from->shots.clear();
    REQUIRE(holds(learn_html(learnt.view()), "The recorded shots behind the patterns are not at hand."));
}

TEST_CASE("what was learnt as JSON: units in the names, the figures of the text", "[report]") {
    const Learnt learnt;
    const auto json = nlohmann::json::parse(learn_json(learnt.view()));
    REQUIRE(json["format"] == "landwidth-learning/1");
    REQUIRE(json["warnings"].size() == 1);
    REQUIRE(json["assumptions"].contains("session_half_life_days"));
    const auto& club = json["clubs"][0];
    REQUIRE(club["recorded"]["shots"] == 2);
    REQUIRE(club["recorded"]["carry_mean_m"] == 176.0);
    REQUIRE(club["recorded"]["side_sd_m"] == 36.8);
    REQUIRE(club["recorded_without_mishits"]["carry_mean_m"] == 202.0);
    REQUIRE(club["recorded_without_mishits"]["carry_sd_m"].is_null());
    REQUIRE(club["model"]["carry_m"] == 200.0);
    REQUIRE(club["model"]["side_sd_90_m"] == nlohmann::json{13.0, 31.0});
    REQUIRE(club["logged_shots"][1]["row"] == 12);
    REQUIRE(club["logged_shots"][1]["mishit_chance"] == 0.97);
    REQUIRE(holds(club["why"], "because 1 shot"));
    const auto yards = nlohmann::json::parse(learn_json(learnt.view(DisplayUnits::yards)));
    REQUIRE(yards["clubs"][0]["model"]["carry_yd"] == 218.7);
}
