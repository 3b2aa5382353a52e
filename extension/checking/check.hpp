#pragma once
// The check of a workbook, step by step: in the office's own process as well as from another.

#include "extension/checking/private_copy.hpp"
#include "extension/checking/result.hpp"

namespace hearthcell::checking {

class Check {
public:
    /// selection: only these cells' calls are looked at; empty: all. UNO's exceptions pass.
    Check(com::sun::star::uno::Reference<com::sun::star::uno::XComponentContext> const& context,
          com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document,
          Language language, std::vector<Range> selection = {});
    ~Check();
    Check(Check const&) = delete;
    Check& operator=(Check const&) = delete;

    /// A part of the work, of some hundredths of a second; false when all is done. Only the first one, which reads all
    /// at one moment, needs the document.
    bool go_on();

    /// From 0 to 1.
    [[nodiscard]] double done() const;

    /// When all is done.
    [[nodiscard]] Result const& result() const { return result_; }

    /// What another process keeps until the document is closed.
    [[nodiscard]] sharing::Held const& held() const { return contents_.held; }

private:
    enum class Step { read, find, copy, ask, ask_alone, judge, none };

    void read();
    void find();
    void look_for_hand_written(Place const& cell, std::string const& formula);
    void copy();
    void ask();
    void ask_alone();

    com::sun::star::uno::Reference<com::sun::star::uno::XComponentContext> const context_;
    com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> document_; // until it is read
    Language const language_;
    std::vector<Range> const selection_;
    Step step_ = Step::read;

    Contents contents_;
    Seen seen_;
    std::unique_ptr<Questions> questions_;
    Columns columns_;
    std::vector<ByHand> by_hand_;
    std::size_t forms_looked_at_ = 0;
    std::map<Place, Content>::const_iterator next_cell_; // whose formula is to be looked through
    std::unique_ptr<PrivateCopy> copy_;
    std::vector<std::size_t> plain_, alone_; // questions: those asked side by side, and the others
    std::size_t asked_ = 0;                  // of the present kind
    std::size_t at_once_ = 0;                // grows and shrinks with how long they take
    Result result_;
};

} // namespace hearthcell::checking
