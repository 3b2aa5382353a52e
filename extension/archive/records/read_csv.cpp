#include "extension/archive/records/read_csv.hpp"

#include "extension/archive/records/csv.hpp"

#include <csv.h>

#include <new>

namespace hearthcell::archive {

CsvReader::CsvReader(Take take) : parser_(std::make_unique<csv_parser>()), take_(std::move(take)) {
    if (csv_init(parser_.get(), 0) != 0)
        throw std::bad_alloc();
}

CsvReader::~CsvReader() {
    csv_free(parser_.get());
}

void CsvReader::feed(std::string_view piece) {
    auto const field = [](void* text, std::size_t size, void* self) {
        std::string_view const bytes(static_cast<char const*>(text), size);
        static_cast<CsvReader*>(self)->record_.push_back(without_backslashes(bytes));
    };
    auto const record = [](int, void* self) {
        auto& reader = *static_cast<CsvReader*>(self);
        reader.take_(reader.record_);
        reader.record_.clear();
    };
    if (csv_parse(parser_.get(), piece.data(), piece.size(), field, record, this) != piece.size())
        throw std::bad_alloc(); // the only failure there is, since it was not told to be strict
}

} // namespace hearthcell::archive
