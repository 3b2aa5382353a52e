# Finds LibreOffice and its SDK and offers them as the target `office_sdk`.
#
# HEARTHCELL_OFFICE is the folder that holds `program` and `sdk`: /usr/lib/libreoffice where Debian's packages
# libreoffice-calc(-nogui) and libreoffice-dev are installed.

set(HEARTHCELL_OFFICE /usr/lib/libreoffice CACHE PATH "Folder of the LibreOffice installation (holds program and sdk)")
set(OFFICE_PROGRAM ${HEARTHCELL_OFFICE}/program CACHE INTERNAL "") # seen by the tests, too
set(OFFICE_SDK ${HEARTHCELL_OFFICE}/sdk CACHE INTERNAL "")
set(OFFICE_TYPES "${OFFICE_PROGRAM}/types.rdb;${OFFICE_PROGRAM}/types/offapi.rdb" CACHE INTERNAL "")

foreach(needed IN ITEMS ${OFFICE_TYPES} ${OFFICE_PROGRAM}/soffice.bin ${OFFICE_SDK}/bin/cppumaker
                        ${OFFICE_SDK}/bin/unoidl-write ${OFFICE_SDK}/include/sal/types.h)
  if(NOT EXISTS ${needed})
    message(FATAL_ERROR "No ${needed}: install libreoffice-calc-nogui and libreoffice-dev (extension/prepare does it), "
                        "or set HEARTHCELL_OFFICE to the folder of your LibreOffice.")
  endif()
endforeach()

# The office's own interfaces as C++ headers: some 6000 small files, made once and again only when the office changes.
set(OFFICE_HEADERS ${CMAKE_BINARY_DIR}/uno/office)
add_custom_command(
  OUTPUT ${OFFICE_HEADERS}.made
  COMMAND ${OFFICE_SDK}/bin/cppumaker -Gc -O${OFFICE_HEADERS} ${OFFICE_TYPES}
  COMMAND ${CMAKE_COMMAND} -E touch ${OFFICE_HEADERS}.made
  DEPENDS ${OFFICE_TYPES}
  COMMENT "Writing the C++ headers of LibreOffice's interfaces"
  VERBATIM)
add_custom_target(office_headers DEPENDS ${OFFICE_HEADERS}.made)

add_library(office_sdk INTERFACE)
add_dependencies(office_sdk office_headers)
target_include_directories(office_sdk SYSTEM INTERFACE ${OFFICE_SDK}/include ${OFFICE_HEADERS})
# The office's headers name their own file in what they throw: not the folder of this build, which is another one elsewhere.
target_compile_options(office_sdk INTERFACE -fmacro-prefix-map=${OFFICE_HEADERS}=uno)
target_compile_definitions(office_sdk INTERFACE LINUX UNX CPPU_ENV=gcc3)
target_link_options(office_sdk INTERFACE -L${OFFICE_SDK}/lib) # not link_directories: that would end up in the RPATH
target_link_libraries(office_sdk INTERFACE uno_sal uno_cppu uno_cppuhelpergcc3 uno_salhelpergcc3)

# The type library of an IDL file.
function(add_uno_types idl rdb)
  add_custom_command(OUTPUT ${rdb}
    COMMAND ${OFFICE_SDK}/bin/unoidl-write ${OFFICE_TYPES} ${idl} ${rdb}
    DEPENDS ${idl} VERBATIM)
endfunction()
