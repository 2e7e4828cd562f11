// Randomness as a function of a key and a counter: the same numbers on any number of threads, today and
// tomorrow.
#pragma once

#include <cstdint>
#include <limits>

namespace landwidth {

// A well-mixed 64-bit number for a counter (SplitMix64's finaliser; G. Steele, D. Lea, C. Flood, OOPSLA
// 2014).
constexpr std::uint64_t mixed(std::uint64_t counter) {
    std::uint64_t z = counter + 0x9e3779b97f4a7c15ULL;
    z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9ULL;
    z = (z ^ (z >> 27)) * 0x94d049bb133111ebULL;
    return z ^ (z >> 31);
}

// A source of random bits for the distributions of Boost.Random: a stream of its own for every key.
class CounterBits {
  public:
    using result_type = std::uint64_t;
    explicit CounterBits(std::uint64_t key) : key_(key) {}
    static constexpr result_type min() { return 0; }
    static constexpr result_type max() { return std::numeric_limits<result_type>::max(); }
    result_type operator()() { return mixed(key_ ^ mixed(counter_++)); }

  private:
    std::uint64_t key_;
    std::uint64_t counter_ = 0;
};

}  // namespace landwidth
