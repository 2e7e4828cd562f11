#include "planner/reports/build_document.hpp"

#include <fmt/format.h>

#include <cmath>

#include "geometry/units.hpp"
#include "planner/reports/build_figures.hpp"
#include "planner/reports/build_words.hpp"
#include "planner/reports/display_length.hpp"
#include "planner/reports/rounded.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

constexpr auto left = TextTable::Align::left;
constexpr auto right = TextTable::Align::right;

std::string title(const BuildView& view) {
    std::string words = fmt::format("Build of a club: {}", name_text(view.club));
    if (view.length_m) words += fmt::format(", {}", inches_text(*view.length_m));
    if (view.wishes.length_m) words += fmt::format(" to {}", inches_text(*view.wishes.length_m));
    return words;
}

std::string grams(double kg) {
    return fmt::format("{:.1f}", shown_grams(kg));
}

std::string inches(double m) {
    return fmt::format("{:.2f}", shown_inches(m));
}

std::string inertia(double kg_m2) {
    return fmt::format("{:.0f}", shown_inertia(kg_m2));
}

DocumentPart weighed_part(const ClubWeights& weights) {
    return {"Weight and balance",
            {DocumentTable{{{"", left}, {"as weighed", right}},
                           {{"total, g", grams(weights.total_kg)},
                            {"balance point from the butt, in", inches(weights.balance_m)},
                            {"swing weight", swing_weight_words(weights.swing_weight)}},
                           "build"}}};
}

// One column a state of the club.
void add_state(DocumentTable& table, std::string heading, const ClubParts& parts) {
    table.columns.push_back({std::move(heading), right});
    const ClubWeights weights = weights_of(parts);
    const std::vector<std::string> cells{inches(parts.length_m),
                                         grams(parts.head_kg),
                                         grams(parts.shaft_kg),
                                         grams(parts.grip_kg),
                                         grams(weights.total_kg),
                                         inches(weights.balance_m),
                                         swing_weight_words(weights.swing_weight),
                                         inertia(inertia_about_butt(parts))};
    for (std::size_t i = 0; i < table.rows.size(); ++i)
        table.rows[i].push_back(cells.at(i));
}

DocumentTable parts_table(const BuildView& view) {
    DocumentTable table{{{"", left}},
                        {{"length, in"},
                         {"head, g"},
                         {"shaft, g"},
                         {"grip, g"},
                         {"total, g"},
                         {"balance point from the butt, in"},
                         {"swing weight"},
                         {"moment of inertia, kg cm2"}},
                        "build"};
    const BuildChange& change = *view.parts;
    add_state(table, "as it is", change.before);
    if (view.wishes.changes_parts()) add_state(table, "changed", change.after);
    if (change.restored)
        add_state(table, fmt::format("head for {}", swing_weight_words(change.target)), *change.restored);
    if (change.restored_inertia)
        add_state(table, fmt::format("head for {}", inertia(change.target_inertia_kg_m2)),
                  *change.restored_inertia);
    return table;
}

std::string points_words(const BuildView& view) {
    const BuildChange& change = *view.parts;
    const double points = shown_points_more(change.before, change.after);
    std::string words = points == 0.0 ? "Swing weight stays as it is"
                                      : fmt::format("Swing weight {} by {:.1f} points",
                                                    points < 0.0 ? "falls" : "rises", std::abs(points));
    if (change.thumb_points)
        words +=
            fmt::format("; the trade's rule of thumb makes it {:+.1f}", rounded(*change.thumb_points, 1));
    const double more = shown_inertia_more(change.before, change.after);
    words += more == 0.0
                 ? ". The moment of inertia about the butt stays as it is"
                 : fmt::format(
                       ". The moment of inertia about the butt {} by {:.0f} kg cm2: the club "
                       "is {} to swing",
                       more < 0.0 ? "falls" : "rises", std::abs(more), more < 0.0 ? "easier" : "harder");
    return words + ".";
}

bool is_swung(const BuildView& view) {
    return view.kind != ClubKind::putter;
}

// Of one of the heads that are looked for: what it must weigh, and what it may do to club speed.
std::string head_words(const std::string& target, const BuildChange& change,
                       const std::optional<ClubParts>& found, const std::optional<HeadChange>& head,
                       bool say_how, bool swung) {
    if (!found) return fmt::format("No head of a weight that is built gives {} with these parts.", target);
    const double more = shown_grams_more(change.after, *found);
    if (more == 0.0) return fmt::format("The head as it is makes {}.", target);
    const char* how = more > 0.0 ? "a heavier weight where the head has one, or weight added"
                                 : "a lighter weight where the head has one, or another head";
    std::string words =
        fmt::format("For {} the head must weigh {} g, {:.1f} g {}{}{}.", target, grams(found->head_kg),
                    std::abs(more), more > 0.0 ? "more" : "less", say_how ? ": " : "", say_how ? how : "");
    if (!head || !swung) return words;
    if (head->club_speed_mps) {
        const ShownRange speed =
            shown_range(*head->club_speed_mps, {}, metres_per_second_per_mph, speed_decimals);
        words += fmt::format(" That alone may change club speed by {} mph (assumed).",
                             change_words(speed.change, speed_decimals));
    } else if (head) {
        words +=
            " So much is beyond what is assumed of head weight and club speed: of speed nothing is told.";
    }
    return words;
}

std::string matching_words(const BuildChange& change) {
    const double off = shown_inertia_more(change.before, *change.restored);
    if (off == 0.0) return {};
    return fmt::format(
        "One head cannot restore both: with the swing weight restored the moment of inertia is {:.0f} kg cm2 "
        "{} than as it is. Clubs matched by it are kept within about 10 (common practice).",
        std::abs(off), off < 0.0 ? "lower" : "higher");
}

std::string head_place(double from_end_m) {
    const double shown = shown_inches(from_end_m);
    if (shown == 0.0) return "at the club's end";
    return fmt::format("{:.2f} in {} the club's end", std::abs(shown), shown > 0.0 ? "short of" : "beyond");
}

std::string basis_words(const BuildView& view) {
    const ClubParts& before = view.parts->before;
    return fmt::format(
        "By moments about the butt: the head balances {} ({}), the shaft at {:.0f} % of its length from the "
        "butt, the grip {:.1f} in from the butt. The head counts as a point; its own inertia, some 5 to 8 kg "
        "cm2 of a driver (assumed), is the same in every column and left out.",
        head_place(before.head_centre_from_end_m),
        view.head_centre_measured ? "from the club's own balance" : "assumed for its kind",
        100.0 * before.shaft_balance_share, before.grip_balance_m / metres_per_inch);
}

bool looks_for_inertia(const BuildWishes& wishes) {
    return !wishes.head_kg && (wishes.changes_parts() || wishes.inertia_kg_m2);
}

bool looks_for_swing_weight(const BuildWishes& wishes) {
    return !wishes.head_kg && (wishes.changes_parts() || wishes.swing_weight);
}

DocumentPart parts_part(const BuildView& view, std::string picture) {
    const BuildChange& change = *view.parts;
    DocumentPart part{"Weight, balance and inertia",
                      {DocumentPicture{std::move(picture)}, parts_table(view)}};
    const auto say = [&](std::string words) {
        if (!words.empty()) part.blocks.emplace_back(DocumentParagraph{std::move(words)});
    };
    if (view.wishes.changes_parts()) say(points_words(view));
    if (looks_for_swing_weight(view.wishes))
        say(head_words(swing_weight_words(change.target), change, change.restored, view.restored_head, true,
                       is_swung(view)));
    if (looks_for_inertia(view.wishes))
        say(head_words(fmt::format("{} kg cm2", inertia(change.target_inertia_kg_m2)), change,
                       change.restored_inertia, view.restored_inertia_head, !change.restored,
                       is_swung(view)));
    if (change.restored && change.restored_inertia && !view.wishes.inertia_kg_m2) say(matching_words(change));
    if (view.wishes.length_m && view.wishes.cut_end == CutEnd::tip)
        say("Cut at the tip: the shaft plays stiffer, which no figure here shows.");
    say(basis_words(view));
    return part;
}

DocumentPart head_part(const BuildView& view) {
    const HeadChange& head = *view.head_step;
    DocumentTable table{
        {{fmt::format("{:.0f} g more on the head", head.more_kg / kilograms_per_gram), left},
         {"changes by", right}},
        {{"swing weight, points", fmt::format("{:+.1f}", rounded(head.points, 1))},
         {"moment of inertia, kg cm2", fmt::format("{:+.0f}", shown_inertia(head.inertia_kg_m2))}},
        "build"};
    std::string words = view.wishes.changes_parts() ? "Of the changed club. " : "";
    words += "Swing weight and inertia by moments: the trade reckons with about a point for 2 g.";
    if (is_swung(view)) {
        if (head.club_speed_mps) {
            const ShownRange speed =
                shown_range(*head.club_speed_mps, {}, metres_per_second_per_mph, speed_decimals);
            table.rows.push_back({"club speed, mph", change_words(speed.change, speed_decimals)});
        }
        table.rows.push_back({"ball speed at the same club speed, %",
                              fmt::format("{:+.1f}", rounded(100.0 * head.ball_speed_share, 1))});
        words +=
            " Club speed is assumed, as a range that holds no change; ball speed by the balance of momentum, "
            "struck in the middle. What is won by a head's weight and what its swing costs are of one size: "
            "a trial decides.";
    }
    return {"What head weight does", {std::move(table), DocumentParagraph{std::move(words)}}};
}

std::string silence_words(const BuildView& view) {
    if (*view.silence == LengthSilence::change_too_large)
        return fmt::format(
            "Rules of thumb on length say nothing of so large a change: they are meant for about {}. Of "
            "speed "
            "and carry nothing is told; only a trial with both clubs can.",
            inches_text(view.length_reach_m));
    const Range built = built_lengths(view.kind);
    return fmt::format(
        "Rules of thumb on length say nothing here: a {} is built to {} to {}. Of speed and carry nothing is "
        "told.",
        club_kind_name(view.kind), inches_text(built.low), inches_text(built.high));
}

std::vector<std::string> flight_row(const std::string& what, double unit, int decimals, Range change,
                                    const std::optional<double>& now) {
    const ShownRange shown = shown_range(change, now, unit, decimals);
    return {what, change_words(shown.change, decimals),
            shown.now ? fmt::format("{:.{}f}", *shown.now, decimals) : "-",
            shown.then
                ? fmt::format("{:.{}f} to {:.{}f}", shown.then->low, decimals, shown.then->high, decimals)
                : "-"};
}

DocumentTable flight_table(const BuildView& view) {
    const LengthChange& flight = *view.flight;
    const double change_m = flight.to_m - flight.from_m;
    const double mph = metres_per_second_per_mph;
    return {
        {{fmt::format("{} {}", inches_text(std::abs(change_m)), change_m < 0.0 ? "less" : "more"), left},
         {"may change by", right},
         {"as it is", right},
         {"then", right}},
        {flight_row("club speed, mph", mph, speed_decimals, flight.club_speed_mps, view.known.club_speed_mps),
         flight_row("ball speed, mph", mph, speed_decimals, flight.ball_speed_mps, view.known.ball_speed_mps),
         flight_row(fmt::format("carry, {}", display_unit(view.units)), metres_of_display(1.0, view.units),
                    carry_decimals, flight.carry_m, view.known.carry_m)},
        "build"};
}

DocumentPart flight_part(const BuildView& view) {
    DocumentPart part{"Speed and carry", {}};
    if (!view.flight) {
        part.blocks.emplace_back(DocumentParagraph{silence_words(view)});
        return part;
    }
    const LengthChange& flight = *view.flight;
    const std::string smash =
        flight.own_smash ? fmt::format("{:.2f} (the golfer's own)", flight.smash.high)
                         : fmt::format("{:.2f} to {:.2f} (assumed)", flight.smash.low, flight.smash.high);
    std::string words = fmt::format("Ball speed over club speed: {}. ", smash);
    words += flight.to_m > flight.from_m
                 ? "No gain at all, or a loss, is possible: a longer club finds the middle of the face less "
                   "often."
                 : "No loss at all, or a gain, is possible: a shorter club finds the middle of the face more "
                   "often.";
    for (const std::string& sentence : trial_words())
        words += " " + sentence;
    if (!view.parts)
        words += " What becomes of the swing weight can be told when the weights of the parts are known.";
    part.blocks = {flight_table(view), DocumentParagraph{words}};
    return part;
}

std::string flat_words(double upright_deg) {
    return upright_deg == 0.0
               ? "flat on the ground"
               : fmt::format("{:.1f} {}", std::abs(upright_deg), upright_deg > 0.0 ? "upright" : "flat");
}

DocumentTable lie_table(const BuildView& view) {
    const LieChange& lie = *view.lie;
    DocumentTable table{{{"lie, degrees", left}, {"", right}, {"by", left}}, {}, "build"};
    const double built = shown_degrees(lie.as_built_rad);
    table.rows.push_back({"as built", fmt::format("{:.1f}", built), ""});
    if (lie.flat_sole_rad) {
        const double flat = shown_degrees(*lie.flat_sole_rad);
        table.rows.push_back(
            {fmt::format("for a flat sole at {}, hands as high", inches_text(*view.wishes.length_m)),
             fmt::format("{:.1f}", flat), "geometry"});
        table.rows.push_back({"left as built it plays", flat_words(rounded(built - flat, 1)), "geometry"});
    }
    if (lie.practice_rad) {
        const Range shown = shown_range(*lie.practice_rad, {}, radians_per_degree, 1).change;
        const bool upright = shown.high > 0.0;
        const double a = std::abs(upright ? shown.low : shown.high);
        const double b = std::abs(upright ? shown.high : shown.low);
        table.rows.push_back({"left as built it plays",
                              fmt::format("{:.1f} to {:.1f} {}", a, b, upright ? "upright" : "flat"),
                              "common practice"});
    }
    if (lie.face_off_line_rad) {
        const double off = shown_degrees(*lie.face_off_line_rad);
        table.rows.push_back({"the tipped face points",
                              off == 0.0 ? std::string("on the line")
                                         : fmt::format("{:.1f} {}", std::abs(off),
                                                       off > 0.0 ? "to the golfer's side" : "away from it"),
                              "geometry"});
    }
    return table;
}

DocumentPart lie_part(const BuildView& view) {
    DocumentPart part{"Lie and loft", {}};
    if (view.lie) {
        part.blocks.emplace_back(lie_table(view));
        part.blocks.emplace_back(DocumentParagraph{
            "Geometry holds the hands as high as they were. The golfer's side of the line is a "
            "right-hander's "
            "left. A head that has the new lie, or is bent to it where it can be, lies flat again."});
    } else {
        part.blocks.emplace_back(DocumentParagraph{fmt::format(
            "Lie moves with length: half an inch {} about a degree {} with the hands as high (common "
            "practice); --lie works it out for this club.",
            *view.wishes.length_m < *view.length_m ? "less plays" : "more plays",
            *view.wishes.length_m < *view.length_m ? "flatter" : "more upright")});
    }
    part.blocks.emplace_back(
        DocumentParagraph{"The loft of the head stays: nothing is ground or bent. How much of it reaches the "
                          "ball moves with the "
                          "swing, by less than a degree (assumed), and no figure here tells it."});
    return part;
}

DocumentPart length_part(const BuildView& view) {
    DocumentPart part{"Length", {}};
    for (const LengthVerdict verdict : view.verdicts)
        part.blocks.emplace_back(DocumentParagraph{
            length_verdict_words(verdict, view.wishes.length_m.value_or(view.length_m.value_or(0.0)))});
    part.blocks.emplace_back(DocumentParagraph{std::string(length_rules_words())});
    return part;
}

}  // namespace

Document build_document(const BuildView& view, std::string picture) {
    Document document{.title = title(view)};
    if (view.weighed) document.parts.push_back(weighed_part(*view.weighed));
    if (view.parts) document.parts.push_back(parts_part(view, std::move(picture)));
    if (view.head_step) document.parts.push_back(head_part(view));
    if (view.flight || view.silence) document.parts.push_back(flight_part(view));
    if (view.lie || (view.wishes.length_m && is_swung(view))) document.parts.push_back(lie_part(view));
    if (view.length_m) document.parts.push_back(length_part(view));
    document.parts.push_back({"Before work begins", {DocumentList{build_cautions(), "! "}}});
    return document;
}

std::string build_text(const BuildView& view) {
    return document_text(build_document(view));
}

}  // namespace landwidth
