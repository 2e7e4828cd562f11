// The most memory a stretch of work had resident at once.
#pragma once

#include <optional>

namespace landwidth::bench {

// Linux only. What the process holds when the stretch begins is counted in: run one benchmark alone
// (--benchmark_filter) to see what it needs by itself.
class PeakMemory {
  public:
    // Starts a stretch.
    PeakMemory();
    // In MB of 1e6 bytes; absent where the system does not tell.
    std::optional<double> megabytes() const;

  private:
    bool restarted_ = false;
};

}  // namespace landwidth::bench
