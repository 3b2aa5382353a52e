// hearthcell-workbook SOURCE.fods OUTPUT.{ods,ots,fods} [LANGUAGE TEXTS.json [SHARED.json…]]: makes a workbook of a
// flat ODF source, in a language. Ends with an error that lists every text that is missing from the texts, or not used.

#include "manifest/workbook/package.hpp"
#include "manifest/workbook/translate.hpp"
#include "manifest/workbook/trouble.hpp"

#include <iostream>

namespace {

using namespace hearthcell::workbook;

void read(pugi::xml_document& document, char const* file) {
    auto const result = document.load_file(file, pugi::parse_default | pugi::parse_ws_pcdata_single);
    if (!result)
        throw Trouble(std::string(file) + ": " + result.description());
}

void complain(std::set<std::string> const& texts, char const* what, std::string& complaint) {
    for (std::string const& text : texts)
        complaint += std::string("\n  ") + what + ": " + text;
}

void make(int count, char** arguments) {
    pugi::xml_document document;
    read(document, arguments[1]);
    if (count > 4) {
        Texts texts(arguments[3], {arguments + 5, arguments + count}, arguments[4]);
        translate(document, texts);
        std::string complaint;
        complain(texts.unknown(), "not among the texts", complaint);
        complain(texts.unused(), "not used", complaint);
        if (!complaint.empty())
            throw Trouble(std::string(arguments[1]) + " and its texts differ:" + complaint);
    }
    std::filesystem::path const output = arguments[2];
    if (output.extension() != ".fods")
        write_package(document, output);
    else if (!document.save_file(output.c_str(), "", pugi::format_raw))
        throw Trouble("cannot write " + output.string());
}

} // namespace

int main(int count, char** arguments) {
    if (count < 3 || count == 4) {
        std::cerr
            << "usage: hearthcell-workbook SOURCE.fods OUTPUT.{ods,ots,fods} [LANGUAGE TEXTS.json [SHARED.json…]]\n";
        return 2;
    }
    try {
        make(count, arguments);
    } catch (Trouble const& trouble) {
        std::cerr << "hearthcell-workbook: " << trouble.what() << "\n";
        return 1;
    }
    return 0;
}
