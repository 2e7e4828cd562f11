#include "planner/reports/html_table.hpp"

#include <fmt/format.h>

#include <stdexcept>

namespace landwidth {
namespace {

std::string attribute_class(std::string_view css_class) {
    return css_class.empty() ? std::string() : fmt::format(" class=\"{}\"", css_class);
}

}  // namespace

std::string HtmlTable::row(const std::vector<std::string>& cells, std::string_view css_class) const {
    if (cells.size() != columns_.size()) throw std::logic_error("a table row with too few or too many cells");
    std::string html = fmt::format("<tr{}>", attribute_class(css_class));
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const std::string css = attribute_class(columns_[i].number ? "n" : "");
        html += i == 0 ? fmt::format("<th scope=\"row\"{}>{}</th>", css, cells[i])
                       : fmt::format("<td{}>{}</td>", css, cells[i]);
    }
    return html + "</tr>\n";
}

void HtmlTable::add_row(const std::vector<std::string>& cells, std::string_view css_class) {
    body_ += row(cells, css_class);
}

void HtmlTable::set_foot(const std::vector<std::string>& cells) {
    foot_ = row(cells, "");
}

std::string HtmlTable::html() const {
    std::string head;
    for (const HtmlColumn& column : columns_) {
        head += fmt::format("<th scope=\"col\"{}>{}</th>", attribute_class(column.number ? "n" : ""),
                            column.title);
    }
    const std::string caption =
        caption_.empty() ? std::string() : fmt::format("<caption>{}</caption>\n", caption_);
    const std::string foot = foot_.empty() ? std::string() : fmt::format("<tfoot>\n{}</tfoot>\n", foot_);
    return fmt::format(
        "<div class=\"scroll\" "
        "tabindex=\"0\"><table{}>\n{}<thead><tr>{}</tr></thead>\n<tbody>\n{}</tbody>\n{}"
        "</table></div>\n",
        attribute_class(css_class_), caption, head, body_, foot);
}

}  // namespace landwidth
