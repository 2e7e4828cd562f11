// The option that says what the shots of logs were hit in.
#pragma once

#include <CLI/App.hpp>
#include <string>
#include <vector>

#include "golfer-profiles/logged_clubs.hpp"
#include "golfer-profiles/sessions/session_conditions.hpp"

namespace landwidth {

class SessionOptions {
  public:
    void setup(CLI::App& app);

    // Gives the shots of `logs` what was said for them; see complete_conditions. Returns warnings, with the
    // file's name. Throws UsageError for what is no condition, is typed in no unit or a wrong one, is said
    // twice, does not go together, or is said for a file that is not among the logs.
    std::vector<std::string> complete(std::vector<NamedLog>& logs) const;

  private:
    std::vector<std::string> sessions_;  // as typed: "bay.csv: indoors=yes, ball=range"
};

// One --session, without the file in front: "temperature=8C, wind=12mph@against". Throws UsageError.
SessionConditions typed_session(const std::string& text);

}  // namespace landwidth
