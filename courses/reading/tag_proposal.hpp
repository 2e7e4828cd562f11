// What the layers and columns of a map without golf tags seem to mean: a file of tags (tag_mapping.hpp), to
// be looked over and saved.
//
// Only clear evidence counts: the name of a layer, a value of a column or a name with the number of a hole in
// it that is a known phrase as a whole (ground_words.hpp). A column counts when golf ground is among what it
// says so, or when at least half of the features with a text in it say something. What was not understood
// there stands beside it as a remark, numbers in it as <number>.
#pragma once

#include <gdal_priv.h>

#include <string>

namespace landwidth {

// Empty when nothing on the map says what its ground is.
std::string proposed_tag_file(GDALDataset& dataset, const std::string& file);

}  // namespace landwidth
