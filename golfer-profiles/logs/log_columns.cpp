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
    {LogField::result, "result"},
    {LogField::session, "session"},
    {LogField::strike_toe, "strike_toe", Measure::on_face},
    {LogField::strike_up, "strike_up", Measure::on_face},
    {LogField::start_lon, "start_lon"},
    {LogField::start_lat, "start_lat"},
    {LogField::finish_lon, "finish_lon"},
    {LogField::finish_lat, "finish_lat"},
    {LogField::target_lon, "target_lon"},
    {LogField::target_lat, "target_lat"},
}};

// Words of the trade for our columns, as plain_heading writes them and without a unit.
struct TradeWord {
    std::string_view word, ours;
};
constexpr TradeWord trade_words[]{
    {"carry_distance", "carry"},
    {"total_distance", "total"},
    {"offline", "side"},
    {"off_line", "side"},
    {"lateral", "side"},
    {"side_carry", "side"},
    {"carry_side", "side"},
    {"peak_height", "peak"},
    {"apex", "peak"},
    {"apex_height", "peak"},
    {"max_height", "peak"},
    {"club_head_speed", "club_speed"},
    {"clubhead_speed", "club_speed"},
    {"swing_speed", "club_speed"},
    {"launch_angle", "launch"},
    {"spin_rate", "spin"},
    {"backspin", "spin"},
    {"back_spin", "spin"},
    {"notes", "note"},
    {"comment", "note"},
    {"comments", "note"},
    {"remark", "note"},
    {"remarks", "note"},
    {"place", "session"},
};

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
        if (c == ')' || c == ']' || c == '.') continue;
        const bool gap = c == ' ' || c == '-' || c == '_' || c == '(' || c == '[' || c == ',';
        if (gap && (plain.empty() || plain.back() == '_')) continue;
        plain += gap ? '_' : c;
    }
    while (plain.ends_with('_'))
        plain.pop_back();
    if (plain.ends_with("_ms")) return plain.substr(0, plain.size() - 3) + "_mps";
    const std::size_t last = plain.rfind('_');
    if (last == std::string::npos) return plain;
    const auto unit = unit_written(std::string_view(plain).substr(last + 1));
    return unit ? fmt::format("{}_{}", plain.substr(0, last), unit->suffix) : plain;
}

// What a heading means, and how surely: a word of the trade gives way to a column of ours.
struct Meaning {
    const KnownColumn* column = nullptr;
    bool by_trade_word = false;
};

const KnownColumn* in_only_unit(std::string_view name) {
    const auto* field =
        std::find_if(fields.begin(), fields.end(), [&](const FieldName& f) { return f.name == name; });
    if (field == fields.end()) return nullptr;
    const KnownColumn* only = nullptr;
    for (const KnownColumn& known : known_columns()) {
        if (known.field != field->field) continue;
        if (only != nullptr) return nullptr;
        only = &known;
    }
    return only;
}

Meaning meaning_of(const std::string& plain) {
    if (const KnownColumn* known = known_column(plain)) return {known, false};
    if (const KnownColumn* known = in_only_unit(plain)) return {known, false};
    for (const TradeWord& trade : trade_words) {
        if (!plain.starts_with(trade.word)) continue;
        const std::string ours = fmt::format("{}{}", trade.ours, plain.substr(trade.word.size()));
        if (const KnownColumn* known = known_column(ours)) return {known, true};
        if (const KnownColumn* known = in_only_unit(ours)) return {known, true};
    }
    return {};
}

// The column of ours that a heading would be with a unit: carry_yd for "Carry".
const KnownColumn* with_some_unit(const std::string& plain) {
    for (const LogUnit& unit : log_units())
        if (const Meaning m = meaning_of(fmt::format("{}_{}", plain, unit.suffix)); m.column != nullptr)
            return m.column;
    return nullptr;
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

// What a row of units says of one column; nothing where it says nothing.
std::optional<LogUnit> unit_under(const std::vector<std::string>& units, std::size_t column) {
    if (column >= units.size()) return std::nullopt;
    return unit_written(trimmed(units[column]));
}

Meaning meaning_with_unit(const std::string& heading, const std::optional<LogUnit>& unit,
                          const std::string& place) {
    const Meaning alone = meaning_of(plain_heading(heading));
    if (!unit) return alone;
    if (alone.column == nullptr)
        return meaning_of(plain_heading(fmt::format("{} {}", heading, unit->suffix)));
    if (!alone.column->unit || alone.column->unit == unit) return alone;
    throw InputError(place, fmt::format("column {}: the row of units under it says {}; correct one of them",
                                        in_quotes(heading), unit->suffix));
}

// What each column of the file is, by the mapping first and by its own heading otherwise.
std::vector<Meaning> meanings(const std::vector<std::string>& headings,
                              const std::vector<ColumnName>& mapping, const std::vector<std::string>& units,
                              const std::string& place) {
    std::vector<Meaning> meaning;
    std::vector<bool> is_mapped(headings.size());
    for (const ColumnName& pair : mapping) {
        const auto found = std::find_if(headings.begin(), headings.end(),
                                        [&](const std::string& h) { return same_name(h, pair.theirs); });
        if (found == headings.end()) {
            throw InputError(
                place, fmt::format("no column {} for {}; {}the columns are {}", in_quotes(pair.theirs),
                                   pair.ours, nearest_hint(pair.theirs, headings), quoted_list(headings)));
        }
        is_mapped[static_cast<std::size_t>(found - headings.begin())] = true;
    }
    for (std::size_t i = 0; i < headings.size(); ++i) {
        meaning.push_back(is_mapped[i] ? Meaning{}
                                       : meaning_with_unit(headings[i], unit_under(units, i), place));
    }
    for (const ColumnName& pair : mapping) {
        for (std::size_t i = 0; i < headings.size(); ++i) {
            if (!same_name(headings[i], pair.theirs)) continue;
            meaning[i] = {known_column(pair.ours), false};
            const auto said = unit_under(units, i);
            if (said && meaning[i].column->unit && said != meaning[i].column->unit) {
                throw InputError(place, fmt::format("column {} is taken for {}, but the row of units says {}",
                                                    in_quotes(headings[i]), pair.ours, said->suffix));
            }
        }
    }
    // The first of two words of the trade for one thing, and none beside a column of ours.
    for (std::size_t i = 0; i < meaning.size(); ++i) {
        const auto is_same = [&](const Meaning& m) {
            return m.column != nullptr && meaning[i].column != nullptr &&
                   m.column->field == meaning[i].column->field;
        };
        const auto before = meaning.begin() + static_cast<std::ptrdiff_t>(i);
        const bool taken = std::any_of(meaning.begin(), before, is_same) ||
                           std::any_of(before, meaning.end(),
                                       [&](const Meaning& m) { return is_same(m) && !m.by_trade_word; });
        if (meaning[i].by_trade_word && taken) meaning[i] = {};
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

std::string problem_of_column(std::string_view ours) {
    if (known_column(ours) != nullptr) return {};
    std::vector<std::string> names;
    std::transform(known_columns().begin(), known_columns().end(), std::back_inserter(names),
                   [](const KnownColumn& k) { return k.name; });
    return fmt::format("there is no such column; {}they are {}", nearest_hint(ours, names),
                       fmt::join(names, ", "));
}

bool means_same_quantity(std::string_view ours, std::string_view other) {
    const KnownColumn *a = known_column(ours), *b = known_column(other);
    return a != nullptr && b != nullptr && a->field == b->field;
}

void check_mapping(const std::vector<ColumnName>& mapping) {
    for (std::size_t i = 0; i < mapping.size(); ++i) {
        const ColumnName& pair = mapping[i];
        if (const std::string problem = problem_of_column(pair.ours); !problem.empty())
            throw UsageError(fmt::format("--column {}: {}", pair.ours, problem));
        for (std::size_t j = 0; j < i; ++j) {
            if (mapping[j].ours == pair.ours || same_name(mapping[j].theirs, pair.theirs)) {
                throw UsageError(fmt::format("--column {}={}: named twice", pair.ours, pair.theirs));
            }
        }
    }
}

LogColumns::LogColumns(const std::vector<CsvRow>& rows, const std::vector<ColumnName>& mapping,
                       const std::string& file, const std::vector<std::string>& units) {
    check_mapping(mapping);
    const std::string place = fmt::format("{}: row {}", file, rows.front().row);
    const std::vector<std::string> headings = headings_of(rows.front());
    for (std::size_t i = 0; i < headings.size(); ++i) {
        for (std::size_t j = 0; j < i; ++j) {
            if (same_name(headings[i], headings[j]))
                throw InputError(place, fmt::format("two columns are headed {}", in_quotes(headings[i])));
        }
    }
    const std::vector<Meaning> meaning = meanings(headings, mapping, units, place);
    for (std::size_t i = 0; i < headings.size(); ++i) {
        if (const KnownColumn* column = meaning[i].column)
            add({column->field, column->unit, i, headings[i]}, rows, place);
        else if (!is_empty_column(rows, i))
            unused_.push_back(headings[i]);
    }
    check_complete(headings, place);
    for (const std::string& heading : unused_) {
        const KnownColumn* fit = with_some_unit(plain_heading(heading));
        if (fit == nullptr || column(fit->field) != nullptr) continue;
        without_unit_.push_back(fmt::format("column {} has no unit; say it with --column {}=\"{}\"",
                                            in_quotes(heading), fit->name, heading));
    }
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
