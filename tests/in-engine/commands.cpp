#include "commands.hpp"

#include "extension/office/file_url.hpp"
#include "extension/office/text.hpp"

#include <com/sun/star/frame/DispatchHelper.hpp>
#include <com/sun/star/frame/DispatchResultEvent.hpp>
#include <com/sun/star/frame/DispatchResultState.hpp>
#include <com/sun/star/frame/XDispatchProvider.hpp>
#include <com/sun/star/util/XCloseable.hpp>

#include <chrono>
#include <thread>

namespace hearthcell::tests {

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using namespace std::chrono_literals;

namespace {

css::beans::PropertyValue argument(char const* name, Any const& value) {
    return {rtl::OUString::createFromAscii(name), 0, value, css::beans::PropertyState_DIRECT_VALUE};
}

Said::State state_of(css::frame::DispatchResultEvent const& result) {
    if (result.State == css::frame::DispatchResultState::SUCCESS)
        return Said::State::done;
    return result.State == css::frame::DispatchResultState::FAILURE ? Said::State::failed : Said::State::given_up;
}

template <class Holds>
std::vector<Reference<css::frame::XModel>> open_documents_where(Office& office, Holds const& holds) {
    return office::asking("looking for open documents", [&] {
        std::vector<Reference<css::frame::XModel>> found;
        auto const open = office.desktop()->getComponents()->createEnumeration();
        while (open->hasMoreElements())
            if (Reference<css::frame::XModel> const model(open->nextElement(), css::uno::UNO_QUERY);
                model.is() && holds(model->getURL()))
                found.push_back(model);
        return found;
    });
}

} // namespace

Said command(Office& office, Document const& document, std::string const& name, std::filesystem::path const& target,
             std::filesystem::path const& source, Attended attended) {
    return command(office, Reference<css::frame::XModel>(document.model(), UNO_QUERY_THROW), name, target, source,
                   attended);
}

Said command(Office& office, Reference<css::frame::XModel> const& model, std::string const& name,
             std::filesystem::path const& target, std::filesystem::path const& source, Attended attended) {
    return command(office, model, name, {target, source, {}, false, attended});
}

Said command(Office& office, Reference<css::frame::XModel> const& model, std::string const& name, Given const& given) {
    return office::asking("giving the command " + name, [&] {
        std::vector<css::beans::PropertyValue> arguments{argument("Unattended", Any(given.attended == Attended::no)),
                                                         argument("Confirmed", Any(given.confirmed))};
        for (auto const& [argument_name, path] : {std::pair("Target", given.target), std::pair("Source", given.source),
                                                  std::pair("Original", given.original)})
            if (!path.empty())
                arguments.push_back(argument(argument_name, Any(office::file_url(path))));
        Reference<css::frame::XDispatchProvider> const frame(model->getCurrentController()->getFrame(),
                                                             UNO_QUERY_THROW);
        Any const answer = css::frame::DispatchHelper::create(office.context())
                               ->executeDispatch(frame, office::wide("vnd.hearthcell:" + name), "_self", 0,
                                                 {arguments.data(), static_cast<sal_Int32>(arguments.size())});
        css::frame::DispatchResultEvent result;
        if (!(answer >>= result))
            throw std::runtime_error("nobody took the command " + name);
        rtl::OUString words;
        result.Result >>= words;
        return Said{state_of(result), office::narrow(words)};
    });
}

std::vector<Reference<css::frame::XModel>> untitled_documents(Office& office) {
    return open_documents_where(office, [](rtl::OUString const& address) { return address.isEmpty(); });
}

Reference<css::frame::XModel> open_document(Office& office, std::filesystem::path const& file) {
    rtl::OUString const wanted = office::file_url(file);
    auto const found = open_documents_where(office, [&](rtl::OUString const& address) { return address == wanted; });
    return found.empty() ? Reference<css::frame::XModel>() : found.back();
}

Sheet first_sheet(Reference<css::frame::XModel> const& document) {
    Reference<css::sheet::XSpreadsheetDocument> const model(document, UNO_QUERY_THROW);
    Reference<css::container::XIndexAccess> const sheets(model->getSheets(), UNO_QUERY_THROW);
    return Sheet(Reference<css::sheet::XSpreadsheet>(sheets->getByIndex(0), UNO_QUERY_THROW));
}

bool eventually(std::function<bool()> const& holds) {
    auto const end = std::chrono::steady_clock::now() + 120s;
    while (!holds()) {
        if (std::chrono::steady_clock::now() > end)
            return false;
        std::this_thread::sleep_for(50ms);
    }
    return true;
}

void close(Reference<css::frame::XModel> const& document) {
    office::asking("closing a document",
                   [&] { Reference<css::util::XCloseable>(document, UNO_QUERY_THROW)->close(true); });
}

} // namespace hearthcell::tests
