#pragma once
// Lines of a dialog that name folders and files, with a button beside each that lets them be chosen.

#include "extension/menu/dialog_parts.hpp"

#include <com/sun/star/awt/XActionListener.hpp>
#include <com/sun/star/awt/XTextListener.hpp>
#include <cppuhelper/implbase2.hxx>

#include <string>
#include <vector>

namespace hearthcell::menu {

struct PathField {
    enum class Kind { folder, workbook };

    std::string name;
    Text label, picker_title;
    Kind kind = Kind::folder;
};

/// The fields of a dialog, which must live as long. Nobody can agree to it as long as one of them is empty.
class PathFields final
    : public cppu::WeakImplHelper2<com::sun::star::awt::XActionListener, com::sun::star::awt::XTextListener> {
public:
    static constexpr sal_Int32 height = 29; // of one

    /// agree: the name of the button that agrees to the dialog. name_of_results: what "results" gets, if it is still
    /// empty, when "source" is chosen.
    PathFields(Dialog& dialog, Surroundings const& surroundings, std::string agree, Text name_of_results);

    /// Its upper edge is the area's.
    void add(PathField const& field, Area const& area, rtl::OUString const& path = {});
    void listen(); // when the dialog has been opened

    [[nodiscard]] rtl::OUString path(std::string const& name) const;

    void SAL_CALL actionPerformed(com::sun::star::awt::ActionEvent const& event) override;
    void SAL_CALL textChanged(com::sun::star::awt::TextEvent const&) override { look_again(); }
    void SAL_CALL disposing(com::sun::star::lang::EventObject const&) override {}

private:
    void look_again() const;

    Dialog& dialog_;
    Surroundings const& surroundings_;
    std::string const agree_;
    Text const name_of_results_;
    std::vector<PathField> fields_;
};

/// Lets a workbook be chosen; its path, or nothing where the user gives it up.
rtl::OUString ask_for_workbook(Surroundings const& surroundings, Text title, rtl::OUString const& known = {});

} // namespace hearthcell::menu
