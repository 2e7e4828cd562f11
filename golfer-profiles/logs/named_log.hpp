// A log of shots and the file it came from.
#pragma once

#include <string>

#include "golfer-profiles/shot_log.hpp"

namespace landwidth {

struct NamedLog {
    std::string file;
    ShotLog log;
};

}  // namespace landwidth
