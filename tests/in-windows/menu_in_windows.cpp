#include "menu_in_windows.hpp"

#include <com/sun/star/frame/XTitle.hpp>
#include <com/sun/star/util/XCloseable.hpp>

#include <algorithm>

namespace hearthcell::tests {

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

std::string label(menu::Text which, Language language) {
    std::string text(menu::text(which, language));
    std::erase(text, '~');
    return text;
}

std::string title_of(menu::Text command, Language language) {
    std::string const words = label(command, language);
    return words.substr(0, words.find("…"));
}

std::string name_of(testing::TestParamInfo<Language> const& language) {
    constexpr char const* names[] = {"English", "French", "Spanish", "Swahili"};
    return names[std::size_t(language.param)];
}

MenuInWindows::Model MenuInWindows::open(rtl::OUString const& address) {
    return office::asking("opening a window", [&] {
        return Reference<css::frame::XModel>(office.desktop()->loadComponentFromURL(address, "_blank", 0, {}),
                                             UNO_QUERY_THROW);
    });
}

void MenuInWindows::choose(std::string const& window, menu::Text which) {
    std::string const command = label(which, language);
    auto shown = screen.window(window, "Hearthcell");
    ASSERT_TRUE(shown) << "no menu in " << window;
    screen.click(*shown->find("Hearthcell"));
    shown = screen.window(window, command);
    ASSERT_TRUE(shown) << "the menu lacks " << command;
    picture("menu");
    screen.click(*shown->find(command));
}

std::string MenuInWindows::answer(std::string const& title, std::string const& button) {
    auto const dialog = screen.window(title, button);
    if (!dialog)
        return "no dialog came";
    picture(title);
    screen.click(*dialog->find(button));
    EXPECT_TRUE(screen.is_gone(title));
    EXPECT_TRUE(office.alive());
    return dialog->words();
}

void MenuInWindows::expect_new_document(std::string const& window, menu::Text which) {
    auto const before = open_documents();
    auto const is_new = [&](auto const& document) {
        return std::find(before.begin(), before.end(), document) == before.end();
    };
    choose(window, which);
    Reference<css::frame::XModel> opened;
    EXPECT_TRUE(eventually([&] {
        auto const now = open_documents();
        auto const found = std::find_if(now.begin(), now.end(), is_new);
        return found != now.end() && (opened = *found).is();
    })) << label(which, language);
    if (!opened.is())
        return;
    office::asking("looking at the new document", [&] {
        EXPECT_TRUE(opened->getURL().isEmpty());
        auto const title = Reference<css::frame::XTitle>(opened, UNO_QUERY_THROW)->getTitle();
        EXPECT_TRUE(screen.window(office::narrow(title)));
        picture(label(which, language));
        Reference<css::util::XCloseable>(opened, UNO_QUERY_THROW)->close(true);
    });
    EXPECT_TRUE(office.alive());
}

std::vector<MenuInWindows::Model> MenuInWindows::open_documents() {
    return office::asking("counting the open documents", [&] {
        std::vector<Reference<css::frame::XModel>> found;
        auto const all = office.desktop()->getComponents()->createEnumeration();
        while (all->hasMoreElements())
            if (Reference<css::frame::XModel> const model(all->nextElement(), css::uno::UNO_QUERY); model.is())
                found.push_back(model);
        return found;
    });
}

void MenuInWindows::picture(std::string const& name) {
    std::string const test = testing::UnitTest::GetInstance()->current_test_info()->name();
    screen.picture(test.substr(test.find('/') + 1) + " " + test.substr(0, test.find('/')) + " " +
                   std::to_string(++pictures) + " " + name);
}

void MenuInWindows::make_long(std::filesystem::path const& file, int calls) {
    Document document = Document::blank(office);
    document.sheet(0).formulas("A1", {{"=ROW()/50", "=STOVE.BOILINGPOINT(A1)"}});
    document.sheet(0).fill_down("A1:B" + std::to_string(calls));
    document.save(file);
}

} // namespace hearthcell::tests
