#include "judge.hpp"

#include <algorithm>
#include <bit>
#include <cstdio>

namespace hearthcell::storm {
namespace {

/// What a function itself may show: #NUM!, #VALUE!, #N/A, and Err:504 for a missing argument.
constexpr std::array own_errors{503, 519, 32767, 504};
constexpr int illegal_argument = 502; // Calc's, where a gap stands for a required argument

/// Errors that the call may pass on: those of its cells, and those of its broken parts.
std::set<int> brought_errors(Call const& call, Ground const& ground) {
    std::set<int> codes;
    for (Operand const& operand : call.operands) {
        if (operand.how == Written::omitted)
            codes.insert(illegal_argument);
        if (CellError const* const error = std::get_if<CellError>(&operand.meaning))
            codes.insert(error->code);
        if (auto const* const inner = std::get_if<std::shared_ptr<Call>>(&operand.meaning))
            codes.merge(brought_errors(**inner, ground));
        Area const* const area = std::get_if<Area>(&operand.meaning);
        for (int row = area == nullptr ? 0 : area->top; area != nullptr && row <= area->bottom; ++row) {
            if (row >= ground.rows(area->sheet))
                break;
            for (int column = area->left; column <= std::min(area->right, ground.columns() + own_columns); ++column)
                if (CellError const* const error = std::get_if<CellError>(&ground.at(area->sheet, row, column)))
                    codes.insert(error->code);
        }
    }
    return codes;
}

/// Of a range with a blank in it, a function that answers cell by cell leaves that blank.
bool text_is_due(Function const& function, std::string const& text) {
    hearthcell::Result const& result = function.result;
    bool const cell_by_cell = function.arguments.size() > 0 && function.arguments[0].kind == ArgumentKind::anything;
    return (result.parts.empty() ? result.measure : result.parts[0].measure) == Measure::words ||
           ((cell_by_cell || result.list) && text.empty()); // a row that is empty has no result
}

bool same(CellValue const& a, CellValue const& b) {
    double const* const x = std::get_if<double>(&a);
    double const* const y = std::get_if<double>(&b);
    return x != nullptr && y != nullptr ? std::bit_cast<std::uint64_t>(*x) == std::bit_cast<std::uint64_t>(*y) : a == b;
}

/// The single cells that the call points at, for whoever has to find out.
std::string cells_of(Call const& call, Ground const& ground) {
    std::string list;
    for (Operand const& operand : call.operands) {
        Area const* const area = std::get_if<Area>(&operand.meaning);
        if (area != nullptr && area->one_cell)
            list += "; " + operand.text + " = " + in_words(ground.at(area->sheet, area->top, area->left));
    }
    return list;
}

std::string not_allowed(Call const& call, Ground const& ground, CellValue const& value) {
    hearthcell::Result const& result = call.function->result;
    if (double const* const number = std::get_if<double>(&value)) {
        if (!std::isfinite(*number))
            return "it is not finite";
        bool const in_range = *number >= result.low && *number <= result.high;
        return result.parts.empty() && !in_range ? "it is outside the range of the result" : "";
    }
    if (CellError const* const error = std::get_if<CellError>(&value)) {
        bool const own = std::find(own_errors.begin(), own_errors.end(), error->code) != own_errors.end();
        return own || brought_errors(call, ground).contains(error->code) ? "" : "nothing brings this error";
    }
    return text_is_due(*call.function, std::get<std::string>(value)) ? "" : "no text is due";
}

} // namespace

std::string in_words(Content const& value) {
    if (std::holds_alternative<Nothing>(value))
        return "nothing";
    if (CellError const* const error = std::get_if<CellError>(&value))
        return "Err:" + std::to_string(error->code);
    if (std::string const* const text = std::get_if<std::string>(&value))
        return "\"" + *text + "\"";
    char buffer[64];
    double const number = std::get<double>(value);
    std::snprintf(buffer, sizeof buffer, "%.17g (%a)", number, number);
    return buffer;
}

std::string fault(Call const& call, Ground const& ground, CellValue const& value) {
    CellValue const expected = shown(result_of(call, ground));
    if (expected == CellValue(some_error))
        return std::holds_alternative<CellError>(value) ? ""
                                                        : "shows " + in_words(content_of(value)) + ", not an error";
    if (!same(value, expected))
        return "shows " + in_words(content_of(value)) + " instead of " + in_words(content_of(expected)) +
               cells_of(call, ground);
    std::string const why = not_allowed(call, ground, value);
    return why.empty() ? "" : "shows " + in_words(content_of(value)) + ", but " + why;
}

Tally::Tally() {
    for (Group const& group : catalogue())
        for (Function const& function : group.functions)
            functions[function.name];
}

namespace {

void count_written(Call const& call, std::array<long, std::size_t(Written::count)>& written) {
    for (Operand const& operand : call.operands) {
        ++written[std::size_t(operand.how)];
        if (auto const* const inner = std::get_if<std::shared_ptr<Call>>(&operand.meaning))
            count_written(**inner, written);
    }
}

} // namespace

void Tally::count(Call const& call, CellValue const& value) {
    Results& results = functions[call.function->name];
    ++results.calls;
    results.numbers += std::holds_alternative<double>(value) ? 1 : 0;
    results.texts += std::holds_alternative<std::string>(value) ? 1 : 0;
    if (CellError const* const error = std::get_if<CellError>(&value)) {
        ++results.errors;
        ++errors[error->code];
    }
    count_written(call, written);
}

void Tally::print() const {
    std::printf("%-18s %8s %8s %8s %8s\n", "function", "calls", "numbers", "texts", "errors");
    for (auto const& [name, results] : functions)
        std::printf("%-18.*s %8ld %8ld %8ld %8ld\n", int(name.size()), name.data(), results.calls, results.numbers,
                    results.texts, results.errors);
    for (std::size_t i = 0; i < written.size(); ++i)
        std::printf("%8ld × %s\n", written[i], std::string(name_of(Written(i))).c_str());
    for (auto const& [code, count] : errors)
        std::printf("%8ld × Err:%d\n", count, code);
}

std::vector<std::string> Tally::gaps() const {
    std::vector<std::string> gaps;
    for (auto const& [name, results] : functions)
        if (results.numbers + results.texts == 0)
            gaps.push_back(std::string(name) + " never gave a result");
    for (std::size_t i = 0; i < written.size(); ++i)
        if (written[i] == 0)
            gaps.push_back("no argument was written as: " + std::string(name_of(Written(i))));
    return gaps;
}

} // namespace hearthcell::storm
