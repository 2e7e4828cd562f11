#include "tests/benchmarks/peak_memory.hpp"

#include <fstream>
#include <string>

namespace landwidth::bench {

PeakMemory::PeakMemory() {
    // proc(5): writing 5 resets the peak resident set size to what is resident now.
    std::ofstream restart("/proc/self/clear_refs");
    restart << "5\n" << std::flush;
    restarted_ = restart.good();
}

std::optional<double> PeakMemory::megabytes() const {
    if (!restarted_) return std::nullopt;
    std::ifstream status("/proc/self/status");
    for (std::string word; status >> word;) {
        double kib = 0.0;
        if (word == "VmHWM:" && status >> kib) return kib * 1024.0 / 1e6;
    }
    return std::nullopt;
}

}  // namespace landwidth::bench
