#include "extension/archive/files/xls_formula.hpp"

#include "extension/archive/files/xls_records.hpp"
#include "extension/formulas/quotes.hpp"

#include <array>

namespace hearthcell::archive::xls {
namespace {

constexpr std::size_t longest = 8192, deepest = 256; // as Excel has it

/// By their tokens' numbers, from 3 on.
constexpr std::array<std::string_view, 15> operations{
    "+", "-", "*", "/", "^", "&", "<", "<=", "=", ">=", ">", "<>", "!", "~", ":"};

class Tokens {
public:
    Tokens(std::string_view tokens, Place const& cell, Book const& book)
        : bytes_{0, tokens}, cell_(cell), book_(book) {}

    std::string text() {
        while (at_ < bytes_.bytes.size())
            next();
        if (stack_.size() != 1)
            throw Unknown();
        return "=" + stack_[0];
    }

private:
    enum : unsigned {
        add = 0x03,
        range = 0x11,
        plus = 0x12,
        minus = 0x13,
        percent = 0x14,
        brackets = 0x15,
        missing = 0x16,
        quoted_text = 0x17,
        attribute = 0x19,
        error = 0x1C,
        boolean = 0x1D,
        integer = 0x1E,
        real = 0x1F,
        function = 0x21,
        variable_function = 0x22,
        defined_name = 0x23,
        one_cell = 0x24,
        area = 0x25,
        lost_cell = 0x2A,
        lost_area = 0x2B,
        shared_cell = 0x2C,
        shared_area = 0x2D,
        outside_name = 0x39,
        sheet_cell = 0x3A,
        sheet_area = 0x3B,
    };

    unsigned byte() { return bytes_.byte(at_++); }
    unsigned word() {
        at_ += 2;
        return bytes_.word(at_ - 2);
    }

    void push(std::string text) {
        if (text.size() > longest || stack_.size() == deepest)
            throw Unknown();
        stack_.push_back(std::move(text));
    }
    std::string pop() {
        if (stack_.empty())
            throw Unknown();
        std::string top = std::move(stack_.back());
        stack_.pop_back();
        return top;
    }

    void next() {
        unsigned token = byte();
        token = token >= 0x60 ? token - 0x40 : token >= 0x40 ? token - 0x20 : token; // its class does not matter
        if (token >= add && token <= range) {
            std::string const right = pop();
            return push(pop() + std::string(operations.at(token - add)) + right);
        }
        switch (token) {
        case plus:
            return push("+" + pop());
        case minus:
            return push("-" + pop());
        case percent:
            return push(pop() + "%");
        case brackets:
            return push("(" + pop() + ")");
        case missing:
            return push({});
        case quoted_text:
            return push_text();
        case attribute:
            return read_attribute();
        case error:
            byte();
            return push("#REF!");
        case boolean:
            return push(byte() != 0 ? "TRUE()" : "FALSE()");
        case integer:
            return push(std::to_string(word()));
        case real:
            at_ += 8;
            return push(written(bytes_.real(at_ - 8)));
        case function: {
            KnownFunction const known = function_numbered(word());
            return call(std::string(known.name), known.arguments);
        }
        case variable_function:
            return call_variable();
        default:
            return read_reference(token);
        }
    }

    void push_text() {
        unsigned const number = byte();
        std::size_t const size = (bytes_.byte(at_) & 1U) != 0 ? std::size_t{2} * number : number;
        push(formulas::quoted(letters_in(bytes_, at_, number, true), '"'));
        at_ += 1 + size;
    }

    void read_attribute() {
        constexpr unsigned choose = 0x04, sum = 0x10;
        unsigned const kind = byte(), size = word();
        if ((kind & choose) != 0)
            at_ += std::size_t{2} * (size + 1);
        if ((kind & sum) != 0)
            call("SUM", 1);
    }

    void call(std::string const& name, int arguments) {
        if (name.empty() || arguments < 0 || std::size_t(arguments) > stack_.size())
            throw Unknown();
        std::string inside;
        for (int left = arguments; left > 0; --left)
            inside = pop() + (left == arguments ? "" : ";") + inside;
        push(name + "(" + inside + ")");
    }

    void call_variable() {
        constexpr unsigned by_name = 255;
        int const arguments = int(byte() & 0x7FU);
        unsigned const number = word() & 0x7FFFU;
        if (number != by_name)
            return call(std::string(function_numbered(number).name), arguments);
        if (arguments < 1 || std::size_t(arguments) > stack_.size())
            throw Unknown();
        auto const name = stack_.end() - arguments;
        std::string const called = *name;
        stack_.erase(name);
        call(called, arguments - 1);
    }

    void read_reference(unsigned token) {
        Place const* const base = token == shared_cell || token == shared_area ? &cell_ : nullptr;
        switch (token) {
        case defined_name: {
            unsigned const number = word();
            at_ += 2;
            return push(name_text(number, book_));
        }
        case outside_name: {
            unsigned const sheets = word(), number = word();
            at_ += 2;
            return push(name_text(number, sheets, book_));
        }
        case one_cell:
        case shared_cell:
            return push(read_cell(base));
        case area:
        case shared_area:
            return push(read_area(base));
        case lost_cell:
        case lost_area:
            at_ += token == lost_cell ? 4 : 8;
            return push("#REF!");
        case sheet_cell: {
            std::string const sheet = sheet_text(word(), book_);
            return push(sheet + read_cell(base));
        }
        case sheet_area: {
            std::string const sheet = sheet_text(word(), book_);
            return push(sheet + read_area(base));
        }
        default:
            throw Unknown();
        }
    }

    std::string read_cell(Place const* base) {
        unsigned const row = word();
        return cell_text(row, word(), base);
    }

    std::string read_area(Place const* base) {
        unsigned const top = word(), bottom = word(), left = word(), right = word();
        return cell_text(top, left, base) + ":" + cell_text(bottom, right, base);
    }

    Record bytes_;
    std::size_t at_ = 0;
    Place cell_;
    Book const& book_;
    std::vector<std::string> stack_;
};

} // namespace

std::string formula_of(std::string_view tokens, Place const& cell, Book const& book, Shared const& shared) {
    constexpr unsigned of_another_cell = 0x01;
    Record const bytes{0, tokens};
    if (bytes.byte(0) == of_another_cell && tokens.size() == 5) {
        auto const known = shared.find({bytes.word(1), bytes.word(3)});
        tokens = known == shared.end() ? std::string_view() : known->second;
    }
    try {
        return Tokens(tokens, cell, book).text();
    } catch (Unknown const&) {
        return {};
    }
}

} // namespace hearthcell::archive::xls
