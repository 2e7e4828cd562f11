// Opens what the reports wrote with GDAL.
#pragma once

#include <gdal_priv.h>
#include <ogrsf_frmts.h>

#include <memory>
#include <string>

namespace landwidth::fixture {

struct CloseDataset {
    void operator()(GDALDataset* dataset) const { GDALClose(dataset); }
};
using DatasetPtr = std::unique_ptr<GDALDataset, CloseDataset>;

// Null when GDAL cannot.
inline DatasetPtr open_vector(const std::string& path) {
    GDALAllRegister();
    return DatasetPtr(static_cast<GDALDataset*>(
        GDALOpenEx(path.c_str(), GDAL_OF_VECTOR | GDAL_OF_READONLY, nullptr, nullptr, nullptr)));
}

}  // namespace landwidth::fixture
