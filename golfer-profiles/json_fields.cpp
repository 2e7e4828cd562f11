#include "golfer-profiles/json_fields.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>

#include "golfer-profiles/json_text.hpp"
#include "golfer-profiles/nearest_word.hpp"

namespace landwidth {
namespace {

using Json = nlohmann::json;

// What a number outside its range should have been; empty for one inside.
std::string broken_bound(double value, const NumberRule& rule) {
    if (rule.low_open ? value <= rule.low : value < rule.low) {
        return fmt::format("{} {}", rule.low_open ? "more than" : "at least", rule.low);
    }
    if (rule.high_open ? value >= rule.high : value > rule.high) {
        return fmt::format("{} {}", rule.high_open ? "less than" : "at most", rule.high);
    }
    return {};
}

}  // namespace

std::string shown(const Json& value) {
    switch (value.type()) {
        case Json::value_t::string:
            return "the text " + in_quotes(value.get_ref<const std::string&>());
        case Json::value_t::array:
            return "a list";
        case Json::value_t::object:
            return "an object";
        default:
            return value.dump();
    }
}

std::string listed(std::span<const std::string_view> words) {
    return fmt::format("{}", fmt::join(words.begin(), words.end(), ", "));
}

std::string FieldPlace::field(std::string_view key) const {
    return fmt::format("{}{}{}{}", item, item.empty() ? "" : ": ", prefix, key);
}

FieldPlace FieldPlace::inside(std::string_view key) const {
    return {item, fmt::format("{}{}.", prefix, key)};
}

JsonFields::JsonFields(const Json& object, FieldPlace place, std::span<const std::string_view> known,
                       FieldNotes& notes)
    : object_(object), place_(std::move(place)), notes_(notes) {
    for (const auto& [key, value] : object.items()) {
        if (std::find(known.begin(), known.end(), key) != known.end()) continue;
        unknown_.push_back(key);
        // Quotes only where the key would not be readable without them.
        const std::string name = in_quotes(key);
        const std::string field = place_.field(name == '"' + key + '"' && !key.empty() ? key : name);
        const auto nearest = nearest_word(key, known);
        notes_.warnings.push_back(
            nearest
                ? fmt::format("{} is not a known key and is ignored; did you mean \"{}\"?", field, *nearest)
                : fmt::format("{} is not a known key and is ignored; known here: {}", field, listed(known)));
    }
}

void JsonFields::error(std::string_view key, std::string_view words) {
    notes_.errors.push_back(place_.field(key) + std::string(words));
}

const Json* JsonFields::value(std::string_view key) const {
    const auto found = object_.find(key);
    return found == object_.end() ? nullptr : &*found;
}

const Json* JsonFields::required(std::string_view key, std::string_view expected) {
    const Json* found = value(key);
    if (found != nullptr) return found;
    const std::vector<std::string_view> candidates(unknown_.begin(), unknown_.end());
    const auto nearest = nearest_word(key, candidates);
    error(key, nearest ? fmt::format(" is missing; is {} meant to be it?", in_quotes(*nearest))
                       : fmt::format(" is missing; {}", expected));
    return nullptr;
}

const Json* JsonFields::of_type(const Json* found, std::string_view key, bool fits,
                                std::string_view expected) {
    if (found == nullptr || fits) return found;
    error(key, fmt::format(" is {}; {} is expected", shown(*found), expected));
    return nullptr;
}

std::optional<double> JsonFields::checked(const Json* found, std::string_view key, const NumberRule& rule) {
    if (found == nullptr) return std::nullopt;
    if (!found->is_number()) {
        error(key, fmt::format(" is {}; {} is a number{}", shown(*found), rule.meaning,
                               found->is_string() ? ", without quotes" : ""));
        return std::nullopt;
    }
    const double number = found->get<double>();
    const std::string bound = broken_bound(number, rule);
    if (bound.empty()) return number;
    error(key, fmt::format(" is {}; {} must be {}", shown(*found), rule.meaning, bound));
    return std::nullopt;
}

std::optional<double> JsonFields::number(std::string_view key, const NumberRule& rule) {
    return checked(required(key, fmt::format("{} is expected", rule.meaning)), key, rule);
}

std::optional<double> JsonFields::optional_number(std::string_view key, const NumberRule& rule) {
    return checked(value(key), key, rule);
}

std::optional<int> JsonFields::whole_number(std::string_view key, const NumberRule& rule) {
    const std::optional<double> number = this->number(key, rule);
    if (!number) return std::nullopt;
    if (std::trunc(*number) == *number) return static_cast<int>(*number);
    error(key, fmt::format(" is {}; {} is a whole number", *number, rule.meaning));
    return std::nullopt;
}

std::optional<std::string> JsonFields::text(std::string_view key, std::string_view expected) {
    const Json* found = required(key, expected);
    found = of_type(found, key, found != nullptr && found->is_string(), "a text in quotes");
    return found == nullptr ? std::nullopt : std::optional(found->get<std::string>());
}

std::optional<std::string> JsonFields::optional_text(std::string_view key) {
    const Json* found = value(key);
    found = of_type(found, key, found != nullptr && found->is_string(), "a text in quotes");
    return found == nullptr ? std::nullopt : std::optional(found->get<std::string>());
}

std::optional<bool> JsonFields::optional_truth(std::string_view key) {
    const Json* found = value(key);
    found = of_type(found, key, found != nullptr && found->is_boolean(), "true or false");
    return found == nullptr ? std::nullopt : std::optional(found->get<bool>());
}

const Json* JsonFields::object(std::string_view key, std::string_view expected) {
    const Json* found = required(key, expected);
    return of_type(found, key, found != nullptr && found->is_object(), "an object {...}");
}

const Json* JsonFields::optional_object(std::string_view key) {
    const Json* found = value(key);
    return of_type(found, key, found != nullptr && found->is_object(), "an object {...}");
}

const Json* JsonFields::list(std::string_view key, std::string_view expected) {
    const Json* found = required(key, expected);
    return of_type(found, key, found != nullptr && found->is_array(), "a list [...]");
}

}  // namespace landwidth
