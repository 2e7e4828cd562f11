// The errors a user can cause, in the user's words.
//
// Every message is one line that says what is wrong, where (file, layer, feature id, field) and what to do.
// The program prints it after "landwidth: " and leaves with exit code 2; nothing else of the program catches
// these. A broken promise inside the program is std::logic_error instead, and a defect.
#pragma once

#include <stdexcept>
#include <string>

namespace landwidth {

// Base of everything below; catch this to report to a user.
class Error : public std::runtime_error {
  public:
    using std::runtime_error::runtime_error;
};

// The command line asks for something that does not exist or does not go together.
class UsageError : public Error {
  public:
    using Error::Error;
};

// A file, or a value in it, cannot be used. `place` names file, layer, feature and field as far as known,
// e.g. "course.gpkg, layer holes, feature 12, field par"; `problem` what is wrong and what to do.
class InputError : public Error {
  public:
    InputError(const std::string& place, const std::string& problem) : Error(place + ": " + problem) {}
};

// A result could not be written: folder missing, disk full, file exists.
class OutputError : public Error {
  public:
    OutputError(const std::string& file, const std::string& problem) : Error(file + ": " + problem) {}
};

}  // namespace landwidth
