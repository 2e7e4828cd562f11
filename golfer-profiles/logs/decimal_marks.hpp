// What commas and points in the numbers of one file mean. "231,5" is a decimal comma and "1,234.5" a decimal
// point whatever else there is; "1,234" and "1.234" are read by what the certain numbers of the same file
// show.
#pragma once

#include <optional>
#include <string_view>

namespace landwidth {

class DecimalMarks {
  public:
    // Takes the digits of a number (only "0123456789,.") into account.
    void note(std::string_view digits);

    // The value of such digits; nothing when they are no number ("1,2,3") or can be read in two ways. A
    // comma alone before three digits ("1,234") is read in a file whose other numbers show what a comma is,
    // and never in one that shows nothing or both; a point alone is a decimal point unless the file shows
    // decimal commas.
    std::optional<double> value(std::string_view digits) const;

    // Whether the digits can be read in two ways here.
    bool is_ambiguous(std::string_view digits) const;

  private:
    bool commas_ = false;  // a number with a decimal comma, or with points between thousands, was seen
    bool points_ = false;  // a number with a decimal point, or with commas between thousands, was seen
};

}  // namespace landwidth
