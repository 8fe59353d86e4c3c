// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cstddef>
#include <cstdlib>
#include <new>
#include <vector>

#ifdef __linux__
#include <sys/mman.h>
#endif

namespace brushline {

/**
 * Memory in large pages where the system has them. A search meets a raster row by row of neighbours, so with pages of
 * 4 KiB nearly every look-up first waits for the page's address.
 */
template <typename Value> struct LargePages {
  using value_type = Value;
  LargePages() = default;
  template <typename Other> LargePages(const LargePages<Other> &) {}

  Value *allocate(size_t count) {
    constexpr size_t page = size_t(1) << 21;
    const size_t bytes = (count * sizeof(Value) + page - 1) / page * page;
    if (count > (size_t(1) << 62) / sizeof(Value))
      throw std::bad_alloc();
    void *memory = bytes > 2 * page ? std::aligned_alloc(page, bytes) : std::malloc(count * sizeof(Value));
    if (!memory)
      throw std::bad_alloc();
#if defined(__linux__) && defined(MADV_HUGEPAGE)
    if (bytes > 2 * page)
      madvise(memory, bytes, MADV_HUGEPAGE); // a wish: nothing is lost when it is not granted
#endif
    return static_cast<Value *>(memory);
  }
  void deallocate(Value *memory, size_t) { std::free(memory); }

  template <typename Other> bool operator==(const LargePages<Other> &) const { return true; }
  template <typename Other> bool operator!=(const LargePages<Other> &) const { return false; }
};

template <typename Value> using LargeVector = std::vector<Value, LargePages<Value>>;

} // namespace brushline
