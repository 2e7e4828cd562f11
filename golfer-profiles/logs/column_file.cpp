#include "golfer-profiles/logs/column_file.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <string>
#include <string_view>

#include "geometry/error.hpp"
#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/logs/log_columns.hpp"
#include "golfer-profiles/logs/log_text.hpp"
#include "golfer-profiles/profile.hpp"

namespace landwidth {
namespace {

std::string_view without_quotes(std::string_view text) {
    const bool quoted = text.size() > 2 && text.front() == '"' && text.back() == '"';
    return quoted ? trimmed(text.substr(1, text.size() - 2)) : text;
}

ColumnName mapping_in(std::string_view line, const std::string& place) {
    const std::size_t equals = line.find('=');
    const std::string_view ours = trimmed(line.substr(0, equals));
    const std::string_view theirs =
        equals == std::string_view::npos ? "" : without_quotes(trimmed(line.substr(equals + 1)));
    if (ours.empty() || theirs.empty())
        throw InputError(place, fmt::format("{}: a column of ours = a heading of the log is expected, as in "
                                            "carry_yd = Carry",
                                            in_quotes(line)));
    if (const std::string problem = problem_of_column(ours); !problem.empty())
        throw InputError(place, fmt::format("{}: {}", in_quotes(ours), problem));
    return {std::string(ours), std::string(theirs)};
}

}  // namespace

std::vector<ColumnName> read_column_file(const std::filesystem::path& path) {
    const std::string text = log_text(path, "file of columns");
    std::vector<ColumnName> mapping;
    std::size_t number = 0;
    for (std::size_t at = 0; at < text.size(); ++number) {
        const std::size_t end = std::min(text.find('\n', at), text.size());
        const std::string_view line = trimmed(std::string_view(text).substr(at, end - at));
        at = end + 1;
        if (line.empty() || line.front() == '#') continue;
        const std::string place = fmt::format("{}: line {}", path.string(), number + 1);
        ColumnName pair = mapping_in(line, place);
        for (const ColumnName& before : mapping) {
            if (before.ours == pair.ours || same_name(before.theirs, pair.theirs))
                throw InputError(place, fmt::format("{} or {} is named twice", in_quotes(pair.ours),
                                                    in_quotes(pair.theirs)));
        }
        mapping.push_back(std::move(pair));
    }
    if (mapping.empty()) throw InputError(path.string(), "no line says which column is which");
    return mapping;
}

std::vector<ColumnName> combined(std::vector<ColumnName> first, const std::vector<ColumnName>& second) {
    std::vector<ColumnName> more;
    std::copy_if(second.begin(), second.end(), std::back_inserter(more), [&](const ColumnName& pair) {
        return std::none_of(first.begin(), first.end(), [&](const ColumnName& f) {
            return means_same_quantity(f.ours, pair.ours) || same_name(f.theirs, pair.theirs);
        });
    });
    first.insert(first.end(), more.begin(), more.end());
    return first;
}

}  // namespace landwidth
