#pragma once
// What a copy for sharing links to, out of sight of the office while it is made.

#include "extension/menu/surroundings.hpp"

#include <string>
#include <vector>

namespace hearthcell::menu {

/// The links of a stored .ods to what lies outside of it: pictures, objects, sheets. LibreOffice fetches some of them
/// as it opens the file, whatever it is told about updates; so they are taken out of a copy that is opened only to be
/// changed, and put back into what is stored of it.
class OutsideLinks {
public:
    /// Takes them out of the text of a part: an address becomes a word that leads nowhere, and a linked object the
    /// picture that stands for it. stored_at: the address of the file. Whether anything changed.
    bool take_out_of(std::string& xml, rtl::OUString const& stored_at);

    /// Writes them into a part of another .ods, relative to where that is going to be.
    bool put_back_into(std::string& xml, rtl::OUString const& stored_at) const;

    [[nodiscard]] sal_Int32 pictures() const { return pictures_; }
    [[nodiscard]] sal_Int32 objects() const { return objects_; }

private:
    std::vector<std::string> addresses_; // written as in XML; those of files begin with file:
    sal_Int32 pictures_ = 0, objects_ = 0;
};

} // namespace hearthcell::menu
