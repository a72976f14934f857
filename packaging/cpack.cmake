# SPDX-FileCopyrightText: The Remate authors
# SPDX-License-Identifier: Apache-2.0

# What an installation holds, and the Debian package made of it: cmake --build build/release --target package
include(GNUInstallDirs)

# The version stands in CMakeLists.txt alone.
configure_file(packaging/man/remate.1.in ${CMAKE_BINARY_DIR}/man/remate.1 @ONLY)
configure_file(packaging/io.github.remate.remate.metainfo.xml.in ${CMAKE_BINARY_DIR}/packaging/io.github.remate.remate.metainfo.xml @ONLY)

foreach(program remate remate-cli)
    if(TARGET ${program})
        install(TARGETS ${program} RUNTIME DESTINATION ${CMAKE_INSTALL_BINDIR})
    endif()
endforeach()
install(FILES packaging/remate.desktop DESTINATION ${CMAKE_INSTALL_DATADIR}/applications)
install(FILES packaging/remate.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/mime/packages)
install(FILES ${CMAKE_BINARY_DIR}/packaging/io.github.remate.remate.metainfo.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/metainfo)
install(FILES resources/icons/remate.svg DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/apps)

# Packed, as Debian has its manual pages; without the hour, so that the same sources give the same package.
foreach(page remate.1 remate-cli.1)
    set(plain ${CMAKE_BINARY_DIR}/man/${page})
    add_custom_command(OUTPUT ${plain}.gz COMMAND gzip -9 --no-name --keep --force ${plain} DEPENDS ${plain} VERBATIM)
    list(APPEND packed_pages ${plain}.gz)
endforeach()
add_custom_target(man_pages ALL DEPENDS ${packed_pages})
add_dependencies(man_pages cli_man_page)
install(FILES ${packed_pages} DESTINATION ${CMAKE_INSTALL_MANDIR}/man1)

install(FILES README.md DESTINATION ${CMAKE_INSTALL_DOCDIR})
install(FILES packaging/copyright DESTINATION ${CMAKE_INSTALL_DOCDIR})

set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME remate)
set(CPACK_PACKAGE_VENDOR "The Remate authors")
set(CPACK_PACKAGE_CONTACT "The Remate authors <remate@invalid>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "keeps every loose end of an aircraft unit change")
set(CPACK_PACKAGE_DESCRIPTION
    "A crew logs each connection that it takes apart and puts back, signs for it,
has it inspected by somebody independent, and cannot close the job while
anything is loose. The approved maintenance data governs.")
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS
    OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE WORLD_READ WORLD_EXECUTE)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION misc)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
# Loaded at run time, so the libraries that are linked do not tell of them.
set(CPACK_DEBIAN_PACKAGE_DEPENDS "libqt6svg6, qt6-qpa-plugins, fonts-dejavu-core, libqpdf${REMATE_QPDF_VERSION} (>= ${qpdf_VERSION})")
# What the toolkit itself says in German and French: Cancel, Open. Without it these few words are English.
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS "qt6-translations-l10n")
include(CPack)
