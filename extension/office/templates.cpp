#include "extension/office/templates.hpp"

#include "extension/office/text.hpp"

#include <com/sun/star/beans/Property.hpp>
#include <com/sun/star/frame/DocumentTemplates.hpp>
#include <com/sun/star/sdbc/XResultSet.hpp>
#include <com/sun/star/sdbc/XRow.hpp>
#include <com/sun/star/ucb/OpenCommandArgument2.hpp>
#include <com/sun/star/ucb/OpenMode.hpp>
#include <com/sun/star/ucb/UniversalContentBroker.hpp>
#include <com/sun/star/ucb/XCommandProcessor.hpp>
#include <com/sun/star/ucb/XContent.hpp>
#include <com/sun/star/ucb/XContentAccess.hpp>
#include <com/sun/star/ucb/XDynamicResultSet.hpp>

#include <algorithm>

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace hearthcell::office {
namespace {

struct Entry {
    rtl::OUString address; // within the hierarchy: to be asked for its content would hang LibreOffice 7.4
    std::string title;
    std::string target; // the address of the file that it stands for
};

/// What stands in a folder of the office's own hierarchy of templates.
std::vector<Entry> entries(Reference<css::ucb::XContent> const& folder, bool folders) {
    css::beans::Property const wanted[] = {
        {"Title", -1, css::uno::Type(), 0},
        {folders ? rtl::OUString("Title") : rtl::OUString("TargetURL"), -1, css::uno::Type(), 0}};
    css::ucb::OpenCommandArgument2 how;
    how.Mode = folders ? css::ucb::OpenMode::FOLDERS : css::ucb::OpenMode::DOCUMENTS;
    how.Properties = css::uno::Sequence<css::beans::Property>(wanted, 2);
    Reference<css::ucb::XCommandProcessor> const processor(folder, UNO_QUERY_THROW);
    Reference<css::ucb::XDynamicResultSet> const found(processor->execute({"open", -1, Any(how)}, 0, {}),
                                                       UNO_QUERY_THROW);
    auto const rows = found->getStaticResultSet();
    Reference<css::sdbc::XRow> const row(rows, UNO_QUERY_THROW);
    Reference<css::ucb::XContentAccess> const access(rows, UNO_QUERY_THROW);
    std::vector<Entry> list;
    while (rows->next())
        list.push_back({access->queryContentIdentifierString(), narrow(row->getString(1)), narrow(row->getString(2))});
    return list;
}

} // namespace

std::vector<OfferedTemplate> offered_templates(Office& office, std::string const& group_starting_with) {
    return asking("listing the templates", [&] {
        auto const manager = css::frame::DocumentTemplates::create(office.context());
        manager->update();
        auto const broker = css::ucb::UniversalContentBroker::create(office.context());
        std::vector<OfferedTemplate> list;
        for (Entry const& group : entries(manager->getContent(), true)) {
            if (!group.title.starts_with(group_starting_with))
                continue;
            auto const folder = broker->queryContent(broker->createContentIdentifier(group.address));
            for (Entry const& entry : entries(folder, false))
                list.push_back({group.title, entry.title, std::filesystem::path(entry.target).stem().string()});
        }
        std::ranges::sort(list, {}, [](auto const& entry) { return std::pair(entry.group, entry.file); });
        return list;
    });
}

} // namespace hearthcell::office
