#pragma once
// How a copy for sharing is made, step by step.

#include "extension/menu/documents.hpp"
#include "extension/menu/outside_links.hpp"
#include "extension/menu/sliced_work.hpp"
#include "extension/sharing/freeze.hpp"

#include <com/sun/star/io/XTempFile.hpp>

#include <memory>
#include <optional>

namespace hearthcell::menu {

/// A copy for sharing in the making, part after part. One that is left off leaves nothing: the file that was asked for
/// is written as the last thing, and all before stands in a temporary one.
class SharedCopy final : public SlicedWork {
public:
    SharedCopy(Surroundings const& surroundings,
               com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> const& document,
               rtl::OUString const& target);

    void go_on() override;
    [[nodiscard]] bool is_done() const override { return next_ == Step::none; }
    [[nodiscard]] double done() const override;
    [[nodiscard]] bool is_short() const override { return next_ == Step::replace; }
    [[nodiscard]] bool is_last() const override { return next_ == Step::save; }
    [[nodiscard]] Answer answer() const override { return answer_; }

private:
    /// What comes next. Reading takes all that is shown at one moment, and is the only thing that needs the document.
    enum class Step { read, open, replace, save, none };

    void read();
    void open();
    void replace();
    void save();
    void end(bool done, rtl::OUString const& words);
    /// Takes out of a file what LibreOffice would do by itself when it opens it: follow links, and calculate, which
    /// would show other random numbers, and open the files that a formula names by what it calculates.
    void make_harmless(rtl::OUString const& url);
    void make_whole(rtl::OUString const& url) const; // puts it back
    void store();
    [[nodiscard]] rtl::OUString success() const;

    Surroundings const surroundings_;
    com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheetDocument> document_; // until it is read
    rtl::OUString const target_;
    bool const is_ods_;
    Step next_ = Step::read;
    Answer answer_;

    std::vector<sharing::SheetFormulas> shown_;
    bool had_password_ = false;
    com::sun::star::uno::Reference<com::sun::star::io::XTempFile> between_; // deleted with the object
    OutsideLinks links_;
    bool calculated_ = false; // by itself
    std::optional<HiddenSpreadsheet> copy_;
    std::optional<sharing::Freezing> freezing_;
};

} // namespace hearthcell::menu
