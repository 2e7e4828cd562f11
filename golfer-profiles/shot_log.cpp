#include "golfer-profiles/shot_log.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <iterator>

#include "geometry/error.hpp"
#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/logs/carry_doubts.hpp"
#include "golfer-profiles/logs/csv_rows.hpp"
#include "golfer-profiles/logs/log_columns.hpp"
#include "golfer-profiles/logs/log_doubts.hpp"
#include "golfer-profiles/logs/log_text.hpp"
#include "golfer-profiles/logs/other_rows.hpp"
#include "golfer-profiles/logs/shot_rows.hpp"

namespace landwidth {
namespace {

std::string unused_words(const std::vector<std::string>& unused) {
    std::vector<std::string> quoted;
    std::transform(unused.begin(), unused.end(), std::back_inserter(quoted),
                   [](const std::string& heading) { return in_quotes(heading); });
    return fmt::format("{} not used: {}", unused.size() == 1 ? "a column is" : "columns are",
                       fmt::join(quoted, ", "));
}

}  // namespace

ShotLog read_shot_log(const std::filesystem::path& path, const std::vector<ColumnName>& mapping) {
    check_mapping(mapping);
    const std::string file = path.string();
    const std::string text = log_text(path);
    std::vector<CsvRow> rows = csv_rows(text, separator_of(text), file);
    if (rows.empty()) throw InputError(file, "no row has anything in it");
    const std::vector<std::string> units = take_units(rows);
    const LogColumns columns(rows, mapping, file, units);
    const std::vector<std::string> left_out = take_other_rows(rows, columns);
    if (rows.size() == 1) throw InputError(file, "a header and no shots under it");
    ShotRows reader(rows, columns, file);
    ShotLog log{reader.read(), reader.remarks()};
    log.warnings.insert(log.warnings.end(), left_out.begin(), left_out.end());
    if (!columns.unused().empty()) log.warnings.push_back(unused_words(columns.unused()));
    log.warnings.insert(log.warnings.end(), columns.without_unit().begin(), columns.without_unit().end());
    if (auto same = leave_out_totals_that_are_carries(log.shots)) log.warnings.push_back(std::move(*same));
    if (auto same = same_values_doubt(log.shots)) log.warnings.push_back(std::move(*same));
    for (std::string& doubt : log_doubts(log.shots))
        log.warnings.push_back(std::move(doubt));
    if (const LogColumn* carry = columns.column(LogField::carry))
        if (auto doubt = carry_doubt(log.shots, *carry)) log.warnings.push_back(std::move(*doubt));
    return log;
}

}  // namespace landwidth
