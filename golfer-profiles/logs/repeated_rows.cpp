#include "golfer-profiles/logs/repeated_rows.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <optional>
#include <unordered_map>
#include <unordered_set>

#include "golfer-profiles/club_names.hpp"
#include "golfer-profiles/logs/honest_chance.hpp"
#include "golfer-profiles/logs/other_rows.hpp"

namespace landwidth {
namespace {

constexpr double surprising = 0.02;             // expected by chance, in all
constexpr std::size_t few_rows = 3;             // different ones that make a run
constexpr int many_quantities = 4;              // that make a row a run
constexpr std::size_t furthest_look = 64;       // rows of a run until it must have surprised
constexpr std::size_t most_earlier_looked = 8;  // of the places where a row stood before
constexpr double more_than_honest = 10.0;

// A row of any log.
struct Row {
    std::size_t log, index;  // of the log's shots
    std::size_t club;        // numbered over all logs
    std::size_t text;        // the same number: alike in everything
    double chance;           // that an honest one is alike
    int quantities;
};

// Numbers texts in the order in which they first come.
class Numbering {
  public:
    std::size_t of(const std::string& text) { return numbers_.emplace(text, numbers_.size()).first->second; }

  private:
    std::unordered_map<std::string, std::size_t> numbers_;
};

std::string text_of(const LoggedShot& shot, std::size_t club_and_build) {
    constexpr double steps_a_unit = 1e6;
    std::string text =
        fmt::format("{}\n{}\n{}\n{}\n{}", club_and_build, shot.date, shot.session, shot.note, shot.lost);
    const auto add = [&](const std::optional<double>& value) {
        if (value)
            fmt::format_to(std::back_inserter(text), "\n{}", std::llround(*value * steps_a_unit));
        else
            text += "\n-";
    };
    for (const auto& value :
         {shot.carry_m, shot.total_m, std::optional(shot.side_m), shot.ball_speed_mps, shot.club_speed_mps,
          shot.launch_rad, shot.spin_rad_per_s, shot.peak_m, shot.strike_toe_m, shot.strike_up_m})
        add(value);
    const SessionConditions& said = shot.conditions;
    const auto wind = [&](double ShotWind::*part) {
        return said.wind ? std::optional((*said.wind).*part) : std::nullopt;
    };
    for (const auto& value : {said.weather.temperature_k, said.weather.altitude_m, said.weather.pressure_pa,
                              wind(&ShotWind::speed_mps), wind(&ShotWind::from_rad)})
        add(value);
    const auto number = [](const auto& word) { return word ? static_cast<int>(*word) : -1; };
    text += fmt::format("\n{} {} {} {}", number(said.ball), number(said.surface), number(said.indoors),
                        number(said.air));
    return text;
}

std::vector<Row> rows_of(const std::vector<NamedLog>& logs) {
    Numbering clubs, clubs_and_builds, texts;
    std::unordered_map<std::string, std::pair<std::size_t, std::size_t>> known;  // by spelling
    std::vector<Row> rows;
    for (std::size_t log = 0; log < logs.size(); ++log) {
        const std::vector<LoggedShot>& shots = logs[log].log.shots;
        std::vector<std::size_t> club_of;
        const std::size_t first = rows.size();
        for (std::size_t i = 0; i < shots.size(); ++i) {
            const LoggedShot& shot = shots[i];
            const std::string spelling = shot.club + '\n' + shot.build;
            auto named = known.find(spelling);
            if (named == known.end()) {
                const std::string club = club_key(shot.club);
                const std::size_t both = clubs_and_builds.of(club + '\n' + build_key(shot.club, shot.build));
                named = known.emplace(spelling, std::pair(clubs.of(club), both)).first;
            }
            const auto [club, both] = named->second;
            club_of.push_back(club);
            rows.push_back({log, i, club, texts.of(text_of(shot, both)), 1.0, quantities_in(shot)});
        }
        const std::vector<double> chances = honest_chances(shots, club_of);
        for (std::size_t i = 0; i < shots.size(); ++i)
            rows[first + i].chance = chances[i];
    }
    return rows;
}

class Search {
  public:
    explicit Search(std::vector<Row> rows) : rows_(std::move(rows)), kind_(rows_.size(), Kind::own) {
        for (const Row& row : rows_) {
            if (row.club >= of_club_.size()) of_club_.resize(row.club + 1);
            of_club_[row.club] += 1.0;
            if (row.text >= places_.size()) places_.resize(row.text + 1);
        }
    }

    void mark_runs() {
        for (std::size_t at = 0; at < rows_.size();) {
            const Run run = run_at(at);
            const std::size_t end = at + std::max(run.size, std::size_t{1});
            for (; at < end; ++at) {
                places_[rows_[at].text].push_back(at);
                if (run.size > 0) kind_[at] = run.log == rows_[at].log ? Kind::in_its_log : Kind::across_logs;
            }
        }
    }

    // Takes marks back in the logs that mostly repeat themselves; which those are.
    std::vector<std::size_t> unmark_periodic(std::size_t logs) {
        std::vector<std::size_t> sizes(logs), repeated(logs), periodic;
        for (std::size_t i = 0; i < rows_.size(); ++i) {
            ++sizes[rows_[i].log];
            repeated[rows_[i].log] += kind_[i] == Kind::in_its_log ? 1 : 0;
        }
        for (std::size_t log = 0; log < logs; ++log)
            if (2 * repeated[log] > sizes[log]) periodic.push_back(log);
        for (std::size_t i = 0; i < rows_.size(); ++i) {
            if (2 * repeated[rows_[i].log] > sizes[rows_[i].log] && kind_[i] == Kind::in_its_log)
                kind_[i] = Kind::own;
        }
        return periodic;
    }

    // Rows of two files in another order.
    void mark_overlap(std::size_t log_a, std::size_t log_b) {
        std::unordered_map<std::size_t, std::size_t> left;
        std::unordered_map<std::size_t, double> of_club;
        double size_a = 0.0, size_b = 0.0, honest = 0.0;
        for (const Row& row : rows_) {
            if (row.log != log_a) continue;
            ++left[row.text];
            of_club[row.club] += 1.0;
            size_a += 1.0;
        }
        std::vector<std::size_t> alike;
        for (std::size_t i = 0; i < rows_.size(); ++i) {
            const Row& row = rows_[i];
            if (row.log != log_b) continue;
            size_b += 1.0;
            honest += std::min(1.0, of_club[row.club] * row.chance);
            const auto same = left.find(row.text);
            if (same == left.end() || same->second == 0) continue;
            --same->second;
            alike.push_back(i);
        }
        const double count = static_cast<double>(alike.size());
        if (alike.size() < few_rows || count < 0.5 * std::min(size_a, size_b) ||
            count < more_than_honest * honest)
            return;
        for (const std::size_t i : alike)
            kind_[i] = Kind::across_logs;
    }

    const std::vector<Row>& rows() const { return rows_; }
    bool repeats(std::size_t row) const { return kind_[row] != Kind::own; }
    bool repeats_another_log(std::size_t row) const { return kind_[row] == Kind::across_logs; }

  private:
    // How many rows repeat earlier ones, and from which log; 0 when none does beyond chance.
    struct Run {
        std::size_t size = 0, log = 0;
    };

    Run run_at(std::size_t at) const {
        const std::vector<std::size_t>& earlier = places_[rows_[at].text];
        const std::size_t looked = std::min(earlier.size(), most_earlier_looked);
        Run longest;
        for (std::size_t i = 0; i < looked; ++i) {
            const std::size_t from = earlier[earlier.size() - 1 - i];
            const std::size_t size = run_from(from, at);
            if (size > longest.size) longest = {size, rows_[from].log};
        }
        return longest;
    }

    std::size_t run_from(std::size_t from, std::size_t at) const {
        std::unordered_set<std::size_t> different;
        const double club_rows = of_club_[rows_[at].club];
        double expected = 0.5 * club_rows * club_rows;
        bool many = true, surprised = false;
        std::size_t size = 0;
        while (at + size < rows_.size() && from + size < at) {
            const Row& row = rows_[at + size];
            const Row& before = rows_[from + size];
            if (row.text != before.text || row.log != rows_[at].log || before.log != rows_[from].log) break;
            if (!surprised) {
                if (size == furthest_look) break;
                if (different.insert(row.text).second) expected *= row.chance;
                many = many && row.quantities >= many_quantities;
            }
            ++size;
            surprised = surprised || (expected < surprising && (many || different.size() >= few_rows));
        }
        return surprised ? size : 0;
    }

    std::vector<Row> rows_;
    enum class Kind : unsigned char { own, in_its_log, across_logs };
    std::vector<Kind> kind_;
    std::vector<double> of_club_;                   // how many rows
    std::vector<std::vector<std::size_t>> places_;  // of each text, where it stood so far
};

std::string warning_for(const NamedLog& log, const std::vector<bool>& repeats) {
    std::vector<std::size_t> rows;
    for (std::size_t i = 0; i < repeats.size(); ++i)
        if (repeats[i]) rows.push_back(log.log.shots[i].row);
    if (rows.empty()) return {};
    return fmt::format(
        "{}: {} of {} shots left out, {}: every number stood before, in this log or one given "
        "before it; each shot counts once",
        log.file, rows.size(), repeats.size(), row_words(rows));
}

}  // namespace

RepeatedRows repeated_rows(const std::vector<NamedLog>& logs) {
    Search search(rows_of(logs));
    search.mark_runs();
    const std::vector<std::size_t> periodic = search.unmark_periodic(logs.size());
    for (std::size_t b = 1; b < logs.size(); ++b)
        for (std::size_t a = 0; a < b; ++a)
            search.mark_overlap(a, b);
    RepeatedRows result;
    for (const NamedLog& log : logs)
        result.repeats.emplace_back(log.log.shots.size());
    for (std::size_t i = 0; i < search.rows().size(); ++i)
        result.repeats[search.rows()[i].log][search.rows()[i].index] = search.repeats(i);
    for (std::size_t log = 0; log < logs.size(); ++log)
        if (std::string said = warning_for(logs[log], result.repeats[log]); !said.empty())
            result.warnings.push_back(std::move(said));
    for (const std::size_t log : periodic) {
        result.warnings.push_back(
            fmt::format("{}: over half of the rows repeat rows of the same file, in blocks; "
                        "all of them count, which is right only if each is a shot",
                        logs[log].file));
    }
    return result;
}

std::vector<bool> repeated_from(const NamedLog& earlier, const NamedLog& log) {
    Search search(rows_of({earlier, log}));
    search.mark_runs();
    search.mark_overlap(0, 1);
    std::vector<bool> repeated(log.log.shots.size());
    for (std::size_t i = 0; i < search.rows().size(); ++i)
        if (search.rows()[i].log == 1) repeated[search.rows()[i].index] = search.repeats_another_log(i);
    return repeated;
}

}  // namespace landwidth
