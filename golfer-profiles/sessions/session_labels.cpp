#include "golfer-profiles/sessions/session_labels.hpp"

#include <fmt/format.h>

#include <map>

#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/sessions/session_dates.hpp"

namespace landwidth {
namespace {

// Labels of the rows of one log; empty for a row that tells neither date nor session.
std::map<std::size_t, std::string> labels_of(const NamedLog& log, std::vector<std::string>& said) {
    DateReader dates;
    for (const LoggedShot& shot : log.log.shots)
        dates.note(shot.date);
    std::map<std::size_t, std::string> labels;
    const LoggedShot* unread = nullptr;
    std::size_t unread_count = 0;
    for (const LoggedShot& shot : log.log.shots) {
        const auto date = dates.date_of(shot.date);
        if (!shot.date.empty() && !date) {
            if (unread == nullptr) unread = &shot;
            ++unread_count;
        }
        std::string label = date ? iso_date(*date) : shot.date;
        if (!shot.session.empty()) label += (label.empty() ? "" : ", ") + shot.session;
        labels.emplace(shot.row, std::move(label));
    }
    if (unread != nullptr) {
        said.push_back(fmt::format(
            "{}: {} date{} cannot be read with certainty, the first in row {}: {}; such shots count as new. "
            "Write 2026-05-02",
            log.file, unread_count, unread_count == 1 ? "" : "s", unread->row, in_quotes(unread->date)));
    }
    return labels;
}

}  // namespace

void label_sessions(LoggedClubs& clubs, const std::vector<NamedLog>& logs, std::vector<std::string>& said) {
    std::vector<std::map<std::size_t, std::string>> labels;
    for (const NamedLog& log : logs)
        labels.push_back(labels_of(log, said));
    clubs.sessions.clear();
    std::map<std::string, std::size_t> known;
    for (LoggedClub& club : clubs.clubs) {
        for (LandedShot& shot : club.shots) {
            const std::string& label = labels.at(shot.log).at(shot.row);
            shot.session.reset();
            if (label.empty()) continue;
            const auto [place, is_new] = known.emplace(label, clubs.sessions.size());
            if (is_new) clubs.sessions.push_back({.label = label});
            shot.session = place->second;
        }
    }
}

}  // namespace landwidth
