#include "extension/menu/original.hpp"

#include "extension/checking/kept.hpp"
#include "extension/menu/documents.hpp"
#include "extension/menu/package_files.hpp"

#include <com/sun/star/util/XModifiable.hpp>
#include <osl/file.hxx>
#include <rtl/digest.h>

#include <array>
#include <memory>

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using rtl::OUString;

namespace hearthcell::menu {
namespace {

using Model = Reference<css::sheet::XSpreadsheetDocument>;

constexpr char path_property[] = "Hearthcell original", digest_property[] = "Hearthcell original, SHA-1";

constexpr std::uint64_t largest = 64 << 20; // bytes of an old sheet; reading more would keep the office waiting

/// Of a file's bytes; empty where it cannot be read. A document may name anything: what is no plain file is not opened.
OUString digest_of(OUString const& path) {
    osl::File file(url_of(path));
    if (!is_plain_file(url_of(path), largest) || file.open(osl_File_OpenFlag_Read) != osl::FileBase::E_None)
        return {};
    std::unique_ptr<void, void (*)(rtlDigest)> const digest(rtl_digest_createSHA1(), rtl_digest_destroySHA1);
    std::array<char, 1 << 16> piece{};
    sal_uInt64 got = 0, all = 0;
    do {
        if (file.read(piece.data(), piece.size(), got) != osl::FileBase::E_None || (all += got) > largest)
            return {};
        rtl_digest_updateSHA1(digest.get(), piece.data(), sal_uInt32(got));
    } while (got > 0);
    std::array<sal_uInt8, RTL_DIGEST_LENGTH_SHA1> sum{};
    rtl_digest_getSHA1(digest.get(), sum.data(), sum.size());
    OUString written;
    for (sal_uInt8 const byte : sum)
        written += (byte < 16 ? OUString("0") : OUString()) + OUString::number(byte, 16);
    return written;
}

} // namespace

bool Original::is_still(OUString const& file) const {
    return digest.isEmpty() || digest_of(file) == digest;
}

void remember_original(Model const& document, OUString const& path) {
    Reference<css::util::XModifiable> const changes(document, UNO_QUERY_THROW);
    bool const was_changed = changes->isModified();
    checking::keep_text(document, path_property, path);
    checking::keep_text(document, digest_property, digest_of(path));
    changes->setModified(was_changed);
}

void forget_original(Model const& document) {
    checking::forget_text(document, path_property);
    checking::forget_text(document, digest_property);
}

Original original_of(Model const& document) {
    return {checking::kept_text(document, path_property), checking::kept_text(document, digest_property)};
}

} // namespace hearthcell::menu
