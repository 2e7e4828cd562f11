// What to make of a shape that was not drawn in the form its tags ask for.
#include <algorithm>
#include <cmath>

#include "courses/reading/ogr_shapes.hpp"
#include "courses/tags/feature_findings.hpp"

namespace landwidth {

namespace {

constexpr double widest_gap_m = 10.0;
constexpr double widest_gap_share = 0.1;

std::size_t different_points(const LonLatPath& path) {
    std::vector<LonLat> seen;
    for (const LonLat& point : path) {
        if (std::find(seen.begin(), seen.end(), point) == seen.end()) seen.push_back(point);
        if (seen.size() == 3) break;
    }
    return seen.size();
}

double length_m(const LonLatPath& path) {
    double length = 0.0;
    for (std::size_t i = 1; i < path.size(); ++i)
        length += geodesic_distance(path[i - 1], path[i]);
    return length;
}

LonLat middle_of(const LonLatPath& ring) {
    const std::size_t count = ring.size() > 1 && ring.front() == ring.back() ? ring.size() - 1 : ring.size();
    LonLat sum;
    for (std::size_t i = 0; i < count; ++i) {
        sum.lon_deg += std::remainder(ring[i].lon_deg - ring.front().lon_deg, 360.0);
        sum.lat_deg += ring[i].lat_deg;
    }
    const auto n = static_cast<double>(count);
    return {ring.front().lon_deg + sum.lon_deg / n, sum.lat_deg / n};
}

class Former {
  public:
    Former(Form form, const MapFeature& feature, std::vector<Finding>& findings)
        : form_(form), feature_(feature), findings_(findings) {}

    std::vector<MapShape> form(ShapeParts&& parts) {
        for (LonLatPolygon& polygon : parts.polygons)
            take(std::move(polygon));
        for (LonLatPath& path : parts.paths)
            take(std::move(path));
        for (const LonLat& point : parts.points)
            take(point);
        std::vector<MapShape> shapes;
        if (!polygons_.empty()) shapes.emplace_back(std::move(polygons_));
        if (!paths_.empty()) shapes.emplace_back(std::move(paths_));
        for (const LonLat& point : points_)
            shapes.emplace_back(point);
        return shapes;
    }

  private:
    // A hole keeps whatever form it was drawn in: its assembly says what is wrong with it.
    bool is_hole() const { return feature_.role() == Role::hole; }

    void take(LonLatPolygon&& polygon) {
        if (form_ == Form::line && !is_hole()) {
            paths_.push_back(std::move(polygon.outer));
        } else if (form_ == Form::point) {
            if (!polygon.outer.empty()) points_.push_back(middle_of(polygon.outer));
        } else if (polygon.outer.empty()) {
            report<"shape-empty">(std::nullopt);
        } else if (different_points(polygon.outer) < 3) {
            report_thin(polygon.outer);
        } else {
            report_open_ring(polygon.outer);
            drop_thin_inners(polygon);
            polygons_.push_back(std::move(polygon));
        }
    }

    void drop_thin_inners(LonLatPolygon& polygon) {
        std::erase_if(polygon.inners, [this](const LonLatPath& inner) {
            if (inner.empty()) return true;
            if (different_points(inner) >= 3) return false;
            report_thin(inner);
            return true;
        });
    }

    void take(LonLatPath&& path) {
        if (path.empty()) {
            if (is_hole()) paths_.push_back(std::move(path));
            return;
        }
        if (form_ == Form::line) {
            if (is_hole() || !is_one_point(path)) paths_.push_back(std::move(path));
            return;
        }
        if (form_ == Form::point) {
            points_.push_back(middle_of(path));
            return;
        }
        const bool comes_back = path.front() == path.back();
        const bool closed = comes_back && path.size() > 3;
        const bool thin = different_points(path) < 3;
        if (thin && (closed || (comes_back && form_ != Form::any))) {
            report_thin(path);
        } else if (closed || close_gap(path)) {
            polygons_.push_back({std::move(path), {}});
        } else if (form_ == Form::any) {
            if (!is_one_point(path)) paths_.push_back(std::move(path));
        } else {
            report<"area-open">(path.front());
        }
    }

    bool is_one_point(const LonLatPath& path) {
        if (different_points(path) > 1) return false;
        report<"line-point">(path.front());
        return true;
    }

    void take(LonLat point) {
        if (form_ == Form::area || (form_ == Form::line && !is_hole())) {
            report<"area-missing">(point, form_ == Form::area ? "an area" : "a line");
        } else {
            points_.push_back(point);
        }
    }

    // Whether the ends are so near that the mapper must have meant to close it. An out-of-bounds line may
    // well be meant to end where it ends.
    bool close_gap(LonLatPath& path) {
        if (feature_.role() == Role::out_of_bounds || different_points(path) < 3) return false;
        const double gap = geodesic_distance(path.front(), path.back());
        if (gap > widest_gap_m || gap > widest_gap_share * length_m(path)) return false;
        report<"ring-closed/gap">(path.back(), std::lround(gap));
        path.push_back(path.front());
        return true;
    }

    void report_open_ring(const LonLatPath& ring) {
        if (ring.front() == ring.back()) return;
        report<"ring-closed/not-repeated">(ring.back());
    }

    void report_thin(const LonLatPath& ring) { report<"ring-thin/points">(ring.front()); }

    template <KindName kind, typename... Args>
    void report(std::optional<LonLat> place, const Args&... args) {
        findings_.push_back(finding_on<kind>(feature_, place, args...));
    }

    Form form_;
    const MapFeature& feature_;
    std::vector<Finding>& findings_;
    std::vector<LonLatPolygon> polygons_;
    std::vector<LonLatPath> paths_;
    std::vector<LonLat> points_;
};

}  // namespace

std::vector<MapShape> shapes_in_form(ShapeParts&& parts, Form form, const MapFeature& feature,
                                     std::vector<Finding>& findings) {
    return Former(form, feature, findings).form(std::move(parts));
}

}  // namespace landwidth
