# Writes bom.cdx.json, the package's bill of materials in the open CycloneDX format: what its libraries are made from and
# need, and each of its files with its SHA-256. Run by the packing with cmake -P; names, versions and licences stand here
# and nowhere else. No time and no folder is in it, so that the same sources give the same file.
#
#   FOLDER, FILES (separated by |)         the package's content
#   EDITION, BOOST, COMPILER               versions: of Hearthcell, of Boost's headers, of gcc and its C++ library
#   IN_PROGRAM (separated by |)            versions of libzip, libcsv, libgsf, CLI11 and nlohmann-json; empty where the package
#                                          is without hearthcell-archive
#   OUTPUT                                 the file to write

function(component out type name version licence role)
  set(known "")
  if(version)
    set(known "\"version\": \"${version}\", ")
  endif()
  set(${out} "{\"type\": \"${type}\", \"name\": \"${name}\", ${known}\"description\": \"${role}\",
     \"licenses\": [{\"license\": {\"id\": \"${licence}\"}}]}" PARENT_SCOPE)
endfunction()

component(itself application Hearthcell "${EDITION}" MPL-2.0 "Cell functions for testing biomass cookstoves")
component(boost library "Boost.Math" "${BOOST}" BSL-1.0 "Headers, compiled into stove.so")
component(headers library "GNU libstdc++, headers" "${COMPILER}" GPL-3.0-with-GCC-exception
  "Templates, compiled into stove.so and menu.so")
component(linked library "GNU libstdc++, linked in" "${COMPILER}" GPL-3.0-with-GCC-exception
  "Its parts that stove.so uses, inside of it, and in menu.so how numbers are written")
component(sdk library "LibreOffice SDK" "" MPL-2.0 "Headers, compiled into stove.so and menu.so")
component(uno library "LibreOffice UNO runtime" "" MPL-2.0
  "Not in the package: libuno_sal, libuno_cppu and, for menu.so, libuno_cppuhelpergcc3 of the LibreOffice, 7.0 or later, that loads it")
component(runtime library "GNU libstdc++ and libgcc" "" GPL-3.0-with-GCC-exception
  "Not in the package: the system's libgcc_s.so.1 and, for menu.so, libstdc++.so.6")
component(glibc library "GNU C library" "" LGPL-2.1-or-later "Not in the package: the system's libc.so.6, libm.so.6 and ld-linux-x86-64.so.2, 2.28 or later")
set(components "${boost}" "${headers}" "${linked}" "${sdk}" "${uno}" "${runtime}" "${glibc}")

if(IN_PROGRAM)
  string(REPLACE "|" ";" versions "${IN_PROGRAM}")
  list(POP_FRONT versions libzip libcsv libgsf cli11 json)
  set(of_debian "in program/ is Debian's own, whose source package has its sources")
  component(zip library libzip "${libzip}" BSD-3-Clause "Zip files, libzip ${of_debian}")
  component(csv library libcsv "${libcsv}" LGPL-2.1-or-later "CSV files, libcsv ${of_debian}")
  component(gsf library libgsf "${libgsf}" LGPL-2.1-only ".xls files, libgsf-1 ${of_debian}")
  component(line library CLI11 "${cli11}" BSD-3-Clause "Headers, compiled into hearthcell-archive")
  component(objects library "JSON for Modern C++" "${json}" MIT "Headers, compiled into libhearthcell-archive.so")
  list(APPEND components "${zip}" "${csv}" "${gsf}" "${line}" "${objects}")
  foreach(needed zlib/libz/Zlib Expat/libexpat/MIT GLib/libglib-2.0,libgobject-2.0/LGPL-2.1-or-later
                 libxml2/libxml2/MIT bzip2/libbz2/bzip2-1.0.6 OpenSSL/libcrypto/Apache-2.0)
    string(REPLACE "/" ";" needed "${needed}")
    list(POP_FRONT needed name libraries licence)
    component(system library "${name}" "" "${licence}"
      "Not in the package: the system's ${libraries}, which LibreOffice needs, too, for what is in program/")
    list(APPEND components "${system}")
  endforeach()
endif()

string(REPLACE "|" ";" files "${FILES}")
foreach(file IN LISTS files)
  file(SHA256 "${FOLDER}/${file}" hash)
  list(APPEND components "{\"type\": \"file\", \"name\": \"${file}\",
     \"hashes\": [{\"alg\": \"SHA-256\", \"content\": \"${hash}\"}]}")
endforeach()
list(JOIN components ",\n    " components)

file(WRITE "${OUTPUT}" "{
  \"bomFormat\": \"CycloneDX\",
  \"specVersion\": \"1.4\",
  \"version\": 1,
  \"metadata\": {\"component\": ${itself}},
  \"components\": [
    ${components}
  ]
}
")
