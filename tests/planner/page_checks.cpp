#include "tests/planner/page_checks.hpp"

#include <cpl_minixml.h>

#include <memory>
#include <set>
#include <vector>

#include "tests/catch.hpp"

namespace landwidth {

namespace {

struct TreeDeleter {
    void operator()(CPLXMLNode* tree) const { CPLDestroyXMLNode(tree); }
};
using Tree = std::unique_ptr<CPLXMLNode, TreeDeleter>;

Tree parsed(const std::string& html) {
    return Tree(CPLParseXMLString(html.c_str()));
}

// Calls `visit` with every element and attribute below.
template <typename Visit>
void walk(const CPLXMLNode* node, const Visit& visit) {
    for (; node != nullptr; node = node->psNext) {
        visit(*node);
        walk(node->psChild, visit);
    }
}

}  // namespace

bool holds(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

void check_self_contained(const std::string& html) {
    const Tree tree = parsed(html);
    REQUIRE(tree != nullptr);
    walk(tree.get(), [](const CPLXMLNode& node) {
        const std::string name = node.pszValue;
        if (node.eType == CXT_Element) {
            const std::set<std::string> reaching_out{"script", "link",  "img",    "iframe", "object",
                                                     "embed",  "image", "source", "base",   "form"};
            INFO(name);
            CHECK(reaching_out.count(name) == 0);
        }
        if (node.eType != CXT_Attribute) return;
        const std::string value = node.psChild != nullptr ? node.psChild->pszValue : "";
        INFO(name << "=" << value);
        CHECK(name != "src");
        CHECK(name.substr(0, 2) != "on");
        if (name == "href") CHECK(value.substr(0, 1) == "#");
        CHECK_FALSE(holds(value, "://"));
    });
    CHECK_FALSE(holds(html, "@import"));
    for (auto at = html.find("url("); at != std::string::npos; at = html.find("url(", at + 1)) {
        CHECK(html.substr(at, 5) == "url(#");
    }
}

void check_identifiers(const std::string& html) {
    std::set<std::string> ids;
    std::vector<std::string> references;
    const Tree tree = parsed(html);
    walk(tree.get(), [&](const CPLXMLNode& node) {
        if (node.eType != CXT_Attribute || node.psChild == nullptr) return;
        const std::string name = node.pszValue;
        const std::string value = node.psChild->pszValue;
        if (name == "id") {
            INFO(value);
            CHECK(ids.insert(value).second);
        }
        if (name == "href") references.push_back(value.substr(1));
    });
    for (const std::string& reference : references) {
        INFO(reference);
        CHECK(ids.count(reference) == 1);
    }
}

}  // namespace landwidth
