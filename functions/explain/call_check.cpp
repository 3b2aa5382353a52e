#include "functions/explain/call_check.hpp"

#include "functions/call/call.hpp"
#include "functions/explain/explain.hpp"
#include "functions/explain/failures.hpp"
#include "functions/explain/method_in_force.hpp"
#include "functions/explain/oddities.hpp"
#include "functions/explain/remarks_on.hpp"
#include "functions/explain/slips.hpp"

#include <algorithm>
#include <charconv>
#include <set>

namespace hearthcell {
namespace {

constexpr std::size_t few_runs = 3;

/// One call, with the lines that are said of it.
class Check {
public:
    Check(Function const& called, std::span<Value const> arguments, Language language)
        : say_(language), function_(called), values_(arguments.begin(), arguments.end()) {
        for (std::size_t place = 0; place < values_.size() && place < function_.arguments.size(); ++place)
            take_empty_cell(place);
    }

    std::string lines() {
        Outcome const outcome = call(function_, values_);
        if (Failure const* const why = std::get_if<Failure>(&outcome))
            add({"wrong", about_failure(say_, function_, values_, *why), meant(*why)});
        else {
            add_failures(outcome);
            add_oddities(in_short(outcome));
        }
        return text_;
    }

private:
    /// As Calc hands a lone empty cell over: as 0, and in the place of a column as one without readings.
    void take_empty_cell(std::size_t place) {
        std::string const* const text = std::get_if<std::string>(&values_[place]);
        ArgumentKind const kind = function_.arguments[place].kind;
        if (text == nullptr || !text->empty() || kind == ArgumentKind::rest || kind == ArgumentKind::text)
            return;
        empty_.insert(place);
        if (takes_a_block(kind))
            values_[place] = Block{1, 1, {absent}, {}};
        else if (kind == ArgumentKind::part)
            values_[place] = Value();
        else
            values_[place] = 0.0;
    }

    void add(std::initializer_list<std::string> fields) {
        if (!text_.empty())
            text_ += '\n';
        std::string line;
        for (std::string const& field : fields) {
            line += line.empty() ? "" : "\t";
            for (char const c : field)
                line += static_cast<unsigned char>(c) < ' ' ? ' ' : c;
        }
        text_ += line;
    }

    std::string in_short(Outcome const& outcome) const {
        double const* const number = std::get_if<double>(&outcome);
        if (number == nullptr)
            return "";
        std::array<char, 32> digits{};
        auto const end = std::to_chars(digits.data(), digits.data() + digits.size(), *number).ptr;
        bool const is_share = function_.result.measure == Measure::share;
        return std::string(digits.data(), end) + (is_share ? "%" : "");
    }

    std::string result_with(std::size_t place, double number) const {
        if (is_absent(number) || place >= values_.size())
            return "";
        std::vector<Value> mended = values_;
        mended[place] = number;
        return in_short(call(function_, mended));
    }

    /// Two arguments of one measure that changed places: the result, where it is all right then and only then.
    std::string result_of_swapped() const {
        std::string found;
        for (std::size_t one = 0; one < values_.size() && one < function_.arguments.size(); ++one)
            for (std::size_t other = one + 1; other < values_.size() && other < function_.arguments.size(); ++other) {
                if (function_.arguments[one].measure != function_.arguments[other].measure)
                    continue;
                std::vector<Value> swapped = values_;
                std::swap(swapped[one], swapped[other]);
                std::string const result = in_short(call(function_, swapped));
                if (result.empty() || !oddities(say_, function_, swapped).empty())
                    continue;
                if (!found.empty())
                    return "";
                found = result;
            }
        return found;
    }

    std::string meant(Failure const& why) const {
        double const* const number = std::get_if<double>(&value_at(values_, why.argument));
        if (why.reason == Reason::out_of_range && number != nullptr && why.argument < function_.arguments.size())
            return result_with(why.argument, meant_by_refused(function_.arguments[why.argument], *number));
        return why.argument < function_.arguments.size() ? "" : result_of_swapped();
    }

    /// Single results that failed among others that did not.
    void add_failures(Outcome const& outcome) {
        Block const* const block = std::get_if<Block>(&outcome);
        if (block != nullptr && function_.result.parts.empty() && std::ranges::any_of(block->numbers, is_failure))
            add({"wrong", about_cells(say_, function_, values_, *block)});
    }
    static bool is_failure(double number) { return failed(number) && !is_absent(number) && !is_text(number); }

    void add_oddities(std::string const& result) {
        for (Oddity const& oddity : oddities(say_, function_, values_))
            if (oddity.is_advice)
                add({"note", "caution", oddity.sentence});
            else if (oddity.asks_about_zero)
                add_empty_cell(oddity.argument, result);
            else
                add({"odd", oddity.sentence, result_with(oddity.argument, oddity.meant), result});
        for (std::string const& sentence : remarks_on(function_, values_, say_.language()).odd)
            add({"odd", sentence, "", result});
        add_notes();
    }

    void add_empty_cell(std::size_t place, std::string const& result) {
        if (empty_.count(place) > 0)
            add({"empty", say_.text(function_.arguments[place].name), "", result});
    }

    void add_notes() {
        MethodInForce const method = method_in_force(function_, values_);
        if (is_published(method))
            add({"note", "method", std::string(method.name)});
        for (Source const& source : function_.sources)
            if (source.from_memory && method.argument != "method") // else it is that of the method, or of none in force
                add({"note", "source", say_.text(source.title)});
        for (std::size_t place = 0; place < function_.arguments.size(); ++place)
            if (function_.arguments[place].name == "sea-level pressure" && is_left_out(place))
                add({"note", "default", std::string(function_.name)});
        if (function_.name == "SERIES" && count_of(value_at(values_, 0)) <= few_runs)
            add({"note", "runs", std::to_string(count_of(value_at(values_, 0)))});
        if (!function_.caution.empty())
            add({"note", "caution", say_.text(function_.caution)});
    }

    bool is_left_out(std::size_t place) const {
        return empty_.count(place) > 0 || std::holds_alternative<std::monostate>(value_at(values_, place));
    }

    static std::size_t count_of(Value const& column) {
        Block const* const block = std::get_if<Block>(&column);
        return block == nullptr ? 1 : std::size_t(std::ranges::count_if(block->numbers, [](double number) {
            return !failed(number) && !is_absent(number);
        }));
    }

    Speaker say_;
    Function const& function_;
    std::vector<Value> values_;
    std::set<std::size_t> empty_; // arguments
    std::string text_;
};

} // namespace

std::string check_call(Function const& function, std::span<Value const> arguments, Language language) {
    return Check(function, arguments, language).lines();
}

} // namespace hearthcell
