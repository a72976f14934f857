# SPDX-FileCopyrightText: The Remate authors
# SPDX-License-Identifier: Apache-2.0

# house_test(<folder>/tst_<idea>.cpp [ALONE] [SOURCES more.cpp …] [LINKS target …] [RUNS target …] [TIMEOUT seconds])
#
# Path is written from tests/, whichever CMakeLists.txt calls. core/rules/tst_independence.cpp becomes the
# target tst_core_rules_independence and the test core.rules.independence, labelled core.
# Clock zone, locale, platform, folders and the seed of random histories are fixed and private, so all tests run alone and in
# parallel, and come out the same. Run an executable by hand for other histories.
# Tests named in the list "threaded" are labelled threads as well, and built by the target threaded_tests.
# With REMATE_TOGETHER, the tests of one folder are one program. ALONE: not this one.
function(house_test path)
    cmake_parse_arguments(PARSE_ARGV 1 arg "ALONE" "TIMEOUT" "SOURCES;LINKS;RUNS")
    if(arg_UNPARSED_ARGUMENTS)
        message(FATAL_ERROR "house_test(${path}): what is ${arg_UNPARSED_ARGUMENTS}?")
    endif()
    set(source ${CMAKE_SOURCE_DIR}/tests/${path})
    if(NOT path MATCHES "^([a-z_]+)/(.*/)?tst_[a-z0-9_]+\\.cpp$" OR NOT EXISTS ${source})
        message(FATAL_ERROR "house_test(${path}): expected an existing tests/<folder>/…/tst_<idea>.cpp")
    endif()
    set(label ${CMAKE_MATCH_1})
    string(REGEX REPLACE "\\.cpp$" "" name ${path})
    string(REGEX REPLACE "tst_([a-z0-9_]+)$" "\\1" name ${name})
    string(REPLACE "/" "." name ${name})
    string(REPLACE "." "_" target tst_${name})

    if(REMATE_TOGETHER AND NOT arg_ALONE AND NOT name IN_LIST threaded)
        get_filename_component(folder ${path} DIRECTORY)
        string(REPLACE "/" "_" program tests_${folder})
        house_test_joins(${program} ${source})
        list(TRANSFORM arg_SOURCES PREPEND ${CMAKE_CURRENT_SOURCE_DIR}/ REGEX "^[^/]")
        set_property(DIRECTORY APPEND PROPERTY ${program}_sources ${arg_SOURCES})
        set_property(DIRECTORY APPEND PROPERTY ${program}_links ${arg_LINKS})
        set_property(DIRECTORY APPEND PROPERTY ${program}_runs ${arg_RUNS})
        get_filename_component(stem ${path} NAME_WE)
        add_test(NAME ${name} COMMAND ${program} ${stem})
    else()
        add_executable(${target} ${source} ${arg_SOURCES})
        set_target_properties(${target} PROPERTIES RUNTIME_OUTPUT_DIRECTORY ${CMAKE_BINARY_DIR}/tests/bin)
        house_test_moc(${target} ${source})
        target_link_libraries(${target} PRIVATE Qt6::Test ${arg_LINKS} house)
        house_test_precompile(${target} ${arg_LINKS})
        house_test_runs(${target} ${arg_RUNS})
        add_test(NAME ${name} COMMAND ${target})
    endif()

    if(name IN_LIST threaded)
        list(APPEND label threads)
        add_dependencies(threaded_tests ${target})
    endif()
    house_test_environment(${name} "${label}" "${arg_TIMEOUT}")
endfunction()

# One more test of a program that is made when the folder's last test is known.
function(house_test_joins program source)
    get_property(joined DIRECTORY PROPERTY ${program}_tests)
    if(NOT joined)
        cmake_language(EVAL CODE "cmake_language(DEFER CALL house_tests_together ${program})")
    endif()
    set_property(DIRECTORY APPEND PROPERTY ${program}_tests ${source})
endfunction()

function(house_tests_together program)
    foreach(part tests sources links runs)
        get_property(${part} DIRECTORY PROPERTY ${program}_${part})
        list(REMOVE_DUPLICATES ${part})
    endforeach()
    list(TRANSFORM tests REPLACE "^${CMAKE_SOURCE_DIR}/" "" OUTPUT_VARIABLE listed)
    execute_process(COMMAND packaging/as_one --tests ${CMAKE_CURRENT_BINARY_DIR}/${program} ${listed}
        WORKING_DIRECTORY ${CMAKE_SOURCE_DIR} OUTPUT_VARIABLE units COMMAND_ERROR_IS_FATAL ANY)
    string(REGEX MATCHALL "[^\n]+" units "${units}")
    add_executable(${program} ${units} ${sources})
    set_target_properties(${program} PROPERTIES RUNTIME_OUTPUT_DIRECTORY ${CMAKE_BINARY_DIR}/tests/bin compiled_together ON)
    foreach(test IN LISTS tests)
        house_test_moc(${program} ${test} ${units})
    endforeach()
    target_link_libraries(${program} PRIVATE Qt6::Test ${links} house)
    house_test_precompile(${program} ${links})
    house_test_runs(${program} ${runs})
endfunction()

function(house_test_runs target)
    if(ARGN)
        add_dependencies(${target} ${ARGN})
    endif()
endfunction()

# The one file of a test that moc has to read, and the files that include it, when it is not compiled itself. CMake's AUTOMOC asks each target's
# sources whether it has to, and compiles one more source.
function(house_test_moc target source)
    get_filename_component(name ${source} NAME_WE)
    set(made ${CMAKE_CURRENT_BINARY_DIR}/${target}_moc/${name}.moc)
    qt_generate_moc(${source} ${made} TARGET ${target})
    set_property(SOURCE ${source} ${ARGN} APPEND PROPERTY OBJECT_DEPENDS ${made})
    target_include_directories(${target} PRIVATE ${CMAKE_CURRENT_BINARY_DIR}/${target}_moc)
endfunction()

# Tests of one folder that link the same are compiled with the same flags and share one precompiled header, which the first of them
# makes. See house_precompile. Each kind: what links it, and what else its tests may link without another flag.
set(house_precompiled core desktop test_db_support session cli_support)
set(house_precompiled_core unbound_key story rule_table rapidcheck calculating)
set(house_precompiled_desktop desktop_bench photo_bench story demo marked_words raw_sql resources)
function(house_test_precompile target)
    if(NOT REMATE_PRECOMPILE)
        return()
    endif()
    foreach(kind IN LISTS house_precompiled)
        set(others ${ARGN})
        list(REMOVE_ITEM others ${kind} ${house_precompiled_${kind}})
        if(others OR NOT kind IN_LIST ARGN)
            continue()
        endif()
        get_property(first DIRECTORY PROPERTY house_precompiled_by_${kind})
        if(first)
            target_precompile_headers(${target} REUSE_FROM ${first})
        else()
            set_property(DIRECTORY PROPERTY house_precompiled_by_${kind} ${target})
            house_precompile(${target} <QTest>)
        endif()
        return()
    endforeach()
endfunction()

# What a sanitizer is told: to stop at its first finding, and to name functions and lines. The two files list what is not ours.
if(REMATE_SANITIZE)
    find_program(symbolizer NAMES llvm-symbolizer llvm-symbolizer-14)
    set(each "halt_on_error=1:external_symbolizer_path=${symbolizer}")
    # die_after_fork=0: a QProcess forks while Qt Test's watchdog runs, and what it starts may have threads of its own.
    set(sanitizer_options
        "ASAN_OPTIONS=${each}:detect_leaks=1:strict_string_checks=1:detect_stack_use_after_return=1:check_initialization_order=1"
        "LSAN_OPTIONS=suppressions=${CMAKE_SOURCE_DIR}/tests/leaks_of_others.txt:print_suppressions=0"
        "UBSAN_OPTIONS=${each}:print_stacktrace=1"
        "TSAN_OPTIONS=${each}:suppressions=${CMAKE_SOURCE_DIR}/tests/races_of_others.txt:second_deadlock_stack=1:die_after_fork=0")
endif()

# The environment of a test: also for tests that are not Qt Test executables.
function(house_test_environment name labels timeout)
    if(NOT timeout)
        set(timeout 300)
    endif()
    if(REMATE_SANITIZE)
        math(EXPR timeout "3 * ${timeout}")
    endif()
    set(home ${CMAKE_BINARY_DIR}/tests/home/${name})
    set(environment ${sanitizer_options}
        QT_QPA_PLATFORM=offscreen LC_ALL=C.UTF-8 LANGUAGE=en TZ=UTC HOME=${home} TMPDIR=${home}/tmp
        XDG_CONFIG_HOME=${home}/config XDG_DATA_HOME=${home}/data XDG_STATE_HOME=${home}/state
        XDG_CACHE_HOME=${home}/cache XDG_RUNTIME_DIR=${home}/runtime REMATE_SOURCE_DIR=${CMAKE_SOURCE_DIR}
        QT_LOGGING_RULES=qt.qpa.*=false RC_PARAMS=seed=20260302)
    foreach(folder config data state cache runtime tmp)
        file(MAKE_DIRECTORY ${home}/${folder})
        file(CHMOD ${home}/${folder} DIRECTORY_PERMISSIONS OWNER_READ OWNER_WRITE OWNER_EXECUTE)
    endforeach()
    set_tests_properties(${name} PROPERTIES LABELS "${labels}" TIMEOUT ${timeout} ENVIRONMENT "${environment}")
endfunction()
