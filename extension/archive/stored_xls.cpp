#include "archive/compound.hpp"
#include "archive/long_text.hpp"
#include "archive/problem.hpp"
#include "archive/stored.hpp"

#include <array>
#include <optional>
#include <utility>

namespace hearthcell::archive {
namespace {

// Records of the binary format of Excel 5 to 2003 ("BIFF"): two bytes of kind, two of length, the data.
enum Kind : std::uint16_t {
    formula = 0x0006,
    end_of_stream = 0x000A,
    file_password = 0x002F,
    continued = 0x003C,
    sheet = 0x0085,
    text_result = 0x0207,
    start_of_stream = 0x0809,
};

constexpr std::uint16_t version_8 = 0x0600;
constexpr std::size_t result_at = 6; // in a FORMULA record, after row, column and cell format

struct Record {
    std::uint16_t kind = 0;
    std::string_view data;
};

class Records {
public:
    Records(std::string_view stream, std::size_t place) : stream_(stream), place_(place) {}

    std::optional<Record> next() {
        if (place_ + 4 > stream_.size())
            return std::nullopt;
        auto const kind = number_at<std::uint16_t>(stream_, place_);
        auto const length = number_at<std::uint16_t>(stream_, place_ + 2);
        if (place_ + 4 + length > stream_.size())
            throw Trouble(Reason::corrupt, "the workbook ends within a record");
        Record const record{kind, stream_.substr(place_ + 4, length)};
        place_ += 4U + length;
        return record;
    }

private:
    std::string_view stream_;
    std::size_t place_;
};

Value error_result(unsigned char code) {
    constexpr std::array<std::pair<unsigned char, char const*>, 7> all{{{0x00, "#NULL!"},
                                                                        {0x07, "#DIV/0!"},
                                                                        {0x0F, "#VALUE!"},
                                                                        {0x17, "#REF!"},
                                                                        {0x1D, "#NAME?"},
                                                                        {0x24, "#NUM!"},
                                                                        {0x2A, "#N/A"}}};
    for (auto const& [known, text] : all)
        if (known == code)
            return Fault{error_code(text), text};
    return Fault{};
}

/// The result in a FORMULA record; nothing for a text, which stands in a record of its own.
std::optional<Value> result_in(std::string_view data) {
    enum : unsigned char { text, truth, error, empty_text };
    if (number_at<std::uint16_t>(data, result_at + 6) != 0xFFFF)
        return number_at<double>(data, result_at);
    switch (number_at<unsigned char>(data, result_at)) {
    case truth:
        return static_cast<double>(number_at<unsigned char>(data, result_at + 2));
    case error:
        return error_result(number_at<unsigned char>(data, result_at + 2));
    case empty_text:
        return std::string();
    default:
        return std::nullopt;
    }
}

/// One sheet of a workbook, from its start to its end.
class Sheet {
public:
    Sheet(int index, StoredResults& results) : index_(index), results_(results) {}

    void read(std::string_view stream, std::size_t start) {
        Records records(stream, start);
        while (auto const record = records.next()) {
            if (record->kind == start_of_stream) {
                if (++depth_ == 1)
                    is_version_8_ = number_at<std::uint16_t>(record->data, 0) == version_8;
            } else if (record->kind == end_of_stream) {
                if (--depth_ <= 0)
                    return;
            } else if (depth_ == 1) { // deeper are the charts of the sheet
                take(*record);
            }
        }
        throw Trouble(Reason::corrupt, "a sheet of the workbook has no end");
    }

private:
    void take(Record const& record) {
        if (record.kind == formula) {
            place_ = {index_, number_at<std::uint16_t>(record.data, 0), number_at<std::uint16_t>(record.data, 2)};
            auto const result = result_in(record.data);
            waits_for_text_ = !result;
            // LibreOffice writes 0 for the text that a formula gives when its cell is formatted as a number.
            if (result) {
                double const* const number = std::get_if<double>(&*result);
                results_.add({place_, *result, false, number != nullptr && *number == 0});
            }
        } else if (record.kind == text_result && waits_for_text_ && is_version_8_) {
            // In earlier versions a text is in one of many old code pages: no result rather than a wrong one.
            waits_for_text_ = false;
            text_.emplace(record.data);
            finish_text();
        } else if (record.kind == continued && text_) {
            text_->add(record.data);
            finish_text();
        }
    }

    void finish_text() {
        if (!text_->complete())
            return;
        results_.add({place_, text_->text(), false});
        text_.reset();
    }

    int index_;
    StoredResults& results_;
    int depth_ = 0;
    bool is_version_8_ = false;
    Place place_; // of the formula last read
    bool waits_for_text_ = false;
    std::optional<LongText> text_;
};

} // namespace

StoredResults stored_in_xls(std::filesystem::path const& file) {
    std::string const stream = stream_in_compound(file, {"Workbook", "Book"});
    StoredResults results;
    int index = 0;
    Records globals(stream, 0);
    while (auto const record = globals.next()) {
        if (record->kind == file_password)
            throw Trouble(Reason::password, "encrypted");
        if (record->kind == sheet)
            Sheet(index++, results).read(stream, number_at<std::uint32_t>(record->data, 0));
        if (record->kind == end_of_stream) {
            results.sort();
            return results;
        }
    }
    throw Trouble(Reason::corrupt, "the workbook's list of sheets has no end");
}

} // namespace hearthcell::archive
