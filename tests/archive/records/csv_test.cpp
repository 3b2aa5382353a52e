// What stands in a CSV file: harmless to open, and read back as it was.

#include "extension/archive/records/csv.hpp"
#include "extension/archive/records/read_csv.hpp"

#include <gtest/gtest.h>

namespace hearthcell::tests::archive {
namespace {

using namespace hearthcell::archive;
using Fields = std::vector<std::string>;

Fields read_back(std::string const& row) {
    Fields fields;
    CsvReader reader([&](Fields const& record) { fields = record; });
    reader.feed(row);
    return fields;
}

} // namespace

TEST(ARowOfCsv, HasABackslashBeforeWhatASpreadsheetMightTakeForAFormula) {
    for (std::string const text :
         {"=1+1",     "+1+1",     "-1+1",      "@SUM(A1)",      "\t=1",    "\r=1",     "\n=1",
          " =1",      "  =1",     "'=1",       "\"=1",          "' =1",    "\u200B=1", "\uFEFF=1",
          "\u00A0=1", "\u2060=1", "\uFF1D1+1", "\uFF20SUM(A1)", "-dashes", "--output", "+-5",
          "-",        "=",        "\\already", "\\=1",          "-2a",     "-inf;",    "+inf(1)"}) {
        std::string const row = csv_row({text});
        EXPECT_TRUE(row.starts_with("\\") || row.starts_with("\"\\")) << row;
    }
}

TEST(ARowOfCsv, HasABackslashWhereAFieldBeginsForOtherSeparators) {
    EXPECT_EQ(csv_row({"a;=1+1", "b\t@x", "c|-y", "d\n=1", "e; 'x", "f;-3", "g;\\h", "=A1;-B1"}),
              "a;\\=1+1,b\t\\@x,c|\\-y,\"d\n\\=1\",e; 'x,f;-3,g;\\\\h,\\=A1;\\-B1\r\n");
}

TEST(ARowOfCsv, LeavesNumbersAndOrdinaryTextsAlone) {
    for (std::string const text : {"-3.2", "+5", "-1e-300", "-1e-5000", "0", "", "a=b", "a -b", "STOVE", "#NUM!",
                                   "Err:504", "2019-03-05", "-inf", "nan", "μ", "(=1)"})
        EXPECT_EQ(csv_row({text}), text + "\r\n");
}

TEST(ARowOfCsv, IsReadBackAsItWas) {
    Fields const fields{"=A1",
                        "\\=A1",
                        "\\\\",
                        "\\",
                        "-3.2",
                        " =1",
                        "say \"hot\", twice",
                        "two\nlines",
                        "it's",
                        "",
                        "-x",
                        "a;=1",
                        "a;\\=1;\\\\;-2",
                        "\t\t=1",
                        ";;\\",
                        "|",
                        "\\;\\",
                        ";-5",
                        "\r\n=1\r\n"};
    EXPECT_EQ(read_back(csv_row(fields)), fields);
}

TEST(ARowOfCsv, HoldsNoControlCharactersAndOnlyUtf8) {
    EXPECT_EQ(csv_row({"a\x1b[31mb", "c\x9b", "d\u009b", "e\u202ef"}), "a\\x1b[31mb,c\\x9b,d\\u009b,e\\u202ef\r\n");
    EXPECT_EQ(csv_row({"\x1b]0;x\x07"}), "\\\\x1b]0;x\\x07\r\n") << "it begins with a backslash now";
}

} // namespace hearthcell::tests::archive
