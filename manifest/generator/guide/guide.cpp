// The function guide: the user's reference and the acceptance test in one workbook, made from the catalogue.

#include "functions/edition.hpp"
#include "manifest/generator/guide/index.hpp"
#include "manifest/generator/guide/styles.hpp"
#include "manifest/generator/guide/uses.hpp"
#include "manifest/generator/guide/words.hpp"
#include "manifest/generator/output.hpp"

namespace hearthcell::generator {
namespace guide {
namespace {

constexpr std::string_view head = R"(<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0"
 xmlns:style="urn:oasis:names:tc:opendocument:xmlns:style:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"
 xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0"
 xmlns:fo="urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0"
 xmlns:svg="urn:oasis:names:tc:opendocument:xmlns:svg-compatible:1.0" xmlns:xlink="http://www.w3.org/1999/xlink"
 xmlns:number="urn:oasis:names:tc:opendocument:xmlns:datastyle:1.0" xmlns:dc="http://purl.org/dc/elements/1.1/"
 xmlns:calcext="urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0"
 xmlns:ooo="http://openoffice.org/2004/office"
 xmlns:config="urn:oasis:names:tc:opendocument:xmlns:config:1.0" xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2"
 office:version="1.3" office:mimetype="application/vnd.oasis.opendocument.spreadsheet">
)";

/// A sheet of blocks, and where they stand on it.
struct Subject {
    Sheet sheet;
    std::vector<BlockRows> blocks;
};

Subject subject_of(std::size_t group, Readings& readings, Language language) {
    IndexRows const index;
    Group const of = catalogue()[group];
    Subject subject{Sheet(std::string(of.title.in(language)), block_widths()), {}};
    auto const count = [&](char column) { return index_cell(column, index.of_subject(group), language); };
    std::string const tally =
        sentence_formula(word(Word::how_many_agree, language), {count(agreeing_column), count(checks_column)});
    subject.sheet.add({text("subject", of.title.in(language), 5), formula("tally", tally, "", 2),
                       formula("judgement", count(verdict_column), "")});
    subject.sheet.add({nothing("prose", 7), link("link", word(Word::to_the_index, language),
                                                 quoted_name(word(Word::index_sheet, language)) + ".A1")});
    subject.sheet.freeze();
    for (std::size_t place = 0; place < of.functions.size(); ++place)
        subject.blocks.push_back(add_block(subject.sheet, of.functions[place],
                                           index_cell(verdict_column, index.of_function(group, place), language),
                                           readings, language));
    judge_verdicts(subject.sheet, check_column, 1, subject.sheet.rows(), language);
    return subject;
}

void write_name(std::ostream& out, std::string_view name, std::string_view sheet, char column, int row) {
    out << "    <table:named-range table:name=\"" << name << "\" table:cell-range-address=\"$"
        << escaped(quoted_name(sheet)) << ".$" << column << "$" << row << "\" table:base-cell-address=\"$"
        << escaped(quoted_name(sheet)) << ".$A$1\"/>\n"; // without it Calc drops the name
}

/// The block whose first example gives the edition tells whether Hearthcell is there.
void write_names(std::ostream& out, std::vector<Subject> const& subjects, Sheet const& index) {
    out << "   <table:named-expressions>\n";
    write_name(out, "guide_verdict", index.name(), 'A', 2);
    write_name(out, "checks_that_agree", index.name(), agreeing_column, IndexRows().total());
    write_name(out, "checks_in_all", index.name(), checks_column, IndexRows().total());
    for (std::size_t group = 0; group < subjects.size(); ++group)
        for (std::size_t place = 0; place < subjects[group].blocks.size(); ++place)
            if (catalogue()[group].functions[place].name == "VERSION")
                write_name(out, installed_edition, subjects[group].sheet.name(), result_column,
                           subjects[group].blocks[place].first_check);
    out << "   </table:named-expressions>\n";
}

} // namespace
} // namespace guide

void write_guide(std::ostream& out, Language language) {
    using namespace guide;
    Readings readings(language);
    std::vector<Subject> subjects;
    std::vector<std::string> names;
    std::vector<std::vector<BlockRows>> blocks;
    std::size_t const groups = catalogue().size();
    for (std::size_t group = 0; group < groups; ++group) {
        subjects.push_back(subject_of(group, readings, language));
        names.push_back(subjects.back().sheet.name());
        blocks.push_back(subjects.back().blocks);
    }
    std::vector<Sheet> sheets{index_sheet(names, blocks, language)};
    for (Subject const& subject : subjects)
        sheets.push_back(subject.sheet);
    sheets.push_back(uses_sheet(language));
    sheets.push_back(readings.sheet());

    out << head << " <office:meta><dc:title>" << escaped(word(Word::title, language)) << " · " << edition
        << "</dc:title></office:meta>\n";
    write_styles(out, sheets, language);
    out << " <office:body>\n  <office:spreadsheet>\n";
    for (std::size_t place = 0; place < sheets.size(); ++place)
        sheets[place].write(out, place);
    write_names(out, subjects, sheets.front());
    out << "  </office:spreadsheet>\n </office:body>\n</office:document>\n";
}

} // namespace hearthcell::generator
