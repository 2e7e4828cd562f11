// The sheet a hole is drawn on: turned so that play goes up the page, and scaled to fit.
//
// Sheet coordinates are CSS pixels (96 an inch), x to the right, y down. The drawn ground is a strip along
// the line of play, wide enough for the trouble a tee shot meets, that holds the landing ellipses too; labels
// stand beside it on white paper.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "geometry/region.hpp"
#include "planner/reports/plan_view.hpp"

namespace landwidth {

class MapSheet {
  public:
    // `shown`: ellipses that must be on the sheet; `aim`: the aim line. In the hole's plane. Ground beyond
    // what the hole was planned on counts as lies.beyond(). `more_below_px`: paper kept free below the scale
    // bar.
    MapSheet(const Hole& hole, const std::vector<Ring>& shown, const std::vector<Point>& aim,
             double more_below_px = 0.0);

    double width_px() const { return width_px_; }
    double height_px() const { return height_px_; }
    // Height of the ground alone; the scale bar and the north arrow stand below it.
    double ground_height_px() const { return ground_height_px_; }
    double px_per_m() const { return scale_; }
    // The ground that is drawn, in the hole's plane.
    const Region& ground() const { return ground_; }

    Point to_sheet(Point plane) const;
    // The direction of a step, not scaled; a unit step stays one.
    Point turned(Point step) const;

  private:
    Region ground_;
    Point up_;
    Point origin_;
    Point shift_px_;
    double scale_ = 1.0;
    double width_px_ = 0.0;
    double height_px_ = 0.0;
    double ground_height_px_ = 0.0;
};

// A rectangle of the sheet.
struct LabelBox {
    double left, top, right, bottom;
    bool overlaps(const LabelBox& other) const {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }
};

enum class Anchor { start, middle, end };

// A line of text and where it may stand.
struct LabelSpot {
    Point at;  // middle of the text's height, at its anchor
    Anchor anchor;
};

// Keeps labels off each other and on the sheet: the first spot that is free is taken.
class LabelPlacer {
  public:
    LabelPlacer(double width_px, double height_px) : width_px_(width_px), height_px_(height_px) {}

    // Ground that no label may cover.
    void reserve(const LabelBox& box) { taken_.push_back(box); }
    // The box of a text at a spot; a cautious estimate of its width, as the font is the reader's own.
    static LabelBox box_of(const std::string& text, double font_px, const LabelSpot& spot);
    // The spot taken; absent when none of them is free.
    std::optional<LabelSpot> place(const std::string& text, double font_px,
                                   const std::vector<LabelSpot>& spots);

  private:
    bool free(const LabelBox& box) const;
    double width_px_;
    double height_px_;
    std::vector<LabelBox> taken_;
};

}  // namespace landwidth
