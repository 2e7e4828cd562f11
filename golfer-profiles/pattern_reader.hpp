// The parts of the profile format that hold shot patterns and the shots they were learnt from. Not for use
// outside of this room.
#pragma once

#include "golfer-profiles/json_fields.hpp"
#include "golfer-profiles/profile.hpp"

namespace landwidth {

// The values are good only when `notes` gets no errors. The kind tells the run where it is not given.
ShotPattern pattern_of_json(const nlohmann::json& object, const FieldPlace& place, ClubKind kind,
                            FieldNotes& notes);
// `sessions`: how many the profile lists.
LearntFrom learnt_from_json(const nlohmann::json& object, const FieldPlace& place, ClubKind kind,
                            std::size_t sessions, FieldNotes& notes);

}  // namespace landwidth
