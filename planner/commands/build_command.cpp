#include "planner/commands/build_command.hpp"

#include <fmt/format.h>

#include <ostream>

namespace landwidth {

void BuildCommand::setup(CLI::App& app) {
    build_.setup(app);
    output_.setup(app, {"text", "json", "html"});
    app.get_option("--units")->description("carry, typed and shown: yards or metres");
    app.footer(
        "Example: landwidth build --length 45.5 --head 198 --shaft 62 --grip 50 --to-length 44.5\n"
        "Example: landwidth build me.json --club driver --to-length 44.5 --format html -o build.html\n"
        "Example: landwidth build --total 318 --balance 33.9           (swing weight)\n"
        "Example: landwidth build --total 318 --swing-weight D2        (balance point)\n"
        "A range is no forecast: a trial beats the table.");
}

int BuildCommand::run(std::ostream& out, std::ostream& err) {
    output_.check();
    std::vector<std::string> warnings;
    const BuildView view = build_.answer(output_.units(), warnings);
    for (const std::string& warning : warnings)
        err << fmt::format("landwidth: warning: {}\n", warning);
    output_.write(output_.format() == "json"   ? build_json(view)
                  : output_.format() == "html" ? build_html(view)
                                               : build_text(view),
                  out);
    return 0;
}

}  // namespace landwidth
