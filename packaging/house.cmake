# SPDX-FileCopyrightText: The Remate authors
# SPDX-License-Identifier: Apache-2.0

# What every target of the house shares: language, warnings as errors, hardening. Link it PRIVATE.
add_library(house INTERFACE)
target_compile_features(house INTERFACE cxx_std_20)
target_include_directories(house INTERFACE ${CMAKE_SOURCE_DIR})

target_compile_options(house INTERFACE
    -Wall -Wextra -Wpedantic -Werror
    -Wconversion -Wno-sign-conversion
    -Wmissing-field-initializers -Wnon-virtual-dtor -Woverloaded-virtual
    -Wimplicit-fallthrough -Wswitch -Wshadow)

# GCC takes files that are compiled together for headers, in which a type of their own would be another in every file. And
# each shadows names of the others to it: there it tells those of one function, and clang all.
set(together $<BOOL:$<TARGET_PROPERTY:compiled_together>>)
target_compile_options(house INTERFACE $<$<AND:${together},$<CXX_COMPILER_ID:GNU>>:-Wno-shadow;-Wshadow=local;-Wno-subobject-linkage>)

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

# The build of packaging/check: quick to compile, quick enough to run, lines in back traces. Not in the cache, since CMake
# has put an empty value there by now.
set(CMAKE_CXX_FLAGS_CHECK "-O1 -g1")

if(REMATE_SANITIZE)
    target_compile_options(house INTERFACE -fsanitize=${REMATE_SANITIZE} -fno-omit-frame-pointer
        -fno-sanitize-recover=all)
    target_link_options(house INTERFACE -fsanitize=${REMATE_SANITIZE})
    if(CMAKE_CXX_COMPILER_ID STREQUAL GNU) # GCC's manual, -fsanitize: "may lead to more false positives" of this kind
        target_compile_options(house INTERFACE -Wno-maybe-uninitialized)
    endif()
endif()

if(REMATE_COVERAGE)
    target_compile_options(house INTERFACE --coverage -fprofile-update=atomic)
    target_link_options(house INTERFACE --coverage)
endif()

# For packaging/lint: the flags of the house, one a line.
set(house_flags -std=c++20 -fPIC -I${CMAKE_SOURCE_DIR}
    "-D$<JOIN:$<TARGET_PROPERTY:house,INTERFACE_COMPILE_DEFINITIONS>,;-D>" "-DREMATE_VERSION=\"${PROJECT_VERSION}\"" -DREMATE_QPDF_VERSION=${REMATE_QPDF_VERSION}
    "-isystem$<JOIN:$<TARGET_PROPERTY:Qt6::Svg,INTERFACE_INCLUDE_DIRECTORIES>,;-isystem>"
    "-isystem$<JOIN:$<TARGET_PROPERTY:Qt6::PrintSupport,INTERFACE_INCLUDE_DIRECTORIES>,;-isystem>"
    "$<TARGET_PROPERTY:house,INTERFACE_COMPILE_OPTIONS>")
file(GENERATE OUTPUT ${CMAKE_BINARY_DIR}/compile_flags.txt CONTENT "$<JOIN:${house_flags},\n>\n")

# house_precompile(<target> <header> …): a build three times as quick, for packaging/. Off while working, because it
# hides a missing #include.
function(house_precompile target)
    if(REMATE_PRECOMPILE AND TARGET ${target})
        target_precompile_headers(${target} PRIVATE
            <QByteArray> <QCoreApplication> <QDateTime> <QHash> <QString> <QStringList>
            <algorithm> <functional> <map> <memory> <optional> <span> <variant> <vector> ${ARGN})
    endif()
endfunction()

# house_library(<target>): for packaging/lint, the sources of a library, one a line. With REMATE_TOGETHER, the folder in which
# packaging/lint found out which of them compile as one, that is how they are compiled: in a third of the time, most of which
# goes into what Qt's headers and ours have every file make again.
function(house_library target)
    get_target_property(folder ${target} SOURCE_DIR)
    get_target_property(sources ${target} SOURCES)
    list(FILTER sources INCLUDE REGEX "\\.cpp$")
    list(TRANSFORM sources PREPEND ${folder}/ REGEX "^[^/]")
    list(SORT sources)
    list(TRANSFORM sources REPLACE "^${CMAKE_SOURCE_DIR}/" "" OUTPUT_VARIABLE listed)
    list(JOIN listed "\n" listed)
    file(GENERATE OUTPUT ${CMAKE_BINARY_DIR}/sources/${target}.txt CONTENT "${listed}\n")
    if(REMATE_TOGETHER)
        file(STRINGS ${REMATE_TOGETHER}/${target}.units units)
        list(REMOVE_ITEM sources ${units})
        set_source_files_properties(${sources} TARGET_DIRECTORY ${target} PROPERTIES HEADER_FILE_ONLY ON)
        target_sources(${target} PRIVATE ${units})
        set_target_properties(${target} PROPERTIES compiled_together ON)
    endif()
endfunction()
