#include "test_archive.hpp"

#include "flat_odf.hpp"
#include "good_workbooks.hpp"
#include "special_workbooks.hpp"
#include "through_office.hpp"

namespace hearthcell::tests::archive {
namespace {

std::vector<Workbook> special(TestArchive const& archive) {
    return {with_macro("odd/macro.fods", archive.marker()),
            with_links("odd/links.fods", archive.folder / "elsewhere/source.fods", link_as_saved),
            with_a_million_cells("slow/a million.ods")};
}

void write(Workbook const& workbook, office::Office& office, std::filesystem::path const& folder) {
    std::filesystem::path const file = folder / workbook.path;
    std::filesystem::create_directories(file.parent_path());
    std::string const ending = workbook.path.extension().string();
    if (ending == ".xlsx" || ending == ".xls")
        write_through_office(workbook, office, file);
    else
        write_odf(workbook, file);
}

} // namespace

std::vector<Workbook> TestArchive::recalculable() const {
    std::vector<Workbook> all = good_workbooks();
    for (Workbook& workbook : all)
        workbook.path = good().filename() / workbook.path;
    for (Workbook const& workbook : special(*this))
        all.push_back(workbook);
    return all;
}

void TestArchive::make(int count) const {
    std::filesystem::remove_all(folder);
    office::Office office({.package = PACKAGE});
    for (Workbook const& workbook : good_workbooks(count))
        write(workbook, office, good());
    std::filesystem::create_directory_symlink("..", good() / "2017" / "around");
    write_bad_files(office, odd());
    for (Workbook const& workbook : special(*this))
        write(workbook, office, folder);
    write(that_takes_for_ever("for ever.fods"), office, slow());
    write(link_source("source.fods", link_today), office, folder / "elsewhere");
}

} // namespace hearthcell::tests::archive
