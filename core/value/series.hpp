// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QList>

#include <algorithm>
#include <compare>
#include <cstddef>
#include <iterator>
#include <utility>
#include <vector>

namespace core {

/// A sequence that grows at its end and is cheap to copy: copies share its stretches until one of them is changed. A state
/// made of these can be handed to a screen, or be folded ahead on trial, without copying thousands of items.
/// Copies may be read in several threads; one and the same Series may not be changed while another thread reads it.
template <class T>
class Series {
public:
    using value_type = T;

    class const_iterator {
    public:
        using iterator_category = std::random_access_iterator_tag;
        using value_type = T;
        using difference_type = std::ptrdiff_t;
        using pointer = const T *;
        using reference = const T &;

        const_iterator() = default;
        const_iterator(const Series *in, std::size_t at) : m_in(in), m_at(at) {}
        reference operator*() const { return (*m_in)[m_at]; }
        pointer operator->() const { return &(*m_in)[m_at]; }
        reference operator[](difference_type n) const { return (*m_in)[m_at + static_cast<std::size_t>(n)]; }
        const_iterator &operator++() { return *this += 1; }
        const_iterator &operator--() { return *this -= 1; }
        const_iterator operator++(int) { return std::exchange(*this, *this + 1); }
        const_iterator operator--(int) { return std::exchange(*this, *this - 1); }
        const_iterator &operator+=(difference_type n)
        {
            m_at += static_cast<std::size_t>(n);
            return *this;
        }
        const_iterator &operator-=(difference_type n) { return *this += -n; }
        friend const_iterator operator+(const_iterator it, difference_type n) { return it += n; }
        friend const_iterator operator+(difference_type n, const_iterator it) { return it += n; }
        friend const_iterator operator-(const_iterator it, difference_type n) { return it -= n; }
        friend difference_type operator-(const const_iterator &a, const const_iterator &b)
        {
            return static_cast<difference_type>(a.m_at) - static_cast<difference_type>(b.m_at);
        }
        /// Of iterators into one Series.
        friend bool operator==(const const_iterator &a, const const_iterator &b) { return a.m_at == b.m_at; }
        friend auto operator<=>(const const_iterator &a, const const_iterator &b) { return a.m_at <=> b.m_at; }

    private:
        const Series *m_in = nullptr;
        std::size_t m_at = 0;
    };

    std::size_t size() const { return m_size; }
    bool empty() const { return m_size == 0; }
    /// `at` must be less than size().
    const T &operator[](std::size_t at) const
    {
        Q_ASSERT(at < m_size);
        return m_stretches[at / stretch].at(static_cast<qsizetype>(at % stretch));
    }
    const T &front() const { return (*this)[0]; }
    const T &back() const { return (*this)[m_size - 1]; }
    const_iterator begin() const { return {this, 0}; }
    const_iterator end() const { return {this, m_size}; }

    void push_back(T value)
    {
        if (m_size % stretch == 0) {
            m_stretches.emplace_back();
            m_stretches.back().reserve(stretch);
        }
        m_stretches.back().append(std::move(value));
        ++m_size;
    }
    /// The element, to be changed; other copies keep it as it is. Valid until the Series is copied or changed.
    T &edit(std::size_t at)
    {
        Q_ASSERT(at < m_size);
        return m_stretches[at / stretch][static_cast<qsizetype>(at % stretch)];
    }

    /// Calls `each` with the place of every element here that may differ from the one in the same place of `before`: all
    /// but those of the stretches that the two share. In order.
    template <class Each>
    void eachUnshared(const Series &before, Each each) const
    {
        for (std::size_t one = 0; one < m_stretches.size(); ++one) {
            if (one < before.m_stretches.size() && m_stretches[one].constData() == before.m_stretches[one].constData()
                && m_stretches[one].size() == before.m_stretches[one].size())
                continue;
            for (std::size_t at = one * stretch; at < std::min(m_size, (one + 1) * stretch); ++at)
                each(at);
        }
    }

    friend bool operator==(const Series &a, const Series &b) { return a.m_stretches == b.m_stretches; }

private:
    /// Few, so that changing one element of a shared copy is quick; not so few that copying is slow.
    static constexpr std::size_t stretch = 32;
    std::vector<QList<T>> m_stretches;
    std::size_t m_size = 0;
};

} // namespace core
