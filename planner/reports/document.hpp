// A report as a document: parts with headings, sentences, tables and lists, written once. The terminal's text
// and the page are made of the same document, so that what they say cannot differ.
//
// Everything in a document is plain text; each renderer makes it safe for where it goes. Only a picture is
// markup: it is for the page, and shows nothing that a table or a sentence does not say.
#pragma once

#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "planner/reports/text_table.hpp"

namespace landwidth {

struct DocumentParagraph {
    std::string words;
};

// Sentences, each behind the mark.
struct DocumentList {
    std::vector<std::string> sentences;
    std::string mark = "- ";
};

// The first column names its row.
struct DocumentTable {
    std::vector<TextTable::Column> columns;
    std::vector<std::vector<std::string>> rows;
    std::string css_class = {};
};

struct DocumentPicture {
    std::string html;
};

using DocumentBlock = std::variant<DocumentParagraph, DocumentList, DocumentTable, DocumentPicture>;

struct DocumentPart {
    std::string heading;
    std::vector<DocumentBlock> blocks;
};

struct Document {
    std::string title;
    std::string subtitle = {};  // may be empty
    std::vector<DocumentPart> parts = {};
};

// No line wider than report_width.
std::string document_text(const Document& document);

// A block for a page that is not made of a document as a whole.
std::string block_html(const DocumentBlock& block);

// A page of its own. `more_style` is CSS beside the page's; `appendix` is HTML at the end of it (tables of
// assumptions, which the text leaves to JSON).
std::string document_html(const Document& document, std::string_view more_style = "",
                          std::string_view appendix = "");

}  // namespace landwidth
