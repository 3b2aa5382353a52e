#include "typed.hpp"

#include "extension/archive/inventory/words.hpp"
#include "extension/formulas/number.hpp"
#include "extension/formulas/our_functions.hpp"
#include "extension/formulas/reference.hpp"
#include "extension/formulas/rewriting.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>

namespace hearthcell::tests::archive {

namespace formulas = hearthcell::formulas;
using namespace hearthcell::archive;
using hearthcell::archive::Example;
using hearthcell::archive::Label;

namespace {

formulas::Block block(std::string const& name) {
    return formulas::address_in("X." + name)->block;
}

} // namespace

std::vector<std::vector<Label>> labels_of(Typed const& sheets) {
    std::vector<std::vector<Label>> all;
    for (TypedSheet const& sheet : sheets) {
        all.emplace_back();
        for (auto const& [name, text] : sheet.cells) {
            bool const is_word = !text.starts_with('=') && !formulas::number_in(text);
            if (is_word && std::ranges::find(sheet.entries, text) == sheet.entries.end())
                all.back().push_back(label_of(block(name).top, block(name).left, text, {}));
        }
    }
    return all;
}

TypedWorkbook::TypedWorkbook(Typed const& sheets) : room_(1 << 28), contents_(room_) {
    CellSink& sink = contents_;
    int number = 0;
    for (TypedSheet const& sheet : sheets) {
        sink.sheet(sheet.name);
        for (std::string const& merged : sheet.merged) {
            auto const [top, left, bottom, right] = block(merged);
            sink.merged({{number, top, left}, {number, bottom, right}});
        }
        for (auto const& [name, text] : sheet.cells) {
            FoundCell cell{{number, block(name).top, block(name).left}, {}, text.starts_with('='), text};
            if (!cell.is_result)
                cell.formula = {};
            if (auto const typed = formulas::number_in(text))
                cell.value = *typed;
            else if (!cell.is_result)
                cell.value = text;
            else
                cell.value = 1.0;
            sink.cell(std::move(cell));
        }
        ++number;
    }
    contents_.sort();
    seen_.emplace(contents_, labels_of(sheets), SameWords());
}

std::string flat(Typed const& sheets) {
    std::string xml = R"(<?xml version="1.0" encoding="UTF-8"?><office:document
 xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"
 xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2"
 office:version="1.3" office:mimetype="application/vnd.oasis.opendocument.spreadsheet"><office:body><office:spreadsheet>)";
    for (TypedSheet const& sheet : sheets) {
        xml += "<table:table table:name=\"" + sheet.name + "\">";
        int rows = 0, columns = 0;
        for (auto const& [name, text] : sheet.cells) {
            rows = std::max(rows, block(name).top + 1);
            columns = std::max(columns, block(name).left + 1);
        }
        for (int row = 0; row < rows; ++row) {
            xml += "<table:table-row>";
            for (int column = 0; column < columns; ++column) {
                auto const cell = sheet.cells.find(formulas::cell_name(column, row));
                if (cell == sheet.cells.end())
                    xml += "<table:table-cell/>";
                else if (cell->second.starts_with('='))
                    xml +=
                        "<table:table-cell office:value-type=\"float\" office:value=\"1\" table:formula='of:" +
                        formulas::rewritten(cell->second,
                                            [](formulas::Token const& token) -> std::optional<std::string> {
                                                if (token.kind != formulas::TokenKind::reference)
                                                    return std::nullopt;
                                                std::string text(token.text);
                                                if (text.find('.') == std::string::npos) {
                                                    text = "." + text;
                                                    if (auto const colon = text.find(':'); colon != std::string::npos)
                                                        text.insert(colon + 1, ".");
                                                }
                                                return "[" + text + "]";
                                            }) +
                        "'/>";
                else if (formulas::number_in(cell->second))
                    xml += "<table:table-cell office:value-type=\"float\" office:value=\"" + cell->second + "\"/>";
                else
                    xml += "<table:table-cell office:value-type=\"string\"><text:p>" + cell->second +
                           "</text:p></table:table-cell>";
            }
            xml += "</table:table-row>";
        }
        xml += "</table:table>";
    }
    return xml + "</office:spreadsheet></office:body></office:document>";
}

std::string carried(Typed const& old, Typed const& now, Typed const& target, bool partly) {
    std::filesystem::path const folder = EXAMPLES;
    std::filesystem::create_directories(folder);
    std::ofstream(folder / "old.fods") << flat(old);
    std::ofstream(folder / "new.fods") << flat(now);
    ExampleSet set;
    set.partly = partly;
    set.examples.push_back(
        std::make_unique<Example>(folder / "new.fods", folder / "old.fods", 1U << 28U, labels_of(old), SameWords()));
    TypedWorkbook const workbook(target);
    Plan const plan = plan_for(set, "2014/run.ods", workbook.seen());
    std::string text;
    for (Fit const& fit : plan.fits)
        for (Writing const& writing : fit.writings)
            text += workbook.seen().name(writing.place.sheet) + "." + cell_name(writing.place) + " " +
                    formulas::as_shown(writing.text) + "\n";
    for (Problem const& problem : plan.problems)
        text += std::string(words(problem.reason)) + ": " + problem.detail + "\n";
    return text;
}

} // namespace hearthcell::tests::archive
