#include "golfer-profiles/logs/log_columns.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <iterator>

#include "geometry/error.hpp"
#include "golfer-profiles/json_fields.hpp"
#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/nearest_word.hpp"
#include "golfer-profiles/profile.hpp"

namespace landwidth {
namespace {

struct FieldName {
    LogField field;
    std::string_view name;
    std::optional<Measure> measure = {};
};

constexpr std::array<FieldName, log_fields> fields{{
    {LogField::club, "club"},
    {LogField::build, "build"},
    {LogField::date, "date"},
    {LogField::note, "note"},
    {LogField::carry, "carry", Measure::length},
    {LogField::side, "side", Measure::length},
    {LogField::total, "total", Measure::length},
    {LogField::peak, "peak", Measure::length},
    {LogField::ball_speed, "ball_speed", Measure::speed},
    {LogField::club_speed, "club_speed", Measure::speed},
    {LogField::launch, "launch", Measure::angle},
    {LogField::spin, "spin", Measure::spin},
    {LogField::temperature, "temperature", Measure::temperature},
    {LogField::altitude, "altitude", Measure::length},
    {LogField::pressure, "pressure", Measure::pressure},
    {LogField::humidity, "humidity", Measure::share},
    {LogField::wind, "wind", Measure::speed},
    {LogField::wind_from, "wind_from", Measure::angle},
    {LogField::ball, "ball"},
    {LogField::surface, "surface"},
    {LogField::indoors, "indoors"},
    {LogField::air, "air"},
    {LogField::start_lon, "start_lon"},
    {LogField::start_lat, "start_lat"},
    {LogField::finish_lon, "finish_lon"},
    {LogField::finish_lat, "finish_lat"},
    {LogField::target_lon, "target_lon"},
    {LogField::target_lat, "target_lat"},
}};

// A column of the format: carry_yd, carry_m, club, ...
struct KnownColumn {
    std::string name;
    LogField field;
    std::optional<LogUnit> unit;
};

const std::vector<KnownColumn>& known_columns() {
    static const std::vector<KnownColumn> known = [] {
        std::vector<KnownColumn> all;
        for (const FieldName& field : fields) {
            if (!field.measure) all.push_back({std::string(field.name), field.field, std::nullopt});
            for (const LogUnit& unit : log_units()) {
                if (field.measure != unit.measure) continue;
                all.push_back({fmt::format("{}_{}", field.name, unit.suffix), field.field, unit});
            }
        }
        return all;
    }();
    return known;
}

const KnownColumn* known_column(std::string_view name) {
    const auto found = std::find_if(known_columns().begin(), known_columns().end(),
                                    [&](const KnownColumn& k) { return k.name == name; });
    return found == known_columns().end() ? nullptr : &*found;
}

// "Ball Speed (mph)" as the format would write it.
std::string plain_heading(std::string_view heading) {
    std::string plain;
    for (const char c : in_small_letters(trimmed(heading))) {
        if (c == ')' || c == ']' || c == '/') continue;
        const bool gap = c == ' ' || c == '-' || c == '_' || c == '(' || c == '[';
        if (gap && (plain.empty() || plain.back() == '_')) continue;
        plain += gap ? '_' : c;
    }
    return plain.ends_with("_ms") ? plain.substr(0, plain.size() - 3) + "_mps" : plain;
}

template <typename Names>
std::string nearest_hint(std::string_view word, const Names& names) {
    const std::vector<std::string_view> views(names.begin(), names.end());
    const auto nearest = nearest_word(word, views);
    return nearest ? fmt::format("did you mean {}? ", in_quotes(*nearest)) : std::string();
}

std::string quoted_list(const std::vector<std::string>& words) {
    std::vector<std::string> quoted;
    std::transform(words.begin(), words.end(), std::back_inserter(quoted),
                   [](const std::string& w) { return in_quotes(w); });
    return fmt::format("{}", fmt::join(quoted, ", "));
}

std::vector<std::string> headings_of(const CsvRow& header) {
    std::vector<std::string> headings;
    for (std::size_t i = 0; i < header.cells.size(); ++i) {
        const std::string_view heading = trimmed(header.cells[i]);
        headings.push_back(heading.empty() ? fmt::format("column {}", i + 1) : std::string(heading));
    }
    return headings;
}

// What each column of the file is, by the mapping first and by its own heading otherwise.
std::vector<const KnownColumn*> meanings(const std::vector<std::string>& headings,
                                         const std::vector<ColumnName>& mapping, const std::string& place) {
    std::vector<const KnownColumn*> meaning;
    std::transform(headings.begin(), headings.end(), std::back_inserter(meaning),
                   [](const std::string& h) { return known_column(plain_heading(h)); });
    for (const ColumnName& pair : mapping) {
        const auto found = std::find_if(headings.begin(), headings.end(),
                                        [&](const std::string& h) { return same_name(h, pair.theirs); });
        if (found == headings.end()) {
            throw InputError(
                place, fmt::format("no column {} for {}; {}the columns are {}", in_quotes(pair.theirs),
                                   pair.ours, nearest_hint(pair.theirs, headings), quoted_list(headings)));
        }
        meaning[static_cast<std::size_t>(found - headings.begin())] = known_column(pair.ours);
    }
    return meaning;
}

bool is_empty_column(const std::vector<CsvRow>& rows, std::size_t index) {
    return std::all_of(rows.begin() + 1, rows.end(), [&](const CsvRow& row) {
        return index >= row.cells.size() || trimmed(row.cells[index]).empty();
    });
}

}  // namespace

std::optional<Measure> measure_of(LogField field) {
    return fields[static_cast<std::size_t>(field)].measure;
}

bool is_position(LogField field) {
    return field >= LogField::start_lon;
}

void check_mapping(const std::vector<ColumnName>& mapping) {
    for (std::size_t i = 0; i < mapping.size(); ++i) {
        const ColumnName& pair = mapping[i];
        if (known_column(pair.ours) == nullptr) {
            std::vector<std::string> names;
            std::transform(known_columns().begin(), known_columns().end(), std::back_inserter(names),
                           [](const KnownColumn& k) { return k.name; });
            throw UsageError(fmt::format("--column {}: there is no such column; {}they are {}", pair.ours,
                                         nearest_hint(pair.ours, names), fmt::join(names, ", ")));
        }
        for (std::size_t j = 0; j < i; ++j) {
            if (mapping[j].ours == pair.ours || same_name(mapping[j].theirs, pair.theirs)) {
                throw UsageError(fmt::format("--column {}={}: named twice", pair.ours, pair.theirs));
            }
        }
    }
}

LogColumns::LogColumns(const std::vector<CsvRow>& rows, const std::vector<ColumnName>& mapping,
                       const std::string& file) {
    check_mapping(mapping);
    const std::string place = fmt::format("{}: row {}", file, rows.front().row);
    const std::vector<std::string> headings = headings_of(rows.front());
    for (std::size_t i = 0; i < headings.size(); ++i) {
        for (std::size_t j = 0; j < i; ++j) {
            if (same_name(headings[i], headings[j]))
                throw InputError(place, fmt::format("two columns are headed {}", in_quotes(headings[i])));
        }
    }
    const std::vector<const KnownColumn*> meaning = meanings(headings, mapping, place);
    for (std::size_t i = 0; i < headings.size(); ++i) {
        if (meaning[i] != nullptr)
            add({meaning[i]->field, meaning[i]->unit, i, headings[i]}, rows, place);
        else if (!is_empty_column(rows, i))
            unused_.push_back(headings[i]);
    }
    check_complete(headings, place);
}

void LogColumns::add(LogColumn column, const std::vector<CsvRow>& rows, const std::string& place) {
    const auto same =
        std::find_if(used_.begin(), used_.end(), [&](const LogColumn& u) { return u.field == column.field; });
    if (same == used_.end()) {
        used_.push_back(std::move(column));
    } else if (is_empty_column(rows, same->index)) {
        *same = std::move(column);
    } else if (!is_empty_column(rows, column.index)) {
        throw InputError(place, fmt::format("two columns for one quantity, {} and {}; delete one",
                                            in_quotes(same->heading), in_quotes(column.heading)));
    }
}

const LogColumn* LogColumns::column(LogField field) const {
    const auto found =
        std::find_if(used_.begin(), used_.end(), [&](const LogColumn& u) { return u.field == field; });
    return found == used_.end() ? nullptr : &*found;
}

void LogColumns::check_complete(const std::vector<std::string>& headings, const std::string& place) const {
    const auto has = [&](LogField field) { return column(field) != nullptr; };
    const auto missing = [&](std::string_view what, std::string_view ours) {
        const std::string hint = nearest_hint(ours.substr(0, ours.find('_')), unused_);
        throw InputError(place, fmt::format("no column for {}; {}the columns are {}; say which it is with "
                                            "--column {}=\"HEADING\"",
                                            what, hint, quoted_list(headings), ours));
    };
    if (!has(LogField::club)) missing("the club", "club");
    const bool positions =
        std::any_of(used_.begin(), used_.end(), [](const LogColumn& u) { return is_position(u.field); });
    const bool distances = has(LogField::carry) || has(LogField::total) || has(LogField::side);
    if (positions && distances) {
        throw InputError(place,
                         "columns for positions (start_lon, ...) and for distances (carry, total, side) in "
                         "one log; put them into two files");
    }
    if (positions) {
        for (const FieldName& field : fields)
            if (is_position(field.field) && !has(field.field)) missing(field.name, field.name);
        return;
    }
    if (!has(LogField::carry) && !has(LogField::total)) {
        missing("the carry (carry_yd or carry_m), nor for the total", "carry_yd");
    }
    if (!has(LogField::side)) missing("the side (side_yd or side_m)", "side_yd");
}

}  // namespace landwidth
