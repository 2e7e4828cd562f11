#include "courses/reading/osm_binary.hpp"

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <new>
#include <osmium/io/o5m_input.hpp>
#include <osmium/io/pbf_input.hpp>
#include <osmium/io/reader.hpp>
#include <osmium/thread/pool.hpp>
#include <set>
#include <stdexcept>
#include <string_view>

#include "courses/tags/vocabulary.hpp"
#include "courses/text.hpp"
#include "geometry/error.hpp"

namespace landwidth {

namespace {

using Kind = osmium::osm_entity_bits::type;

// Ids in a sorted list; filled first, then asked.
class IdList {
  public:
    void add(std::int64_t id) { ids_.push_back(id); }
    void sort() {
        std::sort(ids_.begin(), ids_.end());
        ids_.erase(std::unique(ids_.begin(), ids_.end()), ids_.end());
    }
    bool contains(std::int64_t id) const { return std::binary_search(ids_.begin(), ids_.end(), id); }

  private:
    std::vector<std::int64_t> ids_;
};

// Cells of a grid of degrees with golf in them or in a neighbour.
class GolfCells {
  public:
    void add(LonLat place) {
        for (int column = -1; column <= 1; ++column) {
            for (int row = -1; row <= 1; ++row)
                cells_.emplace(cell(place.lon_deg) + column, cell(place.lat_deg) + row);
        }
    }
    bool near(LonLat place) const { return cells_.contains({cell(place.lon_deg), cell(place.lat_deg)}); }

  private:
    static int cell(double degrees) { return static_cast<int>(std::floor(degrees / 0.05)); }
    std::set<std::pair<int, int>> cells_;
};

using TagTexts = std::vector<std::pair<std::string_view, std::string_view>>;

// The tags of a list, within its bytes: in a damaged file a text may hold a zero byte, after which
// libosmium's own iterators run on beyond the end. Throws std::runtime_error for such a list.
TagTexts texts_of(const osmium::TagList& list) {
    const char* at = reinterpret_cast<const char*>(list.data()) + sizeof(osmium::TagList);
    const char* const end = reinterpret_cast<const char*>(list.data()) + list.byte_size();
    const auto next = [&] {
        const char* const zero = std::find(at, end, '\0');
        if (zero == end) throw std::runtime_error("a tag without a value");
        const std::string_view text(at, static_cast<std::size_t>(zero - at));
        at = zero + 1;
        return text;
    };
    TagTexts texts;
    while (at < end) {
        const std::string_view key = next();
        texts.emplace_back(key, next());
    }
    return texts;
}

Role role_of_tags(const osmium::TagList& list) {
    const TagTexts texts = texts_of(list);
    const bool any = std::any_of(texts.begin(), texts.end(), [](const auto& tag) {
        return std::find(role_keys.begin(), role_keys.end(), folded(tag.first)) != role_keys.end();
    });
    if (!any) return Role::none;
    OsmElement element;
    for (const auto& [key, value] : texts)
        element.tags.emplace_back(key, value);
    return role_of(tags_of(element));
}

LonLat place_of(osmium::Location location) {
    return {location.lon_without_check(), location.lat_without_check()};
}

void fill(OsmElement& element, const osmium::OSMObject& object) {
    element.id = object.id();
    for (const auto& [key, value] : texts_of(object.tags()))
        element.tags.emplace_back(key, value);
}

class BinaryReading {
  public:
    BinaryReading(const BinarySource& source, const std::string& file, bool region)
        : source_(source), file_(file), region_(region) {}

    OsmElements read() {
        if (region_) find_what_is_near_golf();
        each<osmium::Relation>(Kind::relation, [this](const osmium::Relation& r) { take(r); });
        wanted_ways_.sort();
        each<osmium::Way>(Kind::way, [this](const osmium::Way& w) { take(w); });
        wanted_nodes_.sort();
        each<osmium::Node>(Kind::node, [this](const osmium::Node& n) { take(n); });
        return collector_.finish();
    }

  private:
    // Every element of one kind, in file order.
    template <typename Element, typename Work>
    void each(Kind kind, Work work) {
        try {
            osmium::thread::Pool pool(1, 10);
            const osmium::io::File file =
                source_.path.empty()
                    ? osmium::io::File(source_.bytes.data(), source_.bytes.size(), source_.format)
                    : osmium::io::File(source_.path, source_.format);
            osmium::io::Reader reader(file, kind, pool);
            take(reader.header());
            while (const osmium::memory::Buffer buffer = reader.read()) {
                for (const Element& element : buffer.select<Element>())
                    work(element);
            }
            reader.close();
        } catch (const InputError&) {
            throw;
        } catch (const std::bad_alloc&) {
            throw;
        } catch (const std::exception& failure) {
            throw InputError(file_, std::string("the file is damaged and cannot be read to its end (") +
                                        in_one_line(failure.what()) + "); export or download it again");
        }
    }

    void take(const osmium::io::Header& header) {
        if (collector_.elements.box || header.boxes().empty()) return;
        const osmium::Box box = header.joined_boxes();
        if (box.valid())
            collector_.add_box(box_between(place_of(box.bottom_left()), place_of(box.top_right())));
    }

    // What is not of use is passed over, what is deleted counted.
    bool counts(const osmium::OSMObject& object) {
        if (!object.visible()) {
            ++collector_.elements.deleted;
            return false;
        }
        ++collector_.elements.elements;
        return true;
    }

    static bool has_only_a_type(const osmium::TagList& tags) {
        const TagTexts texts = texts_of(tags);
        return std::all_of(texts.begin(), texts.end(), [](const auto& tag) { return tag.first == "type"; });
    }

    void take(const osmium::Relation& relation) {
        if (!counts(relation)) return;
        // One without tags of its own may lend its inner rings to its outer way.
        const Role role = role_of_tags(relation.tags());
        if (role == Role::none && !has_only_a_type(relation.tags())) return;
        const auto& members = relation.members();
        const auto is_near = [this](const osmium::RelationMember& member) {
            return member.type() == osmium::item_type::way && near_ways_.contains(member.ref());
        };
        if (region_ && !is_golf(role) && std::none_of(members.begin(), members.end(), is_near)) return;
        OsmRelation& record = collector_.elements.relations.emplace_back();
        fill(record, relation);
        for (const osmium::RelationMember& member : members) {
            record.members.push_back({osmium::item_type_to_char(member.type()), member.ref(), member.role()});
            if (member.type() == osmium::item_type::way) wanted_ways_.add(member.ref());
        }
    }

    void take(const osmium::Way& way) {
        if (!counts(way)) return;
        const bool member = wanted_ways_.contains(way.id());
        if (!member && region_ && !near_ways_.contains(way.id())) return;
        if (!member && role_of_tags(way.tags()) == Role::none) return;
        OsmWay& record = collector_.elements.ways.emplace_back();
        fill(record, way);
        for (const osmium::NodeRef& node : way.nodes()) {
            record.nodes.push_back(node.ref());
            wanted_nodes_.add(node.ref());
            if (node.location().is_undefined()) continue;
            check(node.location(), "way/" + std::to_string(way.id()));
            collector_.add_inline(node.ref(), place_of(node.location()));
        }
    }

    void take(const osmium::Node& node) {
        if (!counts(node)) return;
        check(node.location(), "node/" + std::to_string(node.id()));
        const LonLat place = place_of(node.location());
        if (!wanted_nodes_.contains(node.id())) {
            if (region_ && !golf_.near(place)) return;
            if (role_of_tags(node.tags()) == Role::none) return;
        }
        OsmNode& record = collector_.elements.nodes.emplace_back();
        fill(record, node);
        record.place = place;
    }

    void check(osmium::Location location, const std::string& element) const {
        if (location.valid()) return;
        const LonLat place = place_of(location);
        throw InputError(file_ + ", " + element, "its position (" + std::to_string(place.lon_deg) + ", " +
                                                     std::to_string(place.lat_deg) +
                                                     ") is not on the earth; correct or remove it");
    }

    void find_what_is_near_golf() {
        IdList ways;
        IdList nodes;
        each<osmium::Relation>(Kind::relation, [&](const osmium::Relation& relation) {
            if (!is_golf(role_of_tags(relation.tags()))) return;
            for (const osmium::RelationMember& member : relation.members())
                ways.add(member.ref());
        });
        ways.sort();
        each<osmium::Way>(Kind::way, [&](const osmium::Way& way) {
            if (!ways.contains(way.id()) && !is_golf(role_of_tags(way.tags()))) return;
            for (const osmium::NodeRef& node : way.nodes()) {
                nodes.add(node.ref());
                if (node.location().valid()) golf_.add(place_of(node.location()));
            }
        });
        nodes.sort();
        each<osmium::Node>(Kind::node, [&](const osmium::Node& node) {
            if (nodes.contains(node.id()) || is_golf(role_of_tags(node.tags())))
                golf_.add(place_of(node.location()));
        });
        IdList near_nodes;
        each<osmium::Node>(Kind::node, [&](const osmium::Node& node) {
            if (golf_.near(place_of(node.location()))) near_nodes.add(node.id());
        });
        near_nodes.sort();
        each<osmium::Way>(Kind::way, [&](const osmium::Way& way) {
            const bool near =
                std::any_of(way.nodes().begin(), way.nodes().end(), [&](const osmium::NodeRef& node) {
                    return near_nodes.contains(node.ref()) ||
                           (node.location().valid() && golf_.near(place_of(node.location())));
                });
            if (near) near_ways_.add(way.id());
        });
        near_ways_.sort();
    }

    const BinarySource& source_;
    const std::string& file_;
    bool region_;
    OsmCollector collector_;
    IdList wanted_ways_;
    IdList wanted_nodes_;
    GolfCells golf_;
    IdList near_ways_;
};

}  // namespace

std::uintmax_t BinarySource::size() const {
    if (path.empty()) return bytes.size();
    std::error_code trouble;
    const std::uintmax_t bytes_of_file = std::filesystem::file_size(path, trouble);
    return trouble ? 0 : bytes_of_file;
}

OsmElements read_osm_binary(const BinarySource& source, const std::string& file, bool region) {
    return BinaryReading(source, file, region).read();
}

}  // namespace landwidth
