# Writes bom.cdx.json, the package's bill of materials in the open CycloneDX format: what its libraries are made from and
# need, and each of its files with its SHA-256. Run by the packing with cmake -P; names, versions and licences stand here
# and nowhere else. No time and no folder is in it, so that the same sources give the same file.
#
#   FOLDER, FILES (separated by |)         the package's content
#   EDITION, BOOST, COMPILER               versions: of Hearthcell, of Boost's headers, of gcc and its C++ library
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
  "Not in the package: libuno_sal, libuno_cppu and, for menu.so, libuno_cppuhelpergcc3 of the LibreOffice, 7.4 or later, that loads it")
component(runtime library "GNU libstdc++ and libgcc" "" GPL-3.0-with-GCC-exception
  "Not in the package: the system's libgcc_s.so.1 and, for menu.so, libstdc++.so.6")
component(glibc library "GNU C library" "" LGPL-2.1-or-later "Not in the package: the system's libc.so.6, libm.so.6 and ld-linux-x86-64.so.2, 2.28 or later")
set(components "${boost}" "${headers}" "${linked}" "${sdk}" "${uno}" "${runtime}" "${glibc}")

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
