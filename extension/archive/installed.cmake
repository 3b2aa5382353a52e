# What `cmake --install` puts where, and what a Debian package holds. The program finds its library and the package from where
# it lies itself, so that any prefix will do. The component `everybody` is for a whole machine: it shows the package to every
# user's LibreOffice, which looks for such in this folder of Debian's.
include(GNUInstallDirs)
install(TARGETS hearthcell-archive RUNTIME COMPONENT program)
install(TARGETS hearthcell_archive_library LIBRARY DESTINATION lib/hearthcell COMPONENT program)
install(FILES ${CMAKE_BINARY_DIR}/hearthcell.oxt DESTINATION share/hearthcell COMPONENT program)
install(FILES ${CMAKE_BINARY_DIR}/hearthcell-archive.1 DESTINATION share/man/man1 COMPONENT program)
install(FILES ${CMAKE_BINARY_DIR}/completions/bash DESTINATION share/bash-completion/completions
  RENAME hearthcell-archive COMPONENT program)
install(FILES ${CMAKE_BINARY_DIR}/completions/zsh DESTINATION share/zsh/vendor-completions
  RENAME _hearthcell-archive COMPONENT program)
install(FILES ${CMAKE_BINARY_DIR}/completions/fish DESTINATION share/fish/vendor_completions.d
  RENAME hearthcell-archive.fish COMPONENT program)

set(HEARTHCELL_DESCRIPTION "Cell functions, templates and a function guide for LibreOffice Calc:
boiling point of the site, heat of the water, energy of the wood, efficiency,
firepower, boil times that compare, and how sure a difference between two
stoves is. With hearthcell-archive, which recalculates folders of old
workbooks and lists what changed.")
set(HEARTHCELL_APPSTREAM invalid.example.hearthcell CACHE STRING
  "The name for software centres: the publisher's domain backwards, and hearthcell")
string(TIMESTAMP HEARTHCELL_DATE "%Y-%m-%d" UTC) # of the last commit, where SOURCE_DATE_EPOCH says it
configure_file(hearthcell.metainfo.xml.in ${CMAKE_BINARY_DIR}/hearthcell.metainfo.xml @ONLY)
install(FILES ${CMAKE_BINARY_DIR}/hearthcell.metainfo.xml DESTINATION share/metainfo COMPONENT everybody)
install(FILES ${PROJECT_SOURCE_DIR}/LICENSE DESTINATION share/doc/hearthcell RENAME copyright COMPONENT everybody)
install(CODE "
  set(folder \"\$ENV{DESTDIR}\${CMAKE_INSTALL_PREFIX}/lib/libreoffice/share/extensions/hearthcell\")
  file(ARCHIVE_EXTRACT INPUT \"${CMAKE_BINARY_DIR}/hearthcell.oxt\" DESTINATION \"\${folder}\")"
  COMPONENT everybody)

set(HEARTHCELL_CONTACT "The Hearthcell project <hearthcell@example.invalid>" CACHE STRING
  "Whom a Debian package names as its maintainer: name and address")
set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME hearthcell)
set(CPACK_PACKAGE_CONTACT ${HEARTHCELL_CONTACT})
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION science)
set(CPACK_DEBIAN_PACKAGE_DESCRIPTION ${HEARTHCELL_DESCRIPTION})
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS_PRIVATE_DIRS ${OFFICE_PROGRAM})
set(CPACK_DEBIAN_PACKAGE_DEPENDS "libreoffice-calc (>= 1:7.4) | libreoffice-calc-nogui (>= 1:7.4), unzip")
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS bubblewrap)
include(CPack)
