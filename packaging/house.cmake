# SPDX-FileCopyrightText: The Remate authors
# SPDX-License-Identifier: Apache-2.0

# What every target of the house shares: language, warnings as errors, hardening. Link it PRIVATE.
add_library(house INTERFACE)
target_compile_features(house INTERFACE cxx_std_20)
target_include_directories(house INTERFACE ${CMAKE_SOURCE_DIR})

target_compile_options(house INTERFACE
    -Wall -Wextra -Wpedantic -Werror
    -Wshadow -Wconversion -Wno-sign-conversion
    -Wmissing-field-initializers -Wnon-virtual-dtor -Woverloaded-virtual
    -Wimplicit-fallthrough -Wswitch)

target_compile_definitions(house INTERFACE
    QT_NO_FOREACH QT_NO_CAST_TO_ASCII QT_NO_URL_CAST_FROM_STRING QT_NO_NARROWING_CONVERSIONS_IN_CONNECT
    QT_DISABLE_DEPRECATED_BEFORE=0x060000
    $<$<CONFIG:Release>:QT_NO_DEBUG_OUTPUT>)

# A bug asserts in every build: going on after one could write a wrong entry.
target_compile_definitions(house INTERFACE QT_FORCE_ASSERTS)

target_compile_options(house INTERFACE
    $<$<CONFIG:Release,RelWithDebInfo>:-fstack-protector-strong;-fstack-clash-protection;-D_FORTIFY_SOURCE=2>)
target_link_options(house INTERFACE
    $<$<CONFIG:Release,RelWithDebInfo>:-Wl,-z,relro;-Wl,-z,now>)

# The build of packaging/check: quick to compile, quick enough to run, lines in back traces.
set(CMAKE_CXX_FLAGS_CHECK "-O1 -g1" CACHE STRING "Flags of the build type Check")
set(CMAKE_EXE_LINKER_FLAGS_CHECK "" CACHE STRING "Link flags of the build type Check")
mark_as_advanced(CMAKE_CXX_FLAGS_CHECK CMAKE_EXE_LINKER_FLAGS_CHECK)

if(REMATE_SANITIZE)
    target_compile_options(house INTERFACE -fsanitize=${REMATE_SANITIZE} -fno-omit-frame-pointer
        -fno-sanitize-recover=all)
    target_link_options(house INTERFACE -fsanitize=${REMATE_SANITIZE})
endif()

if(REMATE_COVERAGE)
    target_compile_options(house INTERFACE --coverage -fprofile-update=atomic)
    target_link_options(house INTERFACE --coverage)
endif()
