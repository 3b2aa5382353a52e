// Prints the manual page of hearthcell-archive, for the build: the same table as --help.

#include "extension/archive/recalculation/option_table.hpp"
#include "functions/edition.hpp"

#include <CLI/CLI.hpp>

#include <iostream>

namespace hearthcell::archive {
namespace {

/// What is special to the language of manual pages.
std::string escaped(std::string const& text) {
    std::string safe;
    for (std::size_t at = 0; at < text.size(); ++at) {
        bool const line_start = at == 0 || text[at - 1] == '\n';
        if (line_start && (text[at] == '.' || text[at] == '\''))
            safe += "\\&";
        safe += text[at] == '\\' ? "\\e" : text[at] == '-' ? "\\-" : std::string(1, text[at]);
    }
    return safe;
}

std::string manual_page() {
    Raw raw;
    CLI::App app(description, "hearthcell-archive");
    describe(app, raw);
    std::string page = ".TH HEARTHCELL\\-ARCHIVE 1 \"\" \"" + escaped(edition) +
                       "\"\n.SH NAME\n"
                       "hearthcell\\-archive \\- recalculates archives of workbooks and lists what changed\n"
                       ".SH SYNOPSIS\n.B hearthcell\\-archive\n[\\fIoption\\fR]... [\\fIINPUT\\fR]... "
                       "\\fB\\-\\-output\\fR \\fIDIR\\fR\n.SH DESCRIPTION\n" +
                       escaped(description) + "\n.SH OPTIONS\n";
    for (CLI::Option const* const option : app.get_options()) {
        bool const positional = option->get_positional();
        std::string const argument = positional ? "" : option->get_type_name();
        page += ".TP\n" + (positional ? "\\fI" + escaped(option->get_single_name()) + "\\fR"
                                      : "\\fB" + escaped(option->get_name()) + "\\fR");
        if (!positional && option->get_items_expected_max() > 0 && !argument.empty())
            page += " \\fI" + escaped(argument) + "\\fR";
        page += "\n" + escaped(option->get_description());
        if (!option->get_default_str().empty() && option->get_single_name() != "workers")
            page += " (default: " + escaped(option->get_default_str()) + ")";
        if (option->get_single_name() == "workers")
            page += " (default: one a processor)";
        page += "\n";
    }
    return page + ".SH FILES AND EXAMPLES\n.nf\n" + escaped(footer) + ".fi\n";
}

} // namespace
} // namespace hearthcell::archive

int main() {
    std::cout << hearthcell::archive::manual_page();
}
