// Every argument of every function, spoilt in every way that a sheet can: the error must be of the specified kind.

#include "calls.hpp"

#include <functional>
#include <optional>

namespace hearthcell::tests {
namespace {

bool is_readings(Argument const& argument) {
    return argument.kind == ArgumentKind::column || argument.kind == ArgumentKind::matrix;
}
/// Texts and blanks are what these are for; the subject's own tests spoil them.
bool takes_anything(Argument const& argument) {
    return argument.kind == ArgumentKind::rest || argument.kind == ArgumentKind::anything ||
           argument.kind == ArgumentKind::mixed;
}

/// A lone empty cell arrives as 0: where that cannot be, it is as if nothing had been given.
bool leaves_out(Argument const& argument, double number) {
    bool const is_word = argument.kind == ArgumentKind::choice || argument.kind == ArgumentKind::part;
    return number == 0 && argument.optional && (is_word || argument.low > 0);
}

bool wants_text(Argument const& argument) {
    return argument.kind == ArgumentKind::choice || argument.kind == ArgumentKind::name ||
           argument.kind == ArgumentKind::text || argument.kind == ArgumentKind::part;
}

struct Spoilt {
    Call call;
    CellValue expected;
    std::string how;
};

/// The cells that the spoilt calls point at.
constexpr char empty_cell[] = "$A$1", division_by_zero[] = "$A$2", text_cell[] = "$A$3", two_by_two[] = "$A$5:$B$6";
constexpr CellError divided_by_zero{532};

class BadInput : public Calc {
protected:
    void SetUp() override {
        sheet.formula("A2", "=1/0");
        sheet.text("A3", "abc");
        sheet.formulas("A5", {{"1", "2"}, {"3", "4"}});
    }

    /// For every argument that `expected` has an answer for: the sound call with that argument replaced.
    void spoil(std::string const& text, Value const& value, std::string const& how,
               std::function<std::optional<CellValue>(Argument const&, Call const&)> const& expected) {
        for (Group const& group : catalogue()) {
            for (Function const& function : group.functions) {
                for (std::size_t i = 0; i < function.arguments.size(); ++i) {
                    if (takes_anything(function.arguments[i]))
                        continue;
                    Call call = calls.of(function, sound_example(function));
                    call.texts.resize(std::max(call.texts.size(), i + 1));
                    call.values.resize(std::max(call.values.size(), i + 1));
                    call.texts[i] = text;
                    call.values[i] = value;
                    if (auto const answer = expected(function.arguments[i], call))
                        spoilt.push_back({call, *answer, how + " as " + std::string(function.arguments[i].name)});
                }
            }
        }
        check();
    }

    void check() {
        std::vector<std::string> formulas;
        for (Spoilt const& one : spoilt)
            formulas.push_back(one.call.formula());
        std::vector<CellValue> const results = evaluate(formulas);
        ASSERT_FALSE(results.empty()); // a check of nothing proves nothing
        for (std::size_t i = 0; i < spoilt.size(); ++i)
            EXPECT_EQ(results[i], spoilt[i].expected) << formulas[i] << ": " << spoilt[i].how;
        EXPECT_TRUE(office_with_package().alive());
    }

    /// A number outside the range is #NUM!; inside, whatever the kernel says.
    void spoil_with_number(double number, std::string const& text, std::string const& how) {
        spoil(text, number, how, [number](Argument const& argument, Call const& call) -> std::optional<CellValue> {
            if (leaves_out(argument, number))
                return call.expected();
            if (wants_text(argument))
                return not_a_value;
            bool const in_range = number >= argument.low && number <= argument.high;
            return in_range ? call.expected() : CellValue(not_a_result);
        });
    }

    Calls calls{sheet};
    std::vector<Spoilt> spoilt;
};

TEST_F(BadInput, TextForANumberIsAValueErrorAndAnUnknownNameIsNotAvailable) {
    spoil(text_cell, std::string("abc"), "text", [](Argument const& argument, Call const&) -> std::optional<CellValue> {
        bool const may_be_a_name = wants_text(argument) || argument.table != nullptr;
        return may_be_a_name ? not_available : not_a_value;
    });
}

TEST_F(BadInput, AnErrorPassesThrough) {
    spoil(division_by_zero, Value(), "an error",
          [](Argument const&, Call const&) -> std::optional<CellValue> { return divided_by_zero; });
}

TEST_F(BadInput, AnErrorInsideAColumnIsCalcsOwnError) {
    spoil("$A$2:$A$3", Value(), "an error in a column",
          [](Argument const& argument, Call const&) -> std::optional<CellValue> {
              return is_readings(argument) ? std::optional<CellValue>(parameter_list) : std::nullopt;
          });
}

TEST_F(BadInput, NegativeNumbers) {
    spoil_with_number(-1e12, "-1000000000000", "a negative number");
}
TEST_F(BadInput, HugeNumbers) {
    spoil_with_number(1e300, "1E+300", "a huge number");
}
TEST_F(BadInput, TinyNumbers) {
    spoil_with_number(1e-300, "1E-300", "a tiny number");
}
TEST_F(BadInput, Zero) {
    spoil_with_number(0, "0", "zero");
}

TEST_F(BadInput, AnEmptyCellCountsAsZeroWhereZeroCanBeAndElseLeavesOutWhatMayBeLeftOut) {
    spoil(empty_cell, 0.0, "an empty cell", [](Argument const& argument, Call const& call) -> std::optional<CellValue> {
        if (is_readings(argument))
            return {}; // there it is 'no reading': the subject's own tests
        if (leaves_out(argument, 0))
            return call.expected();
        if (wants_text(argument))
            return not_a_value;
        return argument.low <= 0 && argument.high >= 0 ? call.expected() : CellValue(not_a_result);
    });
}

TEST_F(BadInput, ABlockWhereOneValueBelongsIsAValueError) {
    spoil(two_by_two, Value(), "a block", [](Argument const& argument, Call const&) -> std::optional<CellValue> {
        return argument.kind == ArgumentKind::matrix ? std::optional<CellValue>() : CellValue(not_a_value);
    });
}

TEST_F(BadInput, AWrongNumberOfArgumentsIsCalcsOwnError) {
    for (Group const& group : catalogue()) {
        for (Function const& function : group.functions) {
            std::size_t const most = function.arguments.size();
            std::size_t required = 0;
            bool open_ended = false;
            for (Argument const& argument : function.arguments) {
                open_ended = open_ended || argument.kind == ArgumentKind::rest;
                required += argument.optional || argument.kind == ArgumentKind::rest ? 0 : 1;
            }
            Call call = calls.of(function, sound_example(function));
            if (!open_ended) {
                Call more = call;
                more.texts.resize(most, "");
                more.texts.emplace_back("1");
                spoilt.push_back({more, parameter_list, "one argument too many"});
            }
            if (required > 0) {
                Call less = call;
                less.texts.resize(required - 1);
                spoilt.push_back({less, parameter_list, "one argument too few"});
            }
        }
    }
    check();
}

TEST_F(BadInput, IsWhatTheFirstBadArgumentIs) {
    EXPECT_EQ(evaluate("=STOVE.WATERHEAT(5;20;95;\"no such method\")"), CellValue(not_a_result));
    EXPECT_EQ(evaluate("=STOVE.WATERHEAT(5000;20;95;\"no such method\")"), CellValue(not_available));
    EXPECT_EQ(evaluate("=STOVE.AIRPRESSURE(1500;\"abc\")"), CellValue(not_a_value));
    EXPECT_EQ(evaluate("=STOVE.AIRPRESSURE(15000;\"abc\")"), CellValue(not_a_result));
    EXPECT_EQ(evaluate("=STOVE.AIRPRESSURE(1500;\"1020\")"), evaluate("=STOVE.AIRPRESSURE(1500;1020)"));
}

} // namespace
} // namespace hearthcell::tests
