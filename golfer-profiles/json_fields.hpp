// Checked access to the fields of a JSON object. Everything wrong is noted with the path of its field and the
// reading goes on, so that one run can tell all of it.
#pragma once

#include <initializer_list>
#include <nlohmann/json.hpp>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace landwidth {

// Sentences about one file, without the file's name.
struct FieldNotes {
    std::vector<std::string> errors;
    std::vector<std::string> warnings;
};

// Where an object stands: `item` is the entry of a list it belongs to, with the name people know it by
// (`clubs[2] "3-wood"`, or empty), `prefix` the keys from there on ("pattern.", or empty).
struct FieldPlace {
    std::string item;
    std::string prefix;

    // `clubs[2] "3-wood": pattern.carry_yd`
    std::string field(std::string_view key) const;
    // The place of the object under a key.
    FieldPlace inside(std::string_view key) const;
};

// What a number means and the range it must lie in.
struct NumberRule {
    std::string_view meaning;  // "a standard deviation"
    double low, high;
    bool low_open = false;  // low itself is outside
    bool high_open = false;
};

class JsonFields {
  public:
    // Warns of every key that is not among `known`, with the nearest that is. `object` must be an object and,
    // like `known` and `notes`, outlive this.
    JsonFields(const nlohmann::json& object, FieldPlace place, std::span<const std::string_view> known,
               FieldNotes& notes);

    const FieldPlace& place() const { return place_; }
    FieldNotes& notes() { return notes_; }
    bool has(std::string_view key) const { return object_.contains(key); }

    // Each of these gives nothing when the value is missing or cannot be used. A value that cannot be used is
    // an error; so is a missing one unless `optional_...` is asked for. `expected` ends the sentence for a
    // missing key: `a club needs one of ...`.
    std::optional<double> number(std::string_view key, const NumberRule& rule);
    std::optional<double> optional_number(std::string_view key, const NumberRule& rule);
    std::optional<int> whole_number(std::string_view key, const NumberRule& rule);
    std::optional<int> optional_whole_number(std::string_view key, const NumberRule& rule) {
        return has(key) ? whole_number(key, rule) : std::nullopt;
    }
    std::optional<std::string> text(std::string_view key, std::string_view expected);
    std::optional<std::string> optional_text(std::string_view key);
    std::optional<bool> optional_truth(std::string_view key);
    const nlohmann::json* object(std::string_view key, std::string_view expected);
    const nlohmann::json* optional_object(std::string_view key);
    const nlohmann::json* list(std::string_view key, std::string_view expected);

    // A number of a list, which `name` tells ("shots_yd[4]").
    std::optional<double> listed_number(const nlohmann::json& value, std::string_view name,
                                        const NumberRule& rule) {
        return checked(&value, name, rule);
    }

    // Notes an error: the field, then the words as they are (" is -4; ...").
    void error(std::string_view key, std::string_view words);

    // The value without a look at its type; an error when missing.
    const nlohmann::json* required(std::string_view key, std::string_view expected);

  private:
    const nlohmann::json* value(std::string_view key) const;
    const nlohmann::json* of_type(const nlohmann::json* value, std::string_view key, bool fits,
                                  std::string_view expected);
    std::optional<double> checked(const nlohmann::json* value, std::string_view key, const NumberRule& rule);

    const nlohmann::json& object_;
    FieldPlace place_;
    std::vector<std::string> unknown_;  // keys of the object that are not known
    FieldNotes& notes_;
};

// A value as a message shows it: -4, the text "x", true, null, a list, an object.
std::string shown(const nlohmann::json& value);

// "a, b, c"
std::string listed(std::span<const std::string_view> words);

}  // namespace landwidth
