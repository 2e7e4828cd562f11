// Which fairway is for which hole: landing width is the width of the hole's own.
//
// An area of fairway that bears the number of a hole whose line passes its middle within 100 m belongs to
// that. Any other belongs to the hole whose line runs furthest through it, and to every other whose line runs
// at least a quarter as far through it (an assumption: a double fairway serves both, a line that cuts a
// corner of the next hole's does not make it its own). One that no line runs through belongs to the hole
// whose line passes nearest to its middle. The areas of a feature count one by one.
#pragma once

#include <map>
#include <set>
#include <utility>
#include <vector>

#include "courses/assembly/feature_shapes.hpp"
#include "courses/assembly/hole_draft.hpp"
#include "courses/assembly/map_index.hpp"

namespace landwidth {

class FairwayOwners {
  public:
    // `holes`: every hole around, so that a neighbour can own its fairway.
    FairwayOwners(const std::vector<const IndexedFeature*>& features,
                  const std::vector<const HoleDraft*>& holes, const PlaneFrame& frame, RepairLog& repairs);

    // Whether the area is for the hole with this feature.
    bool owns(const MapFeature* hole, const MapFeature* fairway, std::size_t part) const;

  private:
    using Part = std::pair<const MapFeature*, std::size_t>;
    std::map<Part, std::set<const MapFeature*>> owners_;
};

struct FairwayGround {
    Region own;
    // Mown ground of other holes, greens among them, that is not the hole's own.
    Region others;
};

// `green`: the hole's own, which is neither.
FairwayGround fairways_of(const MapFeature& hole, const FairwayOwners& owners,
                          const std::vector<const IndexedFeature*>& near, const MapFeature& green,
                          std::size_t green_part, const PlaneDrawing& drawing);

}  // namespace landwidth
