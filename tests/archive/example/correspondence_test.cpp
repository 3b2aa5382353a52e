// Which cell of one sheet is that of another: by sheets that are changed at random, of which the truth is known. A
// wrong cell is never given; a refusal is allowed where something is uncertain, and hardly ever elsewhere.

#include "extension/archive/example/correspondence.hpp"
#include "extension/archive/inventory/words.hpp"
#include "extension/formulas/reference.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace hearthcell::tests::archive {
namespace {

using namespace hearthcell::archive;
using Where = Correspondence::Where;
using Chance = std::mt19937;

std::size_t below(std::size_t end, Chance& chance) {
    return chance() % end;
}

Label label(int row, int column, std::string const& text) {
    return {row, column, word_key(text), text};
}

/// What of a reading is to be expected on the other sheet.
struct Truth {
    std::optional<Where> place; // nothing: it is gone
    bool must_refuse = false;   // its word or unit is another one
    bool may_refuse = false;    // its word stands there twice
};

/// A line of a form, or a column of a table.
struct Field {
    int id; // -1: not on the old sheet
    std::string word, unit;
    bool is_other = false, is_doubled = false;
};

std::vector<Field> fields_of(std::size_t number) {
    static std::vector<std::string> const words{"Altitude", "Air",  "Empty pot",  "Full pot", "Pot at the end", "Start",
                                                "End",      "Wood", "Wood left",  "Moisture", "Char",           "Time",
                                                "Water",    "Heat", "Efficiency", "Firepower"};
    static std::vector<std::string> const units{"m",  "°C", "kg", "kg",  "kg", "°C", "°C", "kg",
                                                "kg", "",   "kg", "min", "kg", "kJ", "",   "kW"};
    std::vector<Field> fields;
    for (std::size_t at = 0; at < number; ++at)
        fields.push_back({int(at), words[at], units[at]});
    return fields;
}

/// A few changes such as years bring.
void change(std::vector<Field>& fields, Chance& chance) {
    static int fresh = 0;
    std::size_t const changes = below(4, chance);
    for (std::size_t at = 0; at < changes; ++at) {
        auto const any = [&]() -> Field& { return fields[below(fields.size(), chance)]; };
        auto const place = fields.begin() + std::ptrdiff_t(below(fields.size() + 1, chance));
        switch (below(8, chance)) {
        case 0:
            fields.insert(place, {-1, "New " + std::string(1, char('a' + fresh++ % 26)) + " reading", "kg"});
            break;
        case 1:
            fields.insert(place, {-1, "", ""});
            break;
        case 2:
            std::swap(any(), any());
            break;
        case 3: // not of two with the same word: whether the other one is another reading then, no label says
            if (auto const gone = fields.begin() + std::ptrdiff_t(below(fields.size(), chance));
                fields.size() > 3 && !gone->is_doubled)
                fields.erase(gone);
            break;
        case 4: {
            Field& field = any();
            if (field.is_doubled)
                break;
            field.word += " again";
            field.is_other = true;
            break;
        }
        case 5: {
            Field& field = any();
            if (!field.word.empty() && !field.is_doubled) {
                field.unit = "lb";
                field.is_other = true;
            }
            break;
        }
        case 6: {
            Field& field = any();
            if (!field.word.empty() && field.id >= 0) {
                field.is_doubled = true;
                fields.insert(fields.begin() + std::ptrdiff_t(below(fields.size() + 1, chance)),
                              {-1, field.word, field.unit});
            }
            break;
        }
        default:
            break; // nothing
        }
    }
}

/// Words, values, units side by side, below a title; or three values and units below merged titles.
struct Form {
    std::vector<Field> fields;
    std::vector<std::string> tests; // empty: one value each
    int first_row = 2;

    [[nodiscard]] LabelledSheet sheet() const {
        std::vector<Label> labels{label(0, 0, "Water boiling test")};
        std::vector<hearthcell::formulas::Range> merged;
        for (std::size_t test = 0; test < tests.size(); ++test) {
            int const column = 1 + 2 * int(test);
            labels.push_back(label(first_row - 1, column, tests[test]));
            merged.push_back({{0, first_row - 1, column}, {0, first_row - 1, column + 1}});
        }
        for (std::size_t row = 0; row < fields.size(); ++row) {
            int const at = first_row + int(row);
            if (!fields[row].word.empty())
                labels.push_back(label(at, 0, fields[row].word));
            for (int column = 2; column <= 2 * std::max(1, int(tests.size())) && !fields[row].unit.empty(); column += 2)
                labels.push_back(label(at, column, fields[row].unit));
        }
        return {labels, merged};
    }
    [[nodiscard]] Truth truth(int id, std::string const& test) const {
        auto const field = std::ranges::find(fields, id, &Field::id);
        auto const column = std::ranges::find(tests, test);
        if (field == fields.end() || (!tests.empty() && column == tests.end()))
            return {};
        int const side = tests.empty() ? 1 : 1 + 2 * int(column - tests.begin());
        return {Where(first_row + int(field - fields.begin()), side), field->is_other, field->is_doubled};
    }
};

/// Headings and rows.
struct Table {
    std::vector<Field> fields;
    int head = 3;

    [[nodiscard]] LabelledSheet sheet() const {
        std::vector<Label> labels{label(0, 0, "Season")};
        for (std::size_t column = 0; column < fields.size(); ++column)
            if (!fields[column].word.empty())
                labels.push_back(label(head, int(column), fields[column].word + ", " + fields[column].unit));
        return {labels, {}};
    }
    [[nodiscard]] Truth truth(int id, int run) const {
        auto const field = std::ranges::find(fields, id, &Field::id);
        if (field == fields.end())
            return {};
        return {Where(head + 1 + run, int(field - fields.begin())), field->is_other, field->is_doubled};
    }
};

struct Counted {
    int carried = 0, refused = 0, without_need = 0, wrong = 0;

    void count(std::variant<Where, Refused> const& found, Truth const& truth, std::string const& what) {
        if (auto const* const place = std::get_if<Where>(&found)) {
            ++carried;
            bool const is_right = truth.place == *place && !truth.must_refuse;
            wrong += is_right ? 0 : 1;
            EXPECT_TRUE(is_right) << what << " was put into "
                                  << hearthcell::formulas::cell_name(place->second, place->first);
        } else {
            ++refused;
            bool const is_needed = !truth.place || truth.must_refuse || truth.may_refuse;
            without_need += is_needed ? 0 : 1;
            EXPECT_FALSE(std::get<Refused>(found).why.empty());
        }
    }
    void expect_well() const {
        EXPECT_EQ(wrong, 0);
        EXPECT_GT(carried, refused) << "else little is tested";
        EXPECT_GT(refused, carried / 20);
        EXPECT_LE(without_need * 50, carried + refused) << without_need << " of " << carried + refused;
    }
};

TEST(Correspondence, NeverGivesAWrongCellOfAForm) {
    Counted counted;
    Chance chance(3);
    for (int turn = 0; turn < 4000; ++turn) {
        Form const old{fields_of(4 + below(12, chance)), {}};
        Form now = old;
        change(now.fields, chance);
        now.first_row += int(below(2, chance));
        LabelledSheet const before = old.sheet(), after = now.sheet();
        Correspondence const correspondence(before, after);
        for (Field const& field : old.fields)
            counted.count(correspondence.of(*old.truth(field.id, {}).place), now.truth(field.id, {}), field.word);
    }
    counted.expect_well();
}

TEST(Correspondence, NeverGivesAWrongCellOfTestsSideBySide) {
    Counted counted;
    Chance chance(5);
    for (int turn = 0; turn < 3000; ++turn) {
        Form const old{fields_of(4 + below(12, chance)), {"Cold start", "Hot start", "Simmer"}};
        Form now = old;
        change(now.fields, chance);
        if (below(3, chance) == 0)
            std::swap(now.tests[below(3, chance)], now.tests[below(3, chance)]);
        if (below(4, chance) == 0)
            now.tests.insert(now.tests.begin() + std::ptrdiff_t(below(4, chance)), "Warm start");
        LabelledSheet const before = old.sheet(), after = now.sheet();
        Correspondence const correspondence(before, after);
        for (Field const& field : old.fields)
            for (std::string const& test : old.tests)
                counted.count(correspondence.of(*old.truth(field.id, test).place), now.truth(field.id, test),
                              field.word + " of " + test);
    }
    counted.expect_well();
}

TEST(Correspondence, NeverGivesAWrongCellOfATable) {
    Counted counted;
    Chance chance(7);
    for (int turn = 0; turn < 4000; ++turn) {
        Table const old{fields_of(4 + below(12, chance))};
        Table now = old;
        change(now.fields, chance);
        now.head += int(below(3, chance));
        LabelledSheet const before = old.sheet(), after = now.sheet();
        Correspondence const correspondence(before, after);
        for (Field const& field : old.fields)
            for (int const run : {0, 7})
                counted.count(correspondence.of(*old.truth(field.id, run).place), now.truth(field.id, run), field.word);
    }
    counted.expect_well();
}

TEST(Correspondence, OfARowOfUnitsBelowTheHeadingsIsRefused) {
    std::vector<Label> const headings{label(0, 0, "Wood"), label(0, 1, "Char")};
    std::vector<Label> with_units = headings;
    with_units.push_back(label(1, 0, "kg"));
    with_units.push_back(label(1, 1, "kg"));
    LabelledSheet const before(headings, {}), after(with_units, {});
    EXPECT_TRUE(std::holds_alternative<Refused>(Correspondence(before, after).of(Where(4, 0))));
    EXPECT_TRUE(std::holds_alternative<Refused>(Correspondence(after, before).of(Where(4, 0))));
    EXPECT_EQ(std::get<Where>(Correspondence(after, after).of(Where(4, 0))), Where(4, 0));
}

TEST(ALabelledSheet, ThatIsMergedAllOverNamesNoCell) {
    std::vector<Label> words;
    std::vector<formulas::Range> merged;
    for (int row = 0; row < 20; ++row)
        for (int column = 0; column < 60; ++column) {
            int const top = 200 * row, left = 200 * column;
            words.push_back(label(top, left, "Word " + std::to_string(60 * row + column)));
            merged.push_back({{0, top, left}, {0, top + 199, left + 199}});
        }
    LabelledSheet const few({words.front()}, {merged.front()}), all(words, merged);
    EXPECT_TRUE(few.to_the_left({100, 150}));
    EXPECT_FALSE(all.to_the_left({100, 150}));
    EXPECT_FALSE(all.above({100, 150}));
    EXPECT_TRUE(all.places(word_key("Word 0")).empty());
}

} // namespace
} // namespace hearthcell::tests::archive
