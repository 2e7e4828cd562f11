#include "geometry/geos_handles.hpp"

#include <stdexcept>
#include <string>
#include <utility>

namespace landwidth {
namespace {

// Regions with static storage outlive the context of the thread that destroys them.
thread_local bool context_is_gone = false;

class GeosContext {
  public:
    GeosContext() : handle_(GEOS_init_r()) {
        if (handle_ == nullptr) throw std::runtime_error("GEOS cannot be initialised");
        GEOSContext_setErrorMessageHandler_r(handle_, &keep_message, &message_);
    }
    GeosContext(const GeosContext&) = delete;
    GeosContext& operator=(const GeosContext&) = delete;
    ~GeosContext() {
        GEOS_finish_r(handle_);
        context_is_gone = true;
    }

    GEOSContextHandle_t handle() const { return handle_; }
    std::string take_message() { return std::exchange(message_, {}); }

  private:
    // Called from within GEOS, through which no exception may pass.
    static void keep_message(const char* text, void* message) noexcept {
        try {
            *static_cast<std::string*>(message) = text;
        } catch (...) {
        }
    }

    GEOSContextHandle_t handle_;
    std::string message_;
};

GeosContext& thread_context() {
    thread_local GeosContext context;
    return context;
}

template <typename Release>
void with_any_context(const Release& release) noexcept {
    if (context_is_gone) {
        const GEOSContextHandle_t handle = GEOS_init_r();
        release(handle);
        GEOS_finish_r(handle);
    } else {
        release(geos());
    }
}

GEOSCoordSequence* coordinates(std::span<const Point> points, bool close) {
    const auto size = static_cast<unsigned>(points.size() + (close ? 1 : 0));
    GEOSCoordSequence* sequence = GEOSCoordSeq_create_r(geos(), size, 2);
    if (sequence == nullptr) throw_geos_trouble();
    for (unsigned i = 0; i < size; ++i) {
        const Point p = points[i % points.size()];
        GEOSCoordSeq_setXY_r(geos(), sequence, i, p.x, p.y);
    }
    return sequence;
}

GeosPtr geos_ring(const Ring& ring) {
    const bool open = ring.front() != ring.back();
    return owned(GEOSGeom_createLinearRing_r(geos(), coordinates(ring, open)));
}

}  // namespace

GEOSContextHandle_t geos() {
    return thread_context().handle();
}

void GeosDeleter::operator()(GEOSGeometry* geometry) const noexcept {
    with_any_context([&](GEOSContextHandle_t handle) { GEOSGeom_destroy_r(handle, geometry); });
}
void GeosDeleter::operator()(GEOSBufferParams* params) const noexcept {
    GEOSBufferParams_destroy_r(geos(), params);
}
void GeosDeleter::operator()(GEOSMakeValidParams* params) const noexcept {
    GEOSMakeValidParams_destroy_r(geos(), params);
}
void GeosDeleter::operator()(char* text) const noexcept {
    GEOSFree_r(geos(), text);
}

void throw_geos_trouble() {
    const std::string message = thread_context().take_message();
    throw std::runtime_error("GEOS: " + (message.empty() ? std::string("failed without a reason") : message));
}

bool answer_of(char from_geos) {
    if (from_geos != 0 && from_geos != 1) throw_geos_trouble();
    return from_geos == 1;
}

GeosPtr geos_copy(const GEOSGeometry* geometry) {
    return owned(GEOSGeom_clone_r(geos(), geometry));
}

GeosPtr geos_collection(int type, std::vector<GeosPtr> parts) {
    std::vector<GEOSGeometry*> released;
    released.reserve(parts.size());
    for (GeosPtr& part : parts)
        released.push_back(part.release());
    return owned(
        GEOSGeom_createCollection_r(geos(), type, released.data(), static_cast<unsigned>(released.size())));
}

GeosPtr geos_point(Point p) {
    return owned(GEOSGeom_createPointFromXY_r(geos(), p.x, p.y));
}

GeosPtr geos_line(std::span<const Point> path) {
    return owned(GEOSGeom_createLineString_r(geos(), coordinates(path, false)));
}

GeosPtr geos_polygon(const PolygonRings& rings) {
    GeosPtr shell = geos_ring(rings.outer);
    std::vector<GeosPtr> holes;
    for (const Ring& inner : rings.inners)
        holes.push_back(geos_ring(inner));
    std::vector<GEOSGeometry*> released;
    released.reserve(holes.size());
    for (GeosPtr& hole : holes)
        released.push_back(hole.release());
    return owned(GEOSGeom_createPolygon_r(geos(), shell.release(), released.data(),
                                          static_cast<unsigned>(released.size())));
}

std::vector<Point> points_of(const GEOSGeometry* line_or_ring) {
    const GEOSCoordSequence* sequence = GEOSGeom_getCoordSeq_r(geos(), line_or_ring);
    unsigned size = 0;
    if (sequence == nullptr || GEOSCoordSeq_getSize_r(geos(), sequence, &size) == 0) throw_geos_trouble();
    std::vector<Point> points(size);
    for (unsigned i = 0; i < size; ++i) {
        GEOSCoordSeq_getXY_r(geos(), sequence, i, &points[i].x, &points[i].y);
    }
    return points;
}

}  // namespace landwidth
