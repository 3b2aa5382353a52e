#pragma once
// A small picture, drawn by rectangles.

#include <cstdint>
#include <string>
#include <vector>

namespace hearthcell::workbook {

struct Colour {
    std::uint8_t red, green, blue;
};

/// White at first. It is drawn finer than it is when done, so that thin rules and small letters come out as shades.
class Picture {
public:
    Picture(int width, int height);

    /// Places are in dots of the finished picture; what lies outside of it is left out.
    void fill(double left, double top, double right, double bottom, Colour colour);

    /// As a file (PNG, ISO/IEC 15948) of 24 bits a dot.
    [[nodiscard]] std::string png() const;

private:
    [[nodiscard]] std::string rows() const;

    int width_, height_;
    std::vector<Colour> fine_;
};

} // namespace hearthcell::workbook
