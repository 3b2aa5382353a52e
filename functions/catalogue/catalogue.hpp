#pragma once
// The one source of truth: what every cell function is called, takes, gives, computes and where that comes from.
// IDL, C++ methods, wizard texts, the README's table, the argument checks and the function guide are all made
// from these entries. To add a function, see DEVELOPERS.md.

#include "functions/contract/kernel.hpp"
#include "functions/catalogue/language.hpp"
#include "functions/catalogue/list.hpp"

#include <array>
#include <limits>
#include <optional>
#include <string_view>

namespace hearthcell {

/// What a quantity is; decides its unit and which slips of the pen are looked for.
enum class Measure {
    altitude,
    pressure,
    temperature,
    temperature_rise,
    heating_rate,
    volume,
    density,
    water_mass,
    wood_mass,
    char_mass,
    metal_mass,
    evaporated_mass,
    specific_heat,
    heat_capacity,
    heat_loss,
    energy,
    electric_power,
    power,
    calorific_value,
    moisture_wet,
    moisture_dry,
    mass_fraction,
    share,
    minutes,
    burn_rate,
    fuel_per_water,
    simmer_energy,
    ratio,
    confidence,
    coverage_factor,
    words,
};

/// The unit as a heading shows it; empty for a text or a plain ratio.
std::string_view unit_of(Measure measure);

/// A published document, or the plain statement that there is none.
struct Source {
    std::string_view title;
    bool from_memory = false; ///< not opened by us: clause and figures still have to be checked against the document
};

/// A row of a table of typical values.
struct Named {
    std::string_view name;
    double value;
    Source source;
};
struct NameTable {
    std::string_view what; ///< "fuel", "pot material"
    std::span<Named const> rows;
};

enum class Kind {
    number,
    number_or_name, ///< a number, or a name that stands in a table
    name,           ///< only a name that stands in a table
    choice,         ///< one of a few fixed texts
    column,         ///< a row or column of readings, or one reading
    mixed,          ///< a row or column in which texts and blanks stand for themselves
    matrix,         ///< a block of numbers
    anything,       ///< a text, a number, or a row or column of both
    text,
    rest, ///< any further arguments
};

struct Argument {
    std::string_view name{}; ///< in words, as in a heading; the IDL name is made from it
    Measure measure = Measure::ratio;
    double low = 0, high = 0; ///< both allowed
    Wording help{};
    Kind kind = Kind::number;
    NameTable const* table = nullptr;    ///< for names
    List<std::string_view, 5> choices{}; ///< for a choice; the first is the default
    bool optional = false;
    double fallback = absent;      ///< of an optional number
    Wording absent_means{};        ///< what leaving it out means, where there is no constant default
    bool zero_is_doubtful = false; ///< 0 is allowed, but an empty cell gives the same
    bool headed = false;           ///< of a column: texts above its first number are its heading
};

/// One value of a block that a function gives.
struct Part {
    Wording name{};
    Measure measure = Measure::ratio;
};

/// A single value with its range; or a block, when it has parts: they stand side by side in one row, or head the
/// columns of a list. The first part is what a single cell shows.
struct Result {
    Wording name;
    Measure measure = Measure::ratio;
    double low = 0, high = 0;
    List<Part, 8> parts{};
    bool list = false; ///< as many rows as there are findings
};

/// What kind of error a cell shows.
enum class Error {
    value,         ///< #VALUE!
    number,        ///< #NUM!
    not_available, ///< #N/A
    parameters,    ///< Err:504, as Calc itself says of a wrong number of arguments
};

/// As a cell shows it.
constexpr std::string_view sign_of(Error error) {
    constexpr std::string_view signs[] = {"#VALUE!", "#NUM!", "#N/A", "Err:504"};
    return signs[static_cast<std::size_t>(error)];
}

/// One argument of an example: nothing, a number, a text, or readings in a column (NaN: an empty cell).
struct Cell {
    enum class Kind { omitted, number, text, column } kind = Kind::omitted;
    double number = 0;
    std::string_view text;
    std::span<double const> column;

    constexpr Cell() = default;
    constexpr Cell(double value) : kind(Kind::number), number(value) {}
    constexpr Cell(int value) : kind(Kind::number), number(value) {} // a literal 0 would pass for a null pointer, too
    constexpr Cell(char const* value) : kind(Kind::text), text(value) {}
    template <std::size_t Rows>
    constexpr Cell(std::array<double, Rows> const& values) : kind(Kind::column), column(values) {}
};
inline constexpr Cell omitted{};
inline constexpr double blank = std::numeric_limits<double>::quiet_NaN();

/// What an example must give: a number, a text, an error, or a block of them, row by row.
struct Expected {
    enum class Kind { number, text, error, block } kind = Kind::number;
    double number = 0, tolerance = 0;
    std::string_view text;
    Error error = Error::number;
    Expected const* elements = nullptr; ///< of a block
    std::size_t rows = 0, columns = 0;

    constexpr Expected() = default;
    constexpr Expected(double value, double allowed) : number(value), tolerance(allowed) {}
    constexpr Expected(char const* value) : kind(Kind::text), text(value) {}
    constexpr Expected(Error value) : kind(Kind::error), error(value) {}
    template <std::size_t Elements>
    constexpr Expected(std::array<Expected, Elements> const& block, std::size_t rows_of_it = 1)
        : kind(Kind::block), elements(block.data()), rows(rows_of_it), columns(Elements / rows_of_it) {}
};

struct Example {
    List<Cell, most_arguments> arguments{};
    Expected expected;
    std::string_view from; ///< where the value comes from
};

struct Function {
    std::string_view name;   ///< after "STOVE."
    std::string_view stored; ///< the name in files; never changes once released
    Wording summary;
    List<Argument, most_arguments> arguments{};
    Result result{};
    Kernel kernel{};
    List<std::string_view, 5> equations{}; ///< one, or one a method in the order of the choices
    List<Source, 4> sources{};
    Wording caution{}; ///< what has to be said with every result, a sentence
    List<Example, 6> examples{};
    /// What EXPLAIN has to say besides, once the call has succeeded.
    std::vector<std::string> (*remark)(std::span<Value const>) = nullptr;
    /// What EXPLAIN says of a failure that only the function itself can tell; empty where the reason's own sentence
    /// will do.
    std::string (*complaint)(std::span<Value const>) = nullptr;
};

/// Whether doubt can be carried through it: an equation of single numbers that does not move in steps.
inline bool is_differentiable(Function const& function) {
    Numeric const* const equation = std::get_if<Numeric>(&function.kernel);
    return equation != nullptr && equation->gradient != nullptr;
}

struct Group {
    Wording title;
    std::string_view accessor; ///< the C++ function that gives `functions`
    std::span<Function const> functions;
};

// One file a subject.
std::span<Function const> site_and_water();
std::span<Function const> moisture_of_fuel();
std::span<Function const> fuel();
std::span<Function const> performance();
std::span<Function const> standard_boil_time();
std::span<Function const> temperature_log();
std::span<Function const> repeated_runs();
std::span<Function const> the_record();

std::array<Group, 8> catalogue();

/// By the name after "STOVE.", with or without it, in any letter case.
Function const* find_function(std::string_view name);

Named const* find_name(NameTable const& table, std::string_view name);

/// Letter case and surrounding blanks do not matter in any name or option.
bool same_name(std::string_view a, std::string_view b);

} // namespace hearthcell
