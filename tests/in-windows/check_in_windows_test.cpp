// 'Check this workbook' with its windows.

#include "menu_in_windows.hpp"

#include <com/sun/star/util/XModifiable.hpp>

namespace hearthcell::tests {

namespace css = com::sun::star;

namespace {

class CheckInWindows : public MenuInWindows {
protected:
    static bool is_modified(Model const& document) {
        return office::asking("asking whether a document was changed", [&] {
            return css::uno::Reference<css::util::XModifiable>(document, css::uno::UNO_QUERY_THROW)->isModified();
        });
    }

    std::filesystem::path const file = office.folder() / "long.ods";
};

} // namespace

TEST_P(CheckInWindows, OpensWhatCameOfIt) {
    make_long(file, 2000);
    auto const document = open(office::file_url(file));
    auto const open_before = open_documents().size();
    choose("long.ods", menu::Text::check_workbook);
    EXPECT_TRUE(eventually([&] { return open_documents().size() > open_before; }));
    EXPECT_TRUE(screen.is_gone(label(menu::Text::checking, language)));
    picture("what came of it");
    EXPECT_FALSE(is_modified(document));
    EXPECT_TRUE(office.alive());
}

TEST_P(CheckInWindows, StopsWhenItIsTold) {
    make_long(file, 150000);
    auto const document = open(office::file_url(file));
    auto const open_before = open_documents().size();
    choose("long.ods", menu::Text::check_workbook);
    answer(label(menu::Text::checking, language), label(menu::Text::cancel, language));
    std::string const said = answer("Hearthcell");
    EXPECT_NE(said.find(menu::text(menu::Text::check_stopped, language)), std::string::npos) << said;
    EXPECT_EQ(open_documents().size(), open_before);
    EXPECT_FALSE(is_modified(document));
}

INSTANTIATE_TEST_SUITE_P(In, CheckInWindows, testing::ValuesIn(languages), name_of);

} // namespace hearthcell::tests
