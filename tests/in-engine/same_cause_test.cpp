// One and the same cause gives one and the same error: in a cell, through EACHROW, in EXPLAIN, in every language.

#include "calc.hpp"

namespace hearthcell::tests {
namespace {

/// What stands in a cell, typed or as a text, and what a function makes of it: where there is a mass in grams, and
/// where a share that may be 0.
struct Cause {
    std::string what;
    std::string typed; ///< as a formula or number; empty where `text` is meant
    std::string text;  ///< of a cell that holds a text
    CellValue as_mass, as_moisture;
};

std::vector<Cause> causes() {
    std::vector<Cause> all{
        {"a number", "400", "", 200.0, not_a_result},
        {"a whole number in a text", "", "400", 200.0, not_a_result},
        {"a number below the range", "0.4", "", not_a_result, 600.0},
    };
    for (char const* const text : {"1.200", "1,200", "1 200", "12.5", "12,5", "1e3", " 12 ", "50%", "TRUE", "VRAI",
                                   "12:30", "1/2", "2026-11-30", "30.11.2026", "400 g", "a log", "\u0664\u0660\u0660"})
        all.push_back({"the text " + std::string(text), "", text, not_a_value, not_a_value});
    return all;
}

bool is_error(CellValue const& value) {
    return std::holds_alternative<CellError>(value);
}

class SameCause {
public:
    explicit SameCause(Office& office) : document_(Document::blank(office)), sheet_(document_.sheet(0)) {}

    void expect(Cause const& cause) {
        SCOPED_TRACE(cause.what);
        sheet_.formulas("B1", {{"300", "1000"}, {"", "1000"}});
        if (cause.typed.empty())
            sheet_.text("B2", cause.text);
        else
            sheet_.formula("B2", cause.typed);
        expect_of("B2;0.5", "B1:B2;0.5", cause.as_mass);
        expect_of("1000;B2", "C1:C2;B1:B2", cause.as_moisture);
        if (cause.typed.empty()) {
            EXPECT_EQ(value_of("=STOVE.DRYMASS(\"" + cause.text + "\";0.5)"), cause.as_mass) << "typed into the call";
        }
        EXPECT_TRUE(is_error(value_of("=STOVE.BOILINGPOINT(1240;B2)"))) << "no pressure in an optional argument";
    }

    void expect_of(std::string const& alone, std::string const& in_rows, CellValue const& expected) {
        EXPECT_EQ(value_of("=STOVE.DRYMASS(" + alone + ")"), expected) << "alone";
        EXPECT_EQ(value_of("=STOVE.EACHROW(\"DRYMASS\";" + alone + ")"), expected) << "one row";
        EXPECT_EQ(value_of("=INDEX(STOVE.EACHROW(\"DRYMASS\";" + in_rows + ");2)"), expected) << "the second row";
        CellValue const said = value_of("=STOVE.EXPLAIN(\"DRYMASS\";" + alone + ")");
        std::string const& sentence = std::get<std::string>(said);
        EXPECT_EQ(sentence.starts_with("Fine") || sentence.starts_with("Odd"), !is_error(expected)) << sentence;
    }

    CellValue value_of(std::string const& formula) {
        sheet_.formula("D1", formula);
        return sheet_.value("D1");
    }

    Sheet& sheet() { return sheet_; }

private:
    Document document_;
    Sheet sheet_;
};

void expect_all(Office& office) {
    SameCause same(office);
    for (Cause const& cause : causes())
        same.expect(cause);
    // What no add-in can tell: a lone empty cell is 0, also through EACHROW; an error never reaches a function.
    same.sheet().formulas("B1", {{"300"}, {"=1/0"}});
    EXPECT_EQ(same.value_of("=STOVE.DRYMASS(A1;0.5)"), CellValue(not_a_result));
    EXPECT_EQ(same.value_of("=STOVE.DRYMASS(A1:A1;0.5)"), CellValue(not_a_value)) << "no other than an empty text";
    EXPECT_EQ(same.value_of("=STOVE.EACHROW(\"DRYMASS\";A1;0.5)"), CellValue(not_a_result));
    EXPECT_EQ(same.value_of("=STOVE.DRYMASS(300;A1)"), CellValue(300.0));
    EXPECT_EQ(same.value_of("=STOVE.EACHROW(\"DRYMASS\";300;A1)"), CellValue(300.0));
    same.sheet().formula("B3", "=\"\"");
    EXPECT_EQ(same.value_of("=STOVE.DRYMASS(B3;0.5)"), CellValue(not_a_value)) << "an empty text is a text";
    EXPECT_EQ(same.value_of("=STOVE.EACHROW(\"DRYMASS\";B3;0.5)"), CellValue(not_a_value));
    constexpr CellError divided_by_zero{532};
    EXPECT_EQ(same.value_of("=STOVE.DRYMASS(B2;0.5)"), CellValue(divided_by_zero));
    EXPECT_EQ(same.value_of("=STOVE.EACHROW(\"DRYMASS\";B2;0.5)"), CellValue(divided_by_zero));
    EXPECT_EQ(same.value_of("=SUM(STOVE.EACHROW(\"DRYMASS\";B1:B2;0.5))"), CellValue(parameter_list));
}

} // namespace

TEST(SameCauseSameError, InAnEnglishOffice) {
    expect_all(office_with_package());
}

TEST(SameCauseSameError, InOfficesOfOtherLanguages) {
    for (char const* const locale : {"de-DE", "fr-FR", "tr-TR"}) {
        SCOPED_TRACE(locale);
        Office office({.package = package(), .locale = locale});
        expect_all(office);
    }
}

} // namespace hearthcell::tests
