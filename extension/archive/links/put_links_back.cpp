#include "extension/archive/links/put_links_back.hpp"

namespace hearthcell::archive {

bool PutLinksBack::change(Tag& tag) {
    if (tag.local() == "table")
        kept_ = outside_.is_named_in(tag.attribute("name"))
                    ? outside_.twin_of(tag.attribute("name").substr(0, tag.attribute("name").rfind("'#")))
                    : std::string();
    bool changed = false;
    for (auto& [name, value] : tag.attributes) {
        if (!outside_.is_named_in(value))
            continue;
        bool const twin = tag.local() == "table-source" && !kept_.empty() && without_prefix(name) == "href";
        value = twin ? kept_ : outside_.put_back(value);
        changed = true;
    }
    return changed;
}

bool PutLinksBack::change_text(std::string& text) {
    if (!outside_.is_named_in(text))
        return false;
    text = outside_.put_back(text);
    return true;
}

} // namespace hearthcell::archive
