#include "courses/reading/map_box.hpp"

#include <string>
#include <vector>

#include "courses/text.hpp"

namespace landwidth {

namespace {

std::optional<MapExtent> sensible(std::optional<double> west, std::optional<double> south,
                                  std::optional<double> east, std::optional<double> north) {
    if (!west || !south || !east || !north) return std::nullopt;
    const bool on_earth = *west >= -180.0 && *east <= 180.0 && *south >= -90.0 && *north <= 90.0;
    if (!on_earth || *west >= *east || *south >= *north) return std::nullopt;
    return MapExtent{*west, *south, *east, *north, true};
}

}  // namespace

std::optional<MapExtent> box_in_text(std::string_view text) {
    const std::vector<std::string> numbers = list_items(text, ",");
    if (numbers.size() != 4) return std::nullopt;
    return sensible(number_in(numbers[0]), number_in(numbers[1]), number_in(numbers[2]),
                    number_in(numbers[3]));
}

std::optional<MapExtent> box_in_head(std::string_view head) {
    head = head.substr(0, head.find("\"features\""));
    const std::size_t at = head.find("\"bbox\"");
    if (at == std::string_view::npos) return std::nullopt;
    const std::size_t start = head.find('[', at);
    const std::size_t end = head.find(']', at);
    if (start == std::string_view::npos || end == std::string_view::npos || end < start) return std::nullopt;
    return box_in_text(head.substr(start + 1, end - start - 1));
}

std::optional<MapExtent> box_in_metadata(GDALDataset& dataset) {
    const char* text = dataset.GetMetadataItem("bbox");
    return text == nullptr ? std::nullopt : box_in_text(text);
}

}  // namespace landwidth
