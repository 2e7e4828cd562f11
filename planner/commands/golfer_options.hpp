// The options that say who a golfer is when there is no profile yet: level, hand, name.
#pragma once

#include <CLI/App.hpp>
#include <string>

#include "golfer-profiles/presets.hpp"

namespace landwidth {

class GolferOptions {
  public:
    void setup(CLI::App& app);

    // As other options need or exclude them.
    CLI::Option* handicap_option() const { return handicap_option_; }
    CLI::Option* women_option() const { return women_option_; }
    CLI::Option* left_handed_option() const { return left_handed_option_; }

    bool has_handicap() const { return !handicap_.empty(); }
    bool women() const { return women_; }
    Hand hand() const { return left_handed_ ? Hand::left : Hand::right; }
    const std::string& name() const { return name_; }

    // Under `name` where the user gave none; the drive is the published one. Throws UsageError for a handicap
    // that is no number.
    GolferRequest request(const std::string& name) const;

  private:
    std::string handicap_;  // as typed: +2.3 is a plus handicap
    bool women_ = false;
    bool left_handed_ = false;
    std::string name_;
    CLI::Option* handicap_option_ = nullptr;
    CLI::Option* women_option_ = nullptr;
    CLI::Option* left_handed_option_ = nullptr;
};

}  // namespace landwidth
