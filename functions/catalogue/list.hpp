#pragma once
// A list of known largest length that lives in read-only memory: what a catalogue entry is made of.

#include <cstddef>
#include <initializer_list>

namespace hearthcell {

template <class T, std::size_t Capacity> class List {
public:
    constexpr List() = default;
    constexpr List(std::initializer_list<T> values) {
        for (T const& value : values)
            items[count++] = value; // too many is a compile error in a constant
    }
    constexpr T const* begin() const { return items; }
    constexpr T const* end() const { return items + count; }
    constexpr std::size_t size() const { return count; }
    constexpr bool empty() const { return count == 0; }
    constexpr T const& operator[](std::size_t place) const { return items[place]; }

private:
    T items[Capacity]{};
    std::size_t count = 0;
};

} // namespace hearthcell
