#include "written_call.hpp"

#include <bit>
#include <charconv>
#include <optional>

namespace hearthcell::tests {
namespace {

/// Takes a line apart from its front. What does not fit leaves `good` false.
class Reader {
public:
    explicit Reader(std::string_view line) : rest(line) {}

    std::string_view name() {
        std::size_t const end = std::min(rest.find('('), rest.size());
        std::string_view const result = rest.substr(0, end);
        rest.remove_prefix(end);
        return result;
    }

    bool take(char c) {
        skip_blanks();
        if (rest.empty() || rest.front() != c)
            return false;
        rest.remove_prefix(1);
        return true;
    }

    Value value() {
        skip_blanks();
        if (rest.starts_with('"'))
            return text();
        if (take('['))
            return block();
        if (rest.starts_with(';') || rest.starts_with(')'))
            return {};
        return number();
    }

    bool good = true;
    std::string_view rest;

private:
    void skip_blanks() {
        while (rest.starts_with(' '))
            rest.remove_prefix(1);
    }

    double number() {
        if (rest.starts_with("0x")) {
            std::uint64_t bits = 0;
            take_number(rest.substr(2), bits, 16);
            return std::bit_cast<double>(bits);
        }
        double result = 0;
        auto const [end, error] = std::from_chars(rest.data(), rest.data() + rest.size(), result);
        good = good && error == std::errc();
        rest.remove_prefix(std::size_t(end - rest.data()));
        return result;
    }

    void take_number(std::string_view digits, std::uint64_t& bits, int base) {
        auto const [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), bits, base);
        good = good && error == std::errc();
        rest.remove_prefix(std::size_t(end - rest.data()));
    }

    std::string text() {
        std::string result;
        rest.remove_prefix(1);
        while (!rest.empty()) {
            std::size_t const end = rest.find('"');
            result += rest.substr(0, end);
            if (end == std::string_view::npos)
                break;
            rest.remove_prefix(end + 1);
            if (!rest.starts_with('"')) // a doubled one is one of the text's own
                return result;
            result += '"';
            rest.remove_prefix(1);
        }
        good = false;
        return result;
    }

    Block block() {
        Block result;
        std::size_t rows = 1;
        while (good && !take(']')) {
            if (take('/')) {
                ++rows;
            } else if (take('_')) {
                result.numbers.push_back(absent);
            } else if (rest.starts_with('"')) {
                result.texts.push_back({result.numbers.size(), text()});
                result.numbers.push_back(text_in_block);
            } else {
                result.numbers.push_back(number());
            }
        }
        std::size_t const cells = result.numbers.size();
        good = good && cells % rows == 0;
        result.rows = rows == 1 ? cells : rows;
        result.columns = rows == 1 ? 1 : cells / rows;
        return result;
    }
};

} // namespace

WrittenCall read_call(std::string_view line) {
    Reader reader(line);
    WrittenCall result;
    Function const* const function = find_function(reader.name());
    if (function == nullptr || !reader.take('('))
        return result;
    if (!reader.take(')')) {
        do
            result.values.push_back(reader.value());
        while (reader.good && reader.take(';'));
        if (!reader.take(')'))
            return result;
    }
    if (reader.good)
        result.function = function;
    result.rest = reader.rest;
    return result;
}

} // namespace hearthcell::tests
