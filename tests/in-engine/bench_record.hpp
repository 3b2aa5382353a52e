#pragma once
// What the tests of the bench record share: the workbook in each language, and where a reading of a run stands.

#include "extension/demonstration/demo_data.hpp"
#include "templates.hpp"

#include <map>

namespace hearthcell::tests {

inline constexpr std::array<char const*, 4> methods{"properties", "ISO 19867-1", "WBT 4.2.3", "WBT 3"};

class BenchRecord : public testing::TestWithParam<std::string_view> {
protected:
    /// The runs of the demonstration. Expected values were computed from its readings as they are: no check points.
    void fill_in() {
        fill(workbook, demo_data("bench-record"));
        for (std::string const row : {"8", "9", "10", "11"})
            for (char const column : {'B', 'C', 'F', 'G'})
                instruments.text(column + row, "");
        workbook.recalculate();
    }
    /// The cell of a reading of a run, 1 to 15, by what stands before it in English.
    [[nodiscard]] static std::string reading(std::string const& name, int run) {
        static std::map<std::string, int> const rows{{"start or level", 9},
                                                     {"moisture, first reading", 10},
                                                     {"air", 15},
                                                     {"pot empty, with lid and probe", 17},
                                                     {"pot and water at start", 18},
                                                     {"water start", 19},
                                                     {"wood laid out", 20},
                                                     {"firelighter", 22},
                                                     {"char tray empty", 23},
                                                     {"fire lit", 25},
                                                     {"water added", 26},
                                                     {"energy of the fan", 28},
                                                     {"or its power", 29},
                                                     {"boil began", 30},
                                                     {"fire out", 31},
                                                     {"water end", 33},
                                                     {"pot and water at end", 34},
                                                     {"wood left", 35},
                                                     {"char and tray", 36}};
        return char('B' + run) + std::to_string(rows.at(name));
    }
    /// What is typed as the reason for which a run does not count.
    [[nodiscard]] static std::string reason(int run) { return "B" + std::to_string(38 + run); }
    /// A row of the sheets Readings and Results.
    [[nodiscard]] static std::string in_row(char column, int run) { return column + std::to_string(7 + run); }
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
    [[nodiscard]] std::string answer(int run) const { return bench.shown("I" + std::to_string(38 + run)); }

    void use(char const* method) { stove.text("L6", method); }
    void no_errors() const {
        for (int sheet = 0; sheet < workbook.sheets(); ++sheet)
            EXPECT_EQ(errors_on(workbook, sheet), "") << workbook.sheet(sheet).name();
    }

    Document workbook =
        Document::open(office_with_package(), template_file(GetParam(), "bench-record"), office::Access::read_write);
    Sheet stove = workbook.sheet(0), bench = workbook.sheet(2), batches = workbook.sheet(3),
          heating = workbook.sheet(4), readings = workbook.sheet(5), results = workbook.sheet(6),
          levels = workbook.sheet(7), uncertainty = workbook.sheet(8), gases = workbook.sheet(9),
          instruments = workbook.sheet(10);
};

} // namespace hearthcell::tests
