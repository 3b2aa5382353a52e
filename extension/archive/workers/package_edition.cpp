#include "extension/archive/workers/package_edition.hpp"

#include "extension/archive/files/problem.hpp"
#include "extension/archive/files/whole_file.hpp"
#include "extension/archive/files/xml.hpp"
#include "extension/archive/files/zip.hpp"
#include "extension/office/environment.hpp"

namespace hearthcell::archive {
namespace {

namespace fs = std::filesystem;

constexpr char description_file[] = "description.xml", our_identifier[] = "hearthcell";

class Description : public Xml {
public:
    std::string version, identifier;

private:
    void opened(std::string_view name, Attributes const& attributes) override {
        if (local(name) == "version")
            version = attributes.ending("value");
        if (local(name) == "identifier")
            identifier = attributes.ending("value");
    }
    void closed(std::string_view) override {}
};

void read_description(fs::path const& package, Description& description) {
    auto const feed = [&](std::string_view piece) { description.feed(piece); };
    if (fs::is_directory(package))
        read_pieces(package / description_file, feed);
    else
        Zip(package).read(description_file, feed);
    description.finish();
}

std::string name_of(Description const& description) {
    return "Hearthcell " + description.version;
}

} // namespace

std::string edition_of(fs::path const& package) {
    try {
        Description description;
        read_description(package, description);
        if (!description.version.empty())
            return name_of(description);
    } catch (Trouble const& trouble) {
        throw std::invalid_argument(package.string() + " is no package: " + trouble.what());
    }
    throw std::invalid_argument(package.string() + " does not say its version");
}

std::string edition_in_own_office() {
    std::string const settings = office::setting("XDG_CONFIG_HOME");
    fs::path const configuration =
        settings.empty() ? fs::path(office::setting("HOME")) / ".config" : fs::path(settings);
    fs::path const unpacked = configuration / "libreoffice/4/user/uno_packages/cache/uno_packages";
    try {
        for (auto const& folder : fs::directory_iterator(unpacked, fs::directory_options::skip_permission_denied)) {
            if (!folder.is_directory())
                continue;
            for (auto const& package : fs::directory_iterator(folder))
                if (fs::is_regular_file(package.path() / description_file)) {
                    Description found;
                    read_description(package, found);
                    if (found.identifier == our_identifier)
                        return name_of(found);
                }
        }
    } catch (std::exception const&) { // there is none, or nobody may look: it is only compared
    }
    return {};
}

} // namespace hearthcell::archive
