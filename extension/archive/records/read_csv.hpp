#pragma once
// Reading CSV.

#include <functional>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

struct csv_parser;

namespace hearthcell::archive {

/// Reads records of a CSV text that csv_row wrote and that comes in pieces. It may hold more than there is memory for.
class CsvReader {
public:
    using Take = std::function<void(std::vector<std::string> const&)>;
    explicit CsvReader(Take take);
    ~CsvReader();
    CsvReader(CsvReader const&) = delete;
    CsvReader& operator=(CsvReader const&) = delete;

    void feed(std::string_view piece);

private:
    std::unique_ptr<csv_parser> parser_;
    std::vector<std::string> record_;
    Take take_;
};

} // namespace hearthcell::archive
