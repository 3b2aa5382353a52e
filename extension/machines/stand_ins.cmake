# Stands in for LibreOffice where the add-in's library alone is built, for another kind of machine than this one: its own C
# headers, and libraries that hold no more than the names of the functions which the add-in calls (uno_functions.txt).

set(HEARTHCELL_OFFICE /usr/lib/libreoffice CACHE PATH "Folder of a LibreOffice with its SDK, for its C headers")
add_library(office_sdk INTERFACE)
target_include_directories(office_sdk SYSTEM INTERFACE ${HEARTHCELL_OFFICE}/sdk/include)

set(listed ${CMAKE_CURRENT_LIST_DIR}/uno_functions.txt)
set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS ${listed})
file(STRINGS ${listed} lines REGEX "^[a-z]")
foreach(library cppu sal)
  set(names ${lines})
  list(FILTER names INCLUDE REGEX "^${library} ")
  list(TRANSFORM names REPLACE "^[a-z]+ " "")
  if(WIN32)
    set(definition ${CMAKE_CURRENT_BINARY_DIR}/${library}3.def)
    list(JOIN names "\n" exports)
    file(CONFIGURE OUTPUT ${definition} CONTENT "LIBRARY ${library}3.dll\nEXPORTS\n@exports@\n")
    # Named without its folder: the name as it is given goes into symbols of what is linked, which would differ elsewhere.
    execute_process(COMMAND ${CMAKE_DLLTOOL} --input-def ${definition} --output-lib lib${library}3.a
      WORKING_DIRECTORY ${CMAKE_CURRENT_BINARY_DIR} COMMAND_ERROR_IS_FATAL ANY)
    target_link_libraries(office_sdk INTERFACE ${CMAKE_CURRENT_BINARY_DIR}/lib${library}3.a)
  else()
    set(source ${CMAKE_CURRENT_BINARY_DIR}/${library}.cpp)
    list(TRANSFORM names REPLACE "(.+)" "void \\1() {}")
    list(JOIN names "\n" bodies)
    file(CONFIGURE OUTPUT ${source} CONTENT "extern \"C\" {\n@bodies@\n}\n")
    add_library(uno_${library} SHARED ${source})
    set_target_properties(uno_${library} PROPERTIES SOVERSION 3 CXX_VISIBILITY_PRESET default)
    target_link_libraries(office_sdk INTERFACE uno_${library})
  endif()
endforeach()

if(WIN32)
  # The SDK of Linux knows of no Windows but that of another compiler: these are what differs.
  target_include_directories(office_sdk SYSTEM BEFORE INTERFACE ${CMAKE_CURRENT_LIST_DIR}/windows)
  target_compile_definitions(office_sdk INTERFACE SAL_UNX)
else()
  target_compile_definitions(office_sdk INTERFACE LINUX UNX)
endif()
