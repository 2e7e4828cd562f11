#include "courses/gdal_session.hpp"

#include <cpl_conv.h>
#include <gdal.h>
#include <ogr_srs_api.h>

#include <array>
#include <mutex>
#include <string_view>

#include "courses/text.hpp"

namespace landwidth {

void prepare_gdal() {
    static std::once_flag once;
    std::call_once(once, [] {
        GDALAllRegister();
        OSRSetPROJEnableNetwork(0);
    });
}

GdalMessages::GdalMessages() {
    CPLPushErrorHandlerEx(&GdalMessages::take, this);
    CPLErrorReset();
}

GdalMessages::~GdalMessages() {
    CPLPopErrorHandler();
    CPLErrorReset();
}

void CPL_STDCALL GdalMessages::take(CPLErr level, CPLErrorNum, const char* text) {
    auto* self = static_cast<GdalMessages*>(CPLGetErrorHandlerUserData());
    if (self == nullptr || text == nullptr) return;
    if (level < CE_Failure || self->failure_) return;
    static constexpr std::array<std::string_view, 3> words_of_geos{"TopologyException",
                                                                   "IllegalArgumentException", "GEOS"};
    for (const std::string_view words : words_of_geos) {
        if (std::string_view(text).starts_with(words)) return;
    }
    self->failure_ = in_one_line(text);
}

}  // namespace landwidth
