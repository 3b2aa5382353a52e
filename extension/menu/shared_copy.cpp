#include "extension/menu/shared_copy.hpp"

#include "extension/menu/original.hpp"
#include "extension/menu/package_files.hpp"
#include "extension/menu/stored_parts.hpp"
#include "functions/edition.hpp"

#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/io/TempFile.hpp>
#include <com/sun/star/ucb/SimpleFileAccess.hpp>

#include <utility>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using rtl::OUString;

namespace hearthcell::menu {
namespace {

/// Documents with a password keep the key among the properties they were opened or saved with.
bool has_password(Reference<css::sheet::XSpreadsheetDocument> const& document) {
    for (css::beans::PropertyValue const& property :
         Reference<css::frame::XModel>(document, UNO_QUERY_THROW)->getArgs())
        if (property.Name == "EncryptionData" || property.Name == "Password")
            return true;
    return false;
}

std::string calculates_by_itself(bool yes) {
    return std::string(R"(<config:config-item config:name="AutoCalculate" config:type="boolean">)") +
           (yes ? "true" : "false") + "</config:config-item>";
}

/// The settings of a document that calculates by itself, or not.
bool let_calculate(std::string& settings, bool yes) {
    std::string const before = calculates_by_itself(!yes);
    auto const place = settings.find(before);
    if (place == std::string::npos)
        return false;
    settings.replace(place, before.size(), calculates_by_itself(yes));
    return true;
}

/// Puts a file in its place as a whole or, where there is no room or no right, not at all.
void move_whole(Surroundings const& surroundings, OUString const& from, OUString const& to) {
    auto const files = css::ucb::SimpleFileAccess::create(surroundings.context);
    OUString const beside = to + ".part";
    try {
        files->copy(from, beside);
        files->move(beside, to);
    } catch (css::uno::Exception const&) {
        if (files->exists(beside))
            files->kill(beside);
        throw;
    }
}

} // namespace

SharedCopy::SharedCopy(Surroundings const& around, Reference<css::sheet::XSpreadsheetDocument> const& of_document,
                       OUString const& to)
    : surroundings_(around), document_(of_document), target_(to), is_ods_(!to.endsWithIgnoreAsciiCase(".xlsx")) {}

void SharedCopy::go_on() {
    switch (next_) {
    case Step::read:
        return read();
    case Step::open:
        return open();
    case Step::replace:
        return replace();
    case Step::save:
        return save();
    case Step::none:
        return;
    }
}

double SharedCopy::done() const {
    if (freezing_)
        return 0.2 + 0.6 * freezing_->done(); // storing and opening take a fifth each, at a guess
    return next_ == Step::read ? 0 : 0.1;
}

void SharedCopy::end(bool done, OUString const& words) {
    answer_ = {done, words};
    next_ = Step::none;
}

void SharedCopy::read() {
    shown_ = sharing::read_shown(document_);
    had_password_ = has_password(document_);
    between_ = css::io::TempFile::create(surroundings_.context);
    store_copy(document_, between_->getUri());
    document_.clear();
    next_ = Step::open;
}

void SharedCopy::open() {
    make_harmless(between_->getUri());
    copy_.emplace(surroundings_, between_->getUri());
    if (!copy_->model.is())
        return end(false, surroundings_.say(Text::cannot_open, path_of(between_->getUri())));
    forget_original(copy_->model);
    freezing_.emplace(copy_->model, std::move(shown_), wide(edition));
    OUString const& locked = freezing_->result().locked_sheet;
    if (!locked.isEmpty())
        return end(false, surroundings_.say(Text::sheet_is_locked, locked));
    next_ = Step::replace;
}

void SharedCopy::replace() {
    if (!freezing_->go_on())
        next_ = Step::save;
}

void SharedCopy::save() {
    if (is_open(surroundings_, target_)) // by now
        return end(false, surroundings_.say(Text::name_is_open, path_of(target_)));
    try {
        store();
    } catch (css::uno::Exception const& problem) {
        OUString const words = surroundings_.say(Text::copy_failed, path_of(target_));
        return end(false, with_cause(surroundings_, words, problem.Message));
    }
    end(true, success());
}

void SharedCopy::make_harmless(OUString const& url) {
    change_parts(surroundings_, url, [&](std::string const& part, std::string& xml) {
        if (part != "settings.xml")
            return links_.take_out_of(xml, url);
        calculated_ = let_calculate(xml, false);
        return calculated_;
    });
}

void SharedCopy::make_whole(OUString const& url) const {
    change_parts(surroundings_, url, [&](std::string const& part, std::string& xml) {
        if (part != "settings.xml")
            return links_.put_back_into(xml, target_);
        return calculated_ && let_calculate(xml, true);
    });
}

void SharedCopy::store() {
    if (!is_ods_)
        return store_copy(copy_->model, target_);
    auto const whole = css::io::TempFile::create(surroundings_.context);
    store_copy(copy_->model, whole->getUri());
    make_whole(whole->getUri());
    move_whole(surroundings_, whole->getUri(), target_);
}

OUString SharedCopy::success() const {
    sharing::Frozen const& frozen = freezing_->result();
    OUString words = surroundings_.say(Text::copied, OUString::number(frozen.formulas), path_of(target_));
    if (frozen.left > 0)
        words += "\n\n" + surroundings_.say(Text::copied_but_left, OUString::number(frozen.left));
    if (sal_Int32 const lost = links_.objects() + (is_ods_ ? 0 : links_.pictures()); lost > 0)
        words += "\n\n" + surroundings_.say(Text::copied_without_links, OUString::number(lost));
    if (had_password_)
        words += "\n\n" + surroundings_.say(Text::copied_without_password);
    return words;
}

} // namespace hearthcell::menu
