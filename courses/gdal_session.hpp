// GDAL kept quiet: what it would print on standard error is caught and kept for our own messages.
#pragma once

#include <cpl_error.h>

#include <optional>
#include <string>

namespace landwidth {

// Registers GDAL's drivers on the first call of a process (about 2 ms) and keeps PROJ off the network.
void prepare_gdal();

// While it lives, GDAL's messages of this thread land in it.
class GdalMessages {
  public:
    GdalMessages();
    ~GdalMessages();
    GdalMessages(const GdalMessages&) = delete;
    GdalMessages& operator=(const GdalMessages&) = delete;

    // The first message by which GDAL says that it could not read on. What GEOS says
    // about the shape of one feature is no such thing: shapes are repaired later.
    const std::optional<std::string>& failure() const { return failure_; }

  private:
    static void CPL_STDCALL take(CPLErr level, CPLErrorNum number, const char* text);

    std::optional<std::string> failure_;
};

}  // namespace landwidth
