// What the package says of itself, as a file and as LibreOffice's extension manager shows it.

#include "calc.hpp"

#include "extension/office/process.hpp"
#include "extension/office/text.hpp"
#include "functions/edition.hpp"
#include "tests/support/content.hpp"

#include <com/sun/star/deployment/ExtensionManager.hpp>
#include <com/sun/star/deployment/XPackage.hpp>

#include <chrono>
#include <pugixml.hpp>
#include <set>

namespace hearthcell::tests {

namespace css = com::sun::star;
using css::uno::Reference;

namespace {

std::set<std::string> const languages_of_package{"en", "fr", "es", "sw"};

class Description : public testing::Test {
protected:
    Description() {
        std::filesystem::remove_all(folder);
        office::Process unpack("/usr/bin/unzip", {"-q", package().string(), "-d", folder.string()}, "/dev/null");
        EXPECT_EQ(unpack.wait(std::chrono::seconds(20)), 0);
        auto const read = document.load_file((folder / "description.xml").c_str());
        EXPECT_TRUE(read) << read.description();
        root = document.child("description");
    }
    ~Description() override { std::filesystem::remove_all(folder); }

    /// Of children with a language each.
    std::map<std::string, pugi::xml_node> by_language(char const* element) const {
        std::map<std::string, pugi::xml_node> found;
        for (auto const& child : root.child(element).children())
            EXPECT_TRUE(found.emplace(child.attribute("lang").value(), child).second) << element;
        return found;
    }

    std::filesystem::path const folder = scratch_folder() / "unpacked";
    pugi::xml_document document;
    pugi::xml_node root;
};

Reference<css::deployment::XPackage> installed(Office& office) {
    auto const packages =
        css::deployment::ExtensionManager::get(office.context())->getDeployedExtensions("bundled", {}, {});
    EXPECT_EQ(packages.getLength(), 1);
    return packages[0];
}

} // namespace

TEST_F(Description, HasAllThatAPackageShouldSay) {
    EXPECT_STREQ(root.child("identifier").attribute("value").value(), "hearthcell");
    EXPECT_EQ("Hearthcell " + std::string(root.child("version").attribute("value").value()), edition);
    EXPECT_STREQ(root.child("platform").attribute("value").value(), "linux_x86_64"); // what is tested
    auto const least = root.child("dependencies").child("l:LibreOffice-minimal-version");
    EXPECT_STREQ(least.attribute("value").value(), "7.0"); // the oldest that it was seen in
    EXPECT_STREQ(least.attribute("xmlns:l").value(), "http://libreoffice.org/extensions/description/2011");
    auto const names = by_language("display-name");
    EXPECT_EQ(names.size(), languages_of_package.size());
    for (auto const& [language, name] : names) {
        EXPECT_EQ(languages_of_package.count(language), 1U) << language;
        EXPECT_GT(std::string_view(name.text().get()).size(), 10U) << language;
    }
    auto const licence = root.child("registration").child("simple-license");
    EXPECT_STREQ(licence.attribute("default-license-id").value(),
                 licence.child("license-text").attribute("license-id").value());
}

TEST_F(Description, NamesOnlyFilesThatAreThere) {
    for (auto const& found : document.select_nodes("//@xlink:href")) {
        std::filesystem::path const file = folder / found.attribute().value();
        EXPECT_TRUE(std::filesystem::is_regular_file(file)) << file;
        EXPECT_GT(std::filesystem::file_size(file), 200U) << file;
    }
    auto const texts = by_language("extension-description");
    EXPECT_EQ(texts.size(), languages_of_package.size());
    for (auto const& [language, text] : texts)
        EXPECT_EQ("description/" + language + ".txt", text.attribute("xlink:href").value());
    EXPECT_NE(
        content(
            folder /
            root.child("registration").child("simple-license").child("license-text").attribute("xlink:href").value())
            .find("Mozilla Public License Version 2.0"),
        std::string::npos);
    pugi::xml_document icon;
    EXPECT_TRUE(icon.load_file((folder / root.child("icon").child("default").attribute("xlink:href").value()).c_str()));
    EXPECT_TRUE(icon.child("svg"));
}

TEST_F(Description, IsJoinedByAListOfPartsThatAreAllThere) {
    pugi::xml_document manifest;
    ASSERT_TRUE(manifest.load_file((folder / "META-INF/manifest.xml").c_str()));
    std::set<std::string> listed;
    for (auto const& part : manifest.child("manifest:manifest").children())
        listed.insert(part.attribute("manifest:full-path").value());
    for (std::string const& part : listed)
        EXPECT_TRUE(std::filesystem::is_regular_file(folder / part)) << part;
    for (auto const& entry : std::filesystem::directory_iterator(folder)) {
        std::string const ending = entry.path().extension().string();
        bool const is_part = ending == ".xcu" || ending == ".components" || ending == ".rdb";
        EXPECT_EQ(listed.count(entry.path().filename().string()), is_part ? 1U : 0U) << entry.path();
    }
}

TEST_F(Description, IsShownByTheExtensionManager) {
    auto const shown = installed(office_with_package());
    EXPECT_EQ(office::narrow(shown->getDisplayName()), by_language("display-name").at("en").text().get());
    EXPECT_EQ(office::narrow(shown->getDescription()), content(folder / "description/en.txt"));
    EXPECT_EQ(office::narrow(shown->getPublisherInfo().First), ""); // no link, which without an address leads nowhere
    EXPECT_EQ("Hearthcell " + office::narrow(shown->getVersion()), edition);
    EXPECT_TRUE(shown->getIcon(false).is());
    EXPECT_TRUE(shown->checkDependencies({}));
}

TEST_F(Description, IsShownInTheLanguageOfTheMenus) {
    Office office({.package = package(), .menus = "sw"});
    auto const shown = installed(office);
    EXPECT_EQ(office::narrow(shown->getDisplayName()), by_language("display-name").at("sw").text().get());
    EXPECT_EQ(office::narrow(shown->getDescription()), content(folder / "description/sw.txt"));
}

} // namespace hearthcell::tests
