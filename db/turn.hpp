// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <utility>

namespace db {

class WriteGate;

/// A place at the head of the queue of all programs that write to one store, given back when it goes. It locks nothing for
/// readers and promises no more than order: whoever folds, asks the rules, signs and appends within one turn will not find
/// that the head moved meanwhile, unless another program does not keep to the queue. Hold it for milliseconds, never while a
/// person is asked something. It must go before its store does.
class Turn {
public:
    Turn(Turn &&other) noexcept : m_gate(std::exchange(other.m_gate, nullptr)) {}
    Turn &operator=(Turn &&) = delete;
    Turn(const Turn &) = delete;
    Turn &operator=(const Turn &) = delete;
    ~Turn();

private:
    friend class WriteGate;
    explicit Turn(WriteGate &gate) : m_gate(&gate) {}
    WriteGate *m_gate;
};

} // namespace db
