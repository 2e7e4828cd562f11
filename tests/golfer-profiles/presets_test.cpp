#include "golfer-profiles/presets.hpp"

#include <cmath>
#include <limits>

#include "geometry/error.hpp"
#include "geometry/units.hpp"
#include "golfer-profiles/profile_file.hpp"
#include "tests/catch.hpp"

using namespace landwidth;
using Catch::Matchers::WithinAbs;

namespace {

GolferRequest request(double index, std::optional<double> drive = {}, Reference reference = Reference::men) {
    return {.name = "a golfer", .handicap_index = index, .drive_total_yd = drive, .reference = reference};
}

double driver_total_yd(const Golfer& golfer) {
    const ShotPattern& driver = golfer.club("driver")->pattern.value();
    return to_yards(driver.usual.centre.carry_m + driver.run_m);
}

// What must hold for any golfer the presets make.
void check_bag(const Golfer& golfer) {
    REQUIRE(golfer.clubs.size() <= most_clubs);
    REQUIRE(golfer.clubs.front().kind == ClubKind::driver);
    REQUIRE(golfer.clubs.back().kind == ClubKind::putter);
    REQUIRE(golfer.note.find("not measured") != std::string::npos);
    const ShotPattern* longer = nullptr;
    for (const Club& club : golfer.clubs) {
        CAPTURE(club.name);
        REQUIRE_FALSE(club.note.empty());
        REQUIRE(club.length_m.has_value());
        REQUIRE(club.pattern.has_value() == (club.kind != ClubKind::putter));
        if (!club.pattern) continue;
        const ShotPattern& pattern = *club.pattern;
        REQUIRE(pattern.shots == 0);
        if (longer != nullptr) {
            const double total = pattern.usual.centre.carry_m + pattern.run_m;
            REQUIRE(pattern.usual.centre.carry_m < longer->usual.centre.carry_m);
            REQUIRE(total < longer->usual.centre.carry_m + longer->run_m);
            REQUIRE(pattern.usual.side_sd_m < longer->usual.side_sd_m);
            REQUIRE(pattern.usual.carry_sd_m <= longer->usual.carry_sd_m);
        }
        longer = &pattern;
    }
    // The reader's own doubts are no warnings about our presets.
    const ProfileReading reading = parse_profile(profile_text(golfer), "preset");
    REQUIRE(reading.warnings.empty());
    REQUIRE(reading.golfer == golfer);
}

}  // namespace

TEST_CASE("every preset is a whole, valid bag that the format keeps") {
    for (const Preset& preset : presets()) {
        CAPTURE(preset.name);
        check_bag(preset_golfer(preset.name));
    }
}

TEST_CASE("every handicap and drive within range gives a whole, valid bag") {
    for (const Reference reference : {Reference::men, Reference::women}) {
        for (double index = -10; index <= 54; index += 4) {
            for (double drive = 80; drive <= 380; drive += 37.5) {
                CAPTURE(index, drive);
                const Golfer golfer = typical_golfer(request(index, drive, reference));
                check_bag(golfer);
                REQUIRE_THAT(driver_total_yd(golfer), WithinAbs(drive, 0.0501));
            }
        }
    }
}

TEST_CASE("the drive asked for is the driver's total") {
    REQUIRE_THAT(driver_total_yd(typical_golfer(request(14, 225))), WithinAbs(225, 1e-9));
    REQUIRE_THAT(driver_total_yd(typical_golfer(request(5, 187.3, Reference::women))),
                 WithinAbs(187.3, 1e-9));
}

TEST_CASE("a standard drive and handicap give the standard golfer") {
    REQUIRE(typical_golfer(request(0, 250)).clubs == preset_golfer("scratch-man").clubs);
    REQUIRE(typical_golfer(request(20, 200)).clubs == preset_golfer("bogey").clubs);
    REQUIRE(typical_golfer(request(24, 150, Reference::women)).clubs == preset_golfer("bogey-woman").clubs);
    REQUIRE(preset_golfer("scratch") == preset_golfer("scratch-man"));
}

TEST_CASE("a higher handicap never scatters less with the same drive") {
    std::optional<ShotPattern> before;
    for (double index = -10; index <= 54; index += 1) {
        const ShotPattern pattern = typical_golfer(request(index, 220)).club("driver")->pattern.value();
        if (before) {
            REQUIRE(moments(pattern).side_variance >= moments(*before).side_variance * 0.99);
            REQUIRE(pattern.usual.carry_sd_m >= before->usual.carry_sd_m);
            REQUIRE(pattern.tail_dof <= before->tail_dof);
            REQUIRE(pattern.mishit->share >= before->mishit->share);
        }
        before = pattern;
    }
}

TEST_CASE("without a drive a higher handicap is never longer") {
    for (const Reference reference : {Reference::men, Reference::women}) {
        double before = 400;
        for (double index = -10; index <= 54; index += 0.5) {
            const double total = driver_total_yd(typical_golfer(request(index, {}, reference)));
            REQUIRE(total <= before + 0.11);
            before = total;
        }
    }
}

TEST_CASE("a left-hander is the mirror image of a right-hander") {
    GolferRequest left = request(18, 210);
    left.hand = Hand::left;
    const Golfer mirrored = typical_golfer(left);
    const Golfer right = typical_golfer(request(18, 210));
    REQUIRE(mirrored.hand == Hand::left);
    for (std::size_t i = 0; i + 1 < right.clubs.size(); ++i) {
        ShotPattern pattern = mirrored.clubs[i].pattern.value();
        REQUIRE(pattern.usual.correlation > 0);
        pattern.usual.correlation *= -1;
        REQUIRE(pattern == right.clubs[i].pattern.value());
    }
}

TEST_CASE("a preset takes another name and hand") {
    const Golfer golfer = preset_golfer("scratch-woman", {.name = " Ada ", .hand = Hand::left});
    REQUIRE(golfer.name == "Ada");
    REQUIRE(golfer.hand == Hand::left);
}

TEST_CASE("the level of the tour preset's short game and putting is the tour's") {
    REQUIRE(preset_golfer("tour").putting == Level{NamedLevel::tour});
    REQUIRE(preset_golfer("bogey-man").short_game == Level{NamedLevel::handicap});
}

TEST_CASE("what cannot be asked for is refused in words") {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const auto words = [](const auto& ask) -> std::string {
        try {
            ask();
        } catch (const UsageError& error) {
            return error.what();
        }
        return "no error";
    };
    REQUIRE(words([] { preset_golfer("scratch-wmoan"); }).find("did you mean \"scratch-woman\"") !=
            std::string::npos);
    REQUIRE(words([] {
                preset_golfer("pro");
            }).find("tour, scratch-man, bogey-man, scratch-woman, bogey-woman") != std::string::npos);
    REQUIRE(words([] { preset_golfer("tour", {.name = "a\nb"}); }) ==
            "the golfer's name contains a control character");
    REQUIRE(words([] { typical_golfer(request(54.1)); }).find("handicap index 54.1 is out of range") == 0);
    REQUIRE(words([] { typical_golfer(request(-10.1)); }).find("out of range") != std::string::npos);
    REQUIRE(words([] { typical_golfer(request(10, 79)); }).find("drive") != std::string::npos);
    REQUIRE(words([] { typical_golfer(request(10, 381)); }).find("between 80 and 380") != std::string::npos);
    REQUIRE(words([&] { typical_golfer(request(nan)); }).find("out of range") != std::string::npos);
    REQUIRE(words([&] { typical_golfer(request(10, nan)); }).find("out of range") != std::string::npos);
}
