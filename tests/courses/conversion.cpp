#include "tests/courses/conversion.hpp"

#include <gdal_priv.h>
#include <gdal_utils.h>

#include <memory>
#include <stdexcept>

#include "courses/gdal_session.hpp"

namespace landwidth::test {

namespace {

struct FreeOptions {
    void operator()(GDALVectorTranslateOptions* options) const { GDALVectorTranslateOptionsFree(options); }
};

}  // namespace

std::filesystem::path converted(const std::filesystem::path& from, const std::filesystem::path& to,
                                const std::vector<std::string>& arguments) {
    prepare_gdal();
    const GdalMessages quiet;
    CPLStringList list;
    for (const std::string& argument : arguments)
        list.AddString(argument.c_str());
    const std::unique_ptr<GDALVectorTranslateOptions, FreeOptions> options(
        GDALVectorTranslateOptionsNew(list.List(), nullptr));
    const GDALDatasetUniquePtr source(GDALDataset::Open(from.c_str(), GDAL_OF_VECTOR));
    if (!source) throw std::runtime_error("cannot open " + from.string());
    GDALDatasetH handle = GDALDataset::ToHandle(source.get());
    const GDALDatasetUniquePtr target(GDALDataset::FromHandle(
        GDALVectorTranslate(to.c_str(), nullptr, 1, &handle, options.get(), nullptr)));
    if (!target) throw std::runtime_error("cannot convert: " + quiet.failure().value_or(""));
    return to;
}

}  // namespace landwidth::test
