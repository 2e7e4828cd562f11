#include "planner/reports/document.hpp"

#include <fmt/format.h>

#include "planner/reports/html_table.hpp"
#include "planner/reports/html_text.hpp"
#include "planner/reports/page_parts.hpp"

namespace landwidth {
namespace {

struct AsText {
    std::string operator()(const DocumentParagraph& paragraph) const { return wrapped(paragraph.words); }
    std::string operator()(const DocumentList& list) const {
        std::string text;
        for (const std::string& words : list.sentences)
            text += wrapped(words, list.mark);
        return text;
    }
    std::string operator()(const DocumentTable& table) const {
        TextTable lines(table.columns);
        for (const auto& row : table.rows)
            lines.add_row(row);
        return lines.text();
    }
    std::string operator()(const DocumentPicture&) const { return {}; }
};

struct AsHtml {
    std::string operator()(const DocumentParagraph& paragraph) const {
        return fmt::format("<p>{}</p>\n", sentence(paragraph.words));
    }
    std::string operator()(const DocumentList& list) const { return bullet_list(list.sentences); }
    std::string operator()(const DocumentTable& table) const {
        std::vector<HtmlColumn> columns;
        for (const TextTable::Column& column : table.columns)
            columns.push_back({sentence(column.heading), column.align == TextTable::Align::right});
        HtmlTable html(table.css_class, columns);
        for (const auto& row : table.rows) {
            std::vector<std::string> cells;
            for (const std::string& cell : row)
                cells.push_back(sentence(cell));
            html.add_row(cells);
        }
        return html.html();
    }
    std::string operator()(const DocumentPicture& picture) const { return picture.html; }
};

bool is_table(const DocumentBlock& block) {
    return std::holds_alternative<DocumentTable>(block);
}

}  // namespace

std::string document_text(const Document& document) {
    std::string text = wrapped(document.title);
    if (!document.subtitle.empty()) text += wrapped(document.subtitle);
    for (const DocumentPart& part : document.parts) {
        text += "\n" + (part.heading.empty() ? "" : wrapped(part.heading));
        bool after_table = false;
        bool first = true;
        for (const DocumentBlock& block : part.blocks) {
            const std::string piece = std::visit(AsText{}, block);
            if (piece.empty()) continue;
            // Air around tables.
            if (!first && (after_table || is_table(block))) text += "\n";
            text += piece;
            after_table = is_table(block);
            first = false;
        }
    }
    return text;
}

std::string block_html(const DocumentBlock& block) {
    return std::visit(AsHtml{}, block);
}

std::string document_html(const Document& document, std::string_view more_style, std::string_view appendix) {
    std::string html = page_head(document.title, more_style) + "<body>\n";
    html += fmt::format("<header>\n<h1>{}</h1>\n", sentence(document.title));
    if (!document.subtitle.empty())
        html += fmt::format("<p class=\"sub\">{}</p>\n", sentence(document.subtitle));
    html += "</header>\n<main>\n";
    for (const DocumentPart& part : document.parts) {
        html += "<section class=\"part\">\n";
        if (!part.heading.empty()) html += fmt::format("<h2>{}</h2>\n", sentence(part.heading));
        for (const DocumentBlock& block : part.blocks)
            html += block_html(block);
        html += "</section>\n";
    }
    html += appendix;
    return html + "</main>\n" + page_footer({}) + "</body>\n</html>\n";
}

}  // namespace landwidth
