#pragma once
// The menu as people use it: opened with the mouse in a Calc with windows, each command chosen, each dialog answered.

#include "calc.hpp"
#include "program_on_path.hpp"
#include "screen.hpp"

#include "extension/menu/commands.hpp"
#include "extension/office/file_url.hpp"
#include "extension/office/text.hpp"

#include <com/sun/star/frame/XModel.hpp>

namespace hearthcell::tests {

/// A text of the menu as it is shown, without the sign before the letter that it is chosen by.
std::string label(menu::Text which, Language language);

/// A command's label as the title of its dialog: without the dots, too.
std::string title_of(menu::Text command, Language language);

std::string name_of(testing::TestParamInfo<Language> const& language);

class MenuInWindows : public testing::TestWithParam<Language> {
protected:
    using Model = com::sun::star::uno::Reference<com::sun::star::frame::XModel>;

    Language const language = GetParam();
    ProgramOnPath const program{scratch_folder() / "programs"};
    Office office{{.package = package(), .menus = std::string(tag_of(language)), .windows = true}};
    Screen screen{office};
    std::filesystem::path const packaged = office.folder() / "bundled" / package().stem();

    /// Opens a spreadsheet in a window of its own; an address of the office's or of a file.
    Model open(rtl::OUString const& address);

    void choose(std::string const& window, menu::Text which);

    /// Answers a dialog of ours with OK, or with another button; gives what it said.
    std::string answer(std::string const& title, std::string const& button = "OK");

    /// Chooses a command that opens a new document, and closes that.
    void expect_new_document(std::string const& window, menu::Text which);

    std::vector<Model> open_documents();

    /// Stores a workbook with so many calls of a function of ours.
    void make_long(std::filesystem::path const& file, int calls);

    void picture(std::string const& name);
    int pictures = 0;
};

} // namespace hearthcell::tests
