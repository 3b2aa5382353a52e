#include "archive/compound_file.hpp"

#include "archive/problem.hpp"

#include <gsf/gsf-infile-msole.h>
#include <gsf/gsf-infile.h>
#include <gsf/gsf-input-stdio.h>

namespace hearthcell::archive {
namespace {

struct ReleaseInput {
    void operator()(GsfInput* input) const { g_object_unref(input); }
};
using Input = std::unique_ptr<GsfInput, ReleaseInput>;

std::string said(GError* error) {
    std::string text = error != nullptr ? error->message : "no compound file";
    g_clear_error(&error);
    return text;
}

void say_nothing(char const*, GLogLevelFlags, char const*, void*) {}

} // namespace

void CompoundFile::Release::operator()(_GsfInfile* file) const {
    g_object_unref(file);
}

CompoundFile::CompoundFile(std::filesystem::path const& file) {
    // It complains of damaged files on standard error, too. What it gives back says enough.
    g_log_set_handler("libgsf:msole", static_cast<GLogLevelFlags>(G_LOG_LEVEL_MASK), say_nothing, nullptr);
    GError* error = nullptr;
    Input const input(gsf_input_stdio_new(file.c_str(), &error));
    if (!input)
        throw Trouble(Reason::unreadable, said(error));
    file_.reset(gsf_infile_msole_new(input.get(), &error));
    if (!file_)
        throw Trouble(Reason::corrupt, "the compound file: " + said(error));
}

bool CompoundFile::has(char const* stream) const {
    return Input(gsf_infile_child_by_name(file_.get(), stream)) != nullptr;
}

std::string CompoundFile::content(char const* stream) const {
    Input const input(gsf_infile_child_by_name(file_.get(), stream));
    if (!input)
        throw Trouble(Reason::corrupt, std::string("no stream ") + stream);
    auto const size = static_cast<std::size_t>(gsf_input_size(input.get()));
    std::string bytes(size, '\0');
    if (size > 0 && gsf_input_read(input.get(), size, reinterpret_cast<guint8*>(bytes.data())) == nullptr)
        throw Trouble(Reason::corrupt, std::string("the stream ") + stream + " is cut off");
    return bytes;
}

} // namespace hearthcell::archive
