#pragma once
// How an office is shut in: what an Office must know of it, and no more.

#include <com/sun/star/uno/XComponentContext.hpp>

#include <filesystem>
#include <string>
#include <vector>

namespace hearthcell::office {

/// What a confined program sees.
struct Confinement {
    std::filesystem::path program;              // the folder of its own files; read only
    std::vector<std::filesystem::path> folders; // where it reads and writes
    std::filesystem::path temporary;            // what it takes for /tmp
};

class Confining {
public:
    virtual ~Confining() = default;

    /// The words to put before a command line.
    [[nodiscard]] virtual std::vector<std::string> words(Confinement const& confinement) const = 0;

    /// The office's context over the pipe that it listens on in what it takes for /tmp. Nothing where it does not
    /// listen yet. UNO's exceptions pass.
    [[nodiscard]] virtual com::sun::star::uno::Reference<com::sun::star::uno::XComponentContext>
    connected(Confinement const& confinement, std::string const& pipe,
              com::sun::star::uno::Reference<com::sun::star::uno::XComponentContext> const& own) const = 0;
};

} // namespace hearthcell::office
