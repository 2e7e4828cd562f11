#include "planner/reports/cost_shading.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "planner/reports/cost_contours.hpp"
#include "planner/reports/svg_writing.hpp"

namespace landwidth {
namespace {

constexpr int most_bands = 10;
// What lies in the first and the last band beyond the others' breadth: the hole itself, and at the dear end
// the pockets from which hardly a ball comes back.
constexpr double share_below = 0.005;
constexpr double share_above = 0.05;
// A level that every place with a cost is above.
constexpr double below_all = 0.0;
// Band edges are drawn this exactly; they are no sharper than the cells they come from.
constexpr double drawing_tolerance_px = 0.5;

// The part of the map that the sheet shows; the rest without a value, so that it costs no room in the file.
CostMap shown_part(const CostMap& map, const MapSheet& sheet) {
    constexpr double margin_px = 6.0;
    CostMap shown = map;
    std::size_t cell = 0;
    for (int row = 0; row < map.rows; ++row) {
        for (int column = 0; column < map.columns; ++column, ++cell) {
            const Point at =
                sheet.to_sheet(map.corner + (column + 0.5) * map.along_row + (row + 0.5) * map.along_rows);
            const bool on_sheet = at.x > -margin_px && at.x < sheet.width_px() + margin_px &&
                                  at.y > -margin_px && at.y < sheet.ground_height_px() + margin_px;
            if (!on_sheet) shown.strokes[cell] = std::numeric_limits<float>::quiet_NaN();
        }
    }
    return shown;
}

std::string swatch(const std::string& colour) {
    return fmt::format(
        "<svg class=\"swatch\" width=\"16\" height=\"11\" aria-hidden=\"true\"><rect width=\"16\" "
        "height=\"11\" fill=\"{}\" stroke=\"#333\" stroke-width=\".6\"/></svg>",
        colour);
}

std::string band_words(const CostBands& bands, int band) {
    if (bands.count == 1) return fmt::format("about {:.2f}", bands.lowest);
    if (band == 0) return fmt::format("below {:.2f}", bands.from(1));
    if (band == bands.count - 1) return fmt::format("{:.2f} or more", bands.from(band));
    return fmt::format("{:.2f} to {:.2f}", bands.from(band), bands.from(band + 1));
}

std::string band_key(const CostBands& bands) {
    std::string key =
        "<div class=\"cost-key\">\n<p>Strokes still to play with the ball at rest there: the darker, the "
        "more. Blank: not in play.</p>\n<ul>\n";
    for (int band = 0; band < bands.count; ++band) {
        key += fmt::format("<li>{}<span>{}</span></li>\n", swatch(band_colour(band, bands.count)),
                           band_words(bands, band));
    }
    return key + "</ul>\n</div>\n";
}

}  // namespace

CostBands cost_bands(std::vector<float> costs) {
    std::erase_if(costs, [](float cost) { return std::isnan(cost); });
    if (costs.empty()) return {0.0, 1.0, 0};
    std::sort(costs.begin(), costs.end());
    const auto cells = static_cast<double>(costs.size());
    const double low = costs[static_cast<std::size_t>(share_below * cells)];
    const double high = costs[costs.size() - 1 - static_cast<std::size_t>(share_above * cells)];
    for (double step = 0.25;; step *= 2.0) {
        const double lowest = step * std::floor(low / step);
        const double bands = std::floor((high - lowest) / step) + 1.0;
        if (bands <= most_bands) return {lowest, step, static_cast<int>(bands)};
    }
}

std::string band_colour(int band, int count) {
    // All three channels fall from one to the next.
    struct Colour {
        double red, green, blue;
    };
    constexpr std::array<Colour, 3> ramp{{{253, 247, 220}, {127, 174, 159}, {51, 64, 110}}};
    const double along = count < 2 ? 0.0 : 2.0 * band / (count - 1);
    const std::size_t part = along < 1.0 ? 0 : 1;
    const double share = along - static_cast<double>(part);
    const auto mixed = [&](double Colour::*channel) {
        return std::lround((1.0 - share) * ramp[part].*channel + share * ramp[part + 1].*channel);
    };
    return fmt::format("#{:02x}{:02x}{:02x}", mixed(&Colour::red), mixed(&Colour::green),
                       mixed(&Colour::blue));
}

CostShading cost_shading(const CostMap& map, const MapSheet& sheet) {
    const CostMap shown = shown_part(map, sheet);
    const CostBands bands = cost_bands(shown.strokes);
    CostShading shading;
    // Each band is painted over all that are cheaper, so that no gap can show between two.
    for (int band = 0; band < bands.count; ++band) {
        const double level = band == 0 ? below_all : bands.from(band);
        std::string data;
        for (const Ring& ring : edges_of_cost(shown, level, drawing_tolerance_px / sheet.px_per_m()))
            data += ring_data(ring, sheet);
        if (data.empty()) continue;
        shading.layer += fmt::format("<path fill=\"{}\" d=\"{}\"/>\n", band_colour(band, bands.count), data);
    }
    if (!shading.layer.empty()) shading.key = band_key(bands);
    return shading;
}

}  // namespace landwidth
