// Shots of a golfer whose true pattern is known.
#pragma once

#include <cstdint>
#include <vector>

#include "golfer-profiles/shot_pattern.hpp"

namespace landwidth::fixture {

// Independent shots; `key` names the session: the same key, the same session.
std::vector<ShotOffset> simulated_shots(const ShotPattern& pattern, int count, std::uint64_t key);

}  // namespace landwidth::fixture
