# hearthcell-archive within the package, for who has nothing but the package: the program, the libraries that it needs and
# LibreOffice's own machine may not have, and the licences of all that is in it. It finds those libraries beside itself.
#
# Debian knows which licence belongs to a library; where it is built elsewhere the package goes without the program.

set(copying "")
set(content "")
set(files "")
set(entry "")
set(versions "")

# The Debian package that a file is of, and its version.
function(ask_debian file name version)
  execute_process(COMMAND dpkg-query --search ${file} OUTPUT_VARIABLE told COMMAND_ERROR_IS_FATAL ANY)
  string(REGEX REPLACE "[:,].*" "" package "${told}")
  execute_process(COMMAND dpkg-query --show --showformat=\${source:Upstream-Version} ${package}
    OUTPUT_VARIABLE number COMMAND_ERROR_IS_FATAL ANY)
  set(${name} ${package} PARENT_SCOPE)
  set(${version} ${number} PARENT_SCOPE)
endfunction()

function(pack_beside_program source name)
  configure_file(${source} ${CMAKE_BINARY_DIR}/whole-package/program/${name} COPYONLY)
  list(APPEND content program/${name})
  set(content ${content} PARENT_SCOPE)
endfunction()

find_program(dpkg_query dpkg-query)
if(HEARTHCELL_ARCHIVE AND dpkg_query)
  pkg_get_variable(libzip_folder libzip libdir)
  pkg_get_variable(libgsf_folder libgsf-1 libdir)
  foreach(library ${libzip_folder}/libzip.so ${LIBCSV} ${libgsf_folder}/libgsf-1.so)
    execute_process(COMMAND ${CMAKE_OBJDUMP} -p ${library} OUTPUT_VARIABLE told COMMAND_ERROR_IS_FATAL ANY)
    string(REGEX MATCH "SONAME +([^\n]+)" found "${told}")
    set(name ${CMAKE_MATCH_1}) # that it is looked for by
    file(REAL_PATH ${library} file)
    ask_debian(${file} package version)
    pack_beside_program(${file} ${name})
    pack_beside_program(/usr/share/doc/${package}/copyright licences/${name}.txt)
    list(APPEND versions ${version})
  endforeach()
  foreach(headers libcli11-dev nlohmann-json3-dev)
    execute_process(COMMAND dpkg-query --show --showformat=\${source:Upstream-Version} ${headers}
      OUTPUT_VARIABLE version COMMAND_ERROR_IS_FATAL ANY)
    pack_beside_program(/usr/share/doc/${headers}/copyright licences/${headers}.txt)
    list(APPEND versions ${version})
  endforeach()
  pack_beside_program(/usr/share/common-licenses/LGPL-2.1 licences/LGPL-2.1.txt)

  foreach(target hearthcell-archive hearthcell_archive_library)
    list(APPEND copying COMMAND ${CMAKE_STRIP} -o ${CMAKE_BINARY_DIR}/whole-package/program/$<TARGET_FILE_NAME:${target}>
      $<TARGET_FILE:${target}>)
    list(APPEND files ${target})
  endforeach()
  list(TRANSFORM content PREPEND ${CMAKE_BINARY_DIR}/whole-package/ OUTPUT_VARIABLE in_place)
  list(APPEND files ${in_place})
  list(PREPEND content program/hearthcell-archive program/libhearthcell-archive.so)
  # By this LibreOffice gives the program back its right to be run, which it takes from what it unpacks.
  set(entry "
 <manifest:file-entry manifest:full-path=\"program/hearthcell-archive\"
  manifest:media-type=\"application/vnd.sun.star.executable;platform=Linux_${CMAKE_SYSTEM_PROCESSOR}\"/>")
endif()
list(JOIN versions "|" versions)
set(HEARTHCELL_PACKAGED_PROGRAM "${content}" PARENT_SCOPE)
set(HEARTHCELL_FILES_OF_PROGRAM "${files}" PARENT_SCOPE)
set(HEARTHCELL_COPYING_OF_PROGRAM "${copying}" PARENT_SCOPE)
set(HEARTHCELL_MANIFEST_OF_PROGRAM "${entry}" PARENT_SCOPE)
set(HEARTHCELL_VERSIONS_IN_PROGRAM "${versions}" PARENT_SCOPE)
