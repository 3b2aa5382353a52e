#include "extension/menu/package_files.hpp"

#include <com/sun/star/deployment/PackageInformationProvider.hpp>
#include <com/sun/star/ucb/SimpleFileAccess.hpp>
#include <osl/file.hxx>

namespace css = com::sun::star;
using rtl::OUString;

namespace hearthcell::menu {

OUString package_folder(Surroundings const& surroundings) {
    auto const packages = css::deployment::PackageInformationProvider::get(surroundings.context);
    OUString const folder = packages->getPackageLocation("hearthcell");
    return folder.isEmpty() || folder.endsWith("/") ? folder : folder + "/";
}

OUString packaged_file(Surroundings const& surroundings, OUString const& package, std::string_view folder,
                       std::string_view name) {
    auto const files = css::ucb::SimpleFileAccess::create(surroundings.context);
    std::string_view const language = tag_of(surroundings.language).substr(0, 2);
    std::string_view const without_slash = folder.substr(0, folder.size() - 1);
    OUString const in_language = wide(without_slash) + "%20(" + wide(language) + ")/";
    for (OUString const& place : {in_language, wide(folder)})
        if (OUString const file = package + place + wide(name); files->exists(file))
            return file;
    return {};
}

OUString path_of(OUString const& url) {
    OUString path;
    return osl::FileBase::getSystemPathFromFileURL(url, path) == osl::FileBase::E_None ? path : url;
}

OUString url_of(OUString const& path) {
    OUString url;
    osl::FileBase::getFileURLFromSystemPath(path, url);
    return url;
}

bool is_there(OUString const& path) {
    osl::DirectoryItem item;
    return osl::DirectoryItem::get(url_of(path), item) == osl::FileBase::E_None;
}

} // namespace hearthcell::menu
