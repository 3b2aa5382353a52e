#include "manifest/workbook/picture.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <string_view>
#include <zlib.h>

namespace hearthcell::workbook {
namespace {

constexpr int fineness = 4; // dots drawn across and down one dot of the finished picture

std::string big_endian(std::size_t number) {
    return {char(number >> 24U), char(number >> 16U), char(number >> 8U), char(number)};
}

std::string chunk(std::string const& type, std::string const& content) {
    std::string const checked = type + content;
    auto const sum = crc32(0, reinterpret_cast<Bytef const*>(checked.data()), uInt(checked.size()));
    return big_endian(content.size()) + checked + big_endian(sum);
}

std::string compressed(std::string const& content) {
    uLongf size = compressBound(uLong(content.size()));
    std::string packed(size, '\0');
    if (compress2(reinterpret_cast<Bytef*>(packed.data()), &size, reinterpret_cast<Bytef const*>(content.data()),
                  uLong(content.size()), Z_BEST_COMPRESSION) != Z_OK)
        throw std::runtime_error("zlib cannot compress a picture");
    packed.resize(size);
    return packed;
}

} // namespace

Picture::Picture(int width, int height)
    : width_(width), height_(height),
      fine_(std::size_t(width) * std::size_t(height) * fineness * fineness, {255, 255, 255}) {}

void Picture::fill(double left, double top, double right, double bottom, Colour colour) {
    auto const fine = [](double place, int end) {
        return int(std::lround(std::clamp(place, 0.0, double(end)) * fineness));
    };
    int const from = fine(left, width_), to = fine(right, width_), end = fine(bottom, height_);
    for (int row = fine(top, height_); row < end && from < to; ++row)
        std::fill_n(fine_.begin() + (row * width_ * fineness + from), to - from, colour);
}

std::string Picture::rows() const {
    std::string bytes;
    for (int row = 0; row < height_; ++row) {
        bytes += '\0'; // the row stands as it is, not as a difference
        for (int column = 0; column < width_; ++column) {
            int red = 0, green = 0, blue = 0;
            for (int y = 0; y < fineness; ++y)
                for (int x = 0; x < fineness; ++x) {
                    Colour const& colour = fine_[std::size_t(((row * fineness + y) * width_ + column) * fineness + x)];
                    red += colour.red;
                    green += colour.green;
                    blue += colour.blue;
                }
            for (int const sum : {red, green, blue})
                bytes += char(sum / (fineness * fineness));
        }
    }
    return bytes;
}

std::string Picture::png() const {
    using namespace std::string_literals;
    std::string const form =
        "\x08\x02\x00\x00\x00"s; // 8 bits a colour; red, green, blue; the one way to pack; plain rows
    return "\x89PNG\r\n\x1a\n"s +
           chunk("IHDR", big_endian(std::size_t(width_)) + big_endian(std::size_t(height_)) + form) +
           chunk("IDAT", compressed(rows())) + chunk("IEND", "");
}

} // namespace hearthcell::workbook
