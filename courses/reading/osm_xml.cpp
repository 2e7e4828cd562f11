#include "courses/reading/osm_xml.hpp"

#include <expat.h>

#include <exception>
#include <memory>
#include <string_view>
#include <type_traits>

#include "courses/text.hpp"
#include "geometry/error.hpp"

namespace landwidth {

namespace {

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
        if (handler->in_remark_) handler->elements_.remark.append(text, static_cast<std::size_t>(length));
    }

    OsmElements finish() { return collector_.finish(); }
    void rethrow() const {
        if (failure_) std::rethrow_exception(failure_);
    }

  private:
    template <typename Work>
    void guarded(Work work) {
        if (failure_) return;
        try {
            work(*this);
        } catch (...) {
            failure_ = std::current_exception();
            XML_StopParser(parser_, XML_FALSE);
        }
    }

    void open(std::string_view name, const XML_Char** attributes);
    void close(std::string_view name);
    void open_root(std::string_view name, const XML_Char** attributes);
    void open_part(std::string_view name, const XML_Char** attributes);
    void add_box(const XML_Char** attributes);
    void add_middle(LonLat place);
    void add_way_node(const XML_Char** attributes);
    void add_member(const XML_Char** attributes);
    void add_member_node(const XML_Char** attributes);
    std::int64_t id_of(std::string_view kind, const XML_Char** attributes, std::string_view key) const;
    LonLat place_of(const XML_Char** attributes, const std::string& element) const {
        return place_in(attribute(attributes, "lon"), attribute(attributes, "lat"), file_ + ", " + element);
    }
    [[noreturn]] void refuse(const std::string& element, const std::string& problem) const {
        throw InputError(file_ + (element.empty() ? "" : ", " + element), problem);
    }

    XML_Parser parser_;
    std::string file_;
    OsmCollector collector_;
    OsmElements& elements_ = collector_.elements;
    std::exception_ptr failure_;
    bool rooted_ = false;
    OsmElement* current_ = nullptr;
    OsmWay* way_ = nullptr;
    OsmRelation* relation_ = nullptr;
    bool in_remark_ = false;
    OsmWay* member_way_ = nullptr;
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
           std::string(kind) + " has " + std::string(key) + "=\"" + in_one_line(text) +
               "\", which is no number");
}

void OsmHandler::open_root(std::string_view name, const XML_Char** attributes) {
    rooted_ = true;
    if (name == "osmChange") {
        refuse("", "this is an OpenStreetMap change file, not a map; export the map itself");
    }
    if (name != "osm") {
        refuse("", "this is not an OpenStreetMap file: it starts with <" + in_one_line(name) + ">");
    }
    elements_.copyright = attribute(attributes, "copyright");
    if (elements_.copyright.empty()) elements_.copyright = attribute(attributes, "attribution");
}

void OsmHandler::open(std::string_view name, const XML_Char** attributes) {
    if (!rooted_) return open_root(name, attributes);
    const bool node = name == "node";
    const bool way = name == "way";
    if (!node && !way && name != "relation") return open_part(name, attributes);

    if (attribute(attributes, "action") == "delete" || attribute(attributes, "visible") == "false") {
        ++elements_.deleted;
        return;
    }
    ++elements_.elements;
    const std::int64_t id = id_of(name, attributes, "id");
    if (node) {
        const LonLat place = place_of(attributes, "node/" + std::to_string(id));
        elements_.nodes.emplace_back().place = place;
        current_ = &elements_.nodes.back();
    } else if (way) {
        current_ = way_ = &elements_.ways.emplace_back();
    } else {
        current_ = relation_ = &elements_.relations.emplace_back();
    }
    current_->id = id;
}

void OsmHandler::open_part(std::string_view name, const XML_Char** attributes) {
    in_remark_ = name == "remark";
    if (name == "bounds") return add_box(attributes);
    if (current_ == nullptr) return;
    if (name == "tag") {
        current_->tags.emplace_back(attribute(attributes, "k"), attribute(attributes, "v"));
    } else if (name == "center") {
        add_middle(place_of(attributes, "center of " + std::to_string(current_->id)));
    } else if (name == "nd" && way_ != nullptr) {
        add_way_node(attributes);
    } else if (name == "member" && relation_ != nullptr) {
        add_member(attributes);
    } else if (name == "nd" && relation_ != nullptr && !relation_->members.empty()) {
        add_member_node(attributes);
    }
}

// The box of the file, or inside an element the box of that.
void OsmHandler::add_box(const XML_Char** attributes) {
    const auto corner = [&](const char* lon, const char* lat) {
        return place_in(attribute(attributes, lon), attribute(attributes, lat), file_ + ", bounds");
    };
    const LonLat low = corner("minlon", "minlat");
    const LonLat high = corner("maxlon", "maxlat");
    if (current_ == nullptr) {
        collector_.add_box(box_between(low, high));
    } else if (way_ != nullptr || relation_ != nullptr) {
        add_middle(box_between(low, high).middle());
    }
}

void OsmHandler::add_middle(LonLat place) {
    if (way_ != nullptr) way_->middle = place;
    if (relation_ != nullptr) relation_->middle = place;
}

// With a position, with an id, or with both.
void OsmHandler::add_way_node(const XML_Char** attributes) {
    const bool placed = !attribute(attributes, "lat").empty();
    const bool named = placed ? !attribute(attributes, "ref").empty() : true;
    const std::int64_t id = named ? id_of("nd", attributes, "ref") : collector_.made_up_id();
    way_->nodes.push_back(id);
    if (placed) collector_.add_inline(id, place_of(attributes, "node/" + std::to_string(id)));
}

void OsmHandler::add_member(const XML_Char** attributes) {
    const std::string kind = attribute(attributes, "type");
    const std::int64_t id = id_of("member", attributes, "ref");
    relation_->members.push_back(
        {.kind = kind.empty() ? 'w' : kind.front(), .id = id, .role = attribute(attributes, "role")});
    member_way_ = nullptr;
}

// A member's own points come without ids; one outside the box asked for also without a position.
void OsmHandler::add_member_node(const XML_Char** attributes) {
    const OsmMember& member = relation_->members.back();
    if (member.kind != 'w') return;
    if (member_way_ == nullptr) member_way_ = &collector_.add_inline_way(member.id);
    const bool placed = !attribute(attributes, "lat").empty();
    member_way_->nodes.push_back(
        placed ? collector_.add_inline(place_of(attributes, "way/" + std::to_string(member.id)))
               : collector_.made_up_id());
}

void OsmHandler::close(std::string_view name) {
    in_remark_ = false;
    if (name != "node" && name != "way" && name != "relation") return;
    current_ = nullptr;
    way_ = nullptr;
    relation_ = nullptr;
}

}  // namespace

OsmElements read_osm_xml(UnpackedFile& source, const std::string& file) {
    const Parser parser(XML_ParserCreate(nullptr));
    OsmHandler handler(parser.get(), file);
    XML_SetUserData(parser.get(), &handler);
    XML_SetElementHandler(parser.get(), &OsmHandler::start, &OsmHandler::end);
    XML_SetCharacterDataHandler(parser.get(), &OsmHandler::characters);

    bool done = false;
    while (!done) {
        const std::string part = source.read();
        done = part.empty();
        const XML_Status status =
            XML_Parse(parser.get(), part.data(), static_cast<int>(part.size()), done ? XML_TRUE : XML_FALSE);
        handler.rethrow();
        if (status == XML_STATUS_ERROR) {
            throw InputError(file + ", line " + std::to_string(XML_GetCurrentLineNumber(parser.get())),
                             "the file is damaged here (" +
                                 std::string(XML_ErrorString(XML_GetErrorCode(parser.get()))) +
                                 "); export or download it again");
        }
    }
    return handler.finish();
}

}  // namespace landwidth
