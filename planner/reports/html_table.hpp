// Tables of the HTML report, with header cells that a screen reader can follow.
//
// Titles and cells are HTML already: escape names before.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace landwidth {

struct HtmlColumn {
    std::string title;
    bool number = false;  // set flush right
};

class HtmlTable {
  public:
    HtmlTable(std::string_view css_class, std::vector<HtmlColumn> columns)
        : css_class_(css_class), columns_(std::move(columns)) {}

    // One cell a column (std::logic_error otherwise); the first is the header of its row.
    void add_row(const std::vector<std::string>& cells, std::string_view css_class = "");
    // The last line, set apart: totals.
    void set_foot(const std::vector<std::string>& cells);
    void set_caption(std::string caption) { caption_ = std::move(caption); }
    bool empty() const { return body_.empty(); }
    // Inside a box that scrolls sideways where the screen is too narrow.
    std::string html() const;

  private:
    std::string row(const std::vector<std::string>& cells, std::string_view css_class) const;

    std::string css_class_;
    std::vector<HtmlColumn> columns_;
    std::string caption_;
    std::string body_;
    std::string foot_;
};

}  // namespace landwidth
