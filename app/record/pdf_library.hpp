// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QFunctionPointer>

#include "core/value/result.hpp"

// The library's interface for C: its headers for C++ do not compile as C++20 with every compiler.
#include <qpdf/qpdf-c.h>

namespace record {

/// The library that puts PDF files together, loaded when the first file is made and kept from then on. Linked, it would bring a dozen more
/// at every start of the programs, which take a third of the time until the window stands.
class PdfLibrary {
public:
    /// NotFound where this computer does not have it, or has another version.
    static core::Result<PdfLibrary> load();

private:
    /// Takes the type of what it is given to.
    struct Function {
        QFunctionPointer found;
        template <class F>
        operator F *() const // NOLINT(google-explicit-constructor): a line of the table is all that there is to say of a function
        {
            return reinterpret_cast<F *>(found);
        }
    };
    PdfLibrary() = default;
    Function function(const char *name);

    bool m_isWhole = true; ///< every function was found

public:
    decltype(&qpdf_cleanup) cleanup = function("qpdf_cleanup");
    decltype(&qpdf_force_pdf_version) force_pdf_version = function("qpdf_force_pdf_version");
    decltype(&qpdf_get_buffer) get_buffer = function("qpdf_get_buffer");
    decltype(&qpdf_get_buffer_length) get_buffer_length = function("qpdf_get_buffer_length");
    decltype(&qpdf_get_error) get_error = function("qpdf_get_error");
    decltype(&qpdf_get_error_full_text) get_error_full_text = function("qpdf_get_error_full_text");
    decltype(&qpdf_get_page_n) get_page_n = function("qpdf_get_page_n");
    decltype(&qpdf_get_root) get_root = function("qpdf_get_root");
    decltype(&qpdf_get_trailer) get_trailer = function("qpdf_get_trailer");
    decltype(&qpdf_has_error) has_error = function("qpdf_has_error");
    decltype(&qpdf_init) init = function("qpdf_init");
    decltype(&qpdf_init_write_memory) init_write_memory = function("qpdf_init_write_memory");
    decltype(&qpdf_make_indirect_object) make_indirect_object = function("qpdf_make_indirect_object");
    decltype(&qpdf_oh_append_item) oh_append_item = function("qpdf_oh_append_item");
    decltype(&qpdf_oh_get_array_item) oh_get_array_item = function("qpdf_oh_get_array_item");
    decltype(&qpdf_oh_get_dict) oh_get_dict = function("qpdf_oh_get_dict");
    decltype(&qpdf_oh_get_key) oh_get_key = function("qpdf_oh_get_key");
    decltype(&qpdf_oh_get_numeric_value) oh_get_numeric_value = function("qpdf_oh_get_numeric_value");
    decltype(&qpdf_oh_new_array) oh_new_array = function("qpdf_oh_new_array");
    decltype(&qpdf_oh_new_binary_string) oh_new_binary_string = function("qpdf_oh_new_binary_string");
    decltype(&qpdf_oh_new_binary_unicode_string) oh_new_binary_unicode_string = function("qpdf_oh_new_binary_unicode_string");
    decltype(&qpdf_oh_new_dictionary) oh_new_dictionary = function("qpdf_oh_new_dictionary");
    decltype(&qpdf_oh_new_integer) oh_new_integer = function("qpdf_oh_new_integer");
    decltype(&qpdf_oh_new_name) oh_new_name = function("qpdf_oh_new_name");
    decltype(&qpdf_oh_new_null) oh_new_null = function("qpdf_oh_new_null");
    decltype(&qpdf_oh_new_real_from_double) oh_new_real_from_double = function("qpdf_oh_new_real_from_double");
    decltype(&qpdf_oh_new_stream) oh_new_stream = function("qpdf_oh_new_stream");
    decltype(&qpdf_oh_replace_key) oh_replace_key = function("qpdf_oh_replace_key");
    decltype(&qpdf_oh_replace_stream_data) oh_replace_stream_data = function("qpdf_oh_replace_stream_data");
    decltype(&qpdf_read_memory) read_memory = function("qpdf_read_memory");
    decltype(&qpdf_set_attempt_recovery) set_attempt_recovery = function("qpdf_set_attempt_recovery");
    decltype(&qpdf_set_decode_level) set_decode_level = function("qpdf_set_decode_level");
    decltype(&qpdf_set_deterministic_ID) set_deterministic_ID = function("qpdf_set_deterministic_ID");
    decltype(&qpdf_set_newline_before_endstream) set_newline_before_endstream = function("qpdf_set_newline_before_endstream");
    decltype(&qpdf_set_object_stream_mode) set_object_stream_mode = function("qpdf_set_object_stream_mode");
    decltype(&qpdf_set_suppress_warnings) set_suppress_warnings = function("qpdf_set_suppress_warnings");
    decltype(&qpdf_silence_errors) silence_errors = function("qpdf_silence_errors");
    decltype(&qpdf_write) write = function("qpdf_write");
};

} // namespace record
