#include "courses/reading/osm_xml.hpp"

#include <cpl_vsi.h>
#include <expat.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <memory>
#include <optional>
#include <type_traits>

#include "courses/text.hpp"
#include "geometry/error.hpp"

namespace landwidth {

namespace {

struct CloseFile {
    void operator()(VSILFILE* file) const { VSIFCloseL(file); }
};
struct FreeParser {
    void operator()(XML_Parser parser) const { XML_ParserFree(parser); }
};
using Parser = std::unique_ptr<std::remove_pointer_t<XML_Parser>, FreeParser>;

std::string attribute(const XML_Char** attributes, std::string_view name) {
    for (; *attributes != nullptr; attributes += 2) {
        if (name == attributes[0]) return attributes[1];
    }
    return {};
}

// Collects the elements of one file. Exceptions must not pass through expat, which is C: what goes wrong is
// kept and thrown by read_osm_xml().
class OsmHandler {
  public:
    OsmHandler(XML_Parser parser, std::string file) : parser_(parser), file_(std::move(file)) {}

    static void start(void* self, const XML_Char* name, const XML_Char** attributes) {
        static_cast<OsmHandler*>(self)->guarded([&](OsmHandler& handler) { handler.open(name, attributes); });
    }
    static void end(void* self, const XML_Char* name) {
        static_cast<OsmHandler*>(self)->guarded([&](OsmHandler& handler) { handler.close(name); });
    }

    static void characters(void* self, const XML_Char* text, int length) {
        auto* handler = static_cast<OsmHandler*>(self);
        if (handler->in_remark_) handler->document_.remark.append(text, static_cast<std::size_t>(length));
    }

    OsmDocument finish();
    const std::optional<InputError>& failure() const { return failure_; }

  private:
    template <typename Work>
    void guarded(Work work) {
        if (failure_) return;
        try {
            work(*this);
        } catch (const InputError& failure) {
            failure_ = failure;
            XML_StopParser(parser_, XML_FALSE);
        }
    }

    void open(std::string_view name, const XML_Char** attributes);
    void close(std::string_view name);
    void open_root(std::string_view name, const XML_Char** attributes);
    void open_part(std::string_view name, const XML_Char** attributes);
    void add_member_node(const XML_Char** attributes);
    void add_inline_node(const XML_Char** attributes, std::int64_t id);
    std::int64_t id_of(std::string_view kind, const XML_Char** attributes, std::string_view key) const;
    LonLat place_of(const XML_Char** attributes, const std::string& element) const;
    [[noreturn]] void refuse(const std::string& element, const std::string& problem) const {
        throw InputError(file_ + (element.empty() ? "" : ", " + element), problem);
    }

    XML_Parser parser_;
    std::string file_;
    OsmDocument document_;
    std::optional<InputError> failure_;
    bool rooted_ = false;
    OsmElement* current_ = nullptr;
    OsmWay* way_ = nullptr;
    OsmRelation* relation_ = nullptr;
    bool in_remark_ = false;
    OsmWay* member_way_ = nullptr;
    LonLat member_start_;
    std::vector<OsmNode> inline_nodes_;
    std::vector<OsmWay> inline_ways_;
};

std::int64_t OsmHandler::id_of(std::string_view kind, const XML_Char** attributes,
                               std::string_view key) const {
    const std::string text = attribute(attributes, key);
    try {
        std::size_t used = 0;
        const std::int64_t id = std::stoll(text, &used);
        if (used == text.size()) return id;
    } catch (const std::exception&) {
        // Reported below with the text.
    }
    refuse("line " + std::to_string(XML_GetCurrentLineNumber(parser_)),
           std::string(kind) + " has " + std::string(key) + "=\"" + text + "\", which is no number");
}

LonLat OsmHandler::place_of(const XML_Char** attributes, const std::string& element) const {
    const auto coordinate = [&](const char* name, double limit) {
        const std::string text = attribute(attributes, name);
        const std::optional<double> value = number_in(text);
        if (!value || std::abs(*value) > limit) {
            refuse(element, std::string(name) + "=\"" + text + "\" is no " +
                                (limit > 90.0 ? "longitude" : "latitude") +
                                " in degrees; correct or remove it");
        }
        return *value;
    };
    return {coordinate("lon", 180.0), coordinate("lat", 90.0)};
}

void OsmHandler::open_root(std::string_view name, const XML_Char** attributes) {
    rooted_ = true;
    if (name == "osmChange") {
        refuse("", "this is an OpenStreetMap change file, not a map; export the map itself");
    }
    if (name != "osm") {
        refuse("", "this is not an OpenStreetMap file: it starts with <" + std::string(name) + ">");
    }
    document_.copyright = attribute(attributes, "copyright");
    if (document_.copyright.empty()) document_.copyright = attribute(attributes, "attribution");
}

void OsmHandler::open(std::string_view name, const XML_Char** attributes) {
    if (!rooted_) return open_root(name, attributes);
    const bool node = name == "node";
    const bool way = name == "way";
    if (!node && !way && name != "relation") return open_part(name, attributes);

    if (attribute(attributes, "action") == "delete" || attribute(attributes, "visible") == "false") {
        ++document_.deleted;
        return;
    }
    const std::int64_t id = id_of(name, attributes, "id");
    if (node) {
        const LonLat place = place_of(attributes, "node/" + std::to_string(id));
        if (!document_.ways.empty() || !document_.relations.empty()) document_.in_order = false;
        document_.nodes.emplace_back();
        document_.nodes.back().place = place;
        current_ = &document_.nodes.back();
    } else if (way) {
        if (!document_.relations.empty()) document_.in_order = false;
        current_ = way_ = &document_.ways.emplace_back();
    } else {
        current_ = relation_ = &document_.relations.emplace_back();
    }
    current_->id = id;
}

void OsmHandler::add_inline_node(const XML_Char** attributes, std::int64_t id) {
    OsmNode node;
    node.id = id;
    node.place = place_of(attributes, "node/" + std::to_string(id));
    inline_nodes_.push_back(std::move(node));
}

void OsmHandler::open_part(std::string_view name, const XML_Char** attributes) {
    in_remark_ = name == "remark";
    if (current_ == nullptr) return;
    if (name == "tag") {
        current_->tags.emplace_back(attribute(attributes, "k"), attribute(attributes, "v"));
    } else if (name == "nd" && way_ != nullptr) {
        const std::int64_t id = id_of("nd", attributes, "ref");
        way_->nodes.push_back(id);
        if (!attribute(attributes, "lat").empty()) add_inline_node(attributes, id);
    } else if (name == "member" && relation_ != nullptr) {
        const std::string kind = attribute(attributes, "type");
        relation_->members.push_back({.kind = kind.empty() ? 'w' : kind.front(),
                                      .id = id_of("member", attributes, "ref"),
                                      .role = attribute(attributes, "role")});
        member_way_ = nullptr;
    } else if (name == "nd" && relation_ != nullptr && !relation_->members.empty()) {
        add_member_node(attributes);
    }
}

// A member's own points come without ids; theirs are made up, below those an editor gives to new elements.
void OsmHandler::add_member_node(const XML_Char** attributes) {
    constexpr std::int64_t below_editors = -4'000'000'000'000'000;
    const OsmMember& member = relation_->members.back();
    if (member.kind != 'w' || attribute(attributes, "lat").empty()) return;
    const LonLat place = place_of(attributes, "way/" + std::to_string(member.id));
    const std::int64_t id = below_editors - static_cast<std::int64_t>(inline_nodes_.size());
    if (member_way_ == nullptr) {
        member_way_ = &inline_ways_.emplace_back();
        member_way_->id = member.id;
        member_start_ = place;
    } else if (place == member_start_) {
        member_way_->nodes.push_back(member_way_->nodes.front());
        return;
    }
    member_way_->nodes.push_back(id);
    add_inline_node(attributes, id);
}

void OsmHandler::close(std::string_view name) {
    in_remark_ = false;
    if (name != "node" && name != "way" && name != "relation") return;
    current_ = nullptr;
    way_ = nullptr;
    relation_ = nullptr;
}

// How much an element says, to choose among doubles.
std::size_t weight(const OsmNode& node) {
    return node.tags.size();
}
std::size_t weight(const OsmWay& way) {
    return way.tags.size() + way.nodes.size();
}
std::size_t weight(const OsmRelation& relation) {
    return relation.tags.size() + relation.members.size();
}

template <typename Element>
int keep_one_each(std::vector<Element>& elements) {
    const auto ahead = [](const Element& a, const Element& b) {
        return a.id != b.id ? a.id < b.id : weight(a) > weight(b);
    };
    if (!std::is_sorted(elements.begin(), elements.end(), ahead))
        std::stable_sort(elements.begin(), elements.end(), ahead);
    const auto end = std::unique(elements.begin(), elements.end(),
                                 [](const Element& a, const Element& b) { return a.id == b.id; });
    const auto doubles = static_cast<int>(elements.end() - end);
    elements.erase(end, elements.end());
    return doubles;
}

template <typename Element>
bool strictly_ascending(const std::vector<Element>& elements) {
    return std::adjacent_find(elements.begin(), elements.end(), [](const Element& a, const Element& b) {
               return a.id >= b.id;
           }) == elements.end();
}

OsmDocument OsmHandler::finish() {
    if (!inline_nodes_.empty() || document_.deleted > 0) document_.in_order = false;
    if (!strictly_ascending(document_.nodes) || !strictly_ascending(document_.ways) ||
        !strictly_ascending(document_.relations)) {
        document_.doubled = keep_one_each(document_.nodes) + keep_one_each(document_.ways) +
                            keep_one_each(document_.relations);
        if (document_.doubled > 0) document_.in_order = false;
    }
    // Elements in full go before what stands inside others; neither is a double to report.
    if (!inline_nodes_.empty()) {
        std::move(inline_nodes_.begin(), inline_nodes_.end(), std::back_inserter(document_.nodes));
        std::move(inline_ways_.begin(), inline_ways_.end(), std::back_inserter(document_.ways));
        keep_one_each(document_.nodes);
        keep_one_each(document_.ways);
    }
    return std::move(document_);
}

void append_escaped(std::string& text, std::string_view value) {
    for (const char c : value) {
        switch (c) {
            case '&':
                text += "&amp;";
                break;
            case '<':
                text += "&lt;";
                break;
            case '>':
                text += "&gt;";
                break;
            case '"':
                text += "&quot;";
                break;
            case '\n':
                text += "&#10;";
                break;
            case '\t':
                text += "&#9;";
                break;
            default:
                text += c;
        }
    }
}

void append_tags(std::string& text, const OsmElement& element) {
    for (const auto& [key, value] : element.tags) {
        text += "<tag k=\"";
        append_escaped(text, key);
        text += "\" v=\"";
        append_escaped(text, value);
        text += "\"/>";
    }
}

}  // namespace

OsmDocument read_osm_xml(const std::string& gdal_path, const std::string& file) {
    const std::unique_ptr<VSILFILE, CloseFile> source(VSIFOpenL(gdal_path.c_str(), "rb"));
    if (!source) throw InputError(file, "cannot be read; check that it exists and that you may read it");
    const Parser parser(XML_ParserCreate(nullptr));
    OsmHandler handler(parser.get(), file);
    XML_SetUserData(parser.get(), &handler);
    XML_SetElementHandler(parser.get(), &OsmHandler::start, &OsmHandler::end);
    XML_SetCharacterDataHandler(parser.get(), &OsmHandler::characters);

    std::array<char, 65536> buffer{};
    bool done = false;
    while (!done) {
        const std::size_t count = VSIFReadL(buffer.data(), 1, buffer.size(), source.get());
        done = count < buffer.size();
        const XML_Status status =
            XML_Parse(parser.get(), buffer.data(), static_cast<int>(count), done ? XML_TRUE : XML_FALSE);
        if (handler.failure()) throw *handler.failure();
        if (status == XML_STATUS_ERROR) {
            throw InputError(file + ", line " + std::to_string(XML_GetCurrentLineNumber(parser.get())),
                             "the file is damaged here (" +
                                 std::string(XML_ErrorString(XML_GetErrorCode(parser.get()))) +
                                 "); export or download it again");
        }
    }
    return handler.finish();
}

std::string osm_xml_text(const OsmDocument& document) {
    std::string text = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<osm version=\"0.6\">\n";
    std::array<char, 96> line{};
    for (const OsmNode& node : document.nodes) {
        std::snprintf(line.data(), line.size(), "<node id=\"%lld\" lat=\"%.9f\" lon=\"%.9f\">",
                      static_cast<long long>(node.id), node.place.lat_deg, node.place.lon_deg);
        text += line.data();
        append_tags(text, node);
        text += "</node>\n";
    }
    for (const OsmWay& way : document.ways) {
        text += "<way id=\"" + std::to_string(way.id) + "\">";
        for (const std::int64_t node : way.nodes)
            text += "<nd ref=\"" + std::to_string(node) + "\"/>";
        append_tags(text, way);
        text += "</way>\n";
    }
    for (const OsmRelation& relation : document.relations) {
        text += "<relation id=\"" + std::to_string(relation.id) + "\">";
        for (const OsmMember& member : relation.members) {
            text += std::string("<member type=\"") +
                    (member.kind == 'n'   ? "node"
                     : member.kind == 'r' ? "relation"
                                          : "way") +
                    "\" ref=\"" + std::to_string(member.id) + "\" role=\"";
            append_escaped(text, member.role);
            text += "\"/>";
        }
        append_tags(text, relation);
        text += "</relation>\n";
    }
    return text + "</osm>\n";
}

Tags tags_of(const OsmElement& element) {
    Tags tags;
    for (const auto& [key, value] : element.tags) {
        if (!trimmed(value).empty()) tags.emplace(folded(key), trimmed(value));
    }
    return tags;
}

}  // namespace landwidth
