#pragma once
// One sheet of an .xlsx file.

#include "extension/archive/files/cells.hpp"
#include "extension/archive/files/xml.hpp"

#include <map>
#include <vector>

namespace hearthcell::archive {

class XlsxSheet : public Xml {
public:
    /// texts: those that cells share; empty where only results are wanted.
    XlsxSheet(int sheet, std::vector<std::string> const& texts, Room& room, CellSink& sink)
        : Xml(room), sheet_(sheet), texts_(texts), room_(room), sink_(sink), all_(sink.wants_all()) {}

private:
    struct Area { // of an array formula, which only its first cell holds
        int top, left, bottom, right;
    };
    struct Shared { // a formula that stands in its first cell only, and is meant relative to each
        std::string formula;
        int row, column;
    };

    void opened(std::string_view name, Attributes const& attributes) override;
    void closed(std::string_view name) override;
    void text(std::string_view letters) override;

    void open_row(Attributes const& attributes);
    void open_cell(Attributes const& attributes);
    void open_formula(Attributes const& attributes);
    void close_cell();
    [[nodiscard]] bool in_array() const;
    [[nodiscard]] Value value() const;
    std::string formula();

    int sheet_;
    std::vector<std::string> const& texts_;
    Room& room_;
    CellSink& sink_;
    bool const all_;
    int row_ = -1, column_ = -1;
    bool is_result_ = false, is_array_ = false, has_value_ = false;
    enum class In { nothing, value, formula } in_ = In::nothing;
    std::string type_, value_, formula_, shared_; // shared_: the number of the formula, empty: its own
    std::vector<Area> arrays_;
    std::map<std::string, Shared> shared_formulas_;
};

} // namespace hearthcell::archive
