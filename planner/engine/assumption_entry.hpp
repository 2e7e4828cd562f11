// One modelling constant, for people and files.
#pragma once

#include <string>

namespace landwidth {

struct AssumptionEntry {
    std::string name;
    double value;  // in its own unit (yd, share, strokes, ...)
    std::string unit;
    std::string meaning;
    std::string source;  // a published source, "common practice, no source", or "assumption"
    bool overridden;
};

}  // namespace landwidth
