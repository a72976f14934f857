# SPDX-FileCopyrightText: The Remate authors
# SPDX-License-Identifier: Apache-2.0

string(REPLACE "|" ";" folders "${system_includes}")
list(REMOVE_DUPLICATES folders)
list(REMOVE_ITEM folders "" "${root}")
set(command ${compiler} -std=c++20 -fPIC -fsyntax-only -Wall -Wextra -Werror -I${root})
foreach(folder IN LISTS folders)
    list(APPEND command -isystem ${folder})
endforeach()

file(STRINGS ${case} complaint REGEX "^// complaint: ")
list(LENGTH complaint lines)
if(NOT lines EQUAL 1)
    message(FATAL_ERROR "${case}: expected one line \"// complaint: <regular expression>\"")
endif()
string(REPLACE "// complaint: " "" complaint "${complaint}")

execute_process(COMMAND ${command} ${case} RESULT_VARIABLE failed ERROR_VARIABLE said)
if(failed)
    message(FATAL_ERROR "${case}: does not compile even without the mistake, so it proves nothing:\n${said}")
endif()

execute_process(COMMAND ${command} -DMUST_NOT_COMPILE ${case} RESULT_VARIABLE failed ERROR_VARIABLE said)
if(NOT failed)
    message(FATAL_ERROR "${case}: the mistake compiles")
endif()
if(NOT said MATCHES "${complaint}")
    message(FATAL_ERROR "${case}: refused, but not for \"${complaint}\":\n${said}")
endif()
