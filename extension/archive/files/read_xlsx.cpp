// The cells of .xlsx.

#include "extension/archive/files/problem.hpp"
#include "extension/archive/files/xlsx_package.hpp"
#include "extension/archive/files/xlsx_sheet.hpp"

namespace hearthcell::archive {

void read_xlsx(std::filesystem::path const& file, Room& room, CellSink& sink) {
    Zip const package(file);
    std::filesystem::path const part = name_of_workbook_part(package, room);
    std::string const folder = part.parent_path().string();
    if (part.extension() != ".xml")
        throw Trouble(Reason::unsupported, "a binary workbook, " + part.string());
    WorkbookPart workbook(room);
    read_part(package, part.string(), workbook);
    if (workbook.root != "workbook")
        throw Trouble(Reason::unsupported, "no workbook, but a " + workbook.root);
    Relations relations(room);
    read_part(package, (part.parent_path() / "_rels" / part.filename()).string() + ".rels", relations);
    SharedTexts shared(room);
    if (auto const* const texts = relations.of_type("/sharedStrings"); texts != nullptr && sink.wants_all())
        read_part(package, part_name(folder, texts->target), shared);
    for (std::size_t sheet = 0; sheet < workbook.sheets.size(); ++sheet) {
        if (sink.wants_all())
            sink.sheet(workbook.sheets[sheet].name);
        auto const found = relations.by_id.find(workbook.sheets[sheet].id);
        if (found == relations.by_id.end() || !found->second.type.ends_with("/worksheet"))
            continue; // a sheet that is only a chart
        XlsxSheet reader(static_cast<int>(sheet), shared.texts, room, sink);
        read_part(package, part_name(folder, found->second.target), reader);
    }
    if (sink.wants_all())
        for (formulas::Definition& name : workbook.names)
            sink.named(std::move(name));
}

} // namespace hearthcell::archive
