// Tags packed in one string: hstore ("key"=>"value","key"=>"value") or a JSON object.
#include <nlohmann/json.hpp>

#include "courses/reading/tag_reading.hpp"
#include "courses/text.hpp"

namespace landwidth {

namespace {

class HstoreReader {
  public:
    explicit HstoreReader(std::string_view text) : text_(text) {}

    bool read(Tags& tags) {
        while (true) {
            skip_blanks();
            if (text_.empty()) return true;
            const std::optional<std::string> key = word();
            if (!key || !take("=>")) return false;
            const bool quoted = !text_.empty() && text_.front() == '"';
            const std::optional<std::string> value = word();
            if (!value) return false;
            if (quoted || folded(*value) != "null") tags.emplace(folded(*key), *value);
            if (!take(",")) return text_.empty();
        }
    }

  private:
    void skip_blanks() {
        while (!text_.empty() && text_.front() == ' ')
            text_.remove_prefix(1);
    }

    bool take(std::string_view token) {
        skip_blanks();
        if (!text_.starts_with(token)) return false;
        text_.remove_prefix(token.size());
        skip_blanks();
        return true;
    }

    // Quoted, with backslashes before quotes and backslashes, or bare up to a sign of the notation.
    std::optional<std::string> word() {
        std::string result;
        if (text_.empty() || text_.front() != '"') {
            const std::size_t end = text_.find_first_of(",= ");
            result = text_.substr(0, end);
            text_.remove_prefix(result.size());
            if (result.empty()) return std::nullopt;
            return result;
        }
        for (std::size_t i = 1; i < text_.size(); ++i) {
            if (text_[i] == '"') {
                text_.remove_prefix(i + 1);
                return result;
            }
            if (text_[i] == '\\' && i + 1 < text_.size()) ++i;
            result += text_[i];
        }
        return std::nullopt;
    }

    std::string_view text_;
};

std::string as_tag_value(const nlohmann::json& value) {
    if (value.is_string()) return value.get<std::string>();
    if (value.is_boolean()) return value.get<bool>() ? "yes" : "no";
    if (value.is_array()) {
        std::string list;
        for (const auto& item : value)
            list += (list.empty() ? "" : ";") + as_tag_value(item);
        return list;
    }
    return value.is_null() ? "" : value.dump();
}

bool add_json_tags(std::string_view text, Tags& tags) {
    const nlohmann::json object = nlohmann::json::parse(text, nullptr, false);
    if (object.is_discarded() || !object.is_object()) return false;
    for (const auto& [key, value] : object.items())
        tags.emplace(folded(key), as_tag_value(value));
    return true;
}

}  // namespace

bool add_packed_tags(std::string_view text, Tags& tags) {
    const std::string whole = trimmed(text);
    if (whole.empty()) return true;
    if (whole.front() == '{') return add_json_tags(whole, tags);
    return HstoreReader(whole).read(tags);
}

}  // namespace landwidth
