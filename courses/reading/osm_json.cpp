#include "courses/reading/osm_json.hpp"

#include <nlohmann/json.hpp>
#include <streambuf>

#include "courses/text.hpp"
#include "geometry/error.hpp"

namespace landwidth {

namespace {

using nlohmann::json;

// No larger document is held in pieces; elements of the open map are far smaller.
constexpr int deepest = 16;

// Stops at the key that tells what the document is.
class FirstKeys : public nlohmann::json_sax<json> {
  public:
    bool osm() const { return osm_; }

    bool null() override { return true; }
    bool boolean(bool) override { return true; }
    bool number_integer(number_integer_t) override { return true; }
    bool number_unsigned(number_unsigned_t) override { return true; }
    bool number_float(number_float_t, const string_t&) override { return true; }
    bool string(string_t&) override { return true; }
    bool binary(binary_t&) override { return true; }
    bool start_object(std::size_t) override { return ++depth_ <= deepest; }
    bool end_object() override { return --depth_ > 0; }
    bool start_array(std::size_t) override { return depth_ > 0 && ++depth_ <= deepest; }
    bool end_array() override { return --depth_ > 0; }
    bool key(string_t& name) override {
        if (depth_ != 1) return true;
        osm_ = name == "elements";
        return !osm_ && name != "features";
    }
    bool parse_error(std::size_t, const std::string&, const nlohmann::detail::exception&) override {
        return false;
    }

  private:
    int depth_ = 0;
    bool osm_ = false;
};

// An UnpackedFile as the parser wants it.
class Characters : public std::streambuf {
  public:
    explicit Characters(UnpackedFile& source) : source_(source) {}

  protected:
    int_type underflow() override {
        part_ = source_.read();
        if (part_.empty()) return traits_type::eof();
        setg(part_.data(), part_.data(), part_.data() + part_.size());
        return traits_type::to_int_type(part_.front());
    }

  private:
    UnpackedFile& source_;
    std::string part_;
};

std::string text_of(const json& object, const char* key) {
    const auto found = object.find(key);
    if (found == object.end() || found->is_null()) return {};
    return found->is_string() ? found->get<std::string>() : found->dump();
}

class JsonReading {
  public:
    JsonReading(UnpackedFile& source, const std::string& file) : source_(source), file_(file) {}

    OsmElements read() {
        Characters characters(source_);
        std::istream stream(&characters);
        // A stream swallows what its buffer throws unless told otherwise.
        stream.exceptions(std::ios::badbit);
        try {
            const json rest = json::parse(stream, [this](int depth, json::parse_event_t event, json& parsed) {
                return take(depth, event, parsed);
            });
            if (!rest.is_object()) throw InputError(file_, "is JSON but no map; export it again");
        } catch (const json::parse_error& failure) {
            throw InputError(
                file_ + ", byte " + std::to_string(failure.byte),
                "the file is damaged here: its JSON breaks off or is not well-formed; export it again");
        } catch (const json::exception& failure) {
            throw InputError(file_, std::string("the file is damaged (") + in_one_line(failure.what()) +
                                        "); export it again");
        }
        return collector_.finish();
    }

  private:
    // Called for every value once it is complete; false drops it from the document.
    bool take(int depth, json::parse_event_t event, json& parsed) {
        if (depth > deepest)
            throw InputError(file_, "the file is damaged: its JSON is nested too deeply; export it again");
        if (event == json::parse_event_t::key && depth == 1) top_ = parsed.get<std::string>();
        if (event == json::parse_event_t::object_end && depth == 2 && top_ == "elements") {
            take_element(parsed);
            return false;
        }
        if (event == json::parse_event_t::object_end && depth == 1) {
            if (top_ == "osm3s") collector_.elements.copyright = text_of(parsed, "copyright");
            if (top_ == "bounds") take_box(parsed);
        }
        if (event == json::parse_event_t::value && depth == 1 && parsed.is_string()) {
            if (top_ == "remark") collector_.elements.remark = parsed.get<std::string>();
            if (top_ == "copyright" || top_ == "attribution")
                collector_.elements.copyright = parsed.get<std::string>();
        }
        return true;
    }

    LonLat place_in_object(const json& object, const std::string& element) const {
        return place_in(text_of(object, "lon"), text_of(object, "lat"), file_ + ", " + element);
    }

    MapExtent box_in(const json& box, const std::string& element) const {
        const std::string where = file_ + ", " + element;
        return box_between(place_in(text_of(box, "minlon"), text_of(box, "minlat"), where),
                           place_in(text_of(box, "maxlon"), text_of(box, "maxlat"), where));
    }

    void take_box(const json& box) { collector_.add_box(box_in(box, "bounds")); }

    void take_element(const json& element) {
        const std::string type = text_of(element, "type");
        if (type != "node" && type != "way" && type != "relation") return;
        const auto visible = element.find("visible");
        if ((visible != element.end() && *visible == false) || text_of(element, "action") == "delete") {
            ++collector_.elements.deleted;
            return;
        }
        ++collector_.elements.elements;
        const std::int64_t id = id_in(element, "id", type + " number " + std::to_string(++count_));
        const std::string name = type + "/" + std::to_string(id);
        if (type == "node") {
            OsmNode& node = collector_.elements.nodes.emplace_back();
            fill(node, id, element);
            node.place = place_in_object(element, name);
        } else if (type == "way") {
            take_way(id, element, name);
        } else {
            take_relation(id, element, name);
        }
    }

    std::int64_t id_in(const json& object, const char* key, const std::string& what) const {
        const auto id = object.find(key);
        if (id != object.end() && id->is_number_integer()) return id->get<std::int64_t>();
        throw InputError(file_ + ", " + what, std::string("its \"") + key + "\" is no whole number");
    }

    static void fill(OsmElement& record, std::int64_t id, const json& element) {
        record.id = id;
        const auto tags = element.find("tags");
        if (tags == element.end() || !tags->is_object()) return;
        for (const auto& [key, value] : tags->items()) {
            if (!value.is_structured()) record.tags.emplace_back(key, text_of(*tags, key.c_str()));
        }
    }

    std::optional<LonLat> middle_of(const json& element, const std::string& name) const {
        if (const auto center = element.find("center"); center != element.end() && center->is_object())
            return place_in_object(*center, name);
        if (const auto bounds = element.find("bounds"); bounds != element.end() && bounds->is_object())
            return box_in(*bounds, name).middle();
        return std::nullopt;
    }

    void take_way(std::int64_t id, const json& element, const std::string& name) {
        OsmWay& way = collector_.elements.ways.emplace_back();
        fill(way, id, element);
        way.middle = middle_of(element, name);
        if (const auto nodes = element.find("nodes"); nodes != element.end() && nodes->is_array()) {
            for (const json& node : *nodes) {
                if (!node.is_number_integer())
                    throw InputError(file_ + ", " + name, "one of its \"nodes\" is no whole number");
                way.nodes.push_back(node.get<std::int64_t>());
            }
        }
        if (const auto places = element.find("geometry"); places != element.end() && places->is_array())
            take_places(way, *places, name);
    }

    // A position for every node of a way, made-up ids where it names none.
    void take_places(OsmWay& way, const json& places, const std::string& name) {
        const bool named = way.nodes.size() == places.size();
        if (!named) way.nodes.clear();
        std::size_t i = 0;
        for (const json& place : places) {
            if (!named) way.nodes.push_back(collector_.made_up_id());
            if (place.is_object()) collector_.add_inline(way.nodes[i], place_in_object(place, name));
            ++i;
        }
    }

    void take_relation(std::int64_t id, const json& element, const std::string& name) {
        OsmRelation& relation = collector_.elements.relations.emplace_back();
        fill(relation, id, element);
        relation.middle = middle_of(element, name);
        const auto members = element.find("members");
        if (members == element.end() || !members->is_array()) return;
        for (const json& member : *members) {
            if (!member.is_object()) continue;
            const std::string type = text_of(member, "type");
            OsmMember& record = relation.members.emplace_back();
            record.kind = type.empty() ? 'w' : type.front();
            record.id = id_in(member, "ref", name + ", a member");
            record.role = text_of(member, "role");
            const auto places = member.find("geometry");
            if (record.kind == 'w' && places != member.end() && places->is_array())
                take_places(collector_.add_inline_way(record.id), *places, name);
        }
    }

    UnpackedFile& source_;
    const std::string& file_;
    OsmCollector collector_;
    std::string top_;  // the outermost key being read
    int count_ = 0;
};

}  // namespace

bool is_osm_json(std::string_view head) {
    FirstKeys keys;
    json::sax_parse(head.begin(), head.end(), &keys);
    return keys.osm();
}

OsmElements read_osm_json(UnpackedFile& source, const std::string& file) {
    return JsonReading(source, file).read();
}

}  // namespace landwidth
