#include <fmt/format.h>

#include <algorithm>
#include <filesystem>

#include "planner/reports/display_length.hpp"
#include "planner/reports/evidence_figures.hpp"
#include "planner/reports/learn_reports.hpp"
#include "planner/reports/learn_words.hpp"
#include "planner/reports/words.hpp"

namespace landwidth {
namespace {

using enum TextTable::Align;

constexpr std::string_view css_class = "learnt";
constexpr std::string_view list_mark = "  ";

DocumentTable table(std::vector<TextTable::Column> columns) {
    return {std::move(columns), {}, std::string(css_class)};
}

std::string cell(const LearntClub& club) {
    return name_text(club.club.name, 32);
}

DocumentPart club_part(const LearnView& view) {
    DocumentTable clubs = table({{"club", left, true},
                                 {"shots"},
                                 {"mishits"},
                                 {"carry"},
                                 {"run"},
                                 {"side"},
                                 {"carry sd"},
                                 {"side sd"},
                                 {"mishit share"},
                                 {"from shots"}});
    for (const LearntClub& club : view.learnt.clubs) {
        const ShotPattern& pattern = *club.club.pattern;
        const Spread& usual = pattern.usual;
        clubs.rows.push_back(
            {cell(club), fmt::format("{}", pattern.shots), fmt::format("{}", mishits_among(club.evidence)),
             length_number(usual.centre.carry_m, view.units), length_number(pattern.run_m, view.units),
             side_number(usual.centre.side_m, view.units), spread_number(usual.carry_sd_m, view.units),
             spread_number(usual.side_sd_m, view.units),
             share_text(pattern.mishit ? pattern.mishit->share : 0.0), share_text(club.recorded_share)});
    }
    return {"Club by club",
            {std::move(clubs),
             DocumentParagraph{fmt::format(
                 "Lengths in {}, of the usual shot; R and L are right and left of the aim line. Mishits: "
                 "recorded shots taken for one. From shots: how much of the spread comes from the club's own "
                 "recorded shots; the rest comes from the golfer's other clubs and from the level.",
                 view.units == DisplayUnits::yards ? "yards" : "metres")}}};
}

// The recorded numbers themselves.
DocumentPart raw_part(const LearnView& view) {
    DocumentTable raw = table({{"club", left, true},
                               {"n"},
                               {"carry mean"},
                               {"sd"},
                               {"median"},
                               {"90 % between"},
                               {"side mean"},
                               {"sd"},
                               {"median"},
                               {"90 % between"}});
    for (const LearntClub& club : view.learnt.clubs) {
        const RawShots& shots = club.evidence.raw;
        if (shots.shots == 0) continue;
        const auto& [count, carry, side] = shots;
        raw.rows.push_back({cell(club), fmt::format("{}", count), length_number(carry.mean, view.units),
                            spread_number(shots, carry, view.units), length_number(carry.median, view.units),
                            length_range(carry.low, carry.high, view.units),
                            side_number(side.mean, view.units), spread_number(shots, side, view.units),
                            side_number(side.median, view.units),
                            side_range(side.low, side.high, view.units)});
    }
    return {"The recorded shots by themselves, mishits among them", {std::move(raw)}};
}

// How far the evidence leaves the model's numbers open.
DocumentPart open_part(const LearnView& view) {
    DocumentTable open =
        table({{"club", left, true}, {"carry"}, {"side"}, {"carry sd"}, {"side sd"}, {"mishit share"}});
    for (const LearntClub& club : view.learnt.clubs) {
        const OpenPattern& of = club.evidence.open;
        open.rows.push_back(
            {cell(club), length_range(of.carry.low, of.carry.high, view.units),
             side_range(of.side.low, of.side.high, view.units), spread_range(of.carry_sd, view.units),
             spread_range(of.side_sd, view.units),
             fmt::format("{} to {}", share_text(of.mishit_share.low), share_text(of.mishit_share.high))});
    }
    return {"What is made of them: 90 % of what the shots of all clubs leave possible lies between",
            {std::move(open)}};
}

DocumentPart why_part(const LearnView& view) {
    return {"Why the two differ",
            {DocumentParagraph{
                 "A golfer is one person: few shots of a club lean on the golfer's other clubs and, where "
                 "those are few too, on the level; mishits stand apart from the usual shot; and shots far "
                 "out weigh "
                 "less than those near the middle."},
             DocumentList{why_differs_words(view), std::string(list_mark)}}};
}

std::string subtitle(const LearnView& view) {
    const Golfer& golfer = view.learnt.golfer;
    std::string files;
    for (const NamedLog& log : view.logs)
        files += (files.empty() ? "" : ", ") + name_text(std::filesystem::path(log.file).filename().string());
    return fmt::format("{}, from the shots of {}.",
                       golfer.handicap_known ? fmt::format("Handicap index {:g}", golfer.handicap_index)
                                             : fmt::format("Handicap not known, taken for {:g} by length",
                                                           golfer.handicap_index),
                       files);
}

void add_list(Document& document, std::string heading, std::vector<std::string> sentences) {
    if (sentences.empty()) return;
    document.parts.push_back(
        {std::move(heading), {DocumentList{std::move(sentences), std::string(list_mark)}}});
}

// The name of a file is written as it is.
bool begins_with_a_file(const std::string& sentence, const LearnView& view) {
    return std::ranges::any_of(view.logs,
                               [&](const NamedLog& log) { return sentence.starts_with(log.file); });
}

}  // namespace

Document learn_document(const LearnView& view, std::string picture) {
    Document document{.title = fmt::format("What the shots say: {}", name_text(view.learnt.golfer.name, 80)),
                      .subtitle = subtitle(view)};
    document.parts = {club_part(view), raw_part(view), open_part(view), why_part(view)};
    if (!picture.empty())
        document.parts.push_back({"The shots behind the patterns", {DocumentPicture{std::move(picture)}}});
    add_list(document, "Known before any shot", prior_words(view));
    add_list(document,
             "Shots that go two ways: one usual shot does not describe them, and plans take them as two",
             shape_words(view));
    add_list(document, "Where on the face", strike_words(view));
    std::vector<std::string> mishits = mishit_words(view);
    if (mishits.empty())
        document.parts.push_back({"No shot was taken for a mishit.", {}});
    else
        add_list(document, "Taken for a mishit", std::move(mishits));
    if (view.stands_alone) {
        std::vector<std::string> sentences;
        for (const std::string& warning : view.warnings)
            sentences.push_back((begins_with_a_file(warning, view) ? warning : capitalised(warning)) +
                                (warning.ends_with('?') ? "" : "."));
        std::ranges::copy(cautions_of_any_shot(), std::back_inserter(sentences));
        document.parts.push_back({"Keep in mind", {DocumentList{std::move(sentences)}}});
    }
    return document;
}

std::string learn_text(const LearnView& view) {
    return document_text(learn_document(view));
}

}  // namespace landwidth
