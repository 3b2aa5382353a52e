#pragma once
// What the tests of the bench record share: the workbook in each language, and where a reading of a run stands.

#include "extension/demonstration/demo_data.hpp"
#include "templates.hpp"

#include <map>

namespace hearthcell::tests {

class BenchRecord : public testing::TestWithParam<std::string_view> {
protected:
    void fill_in() {
        fill(workbook, demo_data("bench-record"));
        workbook.recalculate();
    }
    /// The cell of a reading of a run, 1 to 10, by what stands over the reading in English.
    [[nodiscard]] static std::string reading(std::string const& name, int run) {
        static std::map<std::string, char> const columns{{"pot empty", 'B'},   {"pot and water at start", 'C'},
                                                         {"water start", 'D'}, {"wood laid out", 'E'},
                                                         {"water end", 'F'},   {"pot and water at end", 'G'},
                                                         {"wood left", 'H'},   {"net char", 'I'},
                                                         {"air", 'J'},         {"boil began", 'K'},
                                                         {"fire out", 'L'}};
        return columns.at(name) + std::to_string(17 + run);
    }
    [[nodiscard]] static std::string said_here(std::string const& english) {
        return said(english, GetParam(), "bench-record");
    }
    /// A sentence with what stands in its places {1}, {2} …
    [[nodiscard]] static std::string sentence(std::string const& english, std::vector<std::string> const& values) {
        std::string text = said_here(english);
        for (std::size_t i = 0; i < values.size(); ++i)
            text.replace(text.find("{" + std::to_string(i + 1) + "}"), 3, values[i]);
        return text;
    }
    /// What the record answers to 'may I empty the pot?' for a run.
    [[nodiscard]] std::string answer(int run) const { return bench.shown("B" + std::to_string(29 + run)); }

    void no_errors() const {
        for (int sheet = 0; sheet < workbook.sheets(); ++sheet)
            EXPECT_EQ(errors_on(workbook, sheet), "") << workbook.sheet(sheet).name();
    }

    Document workbook =
        Document::open(office_with_package(), template_file(GetParam(), "bench-record"), office::Access::read_write);
    Sheet bench = workbook.sheet(0);
};

} // namespace hearthcell::tests
